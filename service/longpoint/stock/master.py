"""The linear program over the patterns found so far, kept by HiGHS and grown a pattern at a time.

Rows: each item cut at least as often as asked; sticks of each stock within bounds; all sticks within bounds.
The whole-number bounds that follow from its duals are worked in exact integers, whatever the floats were.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import highspy
import numpy as np
from numpy.typing import NDArray

from .effort import Effort
from .pricing import Column, Pricer
from .problem import Counts, Problem

__all__ = ["Box", "Master", "Relaxed"]

FINEST = 20  # duals are rounded down to 2**-20 cents, or coarser where that would overflow
DEAR = 1000  # a piece left out costs this many of the dearest stick
NO_INDEX = np.array([], dtype=np.int32)
NO_VALUE = np.array([], dtype=np.float64)


@dataclass(frozen=True, slots=True)
class Box:
    """How many sticks may be used: of each stock, and last of all together.

    Attributes:
        low: at least.
        high: at most; never None, since no plan needs more sticks than pieces.
    """

    low: tuple[int, ...]
    high: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Relaxed:
    """What the linear program says within a box.

    Attributes:
        bound: no plan within the box costs less; in cents times ``Master.scale``, exact.
        values: what each item was taken to be worth to reach that bound, in the same unit.
        worth: the most a pattern on each stock is worth then. A plan that uses one worth less by some amount
            costs at least the bound and that amount.
        sticks: how often each column is used, parts of sticks allowed.
        missing: pieces left out because the box has too little stock.
        cost: the linear program's own objective in cents, a float.
    """

    bound: int
    values: tuple[int, ...]
    worth: tuple[int, ...]
    sticks: NDArray[np.float64]
    missing: float
    cost: float


class Master:
    """The pattern program of one problem."""

    def __init__(self, problem: Problem, pricer: Pricer, effort: Effort) -> None:
        self._problem = problem
        self.pricer = pricer
        self._effort = effort
        self._items = len(problem.items)
        self._stocks = len(problem.stocks)
        self.columns: list[Column] = []
        self._known: set[tuple[int, Counts]] = set()
        self._counts = np.zeros((0, self._items), dtype=np.int64)
        self._solver = self._fresh()
        most = max(stock.price for stock in problem.stocks) + 1
        count = max(2, sum(item.demand for item in problem.items))
        spare = 60 - (most * DEAR * min(count, pricer.most_pieces)).bit_length()
        self.scale = 1 << max(0, min(FINEST, spare))
        for stock in range(self._stocks):  # a stick taken and not cut, so that a box never lacks an answer
            self.add(Column(stock, (0,) * self._items, ()))
        self._seconds = 2.5e-4 + 6e-6 * (self._items + self._stocks)

    def _fresh(self) -> highspy.Highs:
        solver = highspy.Highs()  # type: ignore[no-untyped-call]
        solver.silent()
        for option, value in (("threads", 1), ("random_seed", 1), ("presolve", "off")):
            solver.setOptionValue(option, value)
        for wanted in self._problem.items:
            solver.addRow(wanted.demand, highspy.kHighsInf, 0, NO_INDEX, NO_VALUE)
        for _ in range(self._stocks + 1):
            solver.addRow(0, highspy.kHighsInf, 0, NO_INDEX, NO_VALUE)
        dear = float(DEAR * (1 + max(stock.price for stock in self._problem.stocks)))
        for item in range(self._items):
            solver.addCol(dear, 0, highspy.kHighsInf, 1, np.array([item], dtype=np.int32), np.ones(1))
        return solver

    @property
    def counts(self) -> NDArray[np.int64]:
        """Counts of all columns, a row each."""
        if len(self._counts) < len(self.columns):
            more = [column.counts for column in self.columns[len(self._counts) :]]
            self._counts = np.vstack([self._counts, np.array(more, dtype=np.int64)])
        return self._counts

    def add(self, column: Column | None) -> bool:
        """Add a column unless it is there already."""
        if column is None or (column.stock, column.counts) in self._known:
            return False
        rows = [item for item, count in enumerate(column.counts) if count]
        values = [float(column.counts[item]) for item in rows]
        rows += [self._items + column.stock, self._items + self._stocks]
        values += [1.0, 1.0]
        self._solver.addCol(
            self._problem.stocks[column.stock].price,
            0,
            highspy.kHighsInf,
            len(rows),
            np.array(rows, dtype=np.int32),
            np.array(values),
        )
        self._known.add((column.stock, column.counts))
        self.columns.append(column)
        return True

    def relax(self, wanted: Sequence[int], box: Box, cut: int) -> Relaxed:
        """Solve for those demands within the box, adding columns while they help the bound to ``cut``."""
        self._set(wanted, box)
        best = -1
        at: tuple[tuple[int, ...], tuple[int, ...]] = ((), ())
        while True:
            self._solver.run()
            duals = np.array(self._solver.getSolution().row_dual)
            values = np.floor(np.maximum(duals[: self._items], 0.0) * self.scale).astype(np.int64).tolist()
            limits = np.floor(duals[self._items :] * self.scale).astype(np.int64).tolist()
            worth = self.pricer.price(values, wanted)
            self._effort.spend(self._seconds + self.pricer.cost)
            bound = self._bound(wanted, box, values, worth, limits[-1])
            if bound > best or not at[0]:
                best, at = bound, (tuple(values), tuple(worth))
            if best >= cut or not self._grow(worth, limits, box) or self._effort.stopped:
                break
        solution = np.array(self._solver.getSolution().col_value)
        missing = float(solution[: self._items].sum())
        cost = float(self._solver.getInfo().objective_function_value)
        sticks = solution[self._items :]
        unused = np.zeros(len(self.columns) - len(sticks))
        return Relaxed(best, *at, np.append(sticks, unused), missing, cost)

    def _set(self, wanted: Sequence[int], box: Box) -> None:
        for item, demand in enumerate(wanted):
            self._solver.changeRowBounds(item, demand, highspy.kHighsInf)
        for place, (low, high) in enumerate(zip(box.low, box.high, strict=True)):
            self._solver.changeRowBounds(self._items + place, low, high)
        size = len(self.columns)
        if size:
            fits = (self.counts <= np.array(wanted, dtype=np.int64)).all(axis=1)
            which = np.arange(self._items, self._items + size, dtype=np.int32)
            upper = np.where(fits, highspy.kHighsInf, 0.0)
            self._solver.changeColsBounds(size, which, np.zeros(size), upper)

    def _grow(self, worth: Sequence[int], limits: Sequence[int], box: Box) -> bool:
        grown = False
        for stock, value in enumerate(worth):
            price = self._problem.stocks[stock].price * self.scale
            spare = value + limits[stock] + limits[-1] - price
            if spare > self.scale >> 14 and box.high[stock]:
                grown |= self.add(self.pricer.column(stock))
        return grown

    def _bound(
        self, wanted: Sequence[int], box: Box, values: Sequence[int], worth: Sequence[int], all_sticks: int
    ) -> int:
        """Lagrange's bound: each piece paid its value, each stick its price less the best it can hold."""
        bound = sum(value * demand for value, demand in zip(values, wanted, strict=True))
        bound += all_sticks * (box.low[-1] if all_sticks > 0 else box.high[-1])
        for stock, value in enumerate(worth):
            loss = self._problem.stocks[stock].price * self.scale - value - all_sticks
            bound += loss * (box.low[stock] if loss >= 0 else box.high[stock])
        return bound
