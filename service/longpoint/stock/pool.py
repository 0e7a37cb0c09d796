"""Every pattern a stick can hold, listed: for sticks with defects and for miters of several runs.

Patterns grow an item at a time. For each the least end is kept for each right end the last piece shows, since
only the next joint depends on it; leaving a piece out never makes a row longer, so no pattern is missed.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from .problem import Counts, Form, ScaledCutting, StockGroup

__all__ = ["Pool", "list_patterns", "searched_row"]

Full = tuple[int, ...]  # how many of each item
Rows = dict[tuple[int, int], tuple[int, tuple[Form, ...]]]  # by the right end: least end, and the forms


@dataclass(frozen=True, slots=True)
class Pool:
    """All patterns of one stock.

    Attributes:
        table: a row for each pattern, a column for each item.
        forms: a witness for each pattern, left to right.
        ends: where each ends, from where the first piece starts.
    """

    table: NDArray[np.int64]
    forms: tuple[tuple[Form, ...], ...]
    ends: NDArray[np.int64]

    def within(self, room: int) -> "Pool":
        """Those of the patterns that end within so much room."""
        kept = np.nonzero(self.ends <= room)[0]
        return Pool(self.table[kept], tuple(self.forms[row] for row in kept.tolist()), self.ends[kept])

    def worth(self, values: Sequence[int], allowed: Sequence[int]) -> NDArray[np.int64]:
        """What each pattern is worth, those that hold too many of an item nothing."""
        worth = self.table @ np.array(values, dtype=np.int64)
        worth[(self.table > np.array(allowed, dtype=np.int64)).any(axis=1)] = 0
        return worth

    def counts(self, row: int) -> Counts:
        """How many of each item that pattern holds."""
        items = np.nonzero(self.table[row])[0]
        return tuple(zip(items.tolist(), self.table[row, items].tolist(), strict=True))


def list_patterns(
    problem: ScaledCutting, stock: StockGroup, allowed: Sequence[int], most: int
) -> Pool | None:
    """Every pattern the stock holds within the allowed counts, or None when there are more than ``most``."""
    size = len(problem.items)
    empty: Full = (0,) * size
    layer: dict[Full, Rows] = {empty: {}}
    found: dict[Full, tuple[int, tuple[Form, ...]]] = {}
    while layer:
        longer: dict[Full, Rows] = {}
        for counts, rows in layer.items():
            for item in range(size):
                if counts[item] >= allowed[item]:
                    continue
                more = (*counts[:item], counts[item] + 1, *counts[item + 1 :])
                _extend(problem, stock, rows, item, longer, more)
            if len(found) + len(longer) > most:
                return None
        for counts, rows in longer.items():
            found[counts] = min(rows.values(), key=lambda row: row[0])
        layer = longer
    matrix = np.array(list(found), dtype=np.int64).reshape(len(found), size)
    ends = np.array([end - stock.start for end, _ in found.values()], dtype=np.int64)
    return Pool(matrix, tuple(forms for _, forms in found.values()), ends)


def searched_row(problem: ScaledCutting, stock: StockGroup, counts: Counts) -> tuple[Form, ...] | None:
    """The row of all those pieces that ends first on the stock, every order and way to lie tried; None if none fits."""
    wanted = dict(counts)
    size = len(problem.items)
    layer: dict[Full, Rows] = {(0,) * size: {}}
    for _ in range(sum(wanted.values())):
        longer: dict[Full, Rows] = {}
        for held, rows in layer.items():
            for item, most in wanted.items():
                if held[item] < most:
                    more = (*held[:item], held[item] + 1, *held[item + 1 :])
                    _extend(problem, stock, rows, item, longer, more)
        layer = longer
    found = [row for rows in layer.values() for row in rows.values()]
    return min(found, key=lambda row: row[0])[1] if found else None


def _extend(
    problem: ScaledCutting, stock: StockGroup, rows: Rows, item: int, longer: dict[Full, Rows], more: Full
) -> None:
    for form in problem.items[item].forms:
        for end, forms in rows.values() or ((0, ()),):
            before = forms[-1] if forms else None
            start = problem.start_after(stock, before, end, form)
            if start is None:
                continue
            best = longer.setdefault(more, {})
            right = form.right, form.eats
            if right not in best or start + form.length < best[right][0]:
                best[right] = start + form.length, (*forms, form)
