"""The best pattern for given values of the pieces: by dynamic program or from a list, as the stock allows."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from .arrange import in_a_row
from .half import half_shared
from .knapsack import Knapsack, common_run
from .pool import Pool, list_patterns
from .problem import Counts, Form, Problem

__all__ = ["Column", "Pricer", "UnpriceableError"]

MOST_CELLS = 60_000_000  # of the dynamic program's table times the counts tried
AT_ONCE = 8  # patterns added at a time
MOST_SECONDS = 30.0
PRICINGS = 2.0  # for each item, about, until the linear program is content
SHARE = 0.5  # of the time allowed that those may take
MOST_LISTED = 8_000


class UnpriceableError(Exception):
    """The exact method would take too much memory or time on this job."""


@dataclass(frozen=True, slots=True)
class Column:
    """A pattern as the linear program sees it.

    Attributes:
        stock: index of the stock.
        counts: how many of each item.
        forms: how it is laid out.
    """

    stock: int
    counts: Counts
    forms: tuple[Form, ...]


class Pricer:
    """Prices every stock of a problem.

    Args:
        problem: the job in units.
        seconds: allowed for the whole search.

    Raises:
        UnpriceableError: it would take too much memory or most of that time.
    """

    def __init__(self, problem: Problem, seconds: float = MOST_SECONDS) -> None:
        self._problem = problem
        run = common_run(problem)
        clear = [j for j, stock in enumerate(problem.stocks) if not stock.blocked and run is not None]
        self._run = run or 0
        self._knapsack = Knapsack(problem, clear, self._run) if clear else None
        if self._knapsack is not None:
            pricings = PRICINGS * len(problem.items) * self._knapsack.cost
            if self._knapsack.cells > MOST_CELLS or pricings > SHARE * seconds:
                raise UnpriceableError
        self._pools = {j: self._listed([j]) for j, stock in enumerate(problem.stocks) if stock.blocked}
        several = [j for j, stock in enumerate(problem.stocks) if not stock.blocked and run is None]
        if several:
            pool = self._listed(several)
            rooms = {j: problem.stocks[j].end - problem.stocks[j].start for j in several}
            self._pools |= {j: pool.within(room) for j, room in rooms.items()}
        self._rows: dict[int, int] = {}
        self._worth: list[int] = []
        self.most_pieces = self._most_pieces()
        self.cost = 2e-4 * len(self._pools) + (self._knapsack.cost if self._knapsack is not None else 0.0)

    def _listed(self, stocks: Sequence[int]) -> Pool:
        """All patterns of the longest of those stocks."""
        longest = max(stocks, key=lambda j: self._problem.stocks[j].end - self._problem.stocks[j].start)
        stock = self._problem.stocks[longest]
        allowed = [item.demand for item in self._problem.items]
        # Counted first where it is quick, with every cut shared and no defect, so that no fewer are counted.
        counted = Knapsack(half_shared(self._problem), [longest], 0)
        counted.price([1] * len(allowed), allowed)
        if counted.near(longest, 1, MOST_LISTED) is None:
            raise UnpriceableError
        pool = list_patterns(self._problem, stock, allowed, MOST_LISTED)
        if pool is None:
            raise UnpriceableError
        return pool

    def _most_pieces(self) -> int:
        """More items than any one stick holds."""
        least = min(item.weight for item in self._problem.items) + self._problem.kerf
        longest = max(stock.end - stock.start for stock in self._problem.stocks)
        return int(longest / least) + 3 if least > 0 else sum(item.demand for item in self._problem.items)

    def price(self, values: Sequence[int], allowed: Sequence[int]) -> list[int]:
        """The best value of a pattern on each stock, none taking more of an item than allowed."""
        best = self._knapsack.price(values, allowed) if self._knapsack is not None else {}
        for j, pool in self._pools.items():
            best[j], self._rows[j] = pool.best(values, allowed)
        self._worth = [best[j] for j in range(len(self._problem.stocks))]
        return self._worth

    def listed(
        self, wanted: Sequence[int], high: Sequence[int], values: Sequence[int], spare: int, most: int
    ) -> list[Column] | None:
        """Every pattern a plan may use that costs no more than ``spare`` above the bound.

        Args:
            wanted: how many of each item are still to be cut.
            high: how many sticks of each stock, at most.
            values: what the items are worth in the bound.
            spare: what a pattern may be worth below the best on its stock.
            most: give up and answer None past this many.
        """
        worth = self.price(values, wanted)
        columns: list[Column] = []
        held: set[Counts] = set()
        for stock in sorted(range(len(worth)), key=lambda j: (self._problem.stocks[j].price, j)):
            if not high[stock]:
                continue
            if stock in self._pools:
                columns += self._pooled(stock, wanted, values, worth[stock] - spare)
                continue
            assert self._knapsack is not None
            near = self._knapsack.near(stock, worth[stock] - spare, most)
            if near is None:
                return None
            columns += [self.lay(stock, counts) for counts in _full(near, wanted) if counts not in held]
            if high[stock] >= sum(wanted):
                held.update(near)
        return columns if len(columns) <= most else None

    def _pooled(
        self, stock: int, wanted: Sequence[int], values: Sequence[int], least: int
    ) -> Iterator[Column]:
        pool = self._pools[stock]
        fits = (pool.counts <= np.array(wanted, dtype=np.int64)).all(axis=1)
        worth = pool.counts @ np.array(values, dtype=np.int64)
        for row in np.nonzero(fits & (worth >= least))[0].tolist():
            yield Column(stock, tuple(pool.counts[row].tolist()), pool.forms[row])

    def columns(self, stock: int, above: int) -> list[Column]:
        """Patterns on that stock worth more than ``above`` as last priced, the best first."""
        if stock in self._pools:
            row = self._rows[stock]
            pool = self._pools[stock]
            if row < 0 or self._worth[stock] <= above:
                return []
            return [Column(stock, tuple(pool.counts[row].tolist()), pool.forms[row])]
        assert self._knapsack is not None
        return [self.lay(stock, counts) for counts in self._knapsack.patterns(stock, above, AT_ONCE)]

    def lay(self, stock: int, counts: Counts) -> Column:
        """A column with those counts on a clear stock."""
        return Column(stock, counts, in_a_row(self._problem, counts, self._run))


def _full(near: Sequence[Counts], wanted: Sequence[int]) -> Iterator[Counts]:
    """Those to which nothing can be added: what holds more is worth no less, so it is among them too."""
    known = set(near)
    for counts in near:
        for item, (count, most) in enumerate(zip(counts, wanted, strict=True)):
            if count < most and (*counts[:item], count + 1, *counts[item + 1 :]) in known:
                break
        else:
            yield counts
