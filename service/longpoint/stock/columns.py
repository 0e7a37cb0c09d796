"""Patterns as the linear program sees them; and those found so far, each once, with what they hold in flat arrays."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from .problem import Counts, Form

__all__ = ["Columns", "PatternColumn", "counted", "fewer", "full"]


@dataclass(frozen=True, slots=True)
class PatternColumn:
    """A pattern as the linear program sees it.

    Attributes:
        stock: index of the stock.
        counts: how many of each item.
        forms: how it is laid out.
    """

    stock: int
    counts: Counts
    forms: tuple[Form, ...]


class Columns:
    """Columns in the order they were found.

    Args:
        items: how many there are.
    """

    def __init__(self, items: int) -> None:
        self._items = items
        self._columns: list[PatternColumn] = []
        self._known: set[tuple[int, Counts]] = set()
        self._flat: list[tuple[int, int, int]] = []  # column, item and how many
        self._array = np.zeros((3, 0), dtype=np.int64)

    def __len__(self) -> int:
        return len(self._columns)

    def __getitem__(self, at: int) -> PatternColumn:
        return self._columns[at]

    def __iter__(self) -> Iterator[PatternColumn]:
        return iter(self._columns)

    def add(self, columns: Sequence[PatternColumn]) -> list[PatternColumn]:
        """Take those that are new, and say which they are."""
        new = []
        for column in columns:
            key = column.stock, column.counts
            if key not in self._known:
                self._known.add(key)
                place = len(self._columns)
                self._columns.append(column)
                self._flat.extend((place, item, count) for item, count in column.counts)
                new.append(column)
        return new

    def worth(self, values: Sequence[int]) -> NDArray[np.float64]:
        """What each of them is worth."""
        place, item, count = self._flattened()
        worth = np.array(values, dtype=np.float64)[item] * count
        return np.bincount(place, weights=worth, minlength=len(self._columns)).astype(np.float64)

    def within(self, wanted: Sequence[int]) -> NDArray[np.bool_]:
        """Which of them hold no more of any item than that."""
        place, item, count = self._flattened()
        fits = np.ones(len(self._columns), dtype=np.bool_)
        fits[place[count > np.array(wanted, dtype=np.int64)[item]]] = False
        return fits

    def _flattened(self) -> NDArray[np.int64]:
        done = self._array.shape[1]
        if done < len(self._flat):
            more = np.array(self._flat[done:], dtype=np.int64).T
            self._array = np.hstack([self._array, more])
        return self._array


def counted(forms: Sequence[Form]) -> Counts:
    """How many of each item."""
    counts: dict[int, int] = {}
    for form in forms:
        counts[form.item] = counts.get(form.item, 0) + 1
    return tuple(sorted(counts.items()))


def full(columns: Sequence[PatternColumn]) -> Iterator[PatternColumn]:
    """Those to which nothing can be added: what holds more is worth no less, so it is among them too."""
    less = {fewer(column.counts, item) for column in columns for item, _ in column.counts}
    return (column for column in columns if column.counts not in less)


def fewer(counts: Counts, item: int) -> Counts:
    """One of the item fewer."""
    less = ((one, number - (one == item)) for one, number in counts)
    return tuple((one, number) for one, number in less if number)
