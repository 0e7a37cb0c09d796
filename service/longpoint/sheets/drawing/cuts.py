"""A detail of a section in inches, and how it is drawn: pieces cut through, what lies about them, dimensions."""

from __future__ import annotations

from longpoint.geometry.opening import Built
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.hatch import hatch
from longpoint.sheets.drawing.number import number_beside, number_upon
from longpoint.sheets.drawing.shapes import Point
from longpoint.values import Value

DOWNWARD, UPWARD, RIGHTWARD, LEFTWARD = (0.0, 1.0), (0.0, -1.0), (1.0, 0.0), (-1.0, 0.0)

Box = tuple[Point, Point]
"""Top left and bottom right corner, inches, y upwards."""


class CutThrough(Value, frozen=True):
    """A piece cut through.

    Attributes:
        number, piece: the piece and its number within the opening.
        box: what the section cuts.
        away: the direction on paper in which to lead its number off where it is too narrow to carry it.
        rising: which way its hatching leans.
        lap: a box beside the first which the piece also takes, where it is rabbeted over another.
    """

    number: int
    piece: Piece
    box: Box
    away: Point
    rising: bool = True
    lap: Box | None = None


class Sized(Value, frozen=True):
    """A dimension in inches: between which points, which way off on paper, its text, first tier and feet."""

    start: Point
    end: Point
    away: Point
    text: str
    tier: int = 0
    feet: tuple[Point, Point] | None = None


class Said(Value, frozen=True):
    """A word beside what it names. Attributes: text; at, inches; shift, on paper."""

    text: str
    at: Point
    shift: Point = (0.0, 0.0)


class Detail(Value, frozen=True):
    """One cut through an opening.

    Attributes:
        name: what it goes through.
        described: what it shows, in a sentence.
        across, above, below: inches to the right of its origin, over and under it.
        cuts: the pieces cut through, from the back to the front.
        jamb: boxes of the jamb that is there already, cut through.
        seen: outlines of what lies beyond the cut.
        wall: boxes of wall, hatched.
        lines: edges, each with its kind of line.
        said: words.
        sized: dimensions, the first with the first choice of place.
    """

    name: str
    described: str
    across: float
    above: float
    below: float
    cuts: tuple[CutThrough, ...]
    jamb: tuple[Box, ...] = ()
    seen: tuple[Box, ...] = ()
    wall: tuple[Box, ...] = ()
    lines: tuple[tuple[Point, Point, str], ...] = ()
    said: tuple[Said, ...] = ()
    sized: tuple[Sized, ...] = ()


def draw_detail(canvas: Canvas, detail: Detail, scale: float, drop: float = 0.0) -> None:
    """Draw it with its origin `drop` units down the sheet."""

    def at(point: Point) -> Point:
        return point[0] * scale, drop - point[1] * scale

    for box in detail.seen:
        canvas.outline(_corners(at(box[0]), at(box[1])), "jamb")
    for corner, opposite in detail.wall:
        hatch(canvas, *at(corner), *at(opposite), step=7)
    for start, end, kind in detail.lines:
        canvas.line(at(start), at(end), kind)
    for box in detail.jamb:
        _cut(canvas, at(box[0]), at(box[1]), rising=False)
    for one in detail.cuts:
        for box in (one.box,) if one.lap is None else (one.lap, one.box):
            _cut(canvas, at(box[0]), at(box[1]), rising=one.rising)
    for word in detail.said:
        x, y = at(word.at)
        canvas.text(word.text, (x + word.shift[0], y + word.shift[1]), size=SMALL_SIZE)
    for what in detail.sized:
        feet = None if what.feet is None else (at(what.feet[0]), at(what.feet[1]))
        dimension(canvas, Dimension(at(what.start), at(what.end), what.away, what.text, what.tier, feet))
    for one in detail.cuts:
        _number(canvas, one.number, at(one.box[0]), at(one.box[1]), one.away)


def _cut(canvas: Canvas, corner: Point, opposite: Point, *, rising: bool) -> None:
    canvas.outline(_corners(corner, opposite), "cut")
    hatch(canvas, *corner, *opposite, step=4, rising=rising)


def _corners(corner: Point, opposite: Point) -> tuple[Point, Point, Point, Point]:
    (left, top), (right, bottom) = corner, opposite
    return (left, top), (right, top), (right, bottom), (left, bottom)


def _number(canvas: Canvas, number: int, corner: Point, opposite: Point, away: Point) -> None:
    (left, top), (right, bottom) = corner, opposite
    center = (left + right) / 2, (top + bottom) / 2
    if number_upon(canvas, number, center, min(right - left, bottom - top)):
        return
    if away[0]:
        edge = right if away[0] > 0 else left
        number_beside(canvas, number, [(((edge, top), (edge, bottom)), away, (center[0] - edge, 0.0))])
    else:
        level = top if away[1] < 0 else bottom
        number_beside(canvas, number, [(((left, level), (right, level)), away, (0.0, center[1] - level))])


def numbered(built: Built, kind: PieceKind, side: str = "") -> tuple[int, Piece] | None:
    """The first part of a kind, on a side where one is named, with its number."""
    found = ((n, p) for n, p in built.numbered if p.kind is kind and side in ("", p.side))
    return next(found, None)
