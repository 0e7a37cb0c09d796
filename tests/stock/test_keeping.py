"""Planning anew: the cheapest plan that keeps most of the sticks laid out before."""

from dataclasses import replace
from fractions import Fraction
from random import Random
from time import process_time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.stock import (
    Budget,
    Cutting,
    Plan,
    Replanned,
    Standing,
    StickKind,
    StickOnHand,
    StockError,
    Stretch,
    Wanted,
    plan,
    replan,
)
from stock.brute import cheapest
from stock.checker import complaints
from stock.cuttings import CUT_TRADES, TRADES, house, readings, small_cutting, small_cutting_with_cuts
from stock.earlier import most_kept, remeasured, small_house, standing, within_by_brute, within_by_plan

AMPLE = Budget(20.0)


def sound(cutting: Cutting, before: list[Standing], found: Replanned) -> None:
    """It can be cut, and the kept sticks come first, each as it was."""
    assert not complaints(cutting, found.plan)
    layouts = {one.name: one.layout for one in before}
    order = [one.name for one in before if one.name in found.kept]
    assert list(found.kept) == order
    for name, layout in zip(found.kept, found.plan.layouts, strict=False):
        was = layouts[name]
        assert (layout.stick, layout.placed, layout.keys) == (was.stick, was.placed, was.keys)


def changed(cutting: Cutting, seed: int) -> Cutting:
    random = Random(seed)
    pieces = list(cutting.pieces)
    at = random.randrange(len(pieces))
    longer = max(Fraction(1), pieces[at].length + Fraction(random.randint(-12, 12), 8))
    pieces[at] = replace(pieces[at], length=longer)
    return replace(cutting, pieces=tuple(pieces))


@pytest.mark.parametrize("trade", TRADES + CUT_TRADES)
def test_of_small_cuttings_of_every_trade_as_many_sticks_are_kept_as_can_be(trade: str) -> None:
    lost = tried = 0
    for seed in range(4):
        cutting = small_cutting_with_cuts(trade, seed) if trade in CUT_TRADES else small_cutting(trade, seed)
        try:
            before = standing(plan(cutting))
            cutting = changed(cutting, seed)
            found = replan(cutting, before, AMPLE)
        except StockError:
            continue
        tried += 1
        sound(cutting, before, found)
        assert found.plan.cost_cents == cheapest(cutting), f"{trade} {seed}"
        most = most_kept(cutting, before, found.plan.cost_cents, within_by_brute)
        assert len(found.kept) == most, f"{trade} {seed}"
        assert found.most
        lost += len(before) - most
    assert tried > 1
    assert lost


@settings(max_examples=120, deadline=None, derandomize=True)
@given(st.integers(0, 10_000))
def test_a_house_with_one_opening_measured_again_keeps_as_many_sticks_as_it_can(seed: int) -> None:
    cutting = small_house(seed)
    before = standing(plan(cutting, AMPLE if seed % 3 else Budget(0)))
    cutting = remeasured(cutting, seed)
    found = replan(cutting, before, AMPLE)
    sound(cutting, before, found)
    assert found.plan.proven
    assert len(found.kept) == most_kept(cutting, before, found.plan.cost_cents, within_by_plan)
    assert found.most


@pytest.mark.parametrize("together", [False, True])
@pytest.mark.parametrize("turnable", [False, True])
def test_a_cutting_that_did_not_change_keeps_every_stick(turnable: bool, together: bool) -> None:
    cutting = house(8, 5, 3, turnable=turnable, together=together, eats=True)
    first = plan(cutting)
    before = standing(first)
    found = replan(cutting, before)
    sound(cutting, before, found)
    assert len(found.kept) == len(before)
    assert found.most
    assert found.plan.cost_cents == first.cost_cents


STICK = StickKind("s", Fraction(100), 500)
SPARE = StickOnHand("r", Fraction(60), 0)
TWO = (Wanted("a", Fraction(45), 2, "W1", right=WIDTH) for WIDTH in (Fraction(5, 2),))
BASE = Cutting(
    "casing", (*TWO, Wanted("b", Fraction(54), 1, "W2")), (STICK,), (SPARE,), end_trim=Fraction(1, 2)
)


def piece(cutting: Cutting, key: str, **fields: object) -> Cutting:
    return replace(
        cutting, pieces=tuple(replace(one, **fields) if one.key == key else one for one in cutting.pieces)
    )


def stick(cutting: Cutting, **fields: object) -> Cutting:
    return replace(cutting, sticks=(replace(cutting.sticks[0], **fields),))


REASONS: dict[str, tuple[Cutting, set[str]]] = {
    "nothing changed": (BASE, {"s", "r"}),
    "a line is gone": (replace(BASE, pieces=BASE.pieces[:1]), {"s"}),
    "not so many of a line": (piece(BASE, "a", quantity=1), {"r"}),
    "a length changed": (piece(BASE, "b", length=Fraction(49)), {"s"}),
    "a miter changed, of which molded stock knows nothing": (piece(BASE, "a", right=Fraction(0)), {"s", "r"}),
    "a cut eats more": (piece(BASE, "a", right_eats=Fraction(1, 4)), {"r"}),
    "the kerf is thicker": (replace(BASE, kerf=Fraction(3, 16)), set()),
    "the kerf is thinner": (replace(BASE, kerf=Fraction(1, 16)), set()),
    "the ends are trimmed more": (replace(BASE, end_trim=Fraction(1)), set()),
    "stock that may be turned": (replace(BASE, turnable=True), {"r"}),
    "the stick is dearer": (stick(BASE, price_cents=501), {"r"}),
    "the stick is cheaper": (stick(BASE, price_cents=499), {"r"}),
    "the stick is longer": (stick(BASE, length=Fraction(120)), {"r"}),
    "the stick has another name": (stick(BASE, key="t"), {"r"}),
    "a knot under a piece": (stick(BASE, defects=(Stretch(Fraction(10), Fraction(11)),)), {"r"}),
    "a knot in the offcut": (stick(BASE, defects=(Stretch(Fraction(97), Fraction(98)),)), {"s", "r"}),
    "the length on hand is gone": (replace(BASE, lengths_on_hand=()), {"s"}),
    "the length on hand is a stick now": (
        replace(BASE, sticks=(STICK, StickKind("r", Fraction(60), 0)), lengths_on_hand=()),
        {"s"},
    ),
    "the length on hand is trimmed otherwise": (
        replace(BASE, lengths_on_hand=(replace(SPARE, end_trim=Fraction(1, 4)),)),
        {"s"},
    ),
    "pieces of an opening on two sticks are to be together": (
        replace(
            piece(BASE, "b", opening="W1"), together=True, sticks=(STICK, StickKind("x", Fraction(200), 1))
        ),
        set(),
    ),
}


@pytest.mark.parametrize("reason", REASONS)
def test_a_stick_that_can_no_longer_be_cut_as_it_was_is_dropped(reason: str) -> None:
    before = [Standing(one.layout.stick, one.layout) for one in standing(plan(BASE))]
    assert {one.name for one in before} == {"s", "r"}
    cutting, stay = REASONS[reason]
    found = replan(cutting, before, Budget(0))
    sound(cutting, before, found)
    assert set(found.kept) == stay


def test_a_stick_of_which_none_is_available_is_dropped() -> None:
    before = standing(plan(BASE))
    cutting = replace(stick(BASE, available=0), sticks=(replace(STICK, available=0), replace(STICK, key="t")))
    assert [one.stick for one in replan(cutting, before).plan.layouts[:1]] == ["r"]


def test_of_two_sticks_that_want_the_same_pieces_the_first_given_stays() -> None:
    cutting = Cutting("casing", (Wanted("a", Fraction(45), 3),), (STICK,))
    one, other = (
        Standing(name, replace(layout, keys=(layout.keys[0],)))
        for name, layout in zip(
            "xy", plan(replace(cutting, pieces=(Wanted("a", Fraction(45), 2),))).layouts * 2, strict=True
        )
    )
    assert replan(cutting, [one, other]).kept == ("x",)
    assert replan(cutting, [other, one]).kept == ("y",)
    capped = replace(
        cutting,
        pieces=(Wanted("a", Fraction(45), 4),),
        sticks=(replace(STICK, available=1), replace(STICK, key="t")),
    )
    assert replan(capped, [other, one]).kept == ("y",)


def test_an_offcut_goes_on_the_rack_by_the_rule_of_now() -> None:
    before = standing(plan(BASE))
    found = replan(replace(BASE, keep_length=Fraction(1)), before)
    assert len(found.kept) == len(before)
    assert any(layout.kept for layout in found.plan.layouts)
    sound(replace(BASE, keep_length=Fraction(1)), before, found)


def test_the_quick_plan_keeps_every_stick_it_can_whatever_it_costs() -> None:
    lost = 0
    for seed in range(12):
        cutting = small_house(seed)
        before = standing(plan(cutting))
        cutting = remeasured(cutting, seed)
        found = replan(cutting, before, Budget(0))
        sound(cutting, before, found)
        assert found.plan.bound_cents == plan(cutting, Budget(0)).bound_cents
        assert found.plan.stopped == ("proven" if found.plan.proven else "effort")
        lost += found.plan.cost_cents > plan(cutting).cost_cents
    assert lost


def test_the_quick_plan_lets_sticks_go_where_the_rest_would_find_no_place() -> None:
    """Two of 30 on one stick each, as they were; now one of 60 needs one of the two sticks there are for itself."""
    cutting = Cutting("casing", (Wanted("a", Fraction(30), 2),), (replace(STICK, available=2),))
    alone = plan(replace(cutting, pieces=(Wanted("a", Fraction(30)),))).layouts[0]
    now = replace(cutting, pieces=(*cutting.pieces, Wanted("b", Fraction(60))))
    before = [Standing(name, alone) for name in "xy"]
    found = replan(now, before, Budget(0))
    sound(now, before, found)
    assert found.kept == ("x",)
    with pytest.raises(StockError):
        replan(replace(now, sticks=(replace(STICK, available=1),)), before, Budget(0))


def same(found: Replanned) -> Replanned:
    return replace(found, plan=replace(found.plan, seconds=0.0))


@pytest.mark.parametrize(
    "cutting", [readings(20, 1), readings(12, 2, on_hand=4, turnable=True), house(10, 6, 3, together=True)]
)
def test_the_same_twice_and_never_dearer_than_the_search_alone(
    cutting: Cutting, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A fraction of the usual work for the same seconds, so that a slow machine has time for it."""
    monkeypatch.setattr("longpoint.stock.effort.PER_SECOND", 0.1)
    before = standing(plan(cutting, Budget(2.0)))
    cutting = remeasured(cutting, 1)
    first, second = replan(cutting, before, Budget(2.0)), replan(cutting, before, Budget(2.0))
    sound(cutting, before, first)
    if "clock" not in (first.plan.stopped, second.plan.stopped):
        assert same(first) == same(second)
    alone = plan(cutting, Budget(2.0))
    assert first.plan.cost_cents <= alone.cost_cents
    assert first.plan.bound_cents <= first.plan.cost_cents


def test_better_plans_are_told_of_and_each_is_better() -> None:
    cutting = readings(12, 0)
    before = standing(plan(cutting))
    cutting = remeasured(cutting, 0)
    told: list[Replanned] = []
    costs: list[int] = []
    found = replan(cutting, before, progress=lambda one: costs.append(one.cost_cents), better=told.append)
    for one in told:
        sound(cutting, before, one)
    ranks = [(one.plan.cost_cents, -len(one.kept)) for one in told]
    assert ranks == sorted(ranks, reverse=True)
    assert ranks[-1] == (found.plan.cost_cents, -len(found.kept))
    assert costs[-1] == found.plan.cost_cents


def test_three_hundred_sticks_take_no_longer_than_the_budget() -> None:
    cutting = readings(240, 1)
    before = standing(plan(cutting, Budget(0)))
    assert len(before) > 300
    cutting = remeasured(cutting, 1)
    began = process_time()
    found = replan(cutting, before, Budget(0.6))
    assert process_time() - began < 1.2
    sound(cutting, before, found)
    began = process_time()
    found = replan(cutting, before, Budget(0))
    assert process_time() - began < 1.0
    assert len(found.kept) >= len(before) - 3


def test_nothing_to_cut_keeps_nothing() -> None:
    found = replan(replace(BASE, pieces=()), standing(plan(BASE)))
    assert found == Replanned(replace(found.plan), (), True)
    assert isinstance(found.plan, Plan)
    assert not found.plan.layouts
