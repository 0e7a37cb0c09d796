"""A cut list as server-sent events: how the search comes along, then the answer."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from typing import Any

from litestar import Request
from litestar.response import Stream
from litestar.response.base import ASGIResponse

from longpoint.api.computed.cut_list_work import CutListWork
from longpoint.api.computed.request import CutListRequest
from longpoint.api.http.answer import PLAIN, encode, in_pieces
from longpoint.api.http.errors import logged, problem_bytes
from longpoint.api.http.faults import InvalidRequest
from longpoint.api.http.negotiate import EVENTS, JSON
from longpoint.api.http.problems import Problem
from longpoint.api.running.planning_pool import PlanningPool
from longpoint.api.running.threads import apart_if_long, openings_of_work
from longpoint.lengths import LengthWriter, length_writer
from longpoint.stock import Progress
from longpoint.values import Cents, Refusal, Value


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


def cut_list_events(
    found: CutListWork, pool: PlanningPool, data: CutListRequest, request: Request[Any, Any, Any]
) -> Stream:
    """A stream of `progress` events and one `answer` or `problem`; work ends when nobody reads it any more.

    Raises:
        PlanningBusy: when too many requests wait already.
    """
    if found.open:
        pool.refuse_when_full(data.planning_seconds)
    return _Events(_events(found, pool, data, request), headers={"vary": "accept"})


class _Events(Stream):
    """A stream of events, whatever media type the operation has otherwise."""

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        return super().to_asgi_response(app, request, **{**given, "media_type": EVENTS})


async def _events(
    found: CutListWork, pool: PlanningPool, data: CutListRequest, request: Request[Any, Any, Any]
) -> AsyncIterator[bytes]:
    told: asyncio.Queue[bytes | None] = asyncio.Queue()

    def tell(index: int, step: Progress) -> None:
        told.put_nowait(_event("progress", plan_progress(found.jobs[index].profile, step)))

    async def search() -> None:
        try:
            await found.better(pool, tell)
        finally:
            told.put_nowait(None)

    searching = asyncio.ensure_future(search())
    try:
        while (event := await told.get()) is not None:
            yield event
        await searching
        write = length_writer(data.rounding)
        yield await apart_if_long(
            openings_of_work(data),
            lambda: _event("answer", in_pieces(found.answer(), JSON, write), write),
        )
    except Refusal as refusal:
        problem = InvalidRequest.of(refusal.faults, refusal.omitted)
        yield _event("problem", problem_bytes(request.scope, problem))
    except Problem as problem:
        yield _event("problem", problem_bytes(request.scope, problem))
    except Exception as failure:
        yield _event("problem", problem_bytes(request.scope, logged(request, failure)))
    finally:
        # Nobody waits for its end: whoever left has cancelled this, too, and would cancel the waiting.
        searching.cancel()


def plan_progress(profile: str, step: Progress) -> PlanProgress:
    """One step of the search for a profile's sticks."""
    return PlanProgress(
        profile, Cents(step.cost_cents), Cents(step.bound_cents), step.gap, round(step.seconds, 3)
    )


def _event(name: str, data: Any, write: LengthWriter = PLAIN) -> bytes:
    text = data if isinstance(data, bytes) else encode(data, JSON, write)
    return b"event: %s\ndata: %s\n\n" % (name.encode(), text)
