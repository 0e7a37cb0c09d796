"""The optimizer against everything tried, and the checker on every plan."""

from dataclasses import replace
from fractions import Fraction
from itertools import product

import pytest

from longpoint.stock import Budget, Cutting, StickKind, StockError, Wanted, plan
from stock.brute import cheapest
from stock.checker import complaints
from stock.cuttings import TRADES, house, small_cutting


@pytest.mark.parametrize("trade", TRADES)
def test_small_cuttings_are_planned_at_the_cheapest_cost_there_is(trade: str) -> None:
    planned = 0
    for seed in range(60):
        cutting = small_cutting(trade, seed)
        cheapest_cost = cheapest(cutting)
        try:
            found = plan(cutting)
        except StockError:
            assert cheapest_cost is None, f"{trade} {seed} is refused, and costs {cheapest_cost}"
            continue
        planned += 1
        assert not complaints(cutting, found), f"{trade} {seed}"
        assert found.cost_cents == cheapest_cost, f"{trade} {seed}"
        assert found.proven, f"{trade} {seed} is not proven"
    assert planned > 30


@pytest.mark.parametrize("seed", range(3))
def test_a_house_of_thirty_windows_is_proven(seed: int) -> None:
    cutting = house(30, 10, seed)
    found = plan(cutting, Budget(8.0))
    assert not complaints(cutting, found)
    assert found.proven


def test_turned_stock_never_costs_more_and_here_costs_less() -> None:
    cutting = house(12, 6, 1)
    turned = replace(cutting, turnable=True)
    molded, flat = plan(cutting, Budget(8.0)), plan(turned, Budget(8.0))
    assert not complaints(turned, flat)
    assert flat.proven
    assert flat.cost_cents < molded.cost_cents


@pytest.mark.parametrize("turnable", [False, True])
def test_one_opening_comes_from_one_stick_where_a_stick_holds_it(turnable: bool) -> None:
    cutting = house(12, 6, 2, turnable=turnable, together=True)
    found = plan(cutting, Budget(8.0))
    assert not complaints(cutting, found)
    assert found.proven
    whole = {f"W{number}" for number in range(12)} - set(found.split_openings)
    assert whole
    for name in whole:
        sticks = [
            keys
            for layout in found.layouts
            for keys in layout.keys
            if any(k.startswith(f"{name}.") for k in keys)
        ]
        assert len(sticks) == 1


def test_the_same_cutting_gives_the_same_plan() -> None:
    cutting = house(30, 10, 5)
    first, second = plan(cutting, Budget(8.0)), plan(cutting, Budget(8.0))
    assert replace(first, seconds=0.0) == replace(second, seconds=0.0)


def test_of_plans_at_one_cost_the_fewest_sticks_are_taken() -> None:
    by_the_foot = tuple(StickKind(f"{feet} ft", Fraction(12 * feet), 100 * feet) for feet in (4, 8, 16))
    pieces = (Wanted("a", Fraction(40), 8), Wanted("b", Fraction(23), 4), Wanted("c", Fraction(47), 3))
    cutting = Cutting("casing", pieces, by_the_foot, kerf=Fraction(0), end_trim=Fraction(0))
    found = plan(cutting)
    assert found.proven
    assert not complaints(cutting, found)
    others = [
        replace(
            cutting,
            sticks=tuple(
                replace(one, available=count) for one, count in zip(by_the_foot, counts, strict=True)
            ),
        )
        for counts in product(range(sum(found.sticks.values())), repeat=3)
        if sum(counts) < sum(found.sticks.values())
        and sum(one.price_cents * count for one, count in zip(by_the_foot, counts, strict=True))
        == found.cost_cents
    ]
    for other in others:
        with pytest.raises(StockError):
            plan(other)


def test_waste_is_gathered_into_one_long_offcut() -> None:
    pieces = (Wanted("long", Fraction(60)), Wanted("middle", Fraction(41), 2), Wanted("short", Fraction(12)))
    cutting = Cutting(
        "casing", pieces, (StickKind("s", Fraction(101), 500),), end_trim=Fraction(0), kerf=Fraction(1, 2)
    )
    found = plan(cutting)
    assert found.proven
    assert not complaints(cutting, found)
    # 60 + 12 beside 41 + 41 would leave 28 and 18; 41 + 41 + 12 beside 60 leaves one of 40 1/2.
    assert sorted(layout.offcut for layout in found.layouts) == [Fraction(11, 2), Fraction(81, 2)]


def test_turned_stock_with_many_angles_is_no_dearer_than_first_fit_and_can_be_cut() -> None:
    cutting = house(30, 10, 4, turnable=True)
    angled = tuple(
        replace(
            piece,
            left=piece.left and Fraction(9, 4),
            right=piece.right and Fraction(5, 2) + Fraction(index % 3, 7),
        )
        for index, piece in enumerate(cutting.pieces)
    )
    cutting = replace(cutting, pieces=angled)
    found, first = plan(cutting, Budget(4.0)), plan(cutting, Budget(0))
    assert not complaints(cutting, found)
    assert found.bound_cents <= found.cost_cents <= first.cost_cents
    assert not found.proven
    assert found.stopped == "memory"
