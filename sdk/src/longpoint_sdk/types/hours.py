"""Types of the document's part "hours". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import RateOut, ShareOut

if TYPE_CHECKING:
    Task = Literal[
        "caulk", "cut", "fill", "final_coat", "fit", "measure", "nail", "paint", "rip", "rout", "set_up"
    ]
    """What hands-on time goes to."""
else:
    Task = str


class LabourOut(Result, frozen=True, kw_only=True):
    """Hands-on minutes of one task: `quantity` of `unit`, by the rule, at the rates named.

    Attributes:
        by_opening: Minutes of each opening.
    """

    task: Task | str
    quantity: float
    unit: str
    minutes: float
    rule: str
    rates: list[str]
    by_opening: list[ShareOut]


class WaitOut(Result, frozen=True, kw_only=True):
    """A drying wait, the whole job's together.

    Attributes:
        after: What has to dry.
        rate: The rate it is taken from.
    """

    after: str
    hours: float
    rate: str


class HoursOut(Result, frozen=True, kw_only=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        tasks: Minutes by task.
        wait_hours: All waits together.
        rates: Every rate that was used.
    """

    hands_on_hours: float
    tasks: list[LabourOut]
    wait_hours: float
    waits: list[WaitOut]
    rates: list[RateOut]
