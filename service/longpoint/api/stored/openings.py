"""/v1/schedules/{id}/openings: the openings of a house, one by one."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from litestar import delete, get, post, put
from litestar.params import JSONBody, PathParameter, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import OPENING
from longpoint.api.document.links import LISTED_OPENING_LINKS, OPENING_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import HeldSchedule, changing, changing_once
from longpoint.api.stored.groups import group_of, refuse_grouped, refuse_taken
from longpoint.api.stored.house import check_opening, gathering
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_number_cursor
from longpoint.api.stored.storage import (
    CHANGES,
    ScheduleId,
    Why,
    by_name,
    clean,
    find_schedule,
    store_of,
    stored,
)
from longpoint.geometry import Bottom
from longpoint.lengths import Unit
from longpoint.schedules import items
from longpoint.schedules.answers import StoredOpening
from longpoint.schedules.basics import new_id
from longpoint.schedules.kept import MOST_OPENINGS, opening_change, read_house
from longpoint.schedules.made import Made
from longpoint.schedules.rows import OpeningRow
from longpoint.schedules.values import Change, ItemKind
from longpoint.shop.house import HouseGroup, HouseOpening, opening_called
from longpoint.texts import say
from longpoint.values import Faults

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
    bottom: Annotated[
        Bottom | None, QueryParameter(description="Only those whose trim stands on this.")
    ] = None,
) -> Reply[Page[StoredOpening]]:
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
            bottom=bottom and bottom.value,
        )
    last = rows[limit - 1].position if len(rows) > limit else None
    unit = read_house(schedule.document).unit
    found = [StoredOpening.of(row, unit) for row in rows]
    return page(request, found, limit, last, {"etag": etag(request, tag)})


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
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[HouseOpening], why: Why = ""
) -> Reply[StoredOpening]:
    """Adds an opening after the others. An If-Match header, where there is one, names the schedule's state."""

    async def work(held: HeldSchedule) -> Reply[StoredOpening]:
        held.check_match()
        opening = await request.under(held.house.unit, data)
        await _check(held, opening, "", None, [])
        refuse_more(held.schedule.opening_count + 1)
        id = new_id()
        reply = await _write(held, id, held.schedule.next_position, opening, "add")
        reply.status_code = 201
        reply.headers["location"] = f"/v1/schedules/{held.schedule.id}/openings/{id}"
        return reply

    return await changing_once(request, data, schedule_id, work, why)


@get(
    "/v1/schedules/{schedule_id:str}/openings/{opening:str}",
    **stored("get_opening", summary="Read an opening", tag=_TAG, headers=ETAG, links=OPENING_LINKS),
)
async def get_opening(
    request: AnyRequest, schedule_id: ScheduleId, opening: OpeningName
) -> Reply[StoredOpening]:
    """One opening, as it was sent and exactly."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await find_opening(connection, schedule.id, opening)
    check_news(request, state_tag(row.revision, row.digest))
    return _reply(request, row, read_house(schedule.document).unit)


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
    data: JSONBody[HouseOpening],
    why: Why = "",
) -> Reply[StoredOpening]:
    """Replaces all that is said of an opening; If-Match names the opening's own state, so that others may change.

    A group that names it must still be buildable with it, and it keeps the mark by which the group names it.
    """
    async with changing(request, schedule_id, why) as held:
        row = await find_opening(held.connection, held.schedule.id, opening)
        held.check_current(row)
        house, sent = held.house, await request.under(held.house.unit, data)
        if sent.mark != row.mark:
            refuse_grouped(house, row.mark, ("mark",), goes=False)
        group, others = await group_of(held.connection, held.schedule, house, row.mark)
        await _check(held, sent, row.id, group, others)
        return await _write(held, row.id, row.position, sent, "remeasure")


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
    async with changing(request, schedule_id, why) as held:
        row = await find_opening(held.connection, held.schedule.id, opening)
        held.check_current(row)
        refuse_grouped(held.house, row.mark, (), goes=True)
        made = await held.write("remove", Change(ItemKind.OPENING, row.id, None))
    return Made(made.number)


def refuse_more(count: int) -> None:
    """Keep a schedule to the openings a cut list takes.

    Raises:
        Refusal: when there would be more.
    """
    if count > MOST_OPENINGS:
        faults = Faults()
        faults.add((), "too-many", say("problem", "schedule.too-many-openings", most=MOST_OPENINGS))
        faults.raise_any()


async def find_opening(connection: AsyncConnection, schedule_id: str, opening: str) -> OpeningRow:
    """An opening of a schedule, by its id or mark.

    Raises:
        NotFound: when there is neither.
    """
    row = await items.find_opening(connection, schedule_id, clean(opening))
    if row is None:
        raise NotFound(say("problem", "schedule.no-opening", opening=opening))
    return row


async def _check(
    held: HeldSchedule,
    sent: HouseOpening,
    own_id: str,
    group: HouseGroup | None,
    others: Sequence[HouseOpening],
) -> None:
    """Make sure that an opening can be kept.

    Args:
        held: The schedule.
        sent: The opening.
        own_id: The id of the one whose place it takes; "" for none.
        group: The group that names it, if one does.
        others: That group's other openings.

    Raises:
        Refusal: with every fault.
    """
    faults = Faults()
    with gathering(faults):
        refuse_taken(held.house, [(("mark",), sent.mark)])
    with gathering(faults):
        await _refuse_mark(held, sent.mark, own_id)
    with gathering(faults):
        build = not faults and not held.request.misread
        check_opening(held.house, sent, group, others, build=build)
    faults.raise_any()


async def _refuse_mark(held: HeldSchedule, mark: str, own_id: str) -> None:
    found = await items.find_opening(held.connection, held.schedule.id, mark)
    if found is not None and found.id != own_id:
        faults = Faults()
        faults.add(
            ("mark",),
            "duplicate-mark",
            opening_called(mark),
        )
        faults.raise_any()


async def _write(
    held: HeldSchedule, id: str, position: int, opening: HouseOpening, action: str
) -> Reply[StoredOpening]:
    await held.write(action, opening_change(id, position, opening))
    row = await find_opening(held.connection, held.schedule.id, id)
    return _reply(held.request, row, held.house.unit)


def _reply(request: AnyRequest, row: OpeningRow, unit: Unit | None) -> Reply[StoredOpening]:
    return Reply(
        StoredOpening.of(row, unit),
        status_code=200,
        headers={"etag": etag(request, state_tag(row.revision, row.digest))},
    )
