"""A miter that moved, drawn as two outlines and measured there."""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon

from longpoint.geometry.fit.miter_gap import miter_gap
from longpoint.lengths import Fraction


def faces(width: float, change: float, miter: float) -> tuple[complex, complex]:
    """Both cuts, from short point to long point: the run along the grain is kept, and the second piece is the first
    one's picture in the joint as it was made."""
    run = width * math.tan(math.radians(miter))
    joint = complex(run, width)
    one = complex(run, width + change)
    other = (one / joint).conjugate() * joint
    return one, other


@given(st.floats(0.5, 12), st.floats(-0.08, 0.08), st.floats(1, 80))
def test_the_gap_is_that_between_the_drawn_tips(width: float, part: float, miter: float) -> None:
    found = miter_gap(width, width * part, miter)
    one, other = faces(width, width * part, miter)
    assert found.face == pytest.approx(abs(one), abs=1e-9)
    assert found.gap == pytest.approx(abs(one - other), abs=1e-9)
    assert math.radians(found.opens_degrees) == pytest.approx(abs(cmath.phase(one / other)), abs=1e-9)
    assert found.miter_after == pytest.approx(90 - math.degrees(cmath.phase(one)), abs=1e-9)
    at_the_edge = math.degrees(math.atan2(1 + part, math.tan(math.radians(miter))))
    assert found.opens_degrees == pytest.approx(abs(2 * (90 - miter - at_the_edge)), abs=1e-9)


@pytest.mark.parametrize("miter", [20, 45, 60])
@pytest.mark.parametrize("change", [-0.1, 0.1])
def test_touching_at_its_other_end_the_joint_does_not_overlap(miter: float, change: float) -> None:
    """Put together at the open end instead, the pieces would have to go through each other."""
    one, other = faces(3, change, miter)
    opens_at = miter_gap(3, change, miter).opens_at
    overlap = {}
    for touching in ("short point", "long point"):
        first = [0j, one, one - 20, -20 + 0j]
        second = [(each / complex(3 * math.tan(math.radians(miter)), 3)).conjugate() for each in first]
        second = [each * complex(3 * math.tan(math.radians(miter)), 3) for each in second]
        shift = one - other if touching == "long point" else 0
        outlines = [
            Polygon([(each.real, each.imag) for each in row]) for row in (first, [e + shift for e in second])
        ]
        overlap[touching] = outlines[0].intersection(outlines[1]).area
    closed_end = "long point" if opens_at == "short point" else "short point"
    assert overlap[closed_end] == pytest.approx(0, abs=1e-9)
    assert overlap[opens_at] > 0.01


def test_a_square_cut_and_wood_that_stays_have_no_gap() -> None:
    assert miter_gap(Fraction(5, 2), Fraction(0), 45).gap == 0
    assert miter_gap(Fraction(5, 2), Fraction(0), 45).opens_at == ""
    square = miter_gap(Fraction(5, 2), Fraction(-1, 20), 0)
    assert (square.gap, square.opens_at, square.face) == (0, "", pytest.approx(2.45))


def test_worked_by_hand() -> None:
    """2 1/2 wide at 45 shrinks by a tenth: the run of 2.5 stays, so the tangent of the cut is 2.5/2.4, the face is
    the root of 2.5^2 + 2.4^2, and the gap is 2 x 0.1 x 2.5 over the length of the old face."""
    found = miter_gap(Fraction(5, 2), Fraction(-1, 10), 45)
    assert found.face == pytest.approx(math.sqrt(2.5**2 + 2.4**2), abs=1e-12)
    assert found.gap == pytest.approx(2 * 0.1 * 2.5 / (2.5 * math.sqrt(2)), abs=1e-12)
