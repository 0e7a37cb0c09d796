"""Two plain models of the same cutting for solvers anyone can install: what the optimizer is measured against."""

from collections import Counter
from fractions import Fraction
from itertools import pairwise
from math import ceil, isfinite, lcm
from time import perf_counter, process_time

import highspy
import numpy as np
from ortools.sat.python import cp_model

from longpoint.stock import Cutting, StickKind

Result = tuple[
    int | None, int, float, float
]  # cents, bound in cents, seconds on the clock and of the processor


def scaled(cutting: Cutting) -> tuple[list[tuple[int, int]], list[tuple[int, int, int | None]]]:
    """Weights with a kerf each and how often; rooms with a kerf more, prices and how many. Sticks only."""
    rooms = [stick.length - 2 * cutting.end_trim + cutting.kerf for stick in cutting.sticks]
    wanted = Counter[Fraction]()
    for piece in cutting.pieces:
        wanted[piece.length + cutting.kerf] += piece.quantity
    unit = lcm(*(length.denominator for length in [*wanted, *rooms]))
    weights = sorted(((int(weight * unit), count) for weight, count in wanted.items()), reverse=True)
    sticks: list[tuple[int, int, int | None]] = [
        (int(room * unit), stick.price_cents, stick.available)
        for room, stick in zip(rooms, cutting.sticks, strict=True)
        if isinstance(stick, StickKind)
    ]
    return weights, sticks


def constraint_solver(cutting: Cutting, budget: float) -> Result:
    """CP-SAT: how many of each weight on each stick, sticks of a length in falling order of use."""
    clock, work = perf_counter(), process_time()
    weights, sticks = scaled(cutting)
    most = sum(count for _, count in weights)
    model = cp_model.CpModel()
    cut: list[list[cp_model.IntVar]] = [[] for _ in weights]
    prices = []
    for room, price, available in sticks:
        number = min(most, available or most, ceil(sum(w * c for w, c in weights) / (room / 2)) + 1)
        before = None
        for _ in range(number):
            used = model.new_bool_var("")
            row = [model.new_int_var(0, min(count, room // weight), "") for weight, count in weights]
            model.add(sum(w * one for (w, _), one in zip(weights, row, strict=True)) <= room * used)
            if before is not None:
                model.add_implication(used, before)
            before = used
            prices.append(price * used)
            for column, one in zip(cut, row, strict=True):
                column.append(one)
    for (_, count), column in zip(weights, cut, strict=True):
        model.add(sum(column) == count)
    model.minimize(sum(prices))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = budget
    status = solver.solve(model)
    cost = round(solver.objective_value) if status in (cp_model.OPTIMAL, cp_model.FEASIBLE) else None
    bound = (
        cost if status == cp_model.OPTIMAL and cost is not None else ceil(solver.best_objective_bound - 1e-6)
    )
    return cost, bound, perf_counter() - clock, process_time() - work


def _cents(bound: float) -> int:
    """A bound in cents, zero as long as there is none."""
    return max(0, ceil(bound - 1e-6)) if isfinite(bound) else 0


def arc_flow(cutting: Cutting, budget: float) -> Result:
    """HiGHS on flows through the places where a piece may start: one arc for each weight, one for waste."""
    clock, work = perf_counter(), process_time()
    weights, sticks = scaled(cutting)
    longest = max(room for room, _, _ in sticks)
    reach = {0}
    for weight, count in weights:
        new = set(reach)
        for at in reach:
            for number in range(1, min(count, (longest - at) // weight) + 1):
                new.add(at + number * weight)
        reach = new
    nodes = sorted(reach | {room for room, _, _ in sticks})
    place = {node: row for row, node in enumerate(nodes)}
    solver = highspy.Highs()  # type: ignore[no-untyped-call]
    solver.silent()
    for option, value in (("threads", 1), ("time_limit", budget), ("mip_rel_gap", 0.0), ("mip_abs_gap", 0.5)):
        solver.setOptionValue(option, value)
    none, nothing = np.array([], dtype=np.int32), np.array([], dtype=np.float64)
    for _ in nodes:
        solver.addRow(0, 0, 0, none, nothing)
    for _, count in weights:
        solver.addRow(count, count, 0, none, nothing)
    size = 0

    def arc(cost: float, most: float, rows: list[int], values: list[float]) -> None:
        nonlocal size
        solver.addCol(cost, 0, most, len(rows), np.array(rows, dtype=np.int32), np.array(values))
        size += 1

    for at in nodes:
        for item, (weight, count) in enumerate(weights):
            if at + weight in place:
                arc(0, count, [place[at], place[at + weight], len(nodes) + item], [-1.0, 1.0, 1.0])
    for before, after in pairwise(nodes):
        arc(0, highspy.kHighsInf, [place[before], place[after]], [-1.0, 1.0])
    for room, price, available in sticks:
        arc(
            price, highspy.kHighsInf if available is None else available, [place[room], place[0]], [-1.0, 1.0]
        )
    solver.changeColsIntegrality(
        size, np.arange(size, dtype=np.int32), np.array([highspy.HighsVarType.kInteger] * size)
    )
    solver.run()
    info = solver.getInfo()
    cost = round(info.objective_function_value) if info.primal_solution_status == 2 else None
    optimal = solver.getModelStatus() == highspy.HighsModelStatus.kOptimal
    bound = cost if optimal and cost is not None else _cents(info.mip_dual_bound)
    return cost, bound, perf_counter() - clock, process_time() - work
