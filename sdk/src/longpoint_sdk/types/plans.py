"""Types of the document's part "plans". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import Request, Result
from longpoint_sdk.types.basics import MarkedLength
from longpoint_sdk.types.common import BuyLine
from longpoint_sdk.types.sticks import PlacedPiece


class Claim(Request, frozen=True, kw_only=True):
    """That somebody is about to cut a stick.

    Attributes:
        by: The name of who cuts it, or of the saw. A name on one line, not starting with a space.
        seconds: The time that the claim lasts, in seconds; nobody else can cut the stick until then.
    """

    by: str
    seconds: int = 1800


class PlanAsked(Request, frozen=True, kw_only=True):
    """A request that says how hard to look for the cheapest sticks.

    Attributes:
        planning_seconds: The time to search for cheaper sticks, in seconds, all profiles together, where the
            first.
    """

    planning_seconds: float = 2.0


class PlannedSticks(Result, frozen=True, kw_only=True):
    """It says how good the sticks of one profile are.

    Attributes:
        profile: The profile whose sticks these are.
        sticks: The names of the sticks, in the order they come to the saw.
        cost: The cost of all of them. An amount of money as decimal text with two places.
        bound: A lower bound: no plan costs less than this. An amount of money as decimal text with two
            places.
        method: The method that found the plan: `first_fit` lays each piece on the first stick that has room,
            `columns` combines patterns of cuts, `branching` tries one choice after the other. It changes
            nothing at the saw.
        stopped: Why the search ended: it was proven, the effort that the budget allows was spent, the clock
            ran out first, or there was not the memory for it.
        seconds: The time that the search took, in seconds.
        split_openings: Openings that were to come from one stick each and that no stick can hold.
    """

    profile: str
    sticks: list[str]
    cost: Decimal
    bound: Decimal
    method: str
    stopped: str
    seconds: float
    split_openings: list[str]


class StickDetail(Result, frozen=True, kw_only=True):
    """A stick by its name, and who is about to cut it.

    Attributes:
        name: What sheets call it: a name stands for this one layout of one stick.
        length: The length of the stick, measured from end to end.
        on_hand: True where it is a length on hand, one on order too; false where it is one to buy.
        price: The price of the stick. An amount of money as decimal text with two places.
        pieces: The pieces that it gives, from its left end to its right.
        offcut: The length that remains after the last cut, measured from there to the stick's end.
        kept: Whether the offcut goes back on the rack.
        profile: The profile that the stick is of.
        lot: The name of the lot, the lengths on hand entered together, that it comes from; null for one to
            buy.
        state: Planned to be cut, cut already, or changed: laid out otherwise under other names by now.
        plan: The number of the plan that first had it.
        claimed_by: The name of who claimed it last; null where nobody has it claimed.
        claimed_until: When that claim is over; it may be by now. RFC 3339, in UTC.
        notes: What else is to be known: a claim that was over when it was taken over.
    """

    name: str
    length: MarkedLength
    on_hand: bool
    price: Decimal
    pieces: list[PlacedPiece]
    offcut: MarkedLength
    kept: bool
    profile: str
    lot: str | None
    state: str
    plan: int
    claimed_by: str | None
    claimed_until: str | None
    notes: list[str]


class StoredStick(Result, frozen=True, kw_only=True):
    """A stick of a plan that is kept.

    Attributes:
        name: What sheets call it: a name stands for this one layout of one stick.
        length: The length of the stick, measured from end to end.
        on_hand: True where it is a length on hand, one on order too; false where it is one to buy.
        price: The price of the stick. An amount of money as decimal text with two places.
        pieces: The pieces that it gives, from its left end to its right.
        offcut: The length that remains after the last cut, measured from there to the stick's end.
        kept: Whether the offcut goes back on the rack.
        profile: The profile that the stick is of.
        lot: The name of the lot, the lengths on hand entered together, that it comes from; null for one to
            buy.
        state: Planned to be cut, cut already, or changed: laid out otherwise under other names by now.
    """

    name: str
    length: MarkedLength
    on_hand: bool
    price: Decimal
    pieces: list[PlacedPiece]
    offcut: MarkedLength
    kept: bool
    profile: str
    lot: str | None
    state: str


class StoredPlan(Result, frozen=True, kw_only=True):
    """A plan of a schedule's sticks.

    Attributes:
        number: The number of the plan; the schedule's plans are counted from 1.
        stands: Whether it is the plan of what the schedule is now.
        made_at: The time at which the plan was made. RFC 3339, in UTC.
        used_at: When something was first printed or cut from it; null while nothing was. Such a plan is kept;
            of the others the oldest go. RFC 3339, in UTC.
        planning_seconds: How long was allowed for the search; 0 took the first plan that was found.
        cost: The cost of the sticks that were left to cut when it was made; of profiles in `unstocked` it
            holds nothing. An amount of money as decimal text with two places.
        bound: A lower bound: no plan of those sticks costs less. An amount of money as decimal text with two
            places.
        above: How far the cost may be above the cheapest: zero is proven, where nothing is in `unstocked`. An
            amount of money as decimal text with two places.
        unstocked: Profiles that pieces needed and no stock was given for when it was made.
        proven: True where it is proven that no plan is cheaper; false where a profile was unstocked.
        profiles: It says how good the plan is, profile by profile.
        sticks: The sticks of the plan.
        changed: Sticks of the plan before it that it has no more: their names are never used again.
        buy: The sticks that are still to be bought for it, a line for each profile and length.
    """

    number: int
    stands: bool
    made_at: str
    used_at: str | None
    planning_seconds: float
    cost: Decimal
    bound: Decimal
    above: Decimal
    unstocked: list[str]
    proven: bool
    profiles: list[PlannedSticks]
    sticks: list[StoredStick]
    changed: list[str]
    buy: list[BuyLine]
