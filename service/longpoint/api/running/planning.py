"""What a caller hears when every planner is busy."""

from __future__ import annotations

from math import ceil

from longpoint.api.http.problems import Problem
from longpoint.texts import say


class PlanningBusy(Problem, status=503, title="Every planner is busy"):
    """The service plans only so many cuttings at once and lets only so many wait. Try again after the seconds in the
    Retry-After header, or ask for `planning_seconds` of 0, which is answered first-fit without waiting."""


def planning_busy(seconds: float) -> PlanningBusy:
    """The problem of whoever would have to wait so long."""
    return PlanningBusy(say("problem", "planning.busy"), headers={"retry-after": str(ceil(seconds))})
