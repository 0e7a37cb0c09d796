"""Types of the document's part "plans". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import LengthOut


class PlacedOut(Result, frozen=True, kw_only=True):
    """A piece's place on a stick: `start` from the stick's left end to the piece's left-most point.

    `turned` lies turned over; `reversed` lies end for end; `shares_cut` shares its left cut with the piece
    before.

    Attributes:
        opening: The mark of the piece's opening.
        part: The part's `key` there.
        instance: Which of several alike, counted from 1.
    """

    opening: str
    part: str
    instance: int
    start: LengthOut
    length: LengthOut
    turned: bool
    reversed: bool
    shares_cut: bool


class StickOut(Result, frozen=True, kw_only=True):
    """One stick as it is cut. `offcut` is what remains; `kept` says whether it goes back on the rack.

    Attributes:
        number: Its number in the plan, counted from 1.
        remnant: Whether it is a remnant on hand and not one to buy.
        pieces: From its left end to its right.
    """

    number: int
    length: LengthOut
    remnant: bool
    price: Decimal
    pieces: list[PlacedOut]
    offcut: LengthOut
    kept: bool


class ProfilePlanOut(Result, frozen=True, kw_only=True):
    """One profile's sticks. No plan costs less than `bound`; `proven` says that none is cheaper than this one.

    `split_openings` are those that were to come from one stick each and that no stick can hold.

    Attributes:
        gap: How far `cost` may be from the cheapest, as a share of it; 0 is proven.
        method: What found it: first_fit, columns or branching.
        seconds: How long the search took.
    """

    profile: str
    sticks: list[StickOut]
    cost: Decimal
    bound: Decimal
    gap: float
    proven: bool
    method: str
    seconds: float
    split_openings: list[str]
