"""Two accounts at a service, over each kind of database."""

import asyncio
from collections.abc import AsyncIterator

import pytest

import databases
from accounts import Pair, World, calling, furnish, storing
from longpoint.schedules.check import check_store
from stored import serving


@pytest.fixture(scope="module", params=["sqlite", "postgresql"])
def world(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> World:
    """One of each kind: what tests keep in it does not meet."""
    if request.param == "sqlite":
        return asyncio.run(furnish(databases.fresh_sqlite(tmp_path_factory.mktemp("attacks"))))
    return asyncio.run(furnish(databases.fresh_postgres(request.getfixturevalue("postgres"))))


@pytest.fixture
async def pair(world: World) -> AsyncIterator[Pair]:
    async with (
        serving(world.address) as anyone,
        calling(anyone, world.ann) as ann,
        calling(anyone, world.bob) as bob,
    ):
        yield Pair(ann, bob)


@pytest.fixture
async def sound(request: pytest.FixtureRequest) -> AsyncIterator[None]:
    """Whatever was tried, the history hangs together and what stands repeats it."""
    yield
    if "world" in request.fixturenames:
        async with storing(request.getfixturevalue("world").address) as store:
            assert await check_store(store) == []
