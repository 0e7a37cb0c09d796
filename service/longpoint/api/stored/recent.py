"""Answers worked out lately, kept by what they were worked out from: never stale, since that never changes."""

from collections import OrderedDict
from collections.abc import Hashable
from threading import Lock
from typing import Generic, TypeVar

K = TypeVar("K", bound=Hashable)
V = TypeVar("V")


class Recent(Generic[K, V]):
    """Keeps the answers used most lately, for threads too.

    Args:
        most: How many.
        heaviest: How much they may weigh together; the newest is kept whatever it weighs.
    """

    def __init__(self, most: int, heaviest: int) -> None:
        self._most = most
        self._heaviest = heaviest
        self._weight = 0
        self._lock = Lock()
        self._kept: OrderedDict[K, tuple[V, int]] = OrderedDict()

    def get(self, key: K) -> V | None:
        """An answer; None when it is not kept."""
        with self._lock:
            if key not in self._kept:
                return None
            self._kept.move_to_end(key)
            return self._kept[key][0]

    def put(self, key: K, value: V, weight: int) -> None:
        """Keep an answer; those not used the longest go when there are too many or they weigh too much."""
        with self._lock:
            self._weight -= self._kept.pop(key, (None, 0))[1]
            self._kept[key] = value, weight
            self._weight += weight
            while len(self._kept) > self._most or (self._weight > self._heaviest and len(self._kept) > 1):
                _, (_, gone) = self._kept.popitem(last=False)
                self._weight -= gone
