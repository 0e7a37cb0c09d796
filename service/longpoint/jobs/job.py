"""What a job is: work that somebody asked for, how far it has come, and what came of it."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from enum import StrEnum

import msgspec

from longpoint.stock import Progress
from longpoint.values import Cents, Value


class State(StrEnum):
    """Where a job stands."""

    WAITING = "waiting"
    WORKING = "working"
    DONE = "done"
    FAILED = "failed"
    CANCELLED = "cancelled"


ENDED = frozenset({State.DONE, State.FAILED, State.CANCELLED})


class PlanProgress(Value, frozen=True):
    """How far the search for one profile's sticks has come.

    Attributes:
        profile: Whose sticks.
        cost: Of the best plan so far.
        bound: No plan costs less.
        gap: How far the cost may be from the cheapest, as a share of it.
        seconds: Since the search began.
    """

    profile: str
    cost: Cents
    bound: Cents
    gap: float
    seconds: float

    @classmethod
    def of(cls, profile: str, step: Progress) -> PlanProgress:
        """The step of a profile's search."""
        cost, bound = Cents(step.cost_cents), Cents(step.bound_cents)
        return cls(profile, cost, bound, step.gap, round(step.seconds, 3))


class Progressed(msgspec.Struct):
    """How far a job has come, by profile; what is known does not get worse when the work is done a second time."""

    profiles: dict[str, PlanProgress] = {}

    def take(self, new: PlanProgress) -> bool:
        """Take a step; False where it says nothing that is not known."""
        known = self.profiles.get(new.profile)
        if known is not None and new.cost >= known.cost and new.bound <= known.bound:
            return False
        if known is not None:
            cost, bound = min(known.cost, new.cost), max(known.bound, new.bound)
            gap = min(known.gap, new.gap)
            new = PlanProgress(new.profile, cost, bound, gap, max(known.seconds, new.seconds))
        self.profiles[new.profile] = new
        return True


class NewJob(msgspec.Struct, frozen=True):
    """A job that is asked for.

    Attributes:
        account: Whose it is.
        kind: What is to be done, by a name that the workers know.
        digest: Of all that the result follows from: the same work asked for again is the same job.
        work: What is to be done, in the kind's own form.
    """

    account: str
    kind: str
    digest: str
    work: bytes


class Outcome(msgspec.Struct, frozen=True):
    """What came of a job: an answer as it goes to the caller.

    Attributes:
        status: Of the answer; 400 and above is a problem.
        media_type: Of its body.
        headers: Further fields of it.
        body: Its bytes.
    """

    status: int
    media_type: str
    headers: dict[str, str]
    body: bytes


class JobSeen(Value, frozen=True, kw_only=True):
    """Long work that was asked for: where it stands, and how far it has come.

    Attributes:
        id: The name it has, with which its address ends.
        operation: What is done, by the id that this document gives it.
        state: Where it stands.
        tries: How often it was begun; its third worker that is lost is the last.
        progress: The latest of each profile whose sticks are searched; it never gets worse.
        created_at: When it was asked for, in UTC.
        started_at: When it was last begun.
        ended_at: When it ended.
        expires_at: When its result goes; a plan that was made stays with its schedule.
    """

    id: str
    operation: str
    state: State
    tries: int
    progress: tuple[PlanProgress, ...] = ()
    created_at: str
    started_at: str | None = None
    ended_at: str | None = None
    expires_at: str | None = None


class Job(JobSeen, frozen=True, kw_only=True):
    """A job as it stands.

    Attributes:
        account: Whose it is.
        step: How often it has changed: its events are numbered by this.
        gone: Whether its result has gone.
        status: Of what came of it.
    """

    account: str
    step: int
    gone: bool = False
    status: int | None = None

    @classmethod
    def new(cls, id: str, asked: NewJob, at: str) -> Job:
        """One that was just asked for."""
        return cls(
            id=id,
            account=asked.account,
            operation=asked.kind,
            state=State.WAITING,
            step=1,
            tries=0,
            created_at=at,
        )

    @property
    def ended(self) -> bool:
        """Whether nothing more becomes of it."""
        return self.state in ENDED


class Line(msgspec.Struct, frozen=True):
    """What a job has before it.

    Attributes:
        ahead: Jobs that are begun before it.
        seconds: In which it will be done, by how long the latest took; None where none has ended yet.
    """

    ahead: int
    seconds: float | None


class Bounds(msgspec.Struct, frozen=True):
    """How much there may be.

    Attributes:
        at_once: Jobs that one process works on at a time.
        per_account: Jobs of an account, waiting and under way.
        in_all: Jobs of all.
        kept_seconds: How long a result is kept.
        kept_bytes: Bytes of an account's results that are kept; the oldest go first.
    """

    at_once: int = 2
    per_account: int = 50
    in_all: int = 1000
    kept_seconds: float = 3600
    kept_bytes: int = 256 * 1024 * 1024


MOST_TRIES = 3
"""How often a job is begun whose worker was lost."""
Report = Callable[[str, Progress], None]
"""Hears of each step of a search: the profile it is of, and how far it has come."""
Do = Callable[[NewJob, Report], Awaitable[Outcome]]
"""Does the work; a refusal is an outcome as well. What it raises is a fault of the service."""
Lost = Callable[[NewJob], Outcome]
"""What is answered for a job that could not be done."""


class Doer(msgspec.Struct, frozen=True):
    """What knows how to work.

    Attributes:
        do: Does a job.
        lost: Says of a job that it failed each time.
    """

    do: Do
    lost: Lost
