"""A schedule as it stands, read from storage, and what is left to cut of it."""

from __future__ import annotations

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.running.threads import apart, apart_if_long
from longpoint.api.stored.recent import Recent
from longpoint.schedules import items, plans
from longpoint.schedules.house_rows import HouseRows, Left, StoredHouse, find_left
from longpoint.schedules.rows import ScheduleRow
from longpoint.shop.too_much import MOST_PIECES

_lately: Recent[str, Left] = Recent(most=4, heaviest=MOST_PIECES)


async def house_rows(connection: AsyncConnection, schedule: ScheduleRow) -> HouseRows:
    """All rows of a schedule that its computed answers need.

    Args:
        connection: A transaction.
        schedule: The schedule's row, read in that same transaction.
    """
    return HouseRows(
        schedule,
        await items.list_openings(connection, schedule.id),
        await items.list_pieces(connection, schedule.id),
        await items.list_lengths(connection, schedule.id),
        await plans.piece_numbers(connection, schedule.id),
    )


async def load_house(connection: AsyncConnection, schedule: ScheduleRow) -> StoredHouse:
    """The same, as what they say."""
    rows = await house_rows(connection, schedule)
    return await apart_if_long(len(rows.openings), rows.house)


async def left_of(stored: StoredHouse) -> Left:
    """What is left to do, found in a thread of its own; what was found lately is not looked for again.

    Raises:
        Refusal: when an opening cannot be built; paths are into the house.
    """
    left = _lately.get(stored.schedule.digest)
    return await apart(lambda: left_here(stored)) if left is None else left


def left_here(stored: StoredHouse) -> Left:
    """The same, found in the thread that asks.

    Raises:
        Refusal: when an opening cannot be built; paths are into the house.
    """
    digest = stored.schedule.digest
    left = _lately.get(digest)
    if left is None:
        left = find_left(stored)
        _lately.put(digest, left, sum(one.count * len(one.built.pieces) for one in left.openings))
    return left
