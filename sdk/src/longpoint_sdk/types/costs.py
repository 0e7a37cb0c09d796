"""Types of the document's part "costs". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal

from longpoint_sdk.types._base import Result


class CostLine(Result, frozen=True, kw_only=True):
    """A line of the whole-house view.

    Attributes:
        category: The category: stock, waste, kept_offcut, consumable or labor.
        name: The profile, the material's code or the task.
        amount: The amount for the whole house. An amount of money as decimal text with two places.
        by_opening: The amount of each opening, in the order of `openings`; they add up to `amount`.
    """

    category: str
    name: str
    amount: Decimal
    by_opening: list[Decimal]


class CostTotals(Result, frozen=True, kw_only=True):
    """Amounts by category.

    Attributes:
        stock: The part of the sticks' price that falls on the wood that became pieces of trim. An amount of
            money as decimal text with two places.
        waste: The cost of kerfs, end trims and offcuts too short to keep. An amount of money as decimal text
            with two places.
        kept_offcut: The cost of offcuts and lengths that are left. An amount of money as decimal text with
            two places.
        consumable: The cost of the materials beside the sticks. An amount of money as decimal text with two
            places.
        labor: The cost of the hands-on hours at the wages given. An amount of money as decimal text with two
            places.
        total: The sum of all categories. An amount of money as decimal text with two places.
    """

    stock: Decimal
    waste: Decimal
    kept_offcut: Decimal
    consumable: Decimal
    labor: Decimal
    total: Decimal


class OpeningCost(Result, frozen=True, kw_only=True):
    """It says what an opening costs, all of its count together.

    Attributes:
        opening: The mark of the opening.
        room: The room that the opening is in.
        amounts: The cost of the opening, by category.
    """

    opening: str
    room: str
    amounts: CostTotals


class RoomCost(Result, frozen=True, kw_only=True):
    """What a room costs: the sum of its openings.

    Attributes:
        room: The name of the room; it may be empty.
        openings: The number of openings in the room, those alike counted each.
        amounts: The cost of the room, by category.
    """

    room: str
    openings: int
    amounts: CostTotals


class Unpriced(Result, frozen=True, kw_only=True):
    """A profile, a material or a task that no price was given for: it costs nothing here.

    Attributes:
        category: Stock for a profile that no stock was given for, or whose stock does not give what is held
            back; consumable for a material, labor for a task.
        name: The profile, the material's code or the task.
    """

    category: str
    name: str


class CostSheet(Result, frozen=True, kw_only=True):
    """The same money by line, by opening and by room: each view adds up to the same cent.

    Attributes:
        currency: The currency of every amount.
        total: The whole house, by category; of what is in `unpriced` it holds nothing.
        lines: The cost by what it is spent on.
        openings: The cost by opening.
        rooms: The cost by room.
        unpriced: These had no price and so are not in the sum.
    """

    currency: str
    total: CostTotals
    lines: list[CostLine]
    openings: list[OpeningCost]
    rooms: list[RoomCost]
    unpriced: list[Unpriced]
