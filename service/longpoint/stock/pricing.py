"""The best pattern for given values of the pieces: by dynamic program or from a list, as the stock allows."""

from collections.abc import Iterator, Sequence
from math import prod

import numpy as np
from numpy.typing import NDArray

from .arrange import in_a_row, row_length
from .columns import PatternColumn, counted, fewer, full
from .half import half_shared
from .knapsack import Knapsack, common_saving
from .pool import Pool, list_patterns, searched_row
from .problem import Counts, Form, Pattern, ScaledCutting

__all__ = ["Pricer", "UnpriceableError"]

FEW_ITEMS = 30  # past which sticks with defects are not listed but filled a clear length at a time
OFTEN = 10  # patterns of a stock that an item is in, of those added at a time
MOST_ORDERS = (
    200  # ways to have laid some of a pattern's pieces, past which their best order is not looked for
)
NEAR = 12  # items looked at for one that is a little shorter
MOST_LISTED = 8_000
MOST_NUMBERS = 6_000_000  # of the lists' tables


class UnpriceableError(Exception):
    """The exact method would take too much memory on this cutting."""


class Pricer:
    """Prices every stock of a problem.

    Args:
        problem: the cutting in units.

    Attributes:
        work: numbers gone through in one pricing, a measure of its cost.
        traced: patterns traced back so far.
        looks: cells looked at to count patterns at the start.
        patterns: listed at the start.

    Raises:
        UnpriceableError: it would take too much memory.
    """

    def __init__(self, problem: ScaledCutting) -> None:
        self._problem = problem
        saving = common_saving(problem)
        self._saving = saving or 0
        self.looks = self.patterns = 0
        self._pools = self._listed(saving)
        # What is not listed: the clear lengths between defects, each filled for itself.
        self._stretches = {
            j: stock.stretches for j, stock in enumerate(problem.stocks) if j not in self._pools
        }
        lengths = sorted({length for lengths in self._stretches.values() for length in lengths})
        self._knapsack = Knapsack(problem, lengths, self._saving) if lengths else None
        if self._knapsack is not None and not self._knapsack.fits:
            raise UnpriceableError
        self._true = self._knapsack is None or self._knapsack.exact
        self._sure = self._knapsack is None or self._knapsack.sure
        self._one_way = all(len(item.forms) == 1 and not item.forms[0].left for item in problem.items)
        self._worths: dict[int, NDArray[np.int64]] = {}
        self.traced = 0
        self.most_pieces = self._most_pieces()
        self.work = sum(pool.table.size for pool in self._pools.values())
        self.work += self._knapsack.work if self._knapsack is not None else 0

    def _listed(self, saving: int | None) -> dict[int, Pool]:
        """All patterns of the stocks with defects, the shortest first, as long as those are few.

        Where shared cuts save several lengths all stocks must be listed, the clear ones as parts of the longest.
        """
        stocks = self._problem.stocks
        lengths = [stock.end - stock.start for stock in stocks]
        knotty = sorted((j for j, stock in enumerate(stocks) if stock.blocked), key=lambda j: (lengths[j], j))
        clear = [j for j, stock in enumerate(stocks) if not stock.blocked] if saving is None else []
        pools: dict[int, Pool] = {}
        if len(self._problem.items) > FEW_ITEMS and not clear:
            return pools
        if not (knotty or clear):
            return pools
        allowed = [item.demand for item in self._problem.items]
        most = min(MOST_LISTED, MOST_NUMBERS // len(allowed))
        # Counted first where it is quick, with every cut shared and no defect, so that no fewer are counted.
        halved = Knapsack(half_shared(self._problem), sorted(set(lengths)), 0)
        if halved.fits:
            halved.price([1] * len(allowed), allowed)
        for j in [*knotty, *sorted(clear, key=lambda j: -lengths[j])[:1]]:
            pool = None
            if halved.fits and most > 0 and halved.near(lengths[j], 1, most) is not None:
                pool = list_patterns(self._problem, stocks[j], allowed, most)
            if pool is None and saving is None:
                raise UnpriceableError
            if pool is None:
                break
            pools[j] = pool
            most -= len(pool.forms)
            self.patterns += len(pool.forms)
        self.looks = halved.looked
        for j in clear:
            pools[j] = pools[max(clear, key=lambda j: (lengths[j], -j))].within(lengths[j])
        return pools

    @property
    def looked(self) -> int:
        """Cells looked at so far to list patterns."""
        return self._knapsack.looked if self._knapsack is not None else 0

    def _most_pieces(self) -> int:
        """More items than any one stick holds."""
        least = min(item.weight + item.cut for item in self._problem.items)
        longest = max(stock.end - stock.start for stock in self._problem.stocks)
        return int(longest / least) + 3 if least > 0 else sum(item.demand for item in self._problem.items)

    def price(self, values: Sequence[int], allowed: Sequence[int]) -> list[int]:
        """No pattern on each stock is worth more, none taking more of an item than allowed."""
        filled = self._knapsack.price(values, allowed) if self._knapsack is not None else {}
        best = {j: sum(filled[length] for length in lengths) for j, lengths in self._stretches.items()}
        for j, pool in self._pools.items():
            self._worths[j] = pool.worth(values, allowed)
            best[j] = int(self._worths[j].max(initial=0))
        return [best[j] for j in range(len(self._problem.stocks))]

    def listed(
        self, wanted: Sequence[int], high: Sequence[int], values: Sequence[int], spare: int, most: int
    ) -> list[PatternColumn] | None:
        """Every pattern a plan may use that costs no more than ``spare`` above the bound.

        Args:
            wanted: how many of each item are still to be cut.
            high: how many sticks of each stock, at most.
            values: what the items are worth in the bound.
            spare: what a pattern may be worth below the best on its stock.
            most: give up and answer None past this many.
        """
        worth = self.price(values, wanted)
        columns: list[PatternColumn] = []
        held: set[Counts] = set()
        for stock in sorted(range(len(worth)), key=lambda j: (self._problem.stocks[j].price, j)):
            if not high[stock]:
                continue
            if stock in self._pools:
                columns += self._pooled(stock, wanted, worth[stock] - spare)
                continue
            near = self._near(stock, worth[stock] - spare, most)
            if near is None:
                return None
            if any(self._too_many_orders(counts) for counts in near):
                return None
            true = [self.lay(stock, counts, search=True) for counts in near if counts not in held]
            laid = [column for column in true if column is not None]
            columns += full(laid)
            if high[stock] >= sum(wanted):
                held.update(column.counts for column in laid)
            if len(columns) > most:
                return None
        return columns

    def _pooled(self, stock: int, wanted: Sequence[int], least: int) -> Iterator[PatternColumn]:
        pool = self._pools[stock]
        fits = (pool.table <= np.array(wanted, dtype=np.int64)).all(axis=1)
        for row in np.nonzero(fits & (self._worths[stock] >= least))[0].tolist():
            yield PatternColumn(stock, pool.counts(row), pool.forms[row])

    def _near(self, stock: int, least: int, most: int) -> list[Counts] | None:
        """Every pattern on that stock worth so much, or None past ``most`` or where it is cut from several lengths."""
        if len(self._stretches[stock]) > 1 or self._knapsack is None:
            return None
        return self._knapsack.near(self._stretches[stock][0], least, most)

    def columns(
        self, stock: int, above: int, most: int, values: Sequence[int], enough: int
    ) -> Iterator[PatternColumn]:
        """Patterns on that stock worth more than ``above`` as last priced, the best first.

        Args:
            stock: index of the stock.
            above: what they must be worth by the values last priced with.
            most: how many.
            values: other values of the items.
            enough: what they must be worth more than by those.
        """
        for column in self._best(stock, above, most, values, enough):
            if sum(count * values[item] for item, count in column.counts) > enough:
                yield column

    def _best(
        self, stock: int, above: int, most: int, values: Sequence[int], enough: int
    ) -> list[PatternColumn]:
        if stock in self._pools:
            pool, worth = self._pools[stock], self._worths[stock]
            rows = np.nonzero(worth > above)[0]
            best = rows[np.argsort(-worth[rows], kind="stable")][:most]
            return [PatternColumn(stock, pool.counts(row), pool.forms[row]) for row in best.tolist()]
        assert self._knapsack is not None
        first, *others = self._stretches[stock] or (0,)
        if others:
            best_of = [self._knapsack.patterns(length, 0, 1, OFTEN) for length in (first, *others)]
            self.traced += len(best_of)
            return [self._filled(stock, [found[0] for found in best_of if found])]
        found = self._knapsack.patterns(first, above, most, OFTEN)
        self.traced += len(found)
        return [
            self._mended(stock, counts)
            for counts in found
            if sum(count * values[item] for item, count in counts) > enough
        ]

    def _filled(self, stock: int, stretches: Sequence[Counts]) -> PatternColumn:
        """A column with those counts between the defects, as far as there are so many pieces and they truly fit."""
        left = {item: self._problem.items[item].demand for counts in stretches for item, _ in counts}
        forms: tuple[Form, ...] = ()
        for counts in stretches:
            there = tuple((item, min(count, left[item])) for item, count in counts if left[item])
            for form in in_a_row(self._problem, there, self._saving) if there else ():
                if self._problem.places(Pattern(stock, (*forms, form))) is not None:
                    forms = *forms, form
                    left[form.item] -= 1
        return PatternColumn(stock, counted(forms), forms)

    def lay(self, stock: int, counts: Counts, search: bool = False) -> PatternColumn | None:
        """A column with those counts on a clear stock, or None where steps that are not exact let too many in.

        Args:
            stock: index of the stock.
            counts: how many of each item.
            search: whether to try every order before it is taken not to fit.
        """
        column = PatternColumn(stock, counts, in_a_row(self._problem, counts, self._saving))
        clear = self._true and not self._problem.stocks[stock].blocked
        if clear or self._problem.places(Pattern(stock, column.forms)) is not None:
            return column
        if self._one_way or not search:
            return None
        row = searched_row(self._problem, self._problem.stocks[stock], counts)
        return None if row is None else PatternColumn(stock, counts, row)

    def _too_many_orders(self, counts: Counts) -> bool:
        """Whether a row that does not fit could fit in another order that is not looked for."""
        return not (self._true or self._one_way) and prod(count + 1 for _, count in counts) > MOST_ORDERS

    def _mended(self, stock: int, counts: Counts) -> PatternColumn:
        """A column with those counts, or without the shortest pieces that truly do not fit."""
        if self._sure and not self._problem.stocks[stock].blocked:
            return PatternColumn(stock, counts, in_a_row(self._problem, counts, self._saving))
        column = self.lay(stock, counts)
        if column is None:
            counts = self._shorter(stock, counts)
            column = self.lay(stock, counts)
        while column is None:
            counts = fewer(counts, counts[-1][0])
            column = self.lay(stock, counts)
        return column

    def _shorter(self, stock: int, counts: Counts) -> Counts:
        """One piece exchanged for one that is as little shorter as lets them all fit, if there is one near."""
        items, one = self._problem.items, self._problem.stocks[stock]
        row = in_a_row(self._problem, counts, self._saving)
        over = row_length(row, self._problem.kerf) - (one.end - one.start)
        held = dict(counts)
        best: tuple[int, int, int] | None = None
        for item, _ in counts:
            length = items[item].forms[0].length
            for other in range(item + 1, min(item + NEAR, len(items))):
                less = length - items[other].forms[0].length
                if less >= over and len(items[other].forms) == len(items[item].forms):
                    if held.get(other, 0) < items[other].demand and (best is None or less < best[0]):
                        best = less, item, other
                    break
        if best is None:
            return counts
        _, item, other = best
        held[item] -= 1
        held[other] = held.get(other, 0) + 1
        return tuple(sorted((one, number) for one, number in held.items() if number))
