"""Sticks to scale: the pieces upon each, the cuts between them and what is left over."""

from __future__ import annotations

from collections.abc import Sequence

from longpoint.lengths import Fraction, Real
from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas, text_box
from longpoint.sheets.drawing.hatch import hatch
from longpoint.sheets.drawing.lettering import width
from longpoint.sheets.drawing.shapes import Point
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.wording import Wording
from longpoint.values import Value

LEFT, ACROSS, BAR = 96.0, 560.0, 22.0
ROW = 11.5
LOWEST = 60
MANY = 4
BESIDE = 5.0
NARROWEST = 2.0
"""Drawing units of waste below which hatching would be a smudge."""


class Lying(Value, frozen=True):
    """A piece on a stick.

    Attributes:
        label: its name.
        start, length: inches from the stick's left end, and along it.
        left, right: how far each end's miter runs along the stick; negative where its long point lies on the
            edge away from the fence.
    """

    label: str
    start: Fraction
    length: Fraction
    left: Real = Fraction(0)
    right: Real = Fraction(0)


class DrawnStick(Value, frozen=True):
    """One stick. Attributes: name, as on the sheets; length; pieces; offcut at its right end; kept."""

    name: str
    length: Fraction
    pieces: tuple[Lying, ...]
    offcut: Fraction
    kept: bool


def sticks_drawing(
    title: str,
    groups: Sequence[tuple[str, Sequence[DrawnStick]]],
    wording: Wording,
    styling: Styling = Styling.THEMED,
    across: float = ACROSS,
) -> str:
    """Sticks under one another, all to one scale, as SVG text.

    Args:
        title: the drawing's.
        groups: a heading, "" for none, and the sticks under it.
        wording: how lengths are written.
        styling: where the look comes from.
        across: how wide the longest stick is drawn.
    """
    longest = max((float(row.length) for _, rows in groups for row in rows), default=1.0)
    canvas = Canvas()
    top = 0.0
    if not any(rows for _, rows in groups):
        canvas.words("No sticks were planned.", 0, 0)
    for heading, rows in groups:
        if heading:
            canvas.words(heading, -LEFT, top)
            top += 16
        for row in rows:
            top = _stick(canvas, row, top, across / longest, wording) + 14
    described = "; ".join(_described(heading, row, wording) for heading, rows in groups for row in rows)
    return canvas.svg(title, f"Sticks to scale, from the left end. {described}", styling)


def _described(heading: str, row: DrawnStick, wording: Wording) -> str:
    pieces = ", ".join(f"{piece.label} {wording.figure(piece.length)}" for piece in row.pieces)
    name = f"{heading}, {row.name}" if heading else row.name
    left = f", {wording.figure(row.offcut)} left over" if row.offcut else ""
    return f"{name}, {wording.stick(row.length)}: {pieces}{left}"


def _stick(canvas: Canvas, row: DrawnStick, top: float, scale: float, wording: Wording) -> float:
    """Draw one stick with its top edge at `top`; gives the lowest point it takes."""
    long, bottom = float(row.length) * scale, top + BAR
    middle = top + BAR / 2
    canvas.words(row.name, -LEFT, middle - 6, size=SMALL_SIZE + 1)
    canvas.words(wording.stick(row.length), -LEFT, middle + 6, size=SMALL_SIZE)
    canvas.outline(((0, top), (long, top), (long, bottom), (0, bottom)), "waste", solid=False)
    for piece in row.pieces:
        canvas.outline(_outline(piece, top, bottom, scale), "cut", solid=False, title=piece.label)
    _leftover(canvas, row, top, long, scale, wording)
    narrow = [piece for piece in row.pieces if not _name(canvas, piece, top, scale, wording)]
    lowest = bottom + 2 * ROW
    # From the right, each led to a text that runs on rightwards: so no leader meets another's text.
    for run in reversed(_runs(narrow)):
        lowest = max(lowest, _beneath(canvas, run, bottom, scale, wording))
    return lowest


def _outline(piece: Lying, top: float, bottom: float, scale: float) -> tuple[Point, ...]:
    start, end = float(piece.start) * scale, float(piece.start + piece.length) * scale
    left, right = float(piece.left) * scale, float(piece.right) * scale
    return (
        (start + max(-left, 0.0), top),
        (end - max(-right, 0.0), top),
        (end - max(right, 0.0), bottom),
        (start + max(left, 0.0), bottom),
    )


def _leftover(
    canvas: Canvas, row: DrawnStick, top: float, long: float, scale: float, wording: Wording
) -> None:
    wide = float(row.offcut) * scale
    if wide < NARROWEST:
        return
    if not row.kept:
        hatch(canvas, long - wide, top, long, top + BAR, step=6)
    words = f"{'keep' if row.kept else 'waste'} {wording.figure(row.offcut)}"
    for text in (words, words.partition(" ")[0]):
        if width(text, SMALL_SIZE) + 4 <= wide:
            spot = (long - wide / 2, top + BAR / 2)
            if not row.kept:
                half = width(text, SMALL_SIZE) / 2 + 2
                x, y = spot
                canvas.outline(
                    ((x - half, y - 7), (x + half, y - 7), (x + half, y + 7), (x - half, y + 7)),
                    "blank",
                    solid=False,
                )
            canvas.text(text, spot, size=SMALL_SIZE)
            return


def _name(canvas: Canvas, piece: Lying, top: float, scale: float, wording: Wording) -> bool:
    """Letter a piece: its name upon it and its length under it, where both fit."""
    left, right = _face(piece, scale)
    size = wording.figure(piece.length)
    if max(width(piece.label, SMALL_SIZE), width(size, SMALL_SIZE)) + 2 > right - left:
        return False
    middle = (left + right) / 2
    canvas.text(piece.label, (middle, top + BAR / 2), size=SMALL_SIZE)
    canvas.text(size, (middle, top + BAR + 7.5), size=SMALL_SIZE)
    return True


def _face(piece: Lying, scale: float) -> tuple[float, float]:
    """Between the middles of a piece's two ends."""
    start, end = float(piece.start) * scale, float(piece.start + piece.length) * scale
    return start + abs(float(piece.left)) * scale / 2, end - abs(float(piece.right)) * scale / 2


def _runs(pieces: Sequence[Lying]) -> list[list[Lying]]:
    """Small pieces of one length next to one another go under one text, when they are many."""
    runs: list[list[Lying]] = []
    for piece in pieces:
        if runs and runs[-1][-1].length == piece.length and _next(runs[-1][-1], piece):
            runs[-1].append(piece)
        else:
            runs.append([piece])
    return [group for run in runs for group in ([run] if len(run) >= MANY else [[one] for one in run])]


def _next(before: Lying, piece: Lying) -> bool:
    return piece.start - before.start - before.length <= 1


def _beneath(canvas: Canvas, run: list[Lying], bottom: float, scale: float, wording: Wording) -> float:
    """Put a text at the first free row under the stick, led to from the pieces it names."""
    left, right = _face(run[0], scale)[0], _face(run[-1], scale)[1]
    size = wording.figure(run[0].length)
    text = f"{run[0].label} {size}"
    if len(run) > 1:
        canvas.line((left, bottom + 2), (right, bottom + 2), "edge", keep_clear=False)
        text = f"{len(run)} of {size}, {run[0].label} to {run[-1].label}"
    x = (left + right) / 2
    for row in range(LOWEST):
        y = bottom + 7.5 + row * ROW
        begin = x + BESIDE + width(text, SMALL_SIZE) / 2
        if canvas.free(text_box(text, (begin, y), SMALL_SIZE)) and not canvas.crosses_text(
            (x, bottom), (x, y)
        ):
            canvas.line((x, bottom), (x, y + 3), "dim")
            canvas.words(text, x + BESIDE, y, size=SMALL_SIZE)
            return y + 6
    return bottom
