"""Types of the document's part "costs". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import Result


class AmountsOut(Result, frozen=True, kw_only=True):
    """Amounts by category. `stock` is what is in pieces, `waste` kerfs, trims and short offcuts, `kept_offcut`
    what goes back on the rack.

    Attributes:
        consumable: Materials beside the sticks.
        labour: Hands-on hours at the wages given.
        total: All of them.
    """

    stock: Decimal
    waste: Decimal
    kept_offcut: Decimal
    consumable: Decimal
    labour: Decimal
    total: Decimal


class CostLineOut(Result, frozen=True, kw_only=True):
    """A line of the whole-house view. `by_opening` has each opening's amount in the order of `openings`; they
    add up to `amount`.
    """

    category: str
    name: str
    amount: Decimal
    by_opening: list[Decimal]


class OpeningCostOut(Result, frozen=True, kw_only=True):
    """What an opening costs, all of its count together."""

    opening: str
    room: str
    amounts: AmountsOut


class RoomCostOut(Result, frozen=True, kw_only=True):
    """What a room costs: the sum of its openings."""

    room: str
    openings: int
    amounts: AmountsOut


class UnpricedOut(Result, frozen=True, kw_only=True):
    """A material or a task that no price was given for: it costs nothing here.

    Attributes:
        category: consumable for a material, labour for a task.
        name: The material's code, or the task.
    """

    category: str
    name: str


class CostOut(Result, frozen=True, kw_only=True):
    """The same money by line, by opening and by room: each view adds up to the same cent.

    Attributes:
        lines: By what it is spent on.
        openings: By opening.
        rooms: By room.
        unpriced: What had no price and so is not in the sum.
    """

    currency: str
    total: AmountsOut
    lines: list[CostLineOut]
    openings: list[OpeningCostOut]
    rooms: list[RoomCostOut]
    unpriced: list[UnpricedOut]
