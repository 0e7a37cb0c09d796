"""The table of jobs, read and written. Whoever changes what an account has waiting holds the account meanwhile."""

from __future__ import annotations

from typing import Any

import msgspec
from pgqueuer.adapters.drivers.asyncpg import AsyncpgDriver
from pgqueuer.adapters.persistence.queries import Queries
from sqlalchemy import Boolean, bindparam, case, func, insert, null, select, text, update
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.jobs.job import Bounds, Job, NewJob, Outcome, PlanProgress, State
from longpoint.jobs.tables import JOB
from longpoint.schedules.basics import moment, new_id
from longpoint.values import Cents

CHANNEL = "longpoint_job"
"""On which the id of a job is said that has changed."""
ENDED = " ended"
"""Said after the id of one that has ended."""
ENTRY = "longpoint"
"""What the jobs of this service are called in the queue."""
NEXT = 2
"""Jobs of an account that are in the queue or under way; the others wait for these."""
_FIRST, _LATER = 10, 0
"""Priorities: the only job of an account goes before what others have more of."""
_OPEN = (State.WAITING, State.WORKING)
_SEEN = [
    JOB.c[name] for name in ("id", "account", "kind", "state", "step", "tries", "progress", "created_at")
]
_SEEN += [JOB.c[name] for name in ("started_at", "ended_at", "expires_at", "status")]
_GONE = (JOB.c.status.is_not(None) & JOB.c.body.is_(None)).label("gone")
_OTHER = JOB.alias()
_encode = msgspec.json.Encoder().encode
_read_progress = msgspec.json.Decoder(list[tuple[str, int, int, float, float]]).decode
_STEP = {"step": JOB.c.step + 1}
_RUNG = func.pg_notify(CHANNEL, JOB.c.id)
_SOON = func.set_config("synchronous_commit", "off", True)
"""What was only begun, or noted, is begun again where the server dies: it need not wait for the disk."""


def _job(row: Any) -> Job:
    values = dict(row._mapping)
    values["operation"] = values.pop("kind")
    values["state"] = State(values["state"])
    values["progress"] = tuple(progress_of(values["progress"]))
    return Job(**values)


def progress_of(written: str) -> list[PlanProgress]:
    """The progress of a row."""
    return [
        PlanProgress(profile, Cents(cost), Cents(bound), gap, seconds)
        for profile, cost, bound, gap, seconds in _read_progress(written)
    ]


def progress_written(progress: tuple[PlanProgress, ...]) -> str:
    """The progress for a row."""
    steps = [(one.profile, int(one.cost), int(one.bound), one.gap, one.seconds) for one in progress]
    return _encode(steps).decode()


_HOLD = text("SELECT pg_advisory_xact_lock(hashtextextended('longpoint job ' || :account, 0))")
_FIND = select(*_SEEN, _GONE).where(JOB.c.account == bindparam("own"), JOB.c.id == bindparam("job"))
_COUNTS = select(
    func.count(),
    func.count().filter(JOB.c.account == bindparam("own")),
    select(JOB.c.id)
    .where(JOB.c.account == bindparam("own"), JOB.c.digest == bindparam("same"))
    .scalar_subquery(),
).where(JOB.c.state.in_(_OPEN))
_INSERT = insert(JOB)


async def hold(connection: AsyncConnection, account: str) -> None:
    """Let no one else change what this account has waiting until the transaction ends."""
    await connection.execute(_HOLD, {"account": account})


async def find(connection: AsyncConnection, account: str, id: str) -> Job | None:
    """A job as it stands."""
    row = (await connection.execute(_FIND, {"own": account, "job": id})).one_or_none()
    return None if row is None else _job(row)


class Found(msgspec.Struct, frozen=True):
    """What there is where a job is asked for: how many that are not ended, and the one of this work."""

    all: int
    own: int
    same: str | None


async def look(connection: AsyncConnection, new: NewJob) -> Found:
    """Jobs that are not ended, of all and of the account, and the id of this work's that is under way or kept."""
    all, own, same = (await connection.execute(_COUNTS, {"own": new.account, "same": new.digest})).one()
    return Found(all, own, same)


async def add(connection: AsyncConnection, new: NewJob, own: int) -> Job:
    """A new job of an account that has so many others: in the queue, or in line behind those."""
    job = Job.new(new_id(), new, moment())
    row: dict[str, Any] = {"id": job.id, "account": job.account, "kind": new.kind, "digest": new.digest}
    row |= {"work": new.work, "state": job.state, "step": 1, "tries": 0, "progress": "[]"}
    row |= {"created_at": job.created_at, "queued": None}
    if own < NEXT:
        row["queued"] = await _enqueue(connection, job.id, _LATER if own else _FIRST)
    await connection.execute(_INSERT, row)
    return job


_QUEUED = (
    select(func.count())
    .where(JOB.c.account == bindparam("own"), JOB.c.state.in_(_OPEN), JOB.c.queued.is_not(None))
    .scalar_subquery()
)
_WAITING = (
    select(JOB.c.id, _QUEUED.label("busy"))
    .where(JOB.c.account == bindparam("own"), JOB.c.state == State.WAITING, JOB.c.queued.is_(None))
    .order_by(JOB.c.id)
    .limit(NEXT)
)
_NUMBER = update(JOB).where(JOB.c.id == bindparam("job")).values(queued=bindparam("number"))


async def queue_next(connection: AsyncConnection, account: str) -> None:
    """Put an account's next jobs into the queue, and hold the account until the transaction ends."""
    await hold(connection, account)
    for at, (id, busy) in enumerate((await connection.execute(_WAITING, {"own": account})).all()):
        if busy + at < NEXT:
            number = await _enqueue(connection, id, _LATER if busy + at else _FIRST)
            await connection.execute(_NUMBER, {"job": id, "number": number})


async def _enqueue(connection: AsyncConnection, id: str, priority: int) -> int:
    """Put a job into the queue, in the transaction that is open; gives its number there."""
    raw = (await connection.get_raw_connection()).driver_connection
    assert raw is not None
    (number,) = await Queries(AsyncpgDriver(raw)).enqueue(ENTRY, id.encode(), priority)
    return number


_BEGIN = (
    update(JOB)
    .where(JOB.c.id == bindparam("job"), JOB.c.state.in_(_OPEN))
    .values(
        state=State.WORKING,
        tries=JOB.c.tries + 1,
        started_at=bindparam("now"),
        **_STEP,
    )
    .returning(JOB.c.account, JOB.c.kind, JOB.c.digest, JOB.c.work, JOB.c.tries, JOB.c.progress, _RUNG, _SOON)
)
_PROGRESS = (
    update(JOB)
    .where(JOB.c.id == bindparam("job"), JOB.c.state == State.WORKING, JOB.c.tries == bindparam("tried"))
    .values(progress=bindparam("said"), **_STEP)
    .returning(_RUNG, _SOON)
)
_IN_LINE = select(_OTHER.c.account).where(
    _OTHER.c.account == JOB.c.account, _OTHER.c.state == State.WAITING, _OTHER.c.queued.is_(None)
)
_END = (
    update(JOB)
    .where(JOB.c.id == bindparam("job"), JOB.c.state.in_(_OPEN), JOB.c.tries == bindparam("tried"))
    .values(
        state=bindparam("ended"),
        digest=case((bindparam("again", type_=Boolean()), null()), else_=JOB.c.digest),
        work=b"",
        ended_at=bindparam("now"),
        expires_at=bindparam("until"),
        seconds=bindparam("took"),
        status=bindparam("code"),
        media_type=bindparam("media"),
        headers=bindparam("fields"),
        body=bindparam("bytes"),
        **_STEP,
    )
    .returning(func.pg_notify(CHANNEL, JOB.c.id + ENDED), JOB.c.account.in_(_IN_LINE).label("in_line"))
)
_TRIES = (
    select(JOB.c.tries, JOB.c.queued)
    .where(JOB.c.account == bindparam("own"), JOB.c.id == bindparam("job"))
    .with_for_update()
)
_BACK = (
    update(JOB)
    .where(JOB.c.id == bindparam("job"), JOB.c.state == State.WORKING, JOB.c.tries == bindparam("tried"))
    .values(state=State.WAITING, tries=JOB.c.tries - 1, queued=None, **_STEP)
    .returning(_RUNG)
)
_OUTCOME = select(JOB.c.status, JOB.c.media_type, JOB.c.headers, JOB.c.body).where(
    JOB.c.account == bindparam("own"), JOB.c.id == bindparam("job"), JOB.c.body.is_not(None)
)


class Begun(msgspec.Struct, frozen=True):
    """A job that was begun: the work, which try this is, and how far earlier ones had come."""

    id: str
    new: NewJob
    tried: int
    progress: list[PlanProgress]


async def begin(connection: AsyncConnection, id: str) -> Begun | None:
    """Begin a job; None where it has ended, or is no more."""
    row = (await connection.execute(_BEGIN, {"job": id, "now": moment()})).one_or_none()
    if row is None:
        return None
    new = NewJob(row.account, row.kind, row.digest or "", row.work)
    return Begun(id, new, row.tries, progress_of(row.progress))


async def note(connection: AsyncConnection, begun: Begun, progress: tuple[PlanProgress, ...]) -> None:
    """Note how far a job has come."""
    said = progress_written(progress)
    await connection.execute(_PROGRESS, {"job": begun.id, "tried": begun.tried, "said": said})


async def end(
    connection: AsyncConnection, begun: Begun, outcome: Outcome, seconds: float, bounds: Bounds
) -> bool:
    """Keep what came of a job, unless it was ended or begun again meanwhile.

    Returns:
        Whether the account has others in line, the next of which can be queued now.
    """
    state = State.DONE if outcome.status < 400 else State.FAILED
    values = _ended(begun.id, begun.tried, state, bounds) | {
        "took": seconds,
        "code": outcome.status,
        "media": outcome.media_type,
        "fields": _encode(outcome.headers).decode(),
        "bytes": outcome.body,
    }
    row = (await connection.execute(_END, values)).one_or_none()
    return row is not None and bool(row.in_line)


async def cancel(connection: AsyncConnection, account: str, id: str, bounds: Bounds) -> int | None:
    """End a job that nobody wants any more and queue the account's next; gives its number in the queue."""
    await hold(connection, account)
    row = (await connection.execute(_TRIES, {"own": account, "job": id})).one_or_none()
    if row is None:
        return None
    values = _ended(id, row.tries, State.CANCELLED, bounds)
    values |= dict.fromkeys(("took", "code", "media", "fields", "bytes"))
    found = (await connection.execute(_END, values)).one_or_none()
    if found is None:
        return None
    await queue_next(connection, account)
    number: int | None = row.queued
    return number


def _ended(id: str, tried: int, state: State, bounds: Bounds) -> dict[str, Any]:
    again = state is not State.DONE
    own = {"job": id, "tried": tried, "ended": state, "again": again}
    return {**own, "now": moment(), "until": moment(bounds.kept_seconds)}


async def give_back(connection: AsyncConnection, begun: Begun) -> None:
    """Have a job that was begun done by another; this was no try."""
    await hold(connection, begun.new.account)
    await connection.execute(_BACK, {"job": begun.id, "tried": begun.tried})
    await queue_next(connection, begun.new.account)


async def outcome(connection: AsyncConnection, account: str, id: str) -> Outcome | None:
    """What came of a job, where it is kept."""
    row = (await connection.execute(_OUTCOME, {"own": account, "job": id})).one_or_none()
    if row is None:
        return None
    fields = msgspec.json.decode(row.headers, type=dict[str, str])
    return Outcome(row.status, row.media_type, fields, row.body)
