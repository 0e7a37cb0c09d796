"""The real service, to drive with the real SDK: over loopback for the sync client, in process for the async one."""

import socket
import threading
from collections.abc import AsyncIterator, Iterator

import httpx
import pytest
import uvicorn

from longpoint.app import create_app
from longpoint.settings import Settings
from longpoint_sdk import AsyncClient, Client


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """A running service's address."""
    listening = socket.create_server(("127.0.0.1", 0))  # callers queue here until the server takes over
    server = uvicorn.Server(
        uvicorn.Config(create_app(Settings(access_log=False)), log_level="warning", lifespan="on")
    )
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
async def async_client() -> AsyncIterator[AsyncClient]:
    """The async client, with the service in this process."""
    app = create_app(Settings(access_log=False))
    async with AsyncClient("http://longpoint", transport=httpx.ASGITransport(app=app)) as one:
        yield one
