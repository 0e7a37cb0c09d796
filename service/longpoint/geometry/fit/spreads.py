"""How sure each length and joint is, from the spread of the readings and the step of the saw."""

from __future__ import annotations

import math
from collections.abc import Callable

from longpoint.geometry.fit.adjust import Adjusted
from longpoint.geometry.fit.four_sided import Corners, corners_of

STAIN_LIMIT, PAINT_LIMIT = 1 / 64, 1 / 32
"""Inches that a joint may be expected to stand open, for stain and for paint. Common practice."""

_HAIR = 1e-4
_OF_A_STEP = math.sqrt(1 / 12)


def spread_of(shape: Adjusted, measure: Callable[[Corners], float]) -> float:
    """The spread, root mean square, of anything worked out from an opening's corners, in the unit of the measure.

    Args:
        shape: the adjusted opening.
        measure: from the corners bottom left, bottom right, top right, top left (x along the bottom, y up, inches): a
            piece's length, a corner's angle.
    """
    at = list(shape.unknowns)
    gradient = []
    for number in range(5):
        ahead, behind = list(at), list(at)
        ahead[number] += _HAIR
        behind[number] -= _HAIR
        gradient.append((measure(corners_of(ahead)) - measure(corners_of(behind))) / (2 * _HAIR))
    cofactors = shape.cofactors
    variance = sum(
        one * sum(line[number] * other for number, other in enumerate(gradient))
        for one, line in zip(gradient, cofactors, strict=False)
    )
    return math.sqrt(max(variance, 0.0))


def side(number: int) -> Callable[[Corners], float]:
    """The measure of a side: bottom, right, top, left, from corner to corner, inches."""
    return lambda corners: math.dist(corners[number], corners[(number + 1) % 4])


def angle(number: int) -> Callable[[Corners], float]:
    """The measure of an inside corner: bottom left, bottom right, top right, top left, degrees."""

    def measure(corners: Corners) -> float:
        (x, y), after, before = corners[number], corners[(number + 1) % 4], corners[number - 1]
        one = math.atan2(before[1] - y, before[0] - x)
        other = math.atan2(after[1] - y, after[0] - x)
        return math.degrees((one - other) % (2 * math.pi))

    return measure


def expected_opening(face: float, corner_spread: float, saw_step: float) -> float:
    """How far a miter is expected to stand open at one end, inches, root mean square.

    Args:
        face: of the cut, from short point to long point, inches.
        corner_spread: of the corner's angle, degrees, root mean square.
        saw_step: from one setting of the saw to the next, degrees: each of the two cuts is off by up to half of it.
    """
    cuts = 2 * (saw_step * _OF_A_STEP) ** 2
    return face * math.radians(math.sqrt(corner_spread**2 + cuts))
