"""What is looked after in the table of jobs now and then: the line, strays, and what is kept too long."""

from __future__ import annotations

from sqlalchemy import bindparam, delete, func, null, or_, select, text, update
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.jobs.job import Bounds, Job, Line, State
from longpoint.jobs.rows import hold, queue_next
from longpoint.jobs.tables import JOB
from longpoint.schedules.basics import moment

_REMEMBERED = 86_400.0
"""Seconds for which a job is known whose result has gone."""
_LATEST = 50
_BEFORE = select(func.count()).where(
    JOB.c.state == State.WAITING,
    or_(JOB.c.account == bindparam("own"), JOB.c.queued.is_not(None)),
    JOB.c.id < bindparam("job"),
)
_WORKING = select(func.count()).where(JOB.c.state == State.WORKING)
_TOOK = select(
    func.avg(
        select(JOB.c.seconds)
        .where(JOB.c.seconds.is_not(None))
        .order_by(JOB.c.ended_at.desc())
        .limit(_LATEST)
        .subquery()
        .c.seconds
    )
)
_STRAYS = text(
    "SELECT account, id, queued FROM job WHERE state IN ('waiting', 'working') AND queued IS NOT NULL"
    " AND NOT EXISTS (SELECT FROM pgqueuer WHERE pgqueuer.id = job.queued)"
    " ORDER BY account LIMIT 100"
)
_LEFT_BEHIND = text(
    "SELECT DISTINCT account FROM job AS one WHERE state = 'waiting' AND queued IS NULL AND NOT EXISTS"
    " (SELECT FROM job AS other WHERE other.account = one.account AND other.queued IS NOT NULL"
    " AND other.state IN ('waiting', 'working')) ORDER BY account LIMIT 100"
)
_LET_GO = (
    update(JOB)
    .where(JOB.c.ended_at.is_not(None), JOB.c.expires_at < bindparam("now"), JOB.c.body.is_not(None))
    .values(body=None, digest=None)
)
_TOO_MUCH = text(
    "UPDATE job SET body = NULL, digest = NULL FROM (SELECT id, sum(octet_length(body)) OVER"
    " (PARTITION BY account ORDER BY ended_at DESC, id DESC) AS size, octet_length(body) AS own FROM job"
    " WHERE body IS NOT NULL) AS kept WHERE job.id = kept.id AND kept.size > :most AND kept.size > kept.own"
)
_FORGET = delete(JOB).where(JOB.c.ended_at.is_not(None), JOB.c.expires_at < bindparam("long_ago"))
_LOG = text("DELETE FROM pgqueuer_log WHERE created < now() - interval '1 hour'")
_STATISTICS = text("DELETE FROM pgqueuer_statistics WHERE created < now() - interval '1 day'")


async def each(connection: AsyncConnection) -> tuple[float | None, int]:
    """Seconds that one of the latest jobs took, None where there was none; and how many are worked on."""
    took: float | None = (await connection.execute(_TOOK)).scalar_one()
    working = (await connection.execute(_WORKING)).scalar_one()
    return took, working


async def line(connection: AsyncConnection, job: Job) -> Line:
    """What a job has before it."""
    ahead = 0
    if job.state == State.WAITING:
        ahead = (await connection.execute(_BEFORE, {"own": job.account, "job": job.id})).scalar_one()
    took, working = await each(connection)
    return Line(ahead, None if took is None else round(took * (ahead / max(1, working) + 1), 1))


async def find_strays(connection: AsyncConnection) -> None:
    """Queue again what the queue has lost, which its worker took and could not end."""
    for account, id, lost in list(await connection.execute(_STRAYS)):
        await hold(connection, account)
        own = update(JOB).where(
            JOB.c.id == id, JOB.c.queued == lost, JOB.c.state.in_((State.WAITING, State.WORKING))
        )
        await connection.execute(own.values(state=State.WAITING, queued=null(), step=JOB.c.step + 1))
        await queue_next(connection, account)
    for account in list((await connection.execute(_LEFT_BEHIND)).scalars()):
        await queue_next(connection, account)


async def tidy(connection: AsyncConnection, bounds: Bounds) -> None:
    """Let go of what was kept long enough, or is too much."""
    await connection.execute(_LET_GO, {"now": moment()})
    await connection.execute(_TOO_MUCH, {"most": bounds.kept_bytes})
    await connection.execute(_FORGET, {"long_ago": moment(-_REMEMBERED)})
    await connection.execute(_LOG)
    await connection.execute(_STATISTICS)
