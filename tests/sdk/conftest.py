"""The real service, to drive with the real SDK: over loopback for the sync client, in process for the async one."""

import asyncio
import socket
import threading
from collections.abc import AsyncIterator, Iterator

import httpx
import pytest
import uvicorn

import databases
from longpoint.app import create_app
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from longpoint.settings import Settings
from longpoint_sdk import AsyncClient, Client


async def _migrated(address: str) -> None:
    store = Store(address, create=True)
    await migrate(store)
    await store.close()


@pytest.fixture(scope="session")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """A running service's address; it has no keys, and so asks for none on loopback."""
    database = databases.fresh_sqlite(tmp_path_factory.mktemp("sdk"))
    asyncio.run(_migrated(database))
    listening = socket.create_server(("127.0.0.1", 0))  # callers queue here until the server takes over
    app = create_app(Settings(access_log=False, database=database))
    server = uvicorn.Server(uvicorn.Config(app, log_level="warning", lifespan="on"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]})
    thread.start()
    try:
        yield f"http://127.0.0.1:{listening.getsockname()[1]}"
    finally:
        server.should_exit = True
        thread.join(timeout=20)
        listening.close()


@pytest.fixture
def client(address: str) -> Iterator[Client]:
    """The sync client, over HTTP."""
    with Client(address) as one:
        yield one


@pytest.fixture
async def async_client(sqlite_database: str) -> AsyncIterator[AsyncClient]:
    """The async client, with the service in this process."""
    app = create_app(Settings(access_log=False, database=sqlite_database))
    async with AsyncClient("http://longpoint", transport=httpx.ASGITransport(app=app)) as one:
        yield one
    await app.state.access.close()
    await app.state.store.close()
