"""A returned stool whose miter would run past its horn and into the tongue."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.checks.offers import FINEST
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Opening
from longpoint.lengths import Fraction, Real
from longpoint.texts import say


def returned_stool_findings(opening: Opening, pieces: Iterable[Piece]) -> Iterator[Finding]:
    """At each end of a stool whose return is mitered: what the miter runs along it beyond the horn's length."""
    stool = opening.trim.stool
    if stool is None:
        return
    for piece in pieces:
        if piece.kind is not PieceKind.STOOL:
            continue
        for end in piece.ends:
            if end.notch is None or not end.miter:
                continue
            run = _run(
                piece, end.notch.depth if end.notch.end_depth is None else end.notch.end_depth, end.miter
            )
            past = run - end.notch.length
            if past > 0:
                own = opening.horns.left if end.at == "left" else opening.horns.right
                yield _finding(
                    end.at, run, end.notch.length, past, (stool.horn if own is None else own) + past
                )


def _run(piece: Piece, depth: Real, miter: Real) -> Real:
    """How far a miter across the horn runs along the stool: as far as the horn stands off the wall, at 45 degrees."""
    off_wall = piece.width - depth
    return off_wall if miter == 45 else float(off_wall) * math.tan(math.radians(miter))


def _finding(side: str, run: Real, horn: Real, past: Real, longer: Real) -> Finding:
    return Finding(
        "return-past-horn",
        side,
        say("finding", "stool.return-past-horn", side=side, run=run, horn=horn, past=past),
        past,
        (
            Offer(
                "lengthen_horn",
                say("offer", "stool.lengthen-horn", past=past),
                ("horns", side),
                longer if isinstance(longer, Fraction) else Fraction(math.ceil(longer * FINEST), FINEST),
            ),
            Offer("square_end", say("offer", "stool.square-end")),
        ),
    )
