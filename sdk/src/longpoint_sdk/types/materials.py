"""Types of the document's part "materials". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

import msgspec

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Rate, Share


class Bought(Result, frozen=True, kw_only=True):
    """Packages of one size.

    Attributes:
        package: Its name.
        size: How much one holds, in the material's unit.
        count: How many to buy.
        price: Of one; null where none was given.
        cost: Of them all; null where no price was given.
    """

    package: str
    size: float
    count: int
    price: Decimal | None
    cost: Decimal | None


class Figure(Result, frozen=True, kw_only=True):
    """A number that something was computed from.

    Attributes:
        name: What it is, in words.
        value: How much, in `unit`.
        unit: What it is counted in.
    """

    name: str
    value: float
    unit: str


class Material(Result, frozen=True, kw_only=True):
    """What is used of a material, waste included, and the packages that cover it.

    Attributes:
        code: A stable name, as in `packages`.
        name: Its name in words.
        quantity: How much is used, in `unit`.
        unit: What it is counted in.
        bought: The packages to buy.
        rule: How it was computed, in words.
        from: The figures it was computed from.
        rates: Names of the rates it was computed at.
        by_opening: How much of it is for each opening.
        notes: What to check.
    """

    code: str
    name: str
    quantity: float
    unit: str
    bought: list[Bought]
    rule: str
    from_: list[Figure] = msgspec.field(name="from")
    rates: list[str]
    by_opening: list[Share]
    notes: list[str]


class Materials(Result, frozen=True, kw_only=True):
    """What to buy beside the sticks.

    Attributes:
        lines: Each material that is used.
        rates: Every rate that was used.
    """

    lines: list[Material]
    rates: list[Rate]
