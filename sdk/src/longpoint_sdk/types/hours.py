"""Types of the document's part "hours". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Rate, Share

if TYPE_CHECKING:
    Task = Literal[
        "caulk", "cut", "fill", "final_coat", "install", "measure", "nail", "paint", "rip", "rout", "set_up"
    ]
    """What hands-on time goes to."""
else:
    Task = str


class Labor(Result, frozen=True, kw_only=True):
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
        after: What has to dry.
        hours: How long it takes.
        rate: Name of the rate it is taken from.
    """

    after: str
    hours: float
    rate: str


class Hours(Result, frozen=True, kw_only=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        hands_on_hours: All tasks together.
        tasks: Minutes by task.
        wait_hours: All waits together.
        waits: Each wait, in order.
        rates: Every rate that was used.
    """

    hands_on_hours: float
    tasks: list[Labor]
    wait_hours: float
    waits: list[Wait]
    rates: list[Rate]
