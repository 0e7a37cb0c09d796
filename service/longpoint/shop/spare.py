"""Spare sticks: what a profile's slack asks the yard for besides the sticks that are cut."""

from __future__ import annotations

import math
from collections.abc import Iterable

from longpoint.lengths import Fraction
from longpoint.shop.build import CutList
from longpoint.shop.yard import Stock
from longpoint.stock import Plan
from longpoint.values import Value


class Spare(Value, frozen=True):
    """Spare sticks of one profile.

    Attributes:
        profile: theirs.
        length: of each; 0 where none can be bought.
        price_cents: of each.
        quantity: how many to buy.
        missing: how many are asked for that the yard does not have.
    """

    profile: str
    length: Fraction
    price_cents: int
    quantity: int
    missing: int = 0

    @property
    def cents(self) -> int:
        """Of all that are bought."""
        return self.price_cents * self.quantity


def spares(cut_list: CutList) -> tuple[Spare, ...]:
    """The spare sticks of each profile that asks for any; none of a part of a house, whose sticks are not all shown."""
    if not cut_list.whole:
        return ()
    asked = {stock.profile: stock for stock in cut_list.house.stock if stock.slack.asks_for_spare}
    found = (_spare(cut_list, plan, asked[plan.profile]) for plan in cut_list.plans if plan.profile in asked)
    return tuple(one for one in found if one.quantity or one.missing)


def _spare(cut_list: CutList, plan: Plan, stock: Stock) -> Spare:
    """Of the lengths that hold the longest piece, those that come to least; the shorter of two at one price.

    Lengths on hand that nothing is cut from, and that hold it, are spare already.
    """
    house, used = cut_list.house, plan.sticks
    pieces = [(placed.length, layout.times) for layout in plan.layouts for placed in layout.placed]
    least = max((length for length, _ in pieces), default=Fraction(0)) + 2 * house.end_trim
    running = sum((length * times for length, times in pieces), Fraction(0))
    wanted = running * Fraction(stock.slack.spare_percent).limit_denominator(1_000_000) / 100
    there = [one.length for one in stock.each_on_hand if one.key not in used and one.length >= least]

    def number(length: Fraction) -> int:
        lacking = max(Fraction(0), wanted - sum(there, Fraction(0)))
        return max(stock.slack.spare_sticks - len(there), math.ceil(lacking / length))

    offers = []
    for kind in stock.kinds:
        if kind.length >= least and not kind.defects:
            count = number(kind.length)
            have = count if kind.available is None else max(0, kind.available - used.get(kind.key, 0))
            bought = min(count, have)
            missing = count - bought
            offers.append((missing, bought * kind.price_cents, kind.length, kind.price_cents, bought))
    if not offers:
        lacking = number(max((kind.length for kind in stock.kinds), default=least or Fraction(1)))
        return Spare(stock.profile, Fraction(0), 0, 0, lacking)
    missing, _, length, price, bought = min(offers)
    return Spare(stock.profile, +length, price, bought, missing)


def spare_cents(found: Iterable[Spare]) -> int:
    """What they come to."""
    return sum(one.cents for one in found)
