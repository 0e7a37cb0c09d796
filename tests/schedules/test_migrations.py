"""Migrations, up and down, with rows in the database, on both kinds."""

import json
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import column, insert, inspect, select, table, text
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules import houses, items
from longpoint.schedules.check import check_store
from longpoint.schedules.errors import WrongDatabase
from longpoint.schedules.keys import account_named
from longpoint.schedules.migrate import known_revisions, migrate
from longpoint.schedules.models import Base
from longpoint.schedules.store import SCHEMA, Store
from longpoint.schedules.values import Author, Change, ItemKind
from longpoint.schedules.words import Renaming, heads_of
from stored import serving


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
        for model in Base.metadata.sorted_tables:
            found = await connection.run_sync(lambda sync, name=model.name: inspect(sync).get_columns(name))
            assert {one["name"]: one["nullable"] for one in found} == {
                one.name: one.nullable for one in model.columns
            }, model.name
            indexes = await connection.run_sync(lambda sync, name=model.name: inspect(sync).get_indexes(name))
            assert {index.name for index in model.indexes} <= {index["name"] for index in indexes}
    await store.close()


async def test_an_old_database_keeps_its_rows_on_the_way_up_and_down(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    await migrate(store, "0001")
    async with store.writing() as connection:
        account = await account_named(connection, "local")
        for table, row in old_rows(account, id := "s1"):
            await put_in(connection, table, [row])
    author = Author(account, None, "local")
    await migrate(store)
    piece = {"opening_id": "o1", "piece": "stool", "instance": 1, "state": "cut"}
    async with store.writing() as connection:
        row = await houses.find(connection, account, id, hold=True)
        assert row.name == "Old house"
        assert [one.mark for one in await items.list_openings(connection, id)] == ["W1", "W2", "W3"]
        work = [
            Change(ItemKind.PIECE, "p1", json.dumps(piece)),
            Change(ItemKind.LENGTH, "r1", json.dumps(LOT), "{}"),
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
        lots = await items.list_lengths(connection, id)
        assert [(one.lot, one.profile, one.available) for one in lots] == [("length", "casing", 1)]
    await store.close()


LOT = {
    "lot": "yard 1",
    "profile": "casing",
    "ordered": 3,
    "delivered": 2,
    "used_up": 1,
    "paid": "9.60",
    "stick": None,
}


def old_rows(account: str, id: str) -> Iterator[tuple[str, dict[str, Any]]]:
    """A house of three openings, as the first tables had it."""
    own = {"digest": "", "revision": 1}
    head = '{"name":"Old house"}'
    when = "2026-01-05T08:00:00.000000Z"
    yield (
        "schedule",
        {
            **own,
            "id": id,
            "account_id": account,
            "name": "Old house",
            "created_at": when,
            "updated_at": when,
            "head_revision": 1,
            "document": head,
            "opening_count": 3,
            "next_position": 4,
        },
    )
    said = {"number": 1, "at": when, "who": "local", "action": "create", "why": "", "digest": ""}
    yield "revision", {"schedule_id": id, **said}
    yield (
        "version",
        {**own, "schedule_id": id, "kind": "schedule", "item_id": id, "document": head, "exact": "{}"},
    )
    for n in range(1, 4):
        document = json.dumps({"mark": f"W{n}", "trim": "t"})
        kept = {**own, "schedule_id": id, "position": n, "document": document, "exact": "{}"}
        yield "version", {**kept, "kind": "opening", "item_id": f"o{n}"}
        yield (
            "opening",
            {**kept, "id": f"o{n}", "mark": f"W{n}", "trim": "t", "room": "", "foot_style": "stool"},
        )


async def put_in(connection: AsyncConnection, name: str, rows: list[dict[str, Any]]) -> None:
    """Put rows into a table, whatever columns it has at this revision."""
    columns = table(name, *(column(each) for each in rows[0]))
    await connection.execute(insert(columns), rows)


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


MADE_BY_0_1_0 = Path(__file__).parent / "data" / "made_by_0_1_0.jsonl"
"""Every row of a database that the first release kept an invented house in, with a group, work and lengths on hand."""


async def load(store: Store) -> dict[str, list[dict[str, Any]]]:
    """The rows of the first release's database, put into one."""
    rows: dict[str, list[dict[str, Any]]] = defaultdict(list)
    for line in MADE_BY_0_1_0.read_text(encoding="utf-8").splitlines():
        one = json.loads(line)
        rows[one["table"]].append(one["row"])
    async with store.writing() as connection:
        for name, found in rows.items():
            await put_in(connection, name, found)
    return rows


async def test_a_house_of_the_first_release_is_there_after_it(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    await migrate(store, "0002")
    rows = await load(store)
    await migrate(store)
    assert await check_store(store) == []
    await store.close()
    async with serving(empty_database) as service:
        listed = (await service.get("/v1/schedules")).json()["items"]
        assert sorted(one["name"] for one in listed) == ["Barn", "Heron Cottage", "Shed"]
        where = f"/v1/schedules/{next(one['id'] for one in listed if one['name'] == 'Heron Cottage')}"
        head = (await service.get(where)).json()
        assert head["house"]["shop"]["build_year"] == 1931
        assert head["house"]["stock"][0]["one_stick_each"] is False
        marks = (await service.get(f"{where}/openings")).json()["items"]
        assert [(one["mark"], one["readings"]["jamb_width"]) for one in marks] == [
            ("K1", "30 3/4"),
            ("K2", "28 7/16"),
            ("D1", "815 mm"),
            ("B1", "20 3/8"),
            ("B2", "41 in"),
        ]
        pieces = (await service.get(f"{where}/work", params={"limit": 500})).json()["items"]
        assert len(pieces) == len(rows["piece"])
        told = {(one["opening"], one["piece"]): one["state"] for one in pieces}
        assert told["K1", "side_casing/left"] == "spoiled"
        assert told["D1", "side_casing/left"] == "installed"
        assert told["bay", "stool"] == "cut"
        lots = (await service.get(f"{where}/lengths")).json()["items"]
        assert [(one["lot"], one["profile"], one["length"], one["available"]) for one in lots] == [
            ("length 2", "stool", "1200 mm", 1),
            ("length 3", "apron", "25 1/4", 1),
        ]
        left = (await service.get(f"{where}/cut-list")).json()
        assert left["wrong"] == []
        assert [(one["opening"], one["piece"]) for one in left["cut_again"]] == [("K1", "side_casing/left")]
        cottage = next(row["id"] for row in rows["schedule"] if row["name"] == "Heron Cottage")
        made = len(
            [row for row in rows["piece"] if row["schedule_id"] == cottage and row["state"] != "spoiled"]
        )
        assert left["right"] == made
        again = await service.post("/v1/schedules", json=(await service.get(f"{where}/export")).json())
        assert again.status_code == 201, again.text


async def test_a_house_of_the_first_release_comes_back_as_it_was(empty_database: str) -> None:
    store = Store(empty_database, create=True)
    await migrate(store, "0002")
    rows = await load(store)
    await migrate(store)
    await migrate(store, "0002")
    async with store.reading() as connection:
        found = await connection.execute(select(table("piece", column("id"), column("document"))))
        back = {row.id: json.loads(row.document) for row in found}
        was = table("opening", column("id"), column("document"), column("foot_style"))
        openings = {
            row.id: (json.loads(row.document), row.foot_style)
            for row in await connection.execute(select(was))
        }
        old = table("offcut", column("id"), column("document"))
        lengths = {row.id: json.loads(row.document) for row in await connection.execute(select(old))}
    assert lengths == {row["id"]: json.loads(row["document"]) for row in rows["offcut"]}
    assert back == {row["id"]: json.loads(row["document"]) for row in rows["piece"]}
    assert openings == {
        row["id"]: (json.loads(row["document"]), row["foot_style"]) for row in rows["opening"]
    }
    await migrate(store)
    assert await check_store(store) == []
    await store.close()


def test_pieces_of_a_curved_head_are_counted_from_the_left() -> None:
    assert heads_of({"readings": {"leg_height": "50 in", "head_pieces": 5}}, {}) == 5
    # On its base the first and the last of seven stand for the legs.
    assert heads_of({"readings": {"head_pieces": 7}}, {}) == 5
    assert heads_of({"readings": {"sides": ["20 in"] * 8}}, {}) == 5
    old = [f"casing_head/head {number}" for number in range(1, 6)]
    new = [Renaming().key(one, lambda: 5) for one in old]
    assert new == [f"head_casing/{number}" for number in range(5, 0, -1)]
    assert [Renaming(back=True).key(one, lambda: 5) for one in new] == old


def test_a_house_of_the_first_release_is_renamed_there_and_back() -> None:
    old = {
        "trim_specs": {"lights": {"head_style": "mitred", "sill_casing": None}},
        "shop": {"rates": {"fit_minutes": "3"}, "wages": {"tasks": {"fit": "20"}}},
    }
    new = {
        "trim_specs": {"lights": {"head_style": "mitered", "bottom_casing": None}},
        "shop": {"rates": {"install_minutes": "3"}, "wages": {"tasks": {"install": "20"}}},
    }
    assert Renaming().document(old) == new
    assert Renaming(back=True).document(new) == old
    assert (
        Renaming().pointer("/trim_specs/lights/sill_casing/width") == "/trim_specs/lights/bottom_casing/width"
    )
