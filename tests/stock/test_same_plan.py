"""The same cutting with the same budget gives the same plan, whatever else the processor does."""

import subprocess
import sys
from dataclasses import replace
from random import Random

import pytest

from longpoint.stock import Budget, Cutting, Plan, effort, plan
from stock.cuttings import CUT_TRADES, crooked, house, rack, readings, small_cutting_with_cuts, spread

CUTTINGS = (
    ("windows", readings(40, 1)),
    ("many windows", readings(120, 2)),
    ("turned", readings(30, 3, turnable=True)),
    ("together", house(20, 12, 4, together=True, eats=True)),
    ("rack", rack(25, 30, 5)),
    ("crooked", crooked(12, 6)),
    ("lengths", spread(300, 7)),
    *((trade, small_cutting_with_cuts(trade, 8)) for trade in CUT_TRADES),
)


@pytest.fixture(autouse=True)
def much_room_for_a_slow_machine(monkeypatch: pytest.MonkeyPatch) -> None:
    """A quarter of the usual work for the same seconds, so that a machine with much else to do has time for it."""
    monkeypatch.setattr("longpoint.stock.effort.PER_SECOND", 0.2)


def same(found: Plan) -> Plan:
    """All of it that is promised."""
    return replace(found, seconds=0.0)


@pytest.mark.parametrize(("name", "cutting"), CUTTINGS)
def test_twice(name: str, cutting: Cutting) -> None:
    budget = Budget(Random(name).choice([0.4, 1.2]))
    first, second = plan(cutting, budget), plan(cutting, budget)
    assert first.stopped in ("proven", "effort", "memory", "clock")
    assert (first.stopped == "proven") == first.proven
    if "clock" not in (first.stopped, second.stopped):
        assert same(first) == same(second)


def test_beside_another_that_takes_the_processor(monkeypatch: pytest.MonkeyPatch) -> None:
    """Effort is counted, so a busy machine gives the same plan; a cutting that effort ends is chosen for it."""
    # So that the clock is far away on a slow machine that others use, too.
    monkeypatch.setattr("longpoint.stock.effort.PER_SECOND", effort.PER_SECOND / 6)
    cutting, budget = readings(120, 2), Budget(3.0)
    idle = plan(cutting, budget)
    assert idle.stopped == "effort"
    busy = [subprocess.Popen([sys.executable, "-c", "while True: pass"]) for _ in range(2)]
    try:
        loaded = plan(cutting, budget)
    finally:
        for one in busy:
            one.kill()
            one.wait()
    assert loaded.stopped == "effort"
    assert same(idle) == same(loaded)


def test_a_clock_that_runs_out_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """A machine on which counted work takes far longer than where it was measured."""
    monkeypatch.setattr("longpoint.stock.effort.PER_SECOND", 1000.0)
    found = plan(readings(150, 9), Budget(0.2))
    assert found.stopped == "clock"
    assert found.bound_cents <= found.cost_cents
