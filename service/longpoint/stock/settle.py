"""From columns that may cut too much to a plan that cuts exactly what is asked."""

from collections.abc import Sequence

from .columns import PatternColumn
from .firstfit import Cut, trimmed
from .problem import Form, Pattern, ScaledCutting

__all__ = ["settle"]


def settle(problem: ScaledCutting, chosen: Sequence[tuple[PatternColumn, int]]) -> list[Cut]:
    """Leave out pieces that are too many, drop empty sticks, take a cheaper stick where one holds it."""
    surplus = [-item.demand for item in problem.items]
    for column, times in chosen:
        for item, count in column.counts:
            surplus[item] += count * times
    cuts: dict[Pattern, int] = {}
    for column, times in chosen:
        todo = times
        while todo:
            forms, alike = _without(column.forms, surplus, todo)
            if forms:
                pattern = Pattern(column.stock, forms)
                cuts[pattern] = cuts.get(pattern, 0) + alike
            todo -= alike
    return trimmed(problem, list(cuts.items()))


def _without(forms: tuple[Form, ...], surplus: list[int], times: int) -> tuple[tuple[Form, ...], int]:
    """The forms less those that are too many, and how many sticks may be cut so; the surplus goes down."""
    dropped: dict[int, int] = {}
    kept: list[Form] = []
    for form in forms:
        if dropped.get(form.item, 0) < surplus[form.item]:
            dropped[form.item] = dropped.get(form.item, 0) + 1
        else:
            kept.append(form)
    alike = min([times, *(surplus[item] // number for item, number in dropped.items())])
    for item, number in dropped.items():
        surplus[item] -= number * alike
    return tuple(kept), alike
