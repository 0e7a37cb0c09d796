"""What may be read of a four-sided opening, and how sure each reading is."""

from __future__ import annotations

from enum import StrEnum

from longpoint.lengths import Real
from longpoint.values import Value

TAPE_SPREAD = 1 / 32
"""Inches, root mean square, that a tape reading is off when nothing went wrong."""

BUBBLE_SPREAD = 1 / 64
"""Inches, root mean square, of an offset by a level or plumb line over a side of some 4 ft: a level true to half a
millimeter in a meter, its gap read to the nearest 1/32. Common practice."""

STRAIGHT_SPREAD = 1 / 8
"""Inches that a reading across the middle is off at least: it takes both members to be straight."""


class ReadingKind(StrEnum):
    """A reading, all from the jamb's inside faces: from corner to corner, or between the middles of two members."""

    WIDTH_BOTTOM = "width_bottom"
    WIDTH_MIDDLE = "width_middle"
    WIDTH_TOP = "width_top"
    HEIGHT_LEFT = "height_left"
    HEIGHT_MIDDLE = "height_middle"
    HEIGHT_RIGHT = "height_right"
    DIAGONAL_FROM_BOTTOM_LEFT = "diagonal_from_bottom_left"
    DIAGONAL_FROM_BOTTOM_RIGHT = "diagonal_from_bottom_right"
    SILL_LEVEL = "sill_level"
    HEAD_LEVEL = "head_level"
    LEFT_PLUMB = "left_plumb"
    RIGHT_PLUMB = "right_plumb"


MIDDLES = frozenset({ReadingKind.WIDTH_MIDDLE, ReadingKind.HEIGHT_MIDDLE})
BUBBLES = frozenset(
    {ReadingKind.SILL_LEVEL, ReadingKind.HEAD_LEVEL, ReadingKind.LEFT_PLUMB, ReadingKind.RIGHT_PLUMB}
)


class Reading(Value, frozen=True):
    """One reading.

    Attributes:
        kind: what was read.
        value: inches. Of a level: how much higher the right end lies than the left. Of a plumb line: how far the top
            lies to the right of the bottom.
        spread: inches, root mean square; None for the tape's, of a level or plumb line for the bubble's.
        over: of a level or plumb line, the length that the value was read over, inches; None for the whole side.
    """

    kind: ReadingKind
    value: Real
    spread: float | None = None
    over: Real | None = None


def own_spread(reading: Reading, tape: float) -> float:
    """The spread of a reading itself, inches."""
    if reading.spread is not None:
        return reading.spread
    return BUBBLE_SPREAD if reading.kind in BUBBLES else tape


def weight_spread(reading: Reading, tape: float) -> float:
    """The spread that a reading is weighed by: across a middle an eighth at least, since members bow."""
    own = own_spread(reading, tape)
    return max(own, STRAIGHT_SPREAD) if reading.kind in MIDDLES else own
