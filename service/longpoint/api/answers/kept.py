"""Pieces that were encoded before: the same piece comes again in opening after opening."""

from __future__ import annotations

import msgspec
from msgspec.structs import replace

from longpoint.api.http.answer import in_pieces
from longpoint.api.http.negotiate import JSON
from longpoint.geometry import Piece
from longpoint.geometry.value import KEPT
from longpoint.lengths import LengthWriter
from longpoint.shop.answer import CutListAnswer, OpeningAnswer
from longpoint.values import encoder


def with_kept(answer: OpeningAnswer, write: LengthWriter) -> OpeningAnswer:
    """An opening's answer to go out as JSON, its exact pieces as they were encoded before."""
    pieces = [piece if isinstance(piece.overall, float) else _kept(piece, write) for piece in answer.pieces]
    return replace(answer, pieces=tuple(pieces))


def ready(answer: CutListAnswer, wanted: str, write: LengthWriter) -> CutListAnswer:
    """A house's answer, long, to go out: its pieces as they were encoded before, and each item of its long lists
    encoded in its place."""
    if wanted == JSON:
        answer = replace(answer, openings=tuple(with_kept(one, write) for one in answer.openings))
    return in_pieces(answer, wanted, write)


def _kept(piece: Piece, write: LengthWriter) -> msgspec.Raw:
    known: tuple[Piece, msgspec.Raw] | None = write.written.get(id(piece))
    if known is None:
        if len(write.written) >= KEPT:
            write.written.clear()
        known = write.written[id(piece)] = piece, msgspec.Raw(encoder(write).encode(piece))
    return known[1]
