"""What stands in a schedule now: its openings, the pieces that were cut, the offcuts on the rack."""

from collections.abc import Sequence
from functools import cache

import msgspec
from sqlalchemy import Select, bindparam, or_, select
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.models import Offcut, Opening, Piece
from longpoint.schedules.rows import OffcutRow, OpeningRow, PieceRow

_AT_ONCE = 400

read_exact = msgspec.json.Decoder(dict[str, str]).decode
"""Reads the exact lengths kept beside a document."""


# Asked for most: statements made once cost a fifth of those made anew.
_CALLED = select(Opening).where(
    Opening.schedule_id == bindparam("schedule"),
    or_(Opening.id == bindparam("called"), Opening.mark == bindparam("called")),
)
_NARROWED = {
    "after": Opening.position > bindparam("after"),
    "room": Opening.room == bindparam("room"),
    "trim": Opening.trim == bindparam("trim"),
    "foot_style": Opening.foot_style == bindparam("foot_style"),
}


@cache
def _openings_by(*narrowed: str) -> Select[Opening]:
    """Openings in order, narrowed down by these of `_NARROWED`."""
    by = [_NARROWED[name] for name in narrowed]
    return select(Opening).where(Opening.schedule_id == bindparam("schedule"), *by).order_by(Opening.position)


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
        query = select(Opening).where(
            Opening.schedule_id == schedule_id, Opening.mark.in_(marks[start : start + _AT_ONCE])
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
    foot_style: str | None = None,
) -> list[OpeningRow]:
    """Openings in the schedule's order; all of them without a limit."""
    asked = {"after": after, "room": room, "trim": trim, "foot_style": foot_style}
    given = {name: value for name, value in asked.items() if value is not None}
    query = _openings_by(*given).limit(limit)
    return [OpeningRow.of(row) for row in await connection.execute(query, {"schedule": schedule_id, **given})]


async def trims_used(connection: AsyncConnection, schedule_id: str) -> set[str]:
    """The names of the trim specs that openings use."""
    query = select(Opening.trim).where(Opening.schedule_id == schedule_id).distinct()
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
    query = select(Piece).where(Piece.schedule_id == schedule_id)
    if after is not None:
        query = query.where(Piece.id > after)
    if opening_id is not None:
        query = query.where(Piece.opening_id == opening_id)
    if state is not None:
        query = query.where(Piece.state == state)
    return [PieceRow.of(row) for row in await connection.execute(query.order_by(Piece.id).limit(limit))]


async def find_piece(connection: AsyncConnection, schedule_id: str, id: str) -> PieceRow | None:
    """A piece by its id."""
    query = select(Piece).where(Piece.schedule_id == schedule_id, Piece.id == id)
    row = (await connection.execute(query)).one_or_none()
    return None if row is None else PieceRow.of(row)


async def list_offcuts(
    connection: AsyncConnection,
    schedule_id: str,
    *,
    after: str | None = None,
    limit: int | None = None,
    profile: str | None = None,
) -> list[OffcutRow]:
    """Offcuts on the rack, the first put there first."""
    query = select(Offcut).where(Offcut.schedule_id == schedule_id)
    if after is not None:
        query = query.where(Offcut.id > after)
    if profile is not None:
        query = query.where(Offcut.profile == profile)
    return [OffcutRow.of(row) for row in await connection.execute(query.order_by(Offcut.id).limit(limit))]


async def find_offcut(connection: AsyncConnection, schedule_id: str, id: str) -> OffcutRow | None:
    """An offcut by its id."""
    query = select(Offcut).where(Offcut.schedule_id == schedule_id, Offcut.id == id)
    row = (await connection.execute(query)).one_or_none()
    return None if row is None else OffcutRow.of(row)
