"""Where the pieces of further styles sit on the wall: blocks, fillets, caps, mull casing, boards in several pieces."""

from __future__ import annotations

import math

from longpoint.geometry.opening import Built
from longpoint.geometry.parts import Part, PartKind
from longpoint.geometry.sides import CasedSide, cased_sides
from longpoint.geometry.trim import HeadStyle
from longpoint.sheets.drawing.shapes import Point

STYLED = frozenset({PartKind.CORNER_BLOCK, PartKind.FILLET, PartKind.CAP, PartKind.MULL_CASING})
BOARDS = frozenset({PartKind.STOOL, PartKind.APRON})
Outline = tuple[Point, Point, Point, Point]
"""Bottom left, bottom right, top right, top left; of a piece on a side, its inner edge and its outer edge back."""


def over_fillet(built: Built) -> float:
    """How far a fillet lifts the head off its reveal."""
    trim = built.opening.trim
    return float(trim.fillet.height) if trim.fillet and trim.head_style is HeadStyle.BUTTED else 0.0


def styled(built: Built, part: Part, points: tuple[Point, ...]) -> Outline | None:
    """The part's corners seen from the room: bottom left, bottom right, top right, top left."""
    if len(points) != 4:
        return None
    sides = cased_sides(built.opening, built.frame)
    if part.kind is PartKind.CORNER_BLOCK:
        return _block(part, sides, points)
    if part.kind is PartKind.MULL_CASING:
        return _mull(built, part, sides)
    return _strip(built, part, sides, points)


def _block(part: Part, sides: tuple[CasedSide, ...], points: tuple[Point, ...]) -> Outline:
    """Centred on the casing that ends at it."""
    half = float(part.width) / 2
    level, side = part.side.split()[0] if " " in part.side else "head", part.side.split()[-1]
    across = _middle(sides[1] if side == "right" else sides[3])
    corner = {("head", "left"): 3, ("head", "right"): 2, ("sill", "left"): 0, ("sill", "right"): 1}[
        level, side
    ]
    x, y = points[corner]
    x += across if side == "right" else -across
    y += _middle(sides[2]) if level == "head" else -_middle(sides[0])
    return (x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half)


def _middle(side: CasedSide) -> float:
    return float(side.reveal + side.outer) / 2


def _mull(built: Built, part: Part, sides: tuple[CasedSide, ...]) -> Outline:
    mull = built.opening.readings.mulls[int(part.side) - 1]
    left = float(mull.at + (mull.width - part.width) / 2)
    right, bottom = left + float(part.width), -float(sides[0].reveal)
    tops = bottom + float(part.long_point), bottom + float(part.short_point)
    return (left, bottom), (right, bottom), (right, tops[0]), (left, tops[1])


def _strip(built: Built, part: Part, sides: tuple[CasedSide, ...], points: tuple[Point, ...]) -> Outline:
    """Along the head, from the left end to the right."""
    offset = float(sides[2].reveal if part.kind is PartKind.FILLET else sides[2].outer) + (
        over_fillet(built) if part.kind is PartKind.CAP else 0.0
    )
    (right_x, right_y), (left_x, left_y) = points[2], points[3]
    jamb = float(built.frame.sides[2])
    along = (right_x - left_x) / jamb, (right_y - left_y) / jamb
    up = -along[1], along[0]
    middle = next(float(mark.at) for mark in part.marks)
    start = jamb / 2 - middle
    end = start + float(part.overall)

    def place(distance: float, height: float) -> Point:
        out = offset + height
        return left_x + along[0] * distance + up[0] * out, left_y + along[1] * distance + up[1] * out

    high = float(part.thickness)
    return place(start, 0), place(end, 0), place(end, high), place(start, high)


def board_start(built: Built, part: Part) -> float:
    """Where a stool or an apron, or one piece of one that is jointed, starts, from the left jamb's face."""
    jamb = float(built.frame.sides[0])
    name, at = (
        ("left jamb face", 0.0) if part.kind is PartKind.STOOL else ("centre line of opening", jamb / 2)
    )
    reached = before = 0.0
    start = (jamb - float(part.overall)) / 2
    for piece in (each for each in built.parts if each.kind is part.kind):
        if piece is part:
            before = reached
        for mark in piece.marks:
            if mark.name == name:
                start = at - reached - float(mark.at)
        # A scarf laps by the board's thickness.
        reached += float(piece.overall) - float(piece.thickness)
    return start + before


def board_outline(built: Built, part: Part) -> Outline:
    """A stool seen by its nosing, or an apron under it, its ends cut back where they are angled."""
    start = board_start(built, part)
    end = start + float(part.overall)
    if part.kind is PartKind.STOOL:
        return upright_box(start, -float(part.thickness), end, 0.0)
    top = -next((float(p.thickness) for p in built.parts if p.kind is PartKind.STOOL), 0.0)
    low = top - float(part.width)
    left, right = (float(part.width) * math.tan(math.radians(float(one.mitre))) for one in part.ends)
    return (start + left, low), (end - right, low), (end, top), (start, top)


def upright_box(left: float, bottom: float, right: float, top: float) -> Outline:
    return (left, bottom), (right, bottom), (right, top), (left, top)
