"""Where the pieces of further styles sit on the wall: blocks, fillets, caps, mull casing, boards in several pieces."""

from __future__ import annotations

import math

from longpoint.geometry.frame.joint import block_line
from longpoint.geometry.frame.kernel import meet
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.opening import Built
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.trim import HeadStyle
from longpoint.sheets.drawing.shapes import Point

STYLED = frozenset({PieceKind.CORNER_BLOCK, PieceKind.FILLET, PieceKind.CAP, PieceKind.MULL_CASING})
BOARDS = frozenset({PieceKind.STOOL, PieceKind.APRON})
Outline = tuple[Point, Point, Point, Point]
"""Bottom left, bottom right, top right, top left; of a piece on a side, its inner edge and its outer edge back."""


def over_fillet(built: Built) -> float:
    """How far a fillet lifts the head off its reveal."""
    trim = built.opening.trim
    return float(trim.fillet.height) if trim.fillet and trim.head_style is HeadStyle.BUTTED else 0.0


def styled(built: Built, piece: Piece, points: tuple[Point, ...]) -> Outline | None:
    """The piece's corners seen from the room: bottom left, bottom right, top right, top left."""
    if len(points) != 4:
        return None
    sides = cased_sides(built.opening, built.frame)
    if piece.kind is PieceKind.CORNER_BLOCK:
        return _block(built, piece, sides, points)
    if piece.kind is PieceKind.MULL_CASING:
        return _mull(built, piece, sides)
    return _strip(built, piece, sides, points)


def _block(built: Built, piece: Piece, sides: tuple[CasedSide, ...], points: tuple[Point, ...]) -> Outline:
    """Its edges along the head or the sill, centered across it and on the leg where that ends at it."""
    size = float(piece.width)
    level, side = piece.side.split()[0] if " " in piece.side else "head", piece.side.split()[-1]
    at_head, at_right = level == "head", side == "right"
    corner = {(True, False): 2, (True, True): 1, (False, False): 3, (False, True): 0}[at_head, at_right]
    along_side, leg = sides[2 if at_head else 0], sides[1 if at_right else 3]
    (start_x, start_y), (end_x, end_y) = (points[3], points[2]) if at_head else (points[0], points[1])
    jamb = math.hypot(end_x - start_x, end_y - start_y)
    right = (end_x - start_x) / jamb, (end_y - start_y) / jamb
    up = -right[1], right[0]
    block = built.opening.trim.corner_block
    assert block is not None
    past = float(meet(built.frame.corners[corner], block_line(along_side, block.width), _middle(leg)))
    x, y = (end_x, end_y) if at_right else (start_x, start_y)
    way, out = (past if at_right else -past), (_middle(along_side) if at_head else -_middle(along_side))

    def corner_at(across: int, above: int) -> Point:
        along, off = way + across * size / 2, out + above * size / 2
        return x + right[0] * along + up[0] * off, y + right[1] * along + up[1] * off

    return corner_at(-1, -1), corner_at(1, -1), corner_at(1, 1), corner_at(-1, 1)


def _middle(side: CasedSide) -> float:
    return float(side.reveal + side.outer) / 2


def _mull(built: Built, piece: Piece, sides: tuple[CasedSide, ...]) -> Outline:
    mull = built.opening.outline.mulls[int(piece.side) - 1]
    left = float(mull.at + (mull.width - piece.width) / 2)
    right, bottom = left + float(piece.width), -float(sides[0].reveal)
    tops = bottom + float(piece.long_point), bottom + float(piece.short_point)
    return (left, bottom), (right, bottom), (right, tops[0]), (left, tops[1])


def _strip(built: Built, piece: Piece, sides: tuple[CasedSide, ...], points: tuple[Point, ...]) -> Outline:
    """Along the head, from the left end to the right."""
    offset = float(sides[2].reveal if piece.kind is PieceKind.FILLET else sides[2].outer) + (
        over_fillet(built) if piece.kind is PieceKind.CAP else 0.0
    )
    (right_x, right_y), (left_x, left_y) = points[2], points[3]
    jamb = float(built.frame.sides[2])
    along = (right_x - left_x) / jamb, (right_y - left_y) / jamb
    up = -along[1], along[0]
    middle = next(float(mark.at) for mark in piece.marks)
    start = jamb / 2 - middle
    end = start + float(piece.overall)

    def place(distance: float, height: float) -> Point:
        out = offset + height
        return left_x + along[0] * distance + up[0] * out, left_y + along[1] * distance + up[1] * out

    high = float(piece.thickness)
    return place(start, 0), place(end, 0), place(end, high), place(start, high)


def board_start(built: Built, piece: Piece) -> float:
    """Where a stool or an apron, or one piece of one that is jointed, starts, from the left jamb's face."""
    jamb = float(built.frame.sides[0])
    name, at = (
        ("left jamb face", 0.0) if piece.kind is PieceKind.STOOL else ("center line of opening", jamb / 2)
    )
    reached = before = 0.0
    start = (jamb - float(piece.overall)) / 2
    for one in (each for each in built.pieces if each.kind is piece.kind):
        if one is piece:
            before = reached
        for mark in one.marks:
            if mark.name == name:
                start = at - reached - float(mark.at)
        # A scarf laps by the board's thickness.
        reached += float(one.overall) - float(one.thickness)
    return start + before


def board_outline(built: Built, piece: Piece) -> Outline:
    """A stool seen by its nosing, or an apron under it, its ends cut back where they are angled."""
    start = board_start(built, piece)
    end = start + float(piece.overall)
    if piece.kind is PieceKind.STOOL:
        return upright_box(start, -float(piece.thickness), end, 0.0)
    top = -next((float(p.thickness) for p in built.pieces if p.kind is PieceKind.STOOL), 0.0)
    low = top - float(piece.width)
    left, right = (float(piece.width) * math.tan(math.radians(float(one.miter))) for one in piece.ends)
    return (start + left, low), (end - right, low), (end, top), (start, top)


def upright_box(left: float, bottom: float, right: float, top: float) -> Outline:
    return (left, bottom), (right, bottom), (right, top), (left, top)
