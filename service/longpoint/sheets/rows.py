"""A plan's sticks as the drawing and the tables take them."""

from __future__ import annotations

import math
from collections.abc import Iterator

from longpoint.geometry.piece import CutKind, End, Piece
from longpoint.lengths import Fraction, Real
from longpoint.sheets.drawing.sticks import DrawnStick, Lying
from longpoint.sheets.pieces import NumberedPiece
from longpoint.shop.build import CutList, HouseKey
from longpoint.stock import Placed, Plan


def stick_rows(cut_list: CutList, plan: Plan, pieces: dict[HouseKey, NumberedPiece]) -> Iterator[DrawnStick]:
    """Every stick of a plan by its name, in the order in which it is cut."""
    names = iter(cut_list.stick_names[plan.profile])
    for layout in plan.layouts:
        for keys in layout.keys:
            lying = tuple(
                _lying(placed, pieces[key]) for placed, key in zip(layout.placed, keys, strict=True)
            )
            name = next(names) + (", on hand" if layout.on_hand else "")
            yield DrawnStick(name, layout.length, lying, layout.offcut, layout.kept)


def _lying(placed: Placed, piece: NumberedPiece) -> Lying:
    left, right = piece.piece.ends
    if placed.reversed:
        left, right = right, left
    side = -1 if placed.turned else 1
    return Lying(
        piece.label,
        placed.start,
        placed.length,
        _run(left, piece.piece) * side,
        _run(right, piece.piece) * side,
    )


def _run(end: End, piece: Piece) -> Real:
    """How far a miter runs along the stick; positive with its long point on the outer edge."""
    if end.cut not in (CutKind.MITER, CutKind.COMPOUND):
        return Fraction(0)
    run = float(piece.width) * math.tan(math.radians(float(end.miter)))
    return -run if end.long_edge == "inner" else run
