"""/v1/schedules/{id}/work: pieces cut, fitted and spoiled."""

from __future__ import annotations

from collections.abc import Sequence
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
from longpoint.api.stored.held_lots import HeldLots
from longpoint.api.stored.held_plan import held_plan
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_cursor
from longpoint.api.stored.planned import marks_of, plan_first
from longpoint.api.stored.record_work import Recorder
from longpoint.api.stored.sticks_cut import refuse_claimed, sticks_cut
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
from longpoint.api.stored.stored_house import left_of, load_house
from longpoint.lengths import length_writer
from longpoint.schedules import claims, items, plans
from longpoint.schedules.answers import StoredPiece
from longpoint.schedules.kept import read_house, read_stick
from longpoint.schedules.lots import MOST_LOTS, named_lots
from longpoint.schedules.made import Made, WorkMade
from longpoint.schedules.making import KeptPlan
from longpoint.schedules.rows import PieceRow
from longpoint.schedules.sent import CutSticks, Work
from longpoint.schedules.states import Done, PieceState
from longpoint.schedules.values import Change, ItemKind, Stamp
from longpoint.texts import Sentence, say
from longpoint.values import Faults, nearest

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

    async def work(held: HeldSchedule) -> Reply[WorkMade]:
        held.check_match()
        return await _record(held, await request.under(held.house.unit, data), "work")

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
        return await _record_sticks(held, data, await held_plan(held))

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
        made = await held.write("strike piece", Change(ItemKind.PIECE, row.id, None))
    return Made(made.number)


async def _find(connection: AsyncConnection, schedule_id: str, id: str) -> PieceRow:
    row = await items.find_piece(connection, schedule_id, clean(id))
    if row is None:
        raise NotFound(say("problem", "work.no-such-piece", id=id))
    return row


async def _record_sticks(held: HeldSchedule, data: CutSticks, plan: KeptPlan) -> Reply[WorkMade]:
    house = await load_house(held.connection, held.schedule)
    left = await left_of(house)
    rows = await plans.sticks(held.connection, held.schedule.id, data.sticks)
    elsewhere = {name: read_stick(row.document) for name, row in rows.items() if name not in plan.sticks}
    done = sticks_cut(data, house.sited, plan, left, elsewhere, marks_of(house))
    notes = refuse_claimed(data, rows, left.cut)
    recorder = Recorder(held, faults := Faults())
    for index, (piece, stick) in enumerate(done.pieces):
        await recorder.record(piece, ("pieces", index), stick)
    faults.raise_any()
    lots = await HeldLots.of(held)
    for lot in done.used:
        lots.use(lot)
    offcuts = named_lots(done.offcuts[: MOST_LOTS - len(lots.names)], lots.names)
    for one in offcuts:
        lots.put(one)
    for row in rows.values():
        await claims.release(held.connection, row)
    await plans.mark_used(held.connection, plan.row)
    added = tuple(one.named for one in offcuts)
    return await _written(held, recorder, "cut sticks", lots.changes, added, notes, as_planned=True)


async def _record(held: HeldSchedule, data: Work, action: str) -> Reply[WorkMade]:
    faults = Faults()
    recorder = Recorder(held, faults)
    for index, piece in enumerate(data.pieces):
        await recorder.record(piece, ("pieces", index))
    lots = await HeldLots.of(held)
    for index, lot in enumerate(data.used_lengths):
        if not lots.use(lot):
            detail = (
                say("problem", "lot.none-left", lot=lot)
                if lots.find(lot)
                else say("problem", "lot.no-such", lot=lot)
            )
            faults.add(("used_lengths", index), "no-such-length", detail + nearest(lot, lots.names))
    if not data.pieces and not data.lengths and not data.used_lengths:
        faults.add((), "empty", say("problem", "work.nothing-recorded"))
    added = lots.add(data.lengths, ("lengths",), faults) if data.lengths else ()
    faults.raise_any()
    # What is only put up leaves what is planned as it was.
    put_up = lots.as_planned and all(one.state is Done.INSTALLED for one in data.pieces)
    as_planned = put_up and not recorder.new
    return await _written(held, recorder, action, lots.changes, added, as_planned=as_planned)


async def _written(
    held: HeldSchedule,
    recorder: Recorder,
    action: str,
    more: Sequence[Change],
    added: tuple[str, ...],
    notes: tuple[Sentence, ...] = (),
    *,
    as_planned: bool,
) -> Reply[WorkMade]:
    """What was recorded, kept in one revision; in none where all of it was recorded before."""
    changes = [*recorder.changes, *more]
    stamp = Stamp(held.schedule.revision, held.schedule.digest)
    made = await held.write(action, *changes, as_planned=as_planned) if changes else stamp
    pieces = [
        StoredPiece.of(change.id, made.number, change.document)
        for change in recorder.changes
        if change.document is not None
    ]
    for id in recorder.unchanged:
        row = await items.find_piece(held.connection, held.schedule.id, id)
        if row is not None:
            pieces.append(StoredPiece.of_row(row))
    return Reply(
        WorkMade(made.number, tuple(pieces), added, notes),
        length_writer(held.house.rounding),
        status_code=201,
        headers=held.headers(made),
    )
