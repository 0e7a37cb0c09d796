"""The wire's view of what a job takes: materials, hours, money, and what to beware of."""

from __future__ import annotations

import msgspec

from longpoint.api.wire.money import MoneyOut
from longpoint.shop import Task


class CautionOut(msgspec.Struct, frozen=True):
    """What to know before starting: it informs and defers, and approves nothing. `applies_to` names openings; empty
    for the whole job. `source` is what it leans on.

    Attributes:
        code: A stable name for it.
        text: The caution, in words.
    """

    code: str
    text: str
    source: str
    applies_to: list[str]


class RateOut(msgspec.Struct, frozen=True):
    """A rate that was reckoned with, and where it comes from.

    Attributes:
        name: Its field in the shop's `rates`.
        value: How much, in `unit`.
        unit: in, mil, percent, each, ft2, min, h or penny.
        source: Where it comes from: a published source, common practice, or the caller.
        says: What it is, in words.
    """

    name: str
    value: float
    unit: str
    source: str
    says: str


class FigureOut(msgspec.Struct, frozen=True):
    """A number that something was computed from.

    Attributes:
        name: What it is.
        value: How much, in `unit`.
    """

    name: str
    value: float
    unit: str


class ShareOut(msgspec.Struct, frozen=True):
    """One opening's part of a quantity, all of its count together."""

    opening: str
    quantity: float


class BoughtOut(msgspec.Struct, frozen=True):
    """Packages of one size; `price` is of each, null where none was given.

    Attributes:
        package: Its name.
        count: How many to buy.
        cost: Of them all.
    """

    package: str
    size: float
    count: int
    price: MoneyOut | None
    cost: MoneyOut | None


class MaterialOut(msgspec.Struct, frozen=True):
    """What is used of a material, waste included, and the packages that cover it.

    `rule` says how it was computed, `from` from which figures, `rates` at which rates.

    Attributes:
        code: A stable name, as in `packages`.
        name: Its name in words.
        quantity: How much is used, in `unit`.
        bought: The packages to buy.
        by_opening: How much of it is for each opening.
        notes: What was assumed.
    """

    code: str
    name: str
    quantity: float
    unit: str
    bought: list[BoughtOut]
    rule: str
    origin: list[FigureOut] = msgspec.field(name="from")
    rates: list[str]
    by_opening: list[ShareOut]
    notes: list[str]


class MaterialsOut(msgspec.Struct, frozen=True):
    """What to buy beside the sticks, and every rate that was used."""

    lines: list[MaterialOut]
    rates: list[RateOut]


class LabourOut(msgspec.Struct, frozen=True):
    """Hands-on minutes of one task: `quantity` of `unit`, by the rule, at the rates named.

    Attributes:
        by_opening: Minutes of each opening.
    """

    task: Task
    quantity: float
    unit: str
    minutes: float
    rule: str
    rates: list[str]
    by_opening: list[ShareOut]


class WaitOut(msgspec.Struct, frozen=True):
    """A drying wait, the whole job's together.

    Attributes:
        after: What has to dry.
        rate: The rate it is taken from.
    """

    after: str
    hours: float
    rate: str


class HoursOut(msgspec.Struct, frozen=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        tasks: Minutes by task.
        rates: Every rate that was used.
        wait_hours: All waits together.
    """

    hands_on_hours: float
    tasks: list[LabourOut]
    wait_hours: float
    waits: list[WaitOut]
    rates: list[RateOut]


class CostLineOut(msgspec.Struct, frozen=True):
    """A line of the whole-house view. `by_opening` has each opening's amount in the order of `openings`; they add up
    to `amount`."""

    category: str
    name: str
    amount: MoneyOut
    by_opening: list[MoneyOut]


class AmountsOut(msgspec.Struct, frozen=True):
    """Amounts by category. `stock` is what is in pieces, `waste` kerfs, trims and short offcuts, `kept_offcut` what
    goes back on the rack.

    Attributes:
        consumable: Materials beside the sticks.
        labour: Hands-on hours at the wages given.
        total: All of them.
    """

    stock: MoneyOut
    waste: MoneyOut
    kept_offcut: MoneyOut
    consumable: MoneyOut
    labour: MoneyOut
    total: MoneyOut


class OpeningCostOut(msgspec.Struct, frozen=True):
    """What an opening costs, all of its count together."""

    opening: str
    room: str
    amounts: AmountsOut


class RoomCostOut(msgspec.Struct, frozen=True):
    """What a room costs: the sum of its openings."""

    room: str
    openings: int
    amounts: AmountsOut


class UnpricedOut(msgspec.Struct, frozen=True):
    """A material or a task that no price was given for: it costs nothing here.

    Attributes:
        category: consumable for a material, labour for a task.
        name: The material's code, or the task.
    """

    category: str
    name: str


class CostOut(msgspec.Struct, frozen=True):
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
