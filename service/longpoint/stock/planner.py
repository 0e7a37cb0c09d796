"""Plan a job: check it, scale it, first-fit it, better it within the budget, and name every piece."""

from collections.abc import Callable
from contextlib import suppress
from time import monotonic

from longpoint.lengths import spoken

from .bound import material_bound, material_short
from .check import check
from .effort import Effort
from .faults import StockError, StockFault
from .firstfit import cost, first_fit
from .layouts import lay_out
from .model import Budget, Job, Plan, Progress
from .pricing import Pricer, UnpriceableError
from .scaling import scale
from .search import Search

__all__ = ["plan"]

STANDARD = Budget()


def plan(job: Job, budget: Budget = STANDARD, progress: Callable[[Progress], None] | None = None) -> Plan:
    """Choose and cut the cheapest sticks that give every piece.

    Args:
        job: pieces and stock of one profile.
        budget: how hard to work.
        progress: called with every better plan or bound.

    Raises:
        StockError: the job makes no sense, or no plan gives every piece; with every fault.
    """
    began = monotonic()
    check(job, budget)
    problem = scale(job)
    short = material_short(problem) * problem.unit
    if short > 0:
        raise StockError(
            (
                StockFault(
                    ("sticks",),
                    "not_enough_stock",
                    f"All the stock there is falls {spoken(short)} short of the pieces and their kerfs."
                    " Raise what is available or list more.",
                ),
            )
        )
    cuts = first_fit(problem)
    if cuts is None:
        raise StockError(
            (
                StockFault(
                    ("sticks",),
                    "no_plan_found",
                    "The stock there is holds the length, but no way was found to place every piece on it."
                    " Raise what is available or list more.",
                ),
            )
        )
    effort = Effort(budget.seconds)
    bound, method = material_bound(problem), "first_fit"
    price = cost(problem, cuts)

    def report(cost_cents: int, bound_cents: int) -> None:
        if progress is not None:
            progress(Progress(cost_cents, bound_cents, monotonic() - began))

    report(price, bound)
    if price > bound and budget.seconds:
        with suppress(UnpriceableError):
            search = Search(problem, Pricer(problem), cuts, bound, effort, report)
            search.run()
            cuts, bound, method = search.cuts, search.bound, search.method
            price = search.cost
    layouts = lay_out(job, problem, cuts)
    return Plan(job.profile, layouts, price, bound, monotonic() - began, method, problem.split)
