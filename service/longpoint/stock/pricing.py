"""The best pattern for given values of the pieces: by dynamic program or from a list, as the stock allows."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Protocol

import numpy as np

from .arrange import in_a_row
from .knapsack import Knapsack, common_run
from .pool import Pool, list_patterns
from .problem import Counts, Form, Problem

__all__ = ["Column", "Pricer", "UnpriceableError"]

MOST_CELLS = 60_000_000  # of the dynamic program's table times the counts tried
MOST_LISTED = 12_000


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


class Worths(Protocol):
    """Values of the items, and the most a pattern on each stock is worth by them."""

    @property
    def values(self) -> tuple[int, ...]: ...

    @property
    def worth(self) -> tuple[int, ...]: ...


class Pricer:
    """Prices every stock of a problem."""

    def __init__(self, problem: Problem) -> None:
        self._problem = problem
        run = common_run(problem)
        clear = [j for j, stock in enumerate(problem.stocks) if not stock.blocked and run is not None]
        self._run = run or 0
        self._knapsack = Knapsack(problem, clear, self._run) if clear else None
        if self._knapsack is not None and self._knapsack.cells > MOST_CELLS:
            raise UnpriceableError
        self._pools: dict[int, Pool] = {}
        self._rows: dict[int, int] = {}
        for j, stock in enumerate(problem.stocks):
            if j not in clear:
                allowed = [item.demand for item in problem.items]
                pool = list_patterns(problem, stock, allowed, MOST_LISTED)
                if pool is None:
                    raise UnpriceableError
                self._pools[j] = pool
        self.most_pieces = self._most_pieces()
        self.cost = 2e-4 * len(self._pools) + (self._knapsack.cost if self._knapsack is not None else 0.0)

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
        return [best[j] for j in range(len(self._problem.stocks))]

    def listed(
        self, wanted: Sequence[int], high: Sequence[int], relaxed: Worths, spare: int, most: int
    ) -> list[Column] | None:
        """Every pattern a plan may use that costs no more than ``spare`` above the bound.

        Args:
            wanted: how many of each item are still to be cut.
            high: how many sticks of each stock, at most.
            relaxed: the values that gave the bound and the best worth on each stock.
            spare: what a pattern may be worth below that, in the same unit.
            most: give up and answer None past this many.
        """
        columns: list[Column] = []
        if self._knapsack is not None and any(high[stock] for stock in self._knapsack.rooms):
            found = self._knapsack.listed(wanted, most * 4)
            if found is None:
                return None
            columns = list(self._useful(found, wanted, high, relaxed, spare))
        for stock, pool in self._pools.items():
            if high[stock]:
                columns += self._pooled(stock, pool, wanted, relaxed, spare)
        return columns if len(columns) <= most else None

    def _useful(
        self,
        found: dict[Counts, int],
        wanted: Sequence[int],
        high: Sequence[int],
        relaxed: Worths,
        spare: int,
    ) -> Iterator[Column]:
        """Patterns on each clear stock to which nothing can be added, and that no cheaper stick holds."""
        assert self._knapsack is not None
        stocks = self._problem.stocks
        by_price = sorted((j for j in self._knapsack.rooms if high[j]), key=lambda j: (stocks[j].price, j))
        counts = np.array(list(found), dtype=np.int64)
        totals = (counts @ np.array(relaxed.values, dtype=np.int64)).tolist()
        for (pattern, room), total in zip(found.items(), totals, strict=True):
            for stock in by_price:
                if room > self._knapsack.rooms[stock]:
                    continue
                if total + spare >= relaxed.worth[stock] and self._full(pattern, stock, found, wanted):
                    column = self.lay(stock, pattern)
                    if column is not None:
                        yield column
                if high[stock] >= sum(wanted):
                    break

    def _full(self, pattern: Counts, stock: int, found: dict[Counts, int], wanted: Sequence[int]) -> bool:
        assert self._knapsack is not None
        room = self._knapsack.rooms[stock]
        for item in range(len(pattern) - 1, -1, -1):
            if pattern[item] < wanted[item]:
                more = (*pattern[:item], pattern[item] + 1, *pattern[item + 1 :])
                if found.get(more, room + 1) <= room:
                    return False
        return True

    def _pooled(
        self, stock: int, pool: Pool, wanted: Sequence[int], relaxed: Worths, spare: int
    ) -> Iterator[Column]:
        fits = (pool.counts <= np.array(wanted, dtype=np.int64)).all(axis=1)
        worth = pool.counts @ np.array(relaxed.values, dtype=np.int64)
        for row in np.nonzero(fits & (worth + spare >= relaxed.worth[stock]))[0].tolist():
            yield Column(stock, tuple(pool.counts[row].tolist()), pool.forms[row])

    def column(self, stock: int) -> Column | None:
        """The pattern that reached the best value on that stock, as last priced; None for an empty one."""
        if stock in self._pools:
            row = self._rows[stock]
            if row < 0:
                return None
            pool = self._pools[stock]
            return Column(stock, tuple(pool.counts[row].tolist()), pool.forms[row])
        assert self._knapsack is not None
        return self.lay(stock, self._knapsack.pattern(stock))

    def lay(self, stock: int, counts: Counts) -> Column | None:
        """A column with those counts on a clear stock."""
        return Column(stock, counts, in_a_row(self._problem, counts, self._run)) if any(counts) else None
