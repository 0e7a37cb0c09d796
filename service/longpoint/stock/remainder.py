"""The last few sticks of a plan, chosen all at once by a small integer program over every useful pattern."""

from collections.abc import Sequence

import highspy
import numpy as np

from .columns import PatternColumn
from .effort import Effort
from .problem import ScaledCutting

__all__ = ["solve_columns"]

WALL = 4  # seconds on the wall for one of the processor, past which even a busy machine should be done

Chosen = list[tuple[PatternColumn, int]]


def solve_columns(
    problem: ScaledCutting,
    columns: Sequence[PatternColumn],
    wanted: Sequence[int],
    high: Sequence[int],
    ceiling: int,
    goal: int,
    nodes: int,
    effort: Effort,
    gap: float | None = None,
) -> tuple[Chosen | None, bool]:
    """The cheapest way to cut ``wanted`` from those columns.

    Args:
        problem: the cutting in units.
        columns: patterns to choose from.
        wanted: how many of each item, at least.
        high: how many sticks of each stock, at most.
        ceiling: cents that it must not cost more than.
        goal: cents at which it is good enough to stop.
        nodes: branching nodes after which to give up.
        effort: to be counted.
        gap: share of the cost within which the cheapest is good enough, for a quick choice; None for the cheapest.

    Returns:
        The columns with how often each is cut, or None; and whether the search ended by itself, so that
        nothing cheaper can be made of these columns.
    """
    items = [item for item, demand in enumerate(wanted) if demand]
    row_of = {item: row for row, item in enumerate(items)}
    solver = highspy.Highs()  # type: ignore[no-untyped-call]
    solver.silent()
    for option, value in (
        ("threads", 1),
        ("random_seed", 1),
        ("mip_rel_gap", gap or 0.0),
        ("mip_abs_gap", 0.5),
        ("mip_max_nodes", nodes),
        ("objective_bound", ceiling + 0.5),
        ("objective_target", goal + 0.5),
        ("time_limit", 0.5 + WALL * effort.clock_left),
    ):
        solver.setOptionValue(option, value)
    if gap is not None:
        for option in ("rins", "rens", "root_reduced_cost"):  # they take half the time and seldom better it
            solver.setOptionValue(f"mip_heuristic_run_{option}", False)
    none, nothing = np.array([], dtype=np.int32), np.array([], dtype=np.float64)
    for item in items:
        solver.addRow(wanted[item], highspy.kHighsInf, 0, none, nothing)
    for most in high:
        solver.addRow(0, most, 0, none, nothing)
    for column in columns:
        rows = [row_of[item] for item, _ in column.counts]
        values = [float(count) for _, count in column.counts]
        solver.addCol(
            problem.stocks[column.stock].price,
            0,
            highspy.kHighsInf,
            len(rows) + 1,
            np.array([*rows, len(items) + column.stock], dtype=np.int32),
            np.array([*values, 1.0]),
        )
    size = len(columns)
    solver.changeColsIntegrality(
        size, np.arange(size, dtype=np.int32), np.array([highspy.HighsVarType.kInteger] * size)
    )
    solver.run()
    info = solver.getInfo()
    effort.spend(4e-3 + 3e-6 * size + info.simplex_iteration_count * (4e-5 + 1e-8 * size))
    status = solver.getModelStatus()
    if status == highspy.HighsModelStatus.kTimeLimit:
        effort.late()
    ended = status in (highspy.HighsModelStatus.kOptimal, highspy.HighsModelStatus.kInfeasible)
    if info.primal_solution_status != 2 or info.objective_function_value > ceiling + 0.5:
        return None, ended
    sticks = solver.getSolution().col_value
    return [
        (column, round(times)) for column, times in zip(columns, sticks, strict=True) if times > 0.5
    ], ended
