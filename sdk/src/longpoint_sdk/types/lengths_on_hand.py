"""Types of the document's part "lengths_on_hand". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Any, Literal

from longpoint_sdk.types._base import LengthText, Result, request_from
from longpoint_sdk.types.common import LengthOnHand
from longpoint_sdk.types.stock import Defect

if TYPE_CHECKING:
    LengthState = Literal["delivered", "on_hand", "ordered", "used_up"]
    """What can be said of a lot of lengths: some are still to come, some came, some are there, or none is left.
    """
else:
    LengthState = str


class StoredLength(Result, frozen=True, kw_only=True):
    """A lot of lengths on hand, as it was sent.

    Attributes:
        length: The length of each length on hand, measured from end to end. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        profile: The profile's name, as trim specs and stock have it. A name on one line, not starting with a
            space.
        id: The id of the lot.
        revision: The schedule's revision that last changed it.
        available: How many are left to plan with: what was ordered or, where more came, delivered, less those
            used up.
        states: Those of these that are true of it now: ordered while some are to come, delivered when some
            came, on_hand while some of those that came are left, used_up when none is left to plan with.
        notes: What is odd of it: more came than were ordered.
        exact: The exact value of every length in it. Every length exactly, by its JSON pointer, as a fraction
            of an inch.
        defects: The stretches that no piece may touch.
        delivered: The number that came or were found in all. When left out, it is none of those that were
            ordered and, where nothing is said of an order, one.
        lot: The name of these sticks, entered together; no other lot of the schedule has it. The service
            names it where this is left out. A name on one line, not starting with a space.
        note: It says where the lot came from, or where it stands. Free text; may have several lines.
        ordered: How many were ordered in all; none when left out.
        paid: The price that was paid for each; `price` is what using one is taken to cost when sticks are
            planned. Leave `price` out for those that are paid for, so that they are used before any are
            bought. An amount of money as decimal text, at most two places.
        price: The amount that using it is taken to cost. An amount of money as decimal text, at most two
            places.
        stick: The stick that it is left over from, where it is an offcut of one.
        used_up: The number of them that are gone in all: cut, spoiled or given away. When left out, it is as
            many as were recorded before; none of a new lot.
    """

    length: LengthText
    profile: str
    id: str
    revision: int
    available: int
    states: list[LengthState | str]
    notes: list[str]
    exact: dict[str, str]
    defects: list[Defect] = []
    delivered: int | None = None
    lot: str | None = None
    note: str = ""
    ordered: int | None = None
    paid: Decimal = Decimal("0.00")
    price: Decimal = Decimal("0.00")
    stick: str | None = None
    used_up: int | None = None

    def changed(self, **fields: Any) -> LengthOnHand:
        """The request that changes it: all as it was read, with other values for these fields.

        Raises:
            TypeError: for a field that LengthOnHand does not have.
        """
        return request_from(LengthOnHand, self, fields)
