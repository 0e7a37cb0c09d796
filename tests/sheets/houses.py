"""An invented house of any number of openings, worked out with its sticks and its shop."""

import random
from functools import cache

from longpoint.geometry import Foot, Opening, PlumbSides, Readings, Trim
from longpoint.lengths import Fraction
from longpoint.sheets.document import Paper
from longpoint.sheets.job import Job
from longpoint.shop import Section, ShopSettings, Wages, work
from longpoint.shop.house import CutList, House, HouseOpening, ProfileStock, build_openings, cutting_jobs
from longpoint.stock import Budget, StickKind, plan
from sheets.openings import CASING, DEPTH, TRIM
from sheets.styles import STYLED

ROOMS = ("Kitchen", "Front room", "Stair", "Back bedroom", "Bath & pantry")
FLOOR = Trim(CASING, Fraction(3, 16), floor_clearance=Fraction(1, 8))
SETTINGS = ShopSettings(wages=Wages(4200))


def _stock(profile: str, *sticks: tuple[int, int]) -> ProfileStock:
    kinds = (
        StickKind(f"sticks/{index}", Fraction(feet * 12), cents) for index, (feet, cents) in enumerate(sticks)
    )
    return ProfileStock(profile, tuple(kinds))


STOCK = (
    _stock("casing 2 1/2", (8, 920), (14, 1590), (16, 1780)),
    _stock("stool stock", (8, 2100), (12, 3150)),
    _stock("apron", (8, 740), (16, 1400)),
)


def opening(index: int) -> HouseOpening:
    """Windows on stools for the most part, here a picture frame, there a door."""
    dice = random.Random(index)
    sides = PlumbSides(*(Fraction(dice.randint(20 * 16, 60 * 16), 16) for _ in range(2)), Fraction(0))
    sides = PlumbSides(sides.jamb_width, sides.left_height, sides.left_height)
    kind = index % 6
    if kind == 5:
        door = PlumbSides(Fraction(32), Fraction(81), Fraction(81))
        found = Opening(f"D{index}", Readings(door), FLOOR, Foot.FLOOR)
    elif kind == 4:
        found = Opening(f"P{index}", Readings(sides), TRIM, Foot.PICTURE_FRAME)
    else:
        found = Opening(f"W{index}", Readings(sides, DEPTH, DEPTH), TRIM)
    return HouseOpening(found, ROOMS[index % 5], 2 if index % 7 == 0 else 1)


@cache
def cut_list(openings: int, stock: bool = True) -> CutList:
    house = House(tuple(opening(index) for index in range(1, openings + 1)), STOCK if stock else ())
    built = build_openings(house)
    return CutList(house, built, tuple(plan(job, Budget(0)) for job in cutting_jobs(house, built)))


@cache
def job(openings: int, paper: Paper = Paper.LETTER, stock: bool = True) -> Job:
    worked = cut_list(openings, stock)
    return Job(worked, work(worked, frozenset(Section), SETTINGS), "12 Alder Row", paper=paper)


@cache
def styled_job(paper: Paper = Paper.LETTER) -> Job:
    """A house of every style of trim, with no stock."""
    openings = tuple(HouseOpening(built.opening, name) for name, built in STYLED.items())
    house = House(openings, ())
    worked = CutList(house, build_openings(house), ())
    return Job(worked, work(worked, frozenset(Section), SETTINGS), "12 Alder Row", paper=paper)
