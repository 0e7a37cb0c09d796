"""Which standing sticks to keep: one integer program over them and every pattern that could be cut beside them."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

import highspy
import numpy as np

from .columns import PatternColumn, counted
from .effort import Effort
from .firstfit import Cut, cost
from .master import Box, Master
from .pricing import Pricer, UnpriceableError
from .problem import Counts, ScaledCutting
from .settle import settle

__all__ = ["Choice", "Stick", "kept_most", "without"]

MOST_COLUMNS = 4000
ENTRIES = (
    100_000  # patterns times items for each second that is left: what the program's first steps may take
)
NODES = 400
WALL = 4  # seconds on the wall for one of the processor, past which even a busy machine should be done
SURE, FEW = (
    0.5,
    0.4,
)  # of a stick kept: how near the best the program may stop, and what the number of sticks may count
HALF = 0.5  # of a cent, which is the least that costs differ by

Stick = tuple[int, Counts]  # of which stock, and the items it takes


@dataclass(frozen=True, slots=True)
class Choice:
    """What the program answers.

    Attributes:
        kept: places of the sticks to keep, or None when no plan was found.
        cuts: for all other pieces.
        sure: whether nothing that costs no more keeps more; without a plan, whether there is none.
    """

    kept: tuple[int, ...] | None
    cuts: tuple[Cut, ...]
    sure: bool


def kept_most(
    problem: ScaledCutting,
    sticks: Sequence[Stick],
    span: tuple[int, int],
    least: int,
    known: Sequence[Cut],
    effort: Effort,
) -> Choice:
    """Keep as many of the sticks as a plan can that costs no more than the limit.

    Args:
        problem: the pieces, those on the sticks among them.
        sticks: stock and items of each; all of them could be kept together, were it not for the cost.
        span: cents that no plan costs less than, and the limit.
        least: how many must be kept for an answer to be of use.
        known: a plan, if there is one.
        effort: to be spent.
    """
    floor, limit = span
    try:
        master = Master(problem, Pricer(problem), effort)
    except UnpriceableError:
        return Choice(None, (), False)
    wanted = [item.demand for item in problem.items]
    pieces = sum(wanted)
    high = [pieces if stock.most is None else min(pieces, stock.most) for stock in problem.stocks]
    box = Box((0,) * (len(high) + 1), (*high, pieces))
    relaxed = master.relax(wanted, box, limit * master.scale + 1)
    spare = limit * master.scale - relaxed.bound
    if spare < 0:
        return Choice(None, (), True)
    if effort.stopped:
        return Choice(None, (), False)
    columns = master.listed(wanted, box.high, relaxed.values, spare, MOST_COLUMNS)
    most = int(ENTRIES * effort.left / len(wanted))
    whole = columns is not None and len(columns) <= most
    if columns is None:
        columns = master.nearest(wanted, relaxed.values, most)
    if not whole:
        columns = _nearest(problem, columns, relaxed.values, master.scale)[:most]
        columns += [
            PatternColumn(pattern.stock, counted(pattern.forms), pattern.forms) for pattern, _ in known
        ]
    useful = [column for column in columns if column.counts]
    found, ended = _solved(problem, useful, sticks, (floor, limit), least, effort)
    if found is None:
        return Choice(None, (), whole and ended)
    kept, chosen = found
    cuts = settle(without(problem, [sticks[at] for at in kept]), chosen)
    spent = cost(problem, cuts) + sum(problem.stocks[sticks[at][0]].price for at in kept)
    if spent > limit:  # the program's numbers are floats
        return Choice(None, (), False)
    return Choice(kept, tuple(cuts), whole and ended)


def _nearest(
    problem: ScaledCutting, columns: Sequence[PatternColumn], values: Sequence[int], scale: int
) -> list[PatternColumn]:
    """The columns, those first that lose least against those values."""

    def loss(column: PatternColumn) -> int:
        worth = sum(values[item] * count for item, count in column.counts)
        return problem.stocks[column.stock].price * scale - worth

    return sorted(columns, key=loss)


def without(problem: ScaledCutting, sticks: Sequence[Stick]) -> ScaledCutting:
    """The cutting less what those sticks take, every item and stock at its place."""
    used = Counter(stock for stock, _ in sticks)
    cut = Counter[int]()
    for _, counts in sticks:
        cut.update(dict(counts))
    items = tuple(replace(item, demand=item.demand - cut[at]) for at, item in enumerate(problem.items))
    stocks = tuple(
        replace(stock, most=None if stock.most is None else stock.most - used[at])
        for at, stock in enumerate(problem.stocks)
    )
    return replace(problem, items=items, stocks=stocks)


def _solved(
    problem: ScaledCutting,
    columns: Sequence[PatternColumn],
    sticks: Sequence[Stick],
    span: tuple[int, int],
    least: int,
    effort: Effort,
) -> tuple[tuple[tuple[int, ...], list[tuple[PatternColumn, int]]] | None, bool]:
    """The sticks kept and the columns with how often each is cut, or None; and whether the program came to its end."""
    alike: dict[Stick, list[int]] = {}
    for at, stick in enumerate(sticks):
        alike.setdefault(stick, []).append(at)
    floor, limit = span
    cent = 0 if floor >= limit else len(sticks) + 1  # what a cent counts against one stick kept
    few = FEW / (
        1 + sum(item.demand for item in problem.items)
    )  # of plans that keep as many, one of few sticks
    solver = highspy.Highs()  # type: ignore[no-untyped-call]
    solver.silent()
    for option, value in (
        ("threads", 1),
        ("random_seed", 1),
        ("mip_rel_gap", 0.0),
        ("mip_abs_gap", SURE),
        ("mip_max_nodes", NODES),
        ("presolve", "off"),  # it makes these programs four times as slow, and some much worse
        ("time_limit", 0.5 + WALL * effort.clock_left),
    ):
        solver.setOptionValue(option, value)
    none, nothing = np.array([], dtype=np.int32), np.array([], dtype=np.float64)
    for item in problem.items:
        solver.addRow(item.demand, highspy.kHighsInf, 0, none, nothing)
    for stock in problem.stocks:
        most = highspy.kHighsInf if stock.most is None else stock.most
        solver.addRow(0, most, 0, none, nothing)
    spent = len(problem.items) + len(problem.stocks)  # the row of what all cost, and that of the sticks kept
    solver.addRow(floor - HALF, limit + HALF, 0, none, nothing)
    solver.addRow(least, highspy.kHighsInf, 0, none, nothing)

    def add(stock: int, counts: Counts, worth: float, most: float, kept: bool) -> None:
        price = problem.stocks[stock].price
        rows = [*(item for item, _ in counts), len(problem.items) + stock, spent, *([spent + 1] * kept)]
        values = [*(float(count) for _, count in counts), 1.0, float(price), *([1.0] * kept)]
        entries = len(rows), np.array(rows, dtype=np.int32), np.array(values)
        solver.addCol(cent * price + few - worth, 0, most, *entries)

    for (of, counts), places in alike.items():
        add(of, counts, 1.0, len(places), True)
    for column in columns:
        add(column.stock, column.counts, 0.0, highspy.kHighsInf, False)
    size = len(alike) + len(columns)
    solver.changeColsIntegrality(
        size, np.arange(size, dtype=np.int32), np.array([highspy.HighsVarType.kInteger] * size)
    )
    solver.run()
    info = solver.getInfo()
    effort.spend(4e-3 + 1.2e-5 * size + max(0, info.simplex_iteration_count) * (1e-4 + 1e-7 * size))
    status = solver.getModelStatus()
    if status == highspy.HighsModelStatus.kTimeLimit:
        effort.late()
    ended = status in (highspy.HighsModelStatus.kOptimal, highspy.HighsModelStatus.kInfeasible)
    if info.primal_solution_status != 2:
        return None, ended
    times = [round(value) for value in solver.getSolution().col_value]
    kept = [places[:number] for places, number in zip(alike.values(), times, strict=False)]
    chosen = [(column, n) for column, n in zip(columns, times[len(alike) :], strict=True) if n]
    return (tuple(sorted(at for some in kept for at in some)), chosen), ended
