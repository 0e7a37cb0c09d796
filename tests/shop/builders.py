"""Houses for the shop's tests: drawn at random from trims and readings a carpenter could meet."""

from __future__ import annotations

import math
from collections.abc import Iterable
from random import Random
from typing import Any, NamedTuple

from geometry.builders import read
from longpoint.geometry import (
    AnyOpening,
    Apron,
    ApronEnds,
    BackBand,
    Bottom,
    BoxCorners,
    Casing,
    Door,
    DoorStop,
    Hand,
    HeadStrip,
    HeadStyle,
    JambExtension,
    Opening,
    Plinth,
    PlumbSides,
    Polygon,
    Quadrilateral,
    Stool,
    StoolEnds,
    StripEnds,
    Trim,
    WallAnswer,
)
from longpoint.geometry.readings.readings import OffPlane
from longpoint.lengths import Fraction
from longpoint.shop.build import CutList
from longpoint.shop.house import House, HouseOpening
from longpoint.shop.planning import Planning
from longpoint.shop.yard import Defect, LengthsOnHand, Stick, Stock
from longpoint.values import Cents

F = Fraction
CASING = Casing(F(5, 2), F(5, 8))
STOOL = Stool(F(3, 4), F(3, 4), F(7, 8), profile="stool stock")
APRON = Apron(F(5, 2), F(5, 8))
TRIM = Trim(CASING, F(3, 16), stool=STOOL, apron=APRON)
SAME_STOCK = Trim(CASING, F(3, 16), stool=STOOL, apron=Apron(F(5, 2), F(5, 8), profile="casing"))
FLAT = Trim(Casing(F(7, 2), F(3, 4), "flat"), F(1, 4))
BUTTED = Trim(
    CASING,
    F(1, 4),
    HeadStyle.BUTTED,
    head_casing=Casing(F(7, 2), F(3, 4), "flat"),
    overhang=F(1, 2),
    plinth=Plinth(F(3), F(11, 2), F(1), "block"),
)
DEPTH = F(25, 8)
STICKS = tuple(Stick(F(12 * feet), Cents(cents)) for feet, cents in ((8, 920), (12, 1310), (16, 1790)))
ROOMS = ("Kitchen", "Hall", "Bedroom")
HEAD = Casing(F(7, 2), F(3, 4), "flat")
DRESSED = Trim(
    CASING,
    F(3, 16),
    HeadStyle.BUTTED,
    HEAD,
    stool=Stool(F(1), F(3, 4), F(7, 8), ends=StoolEnds.MITERED_RETURN, profile="stool stock"),
    apron=Apron(F(5, 2), F(5, 8), ApronEnds.ANGLED),
    fillet=HeadStrip("fillet", F(1, 2), F(1), F(1, 2), StripEnds.MITERED_RETURN),
    cap=HeadStrip("cap", F(3, 4), F(3, 2), F(3, 4), StripEnds.MITERED_RETURN),
)
EXTENDED = Trim(
    CASING,
    F(3, 16),
    stool=STOOL,
    apron=APRON,
    extension=JambExtension(F(3, 4), profile="strip"),
    back_band=BackBand(F(3, 4), F(1), profile="band"),
)
HUNG = Trim(
    CASING,
    F(1, 4),
    floor_clearance=F(1, 8),
    stop=DoorStop(F(5, 4), F(3, 8), BoxCorners.MITERED, profile="stop"),
)
PROFILES = (
    *("casing", "stool stock", "apron", "flat", "block", "strip", "jamb"),
    *("fillet", "cap", "band", "stop"),
)


class Entry(NamedTuple):
    """An opening in a house."""

    opening: Opening
    room: str = ""
    count: int = 1


def house_of(entries: Iterable[Entry], **said: Any) -> House:
    """A house of these openings, each trim under a name."""
    names: dict[Trim, str] = {}
    openings = tuple(
        HouseOpening(
            **{name: getattr(one.opening, name) for name in AnyOpening.__struct_fields__},
            trim=names.setdefault(one.opening.trim, f"trim {len(names)}"),
            room=one.room,
            count=one.count,
        )
        for one in entries
    )
    return House(openings=openings, trim_specs={name: trim for trim, name in names.items()}, **said)


def window(
    mark: str, width: Fraction, height: Fraction, depth: Fraction = DEPTH, trim: Trim = TRIM
) -> Opening:
    return Opening(
        mark=mark,
        readings=read(PlumbSides(width, height, height), left_depth=depth, right_depth=depth),
        trim=trim,
    )


def hung_door(mark: str, width: Fraction) -> Opening:
    """A door in its own jamb, stops and casing to the floor."""
    return Opening(
        mark=mark,
        readings=read(Door(width=width, height=F(80), thickness=F(7, 4), hinge_side=Hand.LEFT)),
        trim=HUNG,
        bottom=Bottom.FLOOR,
    )


def extended(mark: str, width: Fraction, height: Fraction, *proud: Fraction) -> Opening:
    """A window whose wall stands proud at the four corners, counterclockwise from the bottom right."""
    taken = read(
        PlumbSides(width, height, height),
        left_depth=DEPTH,
        right_depth=DEPTH,
        wall=tuple(OffPlane(proud=one) for one in proud),
        left_horn_depth=DEPTH + F(1, 8),
    )
    return Opening(mark=mark, readings=taken, trim=EXTENDED, wall_answer=WallAnswer.EXTEND)


def stock(profile: str, turnable: bool = False, lengths_on_hand: tuple[LengthsOnHand, ...] = ()) -> Stock:
    return Stock(profile=profile, sticks=STICKS, lengths_on_hand=lengths_on_hand, turnable=turnable)


def worked_out(
    entries: tuple[Entry, ...],
    stocks: tuple[Stock, ...] = tuple(stock(profile) for profile in PROFILES),
    **habits: Fraction,
) -> CutList:
    """The house's pieces and first-fit plans, as a request gets them."""
    house = house_of(entries, stock=stocks, **habits)
    return Planning(house, searched=False).cut_list


def random_house(random: Random, most: int = 5) -> CutList:
    """A house of a few openings in a few rooms; every kind of opening and of stock comes up."""
    entries = tuple(
        Entry(_opening(random, f"W{number}"), random.choice(ROOMS), random.choice((1, 1, 2, 3)))
        for number in range(1, random.randint(1, most) + 1)
    )
    stocks = tuple(
        stock(
            profile,
            turnable=profile == "flat" and random.random() < 0.5,
            lengths_on_hand=_lengths_on_hand(random),
        )
        for profile in PROFILES
    )
    return worked_out(entries, stocks, end_trim=random.choice((F(0), F(1, 2))))


def solid_house(random: Random) -> CutList:
    """Openings of every corner angle, and stock of every rule, knots and all."""
    crooked = tuple(
        Entry(_crooked(random, f"Q{number}"), count=random.choice((1, 2)))
        for number in range(random.randint(1, 4))
    )
    others = tuple(Entry(_opening(random, f"W{number}")) for number in range(random.randint(1, 4)))
    stocks = tuple(
        Stock(
            profile=profile,
            sticks=STICKS if random.random() < 0.7 else (*STICKS, _knotty(random)),
            lengths_on_hand=_lengths_on_hand(random),
            turnable=profile in ("flat", "band", "apron") and random.random() < 0.7,
            square_first=random.random() < 0.3,
        )
        for profile in PROFILES
    )
    return worked_out((*crooked, *others), stocks, end_trim=random.choice((F(0), F(1, 2))))


def _crooked(random: Random, mark: str) -> Opening:
    """Four sides, no corner square, or a raked head."""
    wide, high = F(random.randint(16 * 20, 16 * 60), 16), F(random.randint(16 * 20, 16 * 70), 16)
    off = [F(random.randint(-32, 32), 16) for _ in range(3)]
    diagonal = F(round(16 * math.hypot(wide, high)), 16) + off[2]
    shape = random.choice(
        (
            Quadrilateral(wide, wide + off[0], high, high + off[1], diagonal_from_bottom_left=diagonal),
            PlumbSides(wide, high, high + off[0]),
        )
    )
    foot = random.choice((Bottom.CASING, Bottom.FLOOR))
    proud = tuple(OffPlane(proud=F(random.randint(0, 6), 16)) for _ in range(4))
    leans = isinstance(shape, PlumbSides) and random.random() < 0.5
    return Opening(
        mark=mark,
        readings=read(shape, wall=proud) if leans else read(shape),
        trim=random.choice((FLAT, TRIM)),
        bottom=foot,
        wall_answer=WallAnswer.LEAN if leans else WallAnswer.FLAT,
    )


def _knotty(random: Random) -> Stick:
    start = F(random.randint(10, 100))
    return Stick(F(120), Cents(400), defects=(Defect(start, start + F(random.randint(1, 32), 16)),))


def _lengths_on_hand(random: Random) -> tuple[LengthsOnHand, ...]:
    return tuple(
        LengthsOnHand(F(random.randint(10, 70)), Cents(random.choice((0, 150))))
        for _ in range(random.randint(0, 2))
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
        return Opening(
            mark=mark,
            readings=read(PlumbSides(width, height, right), left_depth=depth, right_depth=depth + F(1, 16)),
            trim=TRIM,
        )
    if kind == 3:
        sides = random.randint(5, 9)
        shape = Polygon(
            (F(random.randint(16 * 6, 16 * 20), 16),) * sides, (F(180 * (sides - 2), sides),) * sides
        )
        return Opening(
            mark=mark,
            readings=read(shape),
            trim=random.choice((TRIM, FLAT)),
            bottom=Bottom.CASING,
        )
    if kind == 4:
        return Opening(
            mark=mark, readings=read(PlumbSides(width, F(80), F(80))), trim=BUTTED, bottom=Bottom.PLINTH
        )
    if kind == 5:
        return hung_door(mark, F(random.randint(24, 40)))
    if kind == 6:
        return window(mark, width, height, depth, DRESSED)
    if kind == 7:
        return extended(mark, width, height, *(F(random.randint(4, 24), 16) for _ in range(4)))
    foot = random.choice((Bottom.FLOOR, Bottom.CASING))
    return Opening(mark=mark, readings=read(PlumbSides(width, height, height)), trim=FLAT, bottom=foot)
