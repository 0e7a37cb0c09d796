"""The plan of a schedule that is held, made at once where there is none."""

from __future__ import annotations

from longpoint.api.running.threads import apart
from longpoint.api.stored.changing import HeldSchedule
from longpoint.api.stored.plan_making import (
    KeptPlan,
    Making,
    latest_plan,
    plan_again,
    standing_plan,
)
from longpoint.api.stored.stored_house import left_of, load_house


async def held_plan(held: HeldSchedule) -> KeptPlan:
    """The plan that stands or, where there is none, a first one that is kept with whatever else is done.

    Raises:
        Refusal: when the house cannot be built, or the stock cannot give its pieces.
    """
    stands = await standing_plan(held.connection, held.schedule)
    if stands is not None:
        return stands
    house = await load_house(held.connection, held.schedule)
    left = await left_of(house)
    before = await latest_plan(held.connection, held.schedule)
    planning = await apart(lambda: plan_again(house, left, before, searched=False))
    making = Making(house, left, planning, 0)
    ready = await apart(lambda: making.ready(held.schedule, None, before))
    return await ready.keep(held.connection, held.schedule, 0)
