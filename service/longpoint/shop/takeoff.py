"""What the materials, hours and cost answers are made of."""

from __future__ import annotations

from enum import StrEnum

import msgspec

from longpoint.lengths import Fraction
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import Rate
from longpoint.texts import Sentence
from longpoint.values import Cents, Value


class Figure(Value, frozen=True):
    """A number that something was computed from.

    Attributes:
        name: The name of the figure in words.
        value: The amount, in `unit`.
        unit: The unit that it is counted in.
    """

    name: str
    value: Quantity
    unit: str


class Share(Value, frozen=True):
    """One opening's part of a quantity, all of its count together.

    Attributes:
        opening: The mark of the opening.
        quantity: This share of the whole, in its unit.
    """

    opening: str
    quantity: Quantity


class Bought(Value, frozen=True):
    """Packages of one size.

    Attributes:
        package: The name of the package.
        size: One package holds this much, in the material's unit.
        count: The number of packages to buy.
        price: The price of one; null where none was given.
        cost: The cost of them all; null where no price was given.
    """

    package: str
    size: Quantity
    count: int
    price: Cents | None = None
    cost: Cents | None = None


class Material(Value, frozen=True):
    """The amount that is used of a material, waste included, and the packages that cover it.

    Attributes:
        code: A stable name of the material, as in `packages`.
        name: The name of the material in words.
        quantity: The amount that is used, in `unit`.
        unit: The unit that it is counted in.
        bought: The packages to buy.
        rule: It says in words how the amount was computed.
        inputs: The figures it was computed from.
        rates: Names of the rates it was computed at.
        by_opening: It says how much of the material is for each opening.
        notes: They say what to check.
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
    notes: tuple[Sentence, ...] = ()


class Materials(Value, frozen=True):
    """A list of what to buy beside the sticks.

    Attributes:
        lines: The materials that are used, one a line.
        rates: The rates that were used.
    """

    lines: tuple[Material, ...]
    rates: tuple[Rate, ...]


class Task(StrEnum):
    """What hands-on time goes to; `fill` closes the holes over nails with filler and sands them, `putty` those of trim
    that is not painted."""

    MEASURE = "measure"
    PAINT = "paint"
    STAIN = "stain"
    CLEAR_FINISH = "clear_finish"
    RIP = "rip"
    ROUT = "rout"
    CUT = "cut"
    SET_UP = "set_up"
    INSTALL = "install"
    NAIL = "nail"
    FILL = "fill"
    PUTTY = "putty"
    CAULK = "caulk"
    FINAL_COAT = "final_coat"


class Labor(Value, frozen=True):
    """Hands-on minutes of one task.

    Attributes:
        task: The task that is done.
        quantity: The amount of work, in `unit`.
        unit: What it is counted in: openings, cuts, feet, square feet and so on.
        minutes: The time that it takes, in minutes.
        rule: It says in words how the quantity was computed.
        rates: The names of the rates it was computed at.
        by_opening: The minutes of each opening.
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
        after: The material that has to dry.
        hours: The time that it takes, in hours.
        rate: The name of the rate it is taken from.
    """

    after: str
    hours: Quantity
    rate: str


class Hours(Value, frozen=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        hands_on_hours: The hours of all tasks together.
        tasks: The minutes of each task.
        wait_hours: The hours of all waits together.
        waits: The waits, in order.
        rates: The rates that were used.
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
        category: The category: stock, waste, kept_offcut, consumable or labor.
        name: The profile, the material's code or the task.
        amount: The amount for the whole house.
        by_opening: The amount of each opening, in the order of `openings`; they add up to `amount`.
    """

    category: str
    name: str
    amount: Cents
    by_opening: tuple[Cents, ...]


class CostTotals(Value, frozen=True):
    """Amounts by category.

    Attributes:
        stock: The part of the sticks' price that falls on the wood that became pieces of trim.
        waste: The cost of kerfs, end trims and offcuts too short to keep.
        kept_offcut: The cost of offcuts and lengths that are left.
        consumable: The cost of the materials beside the sticks.
        labor: The cost of the hands-on hours at the wages given.
        total: The sum of all categories.
    """

    stock: Cents
    waste: Cents
    kept_offcut: Cents
    consumable: Cents
    labor: Cents
    total: Cents


class OpeningCost(Value, frozen=True):
    """It says what an opening costs, all of its count together.

    Attributes:
        opening: The mark of the opening.
        room: The room that the opening is in.
        amounts: The cost of the opening, by category.
    """

    opening: str
    room: str
    amounts: CostTotals


class RoomCost(Value, frozen=True):
    """What a room costs: the sum of its openings.

    Attributes:
        room: The name of the room; it may be empty.
        openings: The number of openings in the room, those alike counted each.
        amounts: The cost of the room, by category.
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
        currency: The currency of every amount.
        total: The whole house, by category; of what is in `unpriced` it holds nothing.
        lines: The cost by what it is spent on.
        openings: The cost by opening.
        rooms: The cost by room.
        unpriced: These had no price and so are not in the sum.
    """

    currency: str
    total: CostTotals
    lines: tuple[CostLine, ...]
    openings: tuple[OpeningCost, ...]
    rooms: tuple[RoomCost, ...]
    unpriced: tuple[Unpriced, ...]
