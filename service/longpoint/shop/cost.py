"""The cost sheet: one set of lines, shared out to openings so that every view adds up to the same cent."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from longpoint.lengths import Fraction, round_to
from longpoint.shop.amounts import Amounts
from longpoint.shop.apportion import apportion, round_half_up
from longpoint.shop.build import CutList
from longpoint.shop.paid import Paid
from longpoint.shop.takeoff import (
    CostLine,
    CostSheet,
    CostTotals,
    Hours,
    Labor,
    Material,
    Materials,
    OpeningCost,
    RoomCost,
    Unpriced,
)
from longpoint.shop.wages import NO_WAGES, Wages
from longpoint.values import Cents

CATEGORIES = ("stock", "waste", "kept_offcut", "consumable", "labor")


def cost_sheet(
    cut_list: CutList, amounts: Sequence[Amounts], bought: Materials, time: Hours, wages: Wages = NO_WAGES
) -> CostSheet:
    """What the house costs.

    Each line's cents are shared among openings by the largest remainder: sticks by the length that each opening's
    pieces take of the profile, materials by what it uses, labor by its minutes. Rooms are sums of openings.
    """
    consumables = [(line, _price(line)) for line in bought.lines]
    labor = [(work, wages.of(work.task)) for work in time.tasks]
    lines = (
        *(line for profile in _profiles(cut_list) for line in _stock(cut_list, profile)),
        *(_consumable(line, cents) for line, cents in consumables if cents is not None),
        *(_labor(work, hour) for work, hour in labor if hour is not None),
    )
    openings = tuple(
        OpeningCost(one.opening, one.room, summed((line.category, line.by_opening[at]) for line in lines))
        for at, one in enumerate(amounts)
    )
    return CostSheet(
        currency=cut_list.house.currency,
        total=summed((line.category, line.amount) for line in lines),
        lines=lines,
        openings=openings,
        rooms=_rooms(openings, amounts),
        unpriced=(
            *(
                Unpriced("stock", profile)
                for profile in cut_list.unstocked
                if profile not in (cut_list.paid or {})
            ),
            *(Unpriced("stock", profile) for profile in cut_list.later_missing),
            *(Unpriced("consumable", line.code) for line, cents in consumables if cents is None),
            *(Unpriced("labor", work.task) for work, hour in labor if hour is None),
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


def _labor(work: Labor, hour_cents: int) -> CostLine:
    cents = round_half_up(work.minutes * hour_cents / 60)
    return _line("labor", work.task, cents, [share.quantity for share in work.by_opening])


def _profiles(cut_list: CutList) -> Iterable[str]:
    """Profiles that sticks are planned of, and others that something was paid for."""
    planned = (plan.profile for plan in (*cut_list.plans, *cut_list.later))
    return dict.fromkeys([*planned, *(cut_list.paid or {})])


def _stock(cut_list: CutList, profile: str) -> Iterable[CostLine]:
    """A profile's sticks in three lines: what is in pieces, what is waste, and what is kept.

    Each stick's price is split by length. Openings share each line by the length of their pieces, whichever stick
    those came from, so that none pays for its pieces having been laid on a wasteful one. Where it is known what was
    paid before, that is in the sum, and lengths on hand cost nothing more.
    """
    paid = None if cut_list.paid is None else cut_list.paid.get(profile, Paid())
    lengths = [Fraction(0)] * len(cut_list.openings)
    plans = [plan for plan in (*cut_list.plans, *cut_list.later) if plan.profile == profile]
    layouts = [layout for plan in plans for layout in plan.layouts]
    whole = 0
    # By the length of the stick, since adding up shares of many lengths makes ever longer fractions.
    used_of: dict[Fraction, Fraction] = {}
    kept_of: dict[Fraction, Fraction] = {}
    for layout in layouts:
        for keys in layout.keys:
            for key, placed in zip(keys, layout.placed, strict=True):
                lengths[key.opening] += placed.length
        if paid is not None and layout.on_hand:
            continue
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
    if paid is not None:
        lengths = _needed(cut_list, profile)
        used, kept, whole = used + paid.pieces, kept + paid.kept, whole + paid.whole
    split = apportion(whole, (used, max(Fraction(0), whole - used - kept), kept))
    for category, cents in zip(("stock", "waste", "kept_offcut"), split, strict=True):
        yield _line(category, profile, cents, lengths)


def _needed(cut_list: CutList, profile: str) -> list[Fraction]:
    """How much of a profile the pieces of each opening are, those that were cut too."""
    rounding = cut_list.house.rounding
    return [
        one.count
        * sum(
            (round_to(piece.overall, rounding) for piece in one.built.pieces if piece.profile == profile),
            Fraction(0),
        )
        for one in cut_list.openings
    ]


def summed(amounts: Iterable[tuple[str, int]]) -> CostTotals:
    """Amounts by category."""
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
            summed(
                (category, getattr(openings[at].amounts, category))
                for at in places
                for category in CATEGORIES
            ),
        )
        for room, places in rooms.items()
    )
