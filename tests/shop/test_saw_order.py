"""The saw order: every cut once, in an order that can be sawn, with few setups."""

from __future__ import annotations

from collections import Counter
from itertools import pairwise
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.builders import read
from longpoint.geometry import CutKind, Foot, Hand, Opening, PlumbSides, Polygon
from longpoint.lengths import Fraction
from longpoint.shop import (
    Operation,
    OperationKind,
    PieceName,
    Saw,
    SawOrder,
    Setting,
    Tool,
    raised,
    saw_order,
)
from longpoint.shop.build import CutList
from longpoint.shop.sticks import WorkStick, work_sticks
from longpoint.shop.yard import Defect, Remnant, Stick, Stock
from longpoint.stock import eaten
from longpoint.values import Cents
from shop.builders import FLAT, SAME_STOCK, TRIM, Entry, F, extended, random_house, stock, window, worked_out

Kind = OperationKind
seeds = st.integers(0, 10**9)


def order_of(*openings: Opening, count: int = 1, **given: object) -> SawOrder:
    return saw_order(worked_out(tuple(Entry(one, count=count) for one in openings), **given))


def made(order: SawOrder, kind: Kind) -> list[Operation]:
    return [each for each in order.operations if each.kind is kind]


def sticks_of(cut_list: CutList) -> list[WorkStick]:
    """Those that a plan has."""
    return [stick for stick in work_sticks(cut_list) if stick.number]


def names(cut_list: CutList) -> Counter[PieceName]:
    return Counter(
        PieceName(one.built.opening.mark, part.key, instance)
        for one in cut_list.openings
        for part in one.built.parts
        for instance in range(1, one.count + 1)
    )


def key(operation: Operation) -> str:
    """Of the one piece, or the first, that it works on."""
    return str(operation.pieces[0].part)


def _turn(order: SawOrder, operation: Operation) -> tuple[Hand | None, float]:
    """How the saw's table stands for it."""
    setting = order.setting_of(operation)
    return setting.swing, setting.mitre


@given(seeds)
def test_every_end_notch_and_rip_is_made_once(seed: int) -> None:
    house = random_house(Random(seed))
    order = saw_order(house)
    parts = {(one.built.opening.mark, part.key): part for one in house.openings for part in one.built.parts}
    ends, notches, rips = Counter(), Counter(), Counter()
    for each in order.operations:
        for name in each.pieces:
            ends[name] += each.kind in (Kind.ANGLED_END, Kind.SHARED_CUT)
            notches[name] += each.kind is Kind.NOTCH
            rips[name] += each.kind in (Kind.RIP, Kind.RIP_STICK)
    for name in names(house):
        part = parts[name.opening, name.part]
        assert ends[name] == sum(end.cut is not CutKind.SQUARE for end in part.ends)
        assert notches[name] == sum(end.notch is not None for end in part.ends)
        assert rips[name] == (part.rip_width is not None)


@given(seeds)
def test_every_piece_is_parted_once_and_its_ends_come_after(seed: int) -> None:
    house = random_house(Random(seed))
    order = saw_order(house)
    parted: Counter[PieceName] = Counter()
    last_of_its_section = names(house)
    for each in order.operations:
        if each.kind in (Kind.CROSSCUT, Kind.PART_OFF):
            parted.update(each.pieces)
    last_of_its_section.subtract(parted)
    # A piece that no cut parts is what is left of its stick; turned pieces can be left in one row.
    assert all(count in (0, 1) for count in last_of_its_section.values())
    left = [name for name, count in last_of_its_section.items() if count]
    on_stick = {
        piece.name: (stick.profile, stick.number) for stick in sticks_of(house) for piece in stick.pieces
    }
    joined = sum(
        each.kind is Kind.SHARED_CUT and set(left).issuperset(each.pieces) for each in order.operations
    )
    assert len({on_stick[name] for name in left}) + joined == len(left)
    freed: set[PieceName] = set(left)
    for each in order.operations:
        if each.kind in (Kind.CROSSCUT, Kind.PART_OFF):
            freed.update(each.pieces)
        if each.kind is Kind.SHARED_CUT or (
            each.kind is Kind.ANGLED_END and "short_piece" not in each.cautions
        ):
            assert freed.issuperset(each.pieces)


@given(seeds)
def test_no_stick_gives_more_than_it_has(seed: int) -> None:
    house = random_house(Random(seed))
    order = saw_order(house)
    kerf, trim = house.house.kerf, house.house.end_trim
    lengths = {(stick.profile, stick.number): stick.length for stick in sticks_of(house)}
    for each in order.operations:
        if each.kind in (Kind.CROSSCUT, Kind.PART_OFF):
            setting = order.setting_of(each)
            length = setting.stop if setting.stop is not None else each.mark
            assert each.held is not None
            assert length <= each.held
            lengths[each.profile, each.stick] -= length + kerf
    assert all(left >= 2 * trim - kerf for left in lengths.values())


@given(seeds)
def test_setups_are_as_many_as_the_settings_change_and_never_more_than_opening_by_opening(seed: int) -> None:
    house = random_house(Random(seed))
    order = saw_order(house)
    changes = 0
    now: dict[Tool, Setting] = {}
    for each in order.operations:
        setting = order.setups[each.setup - 1].setting
        assert order.setting_of(each) == setting
        changes += now.get(setting.tool) != setting
        now[setting.tool] = setting
    assert changes == order.setup_count == len(order.setups)
    assert [each.number for each in order.operations] == list(range(1, len(order.operations) + 1))
    assert sum(setup.operations for setup in order.setups) == len(order.operations)
    assert len(order.setups) <= order.setup_count_by_opening


@given(seeds)
def test_what_is_too_short_to_hold_is_said(seed: int) -> None:
    house = random_house(Random(seed))
    saw = Saw()
    order = saw_order(house, saw)
    for each in order.operations:
        if each.held is None:
            continue
        setting = order.setting_of(each)
        short = each.held < saw.smallest_held and setting.tool is Tool.MITRE_SAW
        assert ("clamp" in each.cautions) == short
        if each.kind is Kind.PART_OFF:
            assert "short_piece" in each.cautions
            assert setting.stop is None


def test_alike_windows_take_far_fewer_setups_together_than_singly() -> None:
    order = order_of(*(window(f"W{n}", F(30 + n), F(46)) for n in range(10)), window("W10", F(30), F(50)))
    # All legs but one pair have one stop, and each end one setting, however many windows there are.
    assert len(order.setups) * 2 < order.setup_count_by_opening


def test_legs_of_one_window_are_told_apart_as_a_mirrored_pair() -> None:
    order = order_of(window("W1", F(30), F(46)))
    mitres = {key(each): each for each in made(order, Kind.ANGLED_END) if "leg" in key(each)}
    left, right = mitres["casing_leg/left"], mitres["casing_leg/right"]
    assert (left.title, left.end, left.on_saw) == ("left casing leg", "head", Hand.RIGHT)
    assert _turn(order, left) == (Hand.LEFT, 45)
    assert _turn(order, right) == (Hand.RIGHT, 45)
    assert (str(left.mirror_of), str(right.mirror_of)) == ("casing_leg/right", "casing_leg/left")
    stops = {order.setting_of(each).stop for each in made(order, Kind.CROSSCUT) if "leg" in key(each)}
    assert stops == {F(46) + F(3, 16) + F(5, 2)}


def test_legs_of_different_length_are_no_mirrored_pair() -> None:
    uneven = Opening(
        mark="W1",
        readings=read(PlumbSides(F(30), F(46), F(45))),
        trim=FLAT,
        foot_style=Foot.PICTURE_FRAME,
    )
    legs = [each for each in order_of(uneven).operations if each.pieces and "leg" in key(each)]
    assert legs
    assert not any(each.mirror_of for each in legs)


def test_returns_are_cut_from_the_long_stick_before_it_is_cut_up() -> None:
    order = order_of(window("W1", F(30), F(46), trim=SAME_STOCK))
    returns = [each for each in order.operations if each.pieces and "return" in key(each)]
    assert [each.kind for each in returns] == [Kind.ANGLED_END, Kind.ANGLED_END, Kind.PART_OFF, Kind.PART_OFF]
    assert {(setting.tilt, setting.bevel) for setting in map(order.setting_of, returns[:2])} == {
        (Hand.LEFT, 45),
        (Hand.RIGHT, 45),
    }
    assert all(each.cautions == ("short_piece",) and each.held > 80 for each in returns)
    assert all(each.mark == F(5, 8) for each in returns[2:])
    first_crosscut = made(order, Kind.CROSSCUT)[0]
    assert returns[-1].number < first_crosscut.number
    assert {caution.code for caution in raised(order)} == {"short_piece"}
    assert raised(order)[0].applies_to == ("W1",)


def test_a_short_remnant_is_clamped() -> None:
    remnants = (Remnant(F(4)),)
    full = (Stick(F(36), Cents(400)),)  # the apron fills it, so its returns come from the scrap
    apron = Stock(profile="apron", sticks=full, remnants=remnants)
    stocks = (stock("casing"), stock("stool stock"), apron)
    order = order_of(window("W1", F(30), F(46)), stocks=stocks, end_trim=F(0))
    parting = made(order, Kind.PART_OFF)
    assert parting
    assert all(each.held <= 4 and each.cautions == ("short_piece", "clamp") for each in parting)
    assert {"short_piece", "clamp"} == {caution.code for caution in raised(order)}


def test_the_smallest_held_is_the_shops_own() -> None:
    cut_list = worked_out((Entry(window("W1", F(9), F(46))),))
    legs_and_apron = saw_order(cut_list, Saw(smallest_held=F(15)))
    assert {key(each) for each in made(legs_and_apron, Kind.PART_OFF)} == {
        "apron_return/left",
        "apron_return/right",
        "apron",
        "casing_head/head",
    }
    # Both ends of the head are mitred: one on the stick, the other on the short piece itself, clamped.
    head = [each for each in legs_and_apron.operations if each.pieces and "head" in key(each)]
    assert [each.kind for each in head] == [Kind.ANGLED_END, Kind.PART_OFF, Kind.ANGLED_END]
    assert "clamp" in head[2].cautions


def test_a_stick_of_one_width_is_ripped_whole_before_it_is_cut() -> None:
    order = order_of(window("W1", F(30), F(46)), window("W2", F(24), F(40)))
    (rip,) = made(order, Kind.RIP_STICK)
    assert order.setting_of(rip) == Setting(Tool.TABLE_SAW, fence=F(25, 8) + F(5, 8) + F(7, 8))
    assert {name.opening for name in rip.pieces} == {"W1", "W2"}
    assert not made(order, Kind.RIP)
    assert rip.number < made(order, Kind.CROSSCUT)[0].number


def test_pieces_of_several_widths_on_a_stick_are_ripped_each_by_itself() -> None:
    order = order_of(window("W1", F(30), F(46), F(3)), window("W2", F(24), F(40), F(4)))
    assert not made(order, Kind.RIP_STICK)
    assert sorted(order.setting_of(each).fence for each in made(order, Kind.RIP)) == [F(9, 2), F(11, 2)]
    assert all(each.number > made(order, Kind.CROSSCUT)[-1].number for each in made(order, Kind.RIP))


def test_a_short_rip_is_said() -> None:
    order = order_of(window("W1", F(4), F(46), F(3)), window("W2", F(24), F(40), F(4)))
    short, long = sorted(made(order, Kind.RIP), key=lambda each: each.held)
    assert short.held < 12
    assert short.cautions == ("short_rip",)
    assert long.cautions == ()


def test_a_tapered_extension_is_ripped_by_itself_on_a_jig() -> None:
    order = order_of(extended("W1", F(30), F(46), F(1, 2), F(1, 2), F(1), F(1)))
    rips = {key(each): each for each in made(order, Kind.RIP) if "extension" in key(each)}
    head, right = rips["jamb_extension/head"], rips["jamb_extension/right"]
    assert order.setting_of(head).fence == 1
    assert sorted(order.setting_of(head).taper) == [F(1, 2), F(1)]
    assert "taper_jig" in head.cautions
    assert order.setting_of(right) == Setting(Tool.TABLE_SAW, fence=F(1, 2))
    assert not [each for each in made(order, Kind.RIP_STICK) if each.profile == "strip"]


def test_a_notch_that_deepens_towards_the_horns_end_says_both_depths() -> None:
    order = order_of(extended("W1", F(30), F(46), F(1, 2), F(1, 2), F(1, 2), F(1, 2)))
    depths = {
        each.end: (setting.notch_depth, setting.notch_end_depth)
        for each in made(order, Kind.NOTCH)
        for setting in [order.setting_of(each)]
    }
    assert depths["left"] == (F(25, 8), F(13, 4))
    assert depths["right"] == (F(25, 8), None)


def test_defects_are_sawn_out_before_anything_is_cut_to_length() -> None:
    sticks = (Stick(F(144), Cents(1000), defects=(Defect(F(60), F(63)),)),)
    stocks = (Stock(profile="casing", sticks=sticks), stock("stool stock"), stock("apron"))
    order = order_of(window("W1", F(30), F(46)), stocks=stocks)
    knots = made(order, Kind.CUT_OUT)
    assert knots
    assert all(each.mark <= 60 and each.mark_to >= 63 for each in knots)
    assert knots[-1].number < made(order, Kind.CROSSCUT)[0].number


def test_a_last_blank_that_fits_exactly_needs_no_cut() -> None:
    leg = F(40) + F(1, 4) + F(7, 2)
    stocks = (Stock(profile="flat", sticks=(Stick(2 * leg + F(1, 8), Cents(500)),), square_first=True),)
    door = Opening(
        mark="D1", readings=read(PlumbSides(F(30), F(40), F(40))), trim=FLAT, foot_style=Foot.FLOOR
    )
    order = order_of(door, stocks=stocks, end_trim=F(0))
    # One cut parts the two legs; the head leaves an offcut on its stick and needs its own.
    assert Counter(key(each).split("/")[0] for each in made(order, Kind.CROSSCUT)) == {
        "casing_leg": 1,
        "casing_head": 1,
    }
    assert not made(order, Kind.SQUARE_ENDS)


def test_turned_pieces_share_their_cut() -> None:
    frame = Opening(
        mark="P1",
        readings=read(Polygon((F(20),) * 4, (F(90),) * 4)),
        trim=FLAT,
        foot_style=Foot.PICTURE_FRAME,
    )
    apart = order_of(frame, stocks=(stock("flat"),))
    shared = order_of(frame, stocks=(stock("flat", turnable=True),))
    assert not made(apart, Kind.SHARED_CUT)
    cuts = made(shared, Kind.SHARED_CUT)
    assert cuts
    # Along a row of turned pieces the cut leans one way, then the other.
    swings = [shared.setting_of(each).swing for each in sorted(cuts, key=lambda each: each.mark)]
    assert all(one is not other for one, other in pairwise(swings))
    assert all(len(each.pieces) == 2 for each in cuts)
    # Four equal pieces in one row, long points 27 1/2 less the run of a miter apart, and what each shared cut eats.
    row = made(shared, Kind.CROSSCUT)[0]
    outer = F(20) + 2 * (F(1, 4) + F(7, 2))
    length = len(row.pieces) * outer + (len(row.pieces) - 1) * (eaten(F(1, 8), 45) - F(7, 2))
    assert abs(shared.setting_of(row).stop - length) <= F(1, 32)


@given(st.integers(4, 24), st.sampled_from([Foot.PICTURE_FRAME, Foot.FLOOR]))
def test_a_row_sawn_as_marked_gives_pieces_of_the_right_shape(inches: int, foot: Foot) -> None:
    """Each cut of a row is drawn as a line: from its mark on the fence, leaning as the table swings, a kerf wide."""
    frames = tuple(
        Entry(
            Opening(
                mark=f"P{n}",
                readings=read(PlumbSides(F(inches + n), F(30), F(30))),
                trim=FLAT,
                foot_style=foot,
            )
        )
        for n in range(3)
    )
    house = worked_out(frames, stocks=(stock("flat", turnable=True),))
    parts = {(one.built.opening.mark, part.key): part for one in house.openings for part in one.built.parts}
    order = saw_order(house)
    cuts = made(order, Kind.SHARED_CUT)
    before = {each.pieces[1]: each for each in cuts}
    inside = [(before[each.pieces[0]], each) for each in cuts if each.pieces[0] in before]
    assert inside or foot is Foot.FLOOR
    for left, right in inside:
        part = parts[right.pieces[0].opening, right.pieces[0].part]
        at_fence = right.mark - left.mark - eaten(house.house.kerf, 45)
        at_front = at_fence + _lean(order, right, part.width) - _lean(order, left, part.width)
        short, long = sorted((at_fence, at_front))
        assert max(abs(short - part.short_point), abs(long - part.long_point)) <= F(
            1, 16
        )  # each mark is rounded


def _lean(order: SawOrder, cut: Operation, width: Fraction) -> Fraction:
    """How far right of its mark a cut at 45 degrees comes out at the front: the table's front turns that way."""
    swing, mitre = _turn(order, cut)
    assert mitre == 45
    return width if swing is Hand.RIGHT else -width


def test_parts_without_stock_are_ordered_too_without_a_stick() -> None:
    house = worked_out((Entry(window("W1", F(30), F(46))),), stocks=())
    order = saw_order(house)
    assert {each.stick for each in order.operations} == {None}
    assert not sticks_of(house)
    assert not made(order, Kind.SQUARE_ENDS)
    assert len(made(order, Kind.CROSSCUT)) == 5


def test_angles_are_set_to_the_steps_of_the_saws_scale() -> None:
    raked = Opening(
        mark="R1",
        readings=read(PlumbSides(F(30), F(46), F(40))),
        trim=FLAT,
        foot_style=Foot.PICTURE_FRAME,
    )
    order = saw_order(worked_out((Entry(raked),)), Saw(angle_step=0.25))
    assert {(F(order.setting_of(each).mitre) * 4).denominator for each in made(order, Kind.ANGLED_END)} == {1}


@pytest.mark.parametrize(("limit", "said"), [(50.0, True), (70.0, False)])
def test_a_mitre_sharper_than_the_saw_turns_is_said(limit: float, said: bool) -> None:
    triangle = Opening(
        mark="T1", readings=read(Polygon((F(40), F(40), F(40)))), trim=FLAT, foot_style=Foot.PICTURE_FRAME
    )
    order = saw_order(worked_out((Entry(triangle),)), Saw(sharpest_mitre=limit))
    assert ("sharp_mitre" in {caution.code for caution in raised(order)}) == said


def test_the_apron_of_a_house_comes_with_the_trims_mark() -> None:
    order = order_of(window("W1", F(30), F(46), trim=TRIM), count=2)
    aprons = [each for each in made(order, Kind.CROSSCUT) if key(each) == "apron"]
    assert [(each.pieces[0].opening, each.pieces[0].instance) for each in aprons] == [("W1", 1), ("W1", 2)]
