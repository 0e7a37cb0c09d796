"""The cost sheet: one set of lines, shared out to openings so that every view adds up to the same cent."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction
from longpoint.shop.amounts import Amounts
from longpoint.shop.apportion import apportion, round_half_up
from longpoint.shop.house import CutList, opening_index
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
from longpoint.stock import Plan

CATEGORIES = ("stock", "waste", "kept_offcut", "consumable", "labour")


class Wages(Value, frozen=True):
    """What an hour costs.

    Attributes:
        hour_cents: for every operation that has no wage of its own; None leaves those unpriced.
        by_operation: cents an hour by operation.
    """

    hour_cents: int | None = None
    by_operation: tuple[tuple[str, int], ...] = ()

    def of(self, operation: str) -> int | None:
        return dict(self.by_operation).get(operation, self.hour_cents)


def cost_sheet(
    cut_list: CutList, amounts: Sequence[Amounts], bought: Materials, time: Hours, wages: Wages
) -> CostSheet:
    """What the job costs.

    Each line's cents are shared among openings by the largest remainder: sticks by the length that each opening's
    pieces take of the profile, materials by what it uses, labour by its minutes. Rooms are sums of openings.
    """
    consumables = [(line, _price(line)) for line in bought.lines]
    labour = [(work, wages.of(work.operation)) for work in time.operations]
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
        lines=lines,
        openings=openings,
        rooms=_rooms(openings, amounts),
        cents=_totals((line.category, line.cents) for line in lines),
        unpriced=(
            *(Unpriced("consumable", line.code) for line, cents in consumables if cents is None),
            *(Unpriced("labour", work.operation) for work, hour in labour if hour is None),
        ),
    )


def _price(line: Material) -> int | None:
    """Cents of a material's packages; None when there is none or one of them has no price."""
    cents = 0
    for package in line.bought:
        if package.price_cents is None:
            return None
        cents += package.price_cents * package.count
    return cents if line.bought else None


def _consumable(line: Material, cents: int) -> CostLine:
    weights = [Fraction(share.quantity) for share in line.by_opening]
    return CostLine("consumable", line.code, cents, apportion(cents, weights))


def _labour(work: Labour, hour_cents: int) -> CostLine:
    cents = round_half_up(work.minutes * hour_cents / 60)
    weights = [Fraction(share.quantity) for share in work.by_opening]
    return CostLine("labour", work.operation, cents, apportion(cents, weights))


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
                lengths[opening_index(key)] += placed.length
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
        yield CostLine(category, plan.profile, cents, apportion(cents, lengths))


def _totals(amounts: Iterable[tuple[str, int]]) -> CostTotals:
    sums = dict.fromkeys(CATEGORIES, 0)
    for category, cents in amounts:
        sums[category] += cents
    return CostTotals(**sums, total=sum(sums.values()))


def _rooms(openings: tuple[OpeningCost, ...], amounts: Sequence[Amounts]) -> tuple[RoomCost, ...]:
    rooms: dict[str, list[int]] = {}
    for at, one in enumerate(openings):
        rooms.setdefault(one.room, []).append(at)
    return tuple(
        RoomCost(
            room,
            sum(amounts[at].count for at in places),
            _totals(
                (category, getattr(openings[at].cents, category)) for at in places for category in CATEGORIES
            ),
        )
        for room, places in rooms.items()
    )
