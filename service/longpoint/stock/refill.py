"""Sticks of a plan filled up: in each a piece is exchanged for the longest one still to be cut that lets all fit.

A plan made with lengths taken up leaves a little of every stick. With many lengths to choose from hardly anything
is left of most sticks when they are filled one after the other; what remains is a small cutting, to be planned well.
"""

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import replace

import numpy as np

from .arrange import row_length
from .firstfit import Cut
from .problem import Form, Item, Pattern, ScaledCutting

__all__ = ["refilled", "rest", "restored"]

Ends = tuple[tuple[int, int], ...]


def refilled(problem: ScaledCutting, cuts: Sequence[Cut], leave: int) -> tuple[list[Cut], list[int]]:
    """Fill the sticks of a plan as long as more than so many pieces remain.

    Returns:
        The filled sticks, and how many of each item remain.
    """
    shelf = _Shelf(problem)
    done: list[Cut] = []
    for pattern, times in cuts:
        for _ in range(times):
            if shelf.left <= leave:
                return done, shelf.remaining
            forms = _filled(problem, shelf, pattern)
            if forms:
                done.append((Pattern(pattern.stock, forms), 1))
    return done, shelf.remaining


def _filled(problem: ScaledCutting, shelf: "_Shelf", pattern: Pattern) -> tuple[Form, ...]:
    row = list(shelf.take(pattern.forms))
    stock = problem.stocks[pattern.stock]
    slack = stock.end - stock.start - row_length(tuple(row), problem.kerf) if row else 0
    best: tuple[int, int, Form] | None = None
    for at, form in enumerate(row):
        longer = shelf.longest(form, form.length + slack)
        more = 0 if longer is None else longer.length - form.length
        if longer is not None and more > (0 if best is None else best[0]):
            best = more, at, longer
    if best is not None:
        changed = (*row[: best[1]], best[2], *row[best[1] + 1 :])
        if problem.places(Pattern(pattern.stock, changed)) is not None:
            shelf.exchange(row[best[1]], best[2])
            return changed
    return tuple(row)


class _Shelf:
    """The pieces still to be cut, by length.

    Attributes:
        left: how many in all.
    """

    def __init__(self, problem: ScaledCutting) -> None:
        self._items = problem.items
        self.left = sum(item.demand for item in problem.items)
        alike: dict[Ends, list[Item]] = {}
        for item in reversed(problem.items):
            alike.setdefault(_ends(item), []).append(item)
        self._groups = [sorted(items, key=lambda item: item.forms[0].length) for items in alike.values()]
        self._lengths = [[item.forms[0].length for item in items] for items in self._groups]
        self._there = [np.array([item.demand for item in items], dtype=np.int64) for items in self._groups]
        self._place = {
            item.forms[0].item: (group, at)
            for group, items in enumerate(self._groups)
            for at, item in enumerate(items)
        }

    @property
    def remaining(self) -> list[int]:
        """How many of each item."""
        places = (self._place[item] for item in range(len(self._items)))
        return [int(self._there[group][at]) for group, at in places]

    def take(self, forms: Sequence[Form]) -> Iterator[Form]:
        """Those forms, or the next shorter ones where none are left; as far as there are any."""
        for form in forms:
            group, at = self._place[form.item]
            found = form if self._there[group][at] else self.longest(form, form.length)
            if found is not None:
                self._count(found.item, -1)
                yield found

    def exchange(self, back: Form, taken: Form) -> None:
        """Put one back and take another."""
        self._count(back.item, 1)
        self._count(taken.item, -1)

    def longest(self, like: Form, most: int) -> Form | None:
        """The longest with the same ends, no longer than that."""
        item = self._items[like.item]
        group, _ = self._place[like.item]
        end = bisect_right(self._lengths[group], most + item.forms[0].length - like.length)
        there = np.flatnonzero(self._there[group][:end])
        return self._groups[group][there[-1]].forms[item.forms.index(like)] if len(there) else None

    def _count(self, item: int, number: int) -> None:
        group, at = self._place[item]
        self._there[group][at] += number
        self.left += number


def _ends(item: Item) -> Ends:
    return tuple((form.left, form.right) for form in item.forms)


def rest(
    problem: ScaledCutting, remaining: Sequence[int], stocks: Sequence[int | None]
) -> ScaledCutting | None:
    """The cutting of what remains, from what stock remains."""
    items: list[Item] = []
    for item, left in zip(problem.items, remaining, strict=True):
        if left:
            forms = tuple(replace(form, item=len(items)) for form in item.forms)
            items.append(replace(item, demand=left, forms=forms, openings=()))
    some = tuple(replace(stock, most=most) for stock, most in zip(problem.stocks, stocks, strict=True))
    return replace(problem, items=tuple(items), stocks=some, split=()) if items else None


def restored(remaining: Sequence[int], cuts: Sequence[Cut]) -> list[Cut]:
    """Cuts of the cutting of what remains, as cuts of the whole cutting."""
    items = [at for at, left in enumerate(remaining) if left]
    return [
        (Pattern(pattern.stock, tuple(replace(form, item=items[form.item]) for form in pattern.forms)), times)
        for pattern, times in cuts
    ]
