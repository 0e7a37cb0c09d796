"""What is answered of each profile's sticks: what is cut from each, what to buy and what goes back on the rack."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from typing import Literal, cast

from longpoint.geometry import PieceKey
from longpoint.lengths import Fraction
from longpoint.shop.build import CutList, HouseKey
from longpoint.stock import Placed, Plan
from longpoint.values import Cents, Value

Stopped = Literal["proven", "effort", "clock", "memory"]


class PlacedPiece(Value, frozen=True):
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
    piece: PieceKey
    instance: int
    start: Fraction
    length: Fraction
    turned: bool
    reversed: bool
    shares_cut: bool


class CutStick(Value, frozen=True):
    """One stick as it is cut.

    Attributes:
        name: What sheets call it: a name stands for this one layout of one stick.
        length: The length of the stick, measured from end to end.
        on_hand: True where it is a length on hand, one on order too; false where it is one to buy.
        price: The price of the stick.
        pieces: The pieces that it gives, from its left end to its right.
        offcut: The length that remains after the last cut, measured from there to the stick's end.
        kept: Whether the offcut goes back on the rack.
    """

    name: str
    length: Fraction
    on_hand: bool
    price: Cents
    pieces: tuple[PlacedPiece, ...]
    offcut: Fraction
    kept: bool


class ProfilePlan(Value, frozen=True):
    """One profile's sticks.

    Attributes:
        profile: The name of the profile.
        sticks: The sticks, each by itself, as they come to the saw.
        cost: The cost of all its sticks.
        bound: A lower bound: no plan costs less than this.
        gap: How far `cost` may be from the cheapest, as a share of it; 0 is proven.
        proven: Whether none is cheaper than this one.
        method: The method that found the plan: first_fit, columns or branching.
        stopped: Why the search ended: it was proven, the effort that the budget allows was spent, the clock ran out
            first, or there was not the memory for it.
        seconds: The time that the search took, in seconds.
        split_openings: Openings that were to come from one stick each and that no stick can hold.
    """

    profile: str
    sticks: tuple[CutStick, ...]
    cost: Cents
    bound: Cents
    gap: float
    proven: bool
    method: str
    stopped: Stopped
    seconds: float
    split_openings: tuple[str, ...]


class BuyLine(Value, frozen=True):
    """A line for the yard.

    Attributes:
        profile: The name to ask the yard for.
        length: The length of each stick, measured from end to end.
        quantity: The number of sticks.
        price: The price of one stick.
        cost: The price of all these sticks.
    """

    profile: str
    length: Fraction
    quantity: int
    price: Cents
    cost: Cents


Bought = tuple[str, Fraction, int]
"""A profile, a length and its price in cents."""


class LeftOver(Value, frozen=True):
    """A length that goes back on the rack.

    Attributes:
        profile: The profile that the offcut is of.
        length: The length of each offcut, measured from end to end.
        quantity: The number of such offcuts.
    """

    profile: str
    length: Fraction
    quantity: int


def profile_plan(plan: Plan, cut_list: CutList) -> ProfilePlan:
    """A plan as it is answered, every stick by itself."""
    return ProfilePlan(
        profile=plan.profile,
        sticks=tuple(_sticks(plan, cut_list)),
        cost=Cents(plan.cost_cents),
        bound=Cents(plan.bound_cents),
        gap=plan.gap,
        proven=plan.proven,
        method=plan.method,
        stopped=cast(Stopped, plan.stopped),
        seconds=round(plan.seconds, 3),
        split_openings=tuple(plan.split_openings),
    )


def _sticks(plan: Plan, cut_list: CutList) -> Iterator[CutStick]:
    """Every stick by itself, named, each piece with its opening and instance."""
    instances: dict[HouseKey, Iterator[int]] = {}
    names = iter(cut_list.stick_names[plan.profile])
    for layout in plan.layouts:
        for keys in layout.keys:
            pieces = []
            for placed, key in zip(layout.placed, keys, strict=True):
                if key not in instances:
                    count = cut_list.openings[key.opening].count
                    instances[key] = iter(cut_list.instances(key, count))
                mark = cut_list.openings[key.opening].built.opening.mark
                pieces.append(placed_piece(placed, mark, key.piece, next(instances[key])))
            yield CutStick(
                name=next(names),
                length=+layout.length,
                on_hand=layout.on_hand,
                price=Cents(layout.price_cents),
                pieces=tuple(pieces),
                offcut=layout.offcut,
                kept=layout.kept,
            )


def placed_piece(placed: Placed, mark: str, piece: PieceKey, instance: int) -> PlacedPiece:
    """A piece's place on a stick."""
    return PlacedPiece(
        opening=mark,
        piece=piece,
        instance=instance,
        start=+placed.start,
        length=+placed.length,
        turned=placed.turned,
        reversed=placed.reversed,
        shares_cut=placed.shares_cut,
    )


def bought(plan: Plan) -> list[BuyLine]:
    """What to buy for a plan, a line for each length and price."""
    quantities: Counter[Bought] = Counter()
    for layout in plan.layouts:
        if not layout.on_hand:
            quantities[plan.profile, layout.length, layout.price_cents] += layout.times
    return buy_lines(quantities)


def buy_lines(quantities: Mapping[Bought, int]) -> list[BuyLine]:
    """What to buy, the shorter lengths of a profile first."""
    return [
        BuyLine(profile, +length, count, Cents(price), Cents(price * count))
        for (profile, length, price), count in sorted(quantities.items())
    ]
