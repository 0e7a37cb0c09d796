"""Every pattern a stick can hold, listed: for sticks with defects and for mitres of several runs.

Patterns grow an item at a time. For each the least end is kept for each run the last piece shows, since only
the next joint depends on it; leaving a piece out never makes a row longer, so no pattern is missed.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from .problem import Counts, Form, Problem, Stock

__all__ = ["Pool", "list_patterns"]

Rows = dict[int, tuple[int, tuple[Form, ...]]]  # by the run at the right end: least end, and the forms


@dataclass(frozen=True, slots=True)
class Pool:
    """All patterns of one stock.

    Attributes:
        counts: a row for each pattern, a column for each item.
        forms: a witness for each pattern, left to right.
        ends: where each ends, from where the first piece starts.
    """

    counts: NDArray[np.int64]
    forms: tuple[tuple[Form, ...], ...]
    ends: NDArray[np.int64]

    def within(self, room: int) -> "Pool":
        """Those of the patterns that end within so much room."""
        kept = np.nonzero(self.ends <= room)[0]
        return Pool(self.counts[kept], tuple(self.forms[row] for row in kept.tolist()), self.ends[kept])

    def best(self, values: Sequence[int], allowed: Sequence[int]) -> tuple[int, int]:
        """The best value of a pattern within the allowed counts, and its row; (0, -1) when none has any."""
        if not len(self.forms):
            return 0, -1
        worth = self.counts @ np.array(values, dtype=np.int64)
        worth[(self.counts > np.array(allowed, dtype=np.int64)).any(axis=1)] = 0
        row = int(worth.argmax())
        return (int(worth[row]), row) if worth[row] > 0 else (0, -1)


def list_patterns(problem: Problem, stock: Stock, allowed: Sequence[int], most: int) -> Pool | None:
    """Every pattern the stock holds within the allowed counts, or None when there are more than ``most``."""
    size = len(problem.items)
    empty: Counts = (0,) * size
    layer: dict[Counts, Rows] = {empty: {}}
    found: dict[Counts, tuple[int, tuple[Form, ...]]] = {}
    while layer:
        longer: dict[Counts, Rows] = {}
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


def _extend(
    problem: Problem, stock: Stock, rows: Rows, item: int, longer: dict[Counts, Rows], more: Counts
) -> None:
    for form in problem.items[item].forms:
        for end, forms in rows.values() or ((0, ()),):
            before = forms[-1] if forms else None
            start = problem.start_after(stock, before, end, form)
            if start is None:
                continue
            best = longer.setdefault(more, {})
            if form.right not in best or start + form.length < best[form.right][0]:
                best[form.right] = start + form.length, (*forms, form)
