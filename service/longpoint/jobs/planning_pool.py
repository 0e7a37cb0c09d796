"""A bounded pool of processes that plan cuttings; any of them can be killed in the middle of its work."""

from __future__ import annotations

import asyncio
import os
import subprocess
import sys
import weakref
from collections.abc import AsyncIterator, Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import asynccontextmanager
from contextvars import ContextVar
from pathlib import Path
from time import monotonic
from typing import Any, TypeVar

import longpoint
from longpoint.jobs.planning_worker import Outcome, Searched, Task, read, write
from longpoint.processes import environment
from longpoint.stock import KEEPING, Progress
from longpoint.values import Refusal

GRACE = 1.5  # seconds past its budget after which a process is taken to hang in the solver
PREPARING = 60.0  # seconds after which it is taken to hang before or after the search
Report = Callable[[int, Progress], None]
ReportOf = Callable[[tuple[str, Progress]], None]
Made = TypeVar("Made")


def _unheard(profile: str, step: Progress) -> None:
    """Nobody hears it."""


HEARD: ContextVar[Callable[[str, Progress], None]] = ContextVar("HEARD", default=_unheard)
"""Hears of each step of the searches of a job, besides whoever asked for the search."""


def in_a_job() -> bool:
    """Whether what is done is done for a job: it ends with that."""
    return HEARD.get() is not _unheard


class PlannersBusy(Exception):  # noqa: N818 - it is what the service is, and no mistake
    """Too many wait for a planning process already.

    Args:
        seconds: After which one of those under way is done.
    """

    def __init__(self, seconds: float) -> None:
        super().__init__(f"every planner is busy for {seconds:g} s")
        self.seconds = seconds


class PlanningPool:
    """Plans cuttings in other processes, so many at a time; they start when first needed.

    Args:
        processes: how many plan at once.
        waiting: how many may wait for one of them.
        busy: what is raised when more would.

    Attributes:
        idle: processes that wait for work.
        working: processes at work.
    """

    def __init__(
        self, processes: int, waiting: int, busy: Callable[[float], Exception] = PlannersBusy
    ) -> None:
        self._busy = busy
        self._free = processes
        self._most_waiting = waiting
        self._queue: list[asyncio.Future[None]] = []
        self.idle: list[_Worker] = []
        self.working: list[_Worker] = []
        self._processes = processes
        self._threads: ThreadPoolExecutor | None = None

    async def plan(self, tasks: tuple[Task, ...], seconds: float, report: Report) -> list[Outcome]:
        """The best plan of each cutting that was found in time, why there is none, or None when time ran out.

        Cancelling this kills the process that works on it.

        Raises:
            PlannersBusy: when too many wait already.
        """
        heard = HEARD.get()

        def told(at: int, step: Progress) -> None:
            heard(tasks[at][0].profile, step)
            report(at, step)

        async with self._worker(seconds) as worker:
            return await worker.plan(tasks, seconds, told)

    async def make(self, job: Searched[Made], seconds: float, report: ReportOf) -> Made | None:
        """What comes of a job and its search; None when its process hung or died. `report` hears of each profile.

        Cancelling this kills the process that works on it.

        Raises:
            Refusal: when it cannot be done.
            PlannersBusy: when too many wait already.
        """
        heard = HEARD.get()

        def told(step: tuple[str, Progress]) -> None:
            heard(*step)
            report(step)

        async with self._worker(seconds) as worker:
            made: Made | Refusal | None = await worker.make(job, seconds, told)
        if isinstance(made, Refusal):
            raise made
        return made

    @asynccontextmanager
    async def _worker(self, seconds: float) -> AsyncIterator[_Worker]:
        """A process for one caller, once it is its turn; it is ended when the caller goes away."""
        await self._take_turn(seconds)
        try:
            worker = self._ready()
            self.working.append(worker)
            try:
                yield worker
            except BaseException:
                worker.kill()
                raise
            finally:
                self.working.remove(worker)
            if worker.alive:
                self.idle.append(worker)
        finally:
            self._give_turn()

    def refuse_when_full(self, seconds: float) -> None:
        """Refuse now what `plan` would refuse.

        Raises:
            PlannersBusy: when too many wait already.
        """
        if not self._free and len(self._queue) >= self._most_waiting:
            raise self._busy(seconds + 1)

    async def close(self) -> None:
        """End the idle processes; those at work end with what they work for."""
        while self.idle:
            self.idle.pop().kill()
        if self._threads is not None:
            self._threads.shutdown(wait=False)
            self._threads = None

    def _reading_threads(self) -> ThreadPoolExecutor:
        """Made when first needed, so that an application that was shut down can be started again."""
        if self._threads is None:
            self._threads = ThreadPoolExecutor(self._processes, thread_name_prefix="planning")
        return self._threads

    def _ready(self) -> _Worker:
        while self.idle:
            worker = self.idle.pop()
            if worker.alive:
                return worker
        return _Worker(self._reading_threads())

    async def _take_turn(self, seconds: float) -> None:
        if self._free:
            self._free -= 1
            return
        self.refuse_when_full(seconds)
        turn = asyncio.get_running_loop().create_future()
        self._queue.append(turn)
        try:
            await turn
        except asyncio.CancelledError:
            if turn.done() and not turn.cancelled():
                self._give_turn()
            else:
                self._queue.remove(turn)
            raise

    def _give_turn(self) -> None:
        if self._queue:
            self._queue.pop(0).set_result(None)
        else:
            self._free += 1


class _Worker:
    """One process and the pipes to it, which are read in threads."""

    def __init__(self, threads: ThreadPoolExecutor) -> None:
        self._threads = threads
        env = environment()
        paths = [str(Path(longpoint.__file__).parents[1]), env.get("PYTHONPATH", "")]
        env["PYTHONPATH"] = os.pathsep.join(filter(None, paths))
        self._process = subprocess.Popen(
            [sys.executable, "-m", "longpoint.jobs.planning_worker"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env=env,
            start_new_session=True,
        )
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        self._in, self._out = self._process.stdin, self._process.stdout
        self._ready = False  # it says so once all it needs is loaded
        # Whoever forgets the pool must not leave the process behind.
        self._end = weakref.finalize(self, _end, self._process)

    @property
    def alive(self) -> bool:
        return self._end.alive and self._process.poll() is None

    def kill(self) -> None:
        self._end()

    async def plan(self, tasks: tuple[Task, ...], seconds: float, report: Report) -> list[Outcome]:
        outcomes: list[Outcome] = [None] * len(tasks)
        await self._send((list(tasks), seconds))
        within = _bound(seconds, any(standing for _, standing in tasks))
        async for kind, index, what in self._messages(within, until="done"):
            if kind == "progress":
                report(index, what)
            elif kind == "found":
                outcomes[index] = what
        return outcomes

    async def make(self, job: Searched[Made], seconds: float, report: ReportOf) -> Made | Refusal | None:
        await self._send((job, seconds))
        async for kind, _, what in self._messages(PREPARING, until="prepared"):
            if kind == "refusal":
                refused: Refusal = what
                return refused
            search = _bound(seconds, keeps=what)
            async for step, profile, progress in self._messages(search, until="searched"):
                if step == "progress":
                    report((profile, progress))
            async for _, _, made in self._messages(PREPARING, until="made"):
                found: Made | Refusal = made
                return found
        return None

    async def _send(self, message: Any) -> None:
        loop = asyncio.get_running_loop()
        if not self._ready:
            await loop.run_in_executor(self._threads, read, self._out)
            self._ready = True
        await loop.run_in_executor(self._threads, write, self._in, message)

    async def _messages(self, seconds: float, until: str) -> AsyncIterator[Any]:
        """What it sends up to a message of that kind, with that; the process ends when it takes longer."""
        loop = asyncio.get_running_loop()
        deadline = monotonic() + seconds
        kind = ""
        while kind not in (until, "refusal"):
            coming = loop.run_in_executor(self._threads, read, self._out)
            try:
                message = await asyncio.wait_for(coming, max(0.0, deadline - monotonic()))
            except (TimeoutError, EOFError):
                self.kill()
                return
            kind = message[0]
            yield message


def _bound(seconds: float, keeps: bool) -> float:
    """After how many seconds of a search a process is taken to hang."""
    return seconds + (KEEPING * seconds if keeps else 0.0) + GRACE


def _end(process: subprocess.Popen[bytes]) -> None:
    process.kill()
    process.wait()
    for pipe in (process.stdin, process.stdout):
        if pipe is not None:
            try:
                pipe.close()
            except (OSError, ValueError):  # a reader in another thread may still hold it
                continue
