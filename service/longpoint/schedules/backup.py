"""Backups: every row as a line of JSON in one compressed file, of one consistent state, with a digest at its end.

The same form from either kind of database, so a backup of one can be restored into the other.
"""

import gzip
import hashlib
import os
import zlib
from pathlib import Path
from typing import Any

import msgspec
from sqlalchemy import func, insert, select

from longpoint.schedules.basics import moment
from longpoint.schedules.errors import BackupError
from longpoint.schedules.models import Base
from longpoint.schedules.store import SCHEMA, Store

FORMAT = "longpoint-backup-1"
_AT_ONCE = 500
_encode = msgspec.json.Encoder().encode
_decode = msgspec.json.Decoder().decode


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
                write({"format": FORMAT, "schema": SCHEMA, "at": moment()})
                for table in Base.metadata.sorted_tables:
                    rows = await connection.stream(select(table))
                    async for row in rows.mappings():
                        write([str(table.name), {str(name): value for name, value in row.items()}])
                        count += 1
            file.write(_encode({"rows": count, "sha256": whole.hexdigest()}) + b"\n")
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

    Raises:
        BackupError: when the file cannot be read or is not whole, or the database is not empty.
    """
    lines = _verified(path)
    header = lines[0]
    if header["schema"] != SCHEMA:
        raise BackupError(
            f"{path} is of database revision {header['schema']}, this service of {SCHEMA}; restore it with the "
            "service it was made by, then migrate."
        )
    tables = {table.name: table for table in Base.metadata.sorted_tables}
    rows: dict[str, list[dict[str, Any]]] = {name: [] for name in tables}
    for name, row in lines[1:]:
        rows[name].append(row)
    async with store.writing() as connection:
        for name, table in tables.items():
            if (await connection.execute(select(func.count()).select_from(table))).scalar_one():
                raise BackupError(f"{store.name} is not empty: its table {name} has rows.")
        for name, table in tables.items():
            for start in range(0, len(rows[name]), _AT_ONCE):
                await connection.execute(insert(table), rows[name][start : start + _AT_ONCE])
    return len(lines) - 1


def _verified(path: Path) -> list[Any]:
    """The lines of a backup that is whole."""
    try:
        data = gzip.decompress(path.read_bytes()).splitlines(keepends=True)
        lines = [_decode(line) for line in data]
    except (OSError, EOFError, zlib.error, msgspec.DecodeError) as failure:
        raise BackupError(f"{path} cannot be read as a backup: {failure}.") from failure
    digest = hashlib.sha256(b"".join(data[:-1])).hexdigest()
    if not lines or not isinstance(lines[0], dict) or lines[0].get("format") != FORMAT:
        raise BackupError(f"{path} is not a backup of this service.")
    if lines[-1] != {"rows": len(lines) - 2, "sha256": digest}:
        raise BackupError(f"{path} is not whole: its end does not match what is in it.")
    return lines[:-1]
