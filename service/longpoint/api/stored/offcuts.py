"""/v1/schedules/{id}/offcuts: the rack."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from typing import Annotated

from litestar import delete, get, post
from litestar.params import JSONBody, PathParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import OFFCUT
from longpoint.api.document.links import LISTED_OFFCUT_LINKS, OFFCUT_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import Held, changing, changing_once
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_cursor
from longpoint.api.stored.schedule_changes import rack_changes
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
from longpoint.schedules import items
from longpoint.schedules.answers import Made, StoredLength
from longpoint.schedules.kept import MOST_OFFCUTS, RackLength, rack_full, read_house
from longpoint.schedules.rows import OffcutRow
from longpoint.schedules.values import Change, Kind
from longpoint.values import Faults

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
) -> Reply[Page[StoredLength]]:
    """Lengths on hand, which cut lists use before they buy where that is cheaper."""
    after = read_cursor(cursor)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        rows = await items.list_offcuts(
            connection, schedule.id, after=after, limit=limit + 1, profile=profile
        )
    last = rows[limit - 1].id if len(rows) > limit else None
    unit = read_house(schedule.document).unit
    return page(request, [StoredLength.of(row, unit) for row in rows], limit, last)


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
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[RackLength], why: Why = ""
) -> Reply[StoredLength]:
    """One length of stock, from now on used by cut lists."""

    async def work(held: Held) -> Reply[StoredLength]:
        held.check_match()
        length = await request.under(held.house.unit, data)
        await refuse_full_rack(held.connection, held.schedule.id, [length], [])
        (change,) = rack_changes([length])
        await held.write("add offcut", change)
        row = await _find(held.connection, held.schedule.id, change.id)
        place = f"/v1/schedules/{held.schedule.id}/offcuts/{row.id}"
        answer = StoredLength.of(row, held.house.unit)
        return Reply(answer, status_code=201, headers={**held.headers(row), "location": place})

    return await changing_once(request, data, schedule_id, work, why)


@get(
    "/v1/schedules/{schedule_id:str}/offcuts/{offcut_id:str}",
    **stored("get_offcut", summary="Read an offcut", tag=_TAG, headers=ETAG, links=OFFCUT_LINKS),
)
async def get_offcut(
    request: AnyRequest, schedule_id: ScheduleId, offcut_id: OffcutId
) -> Reply[StoredLength]:
    """One length on the rack."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, offcut_id)
    tag = state_tag(row.revision, row.digest)
    check_news(request, tag)
    answer = StoredLength.of(row, read_house(schedule.document).unit)
    return Reply(answer, status_code=200, headers={"etag": etag(request, tag)})


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
    async with changing(request, schedule_id, why) as held:
        row = await _find(held.connection, held.schedule.id, offcut_id)
        held.check_current(row)
        made = await held.write("remove offcut", Change(Kind.OFFCUT, row.id, None))
    return Made(made.number)


async def refuse_full_rack(
    connection: AsyncConnection, schedule_id: str, added: Sequence[RackLength], used: Sequence[str]
) -> None:
    """Keep each profile to as many lengths as a cut list takes.

    Raises:
        Refusal: when there would be more.
    """
    faults = Faults()
    for profile, more in Counter(offcut.profile for offcut in added).items():
        rows = await items.list_offcuts(connection, schedule_id, profile=profile)
        if len([row for row in rows if row.id not in used]) + more > MOST_OFFCUTS:
            faults.add((), "rack-full", rack_full(profile, MOST_OFFCUTS))
    faults.raise_any()


async def _find(connection: AsyncConnection, schedule_id: str, id: str) -> OffcutRow:
    row = await items.find_offcut(connection, schedule_id, clean(id))
    if row is None:
        raise NotFound(f"There is no offcut {id} on the rack.")
    return row
