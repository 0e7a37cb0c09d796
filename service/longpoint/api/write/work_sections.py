"""Materials, hours, money and cautions as the wire carries them."""

from __future__ import annotations

from collections.abc import Iterable

from longpoint.api.wire.money import money
from longpoint.api.wire.work import (
    AmountsOut,
    BoughtOut,
    CautionOut,
    CostLineOut,
    CostOut,
    FigureOut,
    HoursOut,
    LabourOut,
    MaterialOut,
    MaterialsOut,
    OpeningCostOut,
    RateOut,
    RoomCostOut,
    ShareOut,
    UnpricedOut,
    WaitOut,
)
from longpoint.lengths import Real
from longpoint.shop import (
    Bought,
    Caution,
    CostSheet,
    CostTotals,
    Hours,
    Labour,
    Material,
    Materials,
    Rate,
    Share,
)

PLACES = 4
"""Decimals of a quantity: a ten-thousandth of a fluid ounce or a minute is nothing."""


def caution_out(one: Caution) -> CautionOut:
    return CautionOut(one.code, one.text, one.source, list(one.applies_to))


def materials_out(found: Materials) -> MaterialsOut:
    return MaterialsOut([_material(line) for line in found.lines], _rates(found.rates))


def hours_out(found: Hours) -> HoursOut:
    return HoursOut(
        _number(found.minutes / 60),
        [_labour(each) for each in found.operations],
        _number(found.wait_hours),
        [WaitOut(wait.after, _number(wait.hours), wait.rate) for wait in found.waits],
        _rates(found.rates),
    )


def cost_out(sheet: CostSheet, currency: str) -> CostOut:
    return CostOut(
        currency=currency,
        total=_amounts(sheet.cents),
        lines=[
            CostLineOut(
                line.category, line.name, money(line.cents), [money(cents) for cents in line.by_opening]
            )
            for line in sheet.lines
        ],
        openings=[OpeningCostOut(one.opening, one.room, _amounts(one.cents)) for one in sheet.openings],
        rooms=[RoomCostOut(one.room, one.openings, _amounts(one.cents)) for one in sheet.rooms],
        unpriced=[UnpricedOut(one.category, one.name) for one in sheet.unpriced],
    )


def _number(value: Real) -> float:
    return round(float(value), PLACES)


def _material(line: Material) -> MaterialOut:
    return MaterialOut(
        line.code,
        line.name,
        _number(line.quantity),
        line.unit,
        [_bought(each) for each in line.bought],
        line.rule,
        [FigureOut(each.name, _number(each.value), each.unit) for each in line.inputs],
        list(line.rates),
        _shares(line.by_opening),
        list(line.notes),
    )


def _bought(one: Bought) -> BoughtOut:
    price = one.price_cents
    return BoughtOut(
        one.package,
        _number(one.size),
        one.count,
        None if price is None else money(price),
        None if price is None else money(price * one.count),
    )


def _labour(one: Labour) -> LabourOut:
    return LabourOut(
        one.operation,
        _number(one.quantity),
        one.unit,
        _number(one.minutes),
        one.rule,
        list(one.rates),
        _shares(one.by_opening),
    )


def _shares(shares: Iterable[Share]) -> list[ShareOut]:
    return [ShareOut(share.opening, _number(share.quantity)) for share in shares]


def _rates(rates: Iterable[Rate]) -> list[RateOut]:
    return [RateOut(rate.name, _number(rate.value), rate.unit, rate.source, rate.says) for rate in rates]


def _amounts(cents: CostTotals) -> AmountsOut:
    return AmountsOut(
        money(cents.stock),
        money(cents.waste),
        money(cents.kept_offcut),
        money(cents.consumable),
        money(cents.labour),
        money(cents.total),
    )
