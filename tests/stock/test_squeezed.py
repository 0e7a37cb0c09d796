"""Small cuttings planned as large ones are: with no lists, coarse tables, coarser cuttings first, sticks filled up.

Each way of working is forced by taking down the size at which it sets in, and held against everything tried.
"""

from importlib import import_module

import pytest

from longpoint.stock import Budget, StockError, plan
from stock.brute import cheapest
from stock.checker import complaints
from stock.cuttings import CUT_TRADES, TRADES, small_cutting, small_cutting_with_cuts

SQUEEZES: dict[str, dict[tuple[str, str], object]] = {
    "no lists": {("pricing", "MOST_LISTED"): 0},
    "short steps": {("lattice", "MOST_SCALE"): 1, ("lattice", "ENOUGH"): 60, ("lattice", "CLOSE"): -1},
    "close steps": {("knapsack", "MOST_BYTES"): 0, ("knapsack", "LEAST_STEPS"): 200},
    "coarser first": {
        ("work_out", "SIZES"): ((2, 0.3), (3, 0.7)),
        ("work_out", "WORTH_IT"): 1.0,
        ("work_out", "LEAVE"): 2,
        ("search", "FEW_ITEMS"): 0,
    },
    "many stocks": {("work_out", "MOST_STOCKS"): 2},
    "no tallies": {("tallies", "MOST"): 1},
    "all of it": {
        ("pricing", "MOST_LISTED"): 0,
        ("lattice", "MOST_SCALE"): 1,
        ("lattice", "ENOUGH"): 100,
        ("work_out", "SIZES"): ((2, 0.3), (3, 0.7)),
        ("work_out", "WORTH_IT"): 1.0,
        ("work_out", "LEAVE"): 2,
        ("search", "FEW_ITEMS"): 0,
        ("tallies", "MOST"): 1,
    },
}


@pytest.mark.parametrize("trade", TRADES + CUT_TRADES)
@pytest.mark.parametrize("squeeze", SQUEEZES)
def test_no_bound_is_above_the_optimum_and_every_plan_can_be_cut(
    squeeze: str, trade: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    for (module, name), value in SQUEEZES[squeeze].items():
        monkeypatch.setattr(import_module(f"longpoint.stock.{module}"), name, value)
    planned = found_best = 0
    for seed in range(500, 512):
        cutting = small_cutting_with_cuts(trade, seed) if trade in CUT_TRADES else small_cutting(trade, seed)
        cheapest_cost = cheapest(cutting)
        try:
            found = plan(cutting, Budget(0.5))
        except StockError as refused:
            sure = refused.faults[0].code != "no_plan_found"
            assert not sure or cheapest_cost is None, f"{trade} {seed} is refused, and costs {cheapest_cost}"
            continue
        planned += 1
        assert cheapest_cost is not None
        assert not complaints(cutting, found), f"{trade} {seed}"
        assert found.bound_cents <= cheapest_cost <= found.cost_cents, f"{trade} {seed}"
        found_best += found.cost_cents == cheapest_cost
    assert planned > 8
    assert found_best >= 0.4 * planned
