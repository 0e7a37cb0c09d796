"""What was made of values that come again and again."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

K = TypeVar("K")
V = TypeVar("V")


class Kept(dict[K, V], Generic[K, V]):
    """What was made of each key, all of it forgotten once it is much.

    A third of the time of `lru_cache` where nearly all is found, as it is for the marks of a tape: that one notes of
    each key when it was last asked for, and so reads and writes memory all over the place.

    Args:
        most: How much is kept.
        make: Makes what is not there.
    """

    __slots__ = ("_make", "_most")

    def __init__(self, most: int, make: Callable[[K], V]) -> None:
        super().__init__()
        self._most = most
        self._make = make

    def __missing__(self, key: K) -> V:
        if len(self) >= self._most:
            self.clear()
        made = self[key] = self._make(key)
        return made
