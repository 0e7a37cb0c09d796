"""What was paid for sticks already."""

from __future__ import annotations

from longpoint.lengths import Fraction
from longpoint.values import Value


class Paid(Value, frozen=True):
    """What was paid for the sticks of one profile, in cents.

    Attributes:
        whole: All of it.
        pieces: What of it is in pieces that were cut, or are to be cut from lengths on hand.
        kept: What of it is in lengths and offcuts that are left then.
    """

    whole: int = 0
    pieces: Fraction = Fraction(0)
    kept: Fraction = Fraction(0)


class PaidLot(Value, frozen=True):
    """Lengths that were ordered or came.

    Attributes:
        lot: What they are called.
        profile: Theirs.
        length: Of each.
        paid: For each, in cents.
        counted: How many there are or were.
        available: How many are left.
    """

    lot: str
    profile: str
    length: Fraction
    paid: int
    counted: int
    available: int
