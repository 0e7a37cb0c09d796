"""A house as it is described: openings, the trim they name, what to cut from, and how the shop works."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, ClassVar

from msgspec import Meta

from longpoint.geometry import AnyOpening, Conditions, Group, Opening, Trim
from longpoint.lengths import Length, Rounding, Unit
from longpoint.shop.settings import STANDARD, Shop
from longpoint.shop.yard import Stock, StockForSale
from longpoint.texts import Sentence, say
from longpoint.values import Fault, Faults, Given, Name, Path, Room

MOST_LENGTHS_ON_HAND = 40_000
"""Lengths on hand of a house, each of those alike counted: 200 of each of 200 lengths."""
MOST_SEASONS = 20_000
"""Seasons asked of openings: four of each of 5,000."""

MOST_TRIMS = 100


class Certainty(StrEnum):
    """It says how sure an opening's readings are."""

    ESTIMATED = "estimated"
    MEASURED = "measured"
    CONFIRMED = "confirmed"


class HouseOpening(AnyOpening, frozen=True, kw_only=True):
    """One opening of a house.

    Attributes:
        trim: The name of one of the house's trim specs.
        room: Where it is; money is summed by room, too.
        count: The number of openings that are alike.
        certainty: How sure its readings are: estimated before anybody was there with a tape, measured, or confirmed by
            measuring again. An estimated opening counts in the cost, and nothing is bought or cut for it.
        held: Whether it is held back: it counts in the cost, and nothing is bought or cut for it until it is released.
    """

    unit_is_stored: ClassVar[bool] = True

    trim: Name
    room: Room = ""
    count: Annotated[int, Meta(ge=1, le=500)] = 1
    certainty: Certainty = Certainty.MEASURED
    held: bool = False

    @property
    def to_cut(self) -> bool:
        """Whether sticks are bought and cut for it now."""
        return not self.held and self.certainty is not Certainty.ESTIMATED

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note a mark that no address can hold, and what its readings lack or say twice."""
        report_mark(self.mark, faults, at)
        super().report(faults, at)


class HouseGroup(Group, frozen=True, kw_only=True):
    """Some of a house's openings, trimmed together.

    Attributes:
        openings: The marks of its openings, left to right.
    """

    openings: Annotated[tuple[Name, ...], Meta(min_length=1, max_length=20)]


class AnyHouse(Given, frozen=True, kw_only=True):
    """A record of what is said of a house as a whole.

    Attributes:
        trim_specs: The trims that its openings name.
        groups: Openings trimmed together: those with heads in one line, or with one stool and apron under all of them;
            or joined units whose stool is too long for a stick.
        movement: The wood, and the air its joints will live through: the answer then says how far miters open.
        unit: The unit of lengths that are written without one; without it each must carry its own.
        rounding: It says how lengths are rounded.
        stock: The sticks and lengths on hand that each profile can be cut from.
        kerf: The width of the kerf: what one cut eats, measured from one side of the cut to the other.
        end_trim: The length that is squared off each factory end, measured from that end in.
        keep_length: An offcut of this length or longer is kept; it is measured from end to end.
        currency: The currency of every price; it is only repeated in the answer.
        shop: It says how the shop works.
    """

    trim_specs: Annotated[dict[Name, Trim], Meta(max_length=MOST_TRIMS)] = {}
    groups: Annotated[tuple[HouseGroup, ...], Meta(max_length=500)] = ()
    movement: Conditions | None = None
    unit: Unit | None = None
    rounding: Rounding = Rounding()
    stock: Annotated[tuple[StockForSale, ...], Meta(max_length=100)] = ()
    kerf: Length = Length.of("1/8 in")
    end_trim: Length = Length.of("1/2 in")
    keep_length: Length = Length.of("24 in")
    currency: Annotated[str, Meta(pattern=r"^[A-Z]{3}$", description="ISO 4217 code.")] = "USD"
    shop: Shop = STANDARD


class House(AnyHouse, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim they name, and what to cut from.

    With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of openings
    alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece with its own, come to
    at most 4,000,000 bytes, and the seasons of all openings to 20,000.

    Attributes:
        openings: The openings of the house.
        stock: The sticks and lengths on hand that each profile can be cut from.
    """

    openings: Annotated[tuple[HouseOpening, ...], Meta(min_length=1, max_length=5000)]
    trim_specs: Annotated[dict[Name, Trim], Meta(min_length=1, max_length=MOST_TRIMS)]
    stock: Annotated[tuple[Stock, ...], Meta(max_length=100)] = ()

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be: names given twice or unknown, readings that describe no shape, too much of something."""
        report_house(self, faults, at)

    def opening(self, index: int) -> Opening:
        """An opening with the trim it names."""
        one = self.openings[index]
        return one.with_trim(self.trim_specs[one.trim])

    def field_of(self, index: int, fault: Fault) -> Fault:
        """A fault of an opening, at the field as the house has it: its trim stands among the trim specs."""
        first, *rest = fault.path or ("",)
        if first == "trim":
            return fault.moved("trim_specs", self.openings[index].trim, *rest)
        return fault.under("openings", index)

    def members(self, group: HouseGroup) -> tuple[int, ...]:
        """The places of a group's openings."""
        places = {one.mark: index for index, one in enumerate(self.openings)}
        return tuple(places[mark] for mark in group.openings)


def report_mark(mark: str, faults: Faults, at: Path) -> None:
    """Note a mark that an address takes for a step up: a request for it would reach something else."""
    if mark in (".", ".."):
        faults.add((*at, "mark"), "mark-is-a-path", say("problem", "house.mark-is-a-path", mark=mark))


def opening_called(mark: str) -> Sentence:
    """What is said of an opening's mark that another has."""
    return say("problem", "house.opening-called", mark=mark)


def opening_and_group_called(mark: str) -> Sentence:
    """What is said of a mark that an opening and a group have."""
    return say("problem", "house.opening-and-group-called", mark=mark)


def report_house(house: House, faults: Faults, at: Path = ()) -> None:
    """Note what cannot be of a house, whose every field can be read."""
    _report_openings(house, faults, at)
    _report_groups(house, faults, at)
    _report_stock(house, faults, at)
    if house.movement is not None:
        house.movement.report(faults, (*at, "movement"))
        asked = len(house.openings) * len(house.movement.seasons)
        if asked > MOST_SEASONS:
            faults.add(
                (*at, "movement", "seasons"),
                "too-many-seasons",
                say("problem", "house.too-many-seasons", seasons=asked, most=MOST_SEASONS),
            )
    house.shop.report(faults, (*at, "shop"))


def _report_openings(house: House, faults: Faults, at: Path) -> None:
    seen: set[str] = set()
    for index, one in enumerate(house.openings):
        here = (*at, "openings", index)
        if one.mark in seen:
            faults.add(
                (*here, "mark"),
                "duplicate-mark",
                opening_called(one.mark),
            )
        seen.add(one.mark)
        if one.trim not in house.trim_specs:
            faults.add((*here, "trim"), "unknown-trim", _unknown_trim(one.trim, house))
        one.report(faults, here)


def _unknown_trim(name: str, house: House) -> Sentence:
    names = ", ".join(map(repr, house.trim_specs))[:200]
    if not names:
        return say("problem", "house.no-trim", trim=name)
    return say("problem", "house.unknown-trim", trim=name, names=names)


def _report_groups(house: House, faults: Faults, at: Path) -> None:
    places = {one.mark: index for index, one in enumerate(house.openings)}
    taken: dict[str, str] = {}
    groups: set[str] = set()
    for number, group in enumerate(house.groups):
        here = (*at, "groups", number)
        if group.mark in places or group.mark in groups:
            faults.add(
                (*here, "mark"),
                "duplicate-mark",
                opening_and_group_called(group.mark)
                if group.mark in places
                else say("problem", "house.two-groups-called", mark=group.mark),
            )
        groups.add(group.mark)
        report_mark(group.mark, faults, here)
        group.report(faults, here)
        for place, mark in enumerate(group.openings):
            there = (*here, "openings", place)
            index = places.get(mark)
            if index is None:
                faults.add(there, "unknown-opening", say("problem", "house.unknown-opening", mark=mark))
            elif mark in taken:
                faults.add(
                    there, "taken-twice", say("problem", "house.taken-twice", mark=mark, group=taken[mark])
                )
            elif house.openings[index].count != 1:
                faults.add(there, "count-not-one", say("problem", "house.count-not-one", mark=mark))
            else:
                taken[mark] = group.mark


def _report_stock(house: House, faults: Faults, at: Path) -> None:
    seen: set[str] = set()
    lengths_on_hand = 0
    for index, one in enumerate(house.stock):
        here = (*at, "stock", index)
        lengths_on_hand += sum(on_hand.count for on_hand in one.lengths_on_hand)
        if lengths_on_hand > MOST_LENGTHS_ON_HAND:
            faults.add(
                (*here, "lengths_on_hand"),
                "too-many-lengths-on-hand",
                say(
                    "problem",
                    "house.too-many-lengths-on-hand",
                    lengths_on_hand=lengths_on_hand,
                    most=MOST_LENGTHS_ON_HAND,
                ),
            )
            break
        if one.profile in seen:
            faults.add(
                (*here, "profile"),
                "duplicate-profile",
                say("problem", "house.profile-twice", profile=one.profile),
            )
        seen.add(one.profile)
