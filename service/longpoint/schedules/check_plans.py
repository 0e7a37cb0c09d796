"""Checking the plans of a schedule: that their sticks are there, and that names and numbers were given once."""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.kept import read_names, read_piece, read_plan, read_stick
from longpoint.schedules.models import PieceRecord, PlanRecord, StickRecord
from longpoint.schedules.rows import ScheduleRow, StickRow
from longpoint.shop.named_sticks import NamedStick


async def check_plans(connection: AsyncConnection, schedule: ScheduleRow) -> list[str]:
    """Everything that is wrong with a schedule's plans and with what was cut from them, a line for each."""
    rows = [
        StickRow.of(row)
        for row in await connection.execute(select(StickRecord).where(StickRecord.schedule_id == schedule.id))
    ]
    sticks = {row.name: (row.plan, read_stick(row.document)) for row in rows}
    wrong = list(_names(schedule, sticks))
    wrong += [
        f"the stick {row.name} is claimed by {row.claimed_by!r} until {row.claimed_until!r}: half a claim"
        for row in rows
        if (row.claimed_by is None) != (row.claimed_until is None)
    ]
    plans = await connection.execute(
        select(PlanRecord.number, PlanRecord.document).where(PlanRecord.schedule_id == schedule.id)
    )
    for number, document in plans:
        if number > schedule.last_plan:
            wrong.append(f"plan {number} has a number that was not given out")
        names = [name for one in read_plan(document) for name in one.sticks]
        wrong += [
            f"plan {number} has a stick {name} that is not there" for name in names if name not in sticks
        ]
        if len(set(names)) != len(names):
            wrong.append(f"plan {number} has a stick twice")
    pieces = await connection.execute(
        select(PieceRecord.id, PieceRecord.document).where(PieceRecord.schedule_id == schedule.id)
    )
    for id, document in pieces:
        piece = read_piece(document)
        if piece.stick is not None:
            _, stick = sticks.get(piece.stick, (0, None))
            slot = piece.opening_id, piece.piece, piece.instance
            if stick is None or slot not in [one.slot for one in stick.pieces]:
                wrong.append(
                    f"the piece {id} is said to be cut from {piece.stick}, which has no place for it"
                )
    return wrong


def _names(schedule: ScheduleRow, sticks: dict[str, tuple[int, NamedStick]]) -> Iterator[str]:
    last = read_names(schedule.last_names)
    for name, (plan, _) in sticks.items():
        if int(name[1:]) > last.get(name[0], 0):
            yield f"the stick {name} has a name that was not given out"
        if plan > schedule.last_plan:
            yield f"the stick {name} is of plan {plan}, which was not made"
