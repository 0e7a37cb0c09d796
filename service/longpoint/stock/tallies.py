"""Numbers of sticks: every way to spend so many cents on the stocks that could still give all pieces.

Any values of the pieces make a cut: the sticks taken must together hold at least what all pieces are worth. The
duals of the linear program make cuts that rule out most tallies at once, in exact whole numbers.
"""

from collections.abc import Sequence
from math import ceil, floor

import numpy as np
from numpy.typing import NDArray

from longpoint.lengths import Fraction

from .effort import Effort
from .problem import ScaledCutting

__all__ = ["Tallies"]

MOST = 150_000  # tallies held at once
MOST_NUMBERS = 3_000_000  # in them
ROOM = 61  # bits of a whole number that sums may fill

Whole = NDArray[np.int64]


class Tallies:
    """Tallies of sticks, cheapest and then fewest first.

    Sticks that cost nothing are left out: each tally has all of them, as far as they go.

    Args:
        problem: the cutting in units.
        high: how many sticks of each stock, at most.
        effort: to be counted.
    """

    def __init__(self, problem: ScaledCutting, high: Sequence[int], effort: Effort) -> None:
        self._effort = effort
        self._free = [
            stock for stock, one in enumerate(problem.stocks) if not one.price and one.most is not None
        ]
        self._most = min(MOST, MOST_NUMBERS // len(high))
        self._prices = [stock.price for stock in problem.stocks]
        self._high = list(high)
        self._endless = [stock.most is None for stock in problem.stocks]
        self._cuts: list[tuple[Whole, int]] = []
        self._rows: Whole = np.zeros((0, len(high)), dtype=np.int64)
        self._costs: Whole = np.zeros(0, dtype=np.int64)

    def spend(self, least: int, most: int, values: int, worth: Sequence[int], scale: int) -> bool:
        """Hold the tallies that cost at least ``least`` and less than ``most`` cents.

        Args:
            least: cents.
            most: cents.
            values: what all pieces are worth together, in cents times ``scale``.
            worth: the most one stick of each stock holds, in the same unit.
            scale: of both.

        Returns:
            False when there are too many to hold.
        """
        # What a tally may lose on sticks worth less than their price. A stock that never runs out must not be worth
        # more than its price, so all is taken down in proportion; one that does may be, as often as it is there.
        share = min([Fraction(1), *(self._fair(stock, one, scale) for stock, one in enumerate(worth))])
        losses = [price * scale - ceil(share * one) for price, one in zip(self._prices, worth, strict=True)]
        tops = [self._top(stock, most) for stock in range(len(losses))]
        spare = (most - 1) * scale - floor(share * values)
        spare += sum(-loss * top for loss, top in zip(losses, tops, strict=True) if loss < 0)
        tops = [
            min(top, max(0, spare) // loss) if loss > 0 else top
            for loss, top in zip(losses, tops, strict=True)
        ]
        paid = [stock for stock in range(len(losses)) if stock not in self._free]
        if not paid:
            return False
        *order, last = sorted(paid, key=lambda stock: (self._prices[stock] > 0, tops[stock]))
        cost = np.zeros(1, dtype=np.int64)
        lost = np.zeros(1, dtype=np.float64)
        kept: dict[int, Whole] = {}
        slack = abs(spare) * 1e-9 + 1.0  # the loss is only summed to leave tallies out early, so floats do
        for stock in order:
            size, number = len(cost), tops[stock] + 1
            if size * number > 4 * self._most:
                return False
            self._effort.tallies(size * number * (len(kept) + 6))
            taken = np.repeat(np.arange(number, dtype=np.int64), size)
            cost = np.tile(cost, number) + taken * self._prices[stock]
            lost = np.tile(lost, number) + taken.astype(np.float64) * float(max(0, losses[stock]))
            keep = (cost < most) & (lost <= spare + slack)
            kept = {one: np.tile(row, number)[keep] for one, row in kept.items()}
            kept[stock] = taken[keep]
            cost, lost = cost[keep], lost[keep]
        rows, costs = self._with_last(kept, cost, last, tops[last], (least, most))
        self._effort.tallies(max(1, len(costs)) * 4 * len(losses))
        if len(costs) > self._most:
            return False
        first = np.lexsort((*rows.T, rows.sum(axis=1), costs))
        self._rows, self._costs = rows[first], costs[first]
        for worths, wanted in self._cuts:
            self._filter(worths, wanted)
        return True

    def _fair(self, stock: int, worth: int, scale: int) -> Fraction:
        """The share of its worth at which a stock that never runs out is worth its price at most."""
        if worth <= 0 or not self._endless[stock]:
            return Fraction(1)
        return Fraction(self._prices[stock] * scale, worth)

    def _top(self, stock: int, most: int) -> int:
        """No more than this many of a stock cost less than ``most``."""
        price = self._prices[stock]
        return min(self._high[stock], (most - 1) // price) if price else self._high[stock]

    def _with_last(
        self, kept: dict[int, Whole], cost: Whole, last: int, top: int, span: tuple[int, int]
    ) -> tuple[Whole, Whole]:
        """The tallies with as many of the last stock as bring their cost into the span."""
        price = self._prices[last]
        if price:
            low = np.maximum(0, -((cost - span[0]) // price))
            high = np.minimum(top, (span[1] - 1 - cost) // price)
        else:
            low, high = np.zeros_like(cost), np.where(cost >= span[0], top, -1)
        number = np.maximum(0, high - low + 1)
        total = int(number.sum())
        if total > self._most:
            return np.zeros((0, 0), dtype=np.int64), np.zeros(total, dtype=np.int64)
        which = np.repeat(np.arange(len(cost)), number)
        taken = np.arange(total) - np.repeat(np.cumsum(number) - number, number) + low[which]
        columns = {stock: row[which] for stock, row in kept.items()}
        columns[last] = taken
        columns |= {stock: np.full(total, self._high[stock]) for stock in self._free}
        rows = np.stack([columns[stock] for stock in range(len(self._prices))], axis=1)
        return rows, cost[which] + taken * price

    def cut(self, values: int, worth: Sequence[int]) -> None:
        """Leave out the tallies whose sticks cannot hold what all pieces are worth."""
        shift = max(0, (max(worth) * (sum(self._high) + 1)).bit_length() - ROOM)
        worths = np.array([-(-one >> shift) for one in worth], dtype=np.int64)
        self._cuts.append((worths, values >> shift))
        self._filter(worths, values >> shift)

    def _filter(self, worths: Whole, wanted: int) -> None:
        keep = self._rows @ worths >= wanted
        self._rows, self._costs = self._rows[keep], self._costs[keep]

    @property
    def cheapest(self) -> tuple[int, tuple[int, ...]] | None:
        """The cheapest tally and its cents, or None when there is none left."""
        if not len(self._costs):
            return None
        return int(self._costs[0]), tuple(self._rows[0].tolist())

    def drop(self) -> None:
        """Leave out the cheapest."""
        self._rows, self._costs = self._rows[1:], self._costs[1:]
