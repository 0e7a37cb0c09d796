"""What the materials, hours and cost answers are made of."""

from __future__ import annotations

from enum import StrEnum

import msgspec

from longpoint.lengths import Fraction
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import Rate
from longpoint.values import Cents, Value


class Figure(Value, frozen=True):
    """A number that something was computed from.

    Attributes:
        name: What it is, in words.
        value: How much, in `unit`.
        unit: What it is counted in.
    """

    name: str
    value: Quantity
    unit: str


class Share(Value, frozen=True):
    """One opening's part of a quantity, all of its count together.

    Attributes:
        opening: The opening's mark.
        quantity: How much, in the unit of the whole.
    """

    opening: str
    quantity: Quantity


class Bought(Value, frozen=True):
    """Packages of one size.

    Attributes:
        package: Its name.
        size: How much one holds, in the material's unit.
        count: How many to buy.
        price: Of one; null where none was given.
        cost: Of them all; null where no price was given.
    """

    package: str
    size: Quantity
    count: int
    price: Cents | None = None
    cost: Cents | None = None


class Material(Value, frozen=True):
    """What is used of a material, waste included, and the packages that cover it.

    Attributes:
        code: A stable name, as in `packages`.
        name: Its name in words.
        quantity: How much is used, in `unit`.
        unit: What it is counted in.
        bought: The packages to buy.
        rule: How it was computed, in words.
        inputs: The figures it was computed from.
        rates: Names of the rates it was computed at.
        by_opening: How much of it is for each opening.
        notes: What to check.
    """

    code: str
    name: str
    quantity: Quantity
    unit: str
    bought: tuple[Bought, ...]
    rule: str
    inputs: tuple[Figure, ...] = msgspec.field(name="from")
    rates: tuple[str, ...]
    by_opening: tuple[Share, ...]
    notes: tuple[str, ...] = ()


class Materials(Value, frozen=True):
    """What to buy beside the sticks.

    Attributes:
        lines: Each material that is used.
        rates: Every rate that was used.
    """

    lines: tuple[Material, ...]
    rates: tuple[Rate, ...]


class Task(StrEnum):
    """What hands-on time goes to."""

    MEASURE = "measure"
    PAINT = "paint"
    RIP = "rip"
    ROUT = "rout"
    CUT = "cut"
    SET_UP = "set_up"
    INSTALL = "install"
    NAIL = "nail"
    FILL = "fill"
    CAULK = "caulk"
    FINAL_COAT = "final_coat"


class Labor(Value, frozen=True):
    """Hands-on minutes of one task.

    Attributes:
        task: What is done.
        quantity: How much of it, in `unit`.
        unit: What it is counted in: openings, cuts, feet, square feet and so on.
        minutes: How long it takes.
        rule: How the quantity was computed, in words.
        rates: Names of the rates it was computed at.
        by_opening: Minutes of each opening.
    """

    task: Task
    quantity: Quantity
    unit: str
    minutes: Quantity
    rule: str
    rates: tuple[str, ...]
    by_opening: tuple[Share, ...]


class Wait(Value, frozen=True):
    """A drying wait, the whole house's together.

    Attributes:
        after: What has to dry.
        hours: How long it takes.
        rate: Name of the rate it is taken from.
    """

    after: str
    hours: Quantity
    rate: str


class Hours(Value, frozen=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        hands_on_hours: All tasks together.
        tasks: Minutes by task.
        wait_hours: All waits together.
        waits: Each wait, in order.
        rates: Every rate that was used.
    """

    hands_on_hours: Quantity
    tasks: tuple[Labor, ...]
    wait_hours: Quantity
    waits: tuple[Wait, ...]
    rates: tuple[Rate, ...]

    @property
    def minutes(self) -> Fraction:
        """All tasks together."""
        return self.hands_on_hours * 60


class CostLine(Value, frozen=True):
    """A line of the whole-house view.

    Attributes:
        category: stock, waste, kept_offcut, consumable or labor.
        name: The profile, the material's code or the task.
        amount: Of the whole house.
        by_opening: Each opening's amount, in the order of `openings`; they add up to `amount`.
    """

    category: str
    name: str
    amount: Cents
    by_opening: tuple[Cents, ...]


class CostTotals(Value, frozen=True):
    """Amounts by category.

    Attributes:
        stock: What is in pieces.
        waste: Kerfs, trims and short offcuts.
        kept_offcut: Offcuts and lengths that are left.
        consumable: Materials beside the sticks.
        labor: Hands-on hours at the wages given.
        total: All of them.
    """

    stock: Cents
    waste: Cents
    kept_offcut: Cents
    consumable: Cents
    labor: Cents
    total: Cents


class OpeningCost(Value, frozen=True):
    """What an opening costs, all of its count together.

    Attributes:
        opening: The opening's mark.
        room: Where it is.
        amounts: What it costs, by category.
    """

    opening: str
    room: str
    amounts: CostTotals


class RoomCost(Value, frozen=True):
    """What a room costs: the sum of its openings.

    Attributes:
        room: Its name; may be empty.
        openings: How many it has, those alike counted each.
        amounts: What it costs, by category.
    """

    room: str
    openings: int
    amounts: CostTotals


class Unpriced(Value, frozen=True):
    """A profile, a material or a task that no price was given for: it costs nothing here.

    Attributes:
        category: stock for a profile that no stock was given for, or whose stock does not give what is held back;
            consumable for a material, labor for a task.
        name: The profile, the material's code or the task.
    """

    category: str
    name: str


class CostSheet(Value, frozen=True):
    """The same money by line, by opening and by room: each view adds up to the same cent.

    Attributes:
        currency: Of every amount.
        total: The whole house, by category; of what is in `unpriced` it holds nothing.
        lines: By what it is spent on.
        openings: By opening.
        rooms: By room.
        unpriced: What had no price and so is not in the sum.
    """

    currency: str
    total: CostTotals
    lines: tuple[CostLine, ...]
    openings: tuple[OpeningCost, ...]
    rooms: tuple[RoomCost, ...]
    unpriced: tuple[Unpriced, ...]
