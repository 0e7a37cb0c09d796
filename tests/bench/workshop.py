"""Milliseconds of each section of the shop's work by size of house, and the money of many random jobs.

Run from the repository's top: PYTHONPATH=service python tests/bench/workshop.py
"""

import random
from time import perf_counter

from longpoint.geometry import Apron, Casing, Readings, Stool, Trim
from longpoint.lengths import Fraction, Length, PositiveLength
from longpoint.shop import Section, Shop, Wages, work
from longpoint.shop.build import CutList, build_openings, cutting_jobs
from longpoint.shop.house import House, HouseOpening
from longpoint.shop.yard import Stick, Stock
from longpoint.stock import Budget, plan
from longpoint.values import Price

SIZES = 30, 300
JOBS = 10_000
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
        readings = Readings(jamb_width=width, leg_height=height, jamb_depth=depth)
        return HouseOpening(mark=f"W{number}", readings=readings, trim="trim", room=f"room {number % 7}")

    windows = tuple(window(number) for number in range(openings))
    house = House(openings=windows, trim_specs={"trim": TRIM}, stock=STOCK)
    built = build_openings(house)
    plans = tuple(plan(job, Budget(seconds=0)) for job in cutting_jobs(house, built))
    return CutList(house, built, plans)


def milliseconds(house: CutList, wanted: set[Section]) -> float:
    def once() -> float:
        start = perf_counter()
        work(house, wanted, SHOP)
        return perf_counter() - start

    return min(once() for _ in range(5)) * 1000


def sections() -> None:
    print(
        f"{'openings':>8}{'setups':>8}{'singly':>8}"
        + "".join(f"{section:>12}" for section in Section)
        + f"{'all':>8}"
    )
    for size in SIZES:
        house = cut_list(random.Random(size), size)
        order = work(house, {Section.SAW_ORDER}).saw_order
        assert order is not None
        times = [milliseconds(house, {section}) for section in Section]
        print(
            f"{size:>8}{order.setup_count:>8}{order.setup_count_by_opening:>8}"
            + "".join(f"{time:>12.1f}" for time in times)
            + f"{milliseconds(house, set(Section)):>8.1f}"
        )


def money() -> None:
    """Every job a house of its own."""
    draw = random.Random(1)
    start = perf_counter()
    for _ in range(JOBS):
        house = cut_list(draw, draw.randint(1, 6))
        sheet = work(house, {Section.COST}, Shop(wages=Wages(Price(draw.randint(0, 20_000))))).cost
        assert sheet is not None
        sticks = sum(each.cost_cents for each in house.plans)
        assert sheet.total.stock + sheet.total.waste + sheet.total.kept_offcut == sticks
        assert sheet.total.total == sum(each.amounts.total for each in sheet.openings)
        assert sheet.total.total == sum(each.amounts.total for each in sheet.rooms)
        assert all(line.amount == sum(line.by_opening) for line in sheet.lines)
    print(f"{JOBS} random jobs add up to the cent in every view; {perf_counter() - start:.0f} s")


if __name__ == "__main__":
    sections()
    money()
