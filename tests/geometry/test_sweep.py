"""Corners from 30 to 150 degrees, casing from a hair to where a piece vanishes: joints hold or the reason is told."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.builders import F, opening
from longpoint.geometry import (
    Bottom,
    Built,
    Casing,
    End,
    GeometryError,
    Polygon,
    Quadrilateral,
    Trim,
    build_opening,
)

angles = st.integers(30 * 16, 150 * 16).map(lambda n: F(n, 16))
widths = st.integers(1, 64 * 12).map(lambda n: F(n, 64))
reveals = st.integers(0, 40).map(lambda n: F(n, 64))


def signed(end: End) -> float:
    """A miter, negative where the inner edge is the longer."""
    return -float(end.miter) if end.long_edge == "inner" else float(end.miter)


def framed(shape: Polygon | Quadrilateral, casing: F, head: F, reveal: F) -> Built:
    trim = Trim(
        Casing(width=casing, thickness=F(1, 2), profile="legs"),
        reveal,
        head_casing=Casing(width=head, thickness=F(1, 2), profile="head"),
    )
    return build_opening(opening(shape, trim, bottom=Bottom.CASING, square_gap=F(0)))


def check_joints(built: Built) -> None:
    """At every corner the two readings make up what the corner leaves of a straight line, and no edge is lost."""
    pieces = {piece.side: piece for piece in built.pieces}
    order = ("sill", "right", "head", "left") if len(pieces) == 4 else ("sill", "right", "left")
    for index, corner in enumerate(built.frame.corners):
        mine, theirs = pieces[order[index]], pieces[order[(index + 1) % len(order)]]
        # A side finishes at the saw's left and the next one starts at the saw's right.
        total = signed(mine.ends[0]) + signed(theirs.ends[1])
        assert total == pytest.approx(180 - float(corner.degrees), abs=1e-7)
    for piece in built.pieces:
        assert min(piece.short_point, piece.long_point) > 0
        runs = [float(piece.width) * math.tan(math.radians(signed(end))) for end in piece.ends]
        assert float(piece.long_point - piece.short_point) == pytest.approx(sum(runs), abs=1e-6)
        assert piece.overall >= max(piece.short_point, piece.long_point) - 1e-9


@settings(max_examples=300)
@given(first=angles, second=angles, base=st.integers(8, 96), casing=widths, head=widths, reveal=reveals)
def test_triangles(first: F, second: F, base: int, casing: F, head: F, reveal: F) -> None:
    third = 180 - first - second
    # The sides are given as floats: an angle of 15 comes to a hair less of them.
    if third < 15 or min(first, second, third) - 15 < F(1, 10**6):
        return
    a, b, c = (math.sin(math.radians(each)) for each in (first, second, third))
    # The base's right-hand corner is the first, the apex the second: each side lies across from one of them.
    shape = Polygon((F(base), F(base * c / b), F(base * a / b)))
    # Casing outside a triangle only grows with its width, so none of these may be refused.
    check_joints(framed(shape, casing, head, reveal))


@pytest.mark.parametrize(
    ("shape", "code"),
    [
        (Polygon((F(20), F(10), F(10))), "impossible-triangle"),
        (Polygon((F(20), F("10.01"), F("10.01"))), "angle-out-of-range"),
        (Polygon((F(20),) * 4, (F(1), F(179), F(1), F(179))), "angle-out-of-range"),
        (Polygon((F(20),) * 4, (F(60), F(200), F(60), F(40))), "not-convex"),
        (Polygon((F(20), F(20), F(20), F(25)), (F(90),) * 4), "does-not-close"),
        (Quadrilateral(F(20), F(20), F(20), F(20), F("39.99")), "reading-tells-too-little"),
        (Quadrilateral(F(20), F(20), F(20), F(20), F(40)), "impossible-triangle"),
    ],
)
def test_readings_near_to_singular_are_refused_with_the_reason(
    shape: Polygon | Quadrilateral, code: str
) -> None:
    with pytest.raises(GeometryError) as refused:
        framed(shape, F(2), F(2), F(1, 8))
    assert code in {fault.code for fault in refused.value.faults}


@settings(max_examples=300)
@given(
    left=angles,
    right=angles,
    width=st.integers(6, 96),
    heights=st.tuples(st.integers(6, 96), st.integers(6, 96)),
    casing=widths,
    head=widths,
    reveal=reveals,
)
def test_quadrilaterals(
    left: F, right: F, width: int, heights: tuple[int, int], casing: F, head: F, reveal: F
) -> None:
    top_left = heights[0] * complex(math.cos(math.radians(left)), math.sin(math.radians(left)))
    top_right = width + heights[1] * complex(-math.cos(math.radians(right)), math.sin(math.radians(right)))
    across = top_right - top_left
    lean = math.degrees(math.atan2(across.imag, across.real))
    upper = (180 - float(left) + lean, 180 - float(right) - lean)
    if not all(30 <= each <= 150 for each in upper) or abs(across) < 1:
        return
    shape = Quadrilateral(
        F(width),
        F(abs(across)),
        F(heights[0]),
        F(heights[1]),
        bottom_left_angle=F(left),
        bottom_right_angle=None,
    )
    try:
        built = framed(shape, casing, head, reveal)
    except GeometryError as refused:
        codes = {fault.code for fault in refused.faults}
        if codes != {"piece-vanishes"}:
            pytest.fail(str(codes))
        # Only where wide casing meets narrow can an edge outside a corner of 30 to 150 degrees be eaten up.
        assert casing != head
        return
    check_joints(built)
