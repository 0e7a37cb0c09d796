"""/v1/schedules/{id}/work: pieces cut, installed and spoiled."""

from __future__ import annotations

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
from longpoint.api.stored.changing import HeldSchedule, changing, changing_once
from longpoint.api.stored.groups import find_place
from longpoint.api.stored.held_plan import held_plan
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_cursor
from longpoint.api.stored.planned import plan_first
from longpoint.api.stored.recording import record_pieces, record_sticks, stick_not_cut
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
from longpoint.schedules.answers import StoredPiece
from longpoint.schedules.kept import read_house
from longpoint.schedules.made import Made, WorkMade
from longpoint.schedules.rows import PieceRow
from longpoint.schedules.sent import CutSticks, Work
from longpoint.schedules.states import PieceState
from longpoint.schedules.values import Change, ItemKind
from longpoint.texts import say

_TAG = "Work"
PieceId = Annotated[str, PathParameter(max_length=64, description="The id of a piece.")]


@post(
    "/v1/schedules/{schedule_id:str}/work",
    **stored(
        "record_work",
        summary="Record what was cut, installed or spoiled",
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

    async def work(held: HeldSchedule) -> Reply[WorkMade]:
        held.check_match()
        return await record_pieces(held, await request.under(held.house.unit, data), "work")

    return await changing_once(request, data, schedule_id, work, why)


@post(
    "/v1/schedules/{schedule_id:str}/cut-sticks",
    **stored(
        "cut_sticks",
        summary="Record sticks cut as they were planned",
        tag=_TAG,
        access="write",
        status=201,
        examples=STICKS,
        problems=(403, 409, 412),
        links=WORK_LINKS,
    ),
)
async def cut_sticks(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[CutSticks], why: Why = ""
) -> Reply[WorkMade]:
    """Every piece on the sticks is cut, lengths on hand are used up, and offcuts long enough to keep are on hand.

    A stick is taken by its name, from whatever sheet that was read, as long as the plan that stands has it; recorded
    again, it changes nothing. The plan stands as it was, with its other sticks under their names. One that somebody
    else has claimed is refused; a claim that is over keeps nobody off, and `notes` says that it is.
    """
    await plan_first(request, schedule_id)

    async def work(held: HeldSchedule) -> Reply[WorkMade]:
        held.check_match()
        return await record_sticks(held, data, await held_plan(held))

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
    """Its place counts as not cut again. A piece that was cut and spoiled is recorded as spoiled instead.

    With the last piece of a stick that was recorded as cut, the stick counts as not cut: the offcut that it left goes
    from the lengths on hand, and the length of a lot that it was is there again.
    """
    async with changing(request, schedule_id, why) as held:
        row = await _find(held.connection, held.schedule.id, piece_id)
        held.check_current(row)
        changes = [Change(ItemKind.PIECE, row.id, None), *await stick_not_cut(held, row)]
        made = await held.write("strike piece", *changes)
    return Made(made.number)


async def _find(connection: AsyncConnection, schedule_id: str, id: str) -> PieceRow:
    row = await items.find_piece(connection, schedule_id, clean(id))
    if row is None:
        raise NotFound(say("problem", "work.no-such-piece", id=id))
    return row
