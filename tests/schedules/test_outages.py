"""The database busy, full, gone and back: a problem each time, nothing half saved, and no restart needed."""

import asyncio
import sqlite3
from pathlib import Path
from typing import Any

import httpx
import pytest
from sqlalchemy import event, text

from databases import fresh_postgres, postgres_server
from longpoint.app import create_app
from longpoint.schedules import engine
from longpoint.schedules.check import check_store
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from longpoint.settings import Settings
from stored import house, made, opening, serving

UNAVAILABLE = (503, "/problems/storage-unavailable")


def told(answer: httpx.Response) -> tuple[int, str]:
    if answer.status_code == 503:
        assert answer.headers["retry-after"]
    return answer.status_code, answer.json()["type"]


async def test_a_locked_file_is_told_and_works_again(
    sqlite_database: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(engine, "BUSY_SECONDS", 0.05)
    async with serving(sqlite_database) as service:
        where = (await made(service)).headers["location"]
        other = sqlite3.connect(sqlite_database.removeprefix("sqlite:///"), isolation_level=None)
        other.execute("BEGIN IMMEDIATE")
        assert told(await service.post(f"{where}/openings", json=opening("K1"))) == UNAVAILABLE
        assert (await service.get(where)).status_code == 200, "reading goes on"
        other.execute("ROLLBACK")
        other.close()
        assert (await service.post(f"{where}/openings", json=opening("K1"))).status_code == 201
        assert (await service.get(where)).json()["revision"] == 2


async def test_a_full_disk_is_told_and_nothing_is_half_saved(sqlite_database: str) -> None:
    app = create_app(Settings(access_log=False, database=sqlite_database))
    store: Store = app.state.store
    limit: dict[str, int] = {}

    @event.listens_for(store.engine.sync_engine, "checkout")
    def few_pages(connection: Any, record: Any, proxy: Any) -> None:  # noqa: ARG001
        cursor = connection.cursor()
        cursor.execute("PRAGMA page_count")
        pages = limit.get("pages", 1_000_000)
        cursor.execute(f"PRAGMA max_page_count = {pages}")
        cursor.close()

    transport = httpx.ASGITransport(app=app)
    async with httpx.AsyncClient(transport=transport, base_url="http://longpoint") as service:
        where = (await made(service)).headers["location"]
        limit["pages"] = 1  # SQLite takes the present size then: not one page more
        many = {"openings": [opening(f"W{number}") for number in range(200)]}
        answer = await service.post(f"{where}/import", json=many, headers={"idempotency-key": "k"})
        assert told(answer) == UNAVAILABLE
        assert (await service.get(f"{where}/openings")).json()["items"] == []
        assert (await service.get(where)).json()["revision"] == 1
        limit.clear()
        answer = await service.post(f"{where}/import", json=many, headers={"idempotency-key": "k"})
        assert answer.status_code == 200, answer.text
    assert await check_store(store) == []
    await store.close()


async def test_a_file_that_went_and_came_back(sqlite_database: str, tmp_path: Path) -> None:
    path = Path(sqlite_database.removeprefix("sqlite:///"))
    async with serving(sqlite_database) as service:
        where = (await made(service)).headers["location"]
        away = tmp_path / "away"
        away.mkdir()
        files = [path, path.with_name(path.name + "-wal"), path.with_name(path.name + "-shm")]
        for file in files:
            if file.exists():
                file.rename(away / file.name)
        assert told(await service.post(f"{where}/openings", json=opening("K1"))) == UNAVAILABLE
        assert told(await service.get("/health/ready")) == UNAVAILABLE
        assert (await service.get("/health/live")).status_code == 200
        assert not path.exists(), "no empty file was made in its place"
        for file in files:
            if (away / file.name).exists():
                (away / file.name).rename(file)
        assert (await service.post(f"{where}/openings", json=opening("K1"))).status_code == 201
        assert (await service.get("/health/ready")).status_code == 200


async def test_a_server_that_went_and_came_back() -> None:
    """A PostgreSQL of its own, since it is stopped and started again."""
    with postgres_server() as server:
        address = fresh_postgres(server)
        store = Store(address)
        await migrate(store)
        await store.close()
        async with serving(address) as service:
            where = (await made(service)).headers["location"]
            server.stop()
            assert told(await service.post(f"{where}/openings", json=opening("K1"))) == UNAVAILABLE
            assert told(await service.get(where)) == UNAVAILABLE
            assert told(await service.get("/health/ready")) == UNAVAILABLE
            server.ensure_postgres_running()
            assert (await service.post(f"{where}/openings", json=opening("K1"))).status_code == 201
            assert (await service.get(where)).json()["revision"] == 2


async def test_connections_that_the_server_ended_are_not_asked_again() -> None:
    """As an operator ends them, or a server that was replaced: whoever comes next never hears of it."""
    with postgres_server() as server:
        address = fresh_postgres(server)
        store = Store(address)
        await migrate(store)
        async with serving(address) as service:
            where = (await made(service)).headers["location"]
            async with store.looking() as connection:
                ended = await connection.execute(
                    text(
                        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE pid <> pg_backend_pid()"
                    )
                )
                assert sum(ended.scalars()) >= 1
            await asyncio.sleep(0.1)
            assert (await service.get(where)).status_code == 200
            assert (await service.post(f"{where}/openings", json=opening("K1"))).status_code == 201
        await store.close()


async def test_whoever_gets_no_turn_at_the_database_in_time_is_told_to_come_again(database: str) -> None:
    settings = Settings(access_log=False, database=database, database_connections=1, max_wait_seconds=0.1)
    app = create_app(settings)
    transport = httpx.ASGITransport(app=app)
    async with httpx.AsyncClient(transport=transport, base_url="http://longpoint") as service:
        where = (await made(service)).headers["location"]
        async with app.state.store.reading():
            for answer in (
                await service.get(where),
                await service.post(f"{where}/openings", json=opening("K1")),
            ):
                assert told(answer) == (503, "/problems/overloaded")
            assert (await service.post("/v1/lengths", json={"lengths": ["30 5/8 in"]})).status_code == 200
        assert (await service.post(f"{where}/openings", json=opening("K1"))).status_code == 201
        assert (await service.get(where)).json()["revision"] == 2
    await app.state.access.close()
    await app.state.store.close()


async def test_a_database_of_another_revision_is_not_ready(database: str) -> None:
    store = Store(database)
    await migrate(store, "0001")
    async with serving(database) as service:
        answer = await service.get("/health/ready")
        assert told(answer) == UNAVAILABLE
        assert "at revision 0001 and this service needs" in answer.json()["detail"]
        await migrate(store)
        assert (await service.get("/health/ready")).status_code == 200
    await store.close()


@pytest.mark.parametrize(
    ("body", "status"),
    [
        (b"", 400),
        (b"{", 400),
        (b'{"name": "A", "name": "B"}', 400),
        (b"[" * 100_000, 400),
        (b'{"name": "\\ud800"}', 400),
        (b'{"name": "\xff"}', 400),
        (b'{"name": "a\\u0000b"}', 422),
        (b'{"name": "A", "site_note": "a\\u0000b"}', 422),
        (b'{"name": "A", "color": "red"}', 422),
        (b'{"name": "A", "site_note": "' + b"x" * 10_000_000 + b'"}', 413),
        (b"[]", 422),
    ],
)
async def test_bodies_that_are_none(service: httpx.AsyncClient, body: bytes, status: int) -> None:
    answer = await service.post("/v1/schedules", content=body, headers={"content-type": "application/json"})
    assert answer.status_code == status, answer.text
    assert answer.headers["content-type"] == "application/problem+json"
    assert (await service.get("/v1/schedules")).json()["items"] == []
    assert (await service.post("/v1/schedules", json=house())).status_code == 201
