"""Piece numbers in rings: upon the piece where it is broad enough, else beside it with a leader."""

from __future__ import annotations

import math
from collections.abc import Iterable

from longpoint.sheets.drawing.canvas import Canvas
from longpoint.sheets.drawing.shapes import Convex, Point, along, box, shifted

RADIUS = 8.0
_SHARES = (0.5, 0.36, 0.64, 0.22, 0.78, 0.1, 0.9, 0.03, 0.97)
_LEAST_APART = 3.0
"""Leaders nearer to one another than this fare alike: of a short edge, not every share is tried."""
_DISTANCES = tuple(RADIUS + 10 + 7 * step for step in range(40))
_ALL_ROUND = tuple((math.cos(math.tau * n / 24), math.sin(math.tau * n / 24)) for n in range(24))

Edge = tuple[Point, Point]


def number_upon(canvas: Canvas, number: int, center: Point, breadth: float) -> bool:
    """Number a piece on its face; False where it is too narrow or something lies there."""
    if breadth < 2 * RADIUS + 3:
        return False
    ring = _ring(center, RADIUS)
    if not canvas.free(ring, solids=False):
        return False
    canvas.balloon(str(number), center, RADIUS)
    return True


def number_beside(canvas: Canvas, number: int, ways: Iterable[tuple[Edge, Point, Point]]) -> bool:
    """Number a piece from outside it.

    Args:
        canvas: the drawing.
        number: the piece's.
        ways: edges to lead from, with the direction away from the piece there and the way from the edge to
            the leader's foot inside the piece.

    Returns:
        Whether room was found.
    """
    options = tuple(ways)
    tried = _shares(max((math.dist(*edge) for edge, _, _ in options), default=0.0))
    for distance in _DISTANCES:
        for share in tried:
            for edge, away, inside in options:
                if _lead(canvas, number, along(*edge, share), away, inside, distance):
                    return True
    # Hemmed in: lead slantwise from the middle of an edge.
    for distance in _DISTANCES:
        for edge, _, inside in options:
            for away in _ALL_ROUND:
                if _lead(canvas, number, along(*edge, 0.5), away, inside, distance):
                    return True
    return False


def _shares(length: float) -> tuple[float, ...]:
    """Where along an edge to try, its middle first."""
    kept: list[float] = []
    for share in _SHARES:
        if all(abs(share - other) * length >= _LEAST_APART for other in kept):
            kept.append(share)
    return tuple(kept)


def _lead(canvas: Canvas, number: int, start: Point, away: Point, inside: Point, distance: float) -> bool:
    spot = shifted(start, away, distance)
    stop = shifted(spot, away, -RADIUS)
    foot = start[0] + inside[0], start[1] + inside[1]
    if not canvas.free(_ring(spot, RADIUS + 2)) or canvas.crosses_text(foot, stop):
        return False
    canvas.line(foot, stop, "dim")
    canvas.balloon(str(number), spot, RADIUS)
    return True


def _ring(center: Point, radius: float) -> Convex:
    return box(center[0] - radius, center[1] - radius, center[0] + radius, center[1] + radius)
