"""Casing round a curve or a polygon, its lengths and settings rounded together so that it closes."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import pairwise

from msgspec.structs import replace

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.fit.chain import Chain, polygon
from longpoint.geometry.fit.closing import SAW_STEP, Closed, close
from longpoint.geometry.fit.saw_check import OFF_ZERO, saw_check
from longpoint.geometry.frame.kernel import Frame
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.piece import End, Piece
from longpoint.geometry.piece_names import PieceKey, PieceKind
from longpoint.geometry.readings.inputs import Opening, WallAnswer
from longpoint.geometry.readings.outline import Arch, Polygon
from longpoint.geometry.readings.trim import HeadStyle
from longpoint.lengths import Fraction, Gap, Mode, Rounding, Together
from longpoint.texts import Sentence, say
from longpoint.values import Angle, Value

CASING = (PieceKind.SIDE_CASING, PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING)
BAND = (PieceKind.BACK_BAND,)


class ClosingCorner(Value, frozen=True):
    """A joint of pieces that are rounded together.

    Attributes:
        before: The key of the piece that ends at this joint, going counterclockwise as seen from the room.
        after: The key of the piece that begins at it.
        before_degrees: The saw's setting for the end of `before`, off a square cut; negative where its long point lies
            on the inner edge.
        after_degrees: The saw's setting for the end of `after`, counted in the same way.
        gap: How far the joint's long point lies from its exact place once all before it are cut to their marks,
            measured in a straight line.
    """

    before: PieceKey
    after: PieceKey
    before_degrees: Angle
    after_degrees: Angle
    gap: Gap


class Closing(Value, frozen=True):
    """Mitered pieces round a curve or a polygon whose lengths, and whose settings on the saw's scale of tenths of a
    degree, are rounded together.

    Attributes:
        first: The key of the piece whose beginning is held; the others are counted from it, counterclockwise.
        first_turned: How far `first` is turned off its exact direction, in degrees, counterclockwise; its foot is cut
            to match.
        corners: Their joints, counterclockwise from the right; of a picture frame the last one closes the ring.
        gap: How far the whole stands open: from the end of the last piece to its exact place.
        closes: Whether `gap` is at most one step of the rounding, as 1/16 in, and each corner's gap at most one and a
            half steps.
        least_gap: The least gap that any way of rounding leaves; null where it closes, or where there are too many
            pieces to try every way.
        opens_off_zero: How far the end of the last piece comes off its place, the first being held, where each cut is
            0.05 degrees off because the saw's pointer stands at zero while the blade is that far off square.
        try_first: The joint to cut and try first, by its place in `corners`: its settings come most often.
        dry_fit: How many pieces to lay out dry, from the first on, before the rest is cut.
    """

    first: PieceKey
    first_turned: Angle
    corners: tuple[ClosingCorner, ...]
    gap: Gap
    closes: bool
    least_gap: Gap | None
    opens_off_zero: Gap
    try_first: int
    dry_fit: int


class RoundedTogether(Value, frozen=True):
    """Attributes: every piece, those of chains with their marks; each chain's closing; what to say of it."""

    pieces: tuple[Piece, ...]
    closings: tuple[Closing, ...]
    notes: tuple[Sentence, ...]
    findings: tuple[Finding, ...]


def rounded_together(
    opening: Opening, frame: Frame, sides: Sequence[CasedSide], pieces: tuple[Piece, ...], rounding: Rounding
) -> RoundedTogether | None:
    """The casing, and a back band, of a curve or a polygon rounded together; None where it is not to be.

    Up and down are ways to leave wood on: what is cut so is shaved to fit, and is not rounded together.
    """
    if (
        not isinstance(opening.outline.shape, Arch | Polygon)
        or frame.square
        or rounding.mode is not Mode.NEAREST
        or opening.trim.head_style is not HeadStyle.MITERED
        or opening.wall_answer is WallAnswer.LEAN
    ):
        return None
    marked: dict[PieceKey, Piece] = {}
    closings: list[Closing] = []
    notes: list[Sentence] = []
    findings: list[Finding] = []
    for kinds in (CASING, BAND):
        row = _row(pieces, kinds, sides)
        if len(row) < 2 or not _one_outline(row):
            continue
        chain = _chain(row, frame, ring=sides[0].casing is not None)
        closed = _closed(chain, rounding.to.step)
        closing = _closing(row, chain, closed)
        closings.append(closing)
        notes.append(_note(closing, row))
        if not closing.closes:
            findings.append(_open(closing))
        for piece, mark in zip(row, closed.lengths, strict=True):
            marked[piece.key] = _marked(piece, mark, rounding)
    if not closings:
        return None
    together = tuple(marked.get(piece.key, piece) for piece in pieces)
    return RoundedTogether(together, tuple(closings), tuple(notes), tuple(findings))


_closed = lru_cache(1024)(close)


def _row(pieces: Sequence[Piece], kinds: tuple[PieceKind, ...], sides: Sequence[CasedSide]) -> list[Piece]:
    """Pieces of some kinds in the order of their sides, counterclockwise."""
    by_side = {piece.side: piece for piece in pieces if piece.kind in kinds}
    return [by_side[side.name] for side in sides if side.name in by_side]


def _one_outline(row: Sequence[Piece]) -> bool:
    """Whether the pieces are mitered at one width, where some are shaped later: then their outer edges meet as cut."""
    return not any(piece.shaped_later for piece in row) or len({piece.sawn_width for piece in row}) == 1


def _chain(row: Sequence[Piece], frame: Frame, *, ring: bool) -> Chain:
    """The line of the pieces' outer edges, from long point to long point."""
    lengths = tuple(piece.mitered_long_point for piece in row)
    degrees = [float(corner.degrees) for corner in frame.corners]
    if ring:
        return polygon(lengths, degrees)
    # Of what stands on a base, directions are taken from the line of the base, so that a crown runs at zero.
    directions = [-degrees[0]]
    for inside in degrees[1:-1]:
        directions.append(directions[-1] + 180 - inside)
    return Chain(lengths, tuple(directions))


def _joints(row: Sequence[Piece], *, ring: bool) -> Iterator[tuple[Piece, Piece]]:
    yield from pairwise(row)
    if ring:
        yield row[-1], row[0]


def _closing(row: Sequence[Piece], chain: Chain, closed: Closed) -> Closing:
    check = saw_check(chain, closed)
    corners = []
    for number, (before, after) in enumerate(_joints(row, ring=chain.closed)):
        # The outer edge against the fence puts the end a side finishes at on the saw's left.
        one, other = _settings(before.ends[0], after.ends[1], closed, number)
        gap = Gap(closed.corner_gaps[number])
        corners.append(ClosingCorner(before.key, after.key, Angle(one), Angle(other), gap))
    return Closing(
        first=row[closed.start].key,
        first_turned=Angle(closed.directions_off[closed.start]),
        corners=tuple(corners),
        gap=Gap(closed.gap),
        closes=closed.closes,
        least_gap=None if closed.least_gap is None else Gap(closed.least_gap),
        opens_off_zero=Gap(check.opens),
        try_first=check.first_joint,
        dry_fit=check.dry_fit,
    )


def _settings(before: End, after: End, closed: Closed, number: int) -> tuple[Fraction, Fraction]:
    """A joint's turn as two settings: halves where both pieces are alike, else what lies nearest to the first's own."""
    one, other = _signed(before), _signed(after)
    if abs(one - other) < float(closed.saw_step) / 2:
        return closed.settings[number]
    nearest = round(one / float(closed.saw_step)) * closed.saw_step
    return nearest, closed.turns[number] - nearest


def _signed(end: End) -> float:
    return -float(end.miter) if end.long_edge == "inner" else float(end.miter)


def _marked(piece: Piece, mark: Fraction, rounding: Rounding) -> Piece:
    step = rounding.to.step
    if piece.shaped_later:
        return replace(piece, overall=Together(float(piece.overall), mark, step))
    long_point = Together(float(piece.long_point), mark, step)
    past = float(piece.overall) - float(piece.long_point)
    overall = long_point
    if past:
        # Moved as its long point is, and no farther than to the mark next to it.
        below = math.floor(float(piece.overall) / float(step)) * step
        moved = mark + round(past / float(step)) * step
        overall = Together(float(piece.overall), min(max(moved, below), below + step), step)
    return replace(piece, long_point=long_point, overall=overall)


def _note(closing: Closing, row: Sequence[Piece]) -> Sentence:
    joint = closing.corners[closing.try_first]
    titles = {piece.key: piece.title for piece in row}
    return say(
        "note",
        "closing.on-paper",
        pieces=len(row),
        gap=float(closing.gap),
        off=OFF_ZERO,
        opens=float(closing.opens_off_zero),
        before=titles[joint.before],
        after=titles[joint.after],
        dry=closing.dry_fit,
    )


def _open(closing: Closing) -> Finding:
    worst = max(float(closing.gap), *(float(corner.gap) for corner in closing.corners))
    detail = say("finding", "closing.stands-open", gap=float(closing.gap), worst=worst, step=float(SAW_STEP))
    if closing.least_gap is not None:
        detail += say("hint", "closing.least-gap", least=float(closing.least_gap))
    gauge = Offer("bevel_gauge", say("offer", "closing.bevel-gauge"))
    return Finding("stands-open", "head", detail, float(closing.gap), (gauge,))
