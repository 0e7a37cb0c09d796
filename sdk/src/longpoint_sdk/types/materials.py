"""Types of the document's part "materials". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

import msgspec

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import RateOut, ShareOut


class BoughtOut(Result, frozen=True, kw_only=True):
    """Packages of one size; `price` is of each, null where none was given.

    Attributes:
        package: Its name.
        count: How many to buy.
        cost: Of them all.
    """

    package: str
    size: float
    count: int
    price: Decimal | None
    cost: Decimal | None


class FigureOut(Result, frozen=True, kw_only=True):
    """A number that something was computed from.

    Attributes:
        name: What it is.
        value: How much, in `unit`.
    """

    name: str
    value: float
    unit: str


class MaterialOut(Result, frozen=True, kw_only=True):
    """What is used of a material, waste included, and the packages that cover it.

    `rule` says how it was computed, `from` from which figures, `rates` at which rates.

    Attributes:
        code: A stable name, as in `packages`.
        name: Its name in words.
        quantity: How much is used, in `unit`.
        bought: The packages to buy.
        by_opening: How much of it is for each opening.
        notes: What was assumed.
    """

    code: str
    name: str
    quantity: float
    unit: str
    bought: list[BoughtOut]
    rule: str
    from_: list[FigureOut] = msgspec.field(name="from")
    rates: list[str]
    by_opening: list[ShareOut]
    notes: list[str]


class MaterialsOut(Result, frozen=True, kw_only=True):
    """What to buy beside the sticks, and every rate that was used."""

    lines: list[MaterialOut]
    rates: list[RateOut]
