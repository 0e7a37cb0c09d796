"""The apron: flush with the casing's outside edges, its ends returned or square."""

from __future__ import annotations

from geometry.builders import CASING, STOOL, F, opening, piece
from longpoint.geometry import Apron, ApronEnds, CutKind, Hand, PlumbSides, Trim, build_opening

SHAPE = PlumbSides(F("30.625"), F("46.25"), F("46.25"))


def test_the_worked_window() -> None:
    built = build_opening(opening(SHAPE))
    apron = piece(built, "apron")
    assert apron.long_point == apron.overall == 36
    assert apron.overall == piece(built, "head_casing").long_point
    assert apron.short_point == 36 - 2 * F(5, 8)


def test_the_ends_are_bevelled_so_that_the_face_is_long() -> None:
    apron = piece(build_opening(opening(SHAPE)), "apron")
    assert [(end.cut, end.bevel, end.long_edge) for end in apron.ends] == [(CutKind.BEVEL, 45, "face")] * 2
    assert [end.bevel_direction for end in apron.ends] == [Hand.LEFT, Hand.RIGHT]


def test_each_return_is_as_long_as_the_apron_is_thick() -> None:
    built = build_opening(opening(SHAPE))
    for side in ("left", "right"):
        one = piece(built, f"apron_return/{side}")
        assert (one.long_point, one.short_point) == (F(5, 8), 0)
        assert sorted(end.cut for end in one.ends) == [CutKind.BEVEL, CutKind.SQUARE]
        assert any("Too short to hold" in str(note) for note in one.notes)


def test_returns_are_a_mirrored_pair() -> None:
    built = build_opening(opening(SHAPE))
    left, right = piece(built, "apron_return/left"), piece(built, "apron_return/right")
    assert [end.at for end in left.ends] == ["wall", "front"]
    assert [end.at for end in right.ends] == ["front", "wall"]
    assert (left.ends[1].bevel_direction, right.ends[0].bevel_direction) == (Hand.RIGHT, Hand.LEFT)


def test_square_ends_have_no_returns() -> None:
    square = Apron(width=F(5, 2), thickness=F(5, 8), ends=ApronEnds.SQUARE, profile="apron")
    built = build_opening(opening(SHAPE, Trim(CASING, F(3, 16), stool=STOOL, apron=square)))
    assert [str(each.key) for each in built.pieces if str(each.key).startswith("apron")] == ["apron"]
    assert piece(built, "apron").short_point == 36
