"""One line of what to buy beside the sticks, and what it is put together from."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.amounts import Amounts
from longpoint.shop.packages import Package, buy
from longpoint.shop.quantity import Quantity
from longpoint.shop.takeoff import Bought, Figure, Material, Share
from longpoint.texts import Sentence

CUBIC_INCHES_A_FLUID_OUNCE = Fraction(231, 128)
SQUARE_INCHES_A_SQUARE_FOOT = 144

Offers = Mapping[str, tuple[Package, ...]]


def material_line(
    code: str,
    name: str,
    unit: str,
    shares: list[tuple[str, Fraction]],
    offers: Offers,
    rule: str,
    inputs: tuple[Figure, ...],
    rates: tuple[str, ...],
    notes: tuple[Sentence, ...] = (),
) -> Material:
    quantity = sum((share for _, share in shares), Fraction(0))
    bought: tuple[Bought, ...] = buy(quantity, offers[code]) if code in offers else ()
    by_opening = tuple(Share(opening, Quantity(share)) for opening, share in shares)
    return Material(code, name, Quantity(quantity), unit, bought, rule, inputs, rates, by_opening, notes)


def figure(name: str, value: Fraction, unit: str) -> Figure:
    return Figure(name, Quantity(value), unit)


def per_opening(
    amounts: Sequence[Amounts], each: Callable[[Amounts], Fraction]
) -> list[tuple[str, Fraction]]:
    return [(one.opening, each(one)) for one in amounts]


def total(amounts: Sequence[Amounts], each: Callable[[Amounts], Fraction]) -> Fraction:
    return sum((each(one) for one in amounts), Fraction(0))
