"""The patterns found so far, each once, with a quick way to tell which of them still fit what is left to cut."""

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from .pricing import Column
from .problem import Counts

__all__ = ["Columns"]


class Columns:
    """Columns in the order they were found.

    Args:
        items: how many there are.
    """

    def __init__(self, items: int) -> None:
        self._items = items
        self._columns: list[Column] = []
        self._known: set[tuple[int, Counts]] = set()
        self._flat: list[tuple[int, int, int]] = []  # column, item and how many
        self._array = np.zeros((3, 0), dtype=np.int64)

    def __len__(self) -> int:
        return len(self._columns)

    def __getitem__(self, at: int) -> Column:
        return self._columns[at]

    def __iter__(self) -> Iterator[Column]:
        return iter(self._columns)

    def add(self, columns: Sequence[Column]) -> list[Column]:
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

    def within(self, wanted: Sequence[int]) -> NDArray[np.bool_]:
        """Which of them hold no more of any item than that."""
        done = self._array.shape[1]
        if done < len(self._flat):
            more = np.array(self._flat[done:], dtype=np.int64).T
            self._array = np.hstack([self._array, more])
        place, item, count = self._array
        fits = np.ones(len(self._columns), dtype=np.bool_)
        fits[place[count > np.array(wanted, dtype=np.int64)[item]]] = False
        return fits
