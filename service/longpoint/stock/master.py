"""The linear program over the patterns found so far, kept by HiGHS and grown by some patterns at a time.

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
from .columns import Columns
from .effort import Effort
from .pricing import Column, Pricer
from .problem import Problem

__all__ = ["Box", "Master", "Relaxed"]

FINEST = 20  # duals are rounded down to 2**-20 cents, or coarser where that would overflow
BITS = 29  # that the best of a stick should fill at most, so that the table's numbers are short
BACK, AHEAD = 6, 10  # how far prices to try are drawn towards those of the best bound
LEAST = 1  # no item is worth nothing, so that a pattern is never worth less for holding one more
DEAR = 1000  # a piece left out costs this many of the dearest stick
DUAL, PRIMAL = 1, 4  # the simplex method: after bounds have changed, and after columns were added
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
    """The pattern program of one problem.

    Attributes:
        pricer: of its stocks.
        columns: the patterns found so far.
        scale: of bounds and values to a cent.
    """

    def __init__(self, problem: Problem, pricer: Pricer, effort: Effort) -> None:
        self._problem = problem
        self.pricer = pricer
        self._effort = effort
        self._items = len(problem.items)
        self._stocks = len(problem.stocks)
        self.columns = Columns(self._items)
        self._solver = self._fresh()
        most = max(stock.price for stock in problem.stocks) + 1
        count = max(2, sum(item.demand for item in problem.items))
        spare = 60 - (most * DEAR * min(count, pricer.most_pieces)).bit_length()
        self._step = round_up(problem, Fraction(1))
        self._solution = np.zeros(self._items)
        self._settled = False  # the first relaxation swings; later ones start close to their end
        self.scale = 1 << max(0, min(FINEST, spare, BITS - most.bit_length()))
        self._enough = self.scale >> 14
        self._endless = [stock.most is None for stock in problem.stocks]
        self._center = self._by_length()
        self.add(
            [Column(stock, (), ()) for stock in range(self._stocks)]
        )  # so that a box never lacks an answer

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

    def add(self, columns: Sequence[Column]) -> bool:
        """Add the columns that are not there already; whether there were any."""
        new = self.columns.add(columns)
        if not new:
            return False
        starts: list[int] = []
        rows: list[int] = []
        values: list[float] = []
        for column in new:
            starts.append(len(rows))
            rows += [item for item, _ in column.counts]
            values += [float(count) for _, count in column.counts]
            rows += [self._items + column.stock, self._items + self._stocks]
            values += [1.0, 1.0]
        self._solver.addCols(
            len(new),
            np.array([float(self._problem.stocks[column.stock].price) for column in new]),
            np.zeros(len(new)),
            np.full(len(new), highspy.kHighsInf),
            len(rows),
            np.array(starts, dtype=np.int32),
            np.array(rows, dtype=np.int32),
            np.array(values),
        )
        self._effort.columns(len(new), len(rows))
        return True

    def _by_length(self) -> Whole:
        """The prices of the bound from the stuff alone: each piece its share of the stock cheapest by length."""
        spare = self._problem.spare
        rate = min(
            Fraction(one.price * self.scale, one.end - one.start + spare) for one in self._problem.stocks
        )
        worth = [max(LEAST, int((item.weight + item.cut) * rate)) for item in self._problem.items]
        return np.array([*worth, *([0] * (self._stocks + 1))], dtype=np.int64)

    def seed(self, wanted: Sequence[int], box: Box, most: int) -> None:
        """Start with every pattern that a plan at the bound from the stuff alone could use, when they are few."""
        values = self._center[: self._items].tolist()
        bound = self._bound(wanted, box, values, self.pricer.price(values, wanted), 0)
        spare = self._rounded(bound) * self._step * self.scale - bound
        self._effort.pricing(self.pricer.work)
        self.add(self.pricer.listed(wanted, box.high, values, max(0, spare), most) or ())

    def relax(
        self,
        wanted: Sequence[int],
        box: Box,
        cut: int,
        rough: bool = False,
        pricings: int | None = None,
        content: bool = False,
        near: float = 0.0,
    ) -> Relaxed:
        """Solve for those demands within the box, adding columns while they help.

        Args:
            wanted: how many of each item.
            box: how many sticks.
            cut: a bound that is good enough to stop at.
            rough: stop when the bound, rounded up to a sum of prices, can rise no more.
            pricings: stop after so many.
            content: stop as soon as no piece is left out, whatever it costs.
            near: stop when the bound is within that share of the cost.
        """
        self._set(wanted, box)
        best = -1
        at: tuple[tuple[int, ...], tuple[int, ...]] = ((), ())
        priced = 0
        cost = 0.0
        while not self._effort.stopped or not at[0]:
            cost, duals = self._run()
            np.maximum(duals[: self._items], LEAST, out=duals[: self._items])
            grown = False
            for prices in self._tries(duals):
                values, limits = prices[: self._items].tolist(), prices[self._items :].tolist()
                worth = self.pricer.price(values, wanted)
                self._effort.pricing(self.pricer.work)
                priced += 1
                for some, most in self._fair(values, worth):
                    bound = self._bound(wanted, box, some, most, limits[-1])
                    if bound > best or not at[0]:
                        best, at, self._center = bound, (tuple(some), tuple(most)), prices
                grown = self._grow(worth, prices, duals, box)
                if grown or best >= cut:
                    break
            if not grown or best >= cut or priced >= (pricings or 1 << 62):
                break
            if content and self._missing() < EPSILON:
                break
            if near and best >= (1 - near) * cost * self.scale and self._missing() < EPSILON:
                break
            if rough and self._rounded(best) >= self._rounded(cost * self.scale):
                break
        self._settled = True
        sticks = np.zeros(len(self.columns))
        sticks[: len(self._solution) - self._items] = self._solution[self._items :]
        return Relaxed(best, *at, sticks, self._missing(), cost)

    def _run(self) -> tuple[float, Whole]:
        """Solve for the columns there are: the cost, and what each row is worth, rounded down."""
        self._solver.run()
        info = self._solver.getInfo()
        self._effort.simplex(info.simplex_iteration_count, self._items)
        self._solver.setOptionValue("simplex_strategy", PRIMAL)
        solution = self._solver.getSolution()
        self._solution = np.array(solution.col_value)
        duals = np.floor(np.array(solution.row_dual) * self.scale).astype(np.int64)
        return float(info.objective_function_value), duals

    def worth_of_all(self, wanted: Sequence[int], relaxed: Relaxed) -> int:
        """What all pieces are worth together by the values that gave the bound."""
        return sum(value * demand for value, demand in zip(relaxed.values, wanted, strict=True))

    def _missing(self) -> float:
        """Pieces that the linear program leaves out."""
        return float(self._solution[: self._items].sum())

    def _tries(self, duals: Whole) -> Iterator[Whole]:
        """Prices to try: first some way back towards those of the best bound, which swing less, then as they are."""
        if not self._settled:
            yield (self._center * BACK + duals * (AHEAD - BACK)) // AHEAD
        yield duals

    def _fair(
        self, values: Sequence[int], worth: Sequence[int]
    ) -> Iterator[tuple[Sequence[int], Sequence[int]]]:
        """The values as they are and, where a stock without end is worth more than its price, so much lower."""
        yield values, worth
        share = Fraction(1)
        for stock, most in enumerate(worth):
            if self._endless[stock] and most > 0:
                share = min(share, Fraction(self._problem.stocks[stock].price * self.scale, most))
        if share < 1:
            above, below = share.numerator, share.denominator
            yield [value * above // below for value in values], [most * above // below for most in worth]

    def _rounded(self, bound: float) -> int:
        return -(-int(bound - 1e-6 * abs(bound)) // (self._step * self.scale)) if self._step else 0

    def _set(self, wanted: Sequence[int], box: Box) -> None:
        rows = self._items + self._stocks + 1
        low = np.array([*wanted, *box.low], dtype=np.float64)
        high = np.full(rows, highspy.kHighsInf)
        high[self._items :] = box.high
        every = np.arange(rows, dtype=np.int32)
        self._solver.changeRowsBounds(rows, every, low, high)  # type: ignore[attr-defined] # its stubs lack it
        size = len(self.columns)
        which = np.arange(self._items, self._items + size, dtype=np.int32)
        upper = np.where(self.columns.within(wanted), highspy.kHighsInf, 0.0)
        self._solver.changeColsBounds(size, which, np.zeros(size), upper)
        self._solver.setOptionValue("simplex_strategy", DUAL)

    def _grow(self, worth: Sequence[int], prices: Whole, duals: Whole, box: Box) -> bool:
        """Add the best patterns of each stock at those prices, where the duals say that they help."""
        limits = duals[self._items :].tolist()
        values = duals.tolist()
        most = max(8, self._items // 2)
        found: list[Column] = []
        for stock in range(self._stocks):
            enough = (
                self._problem.stocks[stock].price * self.scale - limits[stock] - limits[-1] + self._enough
            )
            if not box.high[stock] or (prices is duals and worth[stock] <= enough):
                continue
            above = enough if prices is duals else enough - (enough >> 5)
            found += (
                column
                for column in self.pricer.columns(stock, above, most)
                if sum(count * values[item] for item, count in column.counts) > enough
            )
        self._effort.tracing(len(found))
        return self.add(found)

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
