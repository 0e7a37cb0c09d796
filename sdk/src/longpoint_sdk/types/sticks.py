"""Types of the document's part "sticks". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import MarkedLength


class PlacedPiece(Result, frozen=True, kw_only=True):
    """A piece's place on a stick.

    Attributes:
        opening: The mark of the piece's opening.
        piece: The key of the piece within its opening.
        instance: It says which of several alike this is, counted from 1.
        start: The place of the piece, measured from the stick's left end to the piece's left-most point.
        length: The length that the piece takes of the stick, measured from tip to tip.
        turned: True where the piece lies turned over.
        reversed: True where the piece lies end for end.
        shares_cut: Whether it shares its left cut with the piece before.
    """

    opening: str
    piece: str
    instance: int
    start: MarkedLength
    length: MarkedLength
    turned: bool
    reversed: bool
    shares_cut: bool


class CutStick(Result, frozen=True, kw_only=True):
    """One stick as it is cut.

    Attributes:
        name: What sheets call it: a name stands for this one layout of one stick.
        length: The length of the stick, measured from end to end.
        on_hand: True where it is a length on hand, one on order too; false where it is one to buy.
        price: The price of the stick. An amount of money as decimal text with two places.
        pieces: The pieces that it gives, from its left end to its right.
        offcut: The length that remains after the last cut, measured from there to the stick's end.
        kept: Whether the offcut goes back on the rack.
    """

    name: str
    length: MarkedLength
    on_hand: bool
    price: Decimal
    pieces: list[PlacedPiece]
    offcut: MarkedLength
    kept: bool


class ProfilePlan(Result, frozen=True, kw_only=True):
    """One profile's sticks.

    Attributes:
        profile: The name of the profile.
        sticks: The sticks, each by itself, as they come to the saw.
        cost: The cost of all its sticks. An amount of money as decimal text with two places.
        bound: A lower bound: no plan costs less than this. An amount of money as decimal text with two
            places.
        gap: How far `cost` may be from the cheapest, as a share of it; 0 is proven.
        proven: Whether none is cheaper than this one.
        method: The method that found the plan: first_fit, columns or branching.
        stopped: Why the search ended: it was proven, the effort that the budget allows was spent, the clock
            ran out first, or there was not the memory for it.
        seconds: The time that the search took, in seconds.
        split_openings: Openings that were to come from one stick each and that no stick can hold.
    """

    profile: str
    sticks: list[CutStick]
    cost: Decimal
    bound: Decimal
    gap: float
    proven: bool
    method: str
    stopped: str
    seconds: float
    split_openings: list[str]
