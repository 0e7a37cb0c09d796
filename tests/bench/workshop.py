"""Milliseconds of each section of the shop's work by size of house; minutes, sticks picked up and settings of the three
saw orders over many houses; the money of many random cuttings.

Run from the repository's top: PYTHONPATH=service python tests/bench/workshop.py
"""

import random
from collections import Counter
from time import perf_counter

from longpoint.geometry import Apron, Casing, Readings, Stool, Trim
from longpoint.lengths import Fraction, Length, PositiveLength
from longpoint.shop import DEFAULTS, OrderKind, Rates, Section, Shop, Wages, saw_order, work
from longpoint.shop.build import CutList
from longpoint.shop.house import House, HouseOpening
from longpoint.shop.planning import Planning
from longpoint.shop.yard import Stick, Stock
from longpoint.values import Price

SIZES = 30, 300
CUTTINGS = 10_000
HOUSES = 100
SWINGS = ("detent_seconds", "angle_seconds", "bevel_seconds")
CASING = Casing(PositiveLength.of("2 1/2 in"), PositiveLength.of("5/8 in"))
TRIM = Trim(
    CASING,
    Length.of("3/16 in"),
    stool=Stool(PositiveLength.of("3/4 in"), Length.of("3/4 in"), Length.of("7/8 in")),
    apron=Apron(CASING.width, CASING.thickness),
)
STICKS = tuple(Stick(PositiveLength.of(f"{feet} ft"), Price(95 * feet + 40)) for feet in (8, 12, 16))
STOCK = tuple(Stock(profile=profile, sticks=STICKS) for profile in ("casing", "stool", "apron"))
SHOP = Shop(wages=Wages(Price(5837)))


def cut_list(draw: random.Random, openings: int) -> CutList:
    """A house of windows of random sizes, laid out first-fit."""

    def window(number: int) -> HouseOpening:
        width, height, depth = (
            PositiveLength(Fraction(draw.randint(least, most), 16))
            for least, most in ((240, 960), (400, 1100), (40, 64))
        )
        readings = Readings(jamb_width=width, jamb_height=height, jamb_depth=depth)
        return HouseOpening(mark=f"W{number}", readings=readings, trim="trim", room=f"room {number % 7}")

    windows = tuple(window(number) for number in range(openings))
    house = House(openings=windows, trim_specs={"trim": TRIM}, stock=STOCK)
    return Planning(house, searched=False).cut_list


def milliseconds(house: CutList, wanted: set[Section]) -> float:
    def once() -> float:
        start = perf_counter()
        work(house, wanted, SHOP)
        return perf_counter() - start

    return min(once() for _ in range(5)) * 1000


def sections() -> None:
    print(f"{'openings':>8}" + "".join(f"{section:>12}" for section in Section) + f"{'all':>8}")
    for size in SIZES:
        house = cut_list(random.Random(size), size)
        times = [milliseconds(house, {section}) for section in Section]
        print(
            f"{size:>8}"
            + "".join(f"{time:>12.1f}" for time in times)
            + f"{milliseconds(house, set(Section)):>8.1f}"
        )


def orders() -> None:
    """The three orders of random houses, and which is the quickest at the usual rates and at others."""
    draw = random.Random(7)
    houses = [cut_list(draw, draw.randint(1, 30)) for _ in range(HOUSES)]
    print(f"\n{HOUSES} houses of 1 to 30 windows: the mean of each order")
    print(f"{'':>20}{'minutes':>10}{'cuts':>8}{'picked up':>11}{'settings':>10}{'open':>6}{'quickest':>10}")
    found = [saw_order(house) for house in houses]
    for at, kind in enumerate(OrderKind):
        sums = [order.orders[at] for order in found]
        means = [
            sum(float(getattr(one, name)) for one in sums) / HOUSES
            for name in ("minutes", "cuts", "pick_ups", "settings", "open_at_once")
        ]
        quickest = sum(order.order is kind for order in found)
        minutes, cuts, pick_ups, settings, open_at_once = means
        print(
            f"{kind:>20}{minutes:>10.1f}{cuts:>8.1f}{pick_ups:>11.1f}{settings:>10.1f}{open_at_once:>6.1f}"
            f"{quickest:>10}"
        )
    print("\nthe quickest, by how many times as long the saw takes to swing and tilt")
    for times in (1, 2, 3, 4, 6, 10):
        slow = {name: float(DEFAULTS[name].value) * times for name in SWINGS}
        shop = Shop(rates=Rates(**slow))
        counts = Counter(saw_order(house, shop).order for house in houses)
        print(f"{times:>4} x  " + ", ".join(f"{kind}: {counts[kind]}" for kind in OrderKind))


def money() -> None:
    """Every cutting a house of its own."""
    draw = random.Random(1)
    start = perf_counter()
    for _ in range(CUTTINGS):
        house = cut_list(draw, draw.randint(1, 6))
        sheet = work(house, {Section.COST}, Shop(wages=Wages(Price(draw.randint(0, 20_000))))).cost
        assert sheet is not None
        sticks = sum(each.cost_cents for each in house.plans)
        assert sheet.total.stock + sheet.total.waste + sheet.total.kept_offcut == sticks
        assert sheet.total.total == sum(each.amounts.total for each in sheet.openings)
        assert sheet.total.total == sum(each.amounts.total for each in sheet.rooms)
        assert all(line.amount == sum(line.by_opening) for line in sheet.lines)
    print(f"{CUTTINGS} random cuttings add up to the cent in every view; {perf_counter() - start:.0f} s")


if __name__ == "__main__":
    sections()
    orders()
    money()
