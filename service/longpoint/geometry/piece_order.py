"""The order of an opening's pieces, in which they are numbered, listed and drawn: this table alone says it."""

from __future__ import annotations

from collections.abc import Iterable

from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.values.kept import Kept

KINDS: tuple[tuple[PieceKind, ...], ...] = (
    (PieceKind.STOOL,),
    (PieceKind.APRON,),
    (PieceKind.APRON_RETURN,),
    (PieceKind.STOOL_RETURN,),
    # Casing goes round the opening, and its kind follows from its side.
    (PieceKind.SIDE_CASING, PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING),
    (PieceKind.CORNER_BLOCK,),
    (PieceKind.PLINTH_BLOCK,),
    (PieceKind.BACK_BAND,),
    (PieceKind.JAMB_EXTENSION,),
    (PieceKind.MULL_CASING,),
    (PieceKind.FILLET,),
    (PieceKind.FILLET_RETURN,),
    (PieceKind.CAP,),
    (PieceKind.CAP_RETURN,),
    (PieceKind.JAMB_LEG,),
    (PieceKind.HEAD_JAMB,),
    (PieceKind.DOOR_STOP,),
    (PieceKind.TAPERED_SHIM,),
)
"""Kinds that share a row are told apart by their sides alone."""

_SIDES = ("hinge", "strike", "left", "head", "right", "sill")
_ROWS = {kind: row for row, kinds in enumerate(KINDS) for kind in kinds}
_WORDS = {word: at for at, word in enumerate(_SIDES)}


def in_order(pieces: Iterable[Piece]) -> tuple[Piece, ...]:
    """The pieces in the order of the table; those of one row from the left over the head to the right, then below."""
    return tuple(sorted(pieces, key=_place))


def _place(piece: Piece) -> tuple[int, ...]:
    return _PLACES[piece.kind, piece.side]


def _placed(named: tuple[PieceKind, str]) -> tuple[int, ...]:
    kind, side = named
    # A word says where, a number counts from the left: "head 2", "sill left", "1 of 3".
    return _ROWS[kind], *(int(word) if word.isdigit() else _WORDS.get(word, 0) for word in side.split())


_PLACES = Kept(1024, _placed)
