"""One piece as it lies on the saw: face up, its outer edge against the fence, its ends, points and marks."""

from __future__ import annotations

import math
from string import ascii_lowercase

from longpoint.geometry.parts import CutKind, End, Part
from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.hatch import hatch
from longpoint.sheets.drawing.lettering import width as text_width
from longpoint.sheets.drawing.shapes import Point, box
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.place import lying
from longpoint.sheets.wording import Wording, angle

ACROSS, MOST_SCALE = 420.0, 40.0
FENCE, PAST_FENCE = 7.0, 14.0
ROW = 13.0
UPWARD, DOWNWARD, LEFTWARD, RIGHTWARD = (0.0, -1.0), (0.0, 1.0), (-1.0, 0.0), (1.0, 0.0)


def piece_drawing(part: Part, wording: Wording, styling: Styling = Styling.THEMED) -> str:
    """One part as SVG text, to scale."""
    scale = min(ACROSS / float(part.overall), 90.0 / float(part.width), MOST_SCALE)
    canvas = Canvas()
    corners = tuple((x * scale, y * scale) for x, y in lying(part))
    long, wide = float(part.overall) * scale, float(part.width) * scale
    canvas.outline(corners, "piece", solid=False)
    canvas.solids.append(box(0, 0, long, wide))
    hatch(canvas, -PAST_FENCE, -FENCE, long + PAST_FENCE, 0, step=5)
    canvas.line((-PAST_FENCE, 0), (long + PAST_FENCE, 0), "heavy")
    canvas.solids.append(box(-PAST_FENCE, -FENCE, long + PAST_FENCE, 0))
    for side, end in enumerate(part.ends):
        _through(canvas, part, end, side, scale)
    left, right = part.ends
    outer = _edge(part, "outer", scale)
    inner = _edge(part, "inner", scale)
    _over(canvas, part, outer, wording)
    _under(canvas, part, inner, wide, wording)
    _across(canvas, part, corners, wide, wording)
    names = [_mark(canvas, index, float(mark.at) * scale, wide) for index, mark in enumerate(part.marks)]
    lines = [_end_line("left", left), _end_line("right", right)]
    lines += [
        f"{name}  {wording.figure(mark.at)} from the left end: {mark.name}"
        for name, mark in zip(names, part.marks, strict=True)
    ]
    bottom = canvas.bounds[3] + 6
    for row, words in enumerate(lines):
        canvas.words(words, -PAST_FENCE, bottom + (row + 0.7) * ROW, size=SMALL_SIZE + 1)
    return canvas.svg(f"{part.opening} {part.title}, on the saw", _described(part, wording), styling)


def end_words(end: End) -> str:
    """An end's cut in words: `mitre 45°, table right, long point on the outer edge`."""
    words = end.cut.value
    if end.cut is not CutKind.SQUARE:
        if end.mitre:
            swing = f", table {end.swing.value}" if end.swing else ""
            words += f" {angle(end.mitre)}{swing}"
        if end.bevel:
            tilt = f", top of blade {end.tilt.value}" if end.tilt else ""
            words += f"{', blade' if end.mitre else ''} {angle(end.bevel)}{tilt}"
        if end.long_edge:
            words += f", long point on the {_EDGES.get(end.long_edge, end.long_edge)}"
    return f"{words}, notched" if end.notch else words


_EDGES = {"outer": "outer edge", "inner": "inner edge", "face": "face", "back": "back"}


def _end_line(hand: str, end: End) -> str:
    return f"{hand} end{'' if end.at == hand.lower() else f' ({end.at})'}: {end_words(end)}"


def _edge(part: Part, which: str, scale: float) -> tuple[float, float]:
    """Where the outer or the inner edge starts and stops, ignoring notches."""
    spots = []
    for end in part.ends:
        run = float(part.width) * math.tan(math.radians(float(end.mitre)))
        spots.append(0.0 if end.long_edge == which or not end.mitre else run)
    return spots[0] * scale, (float(part.overall) - spots[1]) * scale


def _through(canvas: Canvas, part: Part, end: End, side: int, scale: float) -> None:
    """A bevelled end's far arris, hidden under the face or seen past it."""
    if not end.bevel:
        return
    run = float(part.thickness) * math.tan(math.radians(float(end.bevel))) * scale
    slant = _edge(part, "outer", scale)[side], _edge(part, "inner", scale)[side]
    inwards = 1 if side == 0 else -1
    wide = float(part.width) * scale
    canvas.line((slant[0] + inwards * run, 0), (slant[1] + inwards * run, wide), "hidden", keep_clear=False)


def _mark(canvas: Canvas, index: int, x: float, wide: float) -> str:
    """A layout mark across the piece, lettered under it; the letters step down where they would touch."""
    name = ascii_lowercase[index % 26]
    canvas.line((x, 0), (x, wide), "centre", keep_clear=False)
    drop = wide + 9.0
    room = text_width(name, SMALL_SIZE) / 2 + 1
    while not canvas.free(box(x - room, drop - 6, x + room, drop + 6)):
        drop += 11.0
    if drop > wide + 9.0:
        canvas.line((x, wide), (x, drop - 6), "dim", keep_clear=False)
    canvas.text(name, (x, drop), size=SMALL_SIZE)
    return name


def _over(canvas: Canvas, part: Part, outer: tuple[float, float], wording: Wording) -> None:
    start, end = (outer[0], -FENCE), (outer[1], -FENCE)
    text = wording.figure(part.long_point if any(e.long_edge for e in part.ends) else part.overall)
    dimension(canvas, Dimension(start, end, UPWARD, text))
    for index, one in enumerate(part.ends):
        if one.notch is not None:
            length = float(one.notch.length) * (outer[1] - outer[0]) / float(part.overall)
            spots = (outer[0], outer[0] + length) if index == 0 else (outer[1] - length, outer[1])
            dimension(
                canvas,
                Dimension((spots[0], -FENCE), (spots[1], -FENCE), UPWARD, wording.figure(one.notch.length)),
            )


def _under(canvas: Canvas, part: Part, inner: tuple[float, float], wide: float, wording: Wording) -> None:
    if not any(end.mitre for end in part.ends):
        return
    dimension(
        canvas,
        Dimension((inner[0], wide), (inner[1], wide), DOWNWARD, wording.figure(part.short_point), tier=1),
    )


def _across(canvas: Canvas, part: Part, corners: tuple[Point, ...], wide: float, wording: Wording) -> None:
    """The width at the right end, and each notch's depth at its own."""
    right = max(x for x, _ in corners)
    dimension(canvas, Dimension((right, 0), (right, wide), RIGHTWARD, wording.figure(part.width), tier=1))
    for x, away, end in ((0.0, LEFTWARD, part.ends[0]), (right, RIGHTWARD, part.ends[1])):
        if end.notch is not None:
            depth = float(end.notch.depth) / float(part.width) * wide
            dimension(canvas, Dimension((x, 0), (x, depth), away, wording.figure(end.notch.depth), tier=0))


def _described(part: Part, wording: Wording) -> str:
    left, right = part.ends
    return (
        f"Face up, outer edge against the fence. {wording.figure(part.overall)} overall, "
        f"{wording.figure(part.width)} wide, {wording.figure(part.thickness)} thick. "
        f"{_end_line('Left', left)}. {_end_line('Right', right)}."
    )
