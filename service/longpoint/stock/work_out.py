"""The order in which the effort is spent: plans of coarser cuttings, then the cutting itself, or what stands in for
it."""

from collections import Counter

from .best import Best
from .effort import Effort
from .firstfit import first_fit, trimmed
from .knapsack import common_saving
from .pricing import Pricer, UnpriceableError
from .problem import ScaledCutting
from .racks import fewer_stocks, grouped_stocks, with_stocks
from .refill import refilled, rest, restored
from .search import Known, Search
from .standin import StandIn, coarser, finer, halved, one_saving

__all__ = ["work_out"]

SIZES = (
    (60, 0.3),
    (200, 0.7),
)  # items of the coarser cuttings that are planned first, and of the effort for each
MOST_STOCKS = 500  # kinds of sticks and different lengths on hand
WORTH_IT = 0.7  # of the cutting's items, past which a coarser cutting is no quicker
ROUGHLY, LOOSELY = 3e-4, 1e-3  # of the cost: how good a bound a coarser plan needs, and that of what remains
FEWEST = 200  # items of the cutting in whose place a bound is found
LARGER = (400, 800)  # items of cuttings that are planned in the place of one that cannot be priced
REFILL = 0.6  # of the effort for filling up the sticks of a coarser plan
LEAVE = 150  # pieces left to plan anew
FILL = 3e-5  # seconds a stick takes to fill up
BOUND = 0.25  # of the effort for the bound, where the cutting itself cannot be priced


def work_out(problem: ScaledCutting, best: Best, effort: Effort) -> None:
    """Better a plan and its bound until they meet or the effort is spent."""
    if len(problem.stocks) > MOST_STOCKS:
        _with_fewer_stocks(problem, best, effort)
        return
    known: Known | None = None
    fitting = [size for size, _ in SIZES if size < WORTH_IT * len(problem.items)]
    for size, share in SIZES:
        if size in fitting and not (best.proven or effort.stopped):
            known = _sketch(
                problem, coarser(problem, size), best, effort.piece(share), known, size == fitting[-1]
            )
    if best.proven or effort.stopped:
        return
    if known is not None and not any(stock.blocked for stock in problem.stocks):
        _refill(problem, best, effort.piece(REFILL), known)
    try:
        search = Search(problem, Pricer(problem), best, effort, known)
    except UnpriceableError:
        best.stopped = "memory"
    else:
        search.run()
        return
    if common_saving(problem) is None:
        _bound(halved(problem), best, effort.piece(BOUND))
        _instead(problem, one_saving(problem), best, effort)
    else:
        _bound(finer(problem, FEWEST), best, effort.piece(BOUND))
        for size in LARGER:
            known = _sketch(problem, coarser(problem, size), best, effort.piece(0.5), known, False)


def _with_fewer_stocks(problem: ScaledCutting, best: Best, effort: Effort) -> None:
    """A rack of very many lengths: a bound from groups of them, and a plan with those cheapest for their length."""
    best.stopped = "memory"
    effort.reading(len(problem.stocks) // 2)
    _bound(StandIn(grouped_stocks(problem, max(1, MOST_STOCKS // 4)), ()), best, effort.piece(BOUND))
    if best.proven or effort.stopped:
        return
    fewer, kept = fewer_stocks(problem, MOST_STOCKS // 2)
    if len(fewer.stocks) <= MOST_STOCKS:
        inner = Best(fewer, first_fit(fewer)[0], best.bound)
        work_out(fewer, inner, effort)
        if inner.cuts is not None:
            best.take(with_stocks(inner.cuts, kept), "columns")


def _sketch(
    problem: ScaledCutting, stand_in: StandIn, best: Best, effort: Effort, known: Known | None, last: bool
) -> Known | None:
    """A plan of the stand-in, its true pieces put in; and what it teaches of the cutting."""
    inner = Best(stand_in.problem, first_fit(stand_in.problem)[0], 0)
    effort.reading(len(problem.items))
    start = None if known is None else Known(stand_in.values(known.values), ())
    try:
        search = Search(stand_in.problem, Pricer(stand_in.problem), inner, effort, start)
    except UnpriceableError:
        return known
    found = search.sketch(LOOSELY, whole=not last)
    _take(problem, stand_in, inner, best)
    columns = stand_in.columns(found.columns) if last else ()
    return Known(stand_in.true_values(found.values), list(columns))


def _refill(problem: ScaledCutting, best: Best, effort: Effort, known: Known) -> None:
    """The best plan's sticks filled up, the fullest kept, and the pieces that remain planned anew."""
    if best.cuts is None:
        return
    done, remaining = refilled(problem, best.cuts, LEAVE)
    effort.spend(FILL * len(done))
    used = Counter(pattern.stock for pattern, _ in done)
    left = [None if stock.most is None else stock.most - used[at] for at, stock in enumerate(problem.stocks)]
    small = rest(problem, remaining, left)
    if small is None:
        best.take(trimmed(problem, done), "columns")
        return
    inner = Best(small, first_fit(small)[0], 0)
    try:
        values = [value for value, there in zip(known.values, remaining, strict=True) if there]
        search = Search(small, Pricer(small), inner, effort, Known(values, ()))
    except UnpriceableError:
        return
    search.sketch(LOOSELY)
    if inner.cuts is not None:
        best.take(trimmed(problem, [*done, *restored(remaining, inner.cuts)]), "columns")


def _instead(problem: ScaledCutting, stand_in: StandIn, best: Best, effort: Effort) -> None:
    """All that is left spent on the stand-in."""
    inner = Best(stand_in.problem, first_fit(stand_in.problem)[0], best.bound)
    work_out(stand_in.problem, inner, effort)
    _take(problem, stand_in, inner, best)


def _bound(stand_in: StandIn, best: Best, effort: Effort) -> None:
    """The stand-in's bound."""
    inner = Best(stand_in.problem, None, best.bound)
    try:
        Search(stand_in.problem, Pricer(stand_in.problem), inner, effort).relax()
    except UnpriceableError:
        return
    best.raise_to(inner.bound)


def _take(problem: ScaledCutting, stand_in: StandIn, inner: Best, best: Best) -> None:
    cuts = None if inner.cuts is None else stand_in.true(inner.cuts, problem)
    if cuts is not None:
        best.take(trimmed(problem, cuts), "columns")
