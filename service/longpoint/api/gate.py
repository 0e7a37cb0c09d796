"""Turns requests away before any work is done for them, when there is more to do than can be done in time.

What was let in is then answered about as fast as ever, and what was not hears so at once.
"""

from time import perf_counter
from typing import Any

from litestar.types import ASGIApp, Receive, Send

from longpoint.api.errors import problem_bytes
from longpoint.api.problems import PROBLEM_JSON
from longpoint.api.problems_limits import Overloaded

ARRIVED = "arrived"
"""Key in the scope's state of when the head of the request had come, by time.perf_counter; absent when not known."""
_ALWAYS = "/health/"


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
        arrived = scope["state"].get(ARRIVED)
        if arrived is not None and perf_counter() - arrived > self.wait:
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
