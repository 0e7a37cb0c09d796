"""Jobs with too many lengths, or too fine ones, for the exact search: plan them with lengths taken up to a mark.

A plan for the longer pieces holds the true ones. Lengths taken down to the same mark give a bound.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from .best import Best
from .effort import Effort
from .firstfit import Cut, first_fit, trimmed
from .pricing import Pricer, UnpriceableError
from .problem import Form, Item, Pattern, Problem
from .search import Search

__all__ = ["coarsely"]

LENGTHS = 150  # distinct ones that a second's work goes through


def coarsely(problem: Problem, best: Best, effort: Effort) -> None:
    """Better a plan and its bound, where the job is plain enough for that."""
    longest = max(stock.end - stock.start for stock in problem.stocks)
    plain = all(len(item.forms) == 1 and not item.forms[0].left for item in problem.items)
    if not plain or any(stock.blocked for stock in problem.stocks):
        return
    mark = _mark(problem, longest)
    down = _rounded(problem, lambda length: max(1, length // mark * mark))
    up = _rounded(problem, lambda length: min(longest, -(-length // mark) * mark))
    low = Best(down.problem, None, best.bound)
    high = Best(up.problem, first_fit(up.problem)[0], best.bound)
    try:
        Search(down.problem, Pricer(down.problem), low, effort.part(0.3)).relax()
        best.raise_to(low.bound)
        Search(up.problem, Pricer(up.problem), high, effort.part(0.6)).run()
    except UnpriceableError:
        return
    if high.cuts is not None:
        best.take(trimmed(problem, list(up.true(high.cuts))), "columns")


def _mark(problem: Problem, longest: int) -> int:
    """Units of the finest mark that leaves few enough lengths and steps."""
    mark = 1
    while True:
        lengths = {-(-item.forms[0].length // mark) for item in problem.items}
        if len(lengths) <= LENGTHS and longest // mark <= LENGTHS * 40:
            return mark
        mark *= 2


@dataclass(frozen=True, slots=True)
class _Rounded:
    """A job with rounded lengths.

    Attributes:
        problem: the job.
        members: for each of its items the forms of the true ones, longest first, with how many of each.
    """

    problem: Problem
    members: tuple[tuple[tuple[Form, int], ...], ...]

    def true(self, cuts: Sequence[Cut]) -> Iterator[Cut]:
        """The same cuts with the true pieces, the longest handed out first."""
        queues = [list(reversed(members)) for members in self.members]
        for pattern, times in cuts:
            todo = times
            while todo:
                forms, alike = _taken(queues, pattern, todo)
                yield Pattern(pattern.stock, forms), alike
                todo -= alike


def _taken(queues: list[list[tuple[Form, int]]], pattern: Pattern, most: int) -> tuple[tuple[Form, ...], int]:
    """True forms for one stick, and how many sticks may be cut just so."""
    forms: list[Form] = []
    for form in pattern.forms:
        true, left = queues[form.item].pop()
        forms.append(true)
        if left > 1:
            queues[form.item].append((true, left - 1))
    alike = 1
    need: dict[int, int] = {}
    for true, form in zip(forms, pattern.forms, strict=True):
        need[form.item] = need.get(form.item, 0) + 1
        if queues[form.item] and queues[form.item][-1][0] is not true:
            return tuple(forms), 1
    spare = [(queues[item][-1][1] // number if queues[item] else 0) for item, number in need.items()]
    again = min([most - 1, *spare])
    if again > 0:
        for item, number in need.items():
            true, left = queues[item].pop()
            if left > again * number:
                queues[item].append((true, left - again * number))
        alike += again
    return tuple(forms), alike


def _rounded(problem: Problem, to_mark: Callable[[int], int]) -> _Rounded:
    groups: dict[int, list[Item]] = {}
    for item in problem.items:
        groups.setdefault(to_mark(item.forms[0].length), []).append(item)
    items = []
    for index, (length, group) in enumerate(sorted(groups.items(), reverse=True)):
        form = Form(index, length, 0, 0, group[0].cut, group[0].forms[0].parts)
        demand = sum(item.demand for item in group)
        items.append(Item(demand, (form,), Fraction(length), group[0].cut))
    members = tuple(
        tuple((item.forms[0], item.demand) for item in groups[item.forms[0].length]) for item in items
    )
    coarse = Problem(problem.unit, problem.kerf, problem.kinds, tuple(items), problem.stocks, ())
    return _Rounded(coarse, members)
