"""A house's openings worked out together: every part, and one cutting job for each profile."""

from __future__ import annotations

import math

from longpoint.geometry import Built, CutKind, End, Fault, GeometryError, Opening, Part, build_opening
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.stock import Job, Piece, Plan, Remnant, StickKind

ZERO = Fraction(0)
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


class House(Value, frozen=True):
    """Attributes: the openings, the stock by profile, how lengths are rounded, and the saw's habits in inches."""

    openings: tuple[HouseOpening, ...]
    stock: tuple[ProfileStock, ...] = ()
    rounding: Rounding = Rounding()
    kerf: Fraction = Fraction(1, 8)
    end_trim: Fraction = Fraction(1, 2)
    keep_length: Fraction = Fraction(24)


class BuiltOpening(Value, frozen=True):
    """Openings that are alike, worked out."""

    room: str
    count: int
    built: Built


class CutList(Value, frozen=True):
    """A house worked out: its openings' parts, and one plan for each profile that has stock."""

    house: House
    openings: tuple[BuiltOpening, ...]
    plans: tuple[Plan, ...]


def build_openings(house: House) -> tuple[BuiltOpening, ...]:
    """Every opening's parts.

    Raises:
        GeometryError: with the faults of all openings, each path starting with "openings" and the opening's index.
    """
    built: list[BuiltOpening] = []
    faults: list[Fault] = []
    for index, one in enumerate(house.openings):
        try:
            built.append(BuiltOpening(one.room, one.count, build_opening(one.opening)))
        except GeometryError as error:
            faults.extend(fault.under("openings", index) for fault in error.faults)
    if faults:
        raise GeometryError(tuple(faults))
    return tuple(built)


def cutting_jobs(house: House, openings: tuple[BuiltOpening, ...]) -> tuple[Job, ...]:
    """One cutting job for each profile that has stock, in the order of the stock.

    Pieces are cut to the rounded length, so that is what they take of a stick. A piece's key is
    `piece_key(opening index, part)`.
    """
    pieces: dict[str, list[Piece]] = {}
    for index, one in enumerate(openings):
        for part in one.built.parts:
            pieces.setdefault(part.profile, []).append(_piece(index, one, part, house.rounding))
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


def _piece(index: int, one: BuiltOpening, part: Part, rounding: Rounding) -> Piece:
    left, right = part.ends
    return Piece(
        key=piece_key(index, part),
        length=round_to(part.overall, rounding),
        quantity=one.count,
        opening=part.opening,
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
