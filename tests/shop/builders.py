"""Houses for the shop's tests: drawn at random from trims and readings a carpenter could meet."""

from __future__ import annotations

from random import Random

from longpoint.geometry import (
    Apron,
    ApronEnds,
    BackBand,
    BoxCorners,
    Casing,
    Door,
    DoorStop,
    Foot,
    Hand,
    HeadStrip,
    HeadStyle,
    JambExtension,
    Opening,
    Plinth,
    PlumbSides,
    Polygon,
    Readings,
    Stool,
    StoolEnds,
    StripEnds,
    Trim,
    Wall,
    WallAnswer,
)
from longpoint.lengths import Fraction
from longpoint.shop.house import CutList, House, HouseOpening, ProfileStock, build_openings, cutting_jobs
from longpoint.stock import Budget, Remnant, StickKind, plan

F = Fraction
CASING = Casing("casing", F(5, 2), F(5, 8))
STOOL = Stool("stool stock", F(3, 4), F(3, 4), F(7, 8))
APRON = Apron("apron", F(5, 2), F(5, 8))
TRIM = Trim(CASING, F(3, 16), stool=STOOL, apron=APRON)
SAME_STOCK = Trim(CASING, F(3, 16), stool=STOOL, apron=Apron("casing", F(5, 2), F(5, 8)))
FLAT = Trim(Casing("flat", F(7, 2), F(3, 4)), F(1, 4))
BUTTED = Trim(
    CASING,
    F(1, 4),
    HeadStyle.BUTTED,
    head_casing=Casing("flat", F(7, 2), F(3, 4)),
    overhang=F(1, 2),
    plinth=Plinth("block", F(3), F(11, 2), F(1)),
)
DEPTH = F(25, 8)
STICKS = tuple(
    StickKind(f"{feet} ft", F(12 * feet), cents) for feet, cents in ((8, 920), (12, 1310), (16, 1790))
)
ROOMS = ("Kitchen", "Hall", "Bedroom")
HEAD = Casing("flat", F(7, 2), F(3, 4))
DRESSED = Trim(
    CASING,
    F(3, 16),
    HeadStyle.BUTTED,
    HEAD,
    stool=Stool("stool stock", F(1), F(3, 4), F(7, 8), ends=StoolEnds.MITRED_RETURN),
    apron=Apron("apron", F(5, 2), F(5, 8), ApronEnds.ANGLED),
    fillet=HeadStrip("strip", F(1, 2), F(1), F(1, 2), StripEnds.MITRED_RETURN),
    cap=HeadStrip("strip", F(3, 4), F(3, 2), F(3, 4), StripEnds.MITRED_RETURN),
)
EXTENDED = Trim(
    CASING,
    F(3, 16),
    stool=STOOL,
    apron=APRON,
    extension=JambExtension("strip", F(3, 4)),
    back_band=BackBand("strip", F(3, 4), F(1)),
)
HUNG = Trim(
    CASING, F(1, 4), floor_clearance=F(1, 8), stop=DoorStop("strip", F(5, 4), F(3, 8), BoxCorners.MITRED)
)
PROFILES = ("casing", "stool stock", "apron", "flat", "block", "strip", "jamb")


def window(
    mark: str, width: Fraction, height: Fraction, depth: Fraction = DEPTH, trim: Trim = TRIM
) -> Opening:
    return Opening(mark, Readings(PlumbSides(width, height, height), depth, depth), trim)


def hung_door(mark: str, width: Fraction) -> Opening:
    """A door in its own jamb, stops and casing to the floor."""
    return Opening(mark, Readings(Door(width, F(80), F(7, 4), Hand.LEFT)), HUNG, Foot.FLOOR)


def extended(mark: str, width: Fraction, height: Fraction, *proud: Fraction) -> Opening:
    """A window whose wall stands proud at the four corners, anticlockwise from the bottom right."""
    readings = Readings(
        PlumbSides(width, height, height), DEPTH, DEPTH, wall=Wall(proud), left_horn_depth=DEPTH + F(1, 8)
    )
    return Opening(mark, readings, EXTENDED, wall_answer=WallAnswer.EXTEND)


def stock(profile: str, turnable: bool = False, remnants: tuple[Remnant, ...] = ()) -> ProfileStock:
    return ProfileStock(profile, STICKS, remnants, turnable)


def worked_out(
    openings: tuple[HouseOpening, ...],
    stocks: tuple[ProfileStock, ...] = tuple(stock(profile) for profile in PROFILES),
    **habits: Fraction,
) -> CutList:
    """The house's parts and first-fit plans."""
    house = House(openings, stocks, **habits)
    built = build_openings(house)
    plans = tuple(plan(job, Budget(seconds=0)) for job in cutting_jobs(house, built))
    return CutList(house, built, plans)


def random_house(random: Random, most: int = 5) -> CutList:
    """A house of a few openings in a few rooms; every kind of opening and of stock comes up."""
    openings = tuple(
        HouseOpening(_opening(random, f"W{number}"), random.choice(ROOMS), random.choice((1, 1, 2, 3)))
        for number in range(1, random.randint(1, most) + 1)
    )
    stocks = tuple(
        stock(profile, turnable=profile == "flat" and random.random() < 0.5, remnants=_remnants(random))
        for profile in PROFILES
    )
    return worked_out(openings, stocks, end_trim=random.choice((F(0), F(1, 2))))


def _remnants(random: Random) -> tuple[Remnant, ...]:
    return tuple(
        Remnant(f"remnant {n}", F(random.randint(10, 70)), random.choice((0, 150)))
        for n in range(random.randint(0, 2))
    )


def _opening(random: Random, mark: str) -> Opening:
    width = F(random.randint(16 * 14, 16 * 60), 16)
    height = F(random.randint(16 * 20, 16 * 70), 16)
    depth = F(random.randint(8, 60), 16)
    kind = random.randint(0, 8)
    if kind <= 1:
        return window(mark, width, height, depth, random.choice((TRIM, SAME_STOCK)))
    if kind == 2:
        right = height + F(random.randint(-24, 24), 16)
        return Opening(mark, Readings(PlumbSides(width, height, right), depth, depth + F(1, 16)), TRIM)
    if kind == 3:
        sides = random.randint(5, 9)
        shape = Polygon(
            (F(random.randint(16 * 6, 16 * 20), 16),) * sides, (F(180 * (sides - 2), sides),) * sides
        )
        return Opening(mark, Readings(shape), random.choice((TRIM, FLAT)), Foot.PICTURE_FRAME)
    if kind == 4:
        return Opening(mark, Readings(PlumbSides(width, F(80), F(80))), BUTTED, Foot.PLINTH)
    if kind == 5:
        return hung_door(mark, F(random.randint(24, 40)))
    if kind == 6:
        return window(mark, width, height, depth, DRESSED)
    if kind == 7:
        return extended(mark, width, height, *(F(random.randint(4, 24), 16) for _ in range(4)))
    foot = random.choice((Foot.FLOOR, Foot.PICTURE_FRAME))
    return Opening(mark, Readings(PlumbSides(width, height, height)), FLAT, foot)
