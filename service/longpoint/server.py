"""How this service is served: uvicorn, told when each request came, and stopped without anybody noticing."""

import asyncio
import signal
from functools import partial
from time import perf_counter
from types import FrameType
from typing import Any

from httptools import HttpParserError, HttpParserUpgrade, HttpRequestParser
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

from longpoint.api.http.gate import ARRIVED
from longpoint.api.http.request import WHOLE

_HEAD = b"HTTP/1.1 "
_MOST_HEAD = 64 * 1024
"""Bytes of a request's head: twice what the proxy takes."""


class _Joining:
    """A transport that sends an answer's head together with the body that follows it at once.

    Sent apart they cost two system calls, and wake the caller for a head that has nothing after it.

    Args:
        transport: What sends.
        loop: Sends a head by itself that nothing followed before the next turn.
    """

    def __init__(self, transport: asyncio.Transport, loop: asyncio.AbstractEventLoop) -> None:
        self._transport = transport
        self._loop = loop
        self._head = b""

    def __getattr__(self, name: str) -> Any:
        return getattr(self._transport, name)

    def write(self, data: bytes) -> None:
        if self._head:
            head, self._head = self._head, b""
            self._transport.writelines((head, data))
        elif data.startswith(_HEAD):
            self._head = data
            self._loop.call_soon(self._send_head)
        else:
            self._transport.write(data)

    def close(self) -> None:
        self._send_head()
        self._transport.close()

    def _send_head(self) -> None:
        if self._head:
            head, self._head = self._head, b""
            self._transport.write(head)


class _LongHeadError(Exception):
    """The head of a request is longer than is read."""


class Protocol(HttpToolsProtocol):
    """Notes when a request had come: work in front of it can keep it waiting, unseen from inside.

    It also refuses heads that RFC 9112 has refused and those without end, and waits for none longer than for the next
    request. The body of a request that asks for another protocol is read: the parser takes what follows for that
    protocol's, and would then read it as a request of its own.
    """

    _size = 0
    """Bytes that came since a head or a body was read to its end."""
    _in_body = False
    _late: asyncio.TimerHandle | None = None

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        joining: Any = _Joining(transport, self.loop)
        super().connection_made(joining)
        self._wait()

    def connection_lost(self, exc: Exception | None) -> None:
        self._wait_no_more()
        super().connection_lost(exc)

    def data_received(self, data: bytes) -> None:
        self._unset_keepalive_if_required()
        self._size += len(data)
        try:
            self.parser.feed_data(data)
            if self._size > _MOST_HEAD and not self._in_body:
                raise _LongHeadError
        except HttpParserUpgrade as there:
            self._pass_over_upgrade(data[there.args[0] :])
        except (HttpParserError, _LongHeadError) as refusal:
            self._refuse(too_long=_LongHeadError in (type(refusal), type(refusal.__context__)))
        else:
            if self.cycle is None or self.cycle.response_complete:
                self._wait()
            else:
                self._wait_no_more()

    def on_headers_complete(self) -> None:
        asks_for_another = self.parser.should_upgrade()
        names = [name for name, _ in self.headers]
        hosts = names.count(b"host")
        if hosts != 1 and (hosts or self.parser.get_http_version() > "1.0"):
            raise ValueError("RFC 9112, section 3.2: a request of HTTP/1.1 says once which host it is for")
        # What came may have held a part of the body as well.
        if (
            self._size > _MOST_HEAD
            and len(self.url) + sum(len(n) + len(v) + 4 for n, v in self.headers) > _MOST_HEAD
        ):
            raise _LongHeadError
        self._size = 0
        if asks_for_another and b"upgrade" in names:
            return
        self._in_body = True
        self.scope["state"][ARRIVED] = perf_counter()
        super().on_headers_complete()
        self.headers = []  # what comes after a body in chunks is no part of the head, and nobody reads it

    def on_message_complete(self) -> None:
        if not self._in_body:
            return
        self._size, self._in_body = 0, False
        self.scope["state"][WHOLE] = True
        super().on_message_complete()

    def _pass_over_upgrade(self, rest: bytes) -> None:
        """Read a request again without its wish for another protocol, which nobody has to grant."""
        fields = [b"%s: %s" % field for field in self.headers if field[0] != b"upgrade"]
        start = b"%s %s HTTP/%s" % (
            self.parser.get_method(),
            self.url,
            self.parser.get_http_version().encode(),
        )
        self.parser = HttpRequestParser(self)
        self.data_received(b"\r\n".join([start, *fields, b"", rest]))

    def _refuse(self, *, too_long: bool) -> None:
        said = "Invalid HTTP request received."
        self.logger.warning(said)
        if not too_long:
            self.send_400_response(said)
            return
        self.transport.write(
            b"HTTP/1.1 431 Request Header Fields Too Large\r\nconnection: close\r\ncontent-length: 0\r\n\r\n"
        )
        self.transport.close()

    def _wait(self) -> None:
        """Wait for the rest of a head, or of a body that nobody reads any more; a part of it gives no more time."""
        if self._late is None:
            self._late = self.loop.call_later(self.timeout_keep_alive, self.transport.close)

    def _wait_no_more(self) -> None:
        if self._late is not None:
            self._late.cancel()
            self._late = None


class Notice:
    """The time between being told to stop and stopping, in which whoever spreads the load can look elsewhere.

    Args:
        seconds: How long it is.

    Attributes:
        given: Whether the process was told to stop.
    """

    def __init__(self, seconds: float) -> None:
        self.seconds = seconds
        self.given = False

    async def await_signals(self) -> None:
        """Put the notice before what SIGTERM and SIGINT do; to be called once the server has set that."""
        for number in (signal.SIGTERM, signal.SIGINT):
            stop: Any = signal.getsignal(number)
            if callable(stop):
                signal.signal(number, partial(self._hear, asyncio.get_running_loop(), stop))

    def _hear(self, loop: asyncio.AbstractEventLoop, stop: Any, number: int, frame: FrameType | None) -> None:
        at_once = self.given or not self.seconds
        self.given = True
        if at_once:
            stop(number, frame)
        else:
            loop.call_soon_threadsafe(loop.call_later, self.seconds, stop, number, None)
