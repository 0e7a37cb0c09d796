"""Plans sawn as solids, by a check that shares no arithmetic with the optimizer and can fail."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.stock import Budget, Cutting, StickKind, StockError, Wanted, eaten, plan
from stock.cuttings import ANGLES, CUT_TRADES, KERF, RUNS, WIDE, small_cutting_with_cuts
from stock.solid import misfits


@settings(max_examples=150, deadline=None)
@given(st.sampled_from(CUT_TRADES), st.integers(0, 10**6), st.sampled_from([0.0, 0.3]))
def test_a_saw_can_cut_every_plan(trade: str, seed: int, seconds: float) -> None:
    cutting = small_cutting_with_cuts(trade, seed)
    try:
        found = plan(cutting, Budget(seconds))
    except StockError:
        return
    assert not list(misfits(cutting, found, WIDE))


def tight(turnable: bool, run: Fraction) -> tuple[Cutting, Cutting]:
    """Two legs on a stick that holds them if every cut eats a kerf; what they truly eat, and what was thought."""
    eats = eaten(KERF, ANGLES[run])
    legs = tuple(Wanted(f"leg {n}", Fraction(60), right=run, right_eats=eats) for n in range(2))
    stick = StickKind("s", 120 + KERF - (run if turnable else 0), 100)
    true = Cutting("casing", legs, (stick,), kerf=KERF, end_trim=Fraction(0), turnable=turnable)
    return true, replace(true, pieces=tuple(replace(leg, right_eats=None) for leg in legs))


@pytest.mark.parametrize("turnable", [False, True])
@pytest.mark.parametrize("run", RUNS[1:])
def test_the_check_finds_cuts_that_eat_more_than_was_planned(turnable: bool, run: Fraction) -> None:
    true, thought = tight(turnable, run)
    assert sum(plan(thought).sticks.values()) == 1
    assert list(misfits(true, plan(thought), WIDE))
    assert sum(plan(true).sticks.values()) == 2
    assert not list(misfits(true, plan(true), WIDE))


def test_the_check_finds_pieces_moved_past_the_end_or_onto_each_other() -> None:
    cutting, _ = tight(False, RUNS[1])
    found = plan(replace(cutting, sticks=(replace(cutting.sticks[0], length=Fraction(130)),)))
    (layout,) = found.layouts
    long = replace(cutting, sticks=(replace(cutting.sticks[0], length=Fraction(130)),))
    assert not list(misfits(long, found, WIDE))
    for by in (Fraction(10), Fraction(-1, 1000)):
        moved = replace(layout.placed[1], start=layout.placed[1].start + by)
        bad = replace(found, layouts=(replace(layout, placed=(layout.placed[0], moved)),))
        assert list(misfits(long, bad, WIDE))


def test_the_check_finds_a_shared_cut_of_unlike_angles() -> None:
    cutting, _ = tight(True, RUNS[1])
    cutting = replace(cutting, sticks=(replace(cutting.sticks[0], length=Fraction(130)),))
    found = plan(cutting)
    other = replace(cutting.pieces[1], right=RUNS[2])
    assert list(misfits(replace(cutting, pieces=(cutting.pieces[0], other)), found, WIDE))
