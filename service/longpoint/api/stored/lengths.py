"""/v1/schedules/{id}/lengths: lengths on hand and on their way, by lot."""

from __future__ import annotations

from typing import Annotated

import msgspec
from litestar import delete, get, post, put
from litestar.params import JSONBody, PathParameter, QueryParameter
from msgspec.structs import replace
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import FOUND_LENGTH, LENGTH
from longpoint.api.document.links import LENGTH_LINKS, LISTED_LENGTH_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_absent, check_news, check_unless, etag, state_tag
from longpoint.api.http.problems import NotFound
from longpoint.api.http.problems_stored import StickCut
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import HeldSchedule, changing, changing_once
from longpoint.api.stored.held_lots import HeldLots
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_cursor
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
from longpoint.lengths import Unit
from longpoint.schedules import items
from longpoint.schedules.answers import StoredLength
from longpoint.schedules.cut_lots import cut_from
from longpoint.schedules.kept import read_house
from longpoint.schedules.lots import LengthOnHand
from longpoint.schedules.made import Made
from longpoint.schedules.rows import LengthRow
from longpoint.schedules.states import LengthState
from longpoint.schedules.values import Change, ItemKind
from longpoint.texts import say
from longpoint.values import Faults, Name

_TAG = "Lengths on hand"
LotName = Annotated[
    str,
    PathParameter(
        max_length=120, description="The name of a lot, or its id (its id when the name has a slash in it)."
    ),
]


@get(
    "/v1/schedules/{schedule_id:str}/lengths",
    **stored(
        "list_lengths", summary="List lengths on hand", tag=_TAG, headers=LINK, links=LISTED_LENGTH_LINKS
    ),
)
async def list_lengths(
    request: AnyRequest,
    schedule_id: ScheduleId,
    limit: Limit = 50,
    cursor: Cursor = None,
    profile: Annotated[str | None, by_name("Only those of this profile.")] = None,
    in_state: Annotated[
        LengthState | None,
        QueryParameter(
            name="state",
            description="Only those of which this can be said: some are ordered and still to come, some were "
            "delivered, some are on hand, or all are used up.",
        ),
    ] = None,
) -> Reply[Page[StoredLength]]:
    """Every lot, the first kept first; sticks are planned from what is left of each before any are bought."""
    after = read_cursor(cursor)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        rows = await items.list_lengths(
            connection, schedule.id, after=after, limit=limit + 1, profile=profile, state=in_state
        )
    last = rows[limit - 1].id if len(rows) > limit else None
    unit = read_house(schedule.document).unit
    return page(request, [StoredLength.of(row, unit) for row in rows], limit, last)


@post(
    "/v1/schedules/{schedule_id:str}/lengths",
    **stored(
        "add_length",
        summary="Add lengths that are on hand",
        tag=_TAG,
        access="write",
        status=201,
        examples=FOUND_LENGTH,
        problems=(403, 409, 412),
        headers={**ETAG, "Location": "Where the lot is."},
        links=LENGTH_LINKS,
    ),
)
async def add_length(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[LengthOnHand], why: Why = ""
) -> Reply[StoredLength]:
    """A lot that is new, an offcut found behind the bench for one: where it has no name, the service makes one.

    An If-Match header, where there is one, names the schedule's state.
    """

    async def work(held: HeldSchedule) -> Reply[StoredLength]:
        held.check_match()
        sent = await request.under(held.house.unit, data)
        lots = await HeldLots.of(held)
        faults = Faults()
        (lot,) = lots.add([sent], (), faults)
        faults.raise_any()
        if lots.changes:
            await held.write("add length", *lots.changes)
        return await _created(held, lot)

    return await changing_once(request, data, schedule_id, work, why)


@get(
    "/v1/schedules/{schedule_id:str}/lengths/{lot:str}",
    **stored("get_length", summary="Read a lot", tag=_TAG, headers=ETAG, links=LENGTH_LINKS),
)
async def get_length(request: AnyRequest, schedule_id: ScheduleId, lot: LotName) -> Reply[StoredLength]:
    """One lot of lengths on hand."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, lot)
    check_news(request, state_tag(row.revision, row.digest))
    return _reply(request, row, read_house(schedule.document).unit)


@put(
    "/v1/schedules/{schedule_id:str}/lengths/{lot:str}",
    **stored(
        "put_length",
        summary="Say what there is of a lot",
        tag=_TAG,
        access="write",
        examples=LENGTH,
        problems=CHANGES,
        headers=ETAG,
        links=LENGTH_LINKS,
        needs_match=False,
        creates=True,
    ),
)
async def put_length(
    request: AnyRequest,
    schedule_id: ScheduleId,
    lot: LotName,
    data: JSONBody[LengthOnHand],
    why: Why = "",
) -> Reply[StoredLength]:
    """Makes the lot, or says anew what there is of it. Quantities are in all, so that the same again changes nothing.

    To change a lot that is there, If-Match is needed: it names the lot's own state. What is left of it, ordered or
    there, is planned with from now on. More than were ordered may come: `notes` says so.
    """
    async with changing(request, schedule_id, why) as held:
        row = await items.find_length(held.connection, held.schedule.id, clean(lot))
        sent = await request.under(held.house.unit, data)
        faults = Faults()
        name = lot if row is None else row.lot
        if row is not None and sent.used_up is None:
            sent = replace(sent, used_up=row.used_up)
        one = sent.called(name)
        _report_name(name, sent, row, faults)
        cut = await cut_from(held.connection, held.schedule.id, name)
        if one.gone < len(cut):
            detail = say("problem", "lot.fewer-used-than-cut", used_up=one.gone, sticks=cut)
            faults.add(("used_up",), "fewer-than-were-cut", detail)
        lots = await HeldLots.of(held)
        lots.change(row, one, faults)
        if row is None:
            check_absent(request)
        elif lots.changes or request.misread:
            held.check_current(row)
        else:
            check_unless(request, state_tag(row.revision, row.digest))
        faults.raise_any()
        held.refuse_misread()
        if lots.changes:
            await held.write("length", *lots.changes, as_planned=lots.as_planned)
        if row is None:
            return await _created(held, name)
        return _reply(request, await _find(held.connection, held.schedule.id, row.id), held.house.unit)


@delete(
    "/v1/schedules/{schedule_id:str}/lengths/{lot:str}",
    **stored("remove_length", summary="Remove a lot", tag=_TAG, access="write", problems=CHANGES),
)
async def remove_length(request: AnyRequest, schedule_id: ScheduleId, lot: LotName, why: Why = "") -> Made:
    """For one that was entered by mistake. One that is used up stays listed, and is not planned with."""
    async with changing(request, schedule_id, why) as held:
        row = await _find(held.connection, held.schedule.id, lot)
        held.check_current(row)
        if cut := await cut_from(held.connection, held.schedule.id, row.lot):
            raise StickCut(say("problem", "lot.was-cut-from", lot=row.lot, sticks=cut))
        gone = Change(ItemKind.LENGTH, row.id, None)
        made = await held.write("remove length", gone, as_planned=not row.available)
    return Made(made.number)


def _report_name(name: str, sent: LengthOnHand, row: LengthRow | None, faults: Faults) -> None:
    """Note a lot that is called otherwise than in the address, or as nothing can be called."""
    if sent.lot not in (None, name):
        faults.add(
            ("lot",),
            "not-the-address",
            say("problem", "lot.not-the-address", lot=name),
        )
    if row is None:
        try:
            msgspec.convert(name, Name)
        except msgspec.ValidationError:
            detail = say("problem", "lot.not-a-name")
            faults.add(("lot",), "not-a-name", detail)


async def _created(held: HeldSchedule, lot: str) -> Reply[StoredLength]:
    row = await _find(held.connection, held.schedule.id, lot)
    reply = _reply(held.request, row, held.house.unit)
    reply.status_code = 201
    reply.headers["location"] = f"/v1/schedules/{held.schedule.id}/lengths/{row.id}"
    return reply


async def _find(connection: AsyncConnection, schedule_id: str, lot: str) -> LengthRow:
    row = await items.find_length(connection, schedule_id, clean(lot))
    if row is None:
        raise NotFound(say("problem", "lot.unknown", lot=lot))
    return row


def _reply(request: AnyRequest, row: LengthRow, unit: Unit | None) -> Reply[StoredLength]:
    return Reply(
        StoredLength.of(row, unit),
        status_code=200,
        headers={"etag": etag(request, state_tag(row.revision, row.digest))},
    )
