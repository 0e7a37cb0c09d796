"""A plan's sticks as the drawing and the tables take them."""

from __future__ import annotations

import math
from collections.abc import Iterator

from longpoint.geometry.parts import CutKind, End, Part
from longpoint.lengths import Fraction, Real
from longpoint.sheets.drawing.sticks import Lying, StickRow
from longpoint.sheets.pieces import Piece
from longpoint.shop.build import HouseKey
from longpoint.stock import Placed, Plan


def stick_rows(plan: Plan, pieces: dict[HouseKey, Piece]) -> Iterator[StickRow]:
    """Every stick of a plan, numbered from 1 in the order in which it is cut."""
    number = 0
    for layout in plan.layouts:
        for keys in layout.keys:
            number += 1
            lying = tuple(
                _lying(placed, pieces[key]) for placed, key in zip(layout.placed, keys, strict=True)
            )
            name = f"{'Remnant' if layout.remnant else 'Stick'} {number}"
            yield StickRow(name, layout.length, lying, layout.offcut, layout.kept)


def _lying(placed: Placed, piece: Piece) -> Lying:
    left, right = piece.part.ends
    if placed.reversed:
        left, right = right, left
    side = -1 if placed.turned else 1
    return Lying(
        piece.label,
        placed.start,
        placed.length,
        _run(left, piece.part) * side,
        _run(right, piece.part) * side,
    )


def _run(end: End, part: Part) -> Real:
    """How far a mitre runs along the stick; positive with its long point on the outer edge."""
    if end.cut not in (CutKind.MITRE, CutKind.COMPOUND):
        return Fraction(0)
    run = float(part.width) * math.tan(math.radians(float(end.mitre)))
    return -run if end.long_edge == "inner" else run
