"""Turns at the database: so many at once, and nobody waits longer for one than callers bear."""

import asyncio
from collections import deque
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from longpoint.schedules.errors import DatabaseBusy


class Turns:
    """Gives out turns.

    Whoever is under way already goes first: a request that was let in is done before another is begun, and one that
    comes too late is turned away before anything was done for it.

    Args:
        most: How many there are at once.
        wait: Seconds that anyone waits for one.
    """

    def __init__(self, most: int, wait: float) -> None:
        self._free = most
        self._wait = wait
        self._under_way: deque[asyncio.Future[None]] = deque()
        self._coming: deque[asyncio.Future[None]] = deque()

    @asynccontextmanager
    async def take(self, *, under_way: bool) -> AsyncIterator[None]:
        """A turn, given back at the end of the block.

        Args:
            under_way: Whether it is for what was begun already.

        Raises:
            DatabaseBusy: when none came in time.
        """
        if self._free:
            self._free -= 1
        else:
            await self._await_one(self._under_way if under_way else self._coming)
        try:
            yield
        finally:
            self._give_back()

    async def _await_one(self, line: deque[asyncio.Future[None]]) -> None:
        turn: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        line.append(turn)
        try:
            async with asyncio.timeout(self._wait):
                await turn
        except BaseException as failure:
            if turn.done() and not turn.cancelled():
                self._give_back()  # it came at the very moment its taker went away
            if isinstance(failure, TimeoutError):
                raise DatabaseBusy("what came before took too long") from None
            raise

    def _give_back(self) -> None:
        for line in (self._under_way, self._coming):
            while line:
                turn = line.popleft()
                if not turn.done():
                    turn.set_result(None)
                    return
        self._free += 1
