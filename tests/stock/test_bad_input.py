"""Jobs that make no sense, and cuttings that only look so."""

from dataclasses import replace
from fractions import Fraction

import pytest

from longpoint.stock import Budget, Cutting, StickKind, StickOnHand, StockError, Stretch, Wanted, plan
from stock.checker import complaints
from stock.cuttings import YARD, house

STANDARD = Budget()
LEG = Wanted("leg", Fraction(48), 3)


def faults(cutting: Cutting, budget: Budget = STANDARD) -> list[tuple[tuple[str | int, ...], str]]:
    with pytest.raises(StockError) as caught:
        plan(cutting, budget)
    assert all(str(fault.detail) for fault in caught.value.faults)
    return [(fault.field, fault.code) for fault in caught.value.faults]


def test_no_pieces_cost_nothing() -> None:
    found = plan(Cutting("casing", (), YARD))
    assert (found.cost_cents, found.bound_cents, found.layouts, found.proven) == (0, 0, (), True)


def test_every_fault_is_told_at_once() -> None:
    cutting = Cutting(
        "casing",
        (
            LEG,
            replace(LEG, length=Fraction(0)),
            Wanted("head", Fraction(3), 0, left=Fraction(2), right=Fraction(2)),
        ),
        (
            StickKind("a", Fraction(-1), -5, -1),
            StickKind("a", Fraction(9), 5, None, (Stretch(Fraction(5), Fraction(10)),)),
        ),
        (StickOnHand("r", Fraction(10), end_trim=Fraction(-1)),),
        kerf=Fraction(-1),
        end_trim=Fraction(-1),
        keep_length=Fraction(-1),
    )
    assert faults(cutting, Budget(31)) == [
        (("kerf",), "negative"),
        (("end_trim",), "negative"),
        (("keep_length",), "negative"),
        (("pieces", 1, "key"), "duplicate"),
        (("pieces", 1, "length"), "not_positive"),
        (("pieces", 2, "quantity"), "not_positive"),
        (("pieces", 2, "length"), "miters_cross"),
        (("sticks", 0, "length"), "not_positive"),
        (("sticks", 0, "price_cents"), "negative"),
        (("sticks", 0, "available"), "negative"),
        (("sticks", 1, "key"), "duplicate"),
        (("sticks", 1, "defects", 0), "outside_stick"),
        (("lengths_on_hand", 0, "end_trim"), "negative"),
        (("budget", "seconds"), "out_of_range"),
    ]


def test_pieces_with_nothing_to_cut_them_from() -> None:
    assert faults(Cutting("casing", (LEG,), ())) == [(("sticks",), "no_stock")]


def test_a_piece_longer_than_every_stick_is_named_with_what_is_short() -> None:
    cutting = Cutting("casing", (LEG, Wanted("long", Fraction(200))), YARD)
    with pytest.raises(StockError) as caught:
        plan(cutting)
    (fault,) = caught.value.faults
    assert (fault.field, fault.code) == (("pieces", 1, "length"), "piece_too_long")
    assert "9 in short" in str(fault.detail)


def test_a_defect_shortens_the_longest_clear_stretch() -> None:
    stick = StickKind("knotty", Fraction(96), 800, None, (Stretch(Fraction(40), Fraction(41)),))
    assert faults(Cutting("casing", (Wanted("rail", Fraction(55)),), (stick,))) == [
        (("pieces", 0, "length"), "piece_too_long")
    ]
    assert plan(Cutting("casing", (Wanted("rail", Fraction(109, 2)),), (stick,))).proven


def test_a_kerf_as_long_as_the_sticks() -> None:
    assert faults(Cutting("casing", (LEG,), YARD, kerf=Fraction(192))) == [(("kerf",), "kerf_exceeds_stock")]


def test_too_little_stock_says_by_how_much() -> None:
    cutting = Cutting("casing", (LEG,), (StickKind("short", Fraction(97), 800, 1),))
    with pytest.raises(StockError) as caught:
        plan(cutting)
    (fault,) = caught.value.faults
    assert (fault.field, fault.code) == (("sticks",), "not_enough_stock")
    assert "falls 48 1/4 in short" in str(fault.detail)  # 3 × 48 1/8 against 97 - 1 + 1/8


def test_stock_long_enough_that_cannot_be_cut_so_names_the_pieces() -> None:
    cutting = Cutting("casing", (LEG,), (StickKind("short", Fraction(85), 800, 2),))
    with pytest.raises(StockError) as caught:
        plan(cutting)
    (fault,) = caught.value.faults
    assert fault.code == "not_enough_stock"
    assert "1 of leg, 48 in long" in str(fault.detail)


def test_a_plan_is_found_where_first_fit_runs_out_of_the_long_sticks() -> None:
    pieces = (Wanted("a", Fraction(50), 2), Wanted("b", Fraction(30), 2), Wanted("c", Fraction(21), 3))
    cutting = Cutting(
        "casing",
        pieces,
        (StickKind("s", Fraction(103), 800, 2),),
        (StickOnHand("r", Fraction(25)),),
        kerf=Fraction(0),
    )
    found = plan(cutting)
    assert not complaints(cutting, found)


def test_free_stock_costs_nothing() -> None:
    found = plan(Cutting("casing", (LEG,), tuple(replace(stick, price_cents=0) for stick in YARD)))
    assert (found.cost_cents, found.proven) == (0, True)


def test_the_cheaper_of_two_equal_lengths_is_taken_as_far_as_it_goes() -> None:
    sticks = (StickKind("dear", Fraction(96), 800), StickKind("cheap", Fraction(96), 500, 1))
    found = plan(Cutting("casing", (Wanted("leg", Fraction(60), 3),), sticks))
    assert found.sticks == {"dear": 2, "cheap": 1}
    assert found.proven


def test_a_million_pieces() -> None:
    cutting = Cutting(
        "casing", tuple(Wanted(f"leg {n}", Fraction(300 + 17 * n, 8), 100_000) for n in range(10)), YARD
    )
    found = plan(cutting, Budget(4.0))
    assert sum(len(keys) for layout in found.layouts for keys in layout.keys) == 1_000_000
    assert found.gap < 0.001


def test_ten_thousand_lengths() -> None:
    cutting = Cutting(
        "casing", tuple(Wanted(str(n), Fraction(24_000 + 6 * n, 1000)) for n in range(10_000)), YARD
    )
    found = plan(cutting, Budget(1.0))
    assert not complaints(cutting, found)
    assert found.gap < 0.05


def test_more_pieces_than_are_planned_at_once() -> None:
    assert faults(Cutting("casing", (replace(LEG, quantity=3_000_000),), YARD)) == [(("pieces",), "too_many")]


def test_no_time_at_all_still_gives_a_plan_that_can_be_cut() -> None:
    cutting = house(30, 10, 1)
    found = plan(cutting, Budget(0))
    assert not complaints(cutting, found)
    assert (found.method, found.stopped, found.proven) == ("first_fit", "effort", False)
