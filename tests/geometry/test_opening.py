"""An opening as a whole: when it is taken as square, and what is said of it."""

from __future__ import annotations

import math

import pytest

from geometry.builders import CASING, F, opening, piece
from longpoint.geometry import Bottom, Casing, Pieces, PlumbSides, Polygon, Trim, build_opening

TRIM = Trim(CASING, F(3, 16))
A_HAIR_OUT = PlumbSides(F(32), F(80), F(80) - F(1, 16))
WELL_OUT = PlumbSides(F(32), F(80), F(79))


def test_a_hair_out_of_level_is_taken_as_square_and_the_gap_is_told() -> None:
    built = build_opening(opening(A_HAIR_OUT, TRIM, bottom=Bottom.FLOOR))
    # The head leans 1/16 in over 32; the miter is 2 1/2 by the square root of 2 long.
    assert built.square_gap == pytest.approx(2.5 * math.sqrt(2) / 16 / 32)
    assert any("taken as square" in str(note) for note in built.notes)
    assert piece(built, "side_casing/left").short_point == 80 + F(3, 16)
    assert piece(built, "side_casing/right").short_point == 80 + F(3, 16) - F(1, 16)
    assert {end.miter for each in built.pieces for end in each.ends} == {0, 45}


def test_well_out_of_level_the_head_leans() -> None:
    built = build_opening(opening(WELL_OUT, TRIM, bottom=Bottom.FLOOR))
    assert built.square_gap == 0
    assert any("out of level" in str(note) for note in built.notes)
    assert piece(built, "head_casing").ends[0].miter != 45


def test_a_gap_of_nought_takes_nothing_as_square() -> None:
    built = build_opening(opening(A_HAIR_OUT, TRIM, bottom=Bottom.FLOOR, square_gap=F(0)))
    assert built.square_gap == 0
    assert piece(built, "head_casing").ends[0].miter != 45


def test_a_wider_head_opens_a_wider_gap() -> None:
    wide = Trim(CASING, F(3, 16), head_casing=Casing(width=F(6), thickness=F(3, 4), profile="head"))
    built = build_opening(opening(A_HAIR_OUT, wide, bottom=Bottom.FLOOR))
    assert built.square_gap == pytest.approx(6.5 / 16 / 32)  # 2 1/2, 6, 6 1/2: a right triangle


def test_equal_heights_say_nothing() -> None:
    built = build_opening(opening(PlumbSides(F(32), F(80), F(80)), TRIM, bottom=Bottom.FLOOR))
    assert (built.square_gap, built.notes) == (0, ())


def test_only_the_pieces_asked_for_are_made() -> None:
    shape = PlumbSides(F(30), F(40), F(40))
    assert [str(each.key) for each in build_opening(opening(shape), Pieces.STOOL).pieces] == ["stool"]
    assert [str(each.key) for each in build_opening(opening(shape), Pieces.APRON).pieces] == [
        "apron",
        "apron_return/left",
        "apron_return/right",
    ]


def test_sides_that_close_by_themselves_stay_as_they_were_read() -> None:
    lean = math.degrees(math.atan2(3, 4))
    shape = Polygon((F(40), F(30), F(50), F(60)), (F(90), F(90 + lean), F(90 - lean), F(90)))
    built = build_opening(opening(shape, TRIM, bottom=Bottom.FLOOR))
    assert built.frame.sides == shape.sides
    for side in ("left", "right"):
        foot = next(end for end in piece(built, f"side_casing/{side}").ends if end.at == "foot")
        assert (foot.miter, foot.miter_direction, foot.long_edge) == (0, None, None)


def test_sides_that_close_within_the_tape_let_the_last_one_give_way() -> None:
    shape = Polygon((F(40), F(30), F("50.05"), F("60.05")), (F(90), F("126.9"), F("53.1"), F(90)))
    built = build_opening(opening(shape, TRIM, bottom=Bottom.FLOOR))
    assert built.frame.sides[:3] == shape.sides[:3]
    assert built.frame.sides[3] == pytest.approx(60.05, abs=1 / 8)
    assert sum(float(each.degrees) for each in built.frame.corners) == pytest.approx(360)
