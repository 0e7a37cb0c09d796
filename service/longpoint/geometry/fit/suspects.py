"""Which reading is off, found by adjusting the others without it."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from longpoint.geometry.fit.adjust import Adjusted
from longpoint.geometry.fit.four_sided import says
from longpoint.geometry.fit.least_squares import Residuals
from longpoint.geometry.fit.readings import Reading, ReadingKind, weight_spread
from longpoint.geometry.fit.six_readings import ALARM
from longpoint.geometry.fit.slips import Slip, nearest_slip
from longpoint.values import Value

_AS_GOOD = 4.0
"""Sums of squares that differ by less do not tell two suspects apart."""

_SAME = 0.98
"""Residuals correlated by more belong to readings that cannot be told apart."""


class SuspectReading(Value, frozen=True):
    """A reading without which the others agree.

    Attributes:
        number: of the reading, in the order given.
        kind: of the reading.
        off: by how much it would be off, the reading less what the others say, inches.
        spread: of that, inches, root mean square.
        slip: the usual slip that comes nearest; None where it is off by less than three eighths of an inch, or where no
            usual slip comes within its spreads.
        alike: the numbers of the other suspects that it cannot be told apart from by these readings.
    """

    number: int
    kind: ReadingKind
    off: float
    spread: float
    slip: Slip | None
    alike: tuple[int, ...]


def predicted(reading: Reading, shape: Adjusted, own: float) -> tuple[float, float]:
    """What a reading that a shape was made without should be, and the spread of the two against each other.

    Args:
        reading: left out of the shape.
        shape: made of the others.
        own: the spread of the reading itself, inches.
    """
    should_be, row = says(reading, shape.unknowns)
    variance = sum(
        a * sum(c * b for c, b in zip(line, row, strict=False))
        for a, line in zip(row, shape.cofactors, strict=False)
    )
    return should_be, math.sqrt(own * own + variance)


def suspects(
    readings: Sequence[Reading], refits: Mapping[int, Adjusted], quality: Residuals | None, tape: float
) -> list[SuspectReading]:
    """The suspects, the likeliest first; none where the others never agree, so that more than one must be off.

    Args:
        readings: all of them.
        refits: the shape made without each reading that the others check.
        quality: of the shape made of all; None where there is none.
        tape: the spread of a reading that names none, inches.
    """
    least = min((refit.sum_of_squares for refit in refits.values()), default=math.inf)
    if not any(refit.sum_of_squares == least and not refit.alarm for refit in refits.values()):
        return []
    named = [number for number, refit in refits.items() if refit.sum_of_squares <= least + _AS_GOOD]
    found = []
    for number in named:
        reading, refit = readings[number], refits[number]
        should_be, spread = predicted(reading, refit, weight_spread(reading, tape))
        near = nearest_slip(reading, should_be)
        usual = near if near and near[1] <= ALARM * spread else None
        alike = (
            other
            for other in named
            if quality and other != number and abs(quality.correlations[number][other]) > _SAME
        )
        off = float(reading.value) - should_be
        suspect = SuspectReading(number, reading.kind, off, spread, usual[0] if usual else None, tuple(alike))
        found.append((usual[1] if usual else math.inf, refit.sum_of_squares, suspect))
    found.sort(key=lambda each: each[:2])
    return [suspect for _, _, suspect in found]
