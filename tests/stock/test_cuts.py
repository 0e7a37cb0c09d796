"""What a cut eats along the stick: worked figures, and small cuttings against everything tried."""

from dataclasses import replace
from fractions import Fraction
from math import cos, radians

import pytest

from longpoint.stock import Budget, Cutting, StickKind, StockError, Wanted, eaten, plan
from stock.brute import cheapest
from stock.checker import complaints
from stock.cuttings import CUT_TRADES, house, small_cutting_with_cuts

KERF = Fraction(1, 8)
WIDTH = Fraction(5, 2)
CUT = eaten(KERF, 45)
LEG = Wanted("leg", Fraction(80 * 16 + 5, 16), 2, right=WIDTH, right_eats=CUT)


def sticks_taken(length: Fraction, **rules: bool) -> int:
    """How many sticks of that length, untrimmed, two legs of 80 5/16 take."""
    cutting = Cutting(
        "casing", (LEG,), (StickKind("s", length, 100),), kerf=KERF, end_trim=Fraction(0), **rules
    )
    found = plan(cutting)
    assert not complaints(cutting, found)
    assert found.proven
    first_fit = plan(cutting, Budget(0))
    assert not complaints(cutting, first_fit)
    return sum(found.sticks.values())


def test_an_eighth_at_45_degrees_eats_0_1768_rounded_up_to_the_millionth() -> None:
    assert Fraction(176_777, 1_000_000) == CUT
    assert CUT - Fraction(1, 1_000_000) < Fraction(1, 8) / Fraction(cos(radians(45))) <= CUT


def test_a_square_cut_eats_the_kerf_and_a_tilted_blade_more() -> None:
    assert eaten(KERF, 0) == KERF
    assert eaten(KERF, 0, 45) == CUT
    assert eaten(KERF, 60) == 2 * KERF
    assert eaten(KERF, 45, 45) == 2 * KERF


def test_two_legs_that_share_a_miter_take_158_3018() -> None:
    exact = 2 * LEG.length - WIDTH + CUT
    assert round(float(exact), 4) == 158.3018
    assert sticks_taken(exact, turnable=True) == 1
    assert sticks_taken(exact - Fraction(1, 1_000_000), turnable=True) == 2


def test_from_158_1_4_the_second_leg_would_be_0_0518_short() -> None:
    short = 2 * LEG.length - WIDTH + CUT - Fraction(633, 4)
    assert round(float(short), 4) == 0.0518
    assert sticks_taken(Fraction(633, 4), turnable=True) == 2


def test_a_miter_that_cuts_a_piece_off_eats_as_much() -> None:
    exact = 2 * LEG.length + CUT
    assert sticks_taken(exact) == 1
    assert sticks_taken(exact - Fraction(1, 1_000_000)) == 2


def test_who_cuts_square_first_loses_the_kerf_alone() -> None:
    exact = 2 * LEG.length + KERF
    assert sticks_taken(exact, square_first=True) == 1
    assert sticks_taken(exact - Fraction(1, 1_000_000), square_first=True) == 2


def test_a_shared_cut_eats_the_same_where_pieces_are_cut_square_first() -> None:
    exact = 2 * LEG.length - WIDTH + CUT
    assert sticks_taken(exact, turnable=True, square_first=True) == 1
    assert sticks_taken(exact - Fraction(1, 1_000_000), turnable=True, square_first=True) == 2


def test_a_left_and_a_right_leg_are_alike_on_molded_stock() -> None:
    other = replace(
        LEG, key="other", quantity=1, left=WIDTH, right=Fraction(0), left_eats=CUT, right_eats=None
    )
    cutting = Cutting(
        "casing",
        (replace(LEG, quantity=1), other),
        (StickKind("s", 2 * LEG.length + CUT, 100),),
        kerf=KERF,
        end_trim=Fraction(0),
    )
    found = plan(cutting)
    assert not complaints(cutting, found)
    assert found.sticks == {"s": 1}


def test_ends_of_one_run_and_other_angles_share_no_cut() -> None:
    """A narrower piece at a sharper angle runs as far along the stick, and its miter is another."""
    other = replace(LEG, key="other", quantity=1, right_eats=eaten(KERF, 50))
    cutting = Cutting(
        "casing",
        (replace(LEG, quantity=1), other),
        (StickKind("s", 2 * LEG.length, 100),),
        kerf=KERF,
        end_trim=Fraction(0),
        turnable=True,
    )
    found = plan(cutting)
    assert not complaints(cutting, found)
    assert found.sticks == {"s": 2}


def test_the_offcut_is_what_the_last_cut_leaves() -> None:
    one = replace(LEG, quantity=1)
    cutting = Cutting(
        "casing", (one,), (StickKind("s", Fraction(100), 100),), kerf=KERF, end_trim=Fraction(0)
    )
    assert plan(cutting).layouts[0].offcut == 100 - LEG.length - CUT


def test_a_cut_that_eats_less_than_the_kerf_is_refused() -> None:
    cutting = Cutting(
        "casing", (replace(LEG, right_eats=Fraction(1, 16)),), (StickKind("s", Fraction(100), 100),)
    )
    with pytest.raises(StockError) as caught:
        plan(cutting)
    assert [(fault.field, fault.code) for fault in caught.value.faults] == [
        (("pieces", 0, "right_eats"), "below_kerf")
    ]


@pytest.mark.parametrize("trade", CUT_TRADES)
def test_small_cuttings_are_planned_at_the_cheapest_cost_there_is(trade: str) -> None:
    planned = proven = 0
    for seed in range(60):
        cutting = small_cutting_with_cuts(trade, seed)
        cheapest_cost = cheapest(cutting)
        try:
            found = plan(cutting)
        except StockError:
            assert cheapest_cost is None, f"{trade} {seed} is refused, and costs {cheapest_cost}"
            continue
        planned += 1
        assert cheapest_cost is not None
        assert not complaints(cutting, found), f"{trade} {seed}"
        assert found.bound_cents <= cheapest_cost <= found.cost_cents, f"{trade} {seed}"
        proven += found.proven
    assert planned > 50
    assert proven > 0.95 * planned, f"{proven} of {planned} are proven"


@pytest.mark.parametrize("turnable", [False, True])
def test_a_house_whose_cuts_eat_what_they_do_is_proven(turnable: bool) -> None:
    cutting = house(30, 10, 1, turnable=turnable, eats=True)
    found = plan(cutting, Budget(4.0))
    assert not complaints(cutting, found)
    assert found.proven
