"""Types of the document's part "hours". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Rate, Share

if TYPE_CHECKING:
    Task = Literal[
        "caulk",
        "clear_finish",
        "cut",
        "fill",
        "final_coat",
        "install",
        "measure",
        "nail",
        "paint",
        "putty",
        "rip",
        "rout",
        "set_up",
        "stain",
    ]
    """What hands-on time goes to; `fill` closes the holes over nails with filler and sands them, `putty` those
    of trim that is not painted.
    """
else:
    Task = str


class Labor(Result, frozen=True, kw_only=True):
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

    task: Task | str
    quantity: float
    unit: str
    minutes: float
    rule: str
    rates: list[str]
    by_opening: list[Share]


class Wait(Result, frozen=True, kw_only=True):
    """A drying wait, the whole house's together.

    Attributes:
        after: The material that has to dry.
        hours: The time that it takes, in hours.
        rate: The name of the rate it is taken from.
    """

    after: str
    hours: float
    rate: str


class Hours(Result, frozen=True, kw_only=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        hands_on_hours: The hours of all tasks together.
        tasks: The minutes of each task.
        wait_hours: The hours of all waits together.
        waits: The waits, in order.
        rates: The rates that were used.
    """

    hands_on_hours: float
    tasks: list[Labor]
    wait_hours: float
    waits: list[Wait]
    rates: list[Rate]
