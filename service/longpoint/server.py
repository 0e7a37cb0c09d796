"""How this service is served: uvicorn, told when each request came, and stopped without anybody noticing."""

import asyncio
import signal
from time import perf_counter
from types import FrameType
from typing import Any

from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

from longpoint.api.http.gate import ARRIVED
from longpoint.api.http.request import WHOLE

_HEAD = b"HTTP/1.1 "


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


class Protocol(HttpToolsProtocol):
    """Notes when a request had come: work in front of it can keep it waiting, unseen from inside."""

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        joining: Any = _Joining(transport, self.loop)
        super().connection_made(joining)

    def on_headers_complete(self) -> None:
        self.scope["state"][ARRIVED] = perf_counter()
        super().on_headers_complete()

    def on_message_complete(self) -> None:
        self.scope["state"][WHOLE] = True
        super().on_message_complete()


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
        loop = asyncio.get_running_loop()
        for number in (signal.SIGTERM, signal.SIGINT):
            stop: Any = signal.getsignal(number)
            if callable(stop):
                signal.signal(number, _after_notice(self, loop, stop))


def _after_notice(notice: Notice, loop: asyncio.AbstractEventLoop, stop: Any) -> Any:
    def told(number: int, frame: FrameType | None) -> None:
        if notice.given or not notice.seconds:
            notice.given = True
            stop(number, frame)
            return
        notice.given = True
        loop.call_soon_threadsafe(loop.call_later, notice.seconds, stop, number, None)

    return told
