"""Plans of a schedule's sticks: kept, found, listed; the names of their sticks and the numbers of pieces."""

from __future__ import annotations

from collections.abc import Sequence

import msgspec
from sqlalchemy import delete, insert, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import moment
from longpoint.schedules.making import FurtherPlan, NewPlan
from longpoint.schedules.models import PieceNumbers, PlanRecord, Schedule, StickRecord
from longpoint.schedules.rows import PlanRow, ScheduleRow, StickRow

MOST_KEPT = 50
"""Plans of a schedule from which nothing was printed or cut: the oldest go when there are more."""
_AT_ONCE = 400
_encode = msgspec.json.Encoder().encode
_read_numbers = msgspec.json.Decoder(dict[str, int]).decode


async def newest(connection: AsyncConnection, schedule: ScheduleRow, planner: int) -> PlanRow | None:
    """The plan that stands: the newest that was made from what the schedule is now; None when there is none yet."""
    query = select(PlanRecord).where(
        PlanRecord.schedule_id == schedule.id,
        PlanRecord.basis == schedule.basis,
        PlanRecord.planner == planner,
    )
    row = (await connection.execute(query.order_by(PlanRecord.number.desc()).limit(1))).one_or_none()
    return None if row is None else PlanRow.of(row)


async def latest(connection: AsyncConnection, schedule_id: str) -> PlanRow | None:
    """The plan that was made last, whatever it was made from."""
    query = (
        select(PlanRecord)
        .where(PlanRecord.schedule_id == schedule_id)
        .order_by(PlanRecord.number.desc())
        .limit(1)
    )
    row = (await connection.execute(query)).one_or_none()
    return None if row is None else PlanRow.of(row)


async def find(connection: AsyncConnection, schedule_id: str, number: int) -> PlanRow | None:
    """A plan by its number."""
    query = select(PlanRecord).where(PlanRecord.schedule_id == schedule_id, PlanRecord.number == number)
    row = (await connection.execute(query)).one_or_none()
    return None if row is None else PlanRow.of(row)


async def list_plans(
    connection: AsyncConnection, schedule_id: str, before: int | None, limit: int
) -> list[PlanRow]:
    """Plans, the newest first."""
    query = select(PlanRecord).where(PlanRecord.schedule_id == schedule_id)
    if before is not None:
        query = query.where(PlanRecord.number < before)
    found = await connection.execute(query.order_by(PlanRecord.number.desc()).limit(limit))
    return [PlanRow.of(row) for row in found]


async def sticks(connection: AsyncConnection, schedule_id: str, names: Sequence[str]) -> dict[str, StickRow]:
    """Sticks by name; names that nothing ever had are left out."""
    found: dict[str, StickRow] = {}
    for start in range(0, len(names), _AT_ONCE):
        query = select(StickRecord).where(
            StickRecord.schedule_id == schedule_id, StickRecord.name.in_(names[start : start + _AT_ONCE])
        )
        found.update({row.name: StickRow.of(row) for row in await connection.execute(query)})
    return found


async def keep_made(
    connection: AsyncConnection,
    schedule: ScheduleRow,
    planner: int,
    budget: int,
    made: NewPlan | FurtherPlan,
) -> PlanRow:
    """Keep a plan of a schedule that is held: a new one under the next number.

    Args:
        connection: A writing transaction that holds the schedule.
        schedule: As it stands.
        planner: The version of what planned it.
        budget: Thousandths of a second that were allowed for the search.
        made: The plan in writing.
    """
    if isinstance(made, FurtherPlan):
        own = update(PlanRecord).where(
            PlanRecord.schedule_id == schedule.id, PlanRecord.number == made.number
        )
        found = await connection.execute(
            own.values(budget=budget, document=made.document).returning(PlanRecord)
        )
        return PlanRow.of(found.one())
    number = schedule.last_plan + 1
    row = PlanRow(schedule.id, number, schedule.basis, planner, moment(), None, budget, made.document)
    await connection.execute(insert(PlanRecord), [row._asdict()])
    for name, layout in made.moved.items():
        moved = update(StickRecord).where(StickRecord.schedule_id == schedule.id, StickRecord.name == name)
        await connection.execute(moved.values(document=layout))
    new = [
        StickRow(schedule.id, name, number, schedule.revision, layout, None, None, None, None)._asdict()
        for name, layout in made.sticks.items()
    ]
    if new:
        await connection.execute(insert(StickRecord), new)
    values = {"last_plan": number, "last_names": _encode(made.names).decode()}
    await connection.execute(update(Schedule).where(Schedule.id == schedule.id).values(**values))
    await _keep_piece_numbers(connection, schedule.id, made)
    if number > MOST_KEPT:
        await let_go(connection, schedule.id)
    return row


async def mark_used(connection: AsyncConnection, plan: PlanRow) -> None:
    """Note that something was printed or cut from a plan, so that it stays."""
    own = update(PlanRecord).where(
        PlanRecord.schedule_id == plan.schedule_id, PlanRecord.number == plan.number
    )
    await connection.execute(own.where(PlanRecord.used_at.is_(None)).values(used_at=moment()))


async def let_go(connection: AsyncConnection, schedule_id: str) -> None:
    """Let go of old plans that nothing was printed or cut from; the names of their sticks stay taken.

    Args:
        connection: A writing transaction that holds the schedule.
        schedule_id: Whose plans.
    """
    unused = select(PlanRecord.number).where(
        PlanRecord.schedule_id == schedule_id, PlanRecord.used_at.is_(None)
    )
    oldest = unused.order_by(PlanRecord.number.desc()).offset(MOST_KEPT).limit(1)
    number = (await connection.execute(oldest)).scalar_one_or_none()
    if number is not None:
        old = delete(PlanRecord).where(PlanRecord.schedule_id == schedule_id, PlanRecord.used_at.is_(None))
        await connection.execute(old.where(PlanRecord.number <= number))


async def piece_numbers(connection: AsyncConnection, schedule_id: str) -> dict[str, dict[str, int]]:
    """The numbers that were given to pieces: for each opening's id, by piece."""
    query = select(PieceNumbers.opening_id, PieceNumbers.numbers).where(
        PieceNumbers.schedule_id == schedule_id
    )
    return {row.opening_id: _read_numbers(row.numbers) for row in await connection.execute(query)}


async def _keep_piece_numbers(connection: AsyncConnection, schedule_id: str, made: NewPlan) -> None:
    """Keep all numbers of openings where a piece had none."""
    own = delete(PieceNumbers).where(PieceNumbers.schedule_id == schedule_id)
    ids = made.numbered_before
    for start in range(0, len(ids), _AT_ONCE):
        await connection.execute(own.where(PieceNumbers.opening_id.in_(ids[start : start + _AT_ONCE])))
    if made.numbers:
        rows = [
            {"schedule_id": schedule_id, "opening_id": id, "numbers": _encode(given).decode()}
            for id, given in made.numbers.items()
        ]
        await connection.execute(insert(PieceNumbers), rows)
