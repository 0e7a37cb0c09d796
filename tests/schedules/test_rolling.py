"""Old and new replicas on one database: what a migration does is borne by the code of the revision before it."""

from itertools import pairwise
from typing import Any

import httpx
import pytest
from sqlalchemy import inspect, text

from longpoint.schedules.errors import WrongDatabase
from longpoint.schedules.migrate import known_revisions, migrate
from longpoint.schedules.store import SCHEMA, Store
from stored import house, opening, serving

STOPPED_FOR = "0004"
"""The revision that 0.1.0 is brought to while the service stands still: it gives lengths on hand another table."""
Columns = dict[tuple[str, str], Any]


async def columns(store: Store) -> Columns:
    def read(sync: Any) -> Columns:
        found = inspect(sync)
        return {
            (table, column["name"]): column
            for table in found.get_table_names()
            for column in found.get_columns(table)
        }

    async with store.reading() as connection:
        return await connection.run_sync(read)


async def test_a_migration_only_adds_what_the_code_before_it_can_leave_out(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    for old, new in pairwise(known_revisions()):
        if new == STOPPED_FOR:
            continue
        await migrate(store, old)
        before = await columns(store)
        await migrate(store, new)
        after = await columns(store)
        assert not before.keys() - after.keys(), f"{new} takes away what {old} uses"
        tables = {table for table, _ in before}
        for place, column in after.items():
            if place in before:
                assert str(column["type"]) == str(before[place]["type"]), place
                assert column["nullable"] or not before[place]["nullable"], place
            elif place[0] in tables:
                assert column["nullable"] or column["default"] is not None, (
                    f"{old} cannot write to {place[0]}: it does not know {place[1]}"
                )
    await store.close()


async def test_a_replica_stays_ready_on_the_revision_after_its_own_alone(database: str) -> None:
    async with serving(database) as service:
        assert (await service.get("/health/ready")).status_code == 200
        await pretend(database, int(SCHEMA) + 1)
        assert (await service.get("/health/ready")).status_code == 200
        await work_a_little(service)
        await pretend(database, int(SCHEMA) + 2)
        assert (await service.get("/health/ready")).status_code == 503


async def test_what_writes_whole_databases_wants_its_own_revision(database: str) -> None:
    await pretend(database, int(SCHEMA) + 1)
    store = Store(database)
    with pytest.raises(WrongDatabase, match="newer than"):
        await store.refuse_wrong_schema()
    await store.close()


async def work_a_little(service: httpx.AsyncClient) -> None:
    made = await service.post("/v1/schedules", json=house())
    assert made.status_code == 201, made.text
    added = await service.post(f"/v1/schedules/{made.json()['id']}/openings", json=opening("W1"))
    assert added.status_code == 201, added.text


async def pretend(database: str, revision: int) -> None:
    """Say that the database is of another revision."""
    store = Store(database)
    async with store.writing() as connection:
        await connection.execute(text(f"UPDATE alembic_version SET version_num = '{revision:04}'"))
    await store.close()
