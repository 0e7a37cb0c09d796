"""Shared by all tests."""

import asyncio
from collections.abc import AsyncIterator, Iterator
from pathlib import Path
from typing import Any

import httpx
import pytest
from hypothesis import settings

import databases
from longpoint.app import create_app
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from longpoint.settings import Settings

# The suite shares two cores between workers: a deadline per example would fail on a busy machine, not on a fault.
settings.register_profile("longpoint", deadline=None, max_examples=60)
settings.load_profile("longpoint")


@pytest.fixture
async def client() -> AsyncIterator[httpx.AsyncClient]:
    """The whole service, in process, as a caller over HTTP sees it."""
    app = create_app(Settings(access_log=False))
    async with httpx.AsyncClient(
        transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
    ) as caller:
        yield caller


@pytest.fixture(scope="session")
def postgres() -> Iterator[Any]:
    """One PostgreSQL server for the session, started when the first test wants it."""
    with databases.postgres_server() as server:
        yield server


@pytest.fixture(params=["sqlite", "postgresql"])
def empty_database(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The address of a database with nothing in it, on each kind."""
    if request.param == "sqlite":
        return databases.fresh_sqlite(tmp_path)
    return databases.fresh_postgres(request.getfixturevalue("postgres"))


@pytest.fixture
def database(empty_database: str) -> str:
    """The address of a migrated database without rows, on each kind."""
    asyncio.run(_migrated(empty_database))
    return empty_database


@pytest.fixture
def sqlite_database(tmp_path: Path) -> str:
    """The address of a migrated SQLite file."""
    address = databases.fresh_sqlite(tmp_path)
    asyncio.run(_migrated(address))
    return address


async def _migrated(address: str) -> None:
    store = Store(address, create=True)
    await migrate(store)
    await store.close()


@pytest.fixture(scope="session", autouse=True)
def untouched_bytes() -> Iterator[None]:
    """The interpreter's own one-byte objects are as they were, whatever compiled code the tests ran."""
    yield
    written_over = [value for value in range(256) if bytes(bytearray([value]))[0] != value]
    assert not written_over, "something wrote into the interpreter's own one-byte bytes"
