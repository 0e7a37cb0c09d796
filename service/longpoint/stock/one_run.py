"""Turned stock with miters of many runs: plan it as if only the commonest could share a cut.

A plan for that can be cut as it is. For the bound every mitered end is taken to share its cut, which saves half
its run on either side of the joint: no plan saves more.
"""

from collections import Counter
from dataclasses import replace
from fractions import Fraction

from .best import Best
from .effort import Effort
from .firstfit import first_fit, trimmed
from .half import half_shared
from .pricing import Pricer, UnpriceableError
from .problem import Item, Pattern, Problem
from .search import Search

__all__ = ["by_one_run"]


def by_one_run(problem: Problem, best: Best, effort: Effort) -> None:
    """Better a plan and its bound, where the sticks are clear."""
    ends = Counter[int]()
    for item in problem.items:
        ends.update({run: item.demand for run in (item.forms[0].left, item.forms[0].right) if run})
    commonest = min(ends, key=lambda run: (-ends[run], run))
    halved = half_shared(problem)
    single = replace(problem, items=tuple(_with_run(item, commonest) for item in problem.items))
    true = {(form.item, form.parts): form for item in problem.items for form in item.forms}
    low = Best(halved, None, best.bound)
    high = Best(single, first_fit(single)[0], best.bound)
    try:
        Search(halved, Pricer(halved), low, effort.part(0.3)).relax()
        best.raise_to(low.bound)
        Search(single, Pricer(single), high, effort.part(0.9)).run()
    except UnpriceableError:
        return
    if high.cuts is not None:
        cuts = [
            (Pattern(pattern.stock, tuple(true[form.item, form.parts] for form in pattern.forms)), times)
            for pattern, times in high.cuts
        ]
        best.take(trimmed(problem, cuts), "columns")


def _with_run(item: Item, run: int) -> Item:
    forms = tuple(
        replace(form, left=run * (form.left == run), right=run * (form.right == run)) for form in item.forms
    )
    weight = min(form.length - Fraction(form.left + form.right, 2) for form in forms)
    return replace(item, forms=forms, weight=weight)
