"""Backups: every row as a line of JSON in one compressed file, of one consistent state, with a digest at its end.

The same form from either kind of database, so a backup of one can be restored into the other.
"""

import gzip
import hashlib
import os
import zlib
from pathlib import Path

import msgspec
from sqlalchemy import column, func, insert, select
from sqlalchemy import table as sql_table

from longpoint.schedules.basics import moment
from longpoint.schedules.errors import BackupError
from longpoint.schedules.migrate import known_revisions, move
from longpoint.schedules.models import Base
from longpoint.schedules.store import SCHEMA, Store

_AT_ONCE = 500
_encode = msgspec.json.Encoder().encode
_Row = tuple[str, dict[str, object]]
"""The name of a table, and a row of it by column."""


class _Header(msgspec.Struct, tag_field="format", tag="longpoint-backup-1"):
    """The first line: what the file is, the database revision its rows are of, and when it was made."""

    schema: str
    at: str


_read_header = msgspec.json.Decoder(_Header).decode
_read_row = msgspec.json.Decoder(_Row).decode


async def back_up(store: Store, path: Path) -> int:
    """Write a backup and give how many rows are in it.

    The file appears whole or not at all, and an existing one is never written over.

    Raises:
        BackupError: when the file is there already or cannot be written.
    """
    if path.exists():
        raise BackupError(f"{path} is there already; name another file.")
    part = path.with_name(path.name + ".part")
    whole = hashlib.sha256()
    count = 0
    try:
        with gzip.open(part, "wb", compresslevel=6) as file:

            def write(line: object) -> None:
                data = _encode(line) + b"\n"
                whole.update(data)
                file.write(data)

            async with store.reading() as connection:
                write(_Header(SCHEMA, moment()))
                for table in Base.metadata.sorted_tables:
                    rows = await connection.stream(select(table))
                    async for row in rows.mappings():
                        write([str(table.name), {str(name): value for name, value in row.items()}])
                        count += 1
            file.write(_ending(count, whole.hexdigest()))
        with part.open("rb+") as written:
            os.fsync(written.fileno())
        part.rename(path)
    except OSError as failure:
        raise BackupError(f"{path} cannot be written: {failure.strerror}.") from failure
    finally:
        part.unlink(missing_ok=True)
    return count


async def restore(store: Store, path: Path) -> int:
    """Fill an empty, migrated database from a backup, all or nothing; gives how many rows it had.

    A backup of an older revision is put into the tables of that revision, which are then migrated.

    Raises:
        BackupError: when the file cannot be read or is not whole, or the database is not empty.
    """
    header, lines = _verified(path)
    if header.schema not in known_revisions():
        raise BackupError(
            f"{path} is of database revision {header.schema}, which this service does not know; restore it with the "
            "newer service."
        )
    rows: dict[
        str, list[dict[str, object]]
    ] = {}  # of a table before those that refer to it, as they were written
    for name, row in lines:
        rows.setdefault(name, []).append(row)
    async with store.writing() as connection:
        for table in Base.metadata.sorted_tables:
            if (await connection.execute(select(func.count()).select_from(table))).scalar_one():
                raise BackupError(f"{store.name} is not empty: its table {table.name} has rows.")
        await connection.run_sync(move, header.schema)
        for name, of_table in rows.items():
            own = sql_table(name, *map(column, of_table[0]))
            for start in range(0, len(of_table), _AT_ONCE):
                await connection.execute(insert(own), of_table[start : start + _AT_ONCE])
        await connection.run_sync(move, SCHEMA)
    return len(lines)


def _verified(path: Path) -> tuple[_Header, list[_Row]]:
    """What is in a backup that is whole."""
    try:
        first, *rows, last = gzip.decompress(path.read_bytes()).splitlines(keepends=True)
        header = _read_header(first)
    except (OSError, EOFError, zlib.error) as failure:
        raise BackupError(f"{path} cannot be read as a backup: {failure}.") from failure
    except (ValueError, msgspec.DecodeError) as failure:
        raise BackupError(f"{path} is not a backup of this service.") from failure
    if last != _ending(len(rows), hashlib.sha256(b"".join((first, *rows))).hexdigest()):
        raise BackupError(f"{path} is not whole: its end does not match what is in it.")
    return header, [_read_row(row) for row in rows]


def _ending(rows: int, digest: str) -> bytes:
    """The last line: what all before it must come to."""
    return _encode({"rows": rows, "sha256": digest}) + b"\n"
