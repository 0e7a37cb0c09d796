"""Turns requests away before any work is done for them, when there is more to do than can be done in time.

What was let in is then answered about as fast as ever, and what was not hears so at once.

A request that computes holds the event loop until it is done, and one that waits for the database needs the loop a
dozen times: it would wait each time for all that had come meanwhile. So while such a one is under way each turn of the
loop is short: what comes when a turn has lasted long enough stands in line, and goes in by itself on a turn of its own.
"""

import asyncio
import re
from collections import deque
from time import perf_counter, time
from typing import Any

from litestar.types import ASGIApp, Receive, Send

from longpoint.api.http.answer import Encoded
from longpoint.api.http.errors import problem_bytes
from longpoint.api.http.frame import RAW_HEADERS
from longpoint.api.http.problems import PROBLEM_JSON, Overloaded
from longpoint.texts import say

ARRIVED = "arrived"
"""Key in the scope's state of when the head of the request had come, by time.perf_counter; absent when not known."""
_ALWAYS = "/health/"
_TURN_SECONDS = 0.001
"""How long a turn of the event loop may last before what comes stands in line: a few openings' time."""
_TOGETHER = 8
"""How many go in on one turn where nobody under way waits for it."""
_PASSED_ON = re.compile(rb"t=(\d{10}\.\d{3})")


def _waited(state: dict[str, Any]) -> float:
    """Seconds since the proxy passed the request on, where it says so, else since its head was read; 0 if unknown.

    Only the proxy knows how long a request lay in front of a process that had no time to read it.
    """
    headers: dict[bytes, bytes] = state.get(RAW_HEADERS, {})
    if passed_on := _PASSED_ON.fullmatch(headers.get(b"x-request-start", b"")):
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
        self._turn_began: float | None = None
        self._line: deque[tuple[asyncio.Future[bool], dict[str, Any]]] = deque()
        self.turned_away = {"under way": 0, "waiting": 0}

    async def __call__(self, scope: Any, receive: Receive, send: Send) -> None:
        if scope["path"].startswith(_ALWAYS):
            await self.app(scope, receive, send)
            return
        in_time = _waited(scope["state"]) <= self.wait
        if in_time and (self._line or (self.under_way and self._turn_is_long())):
            turn: asyncio.Future[bool] = asyncio.get_running_loop().create_future()
            self._line.append((turn, scope["state"]))
            in_time = await turn
        if self.under_way >= self.most or not in_time:
            reason = "waiting" if self.under_way < self.most else "under way"
            await self._turn_away(reason, scope, receive, send)
            return
        self.under_way += 1
        try:
            await self.app(scope, receive, send)
        finally:
            self.under_way -= 1

    def _turn_is_long(self) -> bool:
        """Whether this turn of the loop has lasted long enough for those under way, who wait for the next."""
        if self._turn_began is None:
            self._begin_turn()
            return False
        return perf_counter() - self._turn_began > _TURN_SECONDS

    def _begin_turn(self) -> None:
        self._turn_began = perf_counter()
        asyncio.get_running_loop().call_soon(self._next_turn)

    def _next_turn(self) -> None:
        """Let the next in line go in, a few where nobody waits for them, and away whoever has waited too long."""
        self._turn_began = None
        places = 1 if self.under_way else _TOGETHER
        while self._line and places:
            turn, state = self._line.popleft()
            if turn.done():
                continue
            in_time = _waited(state) <= self.wait
            turn.set_result(in_time)
            places -= in_time
        if self._line or not places:
            self._begin_turn()

    async def _turn_away(self, reason: str, scope: Any, receive: Receive, send: Send) -> None:
        self.turned_away[reason] += 1
        problem = Overloaded(say("problem", "service.overloaded"))
        answer = Encoded(
            problem.status, problem_bytes(scope, problem), PROBLEM_JSON, [(b"retry-after", b"1")]
        )
        await answer(scope, receive, send)
