"""What stays free beside pieces and at the ends of sticks: the cheapest cost against everything tried."""

from dataclasses import replace
from fractions import Fraction
from random import Random

import pytest

from longpoint.stock import Budget, Cutting, Standing, StickKind, StockError, Wanted, plan, replan
from stock.brute import cheapest
from stock.checker import complaints
from stock.cuttings import CUT_TRADES, house, small_cutting_with_cuts


def with_slack(cutting: Cutting, seed: int) -> Cutting:
    """The cutting with an allowance for some pieces, or all, and a clamp for half of the cuttings."""
    random = Random(seed)
    some = [Fraction(0), Fraction(1, 16), Fraction(1, 2), Fraction(3)]
    same = random.choice([None, *some])
    pieces = tuple(
        replace(piece, allowance=random.choice(some) if same is None else same) for piece in cutting.pieces
    )
    clamp = random.choice([Fraction(0), Fraction(0), Fraction(1), Fraction(6)])
    return replace(cutting, pieces=pieces, clamp_length=clamp)


@pytest.mark.parametrize("trade", CUT_TRADES)
def test_small_cuttings_with_slack_are_planned_at_the_cheapest_cost_there_is(trade: str) -> None:
    planned = dearer = 0
    for seed in range(40):
        bare = small_cutting_with_cuts(trade, seed)
        cutting = with_slack(bare, seed)
        cheapest_cost = cheapest(cutting)
        try:
            found = plan(cutting)
        except StockError:
            assert cheapest_cost is None, f"{trade} {seed} is refused, and costs {cheapest_cost}"
            continue
        planned += 1
        assert not complaints(cutting, found), f"{trade} {seed}"
        assert cheapest_cost is not None
        assert found.bound_cents <= cheapest_cost <= found.cost_cents, f"{trade} {seed}"
        assert found.cost_cents == cheapest_cost, f"{trade} {seed}"
        assert found.proven, f"{trade} {seed} is not proven"
        dearer += found.cost_cents > plan(bare).cost_cents
    assert planned > 15
    assert dearer > 3


def cutting_of(length: Fraction, **more: Fraction) -> Cutting:
    allowance = more.pop("allowance", Fraction(0))
    pieces = (Wanted("leg", Fraction(40), 2, allowance=allowance),)
    return Cutting("casing", pieces, (StickKind("s", length, 100),), end_trim=Fraction(1, 2), **more)


def test_two_pieces_and_their_allowances_just_fit() -> None:
    # 1/2 trim, 40, 1/8 kerf with 1/4 beside it, 40, 1/4, 1/2 trim: 81 5/8.
    just = cutting_of(Fraction(653, 8), allowance=Fraction(1, 4))
    assert plan(just).cost_cents == 100
    (layout,) = plan(just).layouts
    assert [placed.start for placed in layout.placed] == [Fraction(1, 2), Fraction(327, 8)]
    assert plan(cutting_of(Fraction(6529, 80), allowance=Fraction(1, 4))).cost_cents == 200


def test_what_the_clamp_holds_lies_past_the_last_cut() -> None:
    # 1/2 trim, 40, 1/8, 40, 1/8, 5 in the clamp: 85 3/4; the end trim is of what the clamp holds.
    just = cutting_of(Fraction(343, 4), clamp_length=Fraction(5))
    assert plan(just).cost_cents == 100
    assert plan(just).layouts[0].offcut == 5
    assert plan(cutting_of(Fraction(8574, 100), clamp_length=Fraction(5))).cost_cents == 200


def test_sticks_stay_where_the_slack_is_what_it_was_and_go_where_it_grew() -> None:
    cutting = cutting_of(Fraction(90), allowance=Fraction(1, 4), clamp_length=Fraction(6))
    stands = [
        Standing(f"S{number}", replace(layout, keys=(keys,)))
        for layout in plan(cutting).layouts
        for number, keys in enumerate(layout.keys)
    ]
    assert replan(cutting, stands).kept == ("S0",)
    assert replan(replace(cutting, clamp_length=Fraction(10)), stands).kept == ()
    wider = replace(cutting, pieces=(replace(cutting.pieces[0], allowance=Fraction(1, 2)),))
    assert replan(wider, stands).kept == ()


@pytest.mark.parametrize("seed", range(3))
def test_a_house_of_thirty_windows_with_slack_is_proven(seed: int) -> None:
    bare = house(30, 10, seed, eats=True)
    pieces = tuple(replace(piece, allowance=Fraction(1, 8)) for piece in bare.pieces)
    cutting = replace(bare, pieces=pieces, clamp_length=Fraction(6))
    found = plan(cutting, Budget(2.0))
    assert not complaints(cutting, found)
    assert found.proven


def test_an_allowance_longer_than_the_piece_and_a_clamp_longer_than_the_stick_are_named() -> None:
    with pytest.raises(StockError) as caught:
        plan(cutting_of(Fraction(90), allowance=Fraction(41), clamp_length=Fraction(90)))
    assert {(fault.field, fault.code) for fault in caught.value.faults} == {
        (("clamp_length",), "clamp_length_exceeds_stock"),
        (("pieces", 0, "allowance"), "allowance_exceeds_piece"),
    }
    with pytest.raises(StockError) as caught:
        plan(cutting_of(Fraction(90), allowance=Fraction(-1), clamp_length=Fraction(-1)))
    assert {(fault.field, fault.code) for fault in caught.value.faults} == {
        (("clamp_length",), "negative"),
        (("pieces", 0, "allowance"), "negative"),
    }
