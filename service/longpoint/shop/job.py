"""What the shop room is told: the openings with their parts, and the sticks they are cut from."""

from __future__ import annotations

from longpoint.geometry import Part
from longpoint.geometry.value import Value
from longpoint.stock import Job, Plan


class WorkOpening(Value, frozen=True):
    """An opening as the shop sees it.

    Attributes:
        mark: its name on the schedule, unique in the job.
        room: the room it stands in; "" when none was told.
        parts: every piece of its trim.
        quantity: how many openings are alike.
    """

    mark: str
    room: str
    parts: tuple[Part, ...]
    quantity: int = 1


class Cutting(Value, frozen=True):
    """One profile's cutting job and its plan; in both a piece is keyed by `piece_key` of opening and part."""

    job: Job
    plan: Plan


class ShopJob(Value, frozen=True):
    """Everything to be made. Attributes: openings, in the caller's order; cuttings, one per profile."""

    openings: tuple[WorkOpening, ...]
    cuttings: tuple[Cutting, ...]


def piece_key(opening: str, part: Part) -> str:
    """The name of a part in the job: "W1/casing_leg/left"."""
    return f"{opening}/{part.key}"
