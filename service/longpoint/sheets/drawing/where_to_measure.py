"""Two small pictures that say where each reading is taken, by letter."""

from __future__ import annotations

from longpoint.sheets.drawing.canvas import Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.hatch import hatch
from longpoint.sheets.drawing.shapes import Point, along, box
from longpoint.sheets.drawing.style import Styling

WIDE, HIGH = 120.0, 105.0


def opening_key(styling: Styling = Styling.THEMED) -> str:
    """The opening from the room: widths, heights and diagonals between the jamb's inside faces."""
    canvas = Canvas()
    corners: tuple[Point, ...] = ((0, HIGH), (WIDE, HIGH), (WIDE, 0), (0, 0))
    canvas.outline(corners, "jamb", solid=False)
    edge = 6.0
    canvas.outline(((-edge, HIGH), (WIDE + edge, HIGH), (WIDE + edge, HIGH + 4), (-edge, HIGH + 4)), "piece")
    canvas.outline(((-edge, 0), (0, 0), (0, HIGH), (-edge, HIGH)), "piece", solid=False)
    canvas.outline(((WIDE, 0), (WIDE + edge, 0), (WIDE + edge, HIGH), (WIDE, HIGH)), "piece", solid=False)
    canvas.outline(((-edge, -edge), (WIDE + edge, -edge), (WIDE + edge, 0), (-edge, 0)), "piece", solid=False)
    for start, end, name in ((corners[0], corners[2], "X"), (corners[1], corners[3], "Y")):
        canvas.line(start, end, "hidden", keep_clear=False)
        x, y = along(start, end, 0.72)
        canvas.outline(((x - 7, y - 7), (x + 7, y - 7), (x + 7, y + 7), (x - 7, y + 7)), "blank", solid=False)
        canvas.text(name, (x, y))
    canvas.solids.append(box(-edge, -edge, WIDE + edge, HIGH + 4))
    for what in (
        Dimension((0, HIGH + 4), (WIDE, HIGH + 4), (0.0, 1.0), "W"),
        Dimension((0, -edge), (WIDE, -edge), (0.0, -1.0), "T"),
        Dimension((-edge, HIGH), (-edge, 0), (-1.0, 0.0), "L"),
        Dimension((WIDE + edge, HIGH), (WIDE + edge, 0), (1.0, 0.0), "R"),
    ):
        dimension(canvas, what)
    return canvas.svg(
        "Where to measure an opening",
        "Seen from the room: W along the bottom, T along the head, L and R up the sides, X from the bottom left "
        "corner, Y from the bottom right, all between the jamb's inside faces.",
        styling,
    )


def depth_key(styling: Styling = Styling.THEMED) -> str:
    """A section at the sill: the jamb's depth from the wall's face back to the sash stop."""
    canvas = Canvas()
    deep, down = 80.0, 60.0
    hatch(canvas, 0, 0, deep, down, step=7)
    canvas.line((0, -50), (0, down), "heavy")
    canvas.line((0, 0), (deep, 0), "edge")
    canvas.line((deep, -50), (deep, down), "edge")
    canvas.text("sash", (-20, -40), size=9)
    canvas.text("room", (deep + 20, -40), size=9)
    canvas.text("wall", (deep + 20, down / 2), size=9)
    dimension(canvas, Dimension((0, -50), (deep, -50), (0.0, -1.0), "D"))
    return canvas.svg(
        "Where to measure the jamb's depth",
        "Cut through the sill, the room to the right: D from the wall's face back to the sash stop.",
        styling,
    )
