"""Migrations, up and down, with rows in the database, on both kinds."""

import json

import pytest
from sqlalchemy import inspect, text

from longpoint.schedules import houses, items
from longpoint.schedules.errors import WrongDatabase
from longpoint.schedules.keys import account_named
from longpoint.schedules.migrate import known_revisions, migrate
from longpoint.schedules.models import Base
from longpoint.schedules.store import SCHEMA, Store
from longpoint.schedules.values import Author, Change, Kind


async def test_schema_is_the_newest_migration() -> None:
    assert known_revisions()[-1] == SCHEMA


async def test_up_and_down_and_up(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    assert await migrate(store) == (None, SCHEMA)
    assert await migrate(store, "base") == (SCHEMA, None)
    assert await migrate(store) == (None, SCHEMA)
    assert await migrate(store) == (SCHEMA, SCHEMA)
    await store.close()


async def test_migrations_make_the_tables_of_the_models(database: str) -> None:
    store = Store(database)
    async with store.reading() as connection:
        for table in Base.metadata.sorted_tables:
            found = await connection.run_sync(lambda sync, name=table.name: inspect(sync).get_columns(name))
            assert {column["name"]: column["nullable"] for column in found} == {
                column.name: column.nullable for column in table.columns
            }, table.name
            indexes = await connection.run_sync(lambda sync, name=table.name: inspect(sync).get_indexes(name))
            assert {index.name for index in table.indexes} <= {index["name"] for index in indexes}
    await store.close()


async def test_an_old_database_keeps_its_rows_on_the_way_up_and_down(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    await migrate(store, "0001")
    async with store.writing() as connection:
        account = await account_named(connection, "local")
        changes = [
            Change(Kind.OPENING, f"o{n}", json.dumps({"mark": f"W{n}", "trim": "t"}), "{}", n)
            for n in range(1, 4)
        ]
        author = Author(account, None, "local")
        id, _ = await houses.create(connection, author, "create", '{"name": "Old house"}', "{}", changes)
    await migrate(store)
    piece = {"opening_id": "o1", "part": "stool", "instance": 1, "state": "cut"}
    async with store.writing() as connection:
        row = await houses.find(connection, account, id, hold=True)
        assert row.name == "Old house"
        assert [one.mark for one in await items.list_openings(connection, id)] == ["W1", "W2", "W3"]
        work = [
            Change(Kind.PIECE, "p1", json.dumps(piece)),
            Change(Kind.OFFCUT, "r1", json.dumps({"profile": "casing"}), "{}"),
        ]
        await houses.write(connection, row, author, "work", work)
    await migrate(store, "0001")
    async with store.reading() as connection:
        names = await connection.run_sync(lambda sync: inspect(sync).get_table_names())
        assert "piece" not in names
        assert (await connection.execute(text("SELECT count(*) FROM opening"))).scalar_one() == 3
    await migrate(store)
    async with store.reading() as connection:
        assert [json.loads(one.document) for one in await items.list_pieces(connection, id)] == [piece]
        assert [one.profile for one in await items.list_offcuts(connection, id)] == ["casing"]
    await store.close()


async def test_a_database_of_another_revision_is_refused_with_what_to_do(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    with pytest.raises(
        WrongDatabase, match=r"(no tables yet|does not exist); run `python -m longpoint migrate`"
    ):
        await store.refuse_wrong_schema()
    await migrate(store, "0001")
    with pytest.raises(WrongDatabase, match="at revision 0001 and this service needs"):
        await store.refuse_wrong_schema()
    async with store.writing() as connection:
        await connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))
    with pytest.raises(WrongDatabase, match="newer than"):
        await store.refuse_wrong_schema()
    with pytest.raises(WrongDatabase, match="does not know"):
        await migrate(store)
    await store.close()


async def test_an_unknown_target_is_refused(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    with pytest.raises(WrongDatabase, match="no database revision 0099"):
        await migrate(store, "0099")
    await store.close()
