"""From a cut-list request to the house it describes, with every fault told at once."""

from __future__ import annotations

from longpoint.api.read.groups import read_groups
from longpoint.api.read.opening import read_opening
from longpoint.api.read.reader import Path, Reader
from longpoint.api.read.shop import read_shop
from longpoint.api.read.trim import read_trim
from longpoint.api.wire.cut_list import CutListRequest, DefectIn, StockIn
from longpoint.api.wire.money import cents
from longpoint.geometry import Trim
from longpoint.shop import ShopSettings
from longpoint.shop.house import House, HouseOpening, ProfileStock
from longpoint.stock import Defect, Remnant, StickKind

MOST_REMNANTS = 40_000
"""Remnants of a house, each of those alike counted: 200 of each of 200 lengths."""

MOST_SEASONS = 20_000
"""Seasons told of openings: four of each of 5,000."""


def read_house(wire: CutListRequest) -> House:
    """The house as the computing rooms take it.

    Raises:
        InvalidRequest: with every length, name and duplicate at fault.
    """
    return read_job(wire)[0]


def read_job(wire: CutListRequest) -> tuple[House, ShopSettings]:
    """The house, and how the shop works.

    Raises:
        InvalidRequest: with every length, name and duplicate at fault.
    """
    read = Reader(wire.unit)
    trims = {name: read_trim(read, trim, ("trim_specs", name)) for name, trim in wire.trim_specs.items()}
    house = House(
        openings=_openings(read, wire, trims),
        groups=read_groups(read, wire),
        stock=_stock(read, wire.stock),
        rounding=wire.rounding.value(),
        kerf=read.length(wire.kerf, (), "kerf"),
        end_trim=read.length(wire.end_trim, (), "end_trim"),
        keep_length=read.length(wire.keep_length, (), "keep_length"),
    )
    told = len(wire.openings) * len(wire.movement.seasons) if wire.movement else 0
    if told > MOST_SEASONS:
        read.fault(
            ("movement", "seasons"),
            "too-many-seasons",
            f"The seasons of every opening come to {told}, and at most {MOST_SEASONS} are told together: give fewer, "
            "or take the house in parts.",
        )
    settings = read_shop(read, wire.shop, ("shop",))
    read.faults.raise_any()
    return house, settings


def _openings(read: Reader, wire: CutListRequest, trims: dict[str, Trim]) -> tuple[HouseOpening, ...]:
    openings: list[HouseOpening] = []
    seen: dict[str, int] = {}
    for index, one in enumerate(wire.openings):
        at: Path = ("openings", index)
        if one.mark in seen:
            read.fault(
                (*at, "mark"),
                "duplicate-mark",
                f"Opening {seen[one.mark] + 1} is already called {one.mark!r}: give each its own mark, or raise the "
                "count where they are alike.",
            )
        seen.setdefault(one.mark, index)
        trim = trims.get(one.trim)
        if trim is None:
            read.fault(
                (*at, "trim"),
                "unknown-trim",
                f"No trim spec is called {one.trim!r}; trim_specs has {', '.join(map(repr, trims))[:200]}.",
            )
            trim = next(iter(trims.values()))
        openings.append(HouseOpening(read_opening(read, one, trim, at), one.room, one.count))
    return tuple(openings)


def _stock(read: Reader, wire: list[StockIn]) -> tuple[ProfileStock, ...]:
    stock: list[ProfileStock] = []
    seen: set[str] = set()
    remnants = 0
    for index, one in enumerate(wire):
        at: Path = ("stock", index)
        remnants += sum(remnant.count for remnant in one.remnants)
        if remnants > MOST_REMNANTS:
            read.fault(
                (*at, "remnants"),
                "too-many-remnants",
                f"With these there are {remnants} remnants, and at most {MOST_REMNANTS} are laid out together: list "
                "those that are long enough to use.",
            )
            break
        if one.profile in seen:
            read.fault(
                (*at, "profile"),
                "duplicate-profile",
                f"The stock lists {one.profile!r} already: put all of its sticks in one place.",
            )
        seen.add(one.profile)
        stock.append(
            ProfileStock(
                one.profile,
                _sticks(read, one, at),
                _remnants(read, one, at),
                one.turnable,
                one.one_stick_each,
            )
        )
    return tuple(stock)


def _sticks(read: Reader, wire: StockIn, at: Path) -> tuple[StickKind, ...]:
    return tuple(
        StickKind(
            key=f"sticks/{index}",
            length=read.positive(stick.length, (*at, "sticks", index), "length"),
            price_cents=cents(stick.price),
            available=stick.available,
            defects=_defects(read, stick.defects, (*at, "sticks", index, "defects")),
        )
        for index, stick in enumerate(wire.sticks)
    )


def _remnants(read: Reader, wire: StockIn, at: Path) -> tuple[Remnant, ...]:
    return tuple(
        Remnant(
            key=f"remnants/{index}/{number}",
            length=length,
            price_cents=cents(remnant.price),
            defects=defects,
        )
        for index, remnant in enumerate(wire.remnants)
        for length, defects in [
            (
                read.positive(remnant.length, (*at, "remnants", index), "length"),
                _defects(read, remnant.defects, (*at, "remnants", index, "defects")),
            )
        ]
        for number in range(remnant.count)
    )


def _defects(read: Reader, wire: list[DefectIn], at: Path) -> tuple[Defect, ...]:
    return tuple(
        Defect(
            read.length(defect.start, (*at, index), "start"),
            read.positive(defect.end, (*at, index), "end"),
        )
        for index, defect in enumerate(wire)
    )
