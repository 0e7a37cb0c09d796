"""Weighted least squares of a few readings, in plain floats: what ten readings and six unknowns need.

Readings are weighed by dividing each row and its misfit by the reading's spread, so every sum of squares here is in
standard spreads. The terms are those of the adjustment of survey nets: a redundancy number says which part of a slip
in a reading shows in its own residual (Baarda 1968).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

Row = Sequence[float]
Matrix = list[list[float]]

_LEAST_PIVOT = 1e-11


class Residuals(NamedTuple):
    """What a solution leaves of its readings.

    Attributes:
        redundancies: of each reading, from 0 (nothing checks it) to 1 (it adds nothing).
        standardized: each residual in its own spreads; 0 where nothing checks the reading.
        correlations: between each two residuals, from -1 to 1: two readings whose residuals are fully correlated cannot
            be told apart.
    """

    redundancies: tuple[float, ...]
    standardized: tuple[float, ...]
    correlations: tuple[tuple[float, ...], ...]


def factor(rows: Sequence[Row], count: int) -> Matrix | None:
    """The Cholesky factor of the normal equations of weighted rows; None where they do not determine the unknowns."""
    normal = [[0.0] * count for _ in range(count)]
    for row in rows:
        for i, a in enumerate(row):
            if a:
                line = normal[i]
                for j in range(i + 1):
                    line[j] += a * row[j]
    for j in range(count):
        scale = normal[j][j]
        for i in range(j, count):
            total = normal[i][j]
            for k in range(j):
                total -= normal[i][k] * normal[j][k]
            if i == j:
                if total <= _LEAST_PIVOT * scale or total <= 0:
                    return None
                normal[j][j] = math.sqrt(total)
            else:
                normal[i][j] = total / normal[j][j]
    return normal


def solve(lower: Matrix, right: Sequence[float]) -> list[float]:
    """The solution of the normal equations whose factor is `lower`."""
    count = len(lower)
    found = list(right)
    for i in range(count):
        line = lower[i]
        total = found[i]
        for k in range(i):
            total -= line[k] * found[k]
        found[i] = total / line[i]
    for i in range(count - 1, -1, -1):
        total = found[i]
        for k in range(i + 1, count):
            total -= lower[k][i] * found[k]
        found[i] = total / lower[i][i]
    return found


def gathered(rows: Sequence[Row], misfits: Sequence[float], count: int) -> list[float]:
    """The right side of the normal equations."""
    right = [0.0] * count
    for row, misfit in zip(rows, misfits, strict=True):
        for i, a in enumerate(row):
            if a:
                right[i] += a * misfit
    return right


def inverse(lower: Matrix) -> Matrix:
    """The cofactors of the unknowns: their covariance, the spreads having been divided out."""
    count = len(lower)
    return [solve(lower, [float(i == j) for i in range(count)]) for j in range(count)]


def residuals(rows: Sequence[Row], misfits: Sequence[float], cofactors: Matrix) -> Residuals:
    """What is left of readings whose misfits against the solution, in spreads, are given."""
    spread = [[sum(c * a for c, a in zip(line, row, strict=True) if a) for line in cofactors] for row in rows]
    left = [
        [(i == j) - sum(a * s for a, s in zip(row, spread[j], strict=True) if a) for j in range(len(rows))]
        for i, row in enumerate(rows)
    ]
    redundancies = [left[i][i] if left[i][i] > UNCHECKED else 0.0 for i in range(len(rows))]
    roots = [math.sqrt(each) for each in redundancies]
    return Residuals(
        tuple(redundancies),
        tuple(misfit / root if root else 0.0 for misfit, root in zip(misfits, roots, strict=True)),
        tuple(
            tuple(
                left[i][j] / (roots[i] * roots[j]) if roots[i] and roots[j] else 0.0 for j in range(len(rows))
            )
            for i in range(len(rows))
        ),
    )


UNCHECKED = 1e-6
"""A redundancy under this is none: no other reading says what this one should be."""

_CHI_SQUARE = (
    *(6.6349, 9.2103, 11.3449, 13.2767, 15.0863, 16.8119, 18.4753, 20.0902, 21.6660, 23.2093),
    *(24.7250, 26.2170, 27.6882, 29.1412, 30.5779, 31.9999, 33.4087, 34.8053, 36.1909, 37.5662),
)


def alarm_at(checks: int) -> float:
    """The sum of squares that a hundredth of all true sets of readings with so many checks pass: chi-square at 1 %."""
    if checks <= len(_CHI_SQUARE):
        return _CHI_SQUARE[checks - 1]
    part = 2 / (9 * checks)  # Wilson and Hilferty: within a hundredth of that hundredth
    return checks * (1 - part + 2.3263479 * math.sqrt(part)) ** 3
