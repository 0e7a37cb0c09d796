"""Milliseconds of each section of the shop's work by size of house, and the money of many random jobs.

Run from the repository's top: PYTHONPATH=service python tests/bench/workshop.py
"""

import random
from time import perf_counter

from longpoint.geometry import Apron, Casing, Opening, PlumbSides, Readings, Stool, Trim
from longpoint.lengths import Fraction
from longpoint.shop import Section, ShopSettings, Wages, work
from longpoint.shop.house import CutList, House, HouseOpening, ProfileStock, build_openings, cutting_jobs
from longpoint.stock import Budget, StickKind, plan

SIZES = 30, 300
JOBS = 10_000
TRIM = Trim(
    Casing("casing", Fraction(5, 2), Fraction(5, 8)),
    Fraction(3, 16),
    stool=Stool("stool", Fraction(3, 4), Fraction(3, 4), Fraction(7, 8)),
    apron=Apron("apron", Fraction(5, 2), Fraction(5, 8)),
)
STICKS = tuple(StickKind(f"{feet} ft", Fraction(12 * feet), 95 * feet + 40) for feet in (8, 12, 16))
STOCK = tuple(ProfileStock(profile, STICKS) for profile in ("casing", "stool", "apron"))
SETTINGS = ShopSettings(wages=Wages(5837))


def cut_list(draw: random.Random, openings: int) -> CutList:
    """A house of windows of random sizes, laid out first-fit."""

    def window(number: int) -> HouseOpening:
        width, height = Fraction(draw.randint(240, 960), 16), Fraction(draw.randint(400, 1100), 16)
        depth = Fraction(draw.randint(40, 64), 16)
        readings = Readings(PlumbSides(width, height, height), depth, depth)
        return HouseOpening(Opening(f"W{number}", readings, TRIM), f"room {number % 7}")

    house = House(tuple(window(number) for number in range(openings)), STOCK)
    built = build_openings(house)
    plans = tuple(plan(job, Budget(seconds=0)) for job in cutting_jobs(house, built))
    return CutList(house, built, plans)


def milliseconds(house: CutList, wanted: set[Section]) -> float:
    def once() -> float:
        start = perf_counter()
        work(house, wanted, SETTINGS)
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
            f"{size:>8}{len(order.setups):>8}{order.setups_by_opening:>8}"
            + "".join(f"{time:>12.1f}" for time in times)
            + f"{milliseconds(house, set(Section)):>8.1f}"
        )


def money() -> None:
    """Every job a house of its own."""
    draw = random.Random(1)
    start = perf_counter()
    for _ in range(JOBS):
        house = cut_list(draw, draw.randint(1, 6))
        sheet = work(house, {Section.COST}, ShopSettings(wages=Wages(draw.randint(0, 20_000)))).cost
        assert sheet is not None
        sticks = sum(each.cost_cents for each in house.plans)
        assert sheet.cents.stock + sheet.cents.waste + sheet.cents.kept_offcut == sticks
        assert sheet.cents.total == sum(each.cents.total for each in sheet.openings)
        assert sheet.cents.total == sum(each.cents.total for each in sheet.rooms)
        assert all(line.cents == sum(line.by_opening) for line in sheet.lines)
    print(f"{JOBS} random jobs add up to the cent in every view; {perf_counter() - start:.0f} s")


if __name__ == "__main__":
    sections()
    money()
