"""Casing: legs, head and, in a picture frame, the sill piece."""

from __future__ import annotations

from longpoint.geometry.inputs import Opening
from longpoint.geometry.joint import casing_reach
from longpoint.geometry.kernel import Frame
from longpoint.geometry.parts import Part, PartKind
from longpoint.geometry.piece import frame_piece
from longpoint.geometry.sides import CasedSide, called_by_number, wall_rises
from longpoint.lengths import Fraction

_KINDS = {"right": PartKind.CASING_LEG, "left": PartKind.CASING_LEG, "sill": PartKind.CASING_SILL}


def casing_parts(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Part, ...]:
    """Every cased side's piece, in the order right, head, left (and sill last in a picture frame)."""
    order = [*range(1, len(sides)), 0]
    rises = wall_rises(opening, len(sides))
    return tuple(_piece(opening, frame, sides, rises, index) for index in order if sides[index].casing)


def _piece(
    opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], rises: tuple[Fraction, ...], index: int
) -> Part:
    me, before, after = sides[index], sides[index - 1], sides[(index + 1) % len(sides)]
    assert me.casing is not None
    start = casing_reach(opening, frame.corners[index - 1], me, before, rises[index - 1])
    finish = casing_reach(opening, frame.corners[index], me, after, rises[index])
    kind = _KINDS.get(me.name, PartKind.CASING_HEAD)
    meets = before.name, after.name
    called = called_by_number(opening, len(sides), "casing", index)
    return frame_piece(opening.mark, kind, me, me.casing, frame.sides[index], start, finish, meets, called)
