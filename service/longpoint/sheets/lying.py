"""A piece's outline as it lies on the saw, as its ends are cut and as it is put up. Inches, as floats, for drawing."""

from __future__ import annotations

import math
from collections.abc import Iterator

from longpoint.geometry.piece import End, Piece
from longpoint.sheets.drawing.shapes import Point

Points = tuple[Point, ...]


def lying(piece: Piece) -> tuple[Point, ...]:
    """The piece's corners as it lies on the saw, face up.

    x runs from the left end's farthest point; y from the outer edge, which is against the fence, to the inner
    one. The order is outer left, outer right, inner right, inner left, a notch adding two corners at its end and
    a cut-out four between its ends.
    """
    width, length = float(piece.sawn_width), float(piece.overall)
    left, right = piece.ends
    outer_left, inner_left = _retreat(left, width)
    outer_right, inner_right = _retreat(right, width)
    return (
        *_corner(left, (outer_left, 0.0), 1, width),
        *_cut_out(piece),
        *reversed(_corner(right, (length - outer_right, 0.0), -1, width)),
        (length - inner_right, width if piece.taper is None else float(piece.taper[1])),
        (inner_left, width if piece.taper is None else float(piece.taper[0])),
    )


def shaped(piece: Piece) -> tuple[Point, Point, Points, Points]:
    """A piece of casing as it is put up, still as it lies on the saw: its inner corner at the left and at the right,
    then the corners of its right end from inside to outside and of its left end from outside to inside, two where a
    tip is trimmed."""
    outer_left, outer_right, inner_right, inner_left = lying(piece)
    ripped, width = float(piece.sawn_width) - float(piece.width), float(piece.sawn_width)
    left, right = piece.ends
    at_left = _outside(left, outer_left, inner_left, ripped, width, 1)
    at_right = _outside(right, outer_right, inner_right, ripped, width, -1)
    return inner_left, inner_right, at_right, at_left[::-1]


def _outside(end: End, outer: Point, inner: Point, ripped: float, width: float, inward: int) -> Points:
    """What an end has outside its inner corner, from inside to outside, its outer edge ripped and its tip trimmed."""

    def at(down: float) -> Point:
        return outer[0] + (inner[0] - outer[0]) * down / width, down

    edge = at(ripped)
    if end.tip is None:
        return (edge,)
    return at(ripped + float(end.tip.across)), (edge[0] + inward * float(end.tip.along), edge[1])


def _cut_out(piece: Piece) -> Iterator[Point]:
    for one in piece.cutouts:
        start, end, depth = float(one.at), float(one.at + one.length), float(one.depth)
        yield from (
            (start, 0.0),
            (start, depth),
            (end, depth if one.end_depth is None else float(one.end_depth)),
            (end, 0.0),
        )


def _retreat(end: End, width: float) -> tuple[float, float]:
    """How far the outer and the inner edge stop short of the end's farthest point."""
    run = width * math.tan(math.radians(float(end.miter)))
    return (run, 0.0) if end.long_edge in INNER_EDGES else (0.0, run)


INNER_EDGES = ("inner", "front")
"""Names of the edge away from the fence, where a long point may lie."""


def _corner(end: End, at: Point, inward: int, width: float) -> tuple[Point, ...]:
    """The outer corner at an end; three corners where a notch is sawn out of it."""
    if end.notch is None:
        return (at,)
    tangent = math.tan(math.radians(float(end.miter)))
    # A miter that keeps its long point on the front reaches its short point at the notch, not at the back edge.
    tip = at[0] - width * tangent * inward
    depth, length = float(end.notch.depth), float(end.notch.length) * inward
    at_end = depth if end.notch.end_depth is None else float(end.notch.end_depth)
    short = tip + (width - at_end) * tangent * inward
    return ((short, at[1] + at_end), (tip + length, at[1] + depth), (tip + length, at[1]))
