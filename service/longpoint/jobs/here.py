"""Jobs of this process: for SQLite, and for a service that only computes. They end with it."""

from __future__ import annotations

import asyncio
import logging
from collections import Counter, deque
from time import monotonic

from msgspec.structs import replace

from longpoint.jobs.engine import Bells, Jobs, TooMany
from longpoint.jobs.job import Bounds, Doer, Job, Line, NewJob, Outcome, PlanProgress, Progressed, State
from longpoint.schedules.basics import moment, new_id
from longpoint.stock import Progress

_log = logging.getLogger("longpoint.jobs")
_MOST_ENDED = 5000
"""Jobs that ended and are kept, of all accounts."""
_KNOWN_GONE = 1000
"""Jobs without a result that are remembered, to say that it has gone."""


class _Held:
    """A job, its work, and what came of it."""

    def __init__(self, new: NewJob) -> None:
        id = new_id()
        self.new = new
        self.job = Job.new(id, new, moment())
        self.progressed = Progressed()
        self.outcome: Outcome | None = None
        self.ended = 0.0
        self.task: asyncio.Task[None] | None = None


class JobsHere(Jobs):
    """Accounts take turns: one that asks for much does not keep another's first job waiting.

    Args:
        work: What does it.
        bounds: How much there may be.
    """

    def __init__(self, work: Doer, bounds: Bounds) -> None:
        self._work = work
        self._bounds = bounds
        self._held: dict[str, _Held] = {}
        self._ended: deque[_Held] = deque()
        self._gone: deque[_Held] = deque()
        self._same: dict[tuple[str, str], str] = {}
        self._waiting: dict[str, deque[_Held]] = {}
        self._under_way: set[_Held] = set()
        self._took: deque[float] = deque(maxlen=50)
        self._bells = Bells()

    async def start(self) -> None:
        """It begins with the first job."""

    async def close(self, within: float = 0) -> None:
        """End: what is under way may finish, the rest is over."""
        self._waiting.clear()
        tasks = [held.task for held in self._under_way if held.task]
        if tasks and within:
            await asyncio.wait(tasks, timeout=within)
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)

    async def ask(self, new: NewJob) -> Job:
        self._sweep()
        known = self._same.get((new.account, new.digest))
        if known is not None:
            return self._held[known].job
        own = sum(held.new.account == new.account for held in self._under_way)
        own += len(self._waiting.get(new.account, ()))
        if own >= self._bounds.per_account or self._count() >= self._bounds.in_all:
            seconds = self._each() / self._bounds.at_once
            raise TooMany(own=own >= self._bounds.per_account, seconds=seconds)
        held = _Held(new)
        self._held[held.job.id] = held
        self._same[new.account, new.digest] = held.job.id
        self._waiting.setdefault(new.account, deque()).append(held)
        self._begin()
        return held.job

    async def find(self, account: str, id: str) -> Job | None:
        self._sweep()
        held = self._of(account, id)
        return None if held is None else held.job

    async def outcome(self, account: str, id: str) -> Outcome | None:
        held = self._of(account, id)
        return None if held is None else held.outcome

    async def cancel(self, account: str, id: str) -> Job | None:
        held = self._of(account, id)
        if held is None or held.job.ended:
            return None if held is None else held.job
        line = self._waiting.get(account, deque())
        if held in line:
            line.remove(held)
        self._end(held, State.CANCELLED, None)
        if held.task is not None:
            held.task.cancel()
        return held.job

    async def line(self, job: Job) -> Line:
        ahead = 0
        if job.state == State.WAITING:
            own = [held.job.id for held in self._waiting.get(job.account, ())]
            place = own.index(job.id) if job.id in own else 0
            ahead = place + sum(
                min(len(line), place + 1) for other, line in self._waiting.items() if other != job.account
            )
        if not self._took:
            return Line(ahead, None)
        return Line(ahead, round(self._each() * (ahead / self._bounds.at_once + 1), 1))

    async def stir(self, id: str, seconds: float, *, end: bool = False) -> None:
        await self._bells.wait(id, seconds, end=end)

    def _of(self, account: str, id: str) -> _Held | None:
        held = self._held.get(id)
        return held if held is not None and held.new.account == account else None

    def _count(self) -> int:
        return len(self._under_way) + sum(map(len, self._waiting.values()))

    def _each(self) -> float:
        """Seconds that a job takes, by the latest."""
        return sum(self._took) / len(self._took) if self._took else 1.0

    def _begin(self) -> None:
        while self._waiting and len(self._under_way) < self._bounds.at_once:
            busy = Counter(held.new.account for held in self._under_way)
            account = min(self._waiting, key=busy.__getitem__)  # of equals the one that waited longest
            line = self._waiting.pop(account)
            if not line:
                continue
            held = line.popleft()
            if line:
                self._waiting[account] = line
            self._under_way.add(held)
            held.task = asyncio.create_task(self._do(held))

    async def _do(self, held: _Held) -> None:
        began = monotonic()
        self._change(held, state=State.WORKING, tries=1, started_at=moment())

        def report(profile: str, step: Progress) -> None:
            if held.progressed.take(PlanProgress.of(profile, step)) and not held.job.ended:
                self._change(held, progress=tuple(held.progressed.profiles.values()))

        try:
            try:
                outcome = await self._work.do(held.new, report)
            except Exception:
                _log.exception("the job %s failed", held.job.id)
                outcome = self._work.lost(held.new)
            if not held.job.ended:
                self._took.append(monotonic() - began)
                self._end(held, State.DONE if outcome.status < 400 else State.FAILED, outcome)
        finally:
            self._under_way.discard(held)
            self._begin()

    def _end(self, held: _Held, state: State, outcome: Outcome | None) -> None:
        held.outcome, held.ended = outcome, monotonic()
        if state is not State.DONE:  # asked for again, it is tried again
            self._forget_same(held)
        held.new = replace(held.new, work=b"")
        self._ended.append(held)
        status = None if outcome is None else outcome.status
        expires = moment(self._bounds.kept_seconds)
        self._change(held, state=state, ended_at=moment(), expires_at=expires, status=status)
        self._trim(held.new.account)

    def _change(self, held: _Held, **values: object) -> None:
        held.job = replace(held.job, step=held.job.step + 1, **values)
        self._bells.ring(held.job.id, end=held.job.ended)

    def _trim(self, account: str) -> None:
        """Let an account's oldest results go where there are too many bytes of them."""
        own = [held for held in self._ended if held.outcome and held.new.account == account]
        size = sum(len(held.outcome.body) for held in own if held.outcome)
        for held in own[:-1]:
            if size <= self._bounds.kept_bytes:
                break
            size -= len(held.outcome.body) if held.outcome else 0
            self._let_go(held)

    def _sweep(self) -> None:
        """Let go what was kept long enough, or is the oldest of too many, and forget it some time after."""
        oldest = monotonic() - self._bounds.kept_seconds
        while self._ended and (self._ended[0].ended < oldest or len(self._ended) > _MOST_ENDED):
            held = self._ended.popleft()
            self._let_go(held)
            self._gone.append(held)
        while len(self._gone) > _KNOWN_GONE:
            del self._held[self._gone.popleft().job.id]

    def _let_go(self, held: _Held) -> None:
        held.outcome = None
        held.job = replace(held.job, gone=True)
        self._forget_same(held)

    def _forget_same(self, held: _Held) -> None:
        own = held.new.account, held.new.digest
        if self._same.get(own) == held.job.id:
            del self._same[own]
