"""Rates by key, over a real database."""

import asyncio

import pytest

from longpoint.app import create_app
from longpoint.schedules import keys
from longpoint.schedules.store import Store
from longpoint.settings import Settings
from stored import serving


async def make(address: str) -> str:
    store = Store(address)
    async with store.writing() as connection:
        id = await keys.account_named(connection, "ann")
        text = await keys.make_key(connection, id, "rates", frozenset(keys.SCOPES), None)
    await store.close()
    return text


@pytest.fixture
def two_keys(sqlite_database: str) -> list[str]:
    return [asyncio.run(make(sqlite_database)) for _ in range(2)]


@pytest.fixture
async def service(sqlite_database, monkeypatch):
    """A service in which each may make three requests in a minute."""

    def limited(settings: Settings):
        return create_app(Settings(access_log=False, database=settings.database, rate_limit=3))

    monkeypatch.setattr("stored.create_app", limited)
    async with serving(sqlite_database) as caller:
        yield caller


async def test_each_key_has_its_own(two_keys, service):
    for key in two_keys:
        statuses = [
            (await service.get("/v1/schedules", headers={"authorization": f"Bearer {key}"})).status_code
            for _ in range(4)
        ]
        assert statuses == [200, 200, 200, 429]


async def test_whoever_tries_keys_is_stopped_before_the_database_is_asked(two_keys, service, monkeypatch):
    asked = []
    find = keys.find_holder

    async def counted(connection, text):
        asked.append(text)
        return await find(connection, text)

    monkeypatch.setattr("longpoint.api.http.access.find_holder", counted)
    guesses = [f"lp_aaaaaaaaaaaaaaaaaaaaaaaa_{number:040}" for number in range(6)]
    good = {"authorization": f"Bearer {two_keys[0]}"}
    assert (await service.get("/v1/schedules", headers=good)).status_code == 200
    answers = [
        await service.get("/v1/schedules", headers={"authorization": f"Bearer {guess}"}) for guess in guesses
    ]
    assert [answer.status_code for answer in answers] == [401, 401, 401, 429, 429, 429]
    assert asked[1:] == guesses[:3]
    # Whoever showed a good key from that address lately is still served.
    assert (await service.get("/v1/schedules", headers=good)).status_code == 200
