"""A four-sided opening as unknowns, and what each reading of it would be.

The bottom left corner is the origin and the bottom runs along x. The unknowns are the bottom right corner's x, the top
right corner, the top left corner, and, where a level or plumb line was read, the angle in radians by which the bottom
rises to the right.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from longpoint.geometry.fit.readings import BUBBLES, Reading, ReadingKind

Unknowns = Sequence[float]
Corners = tuple[tuple[float, float], ...]
Says = tuple[float, list[float]]

# How much each corner's x and y, in the order of the unknowns, adds to the vector that a reading measures along.
_RUNS: Mapping[ReadingKind, tuple[float, float, float]] = {
    # bottom right, top right, top left
    ReadingKind.WIDTH_BOTTOM: (1, 0, 0),
    ReadingKind.WIDTH_MIDDLE: (0.5, 0.5, -0.5),
    ReadingKind.WIDTH_TOP: (0, 1, -1),
    ReadingKind.HEIGHT_LEFT: (0, 0, 1),
    ReadingKind.HEIGHT_MIDDLE: (-0.5, 0.5, 0.5),
    ReadingKind.HEIGHT_RIGHT: (-1, 1, 0),
    ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT: (0, 1, 0),
    ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT: (-1, 0, 1),
    ReadingKind.SILL_LEVEL: (1, 0, 0),
    ReadingKind.HEAD_LEVEL: (0, 1, -1),
    ReadingKind.LEFT_PLUMB: (0, 0, 1),
    ReadingKind.RIGHT_PLUMB: (-1, 1, 0),
}
_LEVELS = frozenset({ReadingKind.SILL_LEVEL, ReadingKind.HEAD_LEVEL})


def says(reading: Reading, at: Unknowns) -> Says:
    """What a reading would be of the shape, and by how much for each of its unknowns."""
    right, top, left = _RUNS[reading.kind]
    x = right * at[0] + top * at[1] + left * at[3]
    y = top * at[2] + left * at[4]
    length = math.hypot(x, y)
    if reading.kind not in BUBBLES:
        return length, _row(right, top, left, x / length, y / length, len(at))
    sin, cos = math.sin(at[5]), math.cos(at[5])
    turned_x, turned_y = x * cos - y * sin, x * sin + y * cos
    level = reading.kind in _LEVELS
    value, by_x, by_y, by_turn = (turned_y, sin, cos, turned_x) if level else (turned_x, cos, -sin, -turned_y)
    if reading.over is not None:
        part = float(reading.over) / length
        along = value / (length * length)
        value, by_turn = value * part, by_turn * part
        by_x, by_y = part * (by_x - along * x), part * (by_y - along * y)
    row = _row(right, top, left, by_x, by_y, 6)
    row[5] = by_turn
    return value, row


def _row(right: float, top: float, left: float, by_x: float, by_y: float, count: int) -> list[float]:
    row = [right * by_x, top * by_x, top * by_y, left * by_x, left * by_y]
    return row if count == 5 else [*row, 0.0]


def corners_of(at: Unknowns) -> Corners:
    """Bottom left, bottom right, top right, top left."""
    return ((0.0, 0.0), (at[0], 0.0), (at[1], at[2]), (at[3], at[4]))


def begin(readings: Sequence[Reading]) -> list[float]:
    """A rectangle to begin from, of the middle of what was read; by the diagonals where a side was not."""
    width = _middle(readings, ReadingKind.WIDTH_BOTTOM, ReadingKind.WIDTH_MIDDLE, ReadingKind.WIDTH_TOP)
    height = _middle(readings, ReadingKind.HEIGHT_LEFT, ReadingKind.HEIGHT_MIDDLE, ReadingKind.HEIGHT_RIGHT)
    diagonal = _middle(
        readings, ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT, ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT
    )
    width = width or (_leg(diagonal, height) if height else diagonal / math.sqrt(2))
    height = height or _leg(diagonal, width)
    turned = [0.0] if any(reading.kind in BUBBLES for reading in readings) else []
    return [width, width, height, 0.0, height, *turned]


def _middle(readings: Sequence[Reading], *kinds: ReadingKind) -> float:
    found = sorted(float(reading.value) for reading in readings if reading.kind in kinds)
    return found[len(found) // 2] if found else 0.0


def _leg(diagonal: float, other: float) -> float:
    return math.sqrt(max(diagonal**2 - other**2, diagonal**2 / 100))
