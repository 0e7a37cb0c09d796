"""An opening seen from the room, to scale, with every piece, its number and its dimensions."""

from __future__ import annotations

import math
from collections.abc import Callable

from longpoint.geometry.inputs import Foot
from longpoint.geometry.opening import Built
from longpoint.geometry.parts import PartKind
from longpoint.geometry.value import Value
from longpoint.sheets.drawing.canvas import Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.number import number_beside, number_upon
from longpoint.sheets.drawing.shapes import Point, along, convex, shifted, unit
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.place import Placed, placed_parts
from longpoint.sheets.wording import Wording

FLOOR_PAST = 10.0
MOST_SCALE = 9.0
"""Drawing units to the inch past which a small opening is not blown up."""


Paper = Callable[[Point], Point]


class Room(Value, frozen=True):
    """How much room the drawn object may take, before dimensions. Attributes: width, height."""

    width: float = 330.0
    height: float = 330.0


ROOM = Room()


def elevation(built: Built, wording: Wording, styling: Styling = Styling.THEMED, room: Room = ROOM) -> str:
    """The elevation of one opening as SVG text."""
    placed = placed_parts(built)
    jamb = [(float(x), float(y)) for x, y in built.frame.vertices]
    every = [*jamb, *(p for one in placed for p in one.outline)]
    left, right = min(p[0] for p in every), max(p[0] for p in every)
    bottom, top = min(p[1] for p in every), max(p[1] for p in every)
    scale = min(room.width / (right - left), room.height / (top - bottom), MOST_SCALE)
    canvas = Canvas()

    def paper(point: Point) -> Point:
        return (point[0] - left) * scale, (top - point[1]) * scale

    for one in placed:
        outline = tuple(paper(p) for p in one.outline)
        if len(outline) > 2:
            canvas.outline(outline, "piece", title=f"{one.number} {one.part.title}")
    frame = tuple(paper(p) for p in jamb)
    canvas.outline(frame, "jamb", solid=False)
    for start, end in zip(frame, (*frame[1:], frame[0]), strict=True):
        canvas.lines.append(convex(start, end))
    middle = sum(p[0] for p in frame) / len(frame), sum(p[1] for p in frame) / len(frame)
    if built.opening.foot in (Foot.FLOOR, Foot.PLINTH):
        ground = top * scale
        canvas.line((-FLOOR_PAST, ground), ((right - left) * scale + FLOOR_PAST, ground), "heavy")
    shown = [_on_paper(one, paper) for one in placed]
    _readings(canvas, built, frame, wording)
    for what in _dimensions(shown, wording, middle):
        dimension(canvas, what)
    for one in shown:
        _number(canvas, one, middle)
    mark = built.opening.mark
    pieces = "; ".join(
        f"{number} {part.title}, {wording.figure(part.overall)}" for number, part in enumerate(built.parts, 1)
    )
    return canvas.svg(f"Elevation of {mark}", f"Seen from the room, to scale. {pieces}.", styling)


def _on_paper(one: Placed, paper: Paper) -> Placed:
    def edge(points: tuple[Point, Point] | None) -> tuple[Point, Point] | None:
        return None if points is None else (paper(points[0]), paper(points[1]))

    return Placed(
        one.part, one.number, tuple(paper(p) for p in one.outline), edge(one.inner), edge(one.outer)
    )


def _number(canvas: Canvas, one: Placed, middle: Point) -> None:
    corners = len(one.outline)
    centre = sum(p[0] for p in one.outline) / corners, sum(p[1] for p in one.outline) / corners
    if corners > 2 and number_upon(canvas, one.number, centre, _breadth(one)):
        return
    inner = one.inner or (one.outline[0], one.outline[-1])
    outer = one.outer or inner
    inwards = _inwards(one, centre, middle)
    across = along(*outer, 0.5)[0] - along(*inner, 0.5)[0], along(*outer, 0.5)[1] - along(*inner, 0.5)[1]
    half = across[0] / 2, across[1] / 2
    ways = [(inner, inwards, half), (outer, (-inwards[0], -inwards[1]), (-half[0], -half[1]))]
    if one.part.kind in _BELOW:
        ways.reverse()
    number_beside(canvas, one.number, ways)


_BELOW = frozenset({PartKind.APRON, PartKind.APRON_RETURN, PartKind.PLINTH_BLOCK})


def _breadth(one: Placed) -> float:
    """How broad a piece is on paper at its narrower way."""
    assert one.inner is not None
    assert one.outer is not None
    a, b = along(*one.inner, 0.5), along(*one.outer, 0.5)
    direction = unit(*one.inner)
    across = abs((b[0] - a[0]) * -direction[1] + (b[1] - a[1]) * direction[0])
    return min(across, math.dist(*one.inner))


def _inwards(one: Placed, centre: Point, middle: Point) -> Point:
    """The direction across a piece that leads towards the middle of the opening."""
    if one.part.kind is PartKind.APRON_RETURN:
        return (-1.0, 0.0) if centre[0] < middle[0] else (1.0, 0.0)
    direction = unit(*one.inner) if one.inner else (1.0, 0.0)
    across = -direction[1], direction[0]
    towards = (middle[0] - centre[0]) * across[0] + (middle[1] - centre[1]) * across[1]
    return across if towards >= 0 else (-across[0], -across[1])


def _readings(canvas: Canvas, built: Built, frame: tuple[Point, ...], wording: Wording) -> None:
    """What was measured, inside the opening: the base, and the sides' heights where they stand upright."""
    left, right = frame[0], frame[1]
    width = Dimension(left, right, (0.0, -1.0), wording.figure(built.frame.sides[0]), tier=1)
    heights = []
    last = len(frame) - 1
    for start, end, away, side in ((frame[1], frame[2], -1.0, 1), (frame[0], frame[last], 1.0, last)):
        if abs(start[0] - end[0]) < 0.5:
            heights.append(
                Dimension(start, end, (away, 0.0), wording.figure(built.frame.sides[side]), tier=1)
            )
    if len(heights) == 2 and heights[0].text == heights[1].text:
        heights.pop()
    xs, ys = [p[0] for p in frame], [p[1] for p in frame]
    inside = min(max(xs) - min(xs), max(ys) - min(ys))
    if inside < 70:
        return
    for what in (width, *heights):
        dimension(canvas, what)


def _dimensions(shown: list[Placed], wording: Wording, middle: Point) -> list[Dimension]:
    """Each piece's long edge, and its short one where they differ, nearest and shortest first."""
    found: list[tuple[float, Dimension]] = []
    for one in shown:
        if one.outer is None or one.inner is None:
            continue
        part = one.part
        centre = along(along(*one.inner, 0.5), along(*one.outer, 0.5), 0.5)
        inwards = _inwards(one, centre, middle)
        away = -inwards[0], -inwards[1]
        upright = part.kind is PartKind.PLINTH_BLOCK
        if upright:
            continue
        long = Dimension(*one.outer, away, wording.figure(part.long_point))
        found.append((math.dist(*one.outer), long))
        short = wording.figure(part.short_point)
        if short != long.text and part.kind is not PartKind.APRON:
            feet = one.inner
            # From the outer edge's line outwards, so that both dimensions stand clear of the piece.
            off = _square_on(one.outer, feet, away)
            found.append((math.dist(*feet), Dimension(off[0], off[1], away, short, feet=None)))
    found.sort(key=lambda pair: pair[0])
    return [what for _, what in found]


def _square_on(outer: tuple[Point, Point], inner: tuple[Point, Point], away: Point) -> tuple[Point, Point]:
    """The inner edge's ends carried out to the outer edge's line."""
    reach = (outer[0][0] - inner[0][0]) * away[0] + (outer[0][1] - inner[0][1]) * away[1]
    return shifted(inner[0], away, reach), shifted(inner[1], away, reach)
