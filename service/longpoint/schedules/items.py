"""What stands in a schedule now: its openings, the pieces that were cut, the lengths on hand."""

from collections.abc import Sequence
from functools import cache

import msgspec
from sqlalchemy import ColumnElement, Select, and_, bindparam, or_, select
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.models import LengthRecord, OpeningRecord, PieceRecord
from longpoint.schedules.rows import LengthRow, OpeningRow, PieceRow
from longpoint.schedules.states import LengthState

_AT_ONCE = 400

read_exact = msgspec.json.Decoder(dict[str, str]).decode
"""Reads the exact lengths kept beside a document."""


# Asked for most: statements made once cost a fifth of those made anew.
_CALLED = select(OpeningRecord).where(
    OpeningRecord.schedule_id == bindparam("schedule"),
    or_(OpeningRecord.id == bindparam("called"), OpeningRecord.mark == bindparam("called")),
)
_NARROWED = {
    "after": OpeningRecord.position > bindparam("after"),
    "room": OpeningRecord.room == bindparam("room"),
    "trim": OpeningRecord.trim == bindparam("trim"),
    "bottom": OpeningRecord.bottom == bindparam("bottom"),
}


@cache
def _openings_by(*narrowed: str) -> Select[OpeningRecord]:
    """Openings in order, narrowed down by these of `_NARROWED`."""
    by = [_NARROWED[name] for name in narrowed]
    return (
        select(OpeningRecord)
        .where(OpeningRecord.schedule_id == bindparam("schedule"), *by)
        .order_by(OpeningRecord.position)
    )


async def find_opening(connection: AsyncConnection, schedule_id: str, id_or_mark: str) -> OpeningRow | None:
    """An opening by its id or, where no id is so, by its mark; None when there is neither."""
    found = list(await connection.execute(_CALLED, {"schedule": schedule_id, "called": id_or_mark}))
    row = next((row for row in found if row.id == id_or_mark), found[0] if found else None)
    return None if row is None else OpeningRow.of(row)


async def openings_marked(
    connection: AsyncConnection, schedule_id: str, marks: Sequence[str]
) -> dict[str, OpeningRow]:
    """The openings with these marks, by mark."""
    found: dict[str, OpeningRow] = {}
    for start in range(0, len(marks), _AT_ONCE):
        query = select(OpeningRecord).where(
            OpeningRecord.schedule_id == schedule_id, OpeningRecord.mark.in_(marks[start : start + _AT_ONCE])
        )
        found.update({row.mark: OpeningRow.of(row) for row in await connection.execute(query)})
    return found


async def list_openings(
    connection: AsyncConnection,
    schedule_id: str,
    *,
    after: int | None = None,
    limit: int | None = None,
    room: str | None = None,
    trim: str | None = None,
    bottom: str | None = None,
) -> list[OpeningRow]:
    """Openings in the schedule's order; all of them without a limit."""
    asked = {"after": after, "room": room, "trim": trim, "bottom": bottom}
    given = {name: value for name, value in asked.items() if value is not None}
    query = _openings_by(*given).limit(limit)
    return [OpeningRow.of(row) for row in await connection.execute(query, {"schedule": schedule_id, **given})]


async def trims_used(connection: AsyncConnection, schedule_id: str) -> set[str]:
    """The names of the trim specs that openings use."""
    query = select(OpeningRecord.trim).where(OpeningRecord.schedule_id == schedule_id).distinct()
    return set((await connection.execute(query)).scalars())


async def list_pieces(
    connection: AsyncConnection,
    schedule_id: str,
    *,
    after: str | None = None,
    limit: int | None = None,
    opening_id: str | None = None,
    state: str | None = None,
) -> list[PieceRow]:
    """Pieces that were cut, the first cut first."""
    query = select(PieceRecord).where(PieceRecord.schedule_id == schedule_id)
    if after is not None:
        query = query.where(PieceRecord.id > after)
    if opening_id is not None:
        query = query.where(PieceRecord.opening_id == opening_id)
    if state is not None:
        query = query.where(PieceRecord.state == state)
    return [PieceRow.of(row) for row in await connection.execute(query.order_by(PieceRecord.id).limit(limit))]


async def find_piece(connection: AsyncConnection, schedule_id: str, id: str) -> PieceRow | None:
    """A piece by its id."""
    query = select(PieceRecord).where(PieceRecord.schedule_id == schedule_id, PieceRecord.id == id)
    row = (await connection.execute(query)).one_or_none()
    return None if row is None else PieceRow.of(row)


_IN_STATE: dict[LengthState, ColumnElement[bool]] = {
    LengthState.ORDERED: LengthRecord.ordered > LengthRecord.delivered,
    LengthState.DELIVERED: LengthRecord.delivered > 0,
    LengthState.ON_HAND: LengthRecord.delivered > LengthRecord.used_up,
    LengthState.USED_UP: and_(
        LengthRecord.ordered <= LengthRecord.used_up, LengthRecord.delivered <= LengthRecord.used_up
    ),
}


async def list_lengths(
    connection: AsyncConnection,
    schedule_id: str,
    *,
    after: str | None = None,
    limit: int | None = None,
    profile: str | None = None,
    state: LengthState | None = None,
) -> list[LengthRow]:
    """Lots of lengths on hand, the first kept first."""
    query = select(LengthRecord).where(LengthRecord.schedule_id == schedule_id)
    if after is not None:
        query = query.where(LengthRecord.id > after)
    if profile is not None:
        query = query.where(LengthRecord.profile == profile)
    if state is not None:
        query = query.where(_IN_STATE[state])
    return [
        LengthRow.of(row) for row in await connection.execute(query.order_by(LengthRecord.id).limit(limit))
    ]


async def find_length(connection: AsyncConnection, schedule_id: str, id_or_lot: str) -> LengthRow | None:
    """A lot by its id or, where no id is so, by its name; None when there is neither."""
    query = select(LengthRecord).where(
        LengthRecord.schedule_id == schedule_id,
        or_(LengthRecord.id == id_or_lot, LengthRecord.lot == id_or_lot),
    )
    found = list(await connection.execute(query))
    row = next((row for row in found if row.id == id_or_lot), found[0] if found else None)
    return None if row is None else LengthRow.of(row)


async def lots_named(
    connection: AsyncConnection, schedule_id: str, lots: Sequence[str]
) -> dict[str, LengthRow]:
    """The lots with these names, by name."""
    found: dict[str, LengthRow] = {}
    for start in range(0, len(lots), _AT_ONCE):
        query = select(LengthRecord).where(
            LengthRecord.schedule_id == schedule_id, LengthRecord.lot.in_(lots[start : start + _AT_ONCE])
        )
        found.update({row.lot: LengthRow.of(row) for row in await connection.execute(query)})
    return found
