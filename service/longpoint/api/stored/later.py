"""Long work that is answered later (RFC 7240): the request becomes a job, and its answer the job's result."""

from __future__ import annotations

import asyncio
import re
from math import ceil
from typing import Any, NamedTuple

import msgspec
from litestar import Litestar, Response
from litestar.types import ASGIApp

from longpoint import __version__
from longpoint.api.http.access import CALLER
from longpoint.api.http.answer import encode
from longpoint.api.http.conditional import bare, check_news
from longpoint.api.http.errors import problem_bytes
from longpoint.api.http.frame import RAW_HEADERS, REQUEST_ID
from longpoint.api.http.negotiate import EVENTS, JSON
from longpoint.api.http.operation import operation_of
from longpoint.api.http.problems import PROBLEM_JSON, InternalError, Problem
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.job_answer import JobAnswer, address_of, job_answer
from longpoint.api.stored.storage import caller_of, find_schedule
from longpoint.jobs.engine import Jobs, TooMany
from longpoint.jobs.job import Doer, Job, NewJob, Outcome, Report
from longpoint.jobs.planning_pool import HEARD
from longpoint.schedules import plans
from longpoint.schedules.basics import digest_of
from longpoint.schedules.values import Author
from longpoint.stock import VERSION
from longpoint.texts import say

LONG = frozenset(
    {
        "compute_cut_list",
        "get_schedule_sheet",
        "get_sticks_drawing",
        "make_cost_sheet",
        "make_labels",
        "make_material_list",
        "make_measure_sheet",
        "make_opening_sheet",
        "make_plan",
        "make_stick_sheet",
    }
)
"""Operations that may be answered later."""
MOST_WAIT = 50.0
"""Seconds that anybody is kept waiting before a job is answered with: less than a proxy waits."""
IN_A_JOB = "in_a_job"
"""Key in the scope's state of a request that is answered for a job: who asks is known."""
_WAIT = re.compile(r"wait=\"?(\d{1,9})\"?")
_FIELDS = (b"accept", b"content-type")


class TooManyJobs(Problem, status=429, title="You have too many jobs under way"):
    """Each account may have so many jobs waiting and under way. Wait for one to end, or cancel one: Retry-After says
    when there will be a place, by how long the latest jobs took."""


class JobsBusy(Problem, status=503, title="There are too many jobs"):
    """More jobs wait than the service takes. Send the request again after the seconds in the Retry-After header, which
    follow from how long the latest jobs took."""


class Preference(NamedTuple):
    """What a caller would rather have: an answer later at once, or after so many seconds."""

    later: bool
    wait: float | None


class KeptRequest(msgspec.Struct, frozen=True):
    """A request as it is kept for a job: all that its answer follows from, and who asks."""

    method: str
    path: str
    query: bytes
    headers: dict[str, str]
    body: bytes
    account: str
    key: str | None
    who: str


_encode, _read = msgspec.msgpack.Encoder().encode, msgspec.msgpack.Decoder(KeptRequest).decode


def preference_of(request: AnyRequest) -> Preference:
    """The caller's Prefer field; what is not understood is passed over, as RFC 7240 has it."""
    said = request.scope["state"][RAW_HEADERS].get(b"prefer", b"").decode("latin-1").lower()
    later, wait = False, None
    for part in said.split(","):
        name = "".join(part.partition(";")[0].split())
        later = later or name == "respond-async"
        if wait is None and (found := _WAIT.fullmatch(name)):
            wait = min(float(found[1]), MOST_WAIT)
    return Preference(later, wait)


async def answer_later(request: AnyRequest) -> Response[Any] | None:
    """The answer to a request for long work that its caller would have later; None where it is answered as it comes.

    Raises:
        TooManyJobs, JobsBusy: when there are as many jobs as there may be.
        NotFound: when it is of a schedule that there is not.
        NotModified: when the caller has the answer already.
    """
    jobs: Jobs | None = request.app.state.jobs
    said = operation_of(request.route_handler)
    if jobs is None or said is None or said.id not in LONG or request.wanted == EVENTS:
        return None
    wanted = preference_of(request)
    if not wanted.later and wanted.wait is None:
        if not request.app.state.works_elsewhere:
            return None
        wanted = Preference(later=False, wait=MOST_WAIT)
    job = await _ask(jobs, await _new_job(request, said.id))
    if wanted.wait:
        job = await jobs.ended(job, wanted.wait) or job
    applied = _applied(request, wanted)
    if job.ended and (outcome := await jobs.outcome(job.account, job.id)) is not None:
        if tag := outcome.headers.get("etag"):
            check_news(request, bare(tag.strip('"')), outcome.headers.get("cache-control", ""))
        return outcome_reply(outcome, applied)
    return await _accepted(jobs, job, applied)


async def _new_job(request: AnyRequest, kind: str) -> NewJob:
    """The job of a request. What stands in its schedule is a part of what its answer follows from."""
    caller = caller_of(request)
    stands: object = None
    if (id := request.path_params.get("schedule_id")) is not None:
        async with request.app.state.store.reading() as connection:
            schedule = await find_schedule(connection, request, id)
            plan = await plans.newest(connection, schedule, VERSION)
        stands = schedule.digest, plan and (plan.number, plan.budget) if kind != "make_plan" else None
    body = b""
    if request.plan.reader:
        await request.json()  # what cannot be read is refused at once
        body = await request.body()
    raw: dict[bytes, bytes] = request.scope["state"][RAW_HEADERS]
    headers = {name.decode(): raw[name].decode("latin-1") for name in _FIELDS if name in raw}
    asked = KeptRequest(
        request.scope["method"],
        request.scope["path"],
        request.scope["query_string"],
        headers,
        body,
        caller.account_id,
        caller.key_id,
        caller.who,
    )
    sent = asked.method, asked.path, asked.query, request.wanted, headers.get("content-type"), body
    return NewJob(caller.account_id, kind, digest_of(__version__, stands, *sent), _encode(asked))


async def _ask(jobs: Jobs, new: NewJob) -> Job:
    try:
        return await jobs.ask(new)
    except TooMany as refused:
        after = {"retry-after": str(max(1, ceil(refused.seconds)))}
        if refused.own:
            raise TooManyJobs(say("problem", "job.too-many-own"), headers=after) from None
        raise JobsBusy(say("problem", "job.too-many"), headers=after) from None


async def _accepted(jobs: Jobs, job: Job, applied: dict[str, str]) -> Response[Any]:
    content: JobAnswer = job_answer(job, await jobs.line(job), None)
    return Response(
        encode(content, JSON),
        status_code=202,
        media_type=JSON,
        headers={"location": address_of(job), **applied, "vary": "accept, prefer"},
    )


def _applied(request: AnyRequest, wanted: Preference) -> dict[str, str]:
    """What is said of the preferences that were followed."""
    if b"prefer" not in request.scope["state"][RAW_HEADERS]:
        return {}
    parts = ["respond-async"] if wanted.later else []
    parts += [f"wait={wanted.wait:.0f}"] if wanted.wait is not None else []
    return {"preference-applied": ", ".join(parts)} if parts else {}


def outcome_reply(outcome: Outcome, more: dict[str, str]) -> Response[bytes]:
    """What came of a job, as its request would have been answered."""
    return Response(
        outcome.body,
        status_code=outcome.status,
        media_type=outcome.media_type,
        headers={**outcome.headers, **more},
    )


def doer_of(app: Litestar, answer: ASGIApp) -> Doer:
    """What does jobs: the application itself, asked again by the job instead of the caller.

    Args:
        app: The application.
        answer: What answers its requests, without the gate and the frame, which the caller has passed.
    """

    async def do(new: NewJob, report: Report) -> Outcome:
        asked = _read(new.work)
        heard = HEARD.set(report)
        try:
            return await _replayed(app, answer, asked, new.digest[:16])
        finally:
            HEARD.reset(heard)

    def lost(new: NewJob) -> Outcome:
        asked = _read(new.work)
        scope = {"path": asked.path, "state": {REQUEST_ID: new.digest[:16]}}
        problem = InternalError(say("problem", "job.lost"))
        return Outcome(problem.status, PROBLEM_JSON, {}, problem_bytes(scope, problem))

    return Doer(do, lost)


async def _replayed(app: Litestar, answer: ASGIApp, asked: KeptRequest, id: str) -> Outcome:
    """Answer a request that was kept."""
    raw = {name.encode(): value.encode("latin-1") for name, value in asked.headers.items()}
    raw[b"content-length"] = b"%d" % len(asked.body)
    scope: Any = {
        "type": "http",
        "asgi": {"version": "3.0"},
        "http_version": "1.1",
        "method": asked.method,
        "scheme": "http",
        "path": asked.path,
        "raw_path": asked.path.encode(),
        "query_string": asked.query,
        "root_path": "",
        "headers": list(raw.items()),
        "client": None,
        "server": None,
        "app": app,
        "litestar_app": app,
        "state": {
            RAW_HEADERS: raw,
            REQUEST_ID: id,
            CALLER: Author(asked.account, asked.key, asked.who),
            IN_A_JOB: True,
        },
    }
    coming = [{"type": "http.request", "body": asked.body, "more_body": False}]
    status, fields, parts = 500, [], []

    async def receive() -> Any:
        if not coming:
            await asyncio.Event().wait()  # a job does not go away: it is cancelled
        return coming.pop()

    async def send(message: Any) -> None:
        nonlocal status, fields
        if message["type"] == "http.response.start":
            status, fields = message["status"], message["headers"]
        elif message["type"] == "http.response.body":
            parts.append(message.get("body", b""))

    await answer(scope, receive, send)
    headers = {name.decode("latin-1"): value.decode("latin-1") for name, value in fields}
    media_type = headers.pop("content-type", JSON)
    headers.pop("content-length", None)
    return Outcome(status, media_type, headers, b"".join(parts))
