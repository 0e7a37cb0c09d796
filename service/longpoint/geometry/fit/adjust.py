"""The shape that fits a set of readings best: Gauss-Newton least squares, each reading weighed by its spread."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from longpoint.geometry.fit import least_squares
from longpoint.geometry.fit.four_sided import Corners, begin, corners_of, says
from longpoint.geometry.fit.least_squares import Matrix, Residuals
from longpoint.geometry.fit.readings import TAPE_SPREAD, Reading, weight_spread

_MOST_ROUNDS = 60
_WORSE = 1 + 1e-6
_STILL = 1e-5
"""Inches (radians of the turn): a round that moves no unknown by more leaves an error of its square."""


class Adjusted(NamedTuple):
    """The best shape.

    Attributes:
        readings: those it was made of.
        spreads: each was weighed by, inches.
        unknowns: bottom right x, top right x and y, top left x and y, and with a bubble the turn in radians.
        misfits: each reading less what the shape says, in its spreads.
        rows: what each reading says of each unknown, in its spreads.
        factor: of the normal equations.
        sum_of_squares: of the misfits.
        checks: how many readings there are beyond those that a shape takes.
    """

    readings: tuple[Reading, ...]
    spreads: tuple[float, ...]
    unknowns: tuple[float, ...]
    misfits: tuple[float, ...]
    rows: tuple[tuple[float, ...], ...]
    factor: Matrix
    sum_of_squares: float
    checks: int

    @property
    def corners(self) -> Corners:
        """Bottom left, bottom right, top right, top left: x along the bottom from the bottom left corner, y up."""
        return corners_of(self.unknowns)

    @property
    def turn(self) -> float | None:
        """Degrees by which the bottom rises to the right; None where no level or plumb line was read."""
        return math.degrees(self.unknowns[5]) if len(self.unknowns) > 5 else None

    @property
    def residuals(self) -> tuple[float, ...]:
        """Each reading less what the shape says, inches."""
        return tuple(misfit * spread for misfit, spread in zip(self.misfits, self.spreads, strict=True))

    @property
    def cofactors(self) -> Matrix:
        """The covariance of the unknowns."""
        return least_squares.inverse(self.factor)

    @property
    def quality(self) -> Residuals:
        """How well each reading is checked by the others, and which cannot be told apart."""
        return least_squares.residuals(self.rows, self.misfits, self.cofactors)

    @property
    def alarm(self) -> bool:
        """Whether the readings contradict each other by more than a hundredth of all true sets do."""
        return self.checks > 0 and self.sum_of_squares > least_squares.alarm_at(self.checks)


def adjust(
    readings: Sequence[Reading], tape: float = TAPE_SPREAD, start: Sequence[float] | None = None
) -> Adjusted | None:
    """Fit a four-sided shape to readings; None where they do not determine one, or none can be found.

    Args:
        readings: five or more, each length above zero; with a level or plumb line six or more.
        tape: the spread of a reading that names none, inches, root mean square.
        start: unknowns to begin from, where they are known nearly.
    """
    at = list(begin(readings) if start is None else start)
    count = len(at)
    if len(readings) < count:
        return None
    spreads = [weight_spread(reading, tape) for reading in readings]
    step, before = [0.0] * count, math.inf
    for _ in range(_MOST_ROUNDS):
        rows, misfits = _weighed(readings, spreads, at)
        now = sum(misfit * misfit for misfit in misfits)
        if now > before * _WORSE and max(map(abs, step)) > _STILL:
            step = [each / 2 for each in step]  # too far: a nearly flat shape bends away from its tangent
            at = [value - each for value, each in zip(at, step, strict=True)]
            continue
        before = now
        factor = least_squares.factor(rows, count)
        if factor is None:
            return None
        step = least_squares.solve(factor, least_squares.gathered(rows, misfits, count))
        largest = max(map(abs, step))
        at = [value + each for value, each in zip(at, step, strict=True)]
        if largest < _STILL:
            return _adjusted(readings, spreads, at, rows, misfits, step, factor)
    return None


def _weighed(
    readings: Sequence[Reading], spreads: Sequence[float], at: Sequence[float]
) -> tuple[list[list[float]], list[float]]:
    rows, misfits = [], []
    for reading, spread in zip(readings, spreads, strict=True):
        value, row = says(reading, at)
        misfits.append((float(reading.value) - value) / spread)
        rows.append([each / spread for each in row])
    return rows, misfits


def _adjusted(
    readings: Sequence[Reading],
    spreads: Sequence[float],
    at: Sequence[float],
    rows: Sequence[Sequence[float]],
    misfits: Sequence[float],
    step: Sequence[float],
    factor: Matrix,
) -> Adjusted:
    """The last step being a hair, its rows still hold and take the misfits along."""
    left = tuple(
        misfit - sum(a * each for a, each in zip(row, step, strict=True))
        for row, misfit in zip(rows, misfits, strict=True)
    )
    return Adjusted(
        tuple(readings),
        tuple(spreads),
        tuple(at),
        left,
        tuple(map(tuple, rows)),
        factor,
        sum(misfit * misfit for misfit in left),
        len(readings) - len(at),
    )


def without(
    adjusted: Adjusted, number: int, tape: float, cofactors: Matrix, redundancy: float
) -> Adjusted | None:
    """The best shape of all readings but one, begun where the shape of all of them says it would be."""
    others = adjusted.readings[:number] + adjusted.readings[number + 1 :]
    row, pull = adjusted.rows[number], adjusted.misfits[number] / redundancy
    start = [
        value - pull * sum(c * a for c, a in zip(line, row, strict=True) if a)
        for value, line in zip(adjusted.unknowns, cofactors, strict=True)
    ]
    return adjust(others, tape, start)
