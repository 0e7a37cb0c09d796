"""Curved heads in straight segments."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from geometry.builders import CASING, F, opening
from longpoint.geometry import Arch, Bottom, Casing, GeometryError, Trim, build_opening
from longpoint.geometry.frame.arch import curve
from longpoint.values import Faults

BARE = Trim(CASING, F(3, 16))
SLIM = Trim(Casing(width=F(1, 4), thickness=F(1, 4), profile="slim"), F(0))


def half_angle(chord: F, rise: F) -> float:
    return 2 * math.degrees(math.atan2(2 * rise, chord))


def test_a_half_round_of_six_pieces_has_the_regular_saw_angles() -> None:
    built = build_opening(opening(Arch(F(36), F(40), F(18), head_pieces=6), bottom=Bottom.FLOOR))
    heads = [piece for piece in built.pieces if piece.kind == "head_casing"]
    assert len(heads) == 6
    # Half a circle in six is a regular twelve-sided figure: 15 degrees between pieces, half that at the legs.
    assert heads[0].ends[0].miter == pytest.approx(7.5)
    assert heads[0].ends[1].miter == pytest.approx(15)
    assert {round(float(piece.long_point - piece.short_point), 6) for piece in heads[1:-1]} == {
        round(2 * 2.5 * math.tan(math.radians(15)), 6)
    }


def test_the_number_of_pieces_follows_from_the_departure() -> None:
    shape = Arch(F(48), F(60), F(12), departure=F(1, 4))
    found = curve(shape, Faults())
    fewer = curve(Arch(F(48), F(60), F(12), head_pieces=found.pieces - 1), Faults()) if found else None
    assert found is not None
    assert fewer is not None
    assert found.departure <= 0.25 < fewer.departure


@given(
    chord=st.integers(12, 120).map(F),
    rise=st.integers(5, 50),
    pieces=st.integers(3, 24),
    legs=st.sampled_from([F(0), F(30)]),
)
def test_segments_close_on_the_true_curve(chord: F, rise: int, pieces: int, legs: F) -> None:
    shape = Arch(chord, legs, chord * rise / 100, head_pieces=pieces)
    assume(legs or half_angle(chord, shape.rise) * (1 - 1 / pieces) >= 15)
    frame = build_opening(opening(shape, trim=SLIM, bottom=Bottom.CASING)).frame
    found = curve(shape, Faults())
    assert found is not None
    center = (float(chord) / 2, float(legs) + float(shape.rise) - float(found.radius))
    points = frame.vertices[2:] if legs else frame.vertices[1:]
    for point in points:
        assert math.dist(center, point) == pytest.approx(float(found.radius))
    assert math.hypot(*frame.vertices[0]) == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize(
    ("shape", "field"),
    [
        (Arch(F(36), F(40), F(18)), "head_pieces"),
        (Arch(F(36), F(40), F(18), head_pieces=3, departure=F(1)), "head_pieces"),
        (Arch(F(36), F(40), F(19), head_pieces=3), "rise"),
        (Arch(F(36), F(40), F(18), head_pieces=1), "head_pieces"),
        (Arch(F(36), F(40), F(18), departure=F(1, 10000)), "departure"),
        (Arch(F(36), F(0), F(1), head_pieces=3), "rise"),
    ],
)
def test_curves_that_cannot_be_made_are_refused_at_their_field(shape: Arch, field: str) -> None:
    with pytest.raises(GeometryError) as refused:
        build_opening(opening(shape, trim=BARE, bottom=Bottom.CASING))
    assert refused.value.faults[0].path == ("readings", field)


def test_the_curve_says_what_stock_it_could_be_sawn_from() -> None:
    """Radius 18, casing from 18 3/16 to 20 11/16, pieces of 30 degrees: 20.6875 - 18.1875 cos 15."""
    (note,) = build_opening(opening(Arch(F(36), F(40), F(18), head_pieces=6), bottom=Bottom.FLOOR)).notes
    assert f"{20.6875 - 18.1875 * math.cos(math.radians(15)):.3f} in wide" in str(note)
    assert f"{18 * (1 - math.cos(math.radians(15))):.3f} in inside" in str(note)
