"""Jobs over PostgreSQL: asked for at any replica, worked on by any worker that reaches the database.

PgQueuer hands them out. Its table knows only which job; whose it is, what came of it and what waits behind it stands
in our own, in the same transactions.
"""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Awaitable, Callable
from contextlib import suppress
from typing import Any

import asyncpg
from pgqueuer.adapters.drivers.asyncpg import AsyncpgDriver
from pgqueuer.adapters.persistence.queries import Queries
from pgqueuer.domain.types import JobId

from longpoint.jobs import keeping, rows
from longpoint.jobs.engine import Bells, Jobs, TooMany
from longpoint.jobs.job import Bounds, Doer, Job, Line, NewJob, Outcome
from longpoint.jobs.worker import Worker
from longpoint.schedules.store import Store

_log = logging.getLogger("longpoint.jobs")
AGAIN = 1.0
"""Seconds after which a lost database is looked for again."""
_ENDING = 3.0
"""Seconds in which a worker that was stopped has said what became of its jobs."""
_AWAY = (OSError, asyncpg.PostgresError, asyncpg.InterfaceError)


class JobsQueued(Jobs):
    """Args:
    store: The database.
    bounds: How much there may be.
    work: What does it in this process; None where others work.
    """

    def __init__(self, store: Store, bounds: Bounds, work: Doer | None) -> None:
        self._store = store
        self._bounds = bounds
        self._worker = None if work is None else Worker(store, bounds, work)
        self._bells = Bells()
        self._tasks: list[asyncio.Task[None]] = []

    async def start(self) -> None:
        self._tasks.append(asyncio.create_task(self._listen()))
        if self._worker is not None:
            self._tasks.append(
                asyncio.create_task(again_and_again(self._worker.run, self._worker.is_stopped))
            )

    async def close(self, within: float = 0) -> None:
        if self._worker is not None:
            await self._worker.stop(within)
            if self._tasks:
                await asyncio.wait(self._tasks[1:], timeout=_ENDING)
        for task in self._tasks:
            task.cancel()
        await asyncio.gather(*self._tasks, return_exceptions=True)

    async def ask(self, new: NewJob) -> Job:
        async with self._store.writing() as connection:
            await rows.hold(connection, new.account)
            found = await rows.look(connection, new)
            if found.same is not None:
                known = await rows.find(connection, new.account, found.same)
                assert known is not None
                return known
            if found.own >= self._bounds.per_account or found.all >= self._bounds.in_all:
                took, working = await keeping.each(connection)
                seconds = (took or 1.0) / max(1, working)
                raise TooMany(own=found.own >= self._bounds.per_account, seconds=seconds)
            job = await rows.add(connection, new, found.own)
        if found.own >= rows.NEXT:
            async with self._store.writing() as connection:  # those before it may have ended meanwhile
                await rows.queue_next(connection, new.account)
        return job

    async def find(self, account: str, id: str) -> Job | None:
        async with self._store.looking() as connection:
            return await rows.find(connection, account, id)

    async def outcome(self, account: str, id: str) -> Outcome | None:
        async with self._store.looking() as connection:
            return await rows.outcome(connection, account, id)

    async def cancel(self, account: str, id: str) -> Job | None:
        async with self._store.writing() as connection:
            number = await rows.cancel(connection, account, id, self._bounds)
            if number is not None:
                raw: Any = (await connection.get_raw_connection()).driver_connection
                queries = Queries(AsyncpgDriver(raw))
                await queries.mark_job_as_cancelled([JobId(number)])
            return await rows.find(connection, account, id)

    async def line(self, job: Job) -> Line:
        async with self._store.looking() as connection:
            return await keeping.line(connection, job)

    async def stir(self, id: str, seconds: float, *, end: bool = False) -> None:
        await self._bells.wait(id, seconds, end=end)

    def _hear(self, said: str) -> None:
        self._bells.ring(said.removesuffix(rows.ENDED), end=said.endswith(rows.ENDED))

    async def _listen(self) -> None:
        """Hear which jobs have changed; while the database is away, those who wait look for themselves."""

        async def listen() -> None:
            connection = await connect(self._store)
            try:
                lost = asyncio.Event()
                connection.add_termination_listener(lambda _: lost.set())
                await connection.add_listener(rows.CHANNEL, lambda *said: self._hear(str(said[3])))
                await lost.wait()
            finally:
                connection.terminate()

        await again_and_again(listen)


async def connect(store: Store) -> Any:
    """A connection of its own, to listen on or to work by."""
    address = store.url.set(drivername="postgresql").render_as_string(hide_password=False)
    return await asyncpg.connect(address, timeout=5, server_settings={"application_name": "longpoint jobs"})


async def again_and_again(
    work: Callable[[], Awaitable[None]], over: Callable[[], bool] = lambda: False
) -> None:
    """Begin anew whenever the database was lost, until it is over or cancelled."""
    while not over():
        with suppress(asyncio.TimeoutError):
            try:
                await work()
            except _AWAY as failure:
                _log.warning("jobs: the database is away: %s", failure)
            except Exception:
                _log.exception("jobs: begun anew")
        if not over():
            await asyncio.sleep(AGAIN)
