"""Turns requests away before any work is done for them, when there is more to do than can be done in time.

What was let in is then answered about as fast as ever, and what was not hears so at once.
"""

import re
from time import perf_counter, time
from typing import Any

from litestar.types import ASGIApp, Receive, Send

from longpoint.api.http.errors import problem_bytes
from longpoint.api.http.frame import RAW_HEADERS
from longpoint.api.http.problems import PROBLEM_JSON
from longpoint.api.http.problems_limits import Overloaded

ARRIVED = "arrived"
"""Key in the scope's state of when the head of the request had come, by time.perf_counter; absent when not known."""
_ALWAYS = "/health/"
_PASSED_ON = re.compile(rb"t=(\d{10}\.\d{3})")


def _waited(state: dict[str, Any]) -> float:
    """Seconds since the proxy passed the request on, where it says so, else since its head was read; 0 if unknown.

    Only the proxy knows how long a request lay in front of a process that had no time to read it.
    """
    passed_on = (
        _PASSED_ON.fullmatch(state[RAW_HEADERS].get(b"x-request-start", b""))
        if RAW_HEADERS in state
        else None
    )
    if passed_on:
        return time() - float(passed_on[1])
    arrived: float | None = state.get(ARRIVED)
    return 0.0 if arrived is None else perf_counter() - arrived


class Gate:
    """Wraps the application.

    Args:
        app: What answers.
        most: Requests that may be under way at once.
        wait: Seconds that a request may have waited for its turn.

    Attributes:
        under_way: Requests being answered now.
        turned_away: How many were, by what there was too much of.
    """

    def __init__(self, app: ASGIApp, most: int, wait: float) -> None:
        self.app = app
        self.most = most
        self.wait = wait
        self.under_way = 0
        self.turned_away = {"under way": 0, "waiting": 0}

    async def __call__(self, scope: Any, receive: Receive, send: Send) -> None:
        if scope["type"] != "http" or scope["path"].startswith(_ALWAYS):
            await self.app(scope, receive, send)
            return
        if self.under_way >= self.most:
            await self._turn_away("under way", scope, send)
            return
        if _waited(scope["state"]) > self.wait:
            await self._turn_away("waiting", scope, send)
            return
        self.under_way += 1
        try:
            await self.app(scope, receive, send)
        finally:
            self.under_way -= 1

    async def _turn_away(self, reason: str, scope: Any, send: Any) -> None:
        self.turned_away[reason] += 1
        body = problem_bytes(
            scope, Overloaded("Too much was asked of this service at once; nothing was done.")
        )
        headers = [
            (b"content-type", PROBLEM_JSON.encode()),
            (b"content-length", b"%d" % len(body)),
            (b"retry-after", b"1"),
        ]
        await send({"type": "http.response.start", "status": Overloaded.status, "headers": headers})
        await send({"type": "http.response.body", "body": body, "more_body": False})
