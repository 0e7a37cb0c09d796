"""Types of the document's part "basics". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk._measured import Measured
from longpoint_sdk.types._base import Result

if TYPE_CHECKING:
    Hand = Literal["left", "right"]
    """A side, as seen from the room or, at the saw, by whoever stands at it."""
    OrderKind = Literal["opening_by_opening", "setting_by_setting", "stick_by_stick"]
    """An order to cut in.

    stick_by_stick: each stick is finished before the next is picked up. opening_by_opening: each opening's
    pieces are finished before the next opening's. setting_by_setting: cuts of one setting are made together,
    whatever stick they are on.
    """
    Unit = Literal["cm", "ft", "in", "m", "mm"]
    """A unit of length, named as it is written after a number."""
else:
    Hand = str
    OrderKind = str
    Unit = str


class MarkedLength(Measured, Result, frozen=True, kw_only=True):
    """A length going out.

    Attributes:
        exact: The exact length in `unit`, as a fraction or whole number; null when it is irrational.
        real: When it is irrational, the length in `unit` before rounding, to nine decimals; else null.
        text: The length rounded as asked, as a tape reads.
        unit: The unit of all of these.
        residual: What rounding added: positive when the piece is long.
    """

    exact: str | None
    real: float | None
    text: str
    unit: Unit | str
    residual: str


class Rate(Result, frozen=True, kw_only=True):
    """A rate that was reckoned with, and where it comes from.

    Attributes:
        name: The name of its field in the shop's `rates`.
        value: The amount, in `unit`.
        unit: The unit: in, mil (1/1000 in), percent, each, ft2, s, min, h or penny.
        source: Where it comes from: a published source, common practice, or the caller.
        says: It says in words what the rate is.
    """

    name: str
    value: float
    unit: str
    source: str
    says: str


class Share(Result, frozen=True, kw_only=True):
    """One opening's part of a quantity, all of its count together.

    Attributes:
        opening: The mark of the opening.
        quantity: This share of the whole, in its unit.
    """

    opening: str
    quantity: float
