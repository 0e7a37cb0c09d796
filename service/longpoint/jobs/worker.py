"""A worker: takes jobs from the queue, does them, and says how far it has come."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from datetime import timedelta
from time import monotonic
from typing import Any

import asyncpg
from pgqueuer.adapters.drivers.asyncpg import AsyncpgPoolDriver
from pgqueuer.adapters.persistence.queries import Queries
from pgqueuer.core.qm import QueueManager
from pgqueuer.domain.errors import RetryRequested
from pgqueuer.domain.models import Context
from pgqueuer.domain.models import Job as QueuedJob
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.jobs import keeping, rows
from longpoint.jobs.job import MOST_TRIES, Bounds, Doer, Outcome, PlanProgress, Progressed
from longpoint.schedules.errors import StorageError
from longpoint.schedules.store import Store
from longpoint.stock import Progress

_log = logging.getLogger("longpoint.jobs")
LEASE = timedelta(seconds=15)
"""After which a job is another's whose worker has not been heard of."""
_LOOKED_AFTER = 5.0
"""Seconds between two looks for what was lost."""
_LOOKED = timedelta(seconds=0.02)
"""After which a worker that was full looks for more: by default it is five times as long."""
_CONNECTIONS = 4
"""That a worker uses at once: those that a store keeps open, since to open one costs more than a small job."""
_NOTED = 0.2
"""Seconds between two notes of how far a job has come."""


class Worker:
    """Works until it is stopped.

    Args:
        store: The database.
        bounds: How much at a time.
        work: What does it.
    """

    def __init__(self, store: Store, bounds: Bounds, work: Doer) -> None:
        self._store = store
        self._bounds = bounds
        self._work = work
        self._queue: QueueManager | None = None
        self._under_way: set[asyncio.Task[Any]] = set()
        self._stopping = False
        self._turns = asyncio.Semaphore(_CONNECTIONS)

    async def run(self) -> None:
        """Work until the database is lost, or this is stopped."""
        address = self._store.url.set(drivername="postgresql").render_as_string(hide_password=False)
        # What the queue forgets when its server dies is found to be done: it need not wait for the disk.
        named = {"application_name": "longpoint worker", "synchronous_commit": "off"}
        pool = await asyncpg.create_pool(address, min_size=1, max_size=3, server_settings=named)
        tending = asyncio.create_task(self._look_after())
        try:
            queue = self._queue = QueueManager(Queries(AsyncpgPoolDriver(pool)))
            queue.min_dequeue_poll_interval = _LOOKED
            queue.entrypoint(rows.ENTRY, accepts_context=True)(self._take)
            # It takes no fewer than two at a time.
            most = max(2, self._bounds.at_once)
            await queue.run(
                batch_size=max(1, most // 2),
                max_concurrent_tasks=most,
                dequeue_timeout=timedelta(seconds=5),
                heartbeat_timeout=LEASE,
                shutdown_on_listener_failure=True,
            )
        finally:
            tending.cancel()
            await asyncio.gather(tending, return_exceptions=True)
            pool.terminate()  # what it holds for the queue it would wait for without end

    def is_stopped(self) -> bool:
        """Whether it was stopped."""
        return self._stopping

    async def stop(self, within: float) -> None:
        """Take no more; what is under way may finish within so many seconds, and is given back then."""
        self._stopping = True
        if self._queue is not None:
            self._queue.shutdown.set()
        if self._under_way:
            await asyncio.wait(self._under_way, timeout=within or 0.01)
        left = list(self._under_way)
        for task in left:
            task.cancel()
        await asyncio.gather(*left, return_exceptions=True)

    @asynccontextmanager
    async def _writing(self) -> AsyncIterator[AsyncConnection]:
        async with self._turns, self._store.writing() as connection:
            yield connection

    @asynccontextmanager
    async def _looking(self) -> AsyncIterator[AsyncConnection]:
        async with self._turns, self._store.looking() as connection:
            yield connection

    async def _take(self, queued: QueuedJob, context: Context) -> None:
        """Do one that the queue hands out."""
        task = asyncio.current_task()
        assert task is not None
        self._under_way.add(task)
        try:
            with context.cancellation:
                await self._do((queued.payload or b"").decode())
        except StorageError as away:
            raise RetryRequested(timedelta(seconds=1), "the database is away") from away
        finally:
            self._under_way.discard(task)

    async def _do(self, id: str) -> None:
        async with self._looking() as connection:  # one statement: no transaction around it
            begun = await rows.begin(connection, id)
        if begun is None:
            return
        if begun.tried > MOST_TRIES:
            await self._end(begun, self._work.lost(begun.new), 0.0)
            return
        began = monotonic()
        progressed = Progressed({one.profile: one for one in begun.progress})
        news = asyncio.Event()

        def report(profile: str, step: Progress) -> None:
            if progressed.take(PlanProgress.of(profile, step)):
                news.set()

        noting = asyncio.create_task(self._note(begun, progressed, news))
        try:
            outcome = await self._outcome(begun, report)
        except asyncio.CancelledError:
            if self._stopping:
                await asyncio.shield(self._give_back(begun))
            raise
        finally:
            noting.cancel()
            await asyncio.gather(noting, return_exceptions=True)
        await self._end(begun, outcome, monotonic() - began)

    async def _outcome(self, begun: rows.Begun, report: Any) -> Outcome:
        try:
            return await self._work.do(begun.new, report)
        except StorageError:
            raise
        except Exception:
            _log.exception("the job %s failed", begun.id)
            return self._work.lost(begun.new)

    async def _end(self, begun: rows.Begun, outcome: Outcome, seconds: float) -> None:
        async with (
            self._looking() as connection
        ):  # one statement, and most accounts have no other job in line
            in_line = await rows.end(connection, begun, outcome, seconds, self._bounds)
        if in_line:
            async with self._writing() as connection:
                await rows.queue_next(connection, begun.new.account)

    async def _give_back(self, begun: rows.Begun) -> None:
        with suppress(StorageError):  # else it is another's once nobody has heard of this worker for a while
            async with self._writing() as connection:
                await rows.give_back(connection, begun)

    async def _note(self, begun: rows.Begun, progressed: Progressed, news: asyncio.Event) -> None:
        while True:
            await news.wait()
            news.clear()
            with suppress(StorageError):
                async with self._looking() as connection:
                    await rows.note(connection, begun, tuple(progressed.profiles.values()))
            await asyncio.sleep(_NOTED)

    async def _look_after(self) -> None:
        """Find what was lost, and let go of what was kept long enough."""
        while True:
            try:
                async with self._writing() as connection:
                    await keeping.find_strays(connection)
                async with self._writing() as connection:
                    await keeping.tidy(connection, self._bounds)
            except StorageError as away:
                _log.warning("jobs: not looked after: %s", away)
            except Exception:
                _log.exception("jobs: not looked after")
            await asyncio.sleep(_LOOKED_AFTER)
