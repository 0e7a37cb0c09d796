"""Casing: legs, head and sill for every foot and head style."""

from __future__ import annotations

import pytest

from geometry.builders import CASING, F, opening, piece
from longpoint.geometry import (
    Bottom,
    Casing,
    CutKind,
    Hand,
    HeadStyle,
    Plinth,
    PlumbSides,
    Polygon,
    Reveals,
    Trim,
    build_opening,
)

SHAPE = PlumbSides(F("30.625"), F("46.25"), F("46.25"))
PLAIN = Trim(CASING, F(3, 16))


def test_the_worked_window() -> None:
    built = build_opening(opening(SHAPE))
    for side in ("left", "right"):
        leg = piece(built, f"side_casing/{side}")
        assert (leg.short_point, leg.long_point) == (F("46.4375"), F("48.9375"))
    head = piece(built, "head_casing")
    assert (head.short_point, head.long_point, head.overall) == (31, 36, 36)


def test_legs_are_a_mirrored_pair() -> None:
    built = build_opening(opening(SHAPE))
    left, right = piece(built, "side_casing/left"), piece(built, "side_casing/right")
    assert [end.at for end in left.ends] == ["foot", "head"]
    assert [end.at for end in right.ends] == ["head", "foot"]
    assert (left.ends[1].miter_direction, right.ends[0].miter_direction) == (Hand.LEFT, Hand.RIGHT)
    assert left.ends[1].miter == right.ends[0].miter == 45


def test_a_picture_frame_is_mitered_at_four_corners() -> None:
    built = build_opening(opening(SHAPE, PLAIN, bottom=Bottom.CASING))
    assert [str(each.key) for each in built.pieces] == [
        "side_casing/left",
        "head_casing",
        "side_casing/right",
        "bottom_casing",
    ]
    assert all(end.miter == 45 for each in built.pieces for end in each.ends)
    assert piece(built, "bottom_casing").long_point == piece(built, "head_casing").long_point == 36
    assert piece(built, "side_casing/left").long_point == F("46.25") + 2 * F("2.6875")


def test_each_side_may_have_its_own_reveal() -> None:
    own = Reveals(left=F(1, 4), right=F(1, 8), head=F(1, 2), sill=F(0))
    built = build_opening(opening(SHAPE, PLAIN, bottom=Bottom.CASING, reveals=own))
    assert piece(built, "head_casing").short_point == F("30.625") + F(3, 8)
    assert piece(built, "bottom_casing").short_point == F("30.625") + F(3, 8)
    assert piece(built, "side_casing/left").short_point == F("46.25") + F(1, 2)


def test_unequal_widths_share_the_corner_between_two_angles() -> None:
    wide = Trim(CASING, F(3, 16), head_casing=Casing(width=F(7, 2), thickness=F(5, 8), profile="head"))
    built = build_opening(opening(SHAPE, wide, bottom=Bottom.FLOOR))
    on_leg = piece(built, "side_casing/left").ends[1].miter
    on_head = piece(built, "head_casing").ends[0].miter
    assert on_leg + on_head == pytest.approx(90)
    # The joint climbs 3 1/2 while it crosses the leg's 2 1/2.
    assert on_leg == pytest.approx(54.4623, abs=1e-4)
    assert piece(built, "side_casing/left").long_point == F("46.25") + F(3, 16) + F(7, 2)


def test_a_butted_head_runs_past_square_legs() -> None:
    butted = Trim(CASING, F(3, 16), head_style=HeadStyle.BUTTED, overhang=F(1, 2))
    built = build_opening(opening(SHAPE, butted, bottom=Bottom.FLOOR))
    leg, head = piece(built, "side_casing/left"), piece(built, "head_casing")
    assert leg.short_point == leg.long_point == F("46.4375")
    assert head.overall == 36 + 1
    assert {end.cut for each in (leg, head) for end in each.ends} == {CutKind.SQUARE}


def test_a_doors_legs_stop_short_of_the_floor() -> None:
    built = build_opening(
        opening(SHAPE, Trim(CASING, F(3, 16), floor_clearance=F(1, 8)), bottom=Bottom.FLOOR)
    )
    assert piece(built, "side_casing/right").short_point == F("46.4375") - F(1, 8)


def test_plinth_blocks_take_their_height_off_the_legs() -> None:
    trim = Trim(CASING, F(3, 16), plinth=Plinth(width=F(3), height=F(6), thickness=F(3, 4), profile="plinth"))
    built = build_opening(opening(SHAPE, trim, bottom=Bottom.PLINTH))
    assert piece(built, "side_casing/right").short_point == F("46.4375") - 6
    for side in ("left", "right"):
        block = piece(built, f"plinth_block/{side}")
        assert (block.overall, block.width, block.thickness) == (6, 3, F(3, 4))


def test_two_heights_give_each_leg_its_own() -> None:
    shape = PlumbSides(F(30), F(46), F(45))
    built = build_opening(opening(shape, PLAIN, bottom=Bottom.FLOOR))
    left, right = piece(built, "side_casing/left"), piece(built, "side_casing/right")
    # The head leans 1 in 30; its reveal line lies 3/16 off it square, so higher where a plumb leg meets it.
    lean = (1 + 1 / 900) ** 0.5
    rise = 3 / 16 / 30
    assert left.short_point == pytest.approx(46 + 3 / 16 * lean + rise)
    assert right.short_point == pytest.approx(45 + 3 / 16 * lean - rise)
    assert left.ends[0].cut is right.ends[1].cut is CutKind.SQUARE
    miters = [left.ends[1].miter, right.ends[0].miter]
    assert sum(miters) == pytest.approx(90)
    assert miters[0] - miters[1] == pytest.approx(1.9092, abs=1e-4)


@pytest.mark.parametrize(("sides", "setting"), [(3, 60), (5, 36), (6, 30), (8, 22.5), (12, 15)])
def test_a_regular_shape_takes_one_setting_all_round(sides: int, setting: float) -> None:
    shape = Polygon((F(20),) * sides, (F(180) - F(360, sides),) * sides)
    built = build_opening(opening(shape, PLAIN, bottom=Bottom.CASING))
    assert len(built.pieces) == sides
    assert [end.miter for each in built.pieces for end in each.ends] == pytest.approx([setting] * 2 * sides)


def test_a_miter_past_most_saws_is_noted() -> None:
    built = build_opening(opening(Polygon((F(20), F(20), F(20))), PLAIN, bottom=Bottom.CASING))
    assert all(any("sharper than most saws" in str(note) for note in each.notes) for each in built.pieces)


def test_the_ends_of_many_heads_go_by_the_side_they_meet() -> None:
    built = build_opening(opening(Polygon((F(20),) * 6, (F(120),) * 6), PLAIN, bottom=Bottom.CASING))
    ends = {str(each.key): [end.at for end in each.ends] for each in built.pieces}
    assert ends["head_casing/1"] == ["left", "head 2"]
    assert ends["head_casing/2"] == ["head 1", "head 3"]
    assert ends["head_casing/3"] == ["head 2", "right"]
    assert ends["bottom_casing"] == ["right", "left"]
