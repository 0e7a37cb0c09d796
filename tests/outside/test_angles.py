"""Angles against figures published outside this project, or computed from a published formula."""

from __future__ import annotations

import math

import pytest

from geometry.builders import read
from longpoint.geometry import (
    Arch,
    Bottom,
    Casing,
    GeometryError,
    Opening,
    Polygon,
    Quadrilateral,
    Trim,
    build_opening,
    compound,
    corners,
)
from longpoint.geometry.frame.arch import curve, radius_of
from longpoint.lengths import Fraction
from longpoint.values import Faults

F = Fraction

# The 90 degree cells are the figures printed on crown molding tables and on saws' own detents (from memory);
# the others are computed from the same formula by an independent program.
CROWN = {
    60: (46.84, 43.03, 50.77, 37.76),
    80: (36.27, 37.13, 40.12, 32.80),
    88: (32.52, 34.53, 36.21, 30.57),
    90: (31.62, 33.86, 35.26, 30.00),
    92: (30.73, 33.19, 34.33, 29.42),
    100: (27.32, 30.43, 30.68, 27.03),
    120: (19.57, 23.20, 22.21, 20.70),
    135: (14.31, 17.55, 16.32, 15.70),
}


@pytest.mark.parametrize("corner", CROWN)
def test_compound_settings_match_the_crown_tables(corner: int) -> None:
    at_38, at_45 = compound(corner, 38), compound(corner, 45)
    assert (*at_38, *at_45) == pytest.approx(CROWN[corner], abs=0.006)


@pytest.mark.parametrize("corner", range(30, 151, 15))
@pytest.mark.parametrize("spring", [10, 38, 45, 52, 80, 90])
def test_compound_settings_keep_the_identities_of_the_formula(corner: int, spring: int) -> None:
    miter, bevel = (math.radians(each) for each in compound(corner, spring))
    half, lean = math.radians(corner / 2), math.radians(spring)
    assert math.cos(bevel) * math.cos(miter) == pytest.approx(math.sin(half))
    assert math.cos(bevel) * math.sin(miter) == pytest.approx(math.sin(lean) * math.cos(half))


@pytest.mark.parametrize("corner", range(30, 151, 10))
def test_casing_lying_flat_needs_no_bevel(corner: int) -> None:
    assert compound(corner, 90) == pytest.approx((90 - corner / 2, 0), abs=1e-9)


@pytest.mark.parametrize(("sides", "setting"), [(3, 60), (4, 45), (5, 36), (6, 30), (8, 22.5), (12, 15)])
def test_regular_polygons_are_cut_at_180_over_n(sides: int, setting: float) -> None:
    """The saw's setting for n equal sides: plane geometry, printed in any segment table (from memory)."""
    shape = Polygon((F(20),) * sides, (180 - F(360, sides),) * sides)
    built = build_opening(_bare(shape))
    assert {round(float(end.miter), 6) for piece in built.pieces for end in piece.ends} == {setting}


def _bare(shape: Polygon | Quadrilateral | Arch) -> Opening:
    trim = Trim(Casing(width=F(2), thickness=F(5, 8), profile="casing"), F(1, 8))
    return Opening("T", read(shape), trim=trim, bottom=Bottom.CASING, square_gap=F(0))


@pytest.mark.parametrize(
    ("sides", "index", "degrees"),
    [((3, 4, 5), 0, 90), ((5, 7, 8), None, 81.7868), ((13, 14, 15), 0, 67.3801)],
)
def test_triangles_by_the_law_of_cosines(
    sides: tuple[int, int, int], index: int | None, degrees: float
) -> None:
    """Computed from the law of cosines: 3, 4, 5; between 5 and 7 of 5, 7, 8; between 13 and 14 of 13, 14, 15."""
    found = corners(_bare(Polygon(tuple(F(10 * side) for side in sides)))).corners
    angle = found[0 if index is None else index].degrees
    assert float(angle) == pytest.approx(degrees, abs=5e-5)


@pytest.mark.parametrize(
    ("sides", "diagonal", "expected"),
    [
        ((36, 36, 48, 48), "60.25", [89.5016, 89.5016, 90.4984, 90.4984]),
        ((36, "36.25", 48, 48), "60", [89.7026, 89.9990, 90, 90.2984]),
    ],
)
def test_quadrilaterals_by_a_diagonal(sides: tuple[int, ...], diagonal: str, expected: list[float]) -> None:
    """Computed by an independent program from the law of cosines."""
    shape = Quadrilateral(*(F(side) for side in sides), diagonal_from_bottom_left=F(diagonal))
    found = sorted(float(each.degrees) for each in corners(_bare(shape)).corners)
    assert found == pytest.approx(expected, abs=5e-5)


def test_readings_that_break_the_triangle_inequality_are_refused() -> None:
    with pytest.raises(GeometryError):
        corners(_bare(Quadrilateral(F(36), F(36), F(48), F(48), diagonal_from_bottom_left=F(85))))


def test_arc_from_chord_and_rise() -> None:
    """Machinery's Handbook, 31st edition, pages 79 and 83: chord 16, rise 6; radius 60, rise 8."""
    assert radius_of(F(16), F(6)) == F(25, 3)
    chord = 2 * math.sqrt(8 * (2 * 60 - 8))
    assert chord == pytest.approx(59.86, abs=0.01)
    assert float(radius_of(F(chord), F(8))) == pytest.approx(60)


def test_arc_length_and_angle() -> None:
    """A public manual of shop mathematics: chord 21, rise 6 gives radius 12.1875, 118.97953 degrees, 25.308373."""
    found = curve(Arch(F(21), F(40), F(6), head_pieces=4), Faults())
    assert found is not None
    assert float(found.radius) == 12.1875
    assert 2 * found.half_angle == pytest.approx(118.97953, abs=1e-5)
    assert found.length == pytest.approx(25.308373, abs=1e-5)
