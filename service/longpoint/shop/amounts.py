"""What each opening takes: nails, joints, faces, feet, counted from its parts."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable

from longpoint.geometry import CutKind, Part, PartKind
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
        count: how many openings; nought for what a group of them shares.
        nailing: every use of nails.
        glued: faces of mitred joints and returns, each joint once.
        caulked: joints with wall and jamb.
        faces: developed faces and edges to paint.
        backs: what lies on wall and jamb.
        ripped, routed: lengths.
    """

    opening: str
    room: str
    count: int
    nailing: tuple[Nailing, ...]
    glued: Fraction
    caulked: Fraction
    faces: Fraction
    backs: Fraction
    pieces: int
    ripped: Fraction
    routed: Fraction

    @property
    def nails(self) -> int:
        return sum(each.count for each in self.nailing)


UNCAULKED = (*GLUED, *DOOR_JAMB, PartKind.LEVELLING_STRIP)
ONE_JOINT = (
    PartKind.BACK_BAND,
    PartKind.FILLET,
    PartKind.CAP,
    PartKind.JAMB_EXTENSION,
    PartKind.DOOR_STOP,
)
"""What meets trim, and not the wall, along its other edge."""
HIDDEN = (PartKind.LEVELLING_STRIP,)


def amounts(cut_list: CutList, rates: Rates) -> tuple[Amounts, ...]:
    """The amounts of every opening shown, in the order of the cut list."""
    openings = len(cut_list.house.openings)
    return tuple(
        _amounts(one, one.count if index < openings else 0, rates)
        for index, one in enumerate(cut_list.openings)
        if one.shown
    )


def _amounts(one: BuiltOpening, openings: int, rates: Rates) -> Amounts:
    parts, count = one.built.parts, one.count
    girth = rates.share("profile_girth")
    stools = [part for part in parts if part.kind is PartKind.STOOL]
    return Amounts(
        opening=one.built.opening.mark,
        room=one.room,
        count=openings,
        nailing=_together(nailings(parts, rates), count),
        glued=count * sum((_glued(part) for part in parts), ZERO),
        caulked=count * sum((_caulked(part) for part in parts), ZERO),
        faces=count * sum((_faces(part, girth) for part in parts), ZERO),
        backs=count * sum((exactly(part.overall) * exactly(part.width) for part in parts), ZERO),
        pieces=count * len(parts),
        ripped=count * sum((exactly(part.overall) for part in parts if part.rip_width is not None), ZERO),
        routed=count * sum((exactly(part.overall) for part in stools), ZERO),
    )


def _together(found: Iterable[Nailing], count: int) -> tuple[Nailing, ...]:
    counts: Counter[tuple[str, int, Fraction]] = Counter()
    for each in found:
        counts[each.use, each.penny, each.needed] += each.count * count
    return tuple(Nailing(use, penny, needed, nails) for (use, penny, needed), nails in counts.items())


def _glued(part: Part) -> Fraction:
    """Half of each angled joint's face, since the piece on its other side has the other half."""
    half = ZERO
    for end in part.ends:
        if end.cut is not CutKind.SQUARE:
            slant = math.cos(math.radians(end.mitre)) * math.cos(math.radians(end.bevel))
            half += exactly(float(part.width * part.thickness) / slant / 2)
    return half


def _caulked(part: Part) -> Fraction:
    """The edges that meet wall or jamb."""
    if part.kind is PartKind.STOOL:
        return sum((exactly(end.notch.length) for end in part.ends if end.notch), ZERO)
    if part.kind is PartKind.APRON:
        return exactly(part.long_point) + 2 * exactly(part.width)
    if part.kind in UNCAULKED:
        return ZERO
    if part.kind in ONE_JOINT:
        return exactly(part.long_point)
    return exactly(part.long_point) + exactly(part.short_point)


def _faces(part: Part, girth: Fraction) -> Fraction:
    """Face and both edges; of a stool both faces, since its nosing and horns show from below."""
    if part.kind in HIDDEN:
        return ZERO
    width = exactly(part.width)
    across = 2 * width if part.kind is PartKind.STOOL else width * girth
    return exactly(part.overall) * (across + 2 * exactly(part.thickness))
