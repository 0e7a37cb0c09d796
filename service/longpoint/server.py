"""How this service is served: uvicorn, told when each request came, and stopped without anybody noticing."""

import asyncio
import signal
from time import perf_counter
from types import FrameType
from typing import Any

from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

from longpoint.api.http.gate import ARRIVED
from longpoint.api.http.request import WHOLE


class Protocol(HttpToolsProtocol):
    """Notes when a request had come: work in front of it can keep it waiting, unseen from inside."""

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
