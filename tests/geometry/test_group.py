"""Openings trimmed together: heads in line, one stool under several, scarfs over what is solid."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.builders import CASING, STOOL, TRIM, F, mulled, opening, read
from longpoint.geometry import (
    Bottom,
    Casing,
    CutKind,
    Cutout,
    GeometryError,
    Group,
    Hand,
    Horns,
    Mull,
    Opening,
    PlumbSides,
    Polygon,
    Reveals,
    Trim,
    Widths,
    build_group,
    build_opening,
)
from longpoint.geometry.pieces.scarf import joints


def window(width: int, mark: str = "A", height: int = 48) -> Opening:
    return replace(opening(PlumbSides(F(width), F(height), F(height))), mark=mark)


PAIR = (window(30, "L"), window(36, "R"))


def test_heads_out_of_line_are_offered_reveals_that_line_them_up() -> None:
    found = build_group(PAIR, Group(mark="pair", heads=(F(80), F("80.25"))))
    (finding,) = found.findings
    assert (finding.code, finding.amount) == ("heads-out-of-line", F(1, 4))
    (offer,) = finding.offers
    assert (offer.answer, offer.worth) == ("line_up_head", F("0.4375"))
    assert offer.path == ("openings", 0, "reveals", "head")
    taken_up = (replace(PAIR[0], reveals=Reveals(head=F("0.4375"))), PAIR[1])
    assert build_group(taken_up, Group(mark="pair", heads=(F(80), F("80.25")))).findings == ()


def test_heads_too_far_apart_for_the_jamb_are_furred() -> None:
    (finding,) = build_group(PAIR, Group(mark="pair", heads=(F(80), F(81)))).findings
    assert [offer.answer for offer in finding.offers] == ["fur_head"]


def test_a_group_without_a_stool_builds_each_opening_as_it_is() -> None:
    found = build_group(PAIR, Group(mark="pair"))
    assert found.shared is None
    assert found.members == tuple(build_opening(each) for each in PAIR)


def test_one_stool_under_two_windows_passes_the_wall_between() -> None:
    found = build_group(PAIR, Group(mark="pair", gaps=(F(12),)))
    assert found.shared is not None
    stool, apron, *returns = found.shared.pieces
    # 30 + 12 + 36 between the outer jambs, and 3/16 + 2 1/2 + 3/4 at each end.
    assert stool.overall == F("84.875")
    assert stool.cutouts == (Cutout(F("33.4375"), F(12), F("3.125")),)
    assert apron.long_point == F("83.375")
    assert len(returns) == 2
    assert {piece.kind for member in found.members for piece in member.pieces} == {
        "side_casing",
        "head_casing",
    }


def test_one_stool_under_three_windows_passes_both_walls_between() -> None:
    members = (window(30, "L"), window(24, "M"), window(36, "R"))
    found = build_group(members, Group(mark="bay", gaps=(F(12), F(10))))
    assert found.shared is not None
    assert found.shared.opening.readings.joined_widths == (F(30), F(24), F(36))
    first, second = found.shared.pieces[0].cutouts
    # 3 7/16 from the stool's end to the jamb, then a window and what is between for each.
    assert (first.at, first.length) == (F("33.4375"), F(12))
    assert (second.at, second.length) == (F("69.4375"), F(10))


def test_openings_of_unequal_depth_keep_their_own() -> None:
    deep = replace(PAIR[1], readings=replace(PAIR[1].readings, left_depth=F("3.25")))
    found = build_group((PAIR[0], deep), Group(mark="pair", gaps=(F(12),)))
    assert found.shared is not None
    stool = found.shared.pieces[0]
    assert stool.cutouts == (Cutout(F("33.4375"), F(12), F("3.125"), F("3.25")),)
    # Ripped to the deepest: 3 1/4 + 5/8 + 7/8.
    assert stool.rip_width == F("4.75")


def test_what_is_shared_ends_as_its_outermost_sides_do() -> None:
    left, right = (
        replace(
            each,
            readings=replace(each.readings, left_horn_depth=near, right_horn_depth=far),
            reveals=Reveals(left=F(1, 4), right=F(1, 8)),
            horns=Horns(left=F(1, 2), right=F(1)),
            widths=Widths(left=F(2), right=F("2.25")),
        )
        for each, near, far in ((PAIR[0], F("2.875"), F(2)), (PAIR[1], F(2), F(3)))
    )
    # Of the sides between them nothing is taken.
    between = {"reveals": F(1, 2), "horns": F(2), "widths": F("1.5")}
    left, right = (
        replace(each, **{name: replace(getattr(each, name), **{side: by}) for name, by in between.items()})
        for each, side in ((left, "right"), (right, "left"))
    )
    shared = build_group((left, right), Group(mark="pair", gaps=(F(12),))).shared
    assert shared is not None
    stool, apron = shared.pieces[:2]
    # 78 between the outer jambs; 1/4 + 2 + 1/2 at the left end, 1/8 + 2 1/4 + 1 at the right.
    assert stool.overall == 78 + F("2.75") + F("3.375")
    assert apron.overall == stool.overall - F("1.5")
    assert [end.notch and (end.notch.length, end.notch.end_depth) for end in stool.ends] == [
        (F("2.75"), F("2.875")),
        (F("3.375"), F(3)),
    ]
    assert shared.opening.mark == "pair"


def test_the_mulls_of_joined_units_are_sawn_out_where_they_stand() -> None:
    trim = replace(TRIM, mull_casing=Casing(width=F(3), thickness=F(5, 8), profile="mull"))
    unit = replace(window(60, "R"), trim=trim)
    unit = replace(unit, readings=mulled(unit.readings, (Mull(F(28), F(4)),)))
    left = replace(PAIR[0], trim=trim)
    for members, places in (
        # 3 7/16 from the stool's end to the first jamb.
        ((left, unit), [(F("33.4375"), F(12)), (F("73.4375"), F(4))]),
        ((unit, left), [(F("31.4375"), F(4)), (F("63.4375"), F(12))]),
    ):
        shared = build_group(members, Group(mark="g", gaps=(F(12),))).shared
        assert shared is not None
        assert [(one.at, one.length) for one in shared.pieces[0].cutouts] == places


def test_a_mull_between_unequal_depths_is_sawn_out_to_each() -> None:
    trim = replace(TRIM, mull_casing=Casing(width=F(3), thickness=F(5, 8), profile="mull"))
    readings = replace(mulled(window(60, "R").readings, (Mull(F(28), F(4)),)), right_depth=F("3.5"))
    unit = replace(window(60, "R"), trim=trim, readings=readings)
    shared = build_group((replace(PAIR[0], trim=trim), unit), Group(mark="g", gaps=(F(12),))).shared
    assert shared is not None
    mull = shared.pieces[0].cutouts[1]
    assert (mull.length, mull.depth, mull.end_depth) == (F(4), F("3.125"), F("3.5"))


def test_a_stool_longer_than_its_stock_is_scarfed_over_the_gap() -> None:
    found = build_group(PAIR, Group(mark="pair", gaps=(F(12),), stock_length=F(72)))
    assert found.shared is not None
    left, right = (piece for piece in found.shared.pieces if piece.kind == "stool")
    # The joint's middle lies over the gap's, 3 7/16 + 36 from the stool's end; half the thickness, 3/8, laps over.
    assert (left.overall, right.overall) == (F("39.8125"), F("45.8125"))
    assert left.overall + right.overall == F("84.875") + F(3, 4)
    assert (left.ends[1].cut, left.ends[1].long_edge) == (CutKind.BEVEL, "back")
    assert (right.ends[0].cut, right.ends[0].long_edge) == (CutKind.BEVEL, "face")
    assert left.ends[1].bevel_direction is right.ends[0].bevel_direction is Hand.LEFT
    assert left.cutouts[0].length + right.cutouts[0].length == F(12) + F(3, 4)
    assert (str(left.key), str(right.key)) == ("stool/1 of 2", "stool/2 of 2")
    assert left.title == "stool 1 of 2"


def test_studs_that_are_named_are_used() -> None:
    studs = (F(16), F(32), F(48), F(64))
    found = build_group(PAIR, Group(mark="pair", gaps=(F(12),), stock_length=F(72), solid=studs))
    assert found.shared is not None
    left = next(piece for piece in found.shared.pieces if piece.kind == "stool")
    assert left.overall == F("3.4375") + 64 + F(3, 8)


def test_a_mulled_unit_has_its_stool_sawn_out_at_each_mull() -> None:
    trim = replace(TRIM, mull_casing=Casing(width=F(3), thickness=F(5, 8), profile="mull"))
    base = replace(window(60), trim=trim)
    unit = replace(base, readings=mulled(base.readings, (Mull(F(28), F(4)),)))
    stool = build_opening(unit).pieces[0]
    assert stool.cutouts == (Cutout(F("31.4375"), F(4), F("3.125")),)


def test_a_mulled_units_stool_is_jointed_over_a_mull() -> None:
    trim = replace(TRIM, mull_casing=Casing(width=F(3), thickness=F(5, 8), profile="mull"))
    base = replace(window(100), trim=trim)
    unit = replace(base, readings=mulled(base.readings, (Mull(F(30), F(4)), Mull(F(66), F(4)))))
    found = build_group((unit,), Group(mark="bay", gaps=(), stock_length=F(96))).shared
    assert found is not None
    left, right = (piece for piece in found.pieces if piece.kind == "stool")
    # 106 7/8 in all; the farther mull's middle, 68 in from the jamb, is the last within a stick.
    assert left.overall == F("3.4375") + 68 + F(3, 8)
    assert left.overall + right.overall == F("106.875") + F(3, 4)


@pytest.mark.parametrize(
    ("members", "group", "path", "code"),
    [
        (PAIR[:1], Group(mark="g"), "group openings", "too-few"),
        (PAIR, Group(mark="g", heads=(F(80),)), "group heads", "head-count"),
        (PAIR, Group(mark="g", gaps=()), "group gaps", "gap-count"),
        (PAIR, Group(mark="g", gaps=(F(12), F(12))), "group gaps", "gap-count"),
        (PAIR, Group(mark="g", gaps=(F(12),), stock_length=F(30)), "group solid", "no-joint-in-reach"),
        (
            (PAIR[0], replace(PAIR[1], trim=Trim(CASING, F(3, 16)), bottom=Bottom.CASING)),
            Group(mark="g", gaps=(F(12),)),
            "openings 1 bottom",
            "stool-missing",
        ),
        (
            (PAIR[0], replace(PAIR[1], trim=replace(TRIM, stool=replace(STOOL, horn=F(1))))),
            Group(mark="g", gaps=(F(12),)),
            "openings 1 trim",
            "stools-differ",
        ),
    ],
)
def test_groups_that_do_not_go_together_are_refused(
    members: tuple[Opening, ...], group: Group, path: str, code: str
) -> None:
    with pytest.raises(GeometryError) as refused:
        build_group(members, group)
    assert (path, code) in {(" ".join(map(str, fault.path)), fault.code) for fault in refused.value.faults}


def test_heads_are_lined_up_with_the_highest_and_each_lower_one_has_its_offer() -> None:
    members = (window(30, "L"), window(24, "M"), window(36, "R"))
    low = (F(80), F("80.25"), F("80.125"))
    (finding,) = build_group(members, Group(mark="bay", heads=low)).findings
    assert finding.amount == F(1, 4)
    assert [offer.path[1] for offer in finding.offers] == [0, 2]
    assert str(finding.offers[0].detail) == (
        "Set the head of L 1/4 in higher on its jamb, to line up with the highest. "
        "Nothing is out of line once every head that lies lower is set so."
    )
    assert finding.offers[1].worth == F("0.3125")
    (alone,) = build_group(PAIR, Group(mark="pair", heads=(F(80), F("80.25")))).findings
    assert str(alone.offers[0].detail).endswith("to line up with the highest.")


@pytest.mark.parametrize(("higher", "answer"), [("0.5624", "line_up_head"), ("0.5625", "fur_head")])
def test_a_head_reveal_stays_on_its_jamb(higher: str, answer: str) -> None:
    # The jamb is 3/4 in thick and the reveal 3/16: what is lined up by 9/16 has no jamb left to lie on.
    (finding,) = build_group(PAIR, Group(mark="pair", heads=(F(80), 80 + F(higher)))).findings
    assert [offer.answer for offer in finding.offers] == [answer]


def test_only_the_horns_at_the_ends_of_what_is_shared_are_judged() -> None:
    left, right = (replace(each, trim=replace(TRIM, stool=replace(STOOL, scribe=F(1, 2)))) for each in PAIR)

    def horn(one: Opening, **depth: F) -> Opening:
        return replace(one, readings=replace(one.readings, **depth))

    between = (horn(left, right_horn_depth=F(1, 4)), horn(right, left_horn_depth=F(1, 4)))
    assert build_group(between, Group(mark="g", gaps=(F(12),))).shared is not None
    ends = (horn(left, left_horn_depth=F(1, 4)), horn(right, right_horn_depth=F(1, 4)))
    assert _refused(ends) == {
        (("openings", 0, "readings", "left_horn_depth"), "depth-too-small"),
        (("openings", 1, "readings", "right_horn_depth"), "depth-too-small"),
    }


def test_a_narrow_stock_and_a_short_one_are_told_together() -> None:
    trim = replace(TRIM, stool=replace(STOOL, stock_width=F(4)))
    members = tuple(replace(each, trim=trim) for each in PAIR)
    assert _refused(members, stock_length=F(30)) == {
        (("openings", 0, "trim", "stool", "stock_width"), "stock-too-narrow"),
        (("group", "solid"), "no-joint-in-reach"),
    }


def _refused(members: tuple[Opening, ...], **more: Any) -> set[tuple[tuple[str | int, ...], str]]:
    with pytest.raises(GeometryError) as refused:
        build_group(members, Group(mark="g", gaps=(F(12),), **more))
    assert len(set(refused.value.faults)) == len(refused.value.faults)
    return {(fault.path, fault.code) for fault in refused.value.faults}


def test_a_group_tells_of_a_member_at_the_reading_that_was_sent() -> None:
    bare = replace(PAIR[1], readings=replace(PAIR[1].readings, left_depth=None, right_depth=None))
    at = ("openings", 1, "readings")
    assert _refused((PAIR[0], bare)) == {((*at, "jamb_depth"), "depth-missing")}
    triangle = replace(PAIR[1], readings=read(Polygon((F(30), F(30), F(30))), F(3), F(3)))
    assert _refused((PAIR[0], triangle)) == {((*at, "sides"), "not-plumb")}


def test_every_member_of_a_group_needs_depth_for_its_notch() -> None:
    trim = replace(TRIM, stool=replace(STOOL, sash_clearance=F(1, 2)))
    left, right = (replace(each, trim=trim) for each in PAIR)
    shallow = replace(right, readings=replace(right.readings, left_depth=F(1, 2)))
    assert _refused((left, shallow)) == {(("openings", 1, "readings", "left_depth"), "depth-too-small")}
    alike = replace(
        left, readings=replace(left.readings, left_depth=None, right_depth=None, jamb_depth=F(1, 4))
    )
    assert _refused((alike, right)) == {(("openings", 0, "readings", "jamb_depth"), "depth-too-small")}


def test_a_shared_stool_wider_than_its_stock_is_told_at_the_first_members_trim() -> None:
    trim = replace(TRIM, stool=replace(STOOL, stock_width=F(4)))
    members = tuple(replace(each, trim=trim) for each in PAIR)
    assert _refused(members) == {(("openings", 0, "trim", "stool", "stock_width"), "stock-too-narrow")}


@given(st.integers(40, 400), st.sets(st.integers(1, 400), max_size=12), st.integers(30, 200))
def test_joints_are_as_few_as_can_be(length: int, solid: set[int], stock: int) -> None:
    thick = F(3, 4)
    found = joints(F(length), tuple(F(place) for place in solid), F(stock), thick)
    fewest = _fewest(length, sorted(place for place in solid if thick < place < length - thick), stock, thick)
    assert (None if found is None else len(found)) == fewest
    if found:
        bounds = (F(0), *found, F(length))
        laps = [F(0), *(thick / 2 for _ in found), F(0)]
        for number in range(len(found) + 1):
            assert bounds[number + 1] - bounds[number] + laps[number] + laps[number + 1] <= stock


def _fewest(length: int, places: list[int], stock: int, thick: F) -> int | None:
    """By trying: how few joints reach the end."""
    reached = {F(0): 0}
    for place in [*map(F, places), F(length)]:
        lap = F(0) if place == length else thick / 2
        ways = [
            joints_ + 1
            for start, joints_ in reached.items()
            if start < place and place - start + lap + (thick / 2 if start else 0) <= stock
        ]
        if ways:
            reached[place] = min(ways)
    assume(length not in places)
    return None if F(length) not in reached else reached[F(length)] - 1
