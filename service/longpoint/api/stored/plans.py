"""/v1/schedules/{id}/plans: the sticks of a stored house, planned once, kept, and searched further on request."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from typing import Annotated, Any

import msgspec
from litestar import get, post
from litestar.params import JSONBody, PathParameter

from longpoint.api.answers.events import search_events
from longpoint.api.document.examples_schedule import PLAN
from longpoint.api.document.links import LISTED_PLAN_LINKS, PLAN_LINKS
from longpoint.api.http.answer import Reply, encode
from longpoint.api.http.conditional import ETAG, check_news, etag
from longpoint.api.http.negotiate import BOTH, EVENTS, JSON
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest, ApiRequest
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_number_cursor
from longpoint.api.stored.pieces import OpeningsAsked, RoomsAsked, chosen_of
from longpoint.api.stored.plan_making import load_plan
from longpoint.api.stored.planned import begin_search, marks_of, plan_tag
from longpoint.api.stored.storage import ScheduleId, find_schedule, store_of, stored
from longpoint.api.stored.stored_house import left_of, load_house
from longpoint.lengths import length_writer
from longpoint.schedules import plans
from longpoint.schedules.kept import read_plan
from longpoint.schedules.plan_answers import PlanLine, PlannedSticks, StoredPlan, StoredStick
from longpoint.schedules.rows import PlanRow
from longpoint.schedules.sent import PlanAsked
from longpoint.shop.cut_sticks import buy_lines
from longpoint.stock import VERSION
from longpoint.texts import say

_TAG = "Plans"
_MOST = 2_000_000_000
PlanNumber = Annotated[int, PathParameter(ge=1, le=_MOST, description="The number of a plan.")]


@get(
    "/v1/schedules/{schedule_id:str}/plans",
    **stored("list_plans", summary="List plans", tag=_TAG, headers=LINK, links=LISTED_PLAN_LINKS),
)
async def list_plans(
    request: AnyRequest, schedule_id: ScheduleId, limit: Limit = 50, cursor: Cursor = None
) -> Reply[Page[PlanLine]]:
    """Plans of the schedule's sticks, the latest first. One that nothing was printed or cut from goes by age."""
    before = read_number_cursor(cursor, _MOST)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        stands = await plans.newest(connection, schedule, VERSION)
        rows = await plans.list_plans(connection, schedule.id, before, limit + 1)
    number = None if stands is None else stands.number
    lines = [PlanLine.of(row, read_plan(row.document), row.number == number) for row in rows]
    last = rows[limit - 1].number if len(rows) > limit else None
    return page(request, lines, limit, last)


@get(
    "/v1/schedules/{schedule_id:str}/plans/{number:int}",
    **stored("get_plan", summary="Read a plan", tag=_TAG, headers=ETAG, links=PLAN_LINKS),
)
async def get_plan(
    request: AnyRequest,
    schedule_id: ScheduleId,
    number: PlanNumber,
    room: RoomsAsked = None,
    opening: OpeningsAsked = None,
) -> Reply[StoredPlan]:
    """A plan with every stick of it, those that were cut too.

    Asked for some rooms or openings, `sticks` and `buy` are of the sticks that hold any of their pieces, with all that
    is on those; what else there is, its cost and its proof, is said of the whole plan.
    """
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await plans.find(connection, schedule.id, number)
        if row is None:
            raise NotFound(say("problem", "plan.unknown", number=number, latest=schedule.last_plan))
        tag = plan_tag(schedule, row)
        check_news(request, tag)
    return await plan_reply(request, schedule_id, row, 200, room, opening)


@post(
    "/v1/schedules/{schedule_id:str}/plans",
    **stored(
        "make_plan",
        summary="Plan the sticks",
        tag=_TAG,
        access="write",
        status=201,
        examples=PLAN,
        problems=(403, 503),
        offers=(*BOTH, EVENTS),
        headers={**ETAG, "Location": "Where the plan is."},
        links=PLAN_LINKS,
    ),
)
async def make_plan(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[PlanAsked]
) -> Reply[StoredPlan]:
    """The plan of what is left to cut, searched for as long as is asked: 201 with the plan that then stands.

    It is kept, and every answer and sheet of the schedule comes from it until what it was made from changes. Asked
    again, the same plan is answered; a longer search that finds a cheaper one makes a new plan, and one that only
    learns how good the old one is says so in it. Sticks of the plan before stay as they are where that costs nothing.
    Ask for `text/event-stream` to hear how the search comes along: `progress` for each better plan or bound of a
    profile, then `answer` with what JSON would have been, or `problem`. The search goes on when nobody listens.
    """
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
    search = begin_search(request, schedule, data.planning_seconds)

    async def answer() -> Reply[StoredPlan]:
        return await plan_reply(request, schedule_id, await search.result(), 201)

    async def encoded() -> bytes:
        reply = await answer()
        return encode(reply.content, JSON, reply.write)

    if isinstance(request, ApiRequest) and request.wanted == EVENTS:
        stream: Any = search_events(request, search.steps(), encoded)
        return stream  # type: ignore[no-any-return]
    return await answer()


async def plan_reply(
    request: AnyRequest,
    schedule_id: str,
    row: PlanRow,
    status: int,
    rooms: Sequence[str] | None = None,
    openings: Sequence[str] | None = None,
) -> Reply[StoredPlan]:
    """A plan as it is answered, or of it the sticks that hold pieces of some rooms and openings."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await plans.find(connection, schedule.id, row.number) or row
        stands = await plans.newest(connection, schedule, VERSION)
        house = await load_house(connection, schedule)
        plan = await load_plan(connection, row)
        before = await plans.find(connection, schedule.id, row.number - 1)
    left = await left_of(house)
    marks = marks_of(house)
    line = PlanLine.of(row, plan.profiles, stands is not None and stands.number == row.number)
    had = [] if before is None else [name for one in read_plan(before.document) for name in one.sticks]
    chosen = chosen_of(left.openings, rooms, openings)
    shown = {
        name: one
        for name, one in plan.sticks.items()
        if chosen is None or any(marks.get(piece.opening_id) in chosen for piece in one.pieces)
    }
    uncut = (one for name, one in shown.items() if name not in left.cut and one.lot is None)
    answered = StoredPlan(
        **msgspec.structs.asdict(line),
        profiles=tuple(PlannedSticks.of(one) for one in plan.profiles if one.stocked),
        sticks=tuple(StoredStick.of(name, one, marks, left.cut) for name, one in shown.items()),
        changed=tuple(name for name in had if name not in plan.sticks and name not in left.cut),
        buy=tuple(buy_lines(Counter((one.profile, one.length, one.price) for one in uncut))),
    )
    return Reply(
        answered,
        length_writer(house.sited.house.rounding),
        status_code=status,
        headers={
            "etag": etag(request, plan_tag(schedule, row)),
            **({"location": f"/v1/schedules/{schedule.id}/plans/{row.number}"} if status == 201 else {}),
        },
    )
