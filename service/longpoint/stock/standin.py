"""A simpler cutting in a cutting's place: solve it, and put the true pieces where its pieces lie, or take its bound.

Each item of the stand-in stands for some items of the cutting, each of its forms for the same form of each of them.
Where no form is shorter or freer than what it stands for, a plan can be cut as it is; where none is longer or less
free, its bound holds. All that differs between stand-ins is which forms they have.
"""

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from longpoint.lengths import Fraction

from .columns import PatternColumn, counted
from .firstfit import Cut
from .half import half_shared
from .problem import Form, Item, Pattern, ScaledCutting

__all__ = ["StandIn", "coarser", "finer", "halved", "one_saving"]

MOST_TURNS = 4
Ends = tuple[tuple[int, int], ...]  # of an item's forms: what both save
Queue = list[tuple[Item, int]]  # items still to be handed out and how many of each, the next one last


@dataclass(frozen=True, slots=True)
class StandIn:
    """The simpler cutting.

    Attributes:
        problem: the cutting.
        members: for each of its items the true ones.
    """

    problem: ScaledCutting
    members: tuple[tuple[Item, ...], ...]

    def values(self, true: Sequence[float]) -> list[float]:
        """What its items are worth where the true ones are worth that: as much as the dearest of those."""
        return [max(true[item.forms[0].item] for item in members) for members in self.members]

    def columns(self, columns: Sequence[PatternColumn]) -> Iterator[PatternColumn]:
        """Patterns of the cutting for those of the stand-in: some true items take their turns in the place of each."""
        for column in columns:
            turns = max((len(self.members[item]) for item, _ in column.counts), default=0)
            for turn in range(min(turns, MOST_TURNS)):
                used: dict[int, int] = {}
                forms: list[Form] = []
                for form in column.forms:
                    members = self.members[form.item]
                    at = used.get(form.item, 0)
                    used[form.item] = at + 1
                    item = members[(turn + at) % len(members)]
                    forms.append(item.forms[self.problem.items[form.item].forms.index(form)])
                counts = counted(forms)
                if all(count <= self.demand[item] for item, count in counts):
                    yield PatternColumn(column.stock, counts, tuple(forms))

    @property
    def demand(self) -> dict[int, int]:
        """How many of each true item there are."""
        return {item.forms[0].item: item.demand for members in self.members for item in members}

    def true_values(self, values: Sequence[float]) -> list[float]:
        """What the true items are worth where its own are worth that: in between for a length in between."""
        known: dict[Ends, list[tuple[int, float]]] = {}
        for item, value in zip(self.problem.items, values, strict=True):
            known.setdefault(_ends(item), []).append((item.forms[0].length, value))
        true: dict[int, float] = {}
        for ends, pairs in known.items():
            pairs.sort()
            members = [one for group in self.members for one in group if _ends(one) == ends]
            lengths = [item.forms[0].length for item in members]
            worth = np.interp(lengths, [length for length, _ in pairs], [value for _, value in pairs])
            true |= {item.forms[0].item: one for item, one in zip(members, worth.tolist(), strict=True)}
        return [true[item] for item in sorted(true)]

    def true(self, cuts: Sequence[Cut], problem: ScaledCutting) -> list[Cut] | None:
        """The same cuts with the true pieces, the longest handed out first; None where they do not fit after all."""
        done = list(self._handed_out(cuts))
        fit = all(problem.places(pattern) is not None for pattern, _ in done)
        return done if fit else None

    def _handed_out(self, cuts: Sequence[Cut]) -> Iterator[Cut]:
        queues = [[(item, item.demand) for item in reversed(members)] for members in self.members]
        places = [{form: at for at, form in enumerate(item.forms)} for item in self.problem.items]
        for pattern, times in cuts:
            at = [places[form.item][form] for form in pattern.forms]
            todo = times
            while todo:
                items, alike = _taken(queues, pattern, todo)
                forms = tuple(item.forms[place] for item, place in zip(items, at, strict=True))
                yield Pattern(pattern.stock, forms), alike
                todo -= alike


def _taken(queues: list[Queue], pattern: Pattern, most: int) -> tuple[list[Item], int]:
    """True items for one stick, and how many sticks may be cut just so."""
    items: list[Item] = []
    need = Counter(form.item for form in pattern.forms)
    alike = most
    for group, number in need.items():
        _, left = queues[group][-1]
        alike = min(alike, left // number)
    if alike:  # every place takes the next item of its group
        items = [queues[form.item][-1][0] for form in pattern.forms]
        for group, number in need.items():
            item, left = queues[group].pop()
            if left > alike * number:
                queues[group].append((item, left - alike * number))
        return items, alike
    for form in pattern.forms:
        item, left = queues[form.item].pop()
        if left > 1:
            queues[form.item].append((item, left - 1))
        items.append(item)
    return items, 1


def coarser(problem: ScaledCutting, lengths: int) -> StandIn:
    """About so many items, each as long as the longest that it stands for."""
    return _grouped(problem, lengths, max)


def finer(problem: ScaledCutting, lengths: int) -> StandIn:
    """About so many items, each as short as the shortest that it stands for."""
    return _grouped(problem, lengths, min)


def _grouped(problem: ScaledCutting, lengths: int, choose: Callable[[list[int]], int]) -> StandIn:
    kinds: dict[Ends, list[Item]] = {}
    for item in problem.items:
        kinds.setdefault(_ends(item), []).append(item)
    groups: list[list[Item]] = []
    for alike in kinds.values():
        alike.sort(key=lambda item: -item.forms[0].length)
        number = max(1, lengths * len(alike) // len(problem.items))
        for at in range(number):
            group = alike[at * len(alike) // number : (at + 1) * len(alike) // number]
            if group:
                groups.append(group)
    groups.sort(key=lambda group: -group[0].forms[0].length)
    items = []
    for index, group in enumerate(groups):
        forms = tuple(
            replace(
                form,
                item=index,
                length=choose([item.forms[at].length for item in group]),
                eats=choose([item.forms[at].eats for item in group]),
            )
            for at, form in enumerate(group[0].forms)
        )
        demand = sum(item.demand for item in group)
        cut = choose([item.cut for item in group])
        items.append(Item(demand, forms, _weight(forms), cut))
    return StandIn(replace(problem, items=tuple(items), split=()), tuple(tuple(group) for group in groups))


def _ends(item: Item) -> Ends:
    return tuple((form.left, form.right) for form in item.forms)


def halved(problem: ScaledCutting) -> StandIn:
    """Every mitered end shares its cut: no row of pieces is longer than it is there."""
    return StandIn(half_shared(problem), tuple((item,) for item in problem.items))


def one_saving(problem: ScaledCutting) -> StandIn:
    """Only the commonest of the mitered ends share cuts."""
    ends = Counter[int]()
    for item in problem.items:
        ends.update({end: item.demand for end in (item.forms[0].left, item.forms[0].right) if end})
    commonest = min(ends, key=lambda end: (-ends[end], end))
    items = []
    for item in problem.items:
        forms = tuple(
            replace(
                form, left=form.left * (form.left == commonest), right=form.right * (form.right == commonest)
            )
            for form in item.forms
        )
        cut = min(problem.kerf if form.right else form.eats for form in forms)
        items.append(replace(item, forms=forms, weight=_weight(forms), cut=cut))
    return StandIn(replace(problem, items=tuple(items)), tuple((item,) for item in problem.items))


def _weight(forms: Sequence[Form]) -> Fraction:
    return min(form.length - Fraction(form.left + form.right, 2) for form in forms)
