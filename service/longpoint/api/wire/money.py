"""Money on the wire: decimal text, whole cents inside."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated

from msgspec import Meta

MoneyText = Annotated[
    str,
    Meta(
        pattern=r"^[0-9]{1,9}(\.[0-9]{1,2})?$",
        description="An amount of money as decimal text, at most two places.",
        examples=["14.80"],
    ),
]

MoneyOut = Annotated[str, Meta(extra_json_schema={"format": "money"})]
"""An amount that goes out, as decimal text with two places."""


def cents(money: str) -> int:
    """Decimal money text as whole cents."""
    return int(Decimal(money) * 100)


def money(amount_cents: int) -> str:
    """Whole cents as decimal text."""
    return f"{amount_cents // 100}.{amount_cents % 100:02d}"
