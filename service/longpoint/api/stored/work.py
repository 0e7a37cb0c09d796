"""/v1/schedules/{id}/work: pieces cut, fitted and spoiled."""

from __future__ import annotations

import contextlib
from typing import Annotated, Any

from litestar import delete, get, post
from litestar.params import JSONBody, PathParameter, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import STICKS, WORK
from longpoint.api.document.links import LISTED_PIECE_LINKS, PIECE_LINKS, WORK_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_current, check_match, check_news, etag, state_tag
from longpoint.api.http.faults import Faults, InvalidRequest
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.cut_list import load_house, worked_out
from longpoint.api.stored.groups import find_place
from longpoint.api.stored.house import check_house, read_house_document
from longpoint.api.stored.offcuts import refuse_full_rack
from longpoint.api.stored.paging import LINK, Cursor, Limit, page, read_cursor
from longpoint.api.stored.piece_documents import piece_out, read_piece_document
from longpoint.api.stored.record_work import Recorder
from longpoint.api.stored.retrying import once
from longpoint.api.stored.schedule_changes import offcut_changes
from longpoint.api.stored.sticks_cut import sticks_as_work
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
from longpoint.api.wire.lengths import length_writer
from longpoint.api.wire.schedule import Made
from longpoint.api.wire.schedule_work import PieceState, PieceStored, SticksIn, WorkIn, WorkMade
from longpoint.schedules import houses, items
from longpoint.schedules.values import Change, Kind

_TAG = "Work"
PieceId = Annotated[str, PathParameter(max_length=64, description="The id of a piece.")]


@post(
    "/v1/schedules/{schedule_id:str}/work",
    **stored(
        "record_work",
        summary="Record what was cut, fitted or spoiled",
        tag=_TAG,
        access="write",
        status=201,
        examples=WORK,
        problems=(403, 409, 412),
        links=WORK_LINKS,
    ),
)
async def record_work(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[WorkIn], why: Why = ""
) -> Reply[WorkMade]:
    """Pieces are taken to be cut as the cut list has them now. An If-Match header names the schedule's state."""

    async def work(connection: AsyncConnection) -> Reply[WorkMade]:
        schedule = await hold_schedule(connection, request, schedule_id)
        check_match(request, state_tag(schedule.revision, schedule.digest))
        return await _record(connection, request, schedule, data, "work", why)

    return await once(request, data, work)


@post(
    "/v1/schedules/{schedule_id:str}/cut-sticks",
    **stored(
        "cut_sticks",
        summary="Record sticks cut as the cut list has them",
        tag=_TAG,
        access="write",
        status=201,
        examples=STICKS,
        problems=CHANGES,
        links=WORK_LINKS,
    ),
)
async def cut_sticks(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[SticksIn], why: Why = ""
) -> Reply[WorkMade]:
    """Every piece on the sticks is cut, remnants go off the rack, and offcuts long enough to keep go on it.

    If-Match names the schedule's state that the cut list was worked out from, since another has other sticks.
    """

    # Worked out before anybody is kept waiting; a house that cannot be is told of below, unless this is a retry.
    with contextlib.suppress(InvalidRequest):
        async with store_of(request).reading() as connection:
            house = await load_house(connection, await find_schedule(connection, request, schedule_id))
        await worked_out(house)

    async def work(connection: AsyncConnection) -> Reply[WorkMade]:
        schedule = await hold_schedule(connection, request, schedule_id)
        check_current(request, state_tag(schedule.revision, schedule.digest))
        house = await load_house(connection, schedule)
        done = await worked_out(house)
        return await _record(
            connection, request, schedule, sticks_as_work(data, house, done), "cut sticks", why
        )

    return await once(request, data, work)


@get(
    "/v1/schedules/{schedule_id:str}/work",
    **stored(
        "list_pieces", summary="List pieces that were cut", tag=_TAG, headers=LINK, links=LISTED_PIECE_LINKS
    ),
)
async def list_pieces(
    request: AnyRequest,
    schedule_id: ScheduleId,
    limit: Limit = 50,
    cursor: Cursor = None,
    opening: Annotated[
        str | None,
        by_name("Only those of this opening or group, by its mark or id."),
    ] = None,
    in_state: Annotated[
        PieceState | None, QueryParameter(name="state", description="Only those in this state.")
    ] = None,
) -> Reply[Page[PieceStored]]:
    """Every piece that is in the shop, on the wall, or was spoiled; the first recorded first."""
    after = read_cursor(cursor)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        opening_id = None if opening is None else await find_place(connection, schedule, opening)
        rows = await items.list_pieces(
            connection,
            schedule.id,
            after=after,
            limit=limit + 1,
            opening_id=opening_id,
            state=in_state and in_state.value,
        )
    write = length_writer(read_house_document(schedule.document).rounding.value())
    outs = [piece_out(row.id, row.revision, read_piece_document(row.document), write) for row in rows]
    return page(request, outs, limit, rows[limit - 1].id if len(rows) > limit else None)


@get(
    "/v1/schedules/{schedule_id:str}/work/{piece_id:str}",
    **stored("get_piece", summary="Read a piece", tag=_TAG, headers=ETAG, links=PIECE_LINKS),
)
async def get_piece(request: AnyRequest, schedule_id: ScheduleId, piece_id: PieceId) -> Reply[PieceStored]:
    """One piece that was cut."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, piece_id)
    tag = state_tag(row.revision, row.digest)
    check_news(request, tag)
    write = length_writer(read_house_document(schedule.document).rounding.value())
    out = piece_out(row.id, row.revision, read_piece_document(row.document), write)
    return Reply(out, status_code=200, headers={"etag": etag(request, tag)})


@delete(
    "/v1/schedules/{schedule_id:str}/work/{piece_id:str}",
    **stored(
        "remove_piece",
        summary="Strike a piece that was recorded by mistake",
        tag=_TAG,
        access="write",
        problems=CHANGES,
    ),
)
async def remove_piece(
    request: AnyRequest, schedule_id: ScheduleId, piece_id: PieceId, why: Why = ""
) -> Made:
    """Its place counts as not cut again. A piece that was cut and spoiled is recorded as spoiled instead."""
    async with store_of(request).writing() as connection:
        schedule = await hold_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, piece_id)
        check_current(request, state_tag(row.revision, row.digest))
        change = Change(Kind.PIECE, row.id, None)
        made = await houses.write(connection, schedule, author_of(request, why), "strike piece", [change])
    return Made(revision=made.number)


async def _find(connection: AsyncConnection, schedule_id: str, id: str) -> Any:
    row = await items.find_piece(connection, schedule_id, clean(id))
    if row is None:
        raise NotFound(f"The schedule has no piece {id}.")
    return row


async def _record(
    connection: AsyncConnection, request: AnyRequest, schedule: Any, data: WorkIn, action: str, why: str
) -> Reply[WorkMade]:
    house = read_house_document(schedule.document)
    faults = Faults()
    recorder = Recorder(connection, schedule, faults)
    for index, piece in enumerate(data.pieces):
        await recorder.record(piece, ("pieces", index))
    gone: list[Change] = []
    for index, id in enumerate(data.used_offcuts):
        row = await items.find_offcut(connection, schedule.id, id)
        if row is None or id in data.used_offcuts[:index]:
            faults.add(("used_offcuts", index), "unknown-offcut", f"There is no offcut {id} on the rack.")
        else:
            gone.append(Change(Kind.OFFCUT, id, None))
    if not data.pieces and not data.offcuts and not data.used_offcuts:
        faults.add((), "empty", "Nothing is recorded: list pieces, offcuts put on the rack, or offcuts used.")
    faults.raise_any()
    check_house(house, [], data.offcuts, rack_name="offcuts")
    added = offcut_changes(data.offcuts, house.unit)
    await refuse_full_rack(connection, schedule.id, data.offcuts, data.used_offcuts)
    changes = [*recorder.changes, *gone, *added]
    made = await houses.write(connection, schedule, author_of(request, why), action, changes)
    write = length_writer(house.rounding.value())
    pieces = [
        piece_out(id, made.number, document, write)
        for id, document in recorder.changed.items()
        if document is not None
    ]
    return Reply(
        WorkMade(revision=made.number, pieces=pieces, offcuts=[change.id for change in added]),
        status_code=201,
        headers={"etag": etag(request, state_tag(made.number, made.digest))},
    )
