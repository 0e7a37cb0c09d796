"""A house's openings worked out together: every part, and one cutting job for each profile."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from longpoint.geometry import (
    Built,
    CutKind,
    End,
    Fault,
    Finding,
    GeometryError,
    Group,
    Offer,
    Opening,
    Part,
    Pieces,
    build_group,
    build_opening,
)
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.stock import Job, Piece, Plan, Remnant, StickKind

ZERO = Fraction(0)
MOST_PIECES = 50_000
"""Pieces worked out together, each of those alike counted: 5,000 openings of ten pieces."""
MOST_NAMING = 4_000_000
"""Bytes of the names that their answers repeat for each piece, of its opening and its profile: 80 a piece."""
# A run along the stick that is irrational is kept to a millionth of an inch, far below a saw's kerf.
RUN_DENOMINATOR = 1_000_000


class HouseOpening(Value, frozen=True):
    """Openings that are alike. Attributes: the opening, its room, and how many there are."""

    opening: Opening
    room: str = ""
    count: int = 1


class ProfileStock(Value, frozen=True):
    """What one profile can be cut from. Attributes as in `longpoint.stock.Job`."""

    profile: str
    sticks: tuple[StickKind, ...]
    remnants: tuple[Remnant, ...] = ()
    turnable: bool = False
    together: bool = False


class HouseGroup(Value, frozen=True):
    """Openings trimmed together. Attributes: the indices of its members, left to right, and what is shared."""

    members: tuple[int, ...]
    group: Group


class House(Value, frozen=True):
    """Attributes: the openings, the stock by profile, how lengths are rounded, the saw's habits in inches, and the
    groups that some of the openings form."""

    openings: tuple[HouseOpening, ...]
    stock: tuple[ProfileStock, ...] = ()
    rounding: Rounding = Rounding()
    kerf: Fraction = Fraction(1, 8)
    end_trim: Fraction = Fraction(1, 2)
    keep_length: Fraction = Fraction(24)
    groups: tuple[HouseGroup, ...] = ()


class BuiltOpening(Value, frozen=True):
    """Openings that are alike, worked out."""

    room: str
    count: int
    built: Built


class CutList(Value, frozen=True):
    """A house worked out: its openings' parts, and one plan for each profile that has stock.

    Attributes:
        left: by piece key, which of the pieces alike are to be cut, where some were cut before; None for all.
    """

    house: House
    openings: tuple[BuiltOpening, ...]
    plans: tuple[Plan, ...]
    left: Mapping[str, tuple[int, ...]] | None = None

    @property
    def pieces(self) -> int:
        """How many the whole house has."""
        return sum(one.count * len(one.built.parts) for one in self.openings)

    @property
    def to_cut(self) -> int:
        """How many of them the plans cut."""
        return sum(
            len(self.instances(piece_key(index, part), one.count))
            for index, one in enumerate(self.openings)
            for part in one.built.parts
        )

    def instances(self, key: str, count: int) -> Sequence[int]:
        """Which of `count` pieces alike, counted from 1, the plans cut."""
        return range(1, count + 1) if self.left is None else self.left.get(key, ())


def build_openings(house: House) -> tuple[BuiltOpening, ...]:
    """Every opening's parts, then what each group shares, as an opening of the group's mark.

    Raises:
        GeometryError: with the faults of all openings, each path starting with "openings" and the opening's index,
            or with "groups" and the group's.
    """
    built: list[BuiltOpening] = []
    faults: list[Fault] = []
    pieces = naming = 0
    shares = {index for one in house.groups if one.group.stool is not None for index in one.members}
    for index, one in enumerate(house.openings):
        wanted = Pieces.CASING if index in shares else Pieces.ALL
        try:
            found = build_opening(one.opening, wanted)
        except GeometryError as error:
            faults.extend(fault.under("openings", index) for fault in error.faults)
            continue
        built.append(BuiltOpening(one.room, one.count, found))
        pieces += one.count * len(found.parts)
        if pieces > MOST_PIECES:
            faults.append(_too_many(index, pieces))
            break
        naming += one.count * _naming(found)
        if naming > MOST_NAMING:
            faults.append(_too_long_names(index))
            break
    if not faults:
        for number, group in enumerate(house.groups):
            try:
                _add_group(house, group, built)
            except GeometryError as error:
                faults.extend(_of_group(fault, number, group) for fault in error.faults)
    if faults:
        raise GeometryError(tuple(faults))
    return tuple(built)


def _naming(built: Built) -> int:
    """Bytes of the names that are repeated for the pieces of an opening."""
    mark = len(built.opening.mark.encode())
    return sum(mark + len(part.profile.encode()) for part in built.parts)


def _too_long_names(index: int) -> Fault:
    return Fault(
        ("openings", index, "mark"),
        "too-much-naming",
        f"The marks and profiles of so many pieces, each piece with its own, come to more than {MOST_NAMING} bytes: "
        "shorten the names, or take the house in parts.",
    )


def _too_many(index: int, pieces: int) -> Fault:
    return Fault(
        ("openings", index, "count"),
        "too-many-pieces",
        f"With this opening there are {pieces} pieces, and at most {MOST_PIECES} are worked out together: take the "
        "house in parts.",
    )


def _add_group(house: House, one: HouseGroup, built: list[BuiltOpening]) -> None:
    """What a group shares; where it shares nothing, its findings go with its first opening."""
    found = build_group(tuple(house.openings[index].opening for index in one.members), one.group)
    findings = tuple(_in_house(finding, one) for finding in found.findings)
    first = one.members[0]
    if found.shared is not None:
        shared = replace(found.shared, findings=(*found.shared.findings, *findings))
        built.append(BuiltOpening(house.openings[first].room, 1, shared))
    elif findings:
        before = built[first]
        together = replace(before.built, findings=(*before.built.findings, *findings))
        built[first] = BuiltOpening(before.room, before.count, together)


def _in_house(finding: Finding, one: HouseGroup) -> Finding:
    """A group's finding, its offers' fields by the house's openings."""
    return replace(finding, offers=tuple(_offer_in_house(offer, one) for offer in finding.offers))


def _offer_in_house(offer: Offer, one: HouseGroup) -> Offer:
    if not offer.field:
        return offer
    name, number, *rest = offer.field
    return replace(offer, field=(name, one.members[int(number)], *rest))


def _of_group(fault: Fault, number: int, one: HouseGroup) -> Fault:
    name, *rest = fault.path
    if name == "openings":
        return Fault(("openings", one.members[int(rest[0])], *rest[1:]), fault.code, fault.detail)
    return Fault(("groups", number, *rest), fault.code, fault.detail)


def cutting_jobs(
    house: House,
    openings: tuple[BuiltOpening, ...],
    left: Mapping[str, tuple[int, ...]] | None = None,
) -> tuple[Job, ...]:
    """One cutting job for each profile that has stock, in the order of the stock.

    Pieces are cut to the rounded length, so that is what they take of a stick. A piece's key is
    `piece_key(opening index, part)`; `left` says by it which of those alike are still to be cut, None for all.
    """
    pieces: dict[str, list[Piece]] = {}
    for index, one in enumerate(openings):
        mark = one.built.opening.mark
        for part in one.built.parts:
            quantity = one.count if left is None else len(left[piece_key(index, part)])
            if quantity:
                pieces.setdefault(part.profile, []).append(
                    _piece(index, mark, quantity, part, house.rounding)
                )
    return tuple(
        Job(
            profile=stock.profile,
            pieces=tuple(pieces.get(stock.profile, ())),
            sticks=stock.sticks,
            remnants=stock.remnants,
            kerf=house.kerf,
            end_trim=house.end_trim,
            keep_length=house.keep_length,
            turnable=stock.turnable,
            together=stock.together,
        )
        for stock in house.stock
        if stock.profile in pieces
    )


def piece_key(opening_index: int, part: Part) -> str:
    """The name under which a part goes through the cutting plan."""
    return f"{opening_index}:{part.key}"


def opening_index(key: str) -> int:
    """The index of the opening a piece's key belongs to."""
    return int(key.partition(":")[0])


def _piece(index: int, mark: str, quantity: int, part: Part, rounding: Rounding) -> Piece:
    left, right = part.ends
    return Piece(
        key=piece_key(index, part),
        length=round_to(part.overall, rounding),
        quantity=quantity,
        opening=mark,
        left=_run(left, part),
        right=_run(right, part),
    )


def _run(end: End, part: Part) -> Fraction:
    """How far a plain mitre runs along the stick; nought for any other end."""
    if end.cut is not CutKind.MITRE:
        return ZERO
    if end.mitre == 45 and not isinstance(part.width, float):
        return part.width
    return Fraction(
        round(float(part.width) * math.tan(math.radians(end.mitre)) * RUN_DENOMINATOR), RUN_DENOMINATOR
    )
