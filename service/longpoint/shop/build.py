"""A house's openings worked out together: every piece, and one cutting for each profile."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from msgspec.structs import replace

from longpoint.geometry import (
    Built,
    Fault,
    Finding,
    GeometryError,
    Offer,
    PieceKey,
    Pieces,
    build_group,
    build_opening,
)
from longpoint.shop.doubts import compared_readings
from longpoint.shop.house import House, HouseGroup
from longpoint.shop.lying import Lying, lying_of
from longpoint.shop.paid import Paid
from longpoint.shop.stick_names import StickNames
from longpoint.shop.too_much import MOST_NAMING, MOST_PIECES, naming, too_long_names, too_many
from longpoint.stock import Cutting, Plan, Wanted
from longpoint.values import Value


class HouseKey(NamedTuple):
    """Names a piece in a house: the place of its opening, and its key there."""

    opening: int
    piece: PieceKey

    def __str__(self) -> str:
        """How the piece is named in a sentence that says whose it is."""
        return str(self.piece)


class BuiltOpening(Value, frozen=True):
    """Openings that are alike, worked out.

    Attributes:
        to_cut: whether sticks are bought and cut for them now, or they only count in the cost.
        shown: whether they were asked for, or only share a stick with some that were.
    """

    room: str
    count: int
    built: Built
    to_cut: bool = True
    shown: bool = True


class CutList(Value, frozen=True):
    """A house worked out: its openings' pieces, and one plan for each profile that has stock.

    Attributes:
        left: by piece key, which of the pieces alike are to be cut, where some were cut before; None for all.
        kept_names: by profile, the names of its plan's sticks where they are kept; None for sticks named here alone.
        plan_number: of the plan, where it is kept.
        later: first plans of what is held back or estimated, after the others and from what those leave over.
        later_missing: profiles whose stock gives no plan of it: a piece is too long, or there are too few sticks.
        paid: by profile, what was paid for sticks before; None where nothing is kept of that.
    """

    house: House
    openings: tuple[BuiltOpening, ...]
    plans: tuple[Plan, ...]
    left: Mapping[HouseKey, tuple[int, ...]] | None = None
    kept_names: Mapping[str, tuple[str, ...]] | None = None
    plan_number: int | None = None
    later: tuple[Plan, ...] = ()
    later_missing: tuple[str, ...] = ()
    paid: Mapping[str, Paid] | None = None

    def with_later(self, plans: tuple[Plan, ...], missing: tuple[str, ...]) -> CutList:
        """It with plans of what is held back or estimated, and the profiles that there are none of."""
        return replace(self, later=plans, later_missing=missing)

    @property
    def held(self) -> tuple[str, ...]:
        """Marks of the openings shown that only count in the cost."""
        return tuple(one.built.opening.mark for one in self.openings if one.shown and not one.to_cut)

    @property
    def stick_names(self) -> Mapping[str, tuple[str, ...]]:
        """By profile, the name of each stick in the order its plan has them."""
        if self.kept_names is not None:
            return self.kept_names
        names = StickNames()
        return {
            plan.profile: tuple(names.next(plan.profile) for layout in plan.layouts for _ in layout.keys)
            for plan in self.plans
        }

    @property
    def unstocked(self) -> tuple[str, ...]:
        """Profiles that pieces need and no stock was given for."""
        return tuple(sorted(self._needed - {stock.profile for stock in self.house.stock}))

    @property
    def unused_stock(self) -> tuple[str, ...]:
        """Profiles with stock from which no piece is cut."""
        return tuple(stock.profile for stock in self.house.stock if stock.profile not in self._needed)

    @property
    def _needed(self) -> set[str]:
        return {piece.profile for one in self.openings for piece in one.built.pieces}

    @property
    def pieces(self) -> int:
        """How many the whole house has."""
        return sum(one.count * len(one.built.pieces) for one in self.openings)

    @property
    def to_cut(self) -> int:
        """How many of them the plans cut."""
        return sum(
            len(self.instances(HouseKey(index, piece.key), one.count))
            for index, one in enumerate(self.openings)
            for piece in one.built.pieces
        )

    def instances(self, key: HouseKey, count: int) -> Sequence[int]:
        """Which of `count` pieces alike, counted from 1, the plans cut."""
        return range(1, count + 1) if self.left is None else self.left.get(key, ())


def every_instance(openings: Sequence[BuiltOpening]) -> dict[HouseKey, tuple[int, ...]]:
    """By piece key, which of the pieces alike there are: all of them."""
    return {
        HouseKey(index, piece.key): tuple(range(1, one.count + 1))
        for index, one in enumerate(openings)
        for piece in one.built.pieces
    }


def build_openings(house: House) -> tuple[BuiltOpening, ...]:
    """Every opening's pieces, then what each group shares, as an opening of the group's mark.

    Raises:
        GeometryError: with the faults of all openings, each path starting with "openings" and the opening's index,
            or with "groups" and the group's.
    """
    built: list[BuiltOpening] = []
    faults: list[Fault] = []
    pieces = named = 0
    shares = {index for one in house.groups if one.shares for index in house.members(one)}
    for index, one in enumerate(house.openings):
        wanted = Pieces.CASING if index in shares else Pieces.ALL
        try:
            found = build_opening(house.opening(index), wanted, house.rounding)
        except GeometryError as error:
            faults.extend(house.field_of(index, fault) for fault in error.faults)
            continue
        built.append(BuiltOpening(one.room, one.count, found, one.to_cut))
        pieces += one.count * len(found.pieces)
        if pieces > MOST_PIECES:
            faults.append(too_many(index, pieces))
            break
        named += one.count * naming(found)
        if named > MOST_NAMING:
            faults.append(too_long_names(index))
            break
    if not faults:
        compared = compared_readings(house.openings, [one.built for one in built])
        built = [replace(one, built=each) for one, each in zip(built, compared, strict=True)]
        for number, group in enumerate(house.groups):
            try:
                _add_group(house, group, built)
            except GeometryError as error:
                faults.extend(_of_group(house, fault, number, group) for fault in error.faults)
    if faults:
        raise GeometryError(dict.fromkeys(faults))
    return tuple(built)


def _add_group(house: House, one: HouseGroup, built: list[BuiltOpening]) -> None:
    """What a group shares; where it shares nothing, its findings go with its first opening."""
    members = house.members(one)
    found = build_group(tuple(house.opening(index) for index in members), one)
    findings = tuple(_in_house(finding, members) for finding in found.findings)
    first = members[0]
    if found.shared is not None:
        shared = replace(found.shared, findings=(*found.shared.findings, *findings))
        to_cut = all(house.openings[index].to_cut for index in members)
        built.append(BuiltOpening(house.openings[first].room, 1, shared, to_cut))
    elif findings:
        before = built[first]
        together = replace(before.built, findings=(*before.built.findings, *findings))
        built[first] = replace(before, built=together)


def _in_house(finding: Finding, members: tuple[int, ...]) -> Finding:
    """A group's finding, its offers' fields by the house's openings."""
    return replace(finding, offers=tuple(_offer_in_house(offer, members) for offer in finding.offers))


def _offer_in_house(offer: Offer, members: tuple[int, ...]) -> Offer:
    if offer.field is None:
        return offer
    name, number, *rest = offer.path
    return replace(offer, field=(name, members[int(number)], *rest))


def _of_group(house: House, fault: Fault, number: int, one: HouseGroup) -> Fault:
    name, *rest = fault.path
    if name == "openings":
        return house.field_of(house.members(one)[int(rest[0])], fault.moved(*rest[1:]))
    return fault.moved("groups", number, *rest)


def cuttings(
    house: House,
    openings: tuple[BuiltOpening, ...],
    left: Mapping[HouseKey, tuple[int, ...]] | None = None,
) -> tuple[Cutting, ...]:
    """One cutting for each profile that has stock, in the order of the stock.

    Pieces take their rounded length of a stick. `left` says which of those alike are still to be cut, None for all.
    """
    pieces: dict[str, list[Wanted]] = {}
    lying: dict[int, Lying] = {}  # by the identity of pieces, of which many are one
    for index, one in enumerate(openings):
        mark = one.built.opening.mark
        for piece in one.built.pieces:
            key = HouseKey(index, piece.key)
            quantity = one.count if left is None else len(left[key])
            if quantity:
                if id(piece) not in lying:
                    lying[id(piece)] = lying_of(piece, house)
                length, left_run, right_run, *eats = lying[id(piece)]
                wanted = Wanted(key, length, quantity, mark, left_run, right_run, *eats)
                pieces.setdefault(piece.profile, []).append(wanted)
    return tuple(
        Cutting(
            profile=stock.profile,
            pieces=tuple(pieces.get(stock.profile, ())),
            sticks=stock.kinds,
            lengths_on_hand=stock.each_on_hand,
            kerf=house.kerf,
            end_trim=house.end_trim,
            keep_length=house.keep_length,
            turnable=stock.turnable,
            together=stock.one_stick_each,
            square_first=stock.square_first,
        )
        for stock in house.stock
        if stock.profile in pieces
    )
