"""One piece as it lies on the saw: face up, its outer edge against the fence, its ends, points and marks."""

from __future__ import annotations

import math
from string import ascii_lowercase

from longpoint.geometry.piece import CutKind, Cutout, End, Piece
from longpoint.lengths import Real
from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.hatch import hatch
from longpoint.sheets.drawing.lettering import width as text_width
from longpoint.sheets.drawing.shapes import box
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.lying import INNER_EDGES, lying
from longpoint.sheets.wording import Wording, angle

ACROSS, MOST_SCALE = 420.0, 40.0
FENCE, PAST_FENCE = 7.0, 14.0
ROW = 13.0
UPWARD, DOWNWARD, LEFTWARD, RIGHTWARD = (0.0, -1.0), (0.0, 1.0), (-1.0, 0.0), (1.0, 0.0)


def piece_drawing(opening: str, piece: Piece, wording: Wording, styling: Styling = Styling.THEMED) -> str:
    """One piece as SVG text, to scale."""
    scale = min(ACROSS / float(piece.overall), 90.0 / float(piece.sawn_width), MOST_SCALE)
    canvas = Canvas()
    corners = tuple((x * scale, y * scale) for x, y in lying(piece))
    long, wide = float(piece.overall) * scale, float(piece.sawn_width) * scale
    canvas.outline(corners, "piece", solid=False)
    canvas.solids.append(box(0, 0, long, wide))
    hatch(canvas, -PAST_FENCE, -FENCE, long + PAST_FENCE, 0, step=5)
    canvas.line((-PAST_FENCE, 0), (long + PAST_FENCE, 0), "heavy")
    canvas.solids.append(box(-PAST_FENCE, -FENCE, long + PAST_FENCE, 0))
    for side, end in enumerate(piece.ends):
        _through(canvas, piece, end, side, scale)
    left, right = piece.ends
    _over(canvas, piece, scale, wording)
    _under(canvas, piece, scale, wording)
    _across(canvas, piece, scale, wording)
    names = [_mark(canvas, index, float(mark.at) * scale, wide) for index, mark in enumerate(piece.marks)]
    lines = [_end_line("left", left), _end_line("right", right)]
    lines += [
        f"{name}  {wording.figure(mark.at)} from the left end: {mark.name}"
        for name, mark in zip(names, piece.marks, strict=True)
    ]
    lines += [_cut_out_line(one, wording) for one in piece.cutouts]
    lines += _afterwards(piece, wording)
    bottom = canvas.bounds[3] + 6
    for row, words in enumerate(lines):
        canvas.words(words, -PAST_FENCE, bottom + (row + 0.7) * ROW, size=SMALL_SIZE + 1)
    return canvas.svg(f"{opening} {piece.title}, on the saw", _described(piece, wording), styling)


def end_words(end: End) -> str:
    """An end's cut in words: `miter right 45°, long point on the outer edge`."""
    words = end.cut.value
    if end.cut is not CutKind.SQUARE:
        turns = [
            f"{what} {f'{way.value} ' if way else ''}{angle(degrees)}"
            for what, way, degrees in (
                ("miter", end.miter_direction, end.miter),
                ("bevel", end.bevel_direction, end.bevel),
            )
            if degrees
        ]
        words = ", ".join((["compound"] if end.cut is CutKind.COMPOUND else []) + turns)
        if end.long_edge:
            words += f", long point on the {_EDGES.get(end.long_edge, end.long_edge)}"
    return f"{words}, notched" if end.notch else words


_EDGES = {"outer": "outer edge", "inner": "inner edge", "face": "face", "back": "back"}


def _end_line(hand: str, end: End) -> str:
    return f"{hand} end{'' if end.at == hand.lower() else f' ({end.at})'}: {end_words(end)}"


def _edge(piece: Piece, which: str, scale: float) -> tuple[float, float]:
    """Where the outer or the inner edge starts and stops, ignoring notches."""
    spots = []
    for end in piece.ends:
        run = float(piece.sawn_width) * math.tan(math.radians(float(end.miter)))
        is_long = (end.long_edge in INNER_EDGES) == (which == "inner")
        spots.append(0.0 if is_long or not end.miter else run)
    return spots[0] * scale, (float(piece.overall) - spots[1]) * scale


def _through(canvas: Canvas, piece: Piece, end: End, side: int, scale: float) -> None:
    """A beveled end's far arris, hidden under the face or seen past it."""
    if not end.bevel:
        return
    run = float(piece.thickness) * math.tan(math.radians(float(end.bevel))) * scale
    slant = _edge(piece, "outer", scale)[side], _edge(piece, "inner", scale)[side]
    inwards = 1 if side == 0 else -1
    wide = float(piece.sawn_width) * scale
    canvas.line((slant[0] + inwards * run, 0), (slant[1] + inwards * run, wide), "hidden", keep_clear=False)


def _mark(canvas: Canvas, index: int, x: float, wide: float) -> str:
    """A layout mark across the piece, lettered under it; the letters step down where they would touch."""
    name = ascii_lowercase[index % 26]
    canvas.line((x, 0), (x, wide), "center", keep_clear=False)
    drop = wide + 9.0
    room = text_width(name, SMALL_SIZE) / 2 + 1
    while not canvas.free(box(x - room, drop - 6, x + room, drop + 6)):
        drop += 11.0
    if drop > wide + 9.0:
        canvas.line((x, wide), (x, drop - 6), "dim", keep_clear=False)
    canvas.text(name, (x, drop), size=SMALL_SIZE)
    return name


def _over(canvas: Canvas, piece: Piece, scale: float, wording: Wording) -> None:
    """The whole length; the notches' lengths; the short points where these lie against the fence."""
    long = float(piece.overall) * scale
    for length, spot in zip(_notch_lengths(piece), (0.0, long), strict=True):
        if length is not None:
            other = float(length) * scale if spot == 0.0 else long - float(length) * scale
            start, end = sorted((spot, other))
            _above(canvas, start, end, wording.figure(length))
    if any(end.long_edge in INNER_EDGES and not end.notch for end in piece.ends):
        start, end = (_drawn_in(piece, end) * scale for end in piece.ends)
        _above(canvas, start, long - end, wording.figure(piece.short_point))
    _above(canvas, 0.0, long, wording.figure(piece.overall))


def _above(canvas: Canvas, start: float, end: float, text: str) -> None:
    dimension(canvas, Dimension((start, -FENCE), (end, -FENCE), UPWARD, text))


def _notch_lengths(piece: Piece) -> tuple[Real | None, Real | None]:
    left, right = (end.notch.length if end.notch else None for end in piece.ends)
    return left, right


def _drawn_in(piece: Piece, end: End) -> float:
    """How far a miter draws its end in by where it stops: the back edge, or the notch."""
    wide = float(piece.sawn_width)
    if end.notch is not None:
        wide -= float(end.notch.depth if end.notch.end_depth is None else end.notch.end_depth)
    return wide * math.tan(math.radians(float(end.miter)))


def _under(canvas: Canvas, piece: Piece, scale: float, wording: Wording) -> None:
    """The short points where these lie away from the fence, or at notches, over which their dimension has no room."""
    if not any(end.miter and (end.notch or end.long_edge not in INNER_EDGES) for end in piece.ends):
        return
    wide = float(piece.sawn_width) * scale
    start, end = _edge(piece, "inner", scale)
    if any(one.notch for one in piece.ends):
        start, end = (_drawn_in(piece, one) * scale for one in piece.ends)
        end = float(piece.overall) * scale - end
    dimension(
        canvas, Dimension((start, wide), (end, wide), DOWNWARD, wording.figure(piece.short_point), tier=1)
    )


def _across(canvas: Canvas, piece: Piece, scale: float, wording: Wording) -> None:
    """The width at the right end, at both where it tapers, and each notch's depth at its own."""
    right = float(piece.overall) * scale
    widths = [(right, RIGHTWARD, piece.sawn_width)]
    if piece.taper is not None:
        widths = [(0.0, LEFTWARD, piece.taper[0]), (right, RIGHTWARD, piece.taper[1])]
    for x, away, width in widths:
        if width:
            text = wording.figure(width)
            dimension(canvas, Dimension((x, 0), (x, float(width) * scale), away, text, tier=1))
    for x, away, end in ((0.0, LEFTWARD, piece.ends[0]), (right, RIGHTWARD, piece.ends[1])):
        if end.notch is not None:
            depth = float(end.notch.depth) * scale
            dimension(canvas, Dimension((x, 0), (x, depth), away, wording.figure(end.notch.depth), tier=0))


def _afterwards(piece: Piece, wording: Wording) -> list[str]:
    """What is done to it once its ends are cut."""
    lines = (
        []
        if piece.mitered_width is None
        else [f"afterwards rip its outer edge to {wording.figure(piece.width)}"]
    )
    for end in piece.ends:
        if end.tip is not None:
            along, across = wording.figure(end.tip.along), wording.figure(end.tip.across)
            lines.append(
                f"trim the tip at the {end.at}: {along} along the outer edge, {across} in across the face"
            )
    return lines


def _cut_out_line(one: Cutout, wording: Wording) -> str:
    depth = wording.figure(one.depth)
    if one.end_depth is not None:
        depth += f" to {wording.figure(one.end_depth)}"
    start, end = wording.figure(one.at), wording.figure(one.at + one.length)
    return f"cut out of the outer edge from {start} to {end} from the left end, {depth} deep"


def _described(piece: Piece, wording: Wording) -> str:
    left, right = piece.ends
    return (
        f"Face up, outer edge against the fence. {wording.figure(piece.overall)} overall, "
        f"{wording.figure(piece.sawn_width)} wide, {wording.figure(piece.thickness)} thick. "
        f"{_end_line('Left', left)}. {_end_line('Right', right)}."
    )
