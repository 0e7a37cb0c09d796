"""/v1/jobs/{id}: long work that was asked for to be answered later."""

from __future__ import annotations

from collections.abc import AsyncIterator
from typing import Annotated, Any

from litestar import delete, get
from litestar.params import PathParameter

from longpoint.api.answers.events import event, stream_of
from longpoint.api.document.links import JOB_LINKS
from longpoint.api.http.answer import Reply, encode
from longpoint.api.http.frame import RAW_HEADERS
from longpoint.api.http.negotiate import BOTH, CSV, EVENTS, HTML, JSON, PDF, SVG
from longpoint.api.http.operation import operation
from longpoint.api.http.problems import BadRequest, NotFound, Problem
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.job_answer import JobAnswer, job_answer
from longpoint.api.stored.later import outcome_reply
from longpoint.api.stored.storage import caller_of, clean
from longpoint.jobs.engine import Jobs
from longpoint.jobs.job import Job, Line, State
from longpoint.texts import say
from longpoint.values import Fault

_TAG = "Jobs"
_SILENT = 15.0
"""Seconds after which a stream says that it is still there."""
_STILL = b": still there\n\n"
JobId = Annotated[str, PathParameter(max_length=64, description="The id of a job.")]


class JobGone(Problem, status=410, title="The job's result has gone"):
    """Results are kept for a while only. Send the request again; a plan that was made is still its schedule's."""


def _jobs_of(request: AnyRequest, id: str) -> Jobs:
    jobs: Jobs | None = request.app.state.jobs
    if jobs is None:
        raise _unknown(id)
    return jobs


def _unknown(id: str) -> NotFound:
    return NotFound(say("problem", "job.unknown", id=id))


async def _found(request: AnyRequest, id: str) -> Job:
    job = await _jobs_of(request, id).find(caller_of(request).account_id, clean(id))
    if job is None:
        raise _unknown(id)
    return job


async def _answer(request: AnyRequest, job: Job) -> JobAnswer:
    jobs = _jobs_of(request, job.id)
    if job.state is State.FAILED:
        return job_answer(job, Line(0, None), await jobs.outcome(job.account, job.id))
    return job_answer(job, Line(0, None) if job.ended else await jobs.line(job), None)


@get(
    "/v1/jobs/{job_id:str}",
    **operation("get_job", summary="Read a job", tag=_TAG, links=JOB_LINKS),
)
async def get_job(request: AnyRequest, job_id: JobId) -> Reply[JobAnswer]:
    """Where long work stands that was asked for with `Prefer: respond-async`.

    A job ends as `done`, `failed` or `cancelled`. Its result is kept for a time and up to a size, then it is gone. A
    service that keeps schedules in SQLite, or none, forgets its jobs when it stops.
    """
    return Reply(await _answer(request, await _found(request, job_id)))


@get(
    "/v1/jobs/{job_id:str}/result",
    **operation(
        "get_job_result",
        summary="Fetch a job's result",
        tag=_TAG,
        offers=(*BOTH, HTML, PDF, CSV, SVG),
        problems=(410,),
    ),
)
async def get_job_result(request: AnyRequest, job_id: JobId) -> Any:
    """What the request would have been answered with, its status, fields and format; or its problem."""
    job = await _found(request, job_id)
    outcome = await _jobs_of(request, job_id).outcome(job.account, job.id)
    if outcome is not None:
        return outcome_reply(outcome, {})
    if job.gone:
        raise JobGone(say("problem", "job.gone", id=job_id, at=job.expires_at or ""))
    if job.ended:
        raise NotFound(say("problem", "job.is-cancelled", id=job_id))
    raise NotFound(say("problem", "job.is-unfinished", id=job_id))


@get(
    "/v1/jobs/{job_id:str}/events",
    **operation("get_job_events", summary="Follow a job", tag=_TAG, offers=(EVENTS,)),
)
async def get_job_events(request: AnyRequest, job_id: JobId) -> Reply[str]:
    """An event each time that something has become of it, the first at once: named by the job's state, with the job as
    it then stands. The stream ends with the job; with Last-Event-ID it goes on after that one.
    """
    job = await _found(request, job_id)
    stream: Any = stream_of(_events(request, job, _last_seen(request, job)))
    return stream  # type: ignore[no-any-return]


@delete(
    "/v1/jobs/{job_id:str}",
    **operation("cancel_job", summary="Cancel a job", tag=_TAG, links=JOB_LINKS),
)
async def cancel_job(request: AnyRequest, job_id: JobId) -> Reply[JobAnswer]:
    """End it, and what is done for it. A job that has ended stays as it is, so cancelling twice does no more."""
    job = await _jobs_of(request, job_id).cancel(caller_of(request).account_id, clean(job_id))
    if job is None:
        raise _unknown(job_id)
    return Reply(await _answer(request, job))


def _last_seen(request: AnyRequest, job: Job) -> int:
    """The number of the event that the caller saw last; 0 for none."""
    said: bytes | None = request.scope["state"][RAW_HEADERS].get(b"last-event-id")
    if not said:
        return 0
    id, _, step = said.decode("latin-1").rpartition(".")
    if id != job.id or not step.isascii() or not step.isdigit() or len(step) > 9:
        detail = say("problem", "job.event-of-another")
        fault = Fault(code="wrong-header", detail=detail, header="Last-Event-ID")
        raise BadRequest(say("problem", "job.event-unknown"), [fault])
    return int(step)


async def _events(request: AnyRequest, job: Job, seen: int) -> AsyncIterator[bytes]:
    jobs = _jobs_of(request, job.id)
    now: Job | None = job
    while now is not None:
        if now.step > seen:
            data = encode(await _answer(request, now), JSON)
            yield event(now.state, data, f"{now.id}.{now.step}")
            seen = now.step
        if now.ended:
            return
        last = now
        now = await jobs.changed(last, _SILENT)
        if now is not None and now.step == last.step:
            yield _STILL
