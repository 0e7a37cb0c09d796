"""Money: every view of a cutting adds up to the same cent."""

from __future__ import annotations

from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.shop import (
    DEFAULTS,
    CostSheet,
    CostTotals,
    MaterialCode,
    Package,
    Rates,
    SawOrder,
    Task,
    Wages,
    amounts,
    apportion,
    cost_sheet,
    hours,
    materials,
    saw_order,
)
from longpoint.shop.apportion import round_half_up
from longpoint.shop.build import CutList
from longpoint.shop.cost import CATEGORIES
from longpoint.shop.packages import SOLD
from longpoint.values import Cents
from shop.builders import Entry, F, random_house, stock, window, worked_out

CUTTINGS = 10_000
# Houses are dear to draw, so each is costed at this many random sets of rates, prices and wages.
SETTINGS_A_HOUSE = 20


def costed(
    house: CutList, rates: Rates, packages: tuple[Package, ...], wages: Wages, order: SawOrder | None = None
) -> CostSheet:
    counted = amounts(house, rates)
    return cost_sheet(
        house,
        counted,
        materials(counted, rates, packages),
        hours(counted, order or saw_order(house), rates),
        wages,
    )


def random_settings(random: Random) -> tuple[Rates, tuple[Package, ...], Wages]:
    named = random.sample(sorted(set(DEFAULTS) - {"outer_nail", "inner_nail"}), 5)
    rates = Rates(**{name: DEFAULTS[name].value * F(random.randint(1, 30), 10) for name in named})
    packages = tuple(
        Package(each.material, each.name, each.size, cents(random, 0, 1, 7, random.randint(100, 9999)))
        for each in SOLD
        if random.random() < 0.8
    )
    by_task = {Task.CUT: Cents(random.randint(0, 20_000))} if random.random() < 0.3 else {}
    return rates, packages, Wages(cents(random, 0, 3333, random.randint(1000, 15_000)), by_task)


def cents(random: Random, *amounts: int) -> Cents | None:
    """One of these, or none."""
    chosen = random.choice((None, *amounts))
    return None if chosen is None else Cents(chosen)


def check_views(sheet: CostSheet, house: CutList) -> None:
    bought = sum(plan.cost_cents for plan in house.plans)
    assert sheet.total.stock + sheet.total.waste + sheet.total.kept_offcut == bought
    assert all(line.amount == sum(line.by_opening) for line in sheet.lines)
    assert all(cents >= 0 for line in sheet.lines for cents in line.by_opening)
    assert sheet.total.total == sum(line.amount for line in sheet.lines)
    for view in (sheet.openings, sheet.rooms):
        for category in (*CATEGORIES, "total"):
            assert sum(getattr(each.amounts, category) for each in view) == getattr(sheet.total, category)
    assert sum(room.openings for room in sheet.rooms) == sum(one.count for one in house.openings)


@pytest.mark.parametrize("piece", range(4))
def test_ten_thousand_random_cuttings_add_up_to_the_cent(piece: int) -> None:
    random = Random(piece)
    for _ in range(CUTTINGS // 4 // SETTINGS_A_HOUSE):
        house = random_house(random, most=4)
        order = saw_order(house)
        for _ in range(SETTINGS_A_HOUSE):
            check_views(costed(house, *random_settings(random), order), house)


@given(st.integers(0, 10**9), st.lists(st.fractions(0, 1000, max_denominator=10**6), min_size=1, max_size=30))
def test_a_share_is_its_exact_piece_rounded_down_or_up(cents: int, weights: list[object]) -> None:
    shares = apportion(cents, weights)
    assert sum(shares) == cents
    total = sum(weights)
    if total:
        assert all(
            abs(share - cents * weight / total) < 1 for share, weight in zip(shares, weights, strict=True)
        )
        heavier = sorted(zip(weights, shares, strict=True))
        assert [share for _, share in heavier] == sorted(shares)


def test_worked_shares() -> None:
    assert apportion(100, [F(1)] * 3) == (34, 33, 33)
    assert apportion(100, [F(1), F(1), F(4)]) == (17, 17, 66)
    assert apportion(7, [F(0), F(0)]) == (4, 3)
    assert apportion(5, []) == ()
    assert (round_half_up(F(5, 2)), round_half_up(F(249, 100))) == (3, 2)


def test_sticks_are_shared_by_length_used_whichever_stick_they_came_from() -> None:
    # Two like windows pay alike for casing, though first-fit lays their pieces on sticks of different waste.
    house = worked_out(
        tuple(Entry(window(mark, F(30), F(46))) for mark in ("W1", "W2", "W3")),
        stocks=(stock("casing"),),
    )
    sheet = costed(house, Rates(), (), Wages())
    (used,) = [line for line in sheet.lines if line.category == "stock"]
    assert max(used.by_opening) - min(used.by_opening) <= 1
    (plan,) = house.plans
    inches = 3 * (2 * (F(46) + F(3, 16) + F(5, 2)) + F(30) + 2 * (F(3, 16) + F(5, 2)))
    exact = sum(
        F(layout.price_cents * layout.times) / layout.length * sum(placed.length for placed in layout.placed)
        for layout in plan.layouts
    )
    assert abs(used.amount - exact) <= 1
    assert sum(placed.length * layout.times for layout in plan.layouts for placed in layout.placed) == inches


def test_labor_is_minutes_at_the_callers_wage() -> None:
    house = worked_out((Entry(window("W1", F(30), F(46))),))
    sheet = costed(house, Rates(measure_minutes=15.0), (), Wages(Cents(6000), {Task.CUT: Cents(9000)}))
    labor = {line.name: line.amount for line in sheet.lines if line.category == "labor"}
    assert labor["measure"] == 1500
    at_the_saw = saw_order(house).sum
    assert labor["cut"] == round_half_up((at_the_saw.minutes - at_the_saw.setting_minutes) * 9000 / 60)
    assert labor["set_up"] == round_half_up(at_the_saw.setting_minutes * 6000 / 60)
    assert sheet.total.labor == sum(labor.values())


def test_what_has_no_price_is_named_and_costs_nothing() -> None:
    house = worked_out((Entry(window("W1", F(30), F(46))),))
    sheet = costed(house, Rates(), (Package(MaterialCode.CAULK, "tube", 10, Cents(450)),), Wages())
    unpriced = {(each.category, each.name) for each in sheet.unpriced}
    assert ("consumable", "caulk") not in unpriced
    assert {
        ("consumable", "glue"),
        ("consumable", "nails_6d"),
        ("labor", "caulk"),
        ("labor", "cut"),
    } <= unpriced
    assert sheet.total.labor == 0
    assert [line.name for line in sheet.lines if line.category == "consumable"] == ["caulk"]
    assert sheet.total.consumable % 450 == 0


def test_rooms_are_sums_of_their_openings() -> None:
    house = worked_out(
        (
            Entry(window("K1", F(30), F(46)), "Kitchen", 2),
            Entry(window("H1", F(24), F(46)), "Hall"),
            Entry(window("K2", F(36), F(46)), "Kitchen"),
        )
    )
    sheet = costed(house, Rates(), (), Wages(Cents(5000)))
    kitchen, hall = sheet.rooms
    assert (kitchen.room, kitchen.openings, hall.room, hall.openings) == ("Kitchen", 3, "Hall", 1)
    assert kitchen.amounts.total == sheet.openings[0].amounts.total + sheet.openings[2].amounts.total
    assert hall.amounts == sheet.openings[1].amounts
    assert isinstance(sheet.total, CostTotals)
