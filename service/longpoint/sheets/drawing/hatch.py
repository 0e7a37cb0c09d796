"""Hatching: what a section cuts through, and what is left over."""

from __future__ import annotations

import math

from longpoint.sheets.drawing.canvas import Canvas


def hatch(
    canvas: Canvas,
    left: float,
    top: float,
    right: float,
    bottom: float,
    *,
    step: float = 6.0,
    rising: bool = True,
) -> None:
    """Fill an upright box with slanting lines, each clipped to it."""
    height = bottom - top
    reach = (right - left) + height
    strokes = []
    for count in range(1, math.ceil(reach / step)):
        offset = left + count * step
        # The line through (offset, top) running down to the left.
        x1, y1 = offset, top
        x2, y2 = offset - height, bottom
        if x1 > right:
            x1, y1 = right, top + (offset - right)
        if x2 < left:
            x2, y2 = left, top + (offset - left)
        if not rising:
            x1, x2 = left + right - x1, left + right - x2
        strokes.append(((x1, y1), (x2, y2)))
    canvas.strokes(strokes, "hatch")
