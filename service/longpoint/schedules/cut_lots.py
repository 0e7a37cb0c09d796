"""What was cut from lots of lengths on hand, by what is recorded."""

from __future__ import annotations

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules import items, plans
from longpoint.schedules.house_rows import cut_sticks_of
from longpoint.schedules.kept import read_stick


async def cut_from(connection: AsyncConnection, schedule_id: str, lot: str) -> tuple[str, ...]:
    """The names of the sticks from a lot that are recorded as cut."""
    names = sorted(cut_sticks_of(await items.list_pieces(connection, schedule_id)))
    sticks = await plans.sticks(connection, schedule_id, names)
    return tuple(name for name in names if read_stick(sticks[name].document).lot == lot)
