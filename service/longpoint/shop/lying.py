"""What a piece takes of a stick as it lies on the saw: its length, and where a neighbor may share an end's cut."""

from __future__ import annotations

import math

from longpoint.geometry import CutKind, End, Piece
from longpoint.lengths import Fraction, round_to
from longpoint.shop.house import House
from longpoint.stock import eaten

ZERO = Fraction(0)
# A run along the stick that is irrational is kept to a millionth of an inch, far below a saw's kerf.
RUN_DENOMINATOR = 1_000_000
SHARED_EDGES = ("outer", "top")
"""Edges that lie against the fence, where a miter that two pieces share has the long point of both."""
Lying = tuple[Fraction, Fraction, Fraction, Fraction | None, Fraction | None]


def lying_of(piece: Piece, house: House) -> Lying:
    """What a piece takes of a stick: its length, the runs of its miters, and what the cuts at its ends eat."""
    left, right = piece.ends
    return (
        round_to(piece.overall, house.rounding),
        _run(left, piece),
        _run(right, piece),
        _eaten(left, house.kerf),
        _eaten(right, house.kerf),
    )


def _eaten(end: End, kerf: Fraction) -> Fraction | None:
    """What an end's own cut eats where that cut cuts the piece off its stick; None for a square cut.

    A notched end is cut off square, since its miter stops at the notch.
    """
    if end.cut is CutKind.SQUARE or end.notch:
        return None
    return eaten(kerf, float(end.miter), float(end.bevel))


def _run(end: End, piece: Piece) -> Fraction:
    """How far a plain miter runs along the stick; zero for any other end.

    A piece that is turned over shares a miter with its neighbor only where both have the long point on the edge that
    lies against the fence. A miter that stops at a notch shares none.
    """
    if end.cut is not CutKind.MITER or end.long_edge not in SHARED_EDGES or end.notch:
        return ZERO
    if end.miter == 45 and not isinstance(piece.sawn_width, float):
        return piece.sawn_width
    return Fraction(
        round(float(piece.sawn_width) * math.tan(math.radians(end.miter)) * RUN_DENOMINATOR), RUN_DENOMINATOR
    )
