"""A cut list as server-sent events: how the search comes along, then the answer."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator

from litestar.response import Stream

from longpoint.api.answers.events import search_events
from longpoint.api.answers.kept import ready
from longpoint.api.computed.cut_list_work import CutListWork
from longpoint.api.computed.request import CutListRequest
from longpoint.api.http.answer import encode
from longpoint.api.http.negotiate import JSON
from longpoint.api.http.request import AnyRequest
from longpoint.api.running.threads import apart_if_long, openings_of_work
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.jobs.searches import PlanSearch, SearchStep
from longpoint.lengths import length_writer


def cut_list_events(
    found: CutListWork, pool: PlanningPool, data: CutListRequest, request: AnyRequest
) -> Stream:
    """A stream of `progress` events and one `answer` or `problem`; work ends when nobody reads it any more.

    Raises:
        PlanningBusy: when too many requests wait already.
    """
    if found.open:
        pool.refuse_when_full(data.planning_seconds)
    write = length_writer(data.rounding)

    async def answer() -> bytes:
        return await apart_if_long(
            openings_of_work(data), lambda: encode(ready(found.answer(), JSON, write), JSON, write)
        )

    return search_events(request, _steps(found, pool), answer)


async def _steps(found: CutListWork, pool: PlanningPool) -> AsyncIterator[SearchStep]:
    searching: PlanSearch[None] = PlanSearch(lambda report: found.better(pool, report))
    try:
        async for step in searching.steps():
            yield step
        await searching.done
    finally:
        searching.done.cancel()
        await asyncio.gather(searching.done, return_exceptions=True)
