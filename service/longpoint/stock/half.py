"""A job in which every mitred end shares its cut: no row of pieces is longer than it is there."""

from dataclasses import replace
from math import floor

from longpoint.lengths import Fraction

from .problem import Form, Item, Problem

__all__ = ["half_shared"]


def half_shared(problem: Problem) -> Problem:
    """Each item as one square form, half the run shorter for each mitred end."""
    return replace(problem, items=tuple(_halved(item) for item in problem.items))


def _halved(item: Item) -> Item:
    form = Form(item.forms[0].item, max(1, floor(item.weight)), 0, 0, item.cut, item.forms[0].parts)
    return replace(item, forms=(form,), weight=Fraction(form.length))
