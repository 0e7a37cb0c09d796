"""Whole sticks out of the linear program's parts: fix what is whole, round the rest up one at a time.

The linear program is solved again after each step for what is left to cut, so that a wrong turn shows in its
bound; the last few sticks are chosen all at once.
"""

from collections.abc import Iterable
from dataclasses import replace
from random import Random

import numpy as np

from .columns import PatternColumn, counted
from .effort import Effort
from .firstfit import first_fit
from .master import Box, Master, Relaxed
from .problem import ScaledCutting
from .remainder import solve_columns

__all__ = ["Chosen", "dive", "plunge"]

Chosen = list[tuple[PatternColumn, int]]

FEW = 9.0  # sticks left at which they are chosen all at once
MOST_COLUMNS = 1000
NODES, FEW_NODES = 60, 5
PRICINGS = 2  # at each step of a plunge
SHARES = (0.12, 0.07, 0.2, 0.15)  # of the sticks left, fixed at each step of a plunge
LAST = 10.0  # sticks left at which a plunge chooses them all at once
MOST_NEAR = 400
LEAST_PART = 0.3  # of a stick, to be taken as a whole one where there are others


def dive(
    problem: ScaledCutting, master: Master, box: Box, ceiling: int, goal: int, attempt: int, effort: Effort
) -> Chosen | None:
    """A plan within the box, or None when this attempt finds none.

    Args:
        problem: the cutting in units.
        master: its linear program.
        box: how many sticks of each stock.
        ceiling: cents it must not cost more than.
        goal: cents at which it is good enough.
        attempt: zero for the plain way; others leave more open and round differently.
        effort: to be counted.
    """
    course = _Course(problem, box)
    random = Random(attempt) if attempt else None
    hold = attempt
    while any(course.wanted):
        room = ceiling - course.spent
        relaxed = master.relax(course.wanted, course.box, room * master.scale + 1)
        spare = room * master.scale - relaxed.bound
        if relaxed.missing > 1e-6 or spare < 0 or effort.stopped:
            return None
        if float(relaxed.sticks.sum()) <= FEW + attempt % 4:
            high = course.high
            columns = master.listed(course.wanted, high, relaxed.values, spare, MOST_COLUMNS)
            if columns is not None:
                left = goal - course.spent
                rest, _ = solve_columns(problem, columns, course.wanted, high, room, left, NODES, effort)
                return None if rest is None else course.chosen + rest
        if not course.fix(_whole(master, relaxed, hold) or _nearest(master, relaxed, random)):
            return None
        hold = 0
    return course.chosen


def plunge(
    problem: ScaledCutting,
    master: Master,
    box: Box,
    ceiling: int,
    attempt: int,
    effort: Effort,
    gap: float | None,
) -> Chosen | None:
    """A good plan soon: a share of the sticks fixed at a time, little pricing, the last few chosen all at once.

    Args:
        problem: the cutting in units.
        master: its linear program.
        box: how many sticks of each stock.
        ceiling: cents it must not cost more than, to be worth the last step.
        attempt: zero for the plain way; others fix other shares and round differently.
        effort: to be counted.
        gap: share of the last sticks' cost within which they are chosen well enough; None to choose them as the others.
    """
    course = _Course(problem, box)
    random = Random(attempt) if attempt else None
    while any(course.wanted):
        relaxed = master.relax(course.wanted, course.box, 1 << 62, pricings=PRICINGS)
        if relaxed.missing > 1e-6 or effort.stopped:
            return course.finished()
        left = float(relaxed.sticks.sum())
        if left <= LAST and gap is not None:
            columns = master.nearest(course.wanted, relaxed.values, MOST_NEAR)
            room = ceiling - course.spent
            nodes = FEW_NODES if gap else NODES
            rest, _ = solve_columns(problem, columns, course.wanted, course.high, room, 0, nodes, effort, gap)
            if rest is not None:
                return course.chosen + rest
            return course.finished()
        share = SHARES[attempt % len(SHARES)] * left
        if not course.fix(_share(master, relaxed, max(1.0, share), random)):
            return course.finished()
    return course.chosen


class _Course:
    """What is fixed so far and what is left.

    Attributes:
        wanted: how many of each item are still to be cut.
        high: how many sticks of each stock may still be taken, and of all.
        chosen: the columns fixed, and how often.
        spent: their cents.
    """

    def __init__(self, problem: ScaledCutting, box: Box) -> None:
        self._problem = problem
        self.wanted = [item.demand for item in problem.items]
        self.high = list(box.high)
        self.chosen: Chosen = []
        self.spent = 0

    @property
    def box(self) -> Box:
        """How many sticks may still be taken."""
        return Box((0,) * len(self.high), (*self.high[:-1], min(self.high[-1], sum(self.wanted))))

    def fix(self, columns: Iterable[tuple[PatternColumn, int]]) -> bool:
        """Take those columns as far as they still fit; whether any did."""
        before = len(self.chosen)
        for column, times in columns:
            fits = [self.wanted[item] // number for item, number in column.counts]
            times = min([times, *fits])
            if times <= 0 or not fits:
                continue
            for item, number in column.counts:
                self.wanted[item] -= number * times
            self.high[column.stock] -= times
            self.high[-1] -= times
            self.spent += self._problem.stocks[column.stock].price * times
            self.chosen.append((column, times))
        return len(self.chosen) > before

    def finished(self) -> Chosen | None:
        """What is fixed, and the rest first-fit."""
        stocks = [
            replace(stock, most=None if stock.most is None else most)
            for stock, most in zip(self._problem.stocks, self.high, strict=False)
        ]
        items = [
            replace(item, demand=left) for item, left in zip(self._problem.items, self.wanted, strict=True)
        ]
        cuts, _ = first_fit(replace(self._problem, items=tuple(items), stocks=tuple(stocks)))
        if cuts is None:
            return None
        for pattern, times in cuts:
            self.chosen.append((PatternColumn(pattern.stock, counted(pattern.forms), pattern.forms), times))
        return self.chosen


def _whole(master: Master, relaxed: Relaxed, hold: int) -> Chosen:
    """The whole part of each column, some held back."""
    whole = np.maximum(np.floor(relaxed.sticks + 1e-6) - hold, 0)
    return [(master.columns[at], int(whole[at])) for at in np.nonzero(whole)[0].tolist()]


def _nearest(master: Master, relaxed: Relaxed, random: Random | None) -> Chosen:
    """One column that is nearly whole, or with chance one less so."""
    parts = relaxed.sticks - np.floor(relaxed.sticks + 1e-6)
    order = np.argsort(-np.where(relaxed.sticks >= 1 - 1e-6, 1 + parts, parts), kind="stable")
    near = [at for at in order[:8].tolist() if relaxed.sticks[at] > 0.02] or [int(order[0])]
    at = near[min(int(random.expovariate(1.5)), len(near) - 1)] if random is not None else near[0]
    return [(master.columns[at], 1)]


def _share(master: Master, relaxed: Relaxed, most: float, random: Random | None) -> Chosen:
    """Whole parts, and as long as those are fewer than so many the columns nearest to a whole stick."""
    whole = np.floor(relaxed.sticks + 1e-6)
    parts = relaxed.sticks - whole
    if random is not None:
        parts *= np.array([random.uniform(0.7, 1.0) for _ in range(len(parts))])
    chosen = {at: int(whole[at]) for at in np.nonzero(whole)[0].tolist()}
    fixed = float(whole.sum())
    for at in np.argsort(-parts, kind="stable").tolist():
        if fixed >= most or (parts[at] < LEAST_PART and chosen):
            break
        chosen[at] = chosen.get(at, 0) + 1
        fixed += 1
    return [(master.columns[at], times) for at, times in chosen.items()]
