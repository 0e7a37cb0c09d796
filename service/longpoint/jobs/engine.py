"""The one interface of jobs; `here.py` works in this process, `queued.py` over PostgreSQL on any number of machines."""

from __future__ import annotations

import asyncio
from abc import ABC, abstractmethod
from time import monotonic

from longpoint.jobs.job import Job, Line, NewJob, Outcome
from longpoint.schedules.errors import StorageError


class TooMany(Exception):  # noqa: N818 - it is what there is, and no mistake
    """There are as many jobs as there may be.

    Args:
        own: Whether they are the account's own, and not those of all.
        seconds: After which there is a place, by how long the latest took.
    """

    def __init__(self, *, own: bool, seconds: float) -> None:
        super().__init__("too many jobs")
        self.own, self.seconds = own, seconds


class Jobs(ABC):
    """The jobs of all accounts. A job is found by its account and id alone: there is none under another account's."""

    @abstractmethod
    async def start(self) -> None:
        """Begin to work, where this process does."""

    @abstractmethod
    async def close(self, within: float = 0) -> None:
        """End; what is under way may finish within so many seconds, and is given back then, where it can be."""

    @abstractmethod
    async def ask(self, new: NewJob) -> Job:
        """The job of this work: the one under way or kept, else a new one.

        Raises:
            TooMany: when there are as many as there may be.
        """

    @abstractmethod
    async def find(self, account: str, id: str) -> Job | None:
        """A job as it stands."""

    @abstractmethod
    async def outcome(self, account: str, id: str) -> Outcome | None:
        """What came of a job; None where nothing did, or it has gone."""

    @abstractmethod
    async def cancel(self, account: str, id: str) -> Job | None:
        """End a job that is not ended; gives it as it then stands."""

    @abstractmethod
    async def line(self, job: Job) -> Line:
        """What a job has before it."""

    @abstractmethod
    async def stir(self, id: str, seconds: float, *, end: bool = False) -> None:
        """Wait until something may have become of a job, or so many seconds; or only until it may have ended."""

    async def changed(self, job: Job, seconds: float) -> Job | None:
        """The job once it has changed, or as it is after so many seconds; None when it is gone altogether."""
        deadline = monotonic() + seconds
        now: Job | None = job
        while now is not None and now.step <= job.step and (left := deadline - monotonic()) > 0:
            await self.stir(job.id, min(left, 1.0))  # a message can be lost with the connection it came by
            now = await self._found(job)
        return now

    async def _found(self, job: Job) -> Job | None:
        """The job as it stands, or as it was while the database is away: it is there again when the job is."""
        try:
            return await self.find(job.account, job.id)
        except StorageError:
            return job

    async def ended(self, job: Job, seconds: float) -> Job | None:
        """The job once it has ended, or as it is after so many seconds; None when it is gone altogether."""
        deadline = monotonic() + seconds
        now = await self._found(job)
        while now is not None and not now.ended and (left := deadline - monotonic()) > 0:
            await self.stir(job.id, min(left, 1.0), end=True)
            now = await self._found(job)
        return now


class Bells:
    """Wakes those who wait for a job: any change of it, or its end alone."""

    def __init__(self) -> None:
        self._waiting: dict[str, dict[asyncio.Future[None], bool]] = {}

    def ring(self, id: str, *, end: bool) -> None:
        """Wake those who wait for this one."""
        for one, for_end in self._waiting.get(id, {}).items():
            if (end or not for_end) and not one.done():
                one.set_result(None)

    async def wait(self, id: str, seconds: float, *, end: bool) -> None:
        """Wait until it rings, or so long."""
        bell: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        own = self._waiting.setdefault(id, {})
        own[bell] = end
        try:
            await asyncio.wait((bell,), timeout=seconds)
        finally:
            del own[bell]
            if not own:
                self._waiting.pop(id, None)
