"""Which nail goes where, how long it must be and how many there are."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from longpoint.geometry import Piece, PieceKind
from longpoint.lengths import Fraction
from longpoint.shop.exact import exactly
from longpoint.shop.rates import Rates
from longpoint.texts import Sentence, say
from longpoint.values import Value

CASING = (PieceKind.SIDE_CASING, PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING)
BLOCKS = (PieceKind.PLINTH_BLOCK, PieceKind.CORNER_BLOCK)
DOOR_JAMB = (PieceKind.JAMB_LEG, PieceKind.HEAD_JAMB)
GLUED = (PieceKind.APRON_RETURN, PieceKind.STOOL_RETURN, PieceKind.FILLET_RETURN, PieceKind.CAP_RETURN)
"""Too small to nail."""
_BEHIND = {
    PieceKind.BACK_BAND: "casing",
    PieceKind.FILLET: "head",
    PieceKind.CAP: "head",
    PieceKind.TAPERED_SHIM: "sill",
}
COMMON_SIZES = (2, 3, 4, 6, 8, 10)
LONGEST = 10


class Nailing(Value, frozen=True):
    """One use of nails on one piece.

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


def too_short(nailing: Nailing) -> Sentence | None:
    """What to say of a nail that does not reach; None when it does."""
    length = nail_length(nailing.penny)
    if length >= nailing.needed:
        return None
    return say(
        "note",
        "nails.too-short",
        use=nailing.use,
        penny=nailing.penny,
        length=length,
        needed=nailing.needed,
        short=nailing.needed - length,
    )


def in_a_row(length: Fraction, spacing: Fraction, end: Fraction) -> int:
    """Nails along a piece: one near each end, and no two farther apart than the spacing."""
    return max(2, ceil((length - 2 * end) / spacing) + 1)


def nailings(pieces: tuple[Piece, ...], rates: Rates) -> Iterator[Nailing]:
    """How one opening's pieces are nailed. Returns are glued alone."""
    on_an_apron = any(piece.kind is PieceKind.APRON for piece in pieces)
    for piece in pieces:
        yield from _piece_nailings(piece, on_an_apron, rates)
    mitered = [piece for piece in pieces if piece.kind in CASING and any(end.miter > 0 for end in piece.ends)]
    ends = sum(end.miter > 0 for piece in mitered for end in piece.ends)
    if ends:
        needed = max(piece.thickness for piece in mitered) + rates["jamb_penetration"]
        yield _inner("mitered corners", needed, ceil(Fraction(ends, 2) * rates["corner_nails"]), rates)


def _piece_nailings(piece: Piece, on_an_apron: bool, rates: Rates) -> Iterator[Nailing]:
    """A kind with no rule of its own is nailed to the jamb along its middle."""
    kind, thickness = piece.kind, piece.thickness
    into_sill = thickness + rates["stud_penetration"]
    into_stud = into_sill + rates["drywall"]
    into_jamb = thickness + rates["jamb_penetration"]
    length = exactly(piece.overall)
    row = in_a_row(length, rates["nail_spacing"], rates["nail_end_distance"])
    if kind in CASING:
        yield _outer("casing to stud", into_stud, row, rates)
        yield _inner("casing to jamb", into_jamb, row, rates)
    elif kind is PieceKind.APRON:
        yield _outer("apron to stud", into_stud, 2 * row, rates)
    elif kind is PieceKind.STOOL:
        row = in_a_row(length, rates["stool_nail_spacing"], rates["nail_end_distance"])
        yield _outer("stool to sill", into_sill, row, rates)
        if on_an_apron:
            yield _outer("stool to apron", into_sill, row, rates)
    elif kind in BLOCKS:
        yield _outer("blocks to stud", into_stud, int(rates["block_nails"]), rates)
    elif kind in DOOR_JAMB:
        yield _outer("door jamb to stud", into_sill + rates["shim_space"], 2 * row, rates)
    elif kind is PieceKind.MULL_CASING:
        yield _inner("mull casing to jambs", into_jamb, 2 * row, rates)
    elif kind is PieceKind.JAMB_EXTENSION:
        yield _inner("jamb extension to jamb", exactly(piece.width) + rates["jamb_penetration"], row, rates)
    elif kind not in GLUED:
        yield _inner(f"{kind.replace('_', ' ')} to {_BEHIND.get(kind, 'jamb')}", into_jamb, row, rates)


def _outer(use: str, needed: Fraction, count: int, rates: Rates) -> Nailing:
    return Nailing(use, int(rates["outer_nail"]) or shortest(needed), needed, count)


def _inner(use: str, needed: Fraction, count: int, rates: Rates) -> Nailing:
    return Nailing(use, int(rates["inner_nail"]) or shortest(needed), needed, count)
