"""The adjustment of readings, against a published adjustment of a level net and another method's of a quadrilateral."""

from __future__ import annotations

import math

import numpy as np
import pytest

from longpoint.geometry.fit import least_squares
from longpoint.geometry.fit.adjust import adjust
from longpoint.geometry.fit.readings import Reading, ReadingKind

# Found: output of GNU Gama 1.5.09, "Sample 1D vertical least square adjustment", vrmapper.com/gama/1doutput.html.
# Differences of height in meters, each with an a priori standard deviation of 5 mm; point 1a is held at 1000.000.
LEVELED = (
    ("1a", "4", -1.225, -1.22488),
    ("4", "3", -0.848, -0.84187),
    ("3", "2", 1.342, 1.34163),
    ("2", "1a", 0.720, 0.72513),
    ("1a", "2", -0.724, -0.72513),
    ("2", "3", -1.335, -1.34163),
    ("3", "4", 0.842, 0.84187),
    ("4", "1a", 1.231, 1.22488),
)
HEIGHTS = {"4": 998.77513, "3": 997.93325, "2": 999.27487}
SPREAD = 0.005


def test_a_published_level_net() -> None:
    """Its heights, adjusted differences, standard deviations (3.1, 3.5 and 3.1 mm), [pvv] of 146.625 mm^2, a posteriori
    5.42 mm, and the largest normalized residual, 1.68 at observation 6."""
    order = list(HEIGHTS)
    rows = [[((end == p) - (start == p)) / SPREAD for p in order] for start, end, _, _ in LEVELED]
    held = [((end == "1a") - (start == "1a")) * 1000.0 for start, end, _, _ in LEVELED]
    misfits = [(read - base) / SPREAD for (_, _, read, _), base in zip(LEVELED, held, strict=True)]
    factor = least_squares.factor(rows, 3)
    assert factor is not None
    heights = least_squares.solve(factor, least_squares.gathered(rows, misfits, 3))
    assert dict(zip(order, heights, strict=True)) == pytest.approx(HEIGHTS, abs=6e-6)
    cofactors = least_squares.inverse(factor)
    assert [1000 * math.sqrt(cofactors[n][n]) for n in range(3)] == pytest.approx([3.1, 3.5, 3.1], abs=0.05)
    said = [sum(a * h for a, h in zip(row, heights, strict=True)) for row in rows]
    left = [misfit - each for misfit, each in zip(misfits, said, strict=True)]
    adjusted = [read - each * SPREAD for (_, _, read, _), each in zip(LEVELED, left, strict=True)]
    assert adjusted == pytest.approx([each for _, _, _, each in LEVELED], abs=6e-6)
    squares = sum((1000 * SPREAD * each) ** 2 for each in left)
    assert squares == pytest.approx(146.625, abs=0.001)
    assert math.sqrt(squares / 5) == pytest.approx(5.42, abs=0.005)
    normalized = [abs(each) for each in least_squares.residuals(rows, left, cofactors).standardized]
    assert normalized.index(max(normalized)) == 5
    assert max(normalized) == pytest.approx(1.68, abs=0.005)


# Readings found: Zaki, El Kady and Ahmed, "A new treatment for the adjustment of trilateration networks", ISPRS
# Congress 1992, piece B3, the data lines of their program; meters. The corrections they print are not in the stored
# text: they are computed below by the paper's method, one condition between the six sides and no coordinates.
SIDES = (1341.785, 2775.364, 2167.437, 1937.887, 2173.715, 1511.014)


def volume(sides: np.ndarray) -> float:
    """What vanishes where four points with these six distances lie in one plane (Cayley and Menger), in the order AB,
    AC, AD, BC, BD, CD; sides in kilometers."""
    ab, ac, ad, bc, bd, cd = (sides / 1000) ** 2
    return float(
        np.linalg.det(
            [[0, 1, 1, 1, 1], [1, 0, ab, ac, ad], [1, ab, 0, bc, bd], [1, ac, bc, 0, cd], [1, ad, bd, cd, 0]]
        )
    )


def by_condition(sides: np.ndarray) -> np.ndarray:
    """The least corrections that satisfy the one condition: along its gradient, again until it holds."""
    found = sides.copy()
    for _ in range(50):
        gradient = np.array(
            [(volume(found + step) - volume(found - step)) / 0.02 for step in np.eye(6) * 0.01]
        )
        left = volume(found) + gradient @ (sides - found)
        found = sides - gradient * left / (gradient @ gradient)
    return found


def test_a_braced_quadrilateral_by_one_condition_and_by_coordinates() -> None:
    """Computed. AC and BD cross: of three products of opposite distances theirs is the largest (Ptolemy)."""
    sides = np.array(SIDES)
    corrected = by_condition(sides)
    kinds = (
        ReadingKind.WIDTH_BOTTOM,
        ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT,
        ReadingKind.HEIGHT_LEFT,
        ReadingKind.HEIGHT_RIGHT,
        ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT,
        ReadingKind.WIDTH_TOP,
    )
    shape = adjust([Reading(kind, side, spread=1.0) for kind, side in zip(kinds, SIDES, strict=True)])
    assert shape is not None
    assert volume(corrected) == pytest.approx(0, abs=1e-9)
    assert [-each for each in shape.residuals] == pytest.approx(list(corrected - sides), abs=1e-5)
    assert max(abs(corrected - sides)) == pytest.approx(0.006183, abs=1e-6)
