"""An opening seen from the room, to scale, with every piece, its number and its dimensions."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator

from longpoint.geometry.opening import Built
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import ON_FLOOR
from longpoint.sheets.drawing.canvas import Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.legend import list_pieces
from longpoint.sheets.drawing.number import number_beside, number_upon
from longpoint.sheets.drawing.shapes import Point, along, segment, shifted, unit
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.place import Line, PlacedOutline, placed_pieces
from longpoint.sheets.place_behind import ON_THE_JAMB, RETURNS
from longpoint.sheets.wording import Wording
from longpoint.values import Value

FLOOR_PAST = 10.0
MOST_SCALE = 9.0
"""Drawing units to the inch past which a small opening is not blown up."""
LEAST, THIN = 0.05, 4.0
"""Drawing units: of a difference that shows, and of a piece too narrow for the full weight of line."""

Paper = Callable[[Point], Point]


class Room(Value, frozen=True):
    """How much room the drawn object may take, before dimensions. Attributes: width, height."""

    width: float = 330.0
    height: float = 330.0


ROOM = Room()


def elevation(
    built: Built,
    wording: Wording,
    styling: Styling = Styling.THEMED,
    room: Room = ROOM,
    *,
    legend: bool = True,
) -> str:
    """The elevation of one opening as SVG text.

    Args:
        built: the opening.
        wording: how lengths are written.
        styling: where the look comes from.
        room: how much room the opening may take.
        legend: whether the pieces are listed under it; a page that lists them in a table needs no second list.
    """
    placed = placed_pieces(built)
    jamb = [(float(x), float(y)) for x, y in built.frame.vertices]
    every = [*jamb, *(p for one in placed for p in one.outline)]
    left, right = min(p[0] for p in every), max(p[0] for p in every)
    bottom, top = min(p[1] for p in every), max(p[1] for p in every)
    scale = min(room.width / (right - left), room.height / (top - bottom), MOST_SCALE)
    canvas = Canvas()

    def paper(point: Point) -> Point:
        return (point[0] - left) * scale, (top - point[1]) * scale

    shown = [_on_paper(one, paper) for one in placed]
    frame = tuple(paper(p) for p in jamb)
    _pieces(canvas, shown, frame)
    middle = sum(p[0] for p in frame) / len(frame), sum(p[1] for p in frame) / len(frame)
    if built.opening.bottom in ON_FLOOR:
        ground = top * scale
        canvas.line((-FLOOR_PAST, ground), ((right - left) * scale + FLOOR_PAST, ground), "heavy")
    _readings(canvas, built, frame, wording)
    for group in _dimensions(shown, wording, middle):
        any(dimension(canvas, what) for what in group)
    for one in shown:
        _number(canvas, one, middle)
    if legend:
        list_pieces(canvas, list(built.numbered), wording)
    mark = built.opening.mark
    pieces = "; ".join(
        f"{number} {piece.title}, {wording.figure(piece.overall)}" for number, piece in built.numbered
    )
    return canvas.svg(f"Elevation of {mark}", f"Seen from the room, to scale. {pieces}.", styling)


def _pieces(canvas: Canvas, shown: list[PlacedOutline], frame: tuple[Point, ...]) -> None:
    """What lies behind first, then what covers it, then the covered edges dashed, the marks and the opening."""
    for one in sorted(shown, key=lambda one: one.hidden is None):
        kind = "piece thin" if _breadth(one) < THIN else "piece"
        # What was read inside the opening is dimensioned across a stop, which no text crosses all the same.
        across = one.piece.kind is PieceKind.DOOR_STOP
        canvas.outline(one.outline, kind, solid=not across, title=f"{one.number} {one.piece.title}")
        if across:
            canvas.lines.append(segment(*one.inner))
    for one in shown:
        if one.hidden is not None:
            canvas.line(*one.hidden, "hidden", keep_clear=False)
        for mark in one.marks:
            canvas.line(*mark, "center", keep_clear=False)
    canvas.outline(frame, "jamb", solid=False)
    for start, end in zip(frame, (*frame[1:], frame[0]), strict=True):
        canvas.lines.append(segment(start, end))


def _on_paper(one: PlacedOutline, paper: Paper) -> PlacedOutline:
    def edge(points: Line) -> Line:
        return paper(points[0]), paper(points[1])

    return PlacedOutline(
        one.piece,
        one.number,
        tuple(paper(p) for p in one.outline),
        edge(one.inner),
        edge(one.outer),
        None if one.hidden is None else edge(one.hidden),
        tuple(edge(mark) for mark in one.marks),
    )


def _number(canvas: Canvas, one: PlacedOutline, middle: Point) -> None:
    """Upon the piece, else led from outside it to its middle; to a hidden one's edge, which is all that shows."""
    corners = len(one.outline)
    center = sum(p[0] for p in one.outline) / corners, sum(p[1] for p in one.outline) / corners
    if one.hidden is None and number_upon(canvas, one.number, center, _breadth(one)):
        return
    inner, outer = one.inner, one.outer
    inwards = _inwards(one, center, middle)
    across = along(*outer, 0.5)[0] - along(*inner, 0.5)[0], along(*outer, 0.5)[1] - along(*inner, 0.5)[1]
    share = 0.5 if one.hidden is None or one.piece.kind in RETURNS else 0.15
    inside, back = (across[0] * share, across[1] * share), (across[0] * -0.5, across[1] * -0.5)
    ways = [(inner, inwards, inside), (outer, (-inwards[0], -inwards[1]), back)]
    if one.piece.kind in _FROM_OUTSIDE:
        ways.reverse()
    if one.piece.kind in RETURNS:
        ways.pop()
    number_beside(canvas, one.number, ways)


_FROM_OUTSIDE = frozenset({PieceKind.APRON, PieceKind.PLINTH_BLOCK, PieceKind.TAPERED_SHIM, *RETURNS})
_WITHOUT_DIMENSION = frozenset({PieceKind.PLINTH_BLOCK, PieceKind.TAPERED_SHIM, *ON_THE_JAMB, *RETURNS})
"""Said in the legend and the tables alone: lines for these would crowd out those of the pieces in view."""


def _breadth(one: PlacedOutline) -> float:
    """How broad a piece is on paper at its narrower way."""
    a, b = along(*one.inner, 0.5), along(*one.outer, 0.5)
    direction = unit(*one.inner)
    across = abs((b[0] - a[0]) * -direction[1] + (b[1] - a[1]) * direction[0])
    return min(across, math.dist(*one.inner))


def _inwards(one: PlacedOutline, center: Point, middle: Point) -> Point:
    """The direction across a piece that leads towards the middle of the opening."""
    direction = unit(*one.inner)
    across = -direction[1], direction[0]
    towards = (middle[0] - center[0]) * across[0] + (middle[1] - center[1]) * across[1]
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


def _dimensions(shown: list[PlacedOutline], wording: Wording, middle: Point) -> list[list[Dimension]]:
    """Each piece's long edge, and its short one where they differ, shortest first.

    Of the pieces along a curve or an octagon's head, one of each length stands for all: their dimensions come
    together, from the middle of the head outwards, and the first that finds room is drawn.
    """
    found: list[tuple[bool, float, list[Dimension]]] = []
    alike: dict[tuple[bool, str], list[Dimension]] = {}
    for one in sorted(shown, key=lambda one: abs(one.outer[0][0] + one.outer[1][0] - 2 * middle[0])):
        if one.piece.kind in _WITHOUT_DIMENSION:
            continue
        for is_long, (length, what) in zip((True, False), _of_piece(one, wording, middle), strict=False):
            of_many = one.piece.side.startswith("head ")
            group = alike.setdefault((is_long, what.text), []) if of_many else []
            group.append(what)
            if len(group) == 1:
                found.append((of_many, length, group))
    # Those that can be drawn elsewhere come last.
    found.sort(key=lambda one: one[:2])
    return [group for _, _, group in found]


def _of_piece(one: PlacedOutline, wording: Wording, middle: Point) -> Iterator[tuple[float, Dimension]]:
    """Its long edge's length on paper and dimension, then its short edge's where that shows."""
    piece = one.piece
    center = along(along(*one.inner, 0.5), along(*one.outer, 0.5), 0.5)
    inwards = _inwards(one, center, middle)
    away = -inwards[0], -inwards[1]
    long = Dimension(*one.outer, away, wording.figure(piece.long_point))
    yield math.dist(*one.outer), long
    short = wording.figure(piece.short_point)
    # A board's short point may lie behind its face, where only its own drawing shows it.
    if short != long.text and abs(math.dist(*one.inner) - math.dist(*one.outer)) > LEAST:
        # From the outer edge's line outwards, so that both dimensions stand clear of the piece.
        start, end = _square_on(one.outer, one.inner, away)
        yield math.dist(*one.inner), Dimension(start, end, away, short)


def _square_on(outer: tuple[Point, Point], inner: tuple[Point, Point], away: Point) -> tuple[Point, Point]:
    """The inner edge's ends carried out to the outer edge's line."""
    reach = (outer[0][0] - inner[0][0]) * away[0] + (outer[0][1] - inner[0][1]) * away[1]
    return shifted(inner[0], away, reach), shifted(inner[1], away, reach)
