"""The linear program over the patterns found so far, kept by HiGHS and grown a pattern at a time.

Rows: each item cut at least as often as asked; sticks of each stock within bounds; all sticks within bounds.
The whole-number bounds that follow from its duals are worked in exact integers, whatever the floats were.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

import highspy
import numpy as np
from numpy.typing import NDArray

from .bound import round_up
from .effort import Effort
from .pricing import Column, Pricer
from .problem import Counts, Problem

__all__ = ["Box", "Master", "Relaxed"]

FINEST = 20  # duals are rounded down to 2**-20 cents, or coarser where that would overflow
BACK, AHEAD = 6, 10  # how far prices to try are drawn towards those of the best bound
LATE = 0.6  # of the time, after which a relaxation that is to leave some for others stops
LEAST = 1  # no item is worth nothing, so that a pattern is never worth less for holding one more
DEAR = 1000  # a piece left out costs this many of the dearest stick
Whole = NDArray[np.int64]
EPSILON = 1e-6
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
        self._step = round_up(problem, Fraction(1))
        self._settled = False  # the first relaxation swings; later ones start close to their end
        self.scale = 1 << max(0, min(FINEST, spare))
        self.enough = self.scale >> 14
        self._centre = self._by_length()
        for stock in range(self._stocks):  # a stick taken and not cut, so that a box never lacks an answer
            self.add(Column(stock, (0,) * self._items, ()))
        self.seconds = 2.5e-4 + 6e-6 * (self._items + self._stocks) + pricer.cost

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

    def add(self, column: Column) -> bool:
        """Add a column unless it is there already."""
        if (column.stock, column.counts) in self._known:
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

    def _by_length(self) -> Whole:
        """The prices of the bound from the stuff alone: each piece its share of the stock cheapest by length."""
        stocks, kerf = self._problem.stocks, self._problem.kerf
        rate = min(Fraction(one.price * self.scale, one.end - one.start + kerf) for one in stocks)
        worth = [max(LEAST, int((item.weight + kerf) * rate)) for item in self._problem.items]
        return np.array([*worth, *([0] * (self._stocks + 1))], dtype=np.int64)

    def seed(self, wanted: Sequence[int], box: Box, most: int) -> None:
        """Start with every pattern that a plan at the bound from the stuff alone could use, when they are few."""
        values = self._centre[: self._items].tolist()
        bound = self._bound(wanted, box, values, self.pricer.price(values, wanted), 0)
        spare = self._rounded(bound) * self._step * self.scale - bound
        for column in self.pricer.listed(wanted, box.high, values, max(0, spare), most) or ():
            self.add(column)

    def relax(
        self,
        wanted: Sequence[int],
        box: Box,
        cut: int,
        rough: bool = False,
        pricings: int | None = None,
        content: bool = False,
    ) -> Relaxed:
        """Solve for those demands within the box, adding columns while they help.

        Args:
            wanted: how many of each item.
            box: how many sticks.
            cut: a bound that is good enough to stop at.
            rough: stop when the bound, rounded up to a sum of prices, can rise no more.
            pricings: stop after so many.
            content: stop as soon as no piece is left out, whatever it costs.
        """
        self._set(wanted, box)
        best = -1
        at: tuple[tuple[int, ...], tuple[int, ...]] = ((), ())
        cost = 0.0
        priced = 0
        while not self._effort.stopped or not at[0]:
            self._solver.run()
            cost = float(self._solver.getInfo().objective_function_value)
            duals = np.floor(np.array(self._solver.getSolution().row_dual) * self.scale).astype(np.int64)
            np.maximum(duals[: self._items], LEAST, out=duals[: self._items])
            grown = False
            for prices in self._tries(duals):
                values, limits = prices[: self._items].tolist(), prices[self._items :].tolist()
                worth = self.pricer.price(values, wanted)
                self._effort.spend(self.seconds)
                priced += 1
                bound = self._bound(wanted, box, values, worth, limits[-1])
                if bound > best or not at[0]:
                    best, at, self._centre = bound, (tuple(values), tuple(worth)), prices
                grown = self._grow(worth, prices, duals, box)
                if grown or best >= cut:
                    break
            if not grown or best >= cut or priced >= (pricings or 1 << 62):
                break
            if pricings and self._effort.late(LATE):
                break
            if content and self._missing() < EPSILON:
                break
            if rough and self._rounded(best) >= self._rounded(cost * self.scale):
                break
        self._settled = True
        solution = np.array(self._solver.getSolution().col_value)
        missing = self._missing()
        sticks = solution[self._items :]
        unused = np.zeros(len(self.columns) - len(sticks))
        return Relaxed(best, *at, np.append(sticks, unused), missing, cost)

    def worth_of_all(self, wanted: Sequence[int], relaxed: Relaxed) -> int:
        """What all pieces are worth together by the values that gave the bound."""
        return sum(value * demand for value, demand in zip(relaxed.values, wanted, strict=True))

    def _missing(self) -> float:
        """Pieces that the linear program leaves out."""
        return float(sum(self._solver.getSolution().col_value[: self._items]))

    def _tries(self, duals: Whole) -> Iterator[Whole]:
        """Prices to try: first some way back towards those of the best bound, which swing less, then as they are."""
        if not self._settled:
            yield (self._centre * BACK + duals * (AHEAD - BACK)) // AHEAD
        yield duals

    def _rounded(self, bound: float) -> int:
        return -(-int(bound - 1e-6 * abs(bound)) // (self._step * self.scale)) if self._step else 0

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

    def _grow(self, worth: Sequence[int], prices: Whole, duals: Whole, box: Box) -> bool:
        """Add the best patterns of each stock at those prices, where the duals say that they help."""
        grown = False
        limits = duals[self._items :].tolist()
        for stock in range(self._stocks):
            enough = self._problem.stocks[stock].price * self.scale - limits[stock] - limits[-1] + self.enough
            if not box.high[stock] or (prices is duals and worth[stock] <= enough):
                continue
            for column in self.pricer.columns(stock, enough if prices is duals else 0):
                true = sum(count * int(duals[item]) for item, count in enumerate(column.counts) if count)
                if true > enough:
                    grown |= self.add(column)
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
