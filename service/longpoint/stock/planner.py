"""Plan a job: check it, scale it, first-fit it, better it within the budget, and name every piece."""

from collections.abc import Callable, Sequence
from fractions import Fraction
from time import monotonic

from .bound import material_bound, material_short
from .check import check
from .coarse import coarsely
from .effort import Effort
from .faults import StockError, StockFault
from .firstfit import cost, first_fit
from .layouts import lay_out
from .model import Budget, Job, Plan, Progress
from .pricing import Pricer, UnpriceableError
from .problem import Problem
from .scaling import scale
from .search import Search

__all__ = ["plan"]

STANDARD = Budget()
LEAST = 1.0  # seconds to look for any plan at all where first-fit finds none
NAMED = 5  # pieces named in a refusal


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
    if not problem.items:
        return Plan(job.profile, (), 0, 0, monotonic() - began, "first_fit")
    short = material_short(problem) * problem.unit
    if short > 0:
        raise _refused(
            "not_enough_stock", f"All the stock there is falls {short} in short of the pieces and kerfs."
        )
    cuts, left_over = first_fit(problem)
    bound, method, stopped = material_bound(problem), "first_fit", None

    def report(cost_cents: int, bound_cents: int) -> None:
        if progress is not None:
            progress(Progress(cost_cents, bound_cents, monotonic() - began))

    if cuts is not None:
        report(cost(problem, cuts), bound)
    seconds = max(LEAST, budget.seconds) if cuts is None else budget.seconds
    if seconds and (cuts is None or cost(problem, cuts) > bound):
        effort = Effort(seconds)
        try:
            search = Search(problem, Pricer(problem, seconds), cuts, bound, effort, report)
        except UnpriceableError:
            stopped = "size"
            if cuts is not None:
                cuts, bound = coarsely(problem, cuts, bound, effort)
                method = "columns"
                report(cost(problem, cuts), bound)
        else:
            search.run()
            cuts, bound, method, stopped = search.cuts, search.bound, search.method, effort.stopped
    if cuts is None:
        raise _unmet(job, problem, left_over, sure=stopped is None)
    layouts = lay_out(job, problem, cuts)
    price = cost(problem, cuts)
    proven = price == bound
    return Plan(
        job.profile,
        layouts,
        price,
        bound,
        monotonic() - began,
        method,
        None if proven else stopped or "budget",
        problem.split,
    )


def _unmet(job: Job, problem: Problem, left_over: Sequence[int], sure: bool) -> StockError:
    """Say which pieces found no place, and how many of each."""
    lacking: list[str] = []
    for item, left in zip(problem.items, left_over, strict=True):
        if left:
            lines = {line for part in item.forms[0].parts for line, _ in problem.kinds[part.kind].lines}
            names = item.openings or tuple(job.pieces[line].key for line in sorted(lines))
            length: Fraction = min(form.length for form in item.forms) * problem.unit
            lacking.append(f"{left} of {', '.join(map(repr, names[:NAMED]))}, {length} in long")
    most = "" if len(lacking) <= NAMED else f" and {len(lacking) - NAMED} more lengths"
    missing = "; ".join(lacking[:NAMED]) + most
    if sure:
        text = f"The stock available cannot give every piece, proven. The fullest plan found leaves out {missing}."
        return _refused("not_enough_stock", text)
    text = f"No plan was found that gives every piece. The fullest found leaves out {missing}."
    return _refused("no_plan_found", text)


def _refused(code: str, text: str) -> StockError:
    fault = StockFault(("sticks",), code, f"{text} Raise what is available or list more.")
    return StockError((fault,))
