"""/v1/schedules: house schedules as wholes."""

from __future__ import annotations

import asyncio
from typing import Annotated

from litestar import delete, get, post, put
from litestar.params import JSONBody, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import HOUSE, SCHEDULE
from longpoint.api.document.links import LISTED_SCHEDULE_LINKS, MOVED_LINKS, SCHEDULE_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.problems_stored import NotArchived
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import HeldSchedule, changing, changing_once
from longpoint.api.stored.house import check_house
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_cursor
from longpoint.api.stored.retrying import once
from longpoint.api.stored.schedule_changes import check_new_house, schedule_changes
from longpoint.api.stored.storage import (
    CHANGES,
    ScheduleId,
    Why,
    author_of,
    by_name,
    caller_of,
    find_schedule,
    store_of,
    stored,
)
from longpoint.schedules import houses
from longpoint.schedules.answers import ScheduleLine, StoredSchedule
from longpoint.schedules.basics import moment
from longpoint.schedules.kept import KeptHouse, NewSchedule, house_change
from longpoint.schedules.rows import ScheduleRow
from longpoint.texts import say

_TAG = "Schedules"
_CREATED = {**ETAG, "Location": "Where the schedule is."}


@post(
    "/v1/schedules",
    request_max_body_size=8 * 1024 * 1024,
    **stored(
        "create_schedule",
        summary="Start a house's schedule",
        tag=_TAG,
        access="write",
        status=201,
        examples=SCHEDULE,
        problems=(403,),
        headers=_CREATED,
        links=SCHEDULE_LINKS,
    ),
)
async def create_schedule(
    request: AnyRequest, data: JSONBody[NewSchedule], why: Why = ""
) -> Reply[StoredSchedule]:
    """Keeps a house: how it is trimmed, what stock there is, and its openings where they are known already.

    An export of a schedule is a body for this. All of it is kept or, when anything is wrong, none.
    """
    await asyncio.to_thread(check_house, data.head, data.openings, data.lengths, data.groups)
    head, changes = await asyncio.to_thread(schedule_changes, data)

    async def work(connection: AsyncConnection) -> Reply[StoredSchedule]:
        author = author_of(request, why)
        id, _ = await houses.create(connection, author, "create", head, changes)
        reply = await schedule_reply(connection, request, await find_schedule(connection, request, id))
        reply.status_code = 201
        reply.headers["location"] = f"/v1/schedules/{id}"
        return reply

    return await once(request, data, work)


@get(
    "/v1/schedules",
    **stored("list_schedules", summary="List schedules", tag=_TAG, headers=LINK, links=LISTED_SCHEDULE_LINKS),
)
async def list_schedules(
    request: AnyRequest,
    limit: Limit = 50,
    cursor: Cursor = None,
    name: Annotated[
        str | None,
        by_name("Part of the name, in capitals or not."),
    ] = None,
    archived: Annotated[
        bool | None, QueryParameter(description="Only those archived, or only those not; both when left out.")
    ] = None,
) -> Reply[Page[ScheduleLine]]:
    """The account's schedules, the latest made first."""
    after = read_cursor(cursor)
    async with store_of(request).reading() as connection:
        rows = await houses.list_schedules(
            connection,
            caller_of(request).account_id,
            after=after,
            limit=limit + 1,
            name=name,
            archived=archived,
        )
    lines = [ScheduleLine.of(row) for row in rows]
    return page(request, lines, limit, rows[limit - 1].id if len(rows) > limit else None)


@get(
    "/v1/schedules/{schedule_id:str}",
    **stored("get_schedule", summary="Read a schedule", tag=_TAG, headers=ETAG, links=SCHEDULE_LINKS),
)
async def get_schedule(request: AnyRequest, schedule_id: ScheduleId) -> Reply[StoredSchedule]:
    """What is said of the house as a whole; its openings are listed under it."""
    async with store_of(request).reading() as connection:
        row = await find_schedule(connection, request, schedule_id)
        check_news(request, state_tag(row.revision, row.digest))
        return await schedule_reply(connection, request, row)


@put(
    "/v1/schedules/{schedule_id:str}",
    **stored(
        "replace_schedule",
        summary="Change what is said of the house",
        tag=_TAG,
        access="write",
        examples=HOUSE,
        problems=CHANGES,
        headers=ETAG,
        links=MOVED_LINKS,
    ),
)
async def replace_schedule(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[KeptHouse], why: Why = ""
) -> Reply[StoredSchedule]:
    """Replaces everything said of the house as a whole; openings and lengths on hand stay as they are.

    Every opening must still be buildable with its trim, and every group with its openings: else all those that are not
    are reported, and nothing is saved.
    """
    async with changing(request, schedule_id, why) as held:
        held.check_current()
        sent = await request.under(data.unit, data)
        await check_new_house(held, sent)
        await held.write("house", house_change(held.schedule.id, sent))
        return await _written(held)


@post(
    "/v1/schedules/{schedule_id:str}/archive",
    **stored(
        "archive_schedule",
        summary="Put a schedule away",
        tag=_TAG,
        access="write",
        problems=CHANGES,
        headers=ETAG,
        links=MOVED_LINKS,
    ),
)
async def archive_schedule(
    request: AnyRequest, schedule_id: ScheduleId, why: Why = ""
) -> Reply[StoredSchedule]:
    """An archived schedule can be read but not changed."""
    return await _set_archived(request, schedule_id, why, archived=True)


@post(
    "/v1/schedules/{schedule_id:str}/unarchive",
    **stored(
        "unarchive_schedule",
        summary="Take a schedule out of the archive",
        tag=_TAG,
        access="write",
        problems=CHANGES,
        headers=ETAG,
        links=MOVED_LINKS,
    ),
)
async def unarchive_schedule(
    request: AnyRequest, schedule_id: ScheduleId, why: Why = ""
) -> Reply[StoredSchedule]:
    """It can be changed again."""
    return await _set_archived(request, schedule_id, why, archived=False)


async def _set_archived(
    request: AnyRequest, schedule_id: str, why: str, *, archived: bool
) -> Reply[StoredSchedule]:
    async def work(held: HeldSchedule) -> Reply[StoredSchedule]:
        held.check_current()
        if (held.schedule.archived_at is not None) is not archived:
            action = "archive" if archived else "unarchive"
            await held.write(action, archived_at=moment() if archived else None)
        return await _written(held)

    return await changing_once(request, None, schedule_id, work, why, archived=True)


@delete(
    "/v1/schedules/{schedule_id:str}",
    **stored(
        "delete_schedule",
        summary="Delete an archived schedule",
        tag=_TAG,
        access="write",
        status=204,
        problems=CHANGES,
    ),
)
async def delete_schedule(request: AnyRequest, schedule_id: ScheduleId) -> None:
    """Deletes a schedule with its readings, its work and its history, for good; it must be archived first."""
    async with changing(request, schedule_id, archived=True) as held:
        held.check_current()
        if held.schedule.archived_at is None:
            raise NotArchived(say("problem", "schedule.not-archived"))
        await houses.remove(held.connection, held.schedule.id)


async def _written(held: HeldSchedule) -> Reply[StoredSchedule]:
    row = await find_schedule(held.connection, held.request, held.schedule.id)
    return await schedule_reply(held.connection, held.request, row)


async def schedule_reply(
    connection: AsyncConnection, request: AnyRequest, row: ScheduleRow
) -> Reply[StoredSchedule]:
    """A schedule as it now stands."""
    exact = await houses.exact_of_head(connection, row.id, row.head_revision)
    return Reply(
        StoredSchedule.of(row, exact),
        status_code=200,
        headers={"etag": etag(request, state_tag(row.revision, row.digest))},
    )
