"""Dimension lines: drawn beside what they measure, their texts placed where nothing else is.

Each dimension runs parallel to what it measures. It is tried close by, then in tiers further off, with its
text over the line's middle, then past either end; the first place that is free is taken, so the same drawing
always comes out the same.
"""

from __future__ import annotations

from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas, text_box
from longpoint.sheets.drawing.lettering import ASCENT, DESCENT, width
from longpoint.sheets.drawing.shapes import (
    Convex,
    Point,
    along,
    convex,
    reading_angle,
    segment,
    shifted,
    touches_any,
    unit,
)
from longpoint.values import Value

FIRST_TIER = 16.0
TIER = 17.0
MOST_TIERS = 14
OVERRUN = 4.0
GAP = 3.0
CLEAR = 4.0
"""How much nearer than the first tier a line may come to what it does not measure."""
TICK = 3.2
PAD = 2.0


class Dimension(Value, frozen=True):
    """What to dimension.

    Attributes:
        start, end: the points measured between.
        away: the direction, of length one, in which the line may move off.
        text: what it says.
        tier: the first tier to try.
        feet: where the extension lines begin, when not at start and end.
    """

    start: Point
    end: Point
    away: Point
    text: str
    tier: int = 0
    feet: tuple[Point, Point] | None = None


class _Place(Value, frozen=True):
    start: Point
    end: Point
    center: Point
    degrees: float
    text: Convex
    tail: Point | None


def dimension(canvas: Canvas, what: Dimension, *, size: float = SMALL_SIZE + 1) -> bool:
    """Draw one dimension where it fits.

    Returns:
        Whether it was drawn; past the last tier it is left out, since a table says it too.
    """
    for tier in range(what.tier, what.tier + MOST_TIERS):
        for place in _places(what, FIRST_TIER + tier * TIER, size):
            if _fits(canvas, what, place):
                _draw(canvas, what, place, size)
                return True
    return False


def _places(what: Dimension, off: float, size: float) -> tuple[_Place, ...]:
    start, end = shifted(what.start, what.away, off), shifted(what.end, what.away, off)
    direction = unit(start, end)
    degrees = reading_angle(direction)
    room = width(what.text, size) + 2 * PAD
    span = abs((end[0] - start[0]) * direction[0] + (end[1] - start[1]) * direction[1])
    lift = (ASCENT + DESCENT) / 2 * size + 0.5

    def at(middle: Point, tail: Point | None) -> _Place:
        # Over the line when it lies flat, and always on the side away from what is measured.
        center = shifted(middle, what.away, lift)
        return _Place(start, end, center, degrees, _room(what.text, center, size, degrees), tail)

    if room <= span:
        return (at(along(start, end, 0.5), None),)
    beyond, before = shifted(end, direction, room + PAD), shifted(start, direction, -room - PAD)
    return (at(along(end, beyond, 0.5), beyond), at(along(start, before, 0.5), before))


def _room(text: str, center: Point, size: float, degrees: float) -> Convex:
    return text_box(text, center, size, degrees)


def _fits(canvas: Canvas, what: Dimension, place: _Place) -> bool:
    if not canvas.free(place.text):
        return False
    if any(canvas.crosses_text(a, b) for a, b in (*_strokes(what, place), *_ticks(what, place))):
        return False
    near = convex(
        place.start, place.end, *(shifted(p, what.away, CLEAR - FIRST_TIER) for p in (place.end, place.start))
    )
    if touches_any(near, canvas.solids):
        return False
    line = segment(place.start, place.tail or place.end)
    return not any(_same_line(line, other) for other in canvas.lines)


def _same_line(one: Convex, other: Convex) -> bool:
    """Whether two level or upright lines lie upon one another along more than a point."""
    if one.top == one.bottom and other.top == other.bottom:
        return abs(one.top - other.top) < 1 and one.left < other.right - 1 and other.left < one.right - 1
    if one.left == one.right and other.left == other.right:
        return abs(one.left - other.left) < 1 and one.top < other.bottom - 1 and other.top < one.bottom - 1
    return False


def _strokes(what: Dimension, place: _Place) -> list[tuple[Point, Point]]:
    feet = what.feet or (what.start, what.end)
    strokes = [(place.start, place.end)]
    for foot, top in zip(feet, (place.start, place.end), strict=True):
        up = unit(foot, top)
        strokes.append((shifted(foot, up, GAP), shifted(top, up, OVERRUN)))
    if place.tail is not None:
        near = min((place.start, place.end), key=lambda p: _square(p, place.tail))
        strokes.append((near, place.tail))
    return strokes


def _square(one: Point, other: Point | None) -> float:
    assert other is not None
    return (one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2


def _draw(canvas: Canvas, what: Dimension, place: _Place, size: float) -> None:
    for start, end in _strokes(what, place):
        canvas.line(start, end, "dim")
    for start, end in _ticks(what, place):
        canvas.line(start, end, "tick")
    canvas.text(what.text, place.center, size=size, degrees=place.degrees)


def _ticks(what: Dimension, place: _Place) -> tuple[tuple[Point, Point], ...]:
    """An architect's ticks: a short stroke across each end, leaning into the reading direction."""
    direction = unit(place.start, place.end)
    slant = unit((0, 0), (direction[0] + what.away[0], direction[1] + what.away[1]))
    return tuple(
        (shifted(point, slant, -TICK), shifted(point, slant, TICK)) for point in (place.start, place.end)
    )
