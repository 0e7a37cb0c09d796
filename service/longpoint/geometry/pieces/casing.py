"""Casing: the sides, the head and, in a picture frame, the bottom."""

from __future__ import annotations

from functools import lru_cache

from longpoint.geometry.frame.joint import casing_reach
from longpoint.geometry.frame.kernel import SQUARE, Corner, Frame
from longpoint.geometry.frame.sides import CasedSide, called_by_number, wall_rises
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.pieces.piece import frame_piece
from longpoint.geometry.readings.inputs import Bottom, Opening
from longpoint.geometry.readings.trim import Trim
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real

_KINDS = {"right": PieceKind.SIDE_CASING, "left": PieceKind.SIDE_CASING, "sill": PieceKind.BOTTOM_CASING}


def casing_pieces(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Piece, ...]:
    """Every cased side's piece."""
    rises = wall_rises(opening, len(sides))
    trim, foot = opening.trim, opening.bottom
    pieces = []
    for index, me in enumerate(sides):
        if me.casing is None:
            continue
        before, after = sides[index - 1], sides[(index + 1) % len(sides)]
        corners = frame.corners[index - 1], frame.corners[index]
        make = _kept if corners[0] is SQUARE and corners[1] is SQUARE else _piece
        called = called_by_number(opening, len(sides), "casing", index)
        rise_before, rise_after = rises[index - 1], rises[index]
        jamb = frame.sides[index]
        pieces.append(make(trim, foot, me, before, after, jamb, corners, rise_before, rise_after, called))
    return tuple(pieces)


def _piece(
    trim: Trim,
    foot: Bottom,
    me: CasedSide,
    before: CasedSide,
    after: CasedSide,
    jamb: Real,
    corners: tuple[Corner, Corner],
    rise_before: Fraction,
    rise_after: Fraction,
    called: str,
) -> Piece:
    assert me.casing is not None
    start = casing_reach(trim, foot, corners[0], me, before, rise_before)
    finish = casing_reach(trim, foot, corners[1], me, after, rise_after)
    kind = _KINDS.get(me.name, PieceKind.HEAD_CASING)
    meets = before.name, after.name
    return frame_piece(kind, me, me.casing, jamb, start, finish, meets, called)


_kept = lru_cache(KEPT, typed=True)(_piece)
