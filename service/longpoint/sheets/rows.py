"""A plan's sticks as the drawing and the tables take them."""

from __future__ import annotations

import math
from collections.abc import Iterator

from longpoint.geometry.parts import CutKind, End, Part
from longpoint.lengths import Fraction, Real
from longpoint.sheets.drawing.sticks import Lying, StickRow
from longpoint.sheets.pieces import Piece
from longpoint.shop.build import CutList, HouseKey
from longpoint.stock import Placed, Plan


def stick_rows(cut_list: CutList, plan: Plan, pieces: dict[HouseKey, Piece]) -> Iterator[StickRow]:
    """Every stick of a plan by its name, in the order in which it is cut."""
    names = iter(cut_list.stick_names[plan.profile])
    for layout in plan.layouts:
        for keys in layout.keys:
            lying = tuple(
                _lying(placed, pieces[key]) for placed, key in zip(layout.placed, keys, strict=True)
            )
            name = next(names) + (", on hand" if layout.remnant else "")
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
