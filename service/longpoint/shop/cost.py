"""The cost sheet: one set of lines, shared out to openings so that every view adds up to the same cent."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.amounts import Amounts
from longpoint.shop.apportion import apportion, round_half_up
from longpoint.shop.build import CutList
from longpoint.shop.takeoff import (
    CostLine,
    CostSheet,
    CostTotals,
    Hours,
    Labour,
    Material,
    Materials,
    OpeningCost,
    RoomCost,
    Unpriced,
)
from longpoint.shop.wages import NO_WAGES, Wages
from longpoint.stock import Plan
from longpoint.values import Cents

CATEGORIES = ("stock", "waste", "kept_offcut", "consumable", "labour")


def cost_sheet(
    cut_list: CutList, amounts: Sequence[Amounts], bought: Materials, time: Hours, wages: Wages = NO_WAGES
) -> CostSheet:
    """What the job costs.

    Each line's cents are shared among openings by the largest remainder: sticks by the length that each opening's
    pieces take of the profile, materials by what it uses, labor by its minutes. Rooms are sums of openings.
    """
    consumables = [(line, _price(line)) for line in bought.lines]
    labour = [(work, wages.of(work.task)) for work in time.tasks]
    lines = (
        *(line for plan in cut_list.plans for line in _stock(cut_list, plan)),
        *(_consumable(line, cents) for line, cents in consumables if cents is not None),
        *(_labour(work, hour) for work, hour in labour if hour is not None),
    )
    openings = tuple(
        OpeningCost(one.opening, one.room, _totals((line.category, line.by_opening[at]) for line in lines))
        for at, one in enumerate(amounts)
    )
    return CostSheet(
        currency=cut_list.house.currency,
        total=_totals((line.category, line.amount) for line in lines),
        lines=lines,
        openings=openings,
        rooms=_rooms(openings, amounts),
        unpriced=(
            *(Unpriced("stock", profile) for profile in cut_list.unstocked),
            *(Unpriced("consumable", line.code) for line, cents in consumables if cents is None),
            *(Unpriced("labour", work.task) for work, hour in labour if hour is None),
        ),
    )


def _price(line: Material) -> int | None:
    """Cents of a material's packages; None when there is none or one of them has no price."""
    cents = 0
    for package in line.bought:
        if package.cost is None:
            return None
        cents += package.cost
    return cents if line.bought else None


def _line(category: str, name: str, cents: int, weights: Sequence[Fraction]) -> CostLine:
    return CostLine(category, name, Cents(cents), tuple(map(Cents, apportion(cents, weights))))


def _consumable(line: Material, cents: int) -> CostLine:
    return _line("consumable", line.code, cents, [share.quantity for share in line.by_opening])


def _labour(work: Labour, hour_cents: int) -> CostLine:
    cents = round_half_up(work.minutes * hour_cents / 60)
    return _line("labour", work.task, cents, [share.quantity for share in work.by_opening])


def _stock(cut_list: CutList, plan: Plan) -> Iterable[CostLine]:
    """A profile's sticks in three lines: what is in pieces, what is waste, and what goes back on the rack.

    Each stick's price is split by length. Openings share each line by the length of their pieces, whichever stick
    those came from, so that none pays for its pieces having been laid on a wasteful one.
    """
    lengths = [Fraction(0)] * len(cut_list.openings)
    whole = 0
    # By the length of the stick, since adding up shares of many lengths makes ever longer fractions.
    used_of: dict[Fraction, Fraction] = {}
    kept_of: dict[Fraction, Fraction] = {}
    for layout in plan.layouts:
        for keys in layout.keys:
            for key, placed in zip(keys, layout.placed, strict=True):
                lengths[key.opening] += placed.length
        price, stick = layout.price_cents * layout.times, layout.length
        used_of[stick] = used_of.get(stick, Fraction(0)) + price * sum(
            placed.length for placed in layout.placed
        )
        if layout.kept:
            kept_of[stick] = kept_of.get(stick, Fraction(0)) + price * layout.offcut
        whole += price
    used, kept = (
        sum((much / stick for stick, much in one.items()), Fraction(0)) for one in (used_of, kept_of)
    )
    split = apportion(plan.cost_cents, (used, max(Fraction(0), whole - used - kept), kept))
    for category, cents in zip(("stock", "waste", "kept_offcut"), split, strict=True):
        yield _line(category, plan.profile, cents, lengths)


def _totals(amounts: Iterable[tuple[str, int]]) -> CostTotals:
    sums = dict.fromkeys(CATEGORIES, 0)
    for category, cents in amounts:
        sums[category] += cents
    whole = Cents(sum(sums.values()))
    return CostTotals(**{category: Cents(cents) for category, cents in sums.items()}, total=whole)


def _rooms(openings: tuple[OpeningCost, ...], amounts: Sequence[Amounts]) -> tuple[RoomCost, ...]:
    rooms: dict[str, list[int]] = {}
    for at, one in enumerate(openings):
        rooms.setdefault(one.room, []).append(at)
    return tuple(
        RoomCost(
            room,
            sum(amounts[at].count for at in places),
            _totals(
                (category, getattr(openings[at].amounts, category))
                for at in places
                for category in CATEGORIES
            ),
        )
        for room, places in rooms.items()
    )
