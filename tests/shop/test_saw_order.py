"""The saw order: every cut once, in orders that can be sawn, the quickest of them by the clock."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import pairwise
from math import radians, tan
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.builders import read
from longpoint.geometry import Bottom, CutKind, Hand, Opening, PlumbSides, Polygon
from longpoint.lengths import Fraction
from longpoint.shop import (
    Holding,
    MarkFrom,
    Operation,
    OperationKind,
    OrderKind,
    PieceName,
    Rates,
    Saw,
    SawOrder,
    Setting,
    Shop,
    Tool,
    raised,
    saw_order,
)
from longpoint.shop.build import CutList
from longpoint.shop.yard import Defect, LengthsOnHand, Stick, Stock
from longpoint.stock import eaten
from longpoint.values import Cents
from shop.builders import (
    DRESSED,
    FLAT,
    SAME_STOCK,
    TRIM,
    Entry,
    F,
    extended,
    random_house,
    solid_house,
    stock,
    window,
    worked_out,
)

Kind = OperationKind
STANDARD = Shop()
CUTTING_OFF = (Kind.CUT_OFF, Kind.ANGLED_CUT_OFF, Kind.SHARED_CUT)
seeds = st.integers(0, 10**9)
orders = st.sampled_from(OrderKind)


def order_of(*openings: Opening, count: int = 1, shop: Shop = STANDARD, **given: object) -> SawOrder:
    return saw_order(worked_out(tuple(Entry(one, count=count) for one in openings), **given), shop)


def made(order: SawOrder, *kinds: Kind) -> list[Operation]:
    return [each for each in order.operations if each.kind in kinds]


def names(cut_list: CutList) -> Counter[PieceName]:
    return Counter(
        PieceName(one.built.opening.mark, piece.key, instance)
        for one in cut_list.openings
        for piece in one.built.pieces
        for instance in range(1, one.count + 1)
    )


def sticks_crosscut(cut_list: CutList) -> int:
    """How many sticks are cut across: not one that is just its one piece and square at both ends."""
    return sum(crosscut or angled for crosscut, angled, _ in sticks_in(cut_list))


def sticks_worked(cut_list: CutList) -> int:
    """How many sticks there is anything to do to: such a one may have to be ripped or notched still."""
    return sum(any(done) for done in sticks_in(cut_list))


def sticks_in(cut_list: CutList) -> Iterator[tuple[bool, bool, bool]]:
    """Of each stick: is it cut shorter, has its first piece an angled end, and is more done to that.

    An angled end with a notch is cut to that, when the piece is off its stick already."""
    for plan in cut_list.plans:
        for layout in plan.layouts:
            for keys in layout.keys:
                pieces = cut_list.openings[keys[0].opening].built.pieces
                (first,) = (piece for piece in pieces if piece.key == keys[0].piece)
                yield (
                    len(keys) > 1 or layout.placed[0].length != layout.length,
                    any(end.cut is not CutKind.SQUARE and end.notch is None for end in first.ends),
                    first.rip_width is not None
                    or bool(first.taper or first.cutouts or any(end.notch for end in first.ends)),
                )


def key(operation: Operation) -> str:
    """Of the one piece, or the first, that it works on."""
    return str(operation.pieces[0].piece)


def _turn(order: SawOrder, operation: Operation) -> tuple[Hand | None, float]:
    """How the saw's table stands for it."""
    setting = order.setting_of(operation)
    return setting.miter_direction, setting.miter


@given(seeds, orders)
def test_every_end_notch_and_rip_is_made_once(seed: int, kind: OrderKind) -> None:
    house = random_house(Random(seed))
    order = saw_order(house, Shop(order=kind))
    pieces = {
        (one.built.opening.mark, piece.key): piece for one in house.openings for piece in one.built.pieces
    }
    ends, notches, rips = Counter(), Counter(), Counter()
    for each in order.operations:
        for name in each.pieces:
            ends[name] += each.kind in (Kind.ANGLED_END, Kind.ANGLED_CUT_OFF, Kind.SHARED_CUT)
            notches[name] += each.kind is Kind.NOTCH
            rips[name] += each.kind in (Kind.RIP, Kind.RIP_STICK)
    for name in names(house):
        piece = pieces[name.opening, name.piece]
        assert ends[name] == sum(end.cut is not CutKind.SQUARE for end in piece.ends)
        assert notches[name] == sum(end.notch is not None for end in piece.ends)
        assert rips[name] == (piece.rip_width is not None)


@given(seeds, orders)
def test_every_piece_is_parted_once_and_what_is_done_to_it_by_itself_comes_after(
    seed: int, kind: OrderKind
) -> None:
    house = random_house(Random(seed))
    order = saw_order(house, Shop(order=kind))
    cut_off = Counter(each.pieces[0] for each in made(order, *CUTTING_OFF))
    there_already = names(house)
    there_already.subtract(cut_off)
    # What no cut pieces is all that is left of its stick.
    assert set(there_already.values()) <= {0, 1}
    assert there_already.total() <= sticks_worked(house)
    if house.house.end_trim:
        assert not there_already.total()
    free = {name for name, count in there_already.items() if count}
    for each in order.operations:
        if each.kind in CUTTING_OFF:
            free.add(each.pieces[0])
        elif each.holds is Holding.PIECE and each.kind is not Kind.SQUARE_END:
            assert free.issuperset(each.pieces)


@given(seeds, orders)
def test_no_stick_gives_more_than_it_has(seed: int, kind: OrderKind) -> None:
    house = solid_house(Random(seed))
    order = saw_order(house, Shop(order=kind))
    lengths = {
        (plan.profile, number): layout.length
        for plan in house.plans
        for number, layout in enumerate((layout for layout in plan.layouts for _ in range(layout.times)), 1)
    }
    pieces = {
        (one.built.opening.mark, piece.key): piece for one in house.openings for piece in one.built.pieces
    }
    taken: Counter[tuple[str, int | None]] = Counter()
    last: dict[tuple[str, int | None], Fraction] = {}
    for each in made(order, *CUTTING_OFF):
        if each.stick is None:
            continue
        piece, setting = pieces[each.pieces[0].opening, each.pieces[0].piece], order.setting_of(each)
        eats = eaten(house.house.kerf, float(setting.miter), float(setting.bevel))
        run = 0.0
        if each.kind is Kind.SHARED_CUT:
            after = pieces[each.pieces[1].opening, each.pieces[1].piece]
            run = float(min(piece.width, after.width)) * tan(radians(setting.miter))
        last[each.profile, each.stick] = eats
        taken[each.profile, each.stick] += float(piece.overall) + float(eats) - run
    for stick, most in lengths.items():
        # A piece's length is rounded by half a mark at most, an angle to the saw's scale.
        assert taken[stick] - float(last.get(stick, 0)) <= most - 2 * house.house.end_trim + 0.4


@given(seeds, orders)
def test_setups_are_as_many_as_the_settings_change_and_every_cut_is_numbered(
    seed: int, kind: OrderKind
) -> None:
    order = saw_order(random_house(Random(seed)), Shop(order=kind))
    changes = 0
    now: dict[Tool, Setting] = {}
    for each in order.operations:
        setting = order.setting_of(each)
        changes += now.get(setting.tool) != setting
        now[setting.tool] = setting
    assert changes == len(order.setups)
    saws = [setup for setup in order.setups if setup.setting.tool is not Tool.HAND_SAW]
    assert len(saws) == order.sum.settings
    assert [each.number for each in order.operations] == list(range(1, order.cuts + 1))
    assert sum(setup.operations for setup in order.setups) == order.cuts == order.sum.cuts
    assert sum(order.cuts_by_opening.values()) == order.cuts


@given(seeds, st.sampled_from([F(1), F(3), F(6), F(14)]), orders)
def test_no_piece_too_short_to_hold_is_held_without_its_caution(
    seed: int, limit: Fraction, kind: OrderKind
) -> None:
    house = random_house(Random(seed))
    shop = Shop(saw=Saw(smallest_held=limit), order=kind)
    order = saw_order(house, shop)
    lengths = {
        (one.built.opening.mark, piece.key): piece.overall
        for one in house.openings
        for piece in one.built.pieces
    }
    for each in order.operations:
        if order.setting_of(each).tool is not Tool.MITER_SAW:
            continue
        short = each.held is not None and each.held < limit
        assert ("clamp" in each.cautions) == short
        # One sentence, not two that disagree.
        assert not {"clamp", "short_piece"} <= set(each.cautions)
        if each.kind in CUTTING_OFF and lengths[each.pieces[0].opening, each.pieces[0].piece] < limit - F(
            1, 16
        ):
            assert {"clamp", "short_piece"} & set(each.cautions)
            assert order.setting_of(each).stop is None
    for caution in raised(order):
        assert caution.pieces
        assert caution.applies_to == tuple(dict.fromkeys(name.opening for name in caution.pieces))


@given(seeds)
def test_the_order_to_cut_by_is_never_slower_than_another_and_says_so(seed: int) -> None:
    order = saw_order(random_house(Random(seed)))
    assert [one.order for one in order.orders] == list(OrderKind)
    assert order.sum.minutes == min(one.minutes for one in order.orders)
    assert str(order.why).startswith("The quickest of the three")
    assert all(f"{float(one.minutes):.0f}" in str(order.why) for one in order.orders)


@given(seeds)
def test_stick_by_stick_picks_each_stick_up_once_and_once_for_each_rip(seed: int) -> None:
    house = random_house(Random(seed))
    order = saw_order(house, Shop(order=OrderKind.STICK_BY_STICK))
    rips = len(made(order, Kind.RIP_STICK))
    without_plan = len({each.profile for each in order.operations if each.stick is None})
    assert order.sum.pick_ups == sticks_crosscut(house) + rips + without_plan
    runs = [
        stick for stick, before in pairwise_from_none([(one.profile, one.stick) for one in order.operations])
    ]
    assert len(runs) == len(set(runs)) == sticks_worked(house) + without_plan


def pairwise_from_none(rows: list[tuple[str, int | None]]) -> list[tuple[tuple[str, int | None], object]]:
    """Each row that is not as the one before it."""
    return [(row, before) for before, row in pairwise([None, *rows]) if row != before]  # type: ignore[list-item]


@given(seeds)
def test_no_piece_is_cut_square_where_a_miter_can_cut_it_off(seed: int) -> None:
    house = solid_house(Random(seed))
    order = saw_order(house, Shop(order=OrderKind.STICK_BY_STICK))
    square_first = {one.profile for one in house.house.stock if one.square_first}
    pieces = {
        (one.built.opening.mark, piece.key): piece for one in house.openings for piece in one.built.pieces
    }
    later = [
        each.pieces[0]
        for each in order.operations
        if each.kind is Kind.ANGLED_END and each.holds is Holding.PIECE
    ]
    for name in later:
        piece = pieces[name.opening, name.piece]
        assert piece.profile in square_first or piece.ends[0].notch is not None


@given(seeds, orders)
def test_minutes_are_those_of_the_clock(seed: int, kind: OrderKind) -> None:
    """Counted again from the cuts alone, by the seconds of the trade."""
    shop = Shop(order=kind)
    order = saw_order(random_house(Random(seed)), shop)
    seconds = F(0)
    now: dict[Tool, Setting] = {}
    pieces: set[PieceName] = set()
    short = {"clamp", "short_piece"}
    for each in order.operations:
        setting = order.setting_of(each)
        before = now.get(setting.tool)
        pieces.update(each.pieces)
        if setting.tool is Tool.TABLE_SAW:
            seconds += 60 * (before != setting)
        if setting.tool is Tool.MITER_SAW:
            before = before or Setting(Tool.MITER_SAW)
            if (before.miter_direction, before.miter) != (setting.miter_direction, setting.miter):
                seconds += 4 if setting.miter in (0, 15, 22.5, 31.6, 45) else 12
            seconds += 15 * (
                (before.bevel_direction, before.bevel) != (setting.bevel_direction, setting.bevel)
            )
            seconds += 30 * (setting.stop is not None and setting.stop != before.stop)
        now[setting.tool] = setting
        seconds += 10 * (each.mark is not None)
        careful = each.kind is not Kind.NOTCH and bool(short & set(each.cautions))
        seconds += 90 if each.kind is Kind.NOTCH else 20 if careful else 5
    seconds += 5 * len(pieces) + 20 * order.sum.pick_ups
    carried = order.sum.minutes * 60 - seconds
    # What is left is pieces carried, 15 seconds each.
    assert carried >= 0
    assert carried % 15 == 0
    by_itself = [
        each for each in order.operations if each.holds is Holding.PIECE and each.kind not in CUTTING_OFF
    ]
    assert carried / 15 <= len(by_itself)


def test_a_shops_own_seconds_and_its_own_order_are_taken() -> None:
    house = worked_out(tuple(Entry(window(f"W{n}", F(30 + n), F(46))) for n in range(4)))
    least = saw_order(house)
    assert least.order is OrderKind.STICK_BY_STICK
    asked = saw_order(house, Shop(order=OrderKind.SETTING_BY_SETTING))
    assert asked.order is OrderKind.SETTING_BY_SETTING
    assert asked.orders == least.orders
    assert str(asked.why).startswith("The one that was asked for")
    # Where setting a saw takes long and nothing else does, cuts of one setting are best made together.
    slow = {f"{name}_seconds": 600.0 for name in ("detent", "angle", "bevel")}
    idle = {f"{name}_seconds": 0.0 for name in ("pick_up", "carry", "mark", "cut", "stop")}
    assert saw_order(house, Shop(rates=Rates(**slow, **idle))).order is OrderKind.SETTING_BY_SETTING
    assert {rate.name for rate in least.rates} >= {*slow, *idle}


def test_sticks_come_in_an_order_that_leaves_few_openings_open() -> None:
    """Fewer at once than in the order of the plan, over twenty houses; one opening after the other leaves fewest."""
    in_turn = by_plan = singly = 0
    for seed in range(20):
        random = Random(seed)
        windows = tuple(
            Entry(
                window(
                    f"W{n}", F(random.randint(16 * 20, 16 * 50), 16), F(random.randint(16 * 30, 16 * 60), 16)
                )
            )
            for n in range(random.randint(6, 20))
        )
        house = worked_out(windows)
        sums = {one.order: one.open_at_once for one in saw_order(house).orders}
        in_turn += sums[OrderKind.STICK_BY_STICK]
        singly += sums[OrderKind.OPENING_BY_OPENING]
        by_plan += open_in_the_plans_order(house)
    assert singly == 20 < in_turn < 0.97 * by_plan


def open_in_the_plans_order(house: CutList) -> int:
    sticks = [
        {key.opening for key in keys} for plan in house.plans for one in plan.layouts for keys in one.keys
    ]
    seen = [[at for at, stick in enumerate(sticks) if index in stick] for index in range(len(house.openings))]
    return max(sum(one[0] <= at <= one[-1] for one in seen) for at in range(len(sticks)))


def test_legs_of_one_window_are_told_apart_as_a_mirrored_pair() -> None:
    order = order_of(window("W1", F(30), F(46)))
    miters = {
        key(each): each
        for each in made(order, Kind.ANGLED_END, Kind.ANGLED_CUT_OFF)
        if "side_casing" in key(each)
    }
    left, right = miters["side_casing/left"], miters["side_casing/right"]
    assert (left.title, left.end, left.on_saw) == ("left side casing", "head", Hand.RIGHT)
    assert _turn(order, left) == (Hand.LEFT, 45)
    assert _turn(order, right) == (Hand.RIGHT, 45)
    assert (str(left.mirror_of), str(right.mirror_of)) == ("side_casing/right", "side_casing/left")
    # The left one is cut off by its miter, the right one by a square cut behind its miter.
    assert left.kind is Kind.ANGLED_CUT_OFF
    assert (left.mark, left.mark_from, left.mark_edge) == (F(779, 16), MarkFrom.SQUARE_END, "outer")
    foot = next(each for each in made(order, Kind.CUT_OFF) if key(each) == "side_casing/right")
    assert (foot.mark, foot.mark_from, foot.mark_edge) == (F(779, 16), MarkFrom.LONG_POINT, "outer")


def test_legs_of_different_length_are_no_mirrored_pair() -> None:
    uneven = Opening(
        mark="W1",
        readings=read(PlumbSides(F(30), F(46), F(45))),
        trim=FLAT,
        bottom=Bottom.CASING,
    )
    legs = [each for each in order_of(uneven).operations if each.pieces and "side_casing" in key(each)]
    assert legs
    assert not any(each.mirror_of for each in legs)


@pytest.mark.parametrize("kind", OrderKind)
def test_returns_are_cut_from_the_long_stick_before_their_apron(kind: OrderKind) -> None:
    order = order_of(window("W1", F(30), F(46), trim=SAME_STOCK), shop=Shop(order=kind))
    returns = [
        each for each in order.operations if "return" in key(each) and each.kind is not Kind.SQUARE_END
    ]
    # The right one is mitered at the stick's end, then cut off square; the left one is cut off by its miter.
    assert [each.kind for each in returns if key(each).endswith("right")] == [Kind.ANGLED_END, Kind.CUT_OFF]
    assert [each.kind for each in returns if key(each).endswith("left")] == [Kind.ANGLED_CUT_OFF]
    assert {
        (setting.bevel_direction, setting.bevel)
        for setting in map(order.setting_of, returns)
        if setting.bevel
    } == {
        (Hand.LEFT, 45),
        (Hand.RIGHT, 45),
    }
    assert all(each.holds is Holding.STICK and each.held > 30 for each in returns)
    assert all(each.cautions == ("short_piece",) for each in returns)
    assert all(each.mark == F(5, 8) for each in returns if each.kind in CUTTING_OFF)
    apron = next(each for each in made(order, *CUTTING_OFF) if key(each) == "apron")
    assert returns[-1].number < apron.number
    assert {caution.code for caution in raised(order)} == {"short_piece"}
    assert raised(order)[0].applies_to == ("W1",)
    assert {str(name.piece) for name in raised(order)[0].pieces} == {
        "apron_return/left",
        "apron_return/right",
    }


def test_a_short_length_on_hand_is_clamped() -> None:
    lengths_on_hand = (LengthsOnHand(F(4)),)
    full = (Stick(F(36), Cents(400)),)  # the apron fills it, so its returns come from the scrap
    apron = Stock(profile="apron", sticks=full, lengths_on_hand=lengths_on_hand)
    stocks = (stock("casing"), stock("stool stock"), apron)
    order = order_of(window("W1", F(30), F(46)), stocks=stocks, end_trim=F(0))
    cutting_off = [each for each in made(order, *CUTTING_OFF) if "return" in key(each)]
    assert cutting_off
    assert all(each.held <= 4 and each.cautions == ("clamp",) for each in cutting_off)
    assert "clamp" in {caution.code for caution in raised(order)}


def test_a_returned_stool_is_ripped_and_notched_before_its_miters_which_stop_at_the_notch() -> None:
    for kind in OrderKind:
        order = order_of(
            window("W1", F(30), F(46), trim=DRESSED),
            window("W2", F(30), F(46), F(4), trim=DRESSED),
            shop=Shop(order=kind),
        )
        for mark in ("W1", "W2"):
            done = [
                each.kind
                for each in order.operations
                if any((one.opening, str(one.piece)) == (mark, "stool") for one in each.pieces)
            ]
            stool = [one for one in done if one in (Kind.RIP, Kind.RIP_STICK, Kind.NOTCH, Kind.ANGLED_END)]
            assert stool[0] in (Kind.RIP, Kind.RIP_STICK)
            assert stool[1:] == [Kind.NOTCH, Kind.NOTCH, Kind.ANGLED_END, Kind.ANGLED_END]
        miters = [each for each in made(order, Kind.ANGLED_END) if key(each) == "stool"]
        # What stands off the wall: apron thickness and nosing.
        assert {each.stops_after for each in miters} == {F(5, 8) + F(7, 8)}
        assert {each.fence_edge for each in miters} == {"back"}
        assert all(each.held > 36 and not each.cautions for each in miters)


def test_a_stick_of_one_width_is_ripped_whole_before_it_is_cut() -> None:
    order = order_of(window("W1", F(30), F(46)), window("W2", F(24), F(40)))
    (rip,) = made(order, Kind.RIP_STICK)
    assert order.setting_of(rip) == Setting(Tool.TABLE_SAW, fence=F(25, 8) + F(5, 8) + F(7, 8))
    assert {name.opening for name in rip.pieces} == {"W1", "W2"}
    assert not made(order, Kind.RIP)
    stool = next(each for each in made(order, Kind.CUT_OFF) if key(each) == "stool")
    assert rip.number < stool.number


def test_pieces_of_several_widths_on_a_stick_are_ripped_each_by_itself() -> None:
    order = order_of(window("W1", F(30), F(46), F(3)), window("W2", F(24), F(40), F(4)))
    assert not made(order, Kind.RIP_STICK)
    rips = made(order, Kind.RIP)
    assert sorted(order.setting_of(each).fence for each in rips) == [F(9, 2), F(11, 2)]
    cut_off = {each.pieces[0]: each.number for each in made(order, *CUTTING_OFF)}
    assert all(each.number > cut_off[each.pieces[0]] for each in rips)


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


@pytest.mark.parametrize("kind", OrderKind)
def test_a_defect_is_cut_off_before_what_lies_beyond_it(kind: OrderKind) -> None:
    sticks = (Stick(F(144), Cents(1000), defects=(Defect(F(60), F(63)),)),)
    stocks = (Stock(profile="casing", sticks=sticks), stock("stool stock"), stock("apron"))
    order = order_of(window("W1", F(30), F(46)), stocks=stocks, shop=Shop(order=kind))
    assert [key(each) for each in made(order, *CUTTING_OFF) if each.stick == "C1"] == [
        "side_casing/left",
        "side_casing/right",
    ]
    # A cut of its own takes the knot out, or the beyond piece's miter does, cut where the knot ends.
    first = next(each for each in order.operations if key(each) == "side_casing/right")
    assert first.kind in (Kind.CUT_OUT, Kind.ANGLED_END)
    if first.mark_from is MarkFrom.LEFT_END:
        assert first.mark >= 63
    else:
        # From the left: trimmed by 1/2, a kerf, the left side and the widest kerf at 45 degrees.
        assert first.mark_from is MarkFrom.FREE_END
        assert F(1, 2) + F(1, 8) + F("48.6875") + eaten(F(1, 8), 45) + first.mark >= 63


def test_a_last_piece_that_fits_exactly_needs_no_cut() -> None:
    leg = F(40) + F(1, 4) + F(7, 2)
    for rules, eats in (({"square_first": True}, F(1, 8)), ({}, eaten(F(1, 8), 45))):
        stocks = (Stock(profile="flat", sticks=(Stick(2 * leg + eats, Cents(500)),), **rules),)
        door = Opening(
            mark="D1", readings=read(PlumbSides(F(30), F(40), F(40))), trim=FLAT, bottom=Bottom.FLOOR
        )
        order = order_of(door, stocks=stocks, end_trim=F(0), shop=Shop(order=OrderKind.STICK_BY_STICK))
        legs = [each for each in made(order, *CUTTING_OFF) if "side_casing" in key(each)]
        # One cut cuts the two legs off; a miter at the far end still has to be cut, a square end is there.
        square = sum(each.kind is Kind.CUT_OFF for each in legs)
        assert square <= 1
        assert not made(order, Kind.SQUARE_END)
        assert len({each.pieces[0] for each in order.operations if "side_casing" in key(each)}) == 2


def test_turned_pieces_share_their_cut() -> None:
    frame = Opening(
        mark="P1",
        readings=read(Polygon((F(20),) * 4, (F(90),) * 4)),
        trim=FLAT,
        bottom=Bottom.CASING,
    )
    apart = order_of(frame, stocks=(stock("flat"),))
    shared = order_of(frame, stocks=(stock("flat", turnable=True),))
    assert not made(apart, Kind.SHARED_CUT)
    cuts = made(shared, Kind.SHARED_CUT)
    assert len(cuts) == 3
    # Along a row of turned pieces the cut leans one way, then the other; each is marked from the long point it has.
    swings = [shared.setting_of(each).miter_direction for each in cuts]
    assert all(one is not other for one, other in pairwise(swings))
    assert all(len(each.pieces) == 2 for each in cuts)
    outer = F(20) + 2 * (F(1, 4) + F(7, 2))
    assert {(each.mark, each.mark_from) for each in cuts} == {(outer, MarkFrom.LONG_POINT)}
    assert [each.fence_edge for each in cuts] == ["outer", "inner", "outer"]


def test_pieces_without_stock_are_ordered_too_without_a_stick() -> None:
    house = worked_out((Entry(window("W1", F(30), F(46))),), stocks=())
    for kind in OrderKind:
        order = saw_order(house, Shop(order=kind))
        assert {each.stick for each in order.operations} == {None}
        assert {each.held for each in order.operations if each.holds is Holding.STICK} == {None}
        assert Counter(each.pieces[0] for each in made(order, *CUTTING_OFF)) == names(house)


def test_angles_are_set_to_the_steps_of_the_saws_scale() -> None:
    raked = Opening(
        mark="R1",
        readings=read(PlumbSides(F(30), F(46), F(40))),
        trim=FLAT,
        bottom=Bottom.CASING,
    )
    order = saw_order(worked_out((Entry(raked),)), Shop(saw=Saw(angle_step=0.25)))
    angled = made(order, Kind.ANGLED_END, Kind.ANGLED_CUT_OFF)
    assert angled
    assert {(F(order.setting_of(each).miter) * 4).denominator for each in angled} == {1}


@pytest.mark.parametrize(("limit", "said"), [(50.0, True), (70.0, False)])
def test_a_miter_sharper_than_the_saw_turns_is_said(limit: float, said: bool) -> None:
    triangle = Opening(
        mark="T1", readings=read(Polygon((F(40), F(40), F(40)))), trim=FLAT, bottom=Bottom.CASING
    )
    order = saw_order(worked_out((Entry(triangle),)), Shop(saw=Saw(sharpest_miter=limit)))
    assert ("sharp_miter" in {caution.code for caution in raised(order)}) == said


def test_many_pieces_of_one_length_are_cut_against_a_stop_and_few_to_marks() -> None:
    for count, stopped in ((3, False), (4, True)):
        order = order_of(
            window("W1", F(30), F(46)), count=count, shop=Shop(order=OrderKind.SETTING_BY_SETTING)
        )
        stools = [each for each in made(order, Kind.CUT_OFF) if key(each) == "stool"]
        assert len(stools) == count
        # 30 seconds for a stop against 10 for each mark: it pays from the fourth.
        assert {order.setting_of(each).stop is not None for each in stools} == {stopped}
        assert {each.mark is None for each in stools} == {stopped}


def test_openings_alike_have_each_their_own_pieces() -> None:
    order = order_of(window("W1", F(30), F(46), trim=TRIM), count=2)
    aprons = [each for each in made(order, *CUTTING_OFF) if key(each) == "apron"]
    assert [(each.pieces[0].opening, each.pieces[0].instance) for each in aprons] == [("W1", 1), ("W1", 2)]
