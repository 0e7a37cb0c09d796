"""Pieces that were encoded before: the same piece comes again in opening after opening."""

from __future__ import annotations

import msgspec
from msgspec.structs import replace

from longpoint.geometry import Part
from longpoint.geometry.value import KEPT
from longpoint.lengths import LengthWriter
from longpoint.shop.answer import OpeningAnswer
from longpoint.values import encoder


def with_kept(answer: OpeningAnswer, write: LengthWriter) -> OpeningAnswer:
    """An opening's answer to go out as JSON, its exact pieces as they were encoded before."""
    parts = [part if isinstance(part.overall, float) else _kept(part, write) for part in answer.parts]
    return replace(answer, parts=tuple(parts))


def _kept(part: Part, write: LengthWriter) -> msgspec.Raw:
    known: tuple[Part, msgspec.Raw] | None = write.written.get(id(part))
    if known is None:
        if len(write.written) >= KEPT:
            write.written.clear()
        known = write.written[id(part)] = part, msgspec.Raw(encoder(write).encode(part))
    return known[1]
