"""/v1/schedules/{id}/work: pieces cut, fitted and spoiled."""

from __future__ import annotations

import contextlib
from typing import Annotated

from litestar import delete, get, post
from litestar.params import JSONBody, PathParameter, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import STICKS, WORK
from longpoint.api.document.links import LISTED_PIECE_LINKS, PIECE_LINKS, WORK_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import Held, changing, changing_once
from longpoint.api.stored.cut_list import load_house, worked_out
from longpoint.api.stored.groups import find_place
from longpoint.api.stored.offcuts import refuse_full_rack
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_cursor
from longpoint.api.stored.record_work import Recorder
from longpoint.api.stored.schedule_changes import rack_changes
from longpoint.api.stored.sticks_cut import sticks_as_work
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
from longpoint.lengths import length_writer
from longpoint.schedules import items
from longpoint.schedules.answers import Made, StoredPiece, WorkMade
from longpoint.schedules.kept import read_house
from longpoint.schedules.rows import PieceRow
from longpoint.schedules.sent import CutSticks, Work
from longpoint.schedules.states import PieceState
from longpoint.schedules.values import Change, Kind
from longpoint.values import Faults, Refusal

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
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[Work], why: Why = ""
) -> Reply[WorkMade]:
    """Pieces are taken to be cut as the cut list has them now. An If-Match header names the schedule's state."""

    async def work(held: Held) -> Reply[WorkMade]:
        held.check_match()
        return await _record(held, await request.under(held.house.unit, data), "work")

    return await changing_once(request, data, schedule_id, work, why)


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
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[CutSticks], why: Why = ""
) -> Reply[WorkMade]:
    """Every piece on the sticks is cut, remnants go off the rack, and offcuts long enough to keep go on it.

    If-Match names the schedule's state that the cut list was worked out from, since another has other sticks.
    """

    # Worked out before anybody is kept waiting; a house that cannot be is told of below, unless this is a retry.
    with contextlib.suppress(Refusal):
        async with store_of(request).reading() as connection:
            house = await load_house(connection, await find_schedule(connection, request, schedule_id))
        await worked_out(house)

    async def work(held: Held) -> Reply[WorkMade]:
        held.check_current()
        house = await load_house(held.connection, held.schedule)
        done = await worked_out(house)
        return await _record(held, sticks_as_work(data, house, done), "cut sticks")

    return await changing_once(request, data, schedule_id, work, why)


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
) -> Reply[Page[StoredPiece]]:
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
    write = length_writer(read_house(schedule.document).rounding)
    last = rows[limit - 1].id if len(rows) > limit else None
    return page(request, [StoredPiece.of_row(row) for row in rows], limit, last, write=write)


@get(
    "/v1/schedules/{schedule_id:str}/work/{piece_id:str}",
    **stored("get_piece", summary="Read a piece", tag=_TAG, headers=ETAG, links=PIECE_LINKS),
)
async def get_piece(request: AnyRequest, schedule_id: ScheduleId, piece_id: PieceId) -> Reply[StoredPiece]:
    """One piece that was cut."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await _find(connection, schedule.id, piece_id)
    tag = state_tag(row.revision, row.digest)
    check_news(request, tag)
    write = length_writer(read_house(schedule.document).rounding)
    return Reply(StoredPiece.of_row(row), write, status_code=200, headers={"etag": etag(request, tag)})


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
    async with changing(request, schedule_id, why) as held:
        row = await _find(held.connection, held.schedule.id, piece_id)
        held.check_current(row)
        made = await held.write("strike piece", Change(Kind.PIECE, row.id, None))
    return Made(made.number)


async def _find(connection: AsyncConnection, schedule_id: str, id: str) -> PieceRow:
    row = await items.find_piece(connection, schedule_id, clean(id))
    if row is None:
        raise NotFound(f"The schedule has no piece {id}.")
    return row


async def _record(held: Held, data: Work, action: str) -> Reply[WorkMade]:
    connection, schedule_id = held.connection, held.schedule.id
    faults = Faults()
    recorder = Recorder(held, faults)
    for index, piece in enumerate(data.pieces):
        await recorder.record(piece, ("pieces", index))
    gone: list[Change] = []
    for index, id in enumerate(data.used_offcuts):
        row = await items.find_offcut(connection, schedule_id, id)
        if row is None or id in data.used_offcuts[:index]:
            faults.add(("used_offcuts", index), "unknown-offcut", f"There is no offcut {id} on the rack.")
        else:
            gone.append(Change(Kind.OFFCUT, id, None))
    if not data.pieces and not data.offcuts and not data.used_offcuts:
        faults.add((), "empty", "Nothing is recorded: list pieces, offcuts put on the rack, or offcuts used.")
    faults.raise_any()
    added = rack_changes(data.offcuts)
    await refuse_full_rack(connection, schedule_id, data.offcuts, data.used_offcuts)
    made = await held.write(action, *recorder.changes, *gone, *added)
    pieces = [
        StoredPiece.of(change.id, made.number, change.document)
        for change in recorder.changes
        if change.document is not None
    ]
    return Reply(
        WorkMade(made.number, tuple(pieces), tuple(change.id for change in added)),
        length_writer(held.house.rounding),
        status_code=201,
        headers=held.headers(made),
    )
