"""Types of the document's part "rack". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import LengthText, Result
from longpoint_sdk.types.stock import Defect


class StoredLength(Result, frozen=True, kw_only=True):
    """A length of stock on the rack, as it was sent.

    Attributes:
        length: From end to end.
        profile: The profile's name, as the trim specs have it. A name on one line, not starting with a space.
        id: Its id.
        revision: The schedule's revision that put it there.
        exact: Its lengths exactly. Every length exactly, by its JSON pointer, as a fraction of an inch.
        defects: Stretches no piece may touch.
        note: Where it came from, or stands. Free text; may have several lines.
        price: What using it is taken to cost. An amount of money as decimal text, at most two places.
    """

    length: LengthText
    profile: str
    id: str
    revision: int
    exact: dict[str, str]
    defects: list[Defect] = []
    note: str = ""
    price: Decimal = Decimal("0.00")
