"""A service that wants keys: what each key may do, and what is raised when it may not."""

from collections.abc import AsyncIterator

import httpx
import pytest

from longpoint.app import create_app
from longpoint.schedules import keys
from longpoint.schedules.store import Store
from longpoint.settings import Settings
from longpoint_sdk import AsyncClient, problems, types

HOUSE = types.NewSchedule(name="Heron Cottage")


async def make(database: str, account: str, *scopes: str) -> str:
    store = Store(database)
    async with store.writing() as connection:
        account_id = await keys.account_named(connection, account)
        text = await keys.make_key(connection, account_id, f"{account}'s", frozenset(scopes), None)
    await store.close()
    return text


@pytest.fixture
async def transport(sqlite_database: str) -> AsyncIterator[httpx.ASGITransport]:
    """The service over a database of its own."""
    app = create_app(Settings(access_log=False, database=sqlite_database))
    yield httpx.ASGITransport(app=app)
    await app.state.access.close()
    await app.state.store.close()


async def test_each_key_may_do_what_it_may(sqlite_database: str, transport: httpx.ASGITransport) -> None:
    ann = await make(sqlite_database, "ann", "read", "write")
    reader = await make(sqlite_database, "ann", "read")
    bob = await make(sqlite_database, "bob", "read", "write")

    def client(key: str | None) -> AsyncClient:
        return AsyncClient("https://trim.example", api_key=key, transport=transport)

    kept = await client(ann).create_schedule(HOUSE)
    assert (await client(reader).get_schedule(kept.value.id)).etag == kept.etag
    with pytest.raises(problems.ScopeMissing):
        await client(reader).create_schedule(HOUSE)
    with pytest.raises(problems.NotFound):
        await client(bob).get_schedule(kept.value.id)
    with pytest.raises(problems.KeyNeeded) as caught:
        await client(None).get_schedule(kept.value.id)
    assert caught.value.headers["WWW-Authenticate"].startswith("Bearer")
    with pytest.raises(problems.KeyRefused):
        await client(f"{ann[:-4]}AAAA").get_schedule(kept.value.id)
