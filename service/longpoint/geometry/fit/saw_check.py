"""What a saw off its zero does to a chain that closes on paper, and what to try before cutting all of it."""

from __future__ import annotations

import math
from collections import Counter
from itertools import accumulate

from longpoint.geometry.fit.chain import Chain
from longpoint.geometry.fit.closing import Closed
from longpoint.values import Value

OFF_ZERO = 0.05
"""Degrees that a saw set with care may still stand off its zero."""


class SawCheck(Value, frozen=True):
    """How far a saw off its zero opens the whole, and where to look first.

    Attributes:
        along: how far the end of the last piece moves along the line that directions are measured from (of an arch, the
            line of its springings), inches.
        across: the same at right angles to that line.
        opens: both together: how far the whole stands open.
        first_joint: the corner to cut and try first, counted from zero: the first of those whose settings recur most.
        alike: how many corners have its settings.
        dry_fit: how many pieces from the start to lay out dry before the rest is cut: a quarter.
    """

    along: float
    across: float
    opens: float
    first_joint: int
    alike: int
    dry_fit: int


def saw_check(chain: Chain, closed: Closed, off_zero: float = OFF_ZERO) -> SawCheck:
    """What a saw that cuts every miter so many degrees too sharp does, the start and the first piece being held.

    Both cuts of a joint are off alike, so each turn is off by twice as much and the last piece by all of them.
    """
    count = len(closed.lengths)
    order = [(closed.start + number) % count for number in range(count)]
    first = chain.directions[closed.start] + closed.directions_off[closed.start]
    bends = 1 if chain.directions[-1] > chain.directions[0] else -1
    turns = [float(closed.turns[number]) * bends for number in order[:-1]]
    directions = list(accumulate(turns, initial=first))
    along = across = 0.0
    for place, (number, degrees) in enumerate(zip(order, directions, strict=True)):
        length = float(closed.lengths[number])
        meant, cut = math.radians(degrees), math.radians(degrees + bends * 2 * off_zero * place)
        along += length * (math.cos(cut) - math.cos(meant))
        across += length * (math.sin(cut) - math.sin(meant))
    recurring = Counter(tuple(sorted(pair)) for pair in closed.settings)
    often = max(recurring.values())
    joint = next(
        number for number, pair in enumerate(closed.settings) if recurring[tuple(sorted(pair))] == often
    )
    return SawCheck(along, across, math.hypot(along, across), joint, often, math.ceil(count / 4))
