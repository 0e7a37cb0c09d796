"""Bringing the tables of what now stands up to the versions just made."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import msgspec
from sqlalchemy import delete, insert
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.models import LengthRecord, OpeningRecord, PieceRecord
from longpoint.schedules.values import Change, HouseIndex, ItemKind, LengthIndex, OpeningIndex, PieceIndex

_AT_ONCE = 400
_Table = type[OpeningRecord | PieceRecord | LengthRecord]
_read_opening = msgspec.json.Decoder(OpeningIndex).decode
_read_piece = msgspec.json.Decoder(PieceIndex).decode
_read_length = msgspec.json.Decoder(LengthIndex).decode
_read_house = msgspec.json.Decoder(HouseIndex).decode


@dataclass(frozen=True, slots=True)
class Tally:
    """What a set of changes does to the counts a schedule keeps.

    Attributes:
        more_openings: openings added less openings removed.
        last_position: the highest position given out; None when none was.
    """

    more_openings: int
    last_position: int | None


async def project(
    connection: AsyncConnection,
    schedule_id: str,
    revision: int,
    changes: Sequence[Change],
    digests: Sequence[str],
) -> Tally:
    """Replace the rows of everything that changed, the schedule's own row left to the caller."""
    sorted_out: dict[ItemKind, list[tuple[Change, str]]] = {}
    for change, digest in zip(changes, digests, strict=True):
        sorted_out.setdefault(change.kind, []).append((change, digest))
    more, last = 0, None
    for kind, table, row_of in _TABLES:
        pairs = sorted_out.get(kind, [])
        if not pairs:
            continue
        removed = await _remove(connection, table, schedule_id, [change.id for change, _ in pairs])
        rows = [
            {
                "id": change.id,
                "schedule_id": schedule_id,
                "revision": revision,
                "digest": digest,
                "document": change.document,
                **row_of(change),
            }
            for change, digest in pairs
            if change.document is not None
        ]
        if rows:
            await connection.execute(insert(table), rows)
        if kind is ItemKind.OPENING:
            more = len(rows) - removed
            kept = (change.position for change, _ in pairs if change.document is not None)
            last = max((position for position in kept if position is not None), default=None)
    return Tally(more, last)


def house_name(document: str) -> str:
    """The name in a schedule's document."""
    return _read_house(document).name


async def _remove(connection: AsyncConnection, table: _Table, schedule_id: str, ids: list[str]) -> int:
    removed = 0
    for start in range(0, len(ids), _AT_ONCE):
        found = await connection.execute(
            delete(table).where(table.schedule_id == schedule_id, table.id.in_(ids[start : start + _AT_ONCE]))
        )
        removed += found.rowcount
    return removed


def _opening_row(change: Change) -> dict[str, object]:
    index = _read_opening(change.document or "")
    return {
        "position": change.position,
        "mark": index.mark,
        "room": index.room,
        "trim": index.trim,
        "bottom": index.bottom,
        "exact": change.exact,
    }


def _piece_row(change: Change) -> dict[str, object]:
    index = _read_piece(change.document or "")
    return {
        "opening_id": index.opening_id,
        "piece": index.piece,
        "instance": index.instance,
        "state": index.state,
    }


def _length_row(change: Change) -> dict[str, object]:
    return {**msgspec.structs.asdict(_read_length(change.document or "")), "exact": change.exact}


_TABLES: list[tuple[ItemKind, _Table, Callable[[Change], dict[str, object]]]] = [
    (ItemKind.OPENING, OpeningRecord, _opening_row),
    (ItemKind.PIECE, PieceRecord, _piece_row),
    (ItemKind.LENGTH, LengthRecord, _length_row),
]
