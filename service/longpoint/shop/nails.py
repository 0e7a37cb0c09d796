"""Which nail goes where, how long it must be and how many there are."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from longpoint.geometry import Part, PartKind
from longpoint.lengths import Fraction, tape
from longpoint.shop.exact import exactly
from longpoint.shop.rates import Rates
from longpoint.values import Value

CASING = (PartKind.CASING_LEG, PartKind.CASING_HEAD, PartKind.CASING_SILL)
BLOCKS = (PartKind.PLINTH_BLOCK, PartKind.CORNER_BLOCK)
DOOR_JAMB = (PartKind.JAMB_LEG, PartKind.HEAD_JAMB)
GLUED = (PartKind.APRON_RETURN, PartKind.STOOL_RETURN, PartKind.FILLET_RETURN, PartKind.CAP_RETURN)
"""Too small to nail."""
_BEHIND = {
    PartKind.BACK_BAND: "casing",
    PartKind.FILLET: "head",
    PartKind.CAP: "head",
    PartKind.LEVELLING_STRIP: "sill",
}
COMMON_SIZES = (2, 3, 4, 6, 8, 10)
LONGEST = 10


class Nailing(Value, frozen=True):
    """One use of nails on one part.

    Attributes:
        use: what is nailed to what.
        penny: the size.
        needed: least length, inches: through the piece and what is behind it, and far enough in.
        count: how many, waste apart.
    """

    use: str
    penny: int
    needed: Fraction
    count: int


def nail_length(penny: int) -> Fraction:
    """A finishing nail's length in inches: 1/2 + penny/4, from 2d to 10d."""
    return Fraction(1, 2) + Fraction(penny, 4)


_COMMON_LENGTHS = tuple((penny, nail_length(penny)) for penny in COMMON_SIZES)


def shortest(needed: Fraction) -> int:
    """The smallest common size that is long enough; the longest where none is."""
    return next((penny for penny, length in _COMMON_LENGTHS if length >= needed), LONGEST)


def too_short(nailing: Nailing) -> str:
    """What to say of a nail that does not reach; "" when it does."""
    length = nail_length(nailing.penny)
    if length >= nailing.needed:
        return ""
    return (
        f"{nailing.use}: {nailing.penny}d is {tape(length)} long and {tape(nailing.needed)} is needed, "
        f"{tape(nailing.needed - length)} short. Take a longer nail, or a trim screw."
    )


def in_a_row(length: Fraction, spacing: Fraction, end: Fraction) -> int:
    """Nails along a piece: one near each end, and no two farther apart than the spacing."""
    return max(2, ceil((length - 2 * end) / spacing) + 1)


def nailings(parts: tuple[Part, ...], rates: Rates) -> Iterator[Nailing]:
    """How one opening's parts are nailed. Returns are glued alone."""
    on_an_apron = any(part.kind is PartKind.APRON for part in parts)
    for part in parts:
        yield from _part_nailings(part, on_an_apron, rates)
    mitred = [part for part in parts if part.kind in CASING and any(end.mitre > 0 for end in part.ends)]
    ends = sum(end.mitre > 0 for part in mitred for end in part.ends)
    if ends:
        needed = max(part.thickness for part in mitred) + rates["jamb_penetration"]
        yield _inner("mitred corners", needed, ceil(Fraction(ends, 2) * rates["corner_nails"]), rates)


def _part_nailings(part: Part, on_an_apron: bool, rates: Rates) -> Iterator[Nailing]:
    """A kind with no rule of its own is nailed to the jamb along its middle."""
    kind, thickness = part.kind, part.thickness
    into_sill = thickness + rates["stud_penetration"]
    into_stud = into_sill + rates["drywall"]
    into_jamb = thickness + rates["jamb_penetration"]
    length = exactly(part.overall)
    row = in_a_row(length, rates["nail_spacing"], rates["nail_end_distance"])
    if kind in CASING:
        yield _outer("casing to stud", into_stud, row, rates)
        yield _inner("casing to jamb", into_jamb, row, rates)
    elif kind is PartKind.APRON:
        yield _outer("apron to stud", into_stud, 2 * row, rates)
    elif kind is PartKind.STOOL:
        row = in_a_row(length, rates["stool_nail_spacing"], rates["nail_end_distance"])
        yield _outer("stool to sill", into_sill, row, rates)
        if on_an_apron:
            yield _outer("stool to apron", into_sill, row, rates)
    elif kind in BLOCKS:
        yield _outer("blocks to stud", into_stud, int(rates["block_nails"]), rates)
    elif kind in DOOR_JAMB:
        yield _outer("door jamb to stud", into_sill + rates["shim_space"], 2 * row, rates)
    elif kind is PartKind.MULL_CASING:
        yield _inner("mull casing to jambs", into_jamb, 2 * row, rates)
    elif kind is PartKind.JAMB_EXTENSION:
        yield _inner("jamb extension to jamb", exactly(part.width) + rates["jamb_penetration"], row, rates)
    elif kind not in GLUED:
        yield _inner(f"{kind.replace('_', ' ')} to {_BEHIND.get(kind, 'jamb')}", into_jamb, row, rates)


def _outer(use: str, needed: Fraction, count: int, rates: Rates) -> Nailing:
    return Nailing(use, int(rates["outer_nail"]) or shortest(needed), needed, count)


def _inner(use: str, needed: Fraction, count: int, rates: Rates) -> Nailing:
    return Nailing(use, int(rates["inner_nail"]) or shortest(needed), needed, count)
