"""/v1/schedules/{id}/openings: the openings of a house, one by one."""

from __future__ import annotations

from typing import Annotated, Any

from litestar import delete, get, post, put
from litestar.params import JSONBody, PathParameter, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import OPENING
from longpoint.api.document.links import LISTED_OPENING_LINKS, OPENING_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_current, check_match, check_news, etag, state_tag
from longpoint.api.http.faults import Faults
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.groups import group_of, refuse_grouped, refuse_taken
from longpoint.api.stored.house import check_opening, read_house_document, read_opening_document
from longpoint.api.stored.paging import LINK, Cursor, Limit, page, read_number_cursor
from longpoint.api.stored.retrying import once
from longpoint.api.stored.schedule_changes import opening_change
from longpoint.api.stored.storage import (
    CHANGES,
    ScheduleId,
    Why,
    author_of,
    by_name,
    clean,
    find_schedule,
    hold_schedule,
    store_of,
    stored,
)
from longpoint.api.wire.base import Page
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import MOST_OPENINGS, Made, OpeningStored
from longpoint.geometry import Foot
from longpoint.schedules import houses, items
from longpoint.schedules.basics import new_id
from longpoint.schedules.values import Change, Kind

_TAG = "Openings"
OpeningName = Annotated[
    str,
    PathParameter(
        max_length=120, description="An opening's id, or its mark (its id when the mark has a slash in it)."
    ),
]


@get(
    "/v1/schedules/{schedule_id:str}/openings",
    **stored(
        "list_openings",
        summary="List openings",
        tag=_TAG,
        headers={**LINK, **ETAG},
        links=LISTED_OPENING_LINKS,
    ),
)
async def list_openings(
    request: AnyRequest,
    schedule_id: ScheduleId,
    limit: Limit = 50,
    cursor: Cursor = None,
    room: Annotated[str | None, by_name("Only those in this room.")] = None,
    trim: Annotated[
        str | None,
        by_name("Only those that name this trim spec."),
    ] = None,
    foot_style: Annotated[
        Foot | None, QueryParameter(description="Only those whose trim stands on this.")
    ] = None,
) -> Reply[Page[OpeningStored]]:
    """Openings in the schedule's order."""
    after = read_number_cursor(cursor)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        tag = state_tag(schedule.revision, schedule.digest)
        check_news(request, tag)
        rows = await items.list_openings(
            connection,
            schedule.id,
            after=after,
            limit=limit + 1,
            room=room,
            trim=trim,
            foot_style=foot_style and foot_style.value,
        )
    last = rows[limit - 1].position if len(rows) > limit else None
    return page(request, [opening_out(row) for row in rows], limit, last, {"etag": etag(request, tag)})


@post(
    "/v1/schedules/{schedule_id:str}/openings",
    **stored(
        "add_opening",
        summary="Add an opening",
        tag=_TAG,
        access="write",
        status=201,
        examples=OPENING,
        problems=(403, 409, 412),
        headers={**ETAG, "Location": "Where the opening is."},
        links=OPENING_LINKS,
    ),
)
async def add_opening(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[OpeningIn], why: Why = ""
) -> Reply[OpeningStored]:
    """Adds an opening after the others. An If-Match header, where there is one, names the schedule's state."""

    async def work(connection: AsyncConnection) -> Reply[OpeningStored]:
        schedule = await hold_schedule(connection, request, schedule_id)
        check_match(request, state_tag(schedule.revision, schedule.digest))
        house = read_house_document(schedule.document)
        refuse_taken(house, [(("mark",), data.mark)])
        check_opening(house, data)
        refuse_more(schedule.opening_count + 1)
        await _refuse_mark(connection, schedule.id, data.mark, "")
        id = new_id()
        reply = await _write(connection, request, schedule, id, schedule.next_position, data, "add", why)
        reply.status_code = 201
        reply.headers["location"] = f"/v1/schedules/{schedule.id}/openings/{id}"
        return reply

    return await once(request, data, work)


@get(
    "/v1/schedules/{schedule_id:str}/openings/{opening:str}",
    **stored("get_opening", summary="Read an opening", tag=_TAG, headers=ETAG, links=OPENING_LINKS),
)
async def get_opening(
    request: AnyRequest, schedule_id: ScheduleId, opening: OpeningName
) -> Reply[OpeningStored]:
    """One opening, as it was sent and exactly."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await find_opening(connection, schedule.id, opening)
    check_news(request, state_tag(row.revision, row.digest))
    return _reply(request, row)


@put(
    "/v1/schedules/{schedule_id:str}/openings/{opening:str}",
    **stored(
        "replace_opening",
        summary="Measure an opening again",
        tag=_TAG,
        access="write",
        examples=OPENING,
        problems=CHANGES,
        headers=ETAG,
        links=OPENING_LINKS,
    ),
)
async def replace_opening(
    request: AnyRequest,
    schedule_id: ScheduleId,
    opening: OpeningName,
    data: JSONBody[OpeningIn],
    why: Why = "",
) -> Reply[OpeningStored]:
    """Replaces all that is said of an opening; If-Match names the opening's own state, so that others may change.

    A group that names it must still be buildable with it, and it keeps the mark by which the group names it.
    """
    async with store_of(request).writing() as connection:
        schedule = await hold_schedule(connection, request, schedule_id)
        row = await find_opening(connection, schedule.id, opening)
        check_current(request, state_tag(row.revision, row.digest))
        house = read_house_document(schedule.document)
        if data.mark != row.mark:
            refuse_grouped(house, row.mark, ("mark",), "be renamed")
            refuse_taken(house, [(("mark",), data.mark)])
        check_opening(house, data, *await group_of(connection, schedule, house, row.mark))
        await _refuse_mark(connection, schedule.id, data.mark, row.id)
        return await _write(connection, request, schedule, row.id, row.position, data, "remeasure", why)


@delete(
    "/v1/schedules/{schedule_id:str}/openings/{opening:str}",
    **stored(
        "remove_opening",
        summary="Take an opening off the schedule",
        tag=_TAG,
        access="write",
        problems=CHANGES,
    ),
)
async def remove_opening(
    request: AnyRequest, schedule_id: ScheduleId, opening: OpeningName, why: Why = ""
) -> Made:
    """The opening goes; earlier revisions keep it, and restoring one of them brings it back.

    One that a group names cannot go before the group lets go of it.
    """
    async with store_of(request).writing() as connection:
        schedule = await hold_schedule(connection, request, schedule_id)
        row = await find_opening(connection, schedule.id, opening)
        check_current(request, state_tag(row.revision, row.digest))
        refuse_grouped(read_house_document(schedule.document), row.mark, (), "go")
        change = Change(Kind.OPENING, row.id, None)
        made = await houses.write(connection, schedule, author_of(request, why), "remove", [change])
    return Made(revision=made.number)


def opening_out(row: Any) -> OpeningStored:
    """An opening's row as the wire carries it."""
    sent = read_opening_document(row.document)
    return OpeningStored(
        id=row.id,
        revision=row.revision,
        position=row.position,
        mark=sent.mark,
        room=sent.room,
        trim=sent.trim,
        count=sent.count,
        foot_style=sent.foot_style,
        readings=sent.readings,
        reveals=sent.reveals,
        square_gap=sent.square_gap,
        horns=sent.horns,
        widths=sent.widths,
        without_apron=sent.without_apron,
        wall_answer=sent.wall_answer,
        wall_limits=sent.wall_limits,
        sill_answer=sent.sill_answer,
        exact=items.read_exact(row.exact),
    )


def refuse_more(count: int) -> None:
    """Keep a schedule to the openings a cut list takes.

    Raises:
        InvalidRequest: when there would be more.
    """
    if count > MOST_OPENINGS:
        faults = Faults()
        faults.add(
            (), "too-many", f"A schedule holds at most {MOST_OPENINGS} openings; start another for the rest."
        )
        faults.raise_any()


async def find_opening(connection: AsyncConnection, schedule_id: str, opening: str) -> Any:
    """An opening of a schedule, by its id or mark.

    Raises:
        NotFound: when there is neither.
    """
    row = await items.find_opening(connection, schedule_id, clean(opening))
    if row is None:
        raise NotFound(f"The schedule has no opening {opening}.")
    return row


async def _refuse_mark(connection: AsyncConnection, schedule_id: str, mark: str, own_id: str) -> None:
    found = await items.find_opening(connection, schedule_id, mark)
    if found is not None and found.id != own_id:
        faults = Faults()
        faults.add(
            ("mark",),
            "duplicate-mark",
            f"The schedule has an opening {mark!r} already: give this one its own mark, or raise the count where "
            "they are alike.",
        )
        faults.raise_any()


async def _write(
    connection: AsyncConnection,
    request: AnyRequest,
    schedule: Any,
    id: str,
    position: int,
    data: OpeningIn,
    action: str,
    why: str,
) -> Reply[OpeningStored]:
    unit = read_house_document(schedule.document).unit
    change = opening_change(id, position, data, unit)
    await houses.write(connection, schedule, author_of(request, why), action, [change])
    return _reply(request, await find_opening(connection, schedule.id, id))


def _reply(request: AnyRequest, row: Any) -> Reply[OpeningStored]:
    return Reply(
        opening_out(row),
        status_code=200,
        headers={"etag": etag(request, state_tag(row.revision, row.digest))},
    )
