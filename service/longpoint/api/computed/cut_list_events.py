"""A cut list as server-sent events: how the search comes along, then the answer."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from typing import Any

import msgspec
from litestar import Request
from litestar.response import Stream
from litestar.response.base import ASGIResponse

from longpoint.api.computed.cut_list_work import CutListWork, openings_of_work
from longpoint.api.computed.planning_pool import PlanningPool
from longpoint.api.http.answer import in_pieces
from longpoint.api.http.errors import logged, problem_bytes
from longpoint.api.http.negotiate import EVENTS, JSON
from longpoint.api.http.problems import Problem
from longpoint.api.wire.cut_list import CutListRequest
from longpoint.api.wire.money import money
from longpoint.api.write.sheet import apart_if_long
from longpoint.stock import Progress

_encode = msgspec.json.Encoder().encode


class ProgressOut(msgspec.Struct, frozen=True):
    """How far the search for one profile's sticks has come: the best cost, the bound under it, and the gap between."""

    profile: str
    cost: str
    bound: str
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
    return _Events(_events(found, pool, openings_of_work(data), request), headers={"vary": "accept"})


class _Events(Stream):
    """A stream of events, whatever media type the operation has otherwise."""

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        return super().to_asgi_response(app, request, **{**given, "media_type": EVENTS})


async def _events(
    found: CutListWork, pool: PlanningPool, openings: int, request: Request[Any, Any, Any]
) -> AsyncIterator[bytes]:
    told: asyncio.Queue[bytes | None] = asyncio.Queue()

    def tell(index: int, step: Progress) -> None:
        told.put_nowait(_event("progress", progress_out(found.jobs[index].profile, step)))

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
        yield await apart_if_long(openings, lambda: _event("answer", in_pieces(found.answer(), JSON)))
    except Problem as problem:
        yield _event("problem", problem_bytes(request.scope, problem))
    except Exception as failure:
        yield _event("problem", problem_bytes(request.scope, logged(request, failure)))
    finally:
        searching.cancel()
        await asyncio.gather(searching, return_exceptions=True)


def progress_out(profile: str, step: Progress) -> ProgressOut:
    """One step of the search as the wire carries it."""
    return ProgressOut(
        profile, money(step.cost_cents), money(step.bound_cents), step.gap, round(step.seconds, 3)
    )


def _event(name: str, data: Any) -> bytes:
    return b"event: %s\ndata: %s\n\n" % (name.encode(), data if isinstance(data, bytes) else _encode(data))
