"""A cutting in which every miterd end shares its cut: no row of pieces is longer than it is there."""

from dataclasses import replace
from math import floor

from longpoint.lengths import Fraction

from .problem import Form, Item, ScaledCutting

__all__ = ["half_shared"]


def half_shared(problem: ScaledCutting) -> ScaledCutting:
    """Each item as one square form, half the run shorter for each miterd end."""
    return replace(problem, items=tuple(_halved(item) for item in problem.items))


def _halved(item: Item) -> Item:
    form = Form(item.forms[0].item, max(1, floor(item.weight)), 0, 0, item.cut, item.forms[0].pieces)
    return replace(item, forms=(form,), weight=Fraction(form.length))
