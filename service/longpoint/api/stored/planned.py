"""A stored house with the plan that stands: what every answer, drawing and sheet of a schedule is made from."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from contextlib import suppress

import msgspec
from msgspec.structs import replace

from longpoint.api.http.conditional import state_tag
from longpoint.api.http.problems import Overloaded
from longpoint.api.http.request import AnyRequest
from longpoint.api.running.threads import apart
from longpoint.api.stored.plan_making import (
    SECONDS,
    Maker,
    is_searched,
    load_plan,
    thousandths,
)
from longpoint.api.stored.recent import Recent
from longpoint.api.stored.storage import caller_of, find_schedule, store_of
from longpoint.api.stored.stored_house import left_of, load_house
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.jobs.searches import PlanSearch, ReportStep, Searches
from longpoint.schedules import plans
from longpoint.schedules.house_rows import Left, StoredHouse
from longpoint.schedules.kept import read_length, read_stick
from longpoint.schedules.making import KeptPlan, planned, uncut
from longpoint.schedules.rows import PlanRow, ScheduleRow
from longpoint.shop.build import CutList
from longpoint.shop.paid_sticks import paid_for
from longpoint.shop.too_much import MOST_PIECES
from longpoint.stock import VERSION
from longpoint.texts import say
from longpoint.values import Refusal

_TRIES = 3
_PRINT_WAIT = SECONDS + 1.5
"""Seconds that paper waits: for the search, for keeping sticks of the plan before, and for the process to start."""
_ANSWER_GONE = 0.1
"""Seconds within which an answer that is made has gone out."""


class PlannedHouse(msgspec.Struct, frozen=True):
    """A stored house, its plan, and what both come to.

    Attributes:
        house: As it is kept.
        left: What is left to do of it.
        plan: That stands.
        cut_list: Of what is left to cut, from that plan.
        searching: Whether a cheaper plan is searched for from now on.
    """

    house: StoredHouse
    left: Left
    plan: KeptPlan
    cut_list: CutList
    searching: bool


_lately: Recent[tuple[str, int, int], CutList] = Recent(most=4, heaviest=MOST_PIECES)


def plan_tag(schedule: ScheduleRow, plan: PlanRow) -> str:
    """Names the schedule's state and what is known of its plan."""
    return f"{state_tag(schedule.revision, schedule.digest)}-p{plan.number}.{plan.budget}"


async def read_planned(
    request: AnyRequest, schedule_id: str, look: Callable[[ScheduleRow, PlanRow], None]
) -> tuple[StoredHouse, KeptPlan]:
    """A stored house and the plan that stands; where there is none, the first that is found is kept.

    Args:
        request: Of the schedule's account.
        schedule_id: Which schedule.
        look: Called with what stands before the rest is read, to end it where the caller knows that already.

    Raises:
        NotFound: when there is no such schedule.
        Refusal: when the house cannot be built, or the stock cannot give its pieces.
    """
    for _ in range(_TRIES):
        async with store_of(request).reading() as connection:
            schedule = await find_schedule(connection, request, schedule_id)
            row = await plans.newest(connection, schedule, VERSION)
            if row is not None:
                look(schedule, row)
                return await load_house(connection, schedule), await load_plan(connection, row)
        made = await maker_of(request, schedule.id).first()
        if made is not None:
            return made
    raise Overloaded(say("problem", "schedule.changed-again"), headers={"retry-after": "1"})


async def read_to_print(
    request: AnyRequest, schedule_id: str, look: Callable[[ScheduleRow, PlanRow], None]
) -> tuple[StoredHouse, KeptPlan]:
    """The same for paper, which is to hold: it waits for the search for a cheaper plan, as long as that may take, since
    what that finds would soon take the place of what was printed.

    Raises:
        NotFound, Refusal: as `read_planned` does.
    """
    found = await read_planned(request, schedule_id, look)
    house, plan = found
    if is_searched(plan.row, SECONDS):
        return found
    search = begin_search(request, house.schedule, SECONDS)
    await asyncio.wait((search.done,), timeout=_PRINT_WAIT)
    return await read_planned(request, schedule_id, look)


async def plan_first(request: AnyRequest, schedule_id: str) -> None:
    """Make sure that there is a plan before anybody is kept waiting; what cannot be planned is reported later."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await plans.newest(connection, schedule, VERSION)
    if row is None:
        with suppress(Refusal):
            await maker_of(request, schedule.id).make(0)


def search_on(request: AnyRequest, schedule: ScheduleRow, plan: PlanRow) -> None:
    """Search for a cheaper plan where that was not done, once the answer, which it would hold up, has gone."""
    if not is_searched(plan, SECONDS):
        begin_search(request, schedule, SECONDS, wait=_ANSWER_GONE)


async def work_out(house: StoredHouse, plan: KeptPlan) -> PlannedHouse:
    """What a stored house and its plan come to."""
    left = await left_of(house)
    key = house.schedule.digest, plan.row.number, plan.row.budget
    cut_list = _lately.get(key)
    if cut_list is None:
        cut_list = await apart(lambda: planned(house, left, plan))
        _lately.put(key, cut_list, cut_list.pieces)
    return PlannedHouse(house, left, plan, cut_list, searching=not is_searched(plan.row, SECONDS))


async def with_paid(request: AnyRequest, done: PlannedHouse) -> PlannedHouse:
    """The same with what was paid for sticks so far."""
    plan, unit = done.plan, done.house.sited.house.unit
    earlier = [name for name in done.left.cut if name not in plan.sticks]
    async with store_of(request).reading() as connection:
        found = await plans.sticks(connection, done.house.schedule.id, earlier)

    def work() -> CutList:
        cut = [stick for name, stick in plan.sticks.items() if name in done.left.cut]
        cut += [read_stick(row.document) for row in found.values()]
        lots = [read_length(row.document, unit).paid_lot for row in done.house.lots]
        paid = paid_for(lots, cut, uncut(plan, done.left).values())
        return replace(done.cut_list, paid=paid)

    return replace(done, cut_list=await apart(work))


def begin_search(
    request: AnyRequest, schedule: ScheduleRow, seconds: float, wait: float = 0
) -> PlanSearch[PlanRow]:
    """A search for a plan of what the schedule is now, which goes on whoever waits for it."""
    maker = maker_of(request, schedule.id)
    searches: Searches[PlanRow] = request.app.state.searches
    key = schedule.basis, thousandths(seconds)

    async def search(report: ReportStep) -> PlanRow:
        await asyncio.sleep(wait)
        return await maker.make(seconds, report)

    return searches.begin(schedule.id, key, search)


def maker_of(request: AnyRequest, id: str) -> Maker:
    """What makes the plans of a schedule."""
    pool: PlanningPool = request.app.state.planning
    return Maker(store_of(request), pool, caller_of(request).account_id, id)


async def mark_used(request: AnyRequest, plan: KeptPlan) -> None:
    """Note, where it is not noted yet, that something was printed from a plan, so that the plan is kept."""
    if plan.row.used_at is None:
        async with store_of(request).writing() as connection:
            await plans.mark_used(connection, plan.row)


def marks_of(house: StoredHouse) -> dict[str, str]:
    """The mark of each opening and group, by what its pieces are kept under."""
    whole = house.sited.house
    marks = [one.mark for one in whole.openings] + [one.mark for one in whole.groups if one.shares]
    return dict(zip(house.sited.ids, marks, strict=True))
