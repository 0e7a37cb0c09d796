"""Where each piece of an opening sits: its outline as it lies on the saw, and on the wall seen from the room.

Inches, as floats: this is for drawing, and no length is ever read back from it.
"""

from __future__ import annotations

import math

from longpoint.geometry.frame.kernel import meet
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.opening import Built
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.lengths import Real
from longpoint.sheets.drawing.shapes import Point, along
from longpoint.sheets.lying import shaped
from longpoint.sheets.place_behind import (
    ON_THE_JAMB,
    RETURNS,
    on_the_jamb,
    return_outline,
    tapered_shim,
)
from longpoint.sheets.place_styles import (
    BOARDS,
    STYLED,
    Outline,
    board_outline,
    board_start,
    over_fillet,
    styled,
    upright_box,
)
from longpoint.values import Value

Line = tuple[Point, Point]


class PlacedOutline(Value, frozen=True):
    """A piece on the wall.

    Attributes:
        piece: the piece.
        number: its number within the opening, from 1.
        outline: its corners seen from the room, y upwards from the base line.
        inner, outer: its two long edges, each from start to end; a return's inner and outer end.
        hidden: an edge that what lies in front of the piece hides; None for a piece in full view.
        marks: its layout marks, each from edge to edge.
    """

    piece: Piece
    number: int
    outline: tuple[Point, ...]
    inner: Line
    outer: Line
    hidden: Line | None = None
    marks: tuple[Line, ...] = ()


def placed_pieces(built: Built) -> tuple[PlacedOutline, ...]:
    """Every piece that shows in the elevation, numbered in the order of the opening's pieces."""
    sides = {side.name: (index, side) for index, side in enumerate(cased_sides(built.opening, built.frame))}
    points = tuple((float(x), float(y)) for x, y in built.frame.vertices)
    found: list[PlacedOutline] = []
    for number, piece in built.numbered:
        placed = _placed(built, piece, number, sides, points)
        if placed is not None:
            found.append(placed)
    return tuple(found)


def _placed(
    built: Built,
    piece: Piece,
    number: int,
    sides: dict[str, tuple[int, CasedSide]],
    points: tuple[Point, ...],
) -> PlacedOutline | None:
    if piece.side in sides and piece.kind in _CASING:
        index, side = sides[piece.side]
        if side.casing is not None:
            outer = float(side.edge if piece.kind is PieceKind.BACK_BAND else side.outer)
            lifted = over_fillet(built) if piece.side == "head" else 0.0
            start, end = points[index], points[(index + 1) % len(points)]
            past = _past_finish(built, piece, index) if piece.side.startswith("head ") else math.nan
            ripped = float(piece.sawn_width) - float(piece.width)
            return _casing(piece, number, (start, end), outer + lifted + ripped, past)
    if piece.kind in ON_THE_JAMB:
        return _on_the_jamb(piece, number, on_the_jamb(built, piece, points))
    if piece.kind in RETURNS:
        return _return(built, piece, number, points)
    if piece.kind in STYLED:
        strip = styled(built, piece, points)
        return None if strip is None else _styled(piece, number, strip)
    if piece.kind in BOARDS:
        board = board_outline(built, piece)
        return _level(piece, number, board, _uprights(piece, board_start(built, piece), board))
    if piece.kind is PieceKind.TAPERED_SHIM:
        left, right, low_right, low_left = tapered_shim(built, piece)
        outline = tuple(dict.fromkeys((left, right, low_right, low_left)))
        lower = low_left, low_right
        return PlacedOutline(piece, number, outline, (left, right), lower, hidden=lower)
    if piece.kind is PieceKind.PLINTH_BLOCK:
        jamb = float(built.frame.sides[0])
        inner, wide = float(sides[piece.side][1].reveal), float(piece.width)
        from_left = -inner - wide if piece.side == "left" else jamb + inner
        return _level(piece, number, upright_box(from_left, 0.0, from_left + wide, float(piece.overall)))
    return None


_CASING = frozenset(
    {PieceKind.SIDE_CASING, PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING, PieceKind.BACK_BAND}
)


def _mark(piece: Piece, name: str, otherwise: float) -> float:
    return next((float(mark.at) for mark in piece.marks if mark.name == name), otherwise)


def _past_finish(built: Built, piece: Piece, index: int) -> float:
    """How far one of a head's several pieces, which carries no mark to place it by, runs past its side's finish."""
    sides = cased_sides(built.opening, built.frame)

    def edges(side: CasedSide) -> tuple[Real, Real]:
        outer = side.edge if piece.kind is PieceKind.BACK_BAND else side.outer
        wide = piece.width if piece.kind is PieceKind.BACK_BAND or side.casing is None else side.casing.width
        return outer - wide, outer

    mine, theirs = edges(sides[index]), edges(sides[(index + 1) % len(sides)])
    corner = built.frame.corners[index]
    return max(float(meet(corner, *pair)) for pair in zip(mine, theirs, strict=True))


def _casing(piece: Piece, number: int, side: Line, outer: float, past_finish: float) -> PlacedOutline:
    """A piece along one side of the jamb, which runs from start to end with the room's wall on its right. `outer` is
    how far outside the jamb its outer edge lies while its ends are cut."""
    start, end = side
    jamb = math.hypot(end[0] - start[0], end[1] - start[1])
    direction = (end[0] - start[0]) / jamb, (end[1] - start[1]) / jamb
    outward = direction[1], -direction[0]
    anchor = {"left": 0.0, "right": jamb}.get(piece.side, jamb / 2)
    past = _mark(piece, "underside of head jamb", math.nan)
    if math.isnan(past) and not math.isnan(past_finish):
        anchor, past = jamb, past_finish
    elif math.isnan(past):
        anchor = jamb / 2
        past = _mark(piece, "center line of opening", float(piece.overall) / 2)
    # The end where the side finishes lies at the saw's left.
    finish = anchor + past

    def on_wall(point: Point) -> Point:
        along, out = finish - point[0], outer - point[1]
        return (
            start[0] + direction[0] * along + outward[0] * out,
            start[1] + direction[1] * along + outward[1] * out,
        )

    at_left, at_right, to_right, to_left = shaped(piece)
    inner_left, inner_right = on_wall(at_left), on_wall(at_right)
    right, left = tuple(map(on_wall, to_right)), tuple(map(on_wall, to_left))
    width = float(piece.sawn_width)
    ripped = width - float(piece.width)
    return PlacedOutline(
        piece,
        number,
        (inner_right, *right, *left, inner_left),
        (inner_right, inner_left),
        (right[-1], left[0]),
        marks=tuple(
            (on_wall((float(mark.at), ripped)), on_wall((float(mark.at), width))) for mark in piece.marks
        ),
    )


def _on_the_jamb(piece: Piece, number: int, outline: Outline) -> PlacedOutline:
    start, end, outer_end, outer_start = outline
    outer = outer_start, outer_end
    marks: tuple[Line, ...] = ()
    if piece.kind is PieceKind.JAMB_LEG:
        marks = tuple(((start[0], float(mark.at)), (outer[0][0], float(mark.at))) for mark in piece.marks)
    return PlacedOutline(
        piece,
        number,
        outline,
        (start, end),
        outer,
        hidden=None if piece.kind is PieceKind.DOOR_STOP else outer,
        marks=marks,
    )


def _return(built: Built, piece: Piece, number: int, points: tuple[Point, ...]) -> PlacedOutline | None:
    body = RETURNS[piece.kind]
    bodies = [one for one in built.pieces if one.kind is body]
    outlines = [board_outline(built, one) if body in BOARDS else styled(built, one, points) for one in bodies]
    outline = return_outline(piece, [found for found in outlines if found is not None])
    if outline is None:
        return None
    inner, outer = (outline[0], outline[1]), (outline[3], outline[2])
    return PlacedOutline(piece, number, outline, inner, outer, hidden=inner)


def _styled(piece: Piece, number: int, outline: Outline) -> PlacedOutline:
    low_left, low_right, high_right, high_left = outline
    if piece.kind is PieceKind.MULL_CASING:
        top = max(high_left[1], high_right[1])
        marks = tuple(
            ((low_left[0], top - float(mark.at)), (low_right[0], top - float(mark.at)))
            for mark in piece.marks
        )
        return PlacedOutline(
            piece, number, outline, (low_left, high_left), (low_right, high_right), marks=marks
        )
    length = math.dist(low_left, low_right) or 1.0
    marks = tuple(
        (
            along(low_left, low_right, float(mark.at) / length),
            along(high_left, high_right, float(mark.at) / length),
        )
        for mark in piece.marks
    )
    return PlacedOutline(piece, number, outline, (low_left, low_right), (high_left, high_right), marks=marks)


def _level(piece: Piece, number: int, outline: Outline, marks: tuple[Line, ...] = ()) -> PlacedOutline:
    """A piece that lies level: its upper edge is the inner one, and the outer one as long as the whole piece."""
    low_left, low_right, high_right, high_left = outline
    outer = (high_left[0], low_left[1]), (high_right[0], low_right[1])
    return PlacedOutline(piece, number, outline, (high_left, high_right), outer, marks=marks)


def _uprights(piece: Piece, start: float, outline: Outline) -> tuple[Line, ...]:
    """Marks across a board, which begins at `start` on the wall."""
    bottom, top = outline[0][1], outline[3][1]
    spots = (start + float(mark.at) for mark in piece.marks)
    return tuple(((x, bottom), (x, top)) for x in spots)
