"""Searches for cheaper sticks that go on while their caller is answered: the same one is under way only once."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator, Awaitable, Callable, Hashable
from typing import Generic, TypeVar

from longpoint.jobs.planning_pool import PlanningPool, Report, in_a_job
from longpoint.shop.planning import Planning
from longpoint.stock import Progress
from longpoint.values import Refusal

_log = logging.getLogger("longpoint.planning")
T = TypeVar("T")
SearchStep = tuple[str, Progress]
"""A step of a search: the profile it is of, and how far it has come."""
ReportStep = Callable[[SearchStep], None]


async def search(planning: Planning, pool: PlanningPool, seconds: float, report: ReportStep) -> None:
    """Better a house's plans, where any can be bettered.

    Raises:
        Refusal: when no plan gives every piece.
        PlannersBusy: when too many requests wait already.
    """
    open = planning.open
    if not open:
        return

    def step(at: int, progress: Progress) -> None:
        report((planning.cuttings[open[at]].profile, progress))

    report_of: Report = step
    found = await pool.plan(planning.tasks, seconds, report_of)
    planning.take(dict(zip(open, found, strict=True)))


class PlanSearch(Generic[T]):
    """One search under way.

    Attributes:
        done: Its end, as `result` awaits it.
        wanted: Whether somebody waits for it.
    """

    def __init__(self, work: Callable[[ReportStep], Awaitable[T]]) -> None:
        self._listening: list[asyncio.Queue[SearchStep | None]] = []
        self.wanted = False
        self.done: asyncio.Future[T] = asyncio.ensure_future(work(self._report))
        self.done.add_done_callback(lambda _: self._end())

    async def result(self) -> T:
        """What it found, once it ends; it goes on when whoever waits goes away, and ends with a job."""
        self.wanted = True
        try:
            return await asyncio.shield(self.done)
        except asyncio.CancelledError:
            if in_a_job():
                self.done.cancel()
            raise

    async def steps(self) -> AsyncIterator[SearchStep]:
        """Each step from now on, until the search ends."""
        coming: asyncio.Queue[SearchStep | None] = asyncio.Queue()
        if self.done.done():
            return
        self._listening.append(coming)
        while (step := await coming.get()) is not None:
            yield step

    def _report(self, step: SearchStep) -> None:
        for one in self._listening:
            one.put_nowait(step)

    def _end(self) -> None:
        for one in self._listening:
            one.put_nowait(None)


class Searches(Generic[T]):
    """The searches of this process.

    Args:
        refusals: What ends one without being a fault of the service.
    """

    def __init__(self, *refusals: type[Exception]) -> None:
        self._refusals: tuple[type[Exception], ...] = (Refusal, *refusals)
        self._under_way: dict[tuple[str, Hashable], PlanSearch[T]] = {}

    def begin(self, of: str, key: Hashable, work: Callable[[ReportStep], Awaitable[T]]) -> PlanSearch[T]:
        """The search that goes by this key: the one under way, else a new one.

        Args:
            of: What it is a search for. Others for the same that nobody waits for are ended: what they seek is past.
            key: What it starts from.
            work: What it does.
        """
        own = of, key
        found = self._under_way.get(own)
        if found is None:
            for (other, _), search in self._under_way.items():
                if other == of and not search.wanted:
                    search.done.cancel()
            found = self._under_way[own] = PlanSearch(work)
            found.done.add_done_callback(lambda done: self._ended(own, done))
        return found

    async def close(self) -> None:
        """End what is under way."""
        under_way = [one.done for one in self._under_way.values()]
        for one in under_way:
            one.cancel()
        await asyncio.gather(*under_way, return_exceptions=True)

    def _ended(self, key: tuple[str, Hashable], done: asyncio.Future[T]) -> None:
        self._under_way.pop(key, None)
        failure = None if done.cancelled() else done.exception()
        if failure is not None and not isinstance(failure, self._refusals):
            _log.error("a search failed", exc_info=failure)
