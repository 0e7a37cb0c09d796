"""The best pattern for given values of the pieces: by dynamic program or from a list, as the stock allows."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from .arrange import in_a_row
from .half import half_shared
from .knapsack import Knapsack, common_saving
from .pool import Pool, list_patterns
from .problem import Counts, Form, Pattern, Problem

__all__ = ["Column", "Pricer", "UnpriceableError"]

OFTEN = 10  # patterns of a stock that an item is in, of those added at a time
MOST_LISTED = 8_000
MOST_NUMBERS = 6_000_000  # of the lists' tables


class UnpriceableError(Exception):
    """The exact method would take too much memory on this job."""


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

    Attributes:
        work: numbers gone through in one pricing, a measure of its cost.
        exact: whether the worth of a stock is always that of a pattern; it is never less.

    Raises:
        UnpriceableError: it would take too much memory.
    """

    def __init__(self, problem: Problem) -> None:
        self._problem = problem
        saving = common_saving(problem)
        clear = [j for j, stock in enumerate(problem.stocks) if not stock.blocked and saving is not None]
        self._saving = saving or 0
        self._knapsack = Knapsack(problem, clear, self._saving) if clear else None
        if self._knapsack is not None and not self._knapsack.fits:
            raise UnpriceableError
        self.exact = self._knapsack is None or self._knapsack.exact
        self._pools = {j: self._listed([j]) for j, stock in enumerate(problem.stocks) if stock.blocked}
        several = [j for j, stock in enumerate(problem.stocks) if not stock.blocked and saving is None]
        if several:
            pool = self._listed(several)
            rooms = {j: problem.stocks[j].end - problem.stocks[j].start for j in several}
            self._pools |= {j: pool.within(room) for j, room in rooms.items()}
        self._worths: dict[int, NDArray[np.int64]] = {}
        self.most_pieces = self._most_pieces()
        self.work = sum(pool.table.size for pool in self._pools.values())
        self.work += self._knapsack.work if self._knapsack is not None else 0

    def _listed(self, stocks: Sequence[int]) -> Pool:
        """All patterns of the longest of those stocks."""
        longest = max(stocks, key=lambda j: self._problem.stocks[j].end - self._problem.stocks[j].start)
        stock = self._problem.stocks[longest]
        allowed = [item.demand for item in self._problem.items]
        # Counted first where it is quick, with every cut shared and no defect, so that no fewer are counted.
        most = min(MOST_LISTED, MOST_NUMBERS // len(allowed))
        counted = Knapsack(half_shared(self._problem), [longest], 0)
        if not counted.fits:
            raise UnpriceableError
        counted.price([1] * len(allowed), allowed)
        if counted.near(longest, 1, most) is None:
            raise UnpriceableError
        pool = list_patterns(self._problem, stock, allowed, most)
        if pool is None:
            raise UnpriceableError
        return pool

    def _most_pieces(self) -> int:
        """More items than any one stick holds."""
        least = min(item.weight + item.cut for item in self._problem.items)
        longest = max(stock.end - stock.start for stock in self._problem.stocks)
        return int(longest / least) + 3 if least > 0 else sum(item.demand for item in self._problem.items)

    def price(self, values: Sequence[int], allowed: Sequence[int]) -> list[int]:
        """No pattern on each stock is worth more, none taking more of an item than allowed."""
        best = self._knapsack.price(values, allowed) if self._knapsack is not None else {}
        for j, pool in self._pools.items():
            self._worths[j] = pool.worth(values, allowed)
            best[j] = int(self._worths[j].max(initial=0))
        return [best[j] for j in range(len(self._problem.stocks))]

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
                columns += self._pooled(stock, wanted, worth[stock] - spare)
                continue
            assert self._knapsack is not None
            near = self._knapsack.near(stock, worth[stock] - spare, most)
            if near is None:
                return None
            true = [self.lay(stock, counts) for counts in near if counts not in held]
            laid = [column for column in true if column is not None]
            columns += _full(laid)
            if high[stock] >= sum(wanted):
                held.update(column.counts for column in laid)
            if len(columns) > most:
                return None
        return columns

    def _pooled(self, stock: int, wanted: Sequence[int], least: int) -> Iterator[Column]:
        pool = self._pools[stock]
        fits = (pool.table <= np.array(wanted, dtype=np.int64)).all(axis=1)
        for row in np.nonzero(fits & (self._worths[stock] >= least))[0].tolist():
            yield Column(stock, pool.counts(row), pool.forms[row])

    def columns(self, stock: int, above: int, most: int) -> list[Column]:
        """Patterns on that stock worth more than ``above`` as last priced, the best first."""
        if stock in self._pools:
            pool, worth = self._pools[stock], self._worths[stock]
            rows = np.nonzero(worth > above)[0]
            best = rows[np.argsort(-worth[rows], kind="stable")][:most]
            return [Column(stock, pool.counts(row), pool.forms[row]) for row in best.tolist()]
        assert self._knapsack is not None
        return [self._mended(stock, counts) for counts in self._knapsack.patterns(stock, above, most, OFTEN)]

    def _mended(self, stock: int, counts: Counts) -> Column:
        """A column with those counts, or without the shortest pieces that truly do not fit."""
        column = self.lay(stock, counts)
        while column is None:
            counts = _less(counts, counts[-1][0])
            column = self.lay(stock, counts)
        return column

    def lay(self, stock: int, counts: Counts) -> Column | None:
        """A column with those counts on a clear stock, or None where steps that are not exact let too many in."""
        column = Column(stock, counts, in_a_row(self._problem, counts, self._saving))
        if self.exact or self._problem.places(Pattern(stock, column.forms)) is not None:
            return column
        return None


def _full(columns: Sequence[Column]) -> Iterator[Column]:
    """Those to which nothing can be added: what holds more is worth no less, so it is among them too."""
    less = {_less(column.counts, item) for column in columns for item, _ in column.counts}
    return (column for column in columns if column.counts not in less)


def _less(counts: Counts, item: int) -> Counts:
    """One of the item fewer."""
    fewer = ((one, number - (one == item)) for one, number in counts)
    return tuple((one, number) for one, number in fewer if number)
