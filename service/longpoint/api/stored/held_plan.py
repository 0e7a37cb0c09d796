"""The plan of a schedule that is held, made at once where there is none."""

from __future__ import annotations

from longpoint.api.stored.changing import HeldSchedule
from longpoint.api.stored.plan_making import load_plan, make_at_once, plan_job
from longpoint.schedules import plans
from longpoint.schedules.making import KeptPlan
from longpoint.stock import VERSION


async def held_plan(held: HeldSchedule) -> KeptPlan:
    """The plan that stands or, where there is none, a first one that is kept with whatever else is done.

    Raises:
        Refusal: when the house cannot be built, or the stock cannot give its pieces.
    """
    stands = await plans.newest(held.connection, held.schedule, VERSION)
    if stands is not None:
        return await load_plan(held.connection, stands)
    job = await plan_job(held.connection, held.schedule, None, searched=False)
    _, made = await make_at_once(job)
    row = await plans.keep_made(held.connection, held.schedule, VERSION, 0, made.change)
    return KeptPlan(row, made.profiles, made.sticks)
