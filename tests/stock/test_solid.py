"""Plans sawn as solids, by a check that shares no arithmetic with the optimizer and can fail."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.stock import Budget, Job, Piece, StickKind, StockError, eaten, plan
from stock.jobs import ANGLES, CUT_TRADES, KERF, RUNS, WIDE, small_cut_job
from stock.solid import misfits


@settings(max_examples=150, deadline=None)
@given(st.sampled_from(CUT_TRADES), st.integers(0, 10**6), st.sampled_from([0.0, 0.3]))
def test_a_saw_can_cut_every_plan(trade: str, seed: int, seconds: float) -> None:
    job = small_cut_job(trade, seed)
    try:
        found = plan(job, Budget(seconds))
    except StockError:
        return
    assert not list(misfits(job, found, WIDE))


def tight(turnable: bool, run: Fraction) -> tuple[Job, Job]:
    """Two legs on a stick that holds them if every cut eats a kerf; what they truly eat, and what was thought."""
    eats = eaten(KERF, ANGLES[run])
    legs = tuple(Piece(f"leg {n}", Fraction(60), right=run, right_eats=eats) for n in range(2))
    stick = StickKind("s", 120 + KERF - (run if turnable else 0), 100)
    true = Job("casing", legs, (stick,), kerf=KERF, end_trim=Fraction(0), turnable=turnable)
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
    job, _ = tight(False, RUNS[1])
    found = plan(replace(job, sticks=(replace(job.sticks[0], length=Fraction(130)),)))
    (layout,) = found.layouts
    long = replace(job, sticks=(replace(job.sticks[0], length=Fraction(130)),))
    assert not list(misfits(long, found, WIDE))
    for by in (Fraction(10), Fraction(-1, 1000)):
        moved = replace(layout.placed[1], start=layout.placed[1].start + by)
        bad = replace(found, layouts=(replace(layout, placed=(layout.placed[0], moved)),))
        assert list(misfits(long, bad, WIDE))


def test_the_check_finds_a_shared_cut_of_unlike_angles() -> None:
    job, _ = tight(True, RUNS[1])
    job = replace(job, sticks=(replace(job.sticks[0], length=Fraction(130)),))
    found = plan(job)
    other = replace(job.pieces[1], right=RUNS[2])
    assert list(misfits(replace(job, pieces=(job.pieces[0], other)), found, WIDE))
