"""The one check that four sides and both diagonals give: one line of arithmetic, no adjustment.

In a rectangle the squares of the diagonals make twice bottom x top + left x right; near square that holds to less than
a tape shows.
"""

from __future__ import annotations

import math

from longpoint.geometry.fit.readings import TAPE_SPREAD
from longpoint.lengths import Real
from longpoint.values import Value

ALARM = 2.5758
"""Standard spreads past which a hundredth of all true openings lie."""

ADJUST_PAST = 2.0
"""Inches that a corner may lie from square before the line no longer holds and the readings have to be adjusted."""


class SixCheck(Value, frozen=True):
    """What four sides and both diagonals say of each other.

    Attributes:
        alarm: whether the six readings contradict each other.
        z: by how many standard spreads.
        diagonals_off: how much the two diagonals, one plus the other, are longer than the sides say, inches.
        allowed: how far that may be off in a true opening, inches.
        near_square: whether the line holds: past two inches off square the readings have to be adjusted.
    """

    alarm: bool
    z: float
    diagonals_off: float
    allowed: float
    near_square: bool


def six_check(
    bottom: Real, top: Real, left: Real, right: Real, rising: Real, falling: Real, spread: float = TAPE_SPREAD
) -> SixCheck:
    """Check six readings, each from inside corner to inside corner, inches.

    Args:
        bottom, top: widths.
        left, right: heights.
        rising: the diagonal from bottom left to top right.
        falling: the diagonal from bottom right to top left.
        spread: of each reading, inches, root mean square.
    """
    b, t, l, r = float(bottom), float(top), float(left), float(right)  # noqa: E741
    p, q = float(rising), float(falling)
    excess = p * p + q * q - 2 * (b * t + l * r)
    root = math.sqrt(b * b + t * t + l * l + r * r + p * p + q * q)
    z = excess / (2 * spread * root)
    diagonal = (p + q) / 2
    # A corner off square by s inches over its side changes its diagonal's square by twice side x s.
    lean = abs(p * p - q * q) / (2 * (b + t)) + max(abs(b - t), abs(l - r))
    return SixCheck(
        abs(z) > ALARM, z, excess / (2 * diagonal), ALARM * spread * root / diagonal, lean <= ADJUST_PAST
    )
