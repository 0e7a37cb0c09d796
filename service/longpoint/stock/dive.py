"""Whole sticks out of the linear program's parts: fix what is whole, round the rest up one at a time.

The linear program is solved again after each step for what is left to cut, so that a wrong turn shows in its
bound; the last few sticks are chosen all at once.
"""

from random import Random

import numpy as np

from .effort import Effort
from .master import Box, Master, Relaxed
from .pricing import Column
from .problem import Problem
from .remainder import solve_columns

__all__ = ["Chosen", "dive"]

Chosen = list[tuple[Column, int]]

FEW = 9.0  # sticks left at which they are chosen all at once
QUICK = 3.5  # the same for a quick dive
FAIR = 250  # a quick dive is content with this part above what is bound to be spent
MOST_COLUMNS = 2500
NODES = 150


def dive(
    problem: Problem,
    master: Master,
    box: Box,
    ceiling: int,
    goal: int,
    attempt: int,
    effort: Effort,
    quick: bool = False,
) -> Chosen | None:
    """A plan within the box, or None when this attempt finds none.

    Args:
        problem: the job in units.
        master: its linear program.
        box: how many sticks of each stock.
        ceiling: cents it must not cost more than.
        goal: cents at which it is good enough.
        attempt: nought for the plain way; others leave more open and round differently.
        effort: to be counted.
        quick: round nearly to the end, for a fair plan soon.
    """
    random = Random(attempt)
    wanted = [item.demand for item in problem.items]
    high = list(box.high)
    chosen: Chosen = []
    spent = 0
    hold = attempt
    while any(wanted):
        if effort.stopped:
            return None
        left = Box((0,) * len(high), (*high[:-1], min(high[-1], sum(wanted))))
        relaxed = master.relax(wanted, left, (ceiling - spent) * master.scale + 1)
        spare = (ceiling - spent) * master.scale - relaxed.bound
        if relaxed.missing > 1e-6 or spare < 0:
            return None
        if float(relaxed.sticks.sum()) <= (QUICK if quick else FEW + attempt % 4):
            columns = master.pricer.listed(wanted, high, relaxed.values, spare, MOST_COLUMNS)
            if columns is not None:
                fair = -(-relaxed.bound // master.scale) + spent + goal // FAIR if quick else goal
                nodes = 1 if quick else NODES
                rest, _ = solve_columns(
                    problem, columns, wanted, high, ceiling - spent, max(goal, fair) - spent, nodes, effort
                )
                return None if rest is None else chosen + rest
        before = len(chosen)
        for column, times in _pick(master, relaxed, hold, random if attempt else None):
            fits = [wanted[item] // count for item, count in enumerate(column.counts) if count]
            times = min([times, *fits])
            if times <= 0 or not fits:
                continue
            for item, count in enumerate(column.counts):
                wanted[item] -= count * times
            high[column.stock] -= times
            high[-1] -= times
            spent += problem.stocks[column.stock].price * times
            chosen.append((column, times))
        if len(chosen) == before:
            return None
        hold = 0
    return chosen


def _pick(master: Master, relaxed: Relaxed, hold: int, random: Random | None) -> Chosen:
    """Columns to fix: the whole part of each, some held back; when none is, one that nearly is."""
    whole = np.maximum(np.floor(relaxed.sticks + 1e-6) - hold, 0)
    if whole.any():
        return [(master.columns[at], int(whole[at])) for at in np.nonzero(whole)[0].tolist()]
    parts = relaxed.sticks - np.floor(relaxed.sticks + 1e-6)
    order = np.argsort(-np.where(relaxed.sticks >= 1 - 1e-6, 1 + parts, parts), kind="stable")
    near = [at for at in order[:8].tolist() if relaxed.sticks[at] > 0.02] or [int(order[0])]
    at = near[min(int(random.expovariate(1.5)), len(near) - 1)] if random is not None else near[0]
    return [(master.columns[at], 1)]
