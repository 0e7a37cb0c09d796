"""Answers worked out lately, kept by what they were worked out from: never stale, since that never changes."""

from collections import OrderedDict
from collections.abc import Hashable
from typing import Generic, TypeVar

K = TypeVar("K", bound=Hashable)
V = TypeVar("V")


class Recent(Generic[K, V]):
    """Keeps the answers used most lately.

    Args:
        most: How many.
    """

    def __init__(self, most: int) -> None:
        self._most = most
        self._kept: OrderedDict[K, V] = OrderedDict()

    def get(self, key: K) -> V | None:
        """An answer; None when it is not kept."""
        if key in self._kept:
            self._kept.move_to_end(key)
            return self._kept[key]
        return None

    def put(self, key: K, value: V) -> None:
        """Keep an answer; the one not used the longest goes when there are too many."""
        self._kept[key] = value
        self._kept.move_to_end(key)
        while len(self._kept) > self._most:
            self._kept.popitem(last=False)
