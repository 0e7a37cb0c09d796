"""Work that was done, written into a schedule that is held: pieces, sticks, and the lengths that go with them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial

from longpoint.api.http.answer import Reply
from longpoint.api.running.threads import apart
from longpoint.api.stored.changing import HeldSchedule
from longpoint.api.stored.held_lots import HeldLots
from longpoint.api.stored.planned import marks_of
from longpoint.api.stored.record_work import Recorder
from longpoint.api.stored.sticks_cut import SticksCut, refuse_claimed, sticks_cut
from longpoint.api.stored.stored_house import left_of, load_house
from longpoint.lengths import length_writer
from longpoint.schedules import claims, items, plans
from longpoint.schedules.answers import StoredPiece
from longpoint.schedules.as_printed import PiecesThen, house_then, pieces_then
from longpoint.schedules.house_rows import cut_sticks_of
from longpoint.schedules.kept import read_piece, read_stick
from longpoint.schedules.lots import MOST_LOTS, named_lots
from longpoint.schedules.made import WorkMade
from longpoint.schedules.making import KeptPlan
from longpoint.schedules.rows import PieceRow, StickRow
from longpoint.schedules.sent import CutSticks, Work
from longpoint.schedules.states import Done, PieceState
from longpoint.schedules.values import Change, Stamp
from longpoint.texts import Sentence, say
from longpoint.values import Faults, nearest


async def record_sticks(held: HeldSchedule, data: CutSticks, plan: KeptPlan) -> Reply[WorkMade]:
    """Record sticks that were cut as planned, or as they were printed."""
    house = await load_house(held.connection, held.schedule)
    left = await left_of(house)
    rows = await plans.sticks(held.connection, held.schedule.id, data.sticks)
    elsewhere = {name: read_stick(row.document) for name, row in rows.items() if name not in plan.sticks}
    done = sticks_cut(data, house.sited, plan, left, elsewhere, marks_of(house))
    rows.update(await plans.sticks(held.connection, held.schedule.id, tuple(done.today.values())))
    notes = (*refuse_claimed(data, done.today, rows, left.cut), *done.notes)
    recorder = Recorder(held, faults := Faults())
    for index, (piece, stick) in enumerate(done.pieces):
        await recorder.record(piece, ("pieces", index), stick)
    await _record_printed(held, recorder, done, rows)
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
    return await _written(
        held, recorder, "cut sticks", lots.changes, added, notes, as_planned=not done.printed
    )


async def _record_printed(
    held: HeldSchedule, recorder: Recorder, done: SticksCut, rows: Mapping[str, StickRow]
) -> None:
    """Record what was cut as it was printed, each piece as it was when its stick was planned."""
    then: dict[int, PiecesThen] = {}
    for piece, stick in done.printed:
        revision = rows[stick].revision
        if revision not in then:
            versions = await house_then(held.connection, held.schedule.id, revision)
            then[revision] = await apart(partial(pieces_then, versions))
        await recorder.record_then(piece, then[revision][piece.opening_id, piece.piece], stick)


async def record_pieces(held: HeldSchedule, data: Work, action: str) -> Reply[WorkMade]:
    """Record pieces, and lengths that are new or used up; what was recorded before changes nothing."""
    faults = Faults()
    recorder = Recorder(held, faults)
    for index, piece in enumerate(data.pieces):
        await recorder.record(piece, ("pieces", index))
    lots = await HeldLots.of(held)
    said_before = bool(data.pieces) and not recorder.changed and not faults
    for index, lot in enumerate(() if said_before else data.used_lengths):
        if lots.use(lot):
            continue
        if lots.find(lot):
            detail = say("problem", "lot.none-left", lot=lot)
        else:
            detail = say("problem", "lot.no-such", lot=lot) + nearest(lot, lots.names)
        faults.add(("used_lengths", index), "no-such-length", detail)
    if not data.pieces and not data.lengths and not data.used_lengths:
        faults.add((), "empty", say("problem", "work.nothing-recorded"))
    added = lots.add(data.lengths, ("lengths",), faults) if data.lengths and not said_before else ()
    faults.raise_any()
    notes = await _claimed_by_others(held, recorder)
    if said_before and (data.lengths or data.used_lengths):
        notes = (*notes, say("note", "work.said-before"))
    # What is only put up leaves what is planned as it was.
    put_up = lots.as_planned and all(one.state is Done.INSTALLED for one in data.pieces)
    as_planned = put_up and not recorder.new
    return await _written(held, recorder, action, lots.changes, added, notes, as_planned=as_planned)


async def _claimed_by_others(held: HeldSchedule, recorder: Recorder) -> tuple[Sentence, ...]:
    """What is to be known of pieces that were cut while somebody had the stick claimed that they were planned on."""
    cut = {
        (one.opening_id, one.piece, one.instance)
        for one in recorder.changed.values()
        if one and one.state is PieceState.CUT
    }
    rows = await claims.claimed_now(held.connection, held.schedule.id) if cut else []
    return tuple(
        say("note", "stick.was-claimed", stick=row.name, by=row.claimed_by, until=row.claimed_until)
        for row in rows
        if any(piece.slot in cut for piece in read_stick(row.document).pieces)
    )


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


async def stick_not_cut(held: HeldSchedule, row: PieceRow) -> list[Change]:
    """What it changes that the last piece of a stick goes; nothing where others of it stay."""
    name = read_piece(row.document).stick
    if name is None:
        return []
    pieces = await items.list_pieces(held.connection, held.schedule.id)
    if name in cut_sticks_of(other for other in pieces if other.id != row.id):
        return []
    stick = (await plans.sticks(held.connection, held.schedule.id, [name]))[name]
    return (await HeldLots.of(held)).not_cut(name, read_stick(stick.document).lot)
