"""An invented house of any number of openings, worked out with its sticks and its shop."""

import random
from functools import cache

from geometry.builders import read
from longpoint.geometry import Bottom, Opening, PlumbSides, Trim
from longpoint.lengths import Fraction
from longpoint.sheets.document import Paper
from longpoint.sheets.house import SheetHouse
from longpoint.shop import Section, Shop, Wages, work
from longpoint.shop.build import CutList, build_openings, cuttings
from longpoint.shop.yard import Stick, Stock
from longpoint.stock import Budget, plan
from longpoint.values import Cents
from sheets.openings import CASING, DEPTH, TRIM
from sheets.styles import STYLED
from shop.builders import Entry, house_of

ROOMS = ("Kitchen", "Front room", "Stair", "Back bedroom", "Bath & pantry")
FLOOR = Trim(CASING, Fraction(3, 16), floor_clearance=Fraction(1, 8))
SETTINGS = Shop(wages=Wages(Cents(4200)))


def _stock(profile: str, *sticks: tuple[int, int]) -> Stock:
    sold = (Stick(Fraction(feet * 12), Cents(cents)) for feet, cents in sticks)
    return Stock(profile=profile, sticks=tuple(sold))


STOCK = (
    _stock("casing 2 1/2", (8, 920), (14, 1590), (16, 1780)),
    _stock("stool stock", (8, 2100), (12, 3150)),
    _stock("apron", (8, 740), (16, 1400)),
)


def opening(index: int) -> Entry:
    """Windows on stools for the most piece, here a picture frame, there a door."""
    dice = random.Random(index)
    sides = PlumbSides(*(Fraction(dice.randint(20 * 16, 60 * 16), 16) for _ in range(2)), Fraction(0))
    sides = PlumbSides(sides.jamb_width, sides.left_jamb_height, sides.left_jamb_height)
    kind = index % 6
    if kind == 5:
        door = PlumbSides(Fraction(32), Fraction(81), Fraction(81))
        found = Opening(mark=f"D{index}", readings=read(door), trim=FLOOR, bottom=Bottom.FLOOR)
    elif kind == 4:
        found = Opening(mark=f"P{index}", readings=read(sides), trim=TRIM, bottom=Bottom.CASING)
    else:
        found = Opening(
            mark=f"W{index}", readings=read(sides, left_depth=DEPTH, right_depth=DEPTH), trim=TRIM
        )
    return Entry(found, ROOMS[index % 5], 2 if index % 7 == 0 else 1)


@cache
def cut_list(openings: int, stock: bool = True) -> CutList:
    entries = (opening(index) for index in range(1, openings + 1))
    house = house_of(entries, stock=STOCK if stock else ())
    built = build_openings(house)
    return CutList(house, built, tuple(plan(cutting, Budget(0)) for cutting in cuttings(house, built)))


@cache
def sheet_house(openings: int, paper: Paper = Paper.LETTER, stock: bool = True) -> SheetHouse:
    worked = cut_list(openings, stock)
    return SheetHouse(worked, work(worked, frozenset(Section), SETTINGS), "12 Alder Row", paper=paper)


@cache
def styled_sheet_house(paper: Paper = Paper.LETTER) -> SheetHouse:
    """A house of every style of trim, with no stock."""
    house = house_of(Entry(built.opening, name) for name, built in STYLED.items())
    worked = CutList(house, build_openings(house), ())
    return SheetHouse(worked, work(worked, frozenset(Section), SETTINGS), "12 Alder Row", paper=paper)
