"""The optimizer against CP-SAT on an assignment model: which piece from which stick."""

from fractions import Fraction
from math import lcm

import pytest
from ortools.sat.python import cp_model

from longpoint.stock import Cutting, StickKind, StockError, plan
from stock.checker import complaints
from stock.cuttings import small_cutting


def assigned(cutting: Cutting) -> int | None:
    """Cents of the cheapest plan for plain stock by the solver, or None when there is no plan."""
    pieces = [piece.length for piece in cutting.pieces for _ in range(piece.quantity)]
    scale = lcm(*(length.denominator for length in [*pieces, cutting.kerf, cutting.end_trim]))
    sticks: list[tuple[Fraction, int]] = []
    for stock in cutting.stock:
        most = stock.available if isinstance(stock, StickKind) else 1
        trim = cutting.end_trim if isinstance(stock, StickKind) or stock.end_trim is None else stock.end_trim
        number = len(pieces) if most is None else min(most, len(pieces))
        sticks += [(stock.length - 2 * trim + cutting.kerf, stock.price_cents)] * number
    scale = lcm(scale, *(room.denominator for room, _ in sticks))
    model = cp_model.CpModel()
    used = [model.new_bool_var("") for _ in sticks]
    cut = [[model.new_bool_var("") for _ in sticks] for _ in pieces]
    for row in cut:
        model.add_exactly_one(row)
    for index, (room, _) in enumerate(sticks):
        weights = [int((length + cutting.kerf) * scale) for length in pieces]
        taken = sum(weight * row[index] for weight, row in zip(weights, cut, strict=True))
        model.add(taken <= int(max(room, Fraction(0)) * scale) * used[index])
    model.minimize(sum(price * one for one, (_, price) in zip(used, sticks, strict=True)))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = 20
    status = solver.solve(model)
    assert status in (cp_model.OPTIMAL, cp_model.INFEASIBLE)
    return round(solver.objective_value) if status == cp_model.OPTIMAL else None


@pytest.mark.parametrize("trade", ["plain", "capped"])
def test_an_assignment_model_finds_the_same_cost(trade: str) -> None:
    planned = 0
    for seed in range(100, 115):
        cutting = small_cutting(trade, seed)
        expected = assigned(cutting)
        try:
            found = plan(cutting)
        except StockError:
            assert expected is None
            continue
        planned += 1
        assert not complaints(cutting, found)
        assert found.cost_cents == expected
    assert planned > 8
