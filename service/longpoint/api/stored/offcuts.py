"""/v1/schedules/{id}/offcuts: the rack."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from typing import Annotated, Any

from litestar import delete, get, post
from litestar.params import JSONBody, PathParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import OFFCUT
from longpoint.api.document.links import LISTED_OFFCUT_LINKS, OFFCUT_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_current, check_match, check_news, etag, state_tag
from longpoint.api.http.faults import Faults
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.house import check_house, read_house_document, read_offcut_document
from longpoint.api.stored.paging import LINK, Cursor, Limit, page, read_cursor
from longpoint.api.stored.retrying import once
from longpoint.api.stored.schedule_changes import offcut_changes
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
from longpoint.api.wire.schedule import MOST_OFFCUTS, Made, OffcutIn, OffcutStored
from longpoint.schedules import houses, items
from longpoint.schedules.values import Change, Kind

_TAG = "Rack"
OffcutId = Annotated[str, PathParameter(max_length=64, description="The id of an offcut.")]


@get(
    "/v1/schedules/{schedule_id:str}/offcuts",
    **stored(
        "list_offcuts", summary="List what is on the rack", tag=_TAG, headers=LINK, links=LISTED_OFFCUT_LINKS
    ),
)
async def list_offcuts(
    request: AnyRequest,
    schedule_id: ScheduleId,
    limit: Limit = 50,
    cursor: Cursor = None,
    profile: Annotated[
        str | None,
        by_name("Only those of this profile."),
    ] = None,
) -> Reply[Page[OffcutStored]]:
    """Lengths on hand, which cut lists use before they buy where that is cheaper."""
    after = read_cursor(cursor)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        rows = await items.list_offcuts(
            connection, schedule.id, after=after, limit=limit + 1, profile=profile
        )
    last = rows[limit - 1].id if len(rows) > limit else None
    return page(request, [_out(row) for row in rows], limit, last)


@post(
    "/v1/schedules/{schedule_id:str}/offcuts",
    **stored(
        "add_offcut",
        summary="Put a length on the rack",
        tag=_TAG,
        access="write",
        status=201,
        examples=OFFCUT,
        problems=(403, 409, 412),
        headers={**ETAG, "Location": "Where the offcut is."},
        links=OFFCUT_LINKS,
    ),
)
async def add_offcut(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[OffcutIn], why: Why = ""
) -> Reply[OffcutStored]:
    """One length of stock, from now on used by cut lists."""

    async def work(connection: AsyncConnection) -> Reply[OffcutStored]:
        schedule = await hold_schedule(connection, request, schedule_id)
        check_match(request, state_tag(schedule.revision, schedule.digest))
        house = read_house_document(schedule.document)
        check_house(house, [], [data], rack_name="")
        await refuse_full_rack(connection, schedule.id, [data], [])
        (change,) = offcut_changes([data], house.unit)
        await houses.write(connection, schedule, author_of(request, why), "add offcut", [change])
        row = await _find(connection, schedule.id, change.id)
        return Reply(
            _out(row),
            status_code=201,
            headers={
                "etag": etag(request, state_tag(row.revision, row.digest)),
                "location": f"/v1/schedules/{schedule.id}/offcuts/{row.id}",
            },
        )

    return await once(request, data, work)


@get(
    "/v1/schedules/{schedule_id:str}/offcuts/{offcut_id:str}",
    **stored("get_offcut", summary="Read an offcut", tag=_TAG, headers=ETAG, links=OFFCUT_LINKS),
)
async def get_offcut(
    request: AnyRequest, schedule_id: ScheduleId, offcut_id: OffcutId
) -> Reply[OffcutStored]:
    """One length on the rack."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, offcut_id)
    tag = state_tag(row.revision, row.digest)
    check_news(request, tag)
    return Reply(_out(row), status_code=200, headers={"etag": etag(request, tag)})


@delete(
    "/v1/schedules/{schedule_id:str}/offcuts/{offcut_id:str}",
    **stored(
        "remove_offcut",
        summary="Take a length off the rack",
        tag=_TAG,
        access="write",
        problems=CHANGES,
    ),
)
async def remove_offcut(
    request: AnyRequest, schedule_id: ScheduleId, offcut_id: OffcutId, why: Why = ""
) -> Made:
    """It was used elsewhere or thrown away: cut lists no longer count on it."""
    async with store_of(request).writing() as connection:
        schedule = await hold_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, offcut_id)
        check_current(request, state_tag(row.revision, row.digest))
        change = Change(Kind.OFFCUT, row.id, None)
        made = await houses.write(connection, schedule, author_of(request, why), "remove offcut", [change])
    return Made(revision=made.number)


async def refuse_full_rack(
    connection: AsyncConnection, schedule_id: str, added: Sequence[OffcutIn], used: Sequence[str]
) -> None:
    """Keep each profile to as many lengths as a cut list takes.

    Raises:
        InvalidRequest: when there would be more.
    """
    faults = Faults()
    for profile, more in Counter(offcut.profile for offcut in added).items():
        rows = await items.list_offcuts(connection, schedule_id, profile=profile)
        if len([row for row in rows if row.id not in used]) + more > MOST_OFFCUTS:
            detail = f"The rack holds at most {MOST_OFFCUTS} lengths of {profile!r}: take some off first."
            faults.add((), "rack-full", detail)
    faults.raise_any()


async def _find(connection: AsyncConnection, schedule_id: str, id: str) -> Any:
    row = await items.find_offcut(connection, schedule_id, clean(id))
    if row is None:
        raise NotFound(f"There is no offcut {id} on the rack.")
    return row


def _out(row: Any) -> OffcutStored:
    sent = read_offcut_document(row.document)
    return OffcutStored(
        id=row.id,
        revision=row.revision,
        profile=sent.profile,
        length=sent.length,
        price=sent.price,
        defects=sent.defects,
        note=sent.note,
        exact=items.read_exact(row.exact),
    )
