"""The linear program over the patterns found so far, grown by some patterns at a time.

The whole-number bounds that follow from its duals are worked in exact integers, whatever the floats were.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from longpoint.lengths import Fraction

from .bound import round_up
from .columns import Columns, PatternColumn
from .effort import Effort
from .pricing import Pricer
from .problem import ScaledCutting
from .program import DEAR, Box, Program

__all__ = ["Box", "Master", "Relaxed"]

FINEST = 20  # duals are rounded down to 2**-20 cents, or coarser where that would overflow
BITS = 29  # that the best of a stick should fill at most, so that the table's numbers are short
BACK, AHEAD = 6, 10  # how far prices to try are drawn towards those of the best bound
LEAST = 1  # no item is worth nothing, so that a pattern is never worth less for holding one more
SHARE = 2.0  # of the number of items: patterns added at a time
AT_ONCE = 4  # patterns added at a time for each stick of a stock of which there are few
Whole = NDArray[np.int64]
EPSILON = 1e-6


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


Reached = tuple[
    int, tuple[tuple[int, ...], tuple[int, ...]]
]  # a bound, and the values and worth that give it


class Master:
    """The pattern program of one problem.

    Attributes:
        pricer: of its stocks.
        columns: the patterns found so far.
        scale: of bounds and values to a cent.
    """

    def __init__(self, problem: ScaledCutting, pricer: Pricer, effort: Effort) -> None:
        self._problem = problem
        self.pricer = pricer
        self._effort = effort
        self._items = len(problem.items)
        self._stocks = len(problem.stocks)
        self.columns = Columns(self._items)
        self._program = Program(problem)
        effort.looking(pricer.looks)
        effort.listing(pricer.patterns)
        most = max(stock.price for stock in problem.stocks) + 1
        count = max(2, sum(item.demand for item in problem.items))
        spare = 60 - (most * DEAR * min(count, pricer.most_pieces)).bit_length()
        self._step = round_up(problem, Fraction(1))
        self._solution = np.zeros(self._items)
        self._known: tuple[tuple[int, ...], Box, Reached] | None = None
        self._settled = False  # the first relaxation swings; later ones start close to their end
        self.scale = 1 << max(0, min(FINEST, spare, BITS - most.bit_length()))
        self._enough = self.scale >> 14
        self._endless = [stock.most is None for stock in problem.stocks]
        self._ends = max(1, sum(self._endless))
        self._center = self._by_length()
        self.add(
            [PatternColumn(stock, (), ()) for stock in range(self._stocks)]
        )  # so that a box never lacks an answer

    def add(self, columns: Sequence[PatternColumn]) -> bool:
        """Add the columns that are not there already; whether there were any."""
        new = self.columns.add(columns)
        if new:
            entries = self._program.add(new)
            self._effort.columns(len(new), entries)
        return bool(new)

    def _by_length(self) -> Whole:
        """The prices of the bound from the stuff alone: each piece its share of the stock cheapest by length."""
        spare = self._problem.spare
        rate = min(
            Fraction(one.price * self.scale, one.end - one.start + spare) for one in self._problem.stocks
        )
        worth = [max(LEAST, int((item.weight + item.cut) * rate)) for item in self._problem.items]
        return np.array([*worth, *([0] * (self._stocks + 1))], dtype=np.int64)

    def begin(self, wanted: Sequence[int], box: Box, values: Sequence[float]) -> int:
        """Start from what the items are thought to be worth in cents, or from their lengths: the bound this gives."""
        thought = np.maximum(np.array(values) * self.scale, LEAST).astype(np.int64)
        best = -1
        for worth in (self._center[: self._items].tolist(), thought.tolist()):
            most = self.pricer.price(worth, wanted)
            self._effort.pricing(self.pricer.work)
            for some, limits in self._fair(worth, most):
                bound = self._bound(wanted, box, some, limits, 0)
                if bound > best:
                    best = bound
                    self._center = np.array([*some, *([0] * (self._stocks + 1))], dtype=np.int64)
                    self._known = tuple(wanted), box, (best, (tuple(some), tuple(limits)))
        return best

    def seed(self, wanted: Sequence[int], box: Box, most: int) -> None:
        """Start with every pattern that a plan at the bound from the stuff alone could use, when they are few."""
        values = self._center[: self._items].tolist()
        bound = self._bound(wanted, box, values, self.pricer.price(values, wanted), 0)
        spare = self._rounded(bound) * self._step * self.scale - bound
        self.add(self.listed(wanted, box.high, values, max(0, spare), most) or ())

    def listed(
        self, wanted: Sequence[int], high: Sequence[int], values: Sequence[int], spare: int, most: int
    ) -> list[PatternColumn] | None:
        """Every pattern that a plan may use, as ``Pricer.listed`` gives them."""
        before = self.pricer.looked
        found = self.pricer.listed(wanted, high, values, spare, most)
        self._effort.pricing(self.pricer.work)
        self._effort.looking(self.pricer.looked - before)
        return found

    def nearest(self, wanted: Sequence[int], values: Sequence[int], most: int) -> list[PatternColumn]:
        """The columns that fit what is wanted and lose least against those values."""
        prices = np.array([self._problem.stocks[column.stock].price for column in self.columns])
        loss = prices * float(self.scale) - self.columns.worth(values)
        loss[~self.columns.within(wanted)] = np.inf
        order = np.argsort(loss, kind="stable")[:most]
        return [self.columns[at] for at in order[np.isfinite(loss[order])].tolist()]

    def relax(
        self,
        wanted: Sequence[int],
        box: Box,
        cut: int,
        rough: bool = False,
        pricings: int | None = None,
        content: bool = False,
        near: float = 0.0,
        effort: Effort | None = None,
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
            effort: stop when this is spent, rather than all of it.
        """
        effort = effort or self._effort
        self._program.set(wanted, box, self.columns.within(wanted))
        best, at = self._start(wanted, box)
        if not self._settled:
            self._program.crash()
        priced = 0
        cost = 0.0
        while not effort.stopped or not at[0]:
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
        if at[0] and self._known is not None and self._known[:2] == (tuple(wanted), box):
            self._known = tuple(wanted), box, (best, at)
        sticks = np.zeros(len(self.columns))
        sticks[: len(self._solution) - self._items] = self._solution[self._items :]
        return Relaxed(best, *at, sticks, self._missing(), cost)

    def _start(self, wanted: Sequence[int], box: Box) -> Reached:
        """The best bound known for those demands within the box, and values and worth that give it."""
        if self._known is not None and self._known[:2] == (tuple(wanted), box):
            return self._known[2]
        return -1, ((), ())

    def _run(self) -> tuple[float, Whole]:
        """Solve for the columns there are: the cost, and what each row is worth, rounded down."""
        solved = self._program.run()
        self._effort.simplex(solved.steps, self._items + self._stocks, len(self.columns))
        self._solution = solved.columns
        return solved.cost, np.floor(solved.rows * self.scale).astype(np.int64)

    def keep(self) -> None:
        """Remember where the linear program stands, to go on from there."""
        self._program.keep()

    def back(self) -> None:
        """Go back to where it stood, with the columns found since unused."""
        self._program.back()

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

    def _grow(self, worth: Sequence[int], prices: Whole, duals: Whole, box: Box) -> bool:
        """Add the best patterns of each stock at those prices, where the duals say that they help."""
        limits = duals[self._items :].tolist()
        values = duals.tolist()
        before = self.pricer.traced
        found: list[PatternColumn] = []
        for stock in range(self._stocks):
            enough = (
                self._problem.stocks[stock].price * self.scale - limits[stock] - limits[-1] + self._enough
            )
            if not box.high[stock] or (prices is duals and worth[stock] <= enough):
                continue
            above = enough if prices is duals else enough - (enough >> 8)
            limit = self._problem.stocks[stock].most
            most = max(AT_ONCE, int(self._items * SHARE) // self._ends)
            if limit is not None:
                most = min(most, AT_ONCE * limit)
            found += self.pricer.columns(stock, above, most, values, enough)
        self._effort.tracing(self.pricer.traced - before, self._items)
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
