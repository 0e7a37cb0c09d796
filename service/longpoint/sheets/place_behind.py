"""Where the pieces sit that casing or another piece partly hides: extension boards, a door's jamb, returns, a strip.

Each is its outline seen from the room, and the edge of it that something in front hides. A door's stops hide nothing
and are hidden by nothing, but lie on the jamb as these do.
"""

from __future__ import annotations

import math

from longpoint.geometry.frame.joint import miter, stand, under_head
from longpoint.geometry.frame.kernel import meet
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.opening import Built
from longpoint.geometry.piece import Hand, Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.trim import BoxCorners, Casing, JambExtension
from longpoint.sheets.drawing.shapes import Point
from longpoint.sheets.place_styles import Outline

RETURNS = {
    PieceKind.APRON_RETURN: PieceKind.APRON,
    PieceKind.STOOL_RETURN: PieceKind.STOOL,
    PieceKind.FILLET_RETURN: PieceKind.FILLET,
    PieceKind.CAP_RETURN: PieceKind.CAP,
}
"""Each return, and the piece whose end it closes."""
ON_THE_JAMB = frozenset(
    {PieceKind.JAMB_EXTENSION, PieceKind.JAMB_LEG, PieceKind.HEAD_JAMB, PieceKind.DOOR_STOP}
)


def on_the_jamb(built: Built, piece: Piece, points: tuple[Point, ...]) -> Outline:
    """The piece's corners: its inner edge from start to end, then its outer edge back.

    Raises:
        ValueError: for a piece that does not lie on the jamb.
    """
    shape = built.opening.outline.shape
    if piece.kind is PieceKind.JAMB_EXTENSION:
        return _board(built, piece, points)
    if isinstance(shape, Door):
        if piece.kind is PieceKind.JAMB_LEG:
            return _jamb_leg(shape, piece)
        if piece.kind is PieceKind.HEAD_JAMB:
            return _head_jamb(shape, piece)
        if piece.kind is PieceKind.DOOR_STOP:
            return _stop(shape, piece)
    raise ValueError(f"a {piece.title} does not lie on the jamb")


def _board(built: Built, piece: Piece, points: tuple[Point, ...]) -> Outline:
    """A board of the extension, seen by its edge."""
    opening = built.opening
    extension = opening.trim.extension
    assert extension is not None
    sides = tuple(_boxed(side, extension) for side in cased_sides(opening, built.frame))
    index = next(number for number, side in enumerate(sides) if side.name == piece.side)
    inner, outer = float(sides[index].reveal), float(sides[index].outer)
    past = [
        _past(built, sides, index, corner, other)
        for corner, other in ((index - 1, index - 1), (index, (index + 1) % len(sides)))
    ]
    start, end = points[index], points[(index + 1) % len(points)]
    length = math.dist(start, end)
    x, y = (end[0] - start[0]) / length, (end[1] - start[1]) / length

    def at(along: float, out: float) -> Point:
        return start[0] + x * along + y * out, start[1] + y * along - x * out

    (inner_start, outer_start), (inner_end, outer_end) = past
    return (
        at(-inner_start, inner),
        at(length + inner_end, inner),
        at(length + outer_end, outer),
        at(-outer_start, outer),
    )


def _boxed(side: CasedSide, extension: JambExtension) -> CasedSide:
    """The side as the extension's boards see it."""
    if side.name == "base":
        return side
    outer = extension.reveal + extension.thickness
    stock = Casing(extension.thickness, extension.thickness, extension.profile)
    return CasedSide(side.name, extension.reveal, stock, outer, outer)


def _past(
    built: Built, sides: tuple[CasedSide, ...], index: int, corner: int, other: int
) -> tuple[float, float]:
    """How far a board runs past the jamb's corner, at its inner and its outer edge."""
    opening, at = built.opening, built.frame.corners[corner]
    mine, theirs = sides[index], sides[other]
    extension = opening.trim.extension
    assert extension is not None
    if theirs.casing is None:
        reach = stand(opening.bottom, at, mine, theirs)
    elif extension.corners is BoxCorners.MITERED:
        reach = miter(at, mine, theirs)
    elif mine.name in ("left", "right"):
        reach = under_head(at, mine, theirs)
    else:
        over = float(meet(at, mine.reveal, theirs.outer))
        return over, over
    return float(reach.inner), float(reach.outer)


def _jamb_leg(door: Door, piece: Piece) -> Outline:
    """On the hinge side or the other, its face the jamb's inside face."""
    right = (door.hinge_side is Hand.RIGHT) is (piece.side == "hinge")
    width, thick, high = float(door.jamb_width), float(piece.thickness), float(piece.overall)
    if right:
        return (width, 0.0), (width, high), (width + thick, high), (width + thick, 0.0)
    return (0.0, high), (0.0, 0.0), (-thick, 0.0), (-thick, high)


def _head_jamb(door: Door, piece: Piece) -> Outline:
    width, low = float(door.jamb_width), float(door.clear_height)
    past, high = (float(piece.overall) - width) / 2, low + float(piece.thickness)
    return (width + past, low), (-past, low), (-past, high), (width + past, high)


def _stop(door: Door, piece: Piece) -> Outline:
    """Within the opening, its back on the jamb's inside face."""
    width, high = float(door.jamb_width), float(door.clear_height)
    thick, face, back = float(piece.thickness), float(piece.short_point), float(piece.long_point)
    if piece.side == "left":
        return (thick, face), (thick, 0.0), (0.0, 0.0), (0.0, back)
    if piece.side == "right":
        return (width - thick, 0.0), (width - thick, face), (width, back), (width, 0.0)
    drawn_in = (back - face) / 2
    return (width - drawn_in, high - thick), (drawn_in, high - thick), (0.0, high), (width, high)


def return_outline(piece: Piece, bodies: list[Outline]) -> Outline | None:
    """A return behind the end of the piece it closes: its inner end from low to high, then the piece's end back.

    Args:
        piece: the return.
        bodies: the outlines of the piece, or of its lengths from left to right, from the bottom left corner.
    """
    if not bodies:
        return None
    deep = float(piece.overall)
    if piece.side == "left":
        low, _, _, high = bodies[0]
        inwards, level = deep, bodies[0]
    else:
        _, low, high, _ = bodies[-1]
        inwards, level = -deep, bodies[-1]
    # Along the piece, which a head out of level tilts.
    run = math.dist(level[0], level[1])
    x, y = (level[1][0] - level[0][0]) / run * inwards, (level[1][1] - level[0][1]) / run * inwards
    return (low[0] + x, low[1] + y), (high[0] + x, high[1] + y), high, low


def tapered_shim(built: Built, piece: Piece) -> Outline:
    """Under the stool between the jambs, as deep at each end as the sill lies low there: its upper edge first."""
    stool = next((float(p.thickness) for p in built.pieces if p.kind is PieceKind.STOOL), 0.0)
    width = float(piece.overall)
    left, right = (float(deep) for deep in piece.taper or (piece.width, piece.width))
    return (0.0, -stool), (width, -stool), (width, -stool - right), (0.0, -stool - left)
