"""What each opening takes: nails, joints, faces, feet, counted from its pieces."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable

from longpoint.geometry import CutKind, Finish, Piece, PieceKind
from longpoint.lengths import Fraction
from longpoint.shop.build import BuiltOpening, CutList
from longpoint.shop.exact import exactly
from longpoint.shop.nails import DOOR_JAMB, GLUED, Nailing, nailings
from longpoint.shop.rates import Rates
from longpoint.values import Value

ZERO = Fraction(0)


class Amounts(Value, frozen=True):
    """One line of the schedule, all its openings together. Lengths in inches, areas in square inches.

    Attributes:
        count: how many openings; zero for what a group of them shares.
        nailing: every use of nails.
        glued: faces of mitered joints and returns, each joint once.
        finish: of its trim.
        species: of its trim; "" where it is not said.
        caulked: joints with wall and jamb, of trim that is painted.
        faces: developed faces and edges to finish: none where the trim comes finished.
        backs: what lies on wall and jamb, of trim that is painted.
        ripped, routed: lengths.
    """

    opening: str
    room: str
    count: int
    nailing: tuple[Nailing, ...]
    glued: Fraction
    finish: Finish
    species: str
    caulked: Fraction
    faces: Fraction
    backs: Fraction
    pieces: int
    ripped: Fraction
    routed: Fraction

    @property
    def nails(self) -> int:
        return sum(each.count for each in self.nailing)

    @property
    def painted(self) -> Fraction:
        """Faces and edges that are primed and painted."""
        return self.faces if self.finish is Finish.PAINT_GRADE else ZERO

    @property
    def stained(self) -> Fraction:
        """Faces and edges that are stained and cleared."""
        return self.faces - self.painted

    @property
    def filled(self) -> int:
        """Nail holes that are closed before the paint; the others are closed with putty."""
        return self.nails if self.finish is Finish.PAINT_GRADE else 0

    @property
    def puttied(self) -> int:
        return self.nails - self.filled


UNCAULKED = (*GLUED, *DOOR_JAMB, PieceKind.TAPERED_SHIM)
ONE_JOINT = (
    PieceKind.BACK_BAND,
    PieceKind.FILLET,
    PieceKind.CAP,
    PieceKind.JAMB_EXTENSION,
    PieceKind.DOOR_STOP,
)
"""What meets trim, and not the wall, along its other edge."""
HIDDEN = (PieceKind.TAPERED_SHIM,)


def amounts(cut_list: CutList, rates: Rates) -> tuple[Amounts, ...]:
    """The amounts of every opening shown, in the order of the cut list."""
    openings = len(cut_list.house.openings)
    return tuple(
        _amounts(one, one.count if index < openings else 0, rates)
        for index, one in enumerate(cut_list.openings)
        if one.shown
    )


def _amounts(one: BuiltOpening, openings: int, rates: Rates) -> Amounts:
    pieces, count = one.built.pieces, one.count
    girth = rates.share("profile_girth")
    stools = [piece for piece in pieces if piece.kind is PieceKind.STOOL]
    trim = one.built.opening.trim
    painted = count if trim.finish is Finish.PAINT_GRADE else 0
    finished = count if trim.finish is not Finish.PREFINISHED else 0
    return Amounts(
        opening=one.built.opening.mark,
        room=one.room,
        count=openings,
        nailing=_together(nailings(pieces, rates), count),
        glued=count * sum((_glued(piece) for piece in pieces), ZERO),
        finish=trim.finish,
        species=trim.species or "",
        caulked=painted * sum((_caulked(piece) for piece in pieces), ZERO),
        faces=finished * sum((_faces(piece, girth) for piece in pieces), ZERO),
        backs=painted * sum((exactly(piece.overall) * exactly(piece.width) for piece in pieces), ZERO),
        pieces=count * len(pieces),
        ripped=count * sum((exactly(piece.overall) for piece in pieces if piece.rip_width is not None), ZERO),
        routed=count * sum((exactly(piece.overall) for piece in stools), ZERO),
    )


def _together(found: Iterable[Nailing], count: int) -> tuple[Nailing, ...]:
    counts: Counter[tuple[str, int, Fraction]] = Counter()
    for each in found:
        counts[each.use, each.penny, each.needed] += each.count * count
    return tuple(Nailing(use, penny, needed, nails) for (use, penny, needed), nails in counts.items())


def _glued(piece: Piece) -> Fraction:
    """Half of each angled joint's face, since the piece on its other side has the other half."""
    half = ZERO
    for end in piece.ends:
        if end.cut is not CutKind.SQUARE:
            slant = math.cos(math.radians(end.miter)) * math.cos(math.radians(end.bevel))
            half += exactly(float(piece.width * piece.thickness) / slant / 2)
    return half


def _caulked(piece: Piece) -> Fraction:
    """The edges that meet wall or jamb."""
    if piece.kind is PieceKind.STOOL:
        return sum((exactly(end.notch.length) for end in piece.ends if end.notch), ZERO)
    if piece.kind is PieceKind.APRON:
        return exactly(piece.long_point) + 2 * exactly(piece.width)
    if piece.kind in UNCAULKED:
        return ZERO
    if piece.kind in ONE_JOINT:
        return exactly(piece.long_point)
    return exactly(piece.long_point) + exactly(piece.short_point)


def _faces(piece: Piece, girth: Fraction) -> Fraction:
    """Face and both edges; of a stool both faces, since its nosing and horns show from below."""
    if piece.kind in HIDDEN:
        return ZERO
    width = exactly(piece.width)
    across = 2 * width if piece.kind is PieceKind.STOOL else width * girth
    return exactly(piece.overall) * (across + 2 * exactly(piece.thickness))
