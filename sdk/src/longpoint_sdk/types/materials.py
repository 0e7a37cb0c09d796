"""Types of the document's part "materials". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

import msgspec

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Rate, Share


class Bought(Result, frozen=True, kw_only=True):
    """Packages of one size.

    Attributes:
        package: The name of the package.
        size: One package holds this much, in the material's unit.
        count: The number of packages to buy.
        price: The price of one; null where none was given. An amount of money as decimal text with two
            places.
        cost: The cost of them all; null where no price was given. An amount of money as decimal text with two
            places.
    """

    package: str
    size: float
    count: int
    price: Decimal | None
    cost: Decimal | None


class Figure(Result, frozen=True, kw_only=True):
    """A number that something was computed from.

    Attributes:
        name: The name of the figure in words.
        value: The amount, in `unit`.
        unit: The unit that it is counted in.
    """

    name: str
    value: float
    unit: str


class Material(Result, frozen=True, kw_only=True):
    """The amount that is used of a material, waste included, and the packages that cover it.

    Attributes:
        code: A stable name of the material, as in `packages`.
        name: The name of the material in words.
        quantity: The amount that is used, in `unit`.
        unit: The unit that it is counted in.
        bought: The packages to buy.
        rule: It says in words how the amount was computed.
        from: The figures it was computed from.
        rates: Names of the rates it was computed at.
        by_opening: It says how much of the material is for each opening.
        notes: They say what to check.
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
    """A list of what to buy beside the sticks.

    Attributes:
        lines: The materials that are used, one a line.
        rates: The rates that were used.
    """

    lines: list[Material]
    rates: list[Rate]
