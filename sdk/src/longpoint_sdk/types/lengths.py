"""Types of the document's part "lengths". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk._measured import Measured
from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import Rounding


class LengthRead(Measured, Result, frozen=True, kw_only=True):
    """One length that was read.

    Attributes:
        exact: The exact length in `unit`, as a fraction or whole number; null when it is irrational.
        real: When it is irrational, the length in `unit` before rounding, to nine decimals; else null.
        text: The length rounded as asked, as a tape reads.
        unit: The unit of all of these.
        residual: What rounding added: positive when the piece is long.
        given: The text it was read from.
        feet_inches: The rounded length in feet and inches, when it is rounded to a fraction of an inch.
    """

    exact: str | None
    real: float | None
    text: str
    unit: Unit | str
    residual: str
    given: str
    feet_inches: str | None


class LengthsAnswer(Result, frozen=True, kw_only=True):
    """The lengths that were read, in the order they came.

    Attributes:
        lengths: The answer has one for each length that was given.
    """

    lengths: list[LengthRead]


class LengthsRequest(Request, frozen=True, kw_only=True):
    """Lengths to read.

    Attributes:
        lengths: The texts to read, each as it was written down.
        rounding: It says how the answered lengths are rounded.
        unit: The unit of those that carry none; without it each must carry its own.
    """

    lengths: list[LengthText]
    rounding: Rounding = Rounding()
    unit: Unit | None = None
