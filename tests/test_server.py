"""What `longpoint.server` relies on in uvicorn, whose protocol it extends beyond what uvicorn promises.

uvicorn is held to one release for that: whoever moves it on reads here what to look at.
"""

import asyncio
import inspect
import tomllib
from importlib.metadata import version
from pathlib import Path
from typing import Any

import uvicorn
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol
from uvicorn.server import Server, ServerState

from longpoint.server import Protocol

PYPROJECT = Path(__file__).parents[1] / "pyproject.toml"
HEAD = b"GET /health/live HTTP/1.1\r\nHost: longpoint\r\n\r\n"
ATTRIBUTES = {
    "parser",
    "headers",
    "url",
    "scope",
    "cycle",
    "transport",
    "loop",
    "logger",
    "timeout_keep_alive",
}
"""What is read, or put in another's place, of a connection under way."""
METHODS = {
    "connection_made",
    "connection_lost",
    "data_received",
    "on_headers_complete",
    "on_message_complete",
    "send_400_response",
    "_unset_keepalive_if_required",
}
"""What is called, or done otherwise."""


class Wire(asyncio.Transport):
    """A connection that notes what is written to it."""

    def __init__(self) -> None:
        super().__init__()
        self.written: list[bytes] = []

    def write(self, data: Any) -> None:
        self.written.append(bytes(data))

    def is_closing(self) -> bool:
        return False

    def resume_reading(self) -> None:
        pass

    def close(self) -> None:
        pass


async def app(scope: Any, receive: Any, send: Any) -> None:  # noqa: ARG001 - an application takes it
    headers = [(b"content-length", b"2")]
    await send({"type": "http.response.start", "status": 200, "headers": headers})
    await send({"type": "http.response.body", "body": b"ok"})


async def connected(kind: type[HttpToolsProtocol]) -> tuple[HttpToolsProtocol, Wire]:
    """A connection after one answer."""
    config = uvicorn.Config(app, http=kind, ws="none", log_config=None, lifespan="off")
    protocol, wire = kind(config=config, server_state=ServerState(), app_state={}), Wire()
    protocol.connection_made(wire)
    protocol.data_received(HEAD)
    await asyncio.gather(*protocol.tasks)
    await asyncio.sleep(0)
    protocol.connection_lost(None)
    return protocol, wire


def test_uvicorn_is_held_to_the_release_that_was_read() -> None:
    extras = tomllib.loads(PYPROJECT.read_text())["project"]["optional-dependencies"]["service"]
    (held,) = [each for each in extras if each.startswith("uvicorn")]
    least, below = (tuple(map(int, each.strip("uvicorn><=").split("."))) for each in held.split(","))
    assert below == (least[0], least[1] + 1)
    assert tuple(map(int, version("uvicorn").split(".")[:2])) == least


async def test_a_connection_has_what_is_used_of_it() -> None:
    protocol, _ = await connected(HttpToolsProtocol)
    assert set(vars(protocol)) >= ATTRIBUTES
    assert {name for name in METHODS if not callable(getattr(HttpToolsProtocol, name, None))} == set()
    assert protocol.cycle.response_complete
    assert protocol.scope["state"] == {}, "what is noted of a request goes through the scope's state"


async def test_a_head_and_its_body_are_two_writes_which_are_sent_as_one() -> None:
    _, wire = await connected(HttpToolsProtocol)
    head, body = wire.written
    assert head.startswith(b"HTTP/1.1 200 OK\r\n")
    assert body == b"ok"
    _, wire = await connected(Protocol)
    assert wire.written == [head + body]


def test_data_received_is_done_over_whole_and_is_still_as_it_was() -> None:
    """Ours stands in for all of it: what uvicorn adds to it would be missing."""
    lines = inspect.getsource(HttpToolsProtocol.data_received).split("\n")
    assert [line.strip() for line in lines if line.strip()] == [
        "def data_received(self, data: bytes) -> None:",
        "self._unset_keepalive_if_required()",
        "try:",
        "self.parser.feed_data(data)",
        "except httptools.HttpParserError:",
        'msg = "Invalid HTTP request received."',
        "self.logger.warning(msg)",
        "self.send_400_response(msg)",
        "return",
        "except httptools.HttpParserUpgrade:",
        "if self._should_upgrade():",
        "self.handle_websocket_upgrade()",
        "else:",
        "self._unsupported_upgrade_warning()",
    ]


def test_signals_are_set_before_the_application_starts() -> None:
    """The notice is put before what uvicorn does when it is told to stop."""
    source = inspect.getsource(Server.serve)
    assert "self.capture_signals()" in source
    assert "signal.signal(sig, self.handle_exit)" in inspect.getsource(Server.capture_signals)
