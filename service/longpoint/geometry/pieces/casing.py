"""Casing: legs, head and, in a picture frame, the sill piece."""

from __future__ import annotations

from functools import lru_cache

from longpoint.geometry.frame.joint import casing_reach
from longpoint.geometry.frame.kernel import SQUARE, Corner, Frame
from longpoint.geometry.frame.sides import CasedSide, called_by_number, wall_rises
from longpoint.geometry.parts import Part
from longpoint.geometry.piece_names import PartKind
from longpoint.geometry.pieces.piece import frame_piece
from longpoint.geometry.readings.inputs import Foot, Opening
from longpoint.geometry.readings.trim import Trim
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real

_KINDS = {"right": PartKind.CASING_LEG, "left": PartKind.CASING_LEG, "sill": PartKind.CASING_SILL}


def casing_parts(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Part, ...]:
    """Every cased side's piece, in the order right, head, left (and sill last in a picture frame)."""
    order = [*range(1, len(sides)), 0]
    rises = wall_rises(opening, len(sides))
    trim, foot = opening.trim, opening.foot_style
    parts = []
    for index in order:
        me, before, after = sides[index], sides[index - 1], sides[(index + 1) % len(sides)]
        if me.casing is None:
            continue
        corners = frame.corners[index - 1], frame.corners[index]
        make = _kept if corners[0] is SQUARE and corners[1] is SQUARE else _piece
        called = called_by_number(opening, len(sides), "casing", index)
        rise_before, rise_after = rises[index - 1], rises[index]
        jamb = frame.sides[index]
        parts.append(make(trim, foot, me, before, after, jamb, corners, rise_before, rise_after, called))
    return tuple(parts)


def _piece(
    trim: Trim,
    foot: Foot,
    me: CasedSide,
    before: CasedSide,
    after: CasedSide,
    jamb: Real,
    corners: tuple[Corner, Corner],
    rise_before: Fraction,
    rise_after: Fraction,
    called: str,
) -> Part:
    assert me.casing is not None
    start = casing_reach(trim, foot, corners[0], me, before, rise_before)
    finish = casing_reach(trim, foot, corners[1], me, after, rise_after)
    kind = _KINDS.get(me.name, PartKind.CASING_HEAD)
    meets = before.name, after.name
    return frame_piece(kind, me, me.casing, jamb, start, finish, meets, called)


_kept = lru_cache(KEPT, typed=True)(_piece)
