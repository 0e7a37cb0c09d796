"""How the sheets name pieces: the opening's mark and the piece's number in it, the same on every sheet."""

from __future__ import annotations

from longpoint.geometry.piece import Piece
from longpoint.shop.build import CutList, HouseKey
from longpoint.values import Value


class NumberedPiece(Value, frozen=True):
    """A piece under its number.

    Attributes:
        label: "K1-7": seventh piece of the opening K1. Openings that are alike have alike pieces.
        number: its number within the opening, the one in the elevation's ring.
        opening: the opening's mark.
        piece: the piece.
        count: how many openings are alike, so how many to make.
        room: where it goes.
    """

    label: str
    number: int
    opening: str
    piece: Piece
    count: int
    room: str


def to_cut(cut_list: CutList, key: HouseKey, piece: NumberedPiece) -> int:
    """How many of the pieces alike are still to be cut."""
    return len(cut_list.instances(key, piece.count))


def pieces_by_key(cut_list: CutList) -> dict[HouseKey, NumberedPiece]:
    """Every piece of a house by its key in the cutting plans, in the order of the openings."""
    return {
        HouseKey(index, piece.key): NumberedPiece(
            f"{mark}-{number}", number, mark, piece, one.count, one.room
        )
        for index, one in enumerate(cut_list.openings)
        for mark in (one.built.opening.mark,)
        for number, piece in one.built.numbered
    }
