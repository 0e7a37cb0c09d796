"""What an attacker sends to the socket itself: broken and endless heads and bodies, one byte at a time."""

import asyncio
import contextlib
import re
from collections.abc import AsyncIterator, Awaitable, Callable
from time import perf_counter

import pytest
import uvicorn
from uvicorn.server import ServerState

from longpoint.app import create_app
from longpoint.server import Protocol
from longpoint.settings import Settings

BODY = b'{"lengths": ["30 5/8 in"]}'
ASK = b"POST /v1/lengths HTTP/1.1\r\nHost: longpoint\r\nContent-Type: application/json\r\n"
LENGTH = b"Content-Length: %d\r\n" % len(BODY)
IN_CHUNKS = b"Transfer-Encoding: chunked\r\n"
CHUNKS = b"%x\r\n%s\r\n0\r\n\r\n" % (len(BODY), BODY)
LIVE = b"GET /health/live HTTP/1.1\r\nHost: longpoint\r\n"
LAST = b"GET /health/ready HTTP/1.1\r\nHost: longpoint\r\nConnection: close\r\n\r\n"
HIDDEN = b"GET /docs HTTP/1.1\r\nHost: longpoint\r\n\r\n"
WAIT = 0.5
"""Seconds that a head or body may take here."""

Say = Callable[..., Awaitable[list[int]]]


@pytest.fixture
async def say() -> AsyncIterator[Say]:
    """Sends pieces over a connection of their own, and gives the status of each answer until the service closes it.

    A number among the pieces is a pause in seconds.
    """
    app = create_app(Settings(access_log=False, body_seconds=WAIT))
    config = uvicorn.Config(app, http=Protocol, ws="none", timeout_keep_alive=WAIT, log_config=None)
    config.load()
    state = ServerState()
    server = await asyncio.get_running_loop().create_server(
        lambda: Protocol(config=config, server_state=state, app_state={}), "127.0.0.1", 0
    )
    port = server.sockets[0].getsockname()[1]

    async def saying(*pieces: bytes | float) -> list[int]:
        reader, writer = await asyncio.open_connection("127.0.0.1", port)
        heard = bytearray()

        async def listen() -> None:
            with contextlib.suppress(ConnectionError):
                while piece := await reader.read(65536):
                    heard.extend(piece)

        listening = asyncio.create_task(listen())
        for piece in pieces:
            if listening.done():
                break  # whoever sends on to a closed door may not hear why it is
            if isinstance(piece, bytes):
                writer.write(piece)
                await asyncio.sleep(0)
            else:
                await asyncio.sleep(piece)
        async with asyncio.timeout(10):
            await listening
        writer.close()
        return [int(status) for status in re.findall(rb"HTTP/1\.1 (\d{3}) ", bytes(heard))]

    yield saying
    server.close()
    await app.state.access.close()


async def test_what_is_whole_is_answered_and_the_connection_goes_on(say: Say) -> None:
    for whole in (
        [ASK + LENGTH + b"\r\n" + BODY],
        [ASK + IN_CHUNKS + b"\r\n" + CHUNKS],
        [ASK + LENGTH, b"\r\n", BODY[:3], 0.05, BODY[3:]],
        [LIVE + b"X-Pad: " + b"a" * 60_000 + b"\r\n\r\n"],
        [LIVE.replace(b"/health", b"http://elsewhere.example/health") + b"\r\n"],
    ):
        assert await say(*whole, 0.05, LAST) == [200, 200], whole
    assert await say(b"GET /health/live HTTP/1.0\r\n\r\n") == [200], "HTTP/1.0 knows no Host"


@pytest.mark.parametrize(
    "broken",
    [
        b"GET /health/live HTTP/1.1\r\n\r\n",
        LIVE + b"Host: elsewhere\r\n\r\n",
        LIVE + b"Host : elsewhere\r\n\r\n",
        LIVE + b"X-Folded: a\r\n b\r\n\r\n",
        LIVE + b"X-Nul: \x00\r\n\r\n",
        LIVE + b"X-Split: a\rX-Request-Id: b\r\n\r\n",
        LIVE.replace(b"\r\n", b"\n") + b"\n",
        LIVE.replace(b"/health", b"/\xc3\xa9") + b"\r\n",
        b"CONNECT longpoint:80 HTTP/1.1\r\nHost: longpoint\r\n\r\n",
        b"CONNECT longpoint:80 HTTP/1.1\r\nHost: longpoint\r\nConnection: upgrade\r\nUpgrade: x\r\n\r\n",
        b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
        b"\x16\x03\x01\x02\x00\x01\x00",
        ASK + LENGTH + IN_CHUNKS + b"\r\n" + CHUNKS,
        ASK + IN_CHUNKS + LENGTH + b"\r\n" + CHUNKS,
        ASK + b"Transfer-Encoding: chunked, gzip\r\n\r\n" + CHUNKS,
        ASK + b"Transfer-Encoding: xchunked\r\n\r\n" + CHUNKS,
        ASK + IN_CHUNKS + IN_CHUNKS + b"\r\n" + CHUNKS,
        ASK + IN_CHUNKS + b"\r\nzz\r\n" + BODY,
        ASK + IN_CHUNKS + b"\r\n-1\r\n" + BODY,
        ASK + IN_CHUNKS + b"\r\n" + b"f" * 18 + b"\r\n" + BODY,
        ASK + LENGTH + b"Content-Length: 3\r\n\r\n" + BODY,
        ASK + LENGTH + LENGTH + b"\r\n" + BODY,
        ASK + b"Content-Length: +26\r\n\r\n" + BODY,
        ASK + b"Content-Length: -1\r\n\r\n" + BODY,
        ASK + b"Content-Length: " + b"9" * 30 + b"\r\n\r\n" + BODY,
        ASK + b"Content-Length: 5\r\n\r\n" + BODY,
    ],
    ids=lambda broken: repr(broken.replace(ASK, b"ASK ").replace(LIVE, b"LIVE ")[:60])[2:-1],
)
async def test_what_is_broken_is_refused_and_the_connection_ends(say: Say, broken: bytes) -> None:
    assert await say(broken, 0.02, LAST) == [400]


@pytest.mark.parametrize(
    "endless",
    [
        [LIVE + b"X-Long: " + b"a" * 100_000 + b"\r\n\r\n"],
        [b"GET /" + b"a" * 100_000 + b" HTTP/1.1\r\nHost: longpoint\r\n\r\n"],
        [LIVE + b"X-Endless: ", *[b"a" * 16_000, 0.02] * 20],
        [b"GET /", *[b"a" * 16_000, 0.02] * 20],
        [LIVE, *[b"".join(b"x%d: y\r\n" % number for number in range(2000)), 0.02] * 20],
        [ASK + LENGTH + b"\r\n" + BODY, 0.1, LIVE + b"X-Endless: ", *[b"a" * 16_000, 0.02] * 20],
    ],
    ids=["field", "target", "endless field", "endless target", "endless fields", "on the second request"],
)
async def test_a_head_has_an_end(say: Say, endless: list[bytes | float]) -> None:
    """They were read for as long as they came, all of it in memory."""
    assert (await say(*endless))[-1] == 431


async def test_a_long_body_is_no_long_head(say: Say) -> None:
    body = b'{"lengths": ["1 in"' + b" " * 1_000_000 + b"]}"
    long = ASK + b"Content-Length: %d\r\n\r\n" % len(body)
    assert await say(long + body, LAST) == [200, 200]
    refused = b"PUT" + long[4:]  # answered before its body has come
    assert await say(refused, 0.05, body[:500_000], 0.05, body[500_000:], LAST) == [405, 200]


@pytest.mark.parametrize("protocol", [b"h2c", b"websocket", b"elsewhere/1"])
async def test_the_body_of_a_request_for_another_protocol_is_no_request(say: Say, protocol: bytes) -> None:
    """Some clients ask for HTTP/2 by the way with their first request; its body was read as the next one."""
    wish = b"Connection: Upgrade\r\nUpgrade: " + protocol + b"\r\n"
    assert await say(LIVE + wish + b"\r\n", LAST) == [200, 200]
    assert await say(ASK + wish + LENGTH + b"\r\n" + BODY, LAST) == [200, 200]
    assert await say(ASK + wish + IN_CHUNKS + b"\r\n", 0.05, CHUNKS, LAST) == [200, 200]
    hidden = b"Content-Length: %d\r\n\r\n" % len(HIDDEN)
    assert await say(ASK + wish + hidden, 0.05, HIDDEN, LAST) == [400, 200], (
        "what is hidden is a body: no JSON"
    )


async def test_what_comes_after_the_chunks_is_no_piece_of_the_head(say: Say) -> None:
    """A proxy that looked at the head has not seen it: a key there, or an address to pass for, must do nothing."""
    after = b"Content-Encoding: gzip\r\nAuthorization: Bearer lp_a_b\r\nX-Request-Start: t=1000000000.000\r\n"
    request = ASK + IN_CHUNKS + b"\r\n" + CHUNKS[:-2] + after + b"\r\n"
    assert await say(request, LAST) == [200, 200]


@pytest.mark.parametrize(
    ("begun", "statuses"),
    [
        ([], []),
        ([b"G", 0.2, b"E", 0.2, b"T", 0.2, b" /health/live HTTP/1.1\r\nHost: longpoint\r\n\r\n"], []),
        ([LIVE + b"\r\n", 0.1, LIVE, 0.2, b"A: b\r\n", 0.2, b"C: d\r\n", 0.2, b"\r\n"], [200]),
        ([ASK + LENGTH + b"\r\n", *[b" ", 0.2] * 4], [408]),
        ([ASK + IN_CHUNKS + b"\r\n", *[b"1\r\n \r\n", 0.2] * 4], [408]),
        ([b"PUT" + ASK[4:] + b"Content-Length: 1000\r\n\r\n", *[b" ", 0.2] * 4], [405]),
    ],
    ids=["nothing", "head", "second head", "body", "chunks", "body of what was refused"],
)
async def test_what_comes_a_byte_at_a_time_is_not_waited_for(
    say: Say, begun: list[bytes | float], statuses: list[int]
) -> None:
    before = perf_counter()
    assert await say(*begun) == statuses
    assert perf_counter() - before < 5, "it is not kept as long as it goes on"


async def test_a_body_that_ends_too_early_is_forgotten(say: Say) -> None:
    assert await say(ASK + b"Content-Length: 500\r\n\r\n" + BODY) == [408]
