"""Checking a database: that its history hangs together, and that what now stands repeats it."""

from collections import defaultdict

from sqlalchemy import select, text
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules import history
from longpoint.schedules.basics import digest_of
from longpoint.schedules.check_plans import check_plans
from longpoint.schedules.history import revision_digest
from longpoint.schedules.models import (
    LengthRecord,
    OpeningRecord,
    PieceRecord,
    Retry,
    RevisionRecord,
    Schedule,
    Version,
)
from longpoint.schedules.rows import ScheduleRow, VersionRow
from longpoint.schedules.store import Store
from longpoint.schedules.values import Author, ItemKind

_ITEMS: list[tuple[ItemKind, type[OpeningRecord | PieceRecord | LengthRecord]]] = [
    (ItemKind.OPENING, OpeningRecord),
    (ItemKind.PIECE, PieceRecord),
    (ItemKind.LENGTH, LengthRecord),
]


async def check_store(store: Store) -> list[str]:
    """Everything that is wrong with a database, a line for each; nothing when it is sound."""
    async with store.reading() as connection:
        wrong = await _check_file(connection) if store.sqlite else []
        ids = list((await connection.execute(select(Schedule.id).order_by(Schedule.id))).scalars())
        for id in ids:
            wrong += [f"schedule {id}: {line}" for line in await _check_schedule(connection, id)]
        half = await connection.execute(select(Retry.key).where(Retry.status == 0))
        wrong += [f"idempotency key {key!r} was claimed without an answer" for key in half.scalars()]
    return wrong


async def _check_file(connection: AsyncConnection) -> list[str]:
    integrity = (await connection.execute(text("PRAGMA integrity_check"))).scalars().all()
    wrong = [f"the file is damaged: {line}" for line in integrity if line != "ok"]
    strays = (await connection.execute(text("PRAGMA foreign_key_check"))).all()
    return wrong + [f"a row of {row[0]} refers to nothing in {row[2]}" for row in strays]


async def _check_schedule(connection: AsyncConnection, id: str) -> list[str]:
    schedule = ScheduleRow.of((await connection.execute(select(Schedule).where(Schedule.id == id))).one())
    wrong = await _check_revisions(connection, schedule)
    standing = await history.state_at(connection, id, schedule.revision, list(ItemKind))
    wrong += await _check_items(connection, schedule, standing)
    heads = [row for row in standing if row.kind == ItemKind.SCHEDULE]
    if [row.document for row in heads] != [schedule.document]:
        wrong.append("its document is not that of its history")
    elif heads[0].revision != schedule.head_revision:
        wrong.append("its document is said to be of another revision than it is")
    wrong += await check_plans(connection, schedule)
    openings = [row.position or 0 for row in standing if row.kind == ItemKind.OPENING]
    if schedule.opening_count != len(openings):
        wrong.append(f"it counts {schedule.opening_count} openings and has {len(openings)}")
    if openings and schedule.next_position <= max(openings):
        wrong.append("its next place is taken already")
    return wrong


async def _check_revisions(connection: AsyncConnection, schedule: ScheduleRow) -> list[str]:
    versions: dict[int, list[str]] = defaultdict(list)
    wrong = []
    for row in await connection.execute(select(Version).where(Version.schedule_id == schedule.id)):
        own = digest_of(row.kind, row.item_id, row.position, row.document, row.exact)
        if own != row.digest:
            wrong.append(f"the {row.kind} {row.item_id} of revision {row.revision} was tampered with")
        versions[row.revision].append(own)
    query = (
        select(RevisionRecord)
        .where(RevisionRecord.schedule_id == schedule.id)
        .order_by(RevisionRecord.number)
    )
    before, number = schedule.id, 0
    for one in await connection.execute(query):
        number += 1
        if one.number != number:
            wrong.append(f"revision {number} is missing")
            number = one.number
        author = Author(schedule.account_id, one.key_id, one.who, one.why)
        digest = revision_digest(before, one.number, one.at, author, one.action, versions[one.number])
        if digest != one.digest:
            wrong.append(f"revision {one.number} does not follow from what is recorded")
        before = one.digest
    if (number, before) != (schedule.revision, schedule.digest):
        wrong.append(f"it stands at revision {schedule.revision}, its history ends at {number}")
    return wrong


async def _check_items(
    connection: AsyncConnection, schedule: ScheduleRow, standing: list[VersionRow]
) -> list[str]:
    wrong = []
    for kind, table in _ITEMS:
        rows = await connection.execute(select(table).where(table.schedule_id == schedule.id))
        now = {row.id: (row.revision, row.digest, row.document) for row in rows}
        then = {row.item_id: (row.revision, row.digest, row.document) for row in standing if row.kind == kind}
        differ = sorted(id for id in now.keys() | then.keys() if now.get(id) != then.get(id))
        wrong += [f"the {kind} {id} is not what its history says" for id in differ]
    return wrong
