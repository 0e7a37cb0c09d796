"""First-fit decreasing: quick, usually a few percent dear, and the plan to fall back on."""

from bisect import bisect_left
from collections.abc import Sequence
from itertools import accumulate

from longpoint.lengths import Fraction

from .problem import Form, Item, Pattern, ScaledCutting, StockGroup

__all__ = ["Cut", "cost", "first_fit", "rank", "trimmed"]

MANY = 400  # distinct items past which one first-fit must do
MOST_TRIED = 400_000  # pieces laid or tried, past which no further first-fit is made
MOST_VAIN = 200_000  # places tried in vain, past which only what fits without a shared cut is looked for
MOST_EXCHANGED = 400_000  # pieces tried on cheaper sticks, past which the others stay on theirs

Cut = tuple[Pattern, int]  # a way to cut a stick, and how many sticks


def first_fit(problem: ScaledCutting) -> tuple[list[Cut] | None, list[int]]:
    """The cheapest of several first-fits, or None when none of them places every piece.

    Each leads with one kind of bought stick and passes to the others when it runs out, with lengths on hand first or
    last; every stick is then exchanged for the cheapest that holds what is on it.

    Returns:
        The plan, and how many of each item the best try left over.
    """
    by_ratio = sorted(range(len(problem.stocks)), key=lambda index: (_ratio(problem.stocks[index]), index))
    lengths_on_hand = [index for index in by_ratio if problem.stocks[index].on_hand]
    bought = [index for index in by_ratio if not problem.stocks[index].on_hand]
    leads = [[lead, *(index for index in bought if index != lead)] for lead in bought] or [[]]
    best: list[Cut] | None = None
    left_over = [item.demand for item in problem.items]
    tried = 0
    for lead in leads[:1] if len(problem.items) > MANY else leads:
        for order in ([*lengths_on_hand, *lead], [*lead, *lengths_on_hand]):
            if tried > MOST_TRIED:
                break
            cuts, remaining, laid = _run(problem, order)
            tried += laid + _exchanges(problem, cuts)
            if any(remaining):
                left_over = min(left_over, remaining, key=lambda left: _length(problem, left))
                continue
            cuts = trimmed(problem, cuts)
            if best is None or rank(problem, cuts) < rank(problem, best):
                best = cuts
    return best, left_over


def _length(problem: ScaledCutting, remaining: Sequence[int]) -> Fraction:
    return sum((item.weight * left for item, left in zip(problem.items, remaining, strict=True)), Fraction(0))


def _ratio(stock: StockGroup) -> float:
    return stock.price / max(1, stock.clear)


def cost(problem: ScaledCutting, cuts: Sequence[Cut]) -> int:
    """Cents of all the sticks."""
    return sum(problem.stocks[pattern.stock].price * times for pattern, times in cuts)


def rank(problem: ScaledCutting, cuts: Sequence[Cut]) -> tuple[int, int, int]:
    """What makes a plan the better one: its cents, then how many sticks, then how many different layouts."""
    return cost(problem, cuts), sum(times for _, times in cuts), len({pattern for pattern, _ in cuts})


def _run(problem: ScaledCutting, order: Sequence[int]) -> tuple[list[Cut], list[int], int]:
    """The plan, how many of each item are left over, and how many pieces were laid or tried."""
    shelf = _Shelf(problem)
    left = {index: problem.stocks[index].most for index in order}
    cuts: list[Cut] = []
    for index in order:
        while left[index] != 0 and (forms := shelf.fill(problem.stocks[index])):
            counts = count(forms)
            times = min(shelf.remaining[item] // number for item, number in counts.items())
            if (most := left[index]) is not None:
                times = min(times, most)
                left[index] = most - times
            for item, number in counts.items():
                shelf.remaining[item] -= number * times
            cuts.append((Pattern(index, forms), times))
    return cuts, shelf.remaining, shelf.tried


def count(forms: Sequence[Form]) -> dict[int, int]:
    """How many of each item."""
    counts: dict[int, int] = {}
    for form in forms:
        counts[form.item] = counts.get(form.item, 0) + 1
    return counts


class _Shelf:
    """The items still to be cut, longest first, with a quick way to the first that may fit.

    Attributes:
        remaining: how many of each item.
        tried: pieces laid, and places tried in vain.
    """

    def __init__(self, problem: ScaledCutting) -> None:
        self._problem = problem
        self._vain = 0
        self.tried = 0
        self.remaining = [item.demand for item in problem.items]
        self._next = list(range(len(problem.items) + 1))
        # Negated, so that it rises: no item up to a place takes less room than this.
        self._least = list(accumulate((-_least(item) for item in problem.items), max))
        self._whole = list(accumulate((-_whole(item) for item in problem.items), max))

    def fill(self, stock: StockGroup) -> tuple[Form, ...]:
        """The longest item that fits, again and again; what first-fit decreasing would put on this stick."""
        forms: list[Form] = []
        before: Form | None = None
        start = stock.start
        place = 0
        while True:
            least = self._least if self._vain < MOST_VAIN else self._whole
            place = self._some(max(place, bisect_left(least, -_room(stock, start))))
            if place == len(self.remaining):
                return tuple(forms)
            for _ in range(self.remaining[place]):
                item = self._problem.items[place]
                found = _soonest(self._problem, stock, before, start - self._problem.kerf, item)
                self.tried += len(item.forms)
                if found is None:
                    self._vain += len(item.forms)
                    break
                end, before = found
                start = end + self._problem.kerf
                forms.append(before)
            place += 1

    def _some(self, place: int) -> int:
        """The first place from there on of which some are left."""
        path = []
        while place < len(self.remaining) and (self._next[place] != place or not self.remaining[place]):
            path.append(place)
            place = self._next[place] if self._next[place] != place else place + 1
        for passed in path:
            self._next[passed] = place
        return place


def _least(item: Item) -> int:
    """No stick has to have more room than this for the item to fit."""
    return min(form.length - max(form.left, form.right) for form in item.forms)


def _whole(item: Item) -> int:
    """With this much room the item fits, whatever lies before it."""
    return min(form.length for form in item.forms)


def _room(stock: StockGroup, start: int) -> int:
    """The longest clear stretch from there on: what a stick with defects has room for, and not all their lengths."""
    longest = -1
    for from_, to in stock.blocked:
        longest = max(longest, min(from_, stock.end) - start)
        start = max(start, to)
    return max(longest, stock.end - start)


def _soonest(
    problem: ScaledCutting, stock: StockGroup, before: Form | None, end: int, item: Item
) -> tuple[int, Form] | None:
    best: tuple[int, Form] | None = None
    for form in item.forms:
        start = problem.start_after(stock, before, end, form)
        if start is not None and (best is None or start + form.length < best[0]):
            best = start + form.length, form
    return best


def _exchanges(problem: ScaledCutting, cuts: Sequence[Cut]) -> int:
    """How many pieces are tried on other sticks, at most, to exchange every stick for a cheaper one."""
    return min(MOST_EXCHANGED, len(problem.stocks) * sum(len(pattern.forms) for pattern, _ in cuts))


def trimmed(problem: ScaledCutting, cuts: Sequence[Cut]) -> list[Cut]:
    """Every stick exchanged for the cheapest one that holds the same pieces, as far as there are any."""
    used: dict[int, int] = {}
    for pattern, times in cuts:
        used[pattern.stock] = used.get(pattern.stock, 0) + times
    by_price = sorted(range(len(problem.stocks)), key=lambda index: (problem.stocks[index].price, index))
    done: list[Cut] = []
    tried = 0
    for pattern, times in cuts:
        todo = times
        for index in by_price:
            if problem.stocks[index].price >= problem.stocks[pattern.stock].price or not todo:
                break
            most = problem.stocks[index].most
            moved = todo if most is None else min(todo, most - used.get(index, 0))
            if not moved or tried >= MOST_EXCHANGED:
                continue
            tried += len(pattern.forms)
            other = Pattern(index, pattern.forms)
            if problem.places(other) is not None:
                done.append((other, moved))
                used[index] = used.get(index, 0) + moved
                used[pattern.stock] -= moved
                todo -= moved
        if todo:
            done.append((pattern, todo))
    return done
