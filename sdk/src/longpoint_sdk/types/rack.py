"""Types of the document's part "rack". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.stock import DefectIn


class OffcutStored(Result, frozen=True, kw_only=True):
    """A length of stock on the rack, as it was sent.

    Attributes:
        revision: The schedule's revision that put it there.
        exact: Every length exactly, by its JSON pointer, as a fraction of an inch.
    """

    id: str
    revision: int
    profile: str
    length: str
    price: Decimal
    defects: list[DefectIn]
    note: str
    exact: dict[str, str]
