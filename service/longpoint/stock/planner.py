"""Plan a cutting: check it, scale it, first-fit it, better it within the budget, and name every piece."""

from collections.abc import Callable, Sequence
from time import monotonic

from longpoint.lengths import Fraction
from longpoint.texts import Sentence, say

from .best import Best
from .bound import material_bound, material_short
from .check import check
from .effort import Effort
from .faults import StockError, StockFault
from .firstfit import Cut, first_fit
from .laid import Plan, Progress
from .layouts import lay_out
from .model import Budget, Cutting, Wanted
from .problem import ScaledCutting
from .scaling import scale
from .tidy import tidy
from .work_out import work_out

__all__ = ["STANDARD", "plan", "scaled", "unmet"]

STANDARD = Budget()
NAMED = 5  # pieces named in a refusal


def plan(
    cutting: Cutting,
    budget: Budget = STANDARD,
    progress: Callable[[Progress], None] | None = None,
    better: Callable[[Plan], None] | None = None,
) -> Plan:
    """Choose and cut the cheapest sticks that give every piece.

    Args:
        cutting: pieces and stock of one profile.
        budget: how hard to work.
        progress: called with the cost and bound so far, whenever one of them changes.
        better: called with every better plan, before the work is done; for whoever may have to stop it.

    Raises:
        StockError: the cutting makes no sense, or no plan gives every piece; with every fault.
    """
    began = monotonic()
    problem = scaled(cutting, budget)
    if not problem.items:
        return Plan(cutting.profile, (), 0, 0, monotonic() - began, "first_fit")
    effort = Effort(budget.seconds)
    effort.reading(len(cutting.pieces))
    named: list[Cut] | None = None

    def laid_out(search: Best) -> Plan:
        assert search.cuts is not None
        proven = search.cost == search.bound
        why = "proven" if proven else effort.stopped or search.stopped or "effort"
        return Plan(
            cutting.profile,
            lay_out(cutting, problem, search.cuts),
            search.cost,
            search.bound,
            monotonic() - began,
            search.method,
            why,
            problem.split,
            effort.spent,
        )

    def report(search: Best) -> None:
        nonlocal named
        if search.cuts is None:
            return
        if progress is not None:
            progress(Progress(search.cost, search.bound, monotonic() - began))
        if better is not None and search.cuts is not named:
            named = search.cuts
            better(laid_out(search))

    cuts, left_over = first_fit(problem)
    best = Best(problem, cuts, material_bound(problem), report)
    best.report()
    if budget.seconds and not best.proven:
        work_out(problem, best, effort)
    if best.cuts is None:
        raise unmet(cutting, problem, left_over, sure=bool(budget.seconds) and effort.stopped is None)
    if budget.seconds:
        best.cuts = tidy(problem, best.cuts)
    return laid_out(best)


def scaled(cutting: Cutting, budget: Budget) -> ScaledCutting:
    """The cutting in units, once it is seen to make sense and to have stuff enough."""
    check(cutting, budget)
    problem = scale(cutting)
    short = material_short(problem) * problem.unit if problem.items else 0
    if short > 0:
        raise _refused("not_enough_stock", say("problem", "cutting.stuff-too-short", short=short))
    return problem


def unmet(cutting: Cutting, problem: ScaledCutting, left_over: Sequence[int], sure: bool) -> StockError:
    """Say which pieces found no place, and how many of each."""
    lacking: list[Sentence] = []
    for item, left in zip(problem.items, left_over, strict=True):
        if left:
            lines = {line for piece in item.forms[0].pieces for line, _ in problem.kinds[piece.kind].lines}
            names: tuple[Sentence | str, ...] = item.openings or tuple(
                _named(cutting.pieces[line]) for line in sorted(lines)
            )
            length: Fraction = min(form.length for form in item.forms) * problem.unit
            some = tuple(name if isinstance(name, Sentence) else str(name) for name in names[:NAMED])
            lacking.append(say("problem", "cutting.lacking", pieces=left, names=some, length=length))
    missing = tuple(lacking[:NAMED])
    if len(lacking) > NAMED:
        missing = (*missing, say("problem", "cutting.lacking-more", count=len(lacking) - NAMED))
    if sure:
        return _refused("not_enough_stock", say("problem", "cutting.not-enough-stock", missing=missing))
    return _refused("no_plan_found", say("problem", "cutting.no-plan-found", missing=missing))


def _named(piece: Wanted) -> Sentence | str:
    if not piece.opening:
        return str(piece.key)
    return say("problem", "cutting.piece-of-opening", piece=str(piece.key), opening=str(piece.opening))


def _refused(code: str, detail: Sentence) -> StockError:
    fault = StockFault(("sticks",), code, detail + say("hint", "cutting.raise-stock"))
    return StockError((fault,))
