"""Corner blocks, and plinth blocks under a door's legs."""

from __future__ import annotations

from longpoint.geometry.piece import End, Hand, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Bottom, Opening
from longpoint.lengths import Fraction
from longpoint.texts import say

BLOCK_CAUTION = say("note", "blocks.too-small-to-hold")


def corner_blocks(opening: Opening) -> tuple[Piece, ...]:
    """A block at every mitered corner's place: two over legs, four in a picture frame."""
    block = opening.trim.corner_block
    assert block is not None
    places = ["left", "right"]
    if opening.bottom is Bottom.CASING:
        places += ["sill left", "sill right"]
    return tuple(
        _block(
            PieceKind.CORNER_BLOCK,
            place,
            block.profile,
            (block.width, block.width),
            block.thickness,
        )
        for place in places
    )


def plinth_pieces(opening: Opening) -> tuple[Piece, ...]:
    """The left and right blocks of an opening whose trim has them, grain upright."""
    plinth = opening.trim.plinth
    assert plinth is not None
    size = (plinth.height, plinth.width)
    return tuple(
        _block(PieceKind.PLINTH_BLOCK, side, plinth.profile, size, plinth.thickness)
        for side in ("left", "right")
    )


def _block(
    kind: PieceKind, side: str, profile: str, size: tuple[Fraction, Fraction], thickness: Fraction
) -> Piece:
    """A block of length and width, cut square."""
    length, width = size
    name = "plinth height" if kind is PieceKind.PLINTH_BLOCK else "block width"
    return Piece(
        kind=kind,
        side=side,
        profile=profile,
        short_point=length,
        long_point=length,
        overall=length,
        width=width,
        thickness=thickness,
        ends=(End("foot", Hand.LEFT), End("head", Hand.RIGHT)),
        how=(Step("length", name, ((name, length),)),),
        notes=(BLOCK_CAUTION,),
    )
