"""What the materials, hours and cost answers are made of."""

from __future__ import annotations

from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real
from longpoint.shop.rates import Rate


class Figure(Value, frozen=True):
    """A number something was computed from. Attributes: name, in words; value; unit."""

    name: str
    value: Real
    unit: str


class Share(Value, frozen=True):
    """One opening's part of a quantity. Attributes: opening, its mark; quantity, in the whole's unit."""

    opening: str
    quantity: Real


class Bought(Value, frozen=True):
    """Packs of one size. Attributes: package, its name; size, in the line's unit; count; price_cents."""

    package: str
    size: Fraction
    count: int
    price_cents: int | None = None


class Material(Value, frozen=True):
    """One line of what to buy.

    Attributes:
        code: stable snake_case name ("nails_8d", "caulk").
        name: in words.
        quantity: what the job uses, waste included.
        unit: of `quantity`.
        bought: packages that cover it, rounded up to what is sold.
        rule: how it was computed, in words.
        inputs: what it was computed from: the "from" of the figure.
        rates: names of the rates used.
        by_opening: the same quantity opening by opening.
        notes: what to check.
    """

    code: str
    name: str
    quantity: Real
    unit: str
    bought: tuple[Bought, ...]
    rule: str
    inputs: tuple[Figure, ...]
    rates: tuple[str, ...]
    by_opening: tuple[Share, ...]
    notes: tuple[str, ...] = ()


class Materials(Value, frozen=True):
    """What to buy beside the sticks. Attributes: lines; rates, every rate used, with its source."""

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
    FIT = "fit"
    NAIL = "nail"
    FILL = "fill"
    CAULK = "caulk"
    FINAL_COAT = "final_coat"


class Labour(Value, frozen=True):
    """One operation's hands-on time.

    Attributes:
        quantity: how much of it, in `unit` ("opening", "cut", "ft", "ft2", "nail" ...).
        minutes: of hands-on time.
        by_opening: the minutes opening by opening, in the order of the cut list.
    """

    operation: Task
    quantity: Real
    unit: str
    minutes: Fraction
    rule: str
    rates: tuple[str, ...]
    by_opening: tuple[Share, ...]


class Wait(Value, frozen=True):
    """A drying wait, nobody's work. Attributes: after, what dries; hours; rate, its name."""

    after: str
    hours: Fraction
    rate: str


class Hours(Value, frozen=True):
    """Attributes: operations; minutes hands-on in all; waits; wait_hours in all; rates used."""

    operations: tuple[Labour, ...]
    minutes: Fraction
    waits: tuple[Wait, ...]
    wait_hours: Fraction
    rates: tuple[Rate, ...]


class CostLine(Value, frozen=True):
    """One line of the whole-house view.

    Attributes:
        category: stock, waste, kept_offcut, consumable or labour.
        name: the profile, material or operation.
        cents: of the whole job.
        by_opening: cents of each opening, in the job's order; they add up to `cents`.
    """

    category: str
    name: str
    cents: int
    by_opening: tuple[int, ...]


class CostTotals(Value, frozen=True):
    """Cents by category of an opening, a room or the whole job; `total` is their sum."""

    stock: int
    waste: int
    kept_offcut: int
    consumable: int
    labour: int
    total: int


class OpeningCost(Value, frozen=True):
    """Attributes: opening, its mark; room; cents by category."""

    opening: str
    room: str
    cents: CostTotals


class RoomCost(Value, frozen=True):
    """Attributes: room; openings, how many; cents by category."""

    room: str
    openings: int
    cents: CostTotals


class Unpriced(Value, frozen=True):
    """What no price was given for. Attributes: category, consumable or labour; name, as a line would have it."""

    category: str
    name: str


class CostSheet(Value, frozen=True):
    """The same money seen whole, by room and by opening; each view adds up to the same cent.

    Attributes:
        unpriced: materials and operations with no price given, so that they cost nothing here.
    """

    lines: tuple[CostLine, ...]
    openings: tuple[OpeningCost, ...]
    rooms: tuple[RoomCost, ...]
    cents: CostTotals
    unpriced: tuple[Unpriced, ...]
