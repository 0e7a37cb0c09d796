"""An answer as server-sent events: how the search for it comes along, then the answer."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable
from typing import Any

from litestar.response import Stream
from litestar.response.base import ASGIResponse

from longpoint.api.http.answer import encode
from longpoint.api.http.errors import problem_bytes, problem_of
from longpoint.api.http.negotiate import EVENTS, JSON
from longpoint.api.http.request import AnyRequest
from longpoint.jobs.job import PlanProgress
from longpoint.jobs.searches import SearchStep


def search_events(
    request: AnyRequest, steps: AsyncIterator[SearchStep], answer: Callable[[], Awaitable[bytes]]
) -> Stream:
    """A stream of `progress` events and one `answer` or `problem`.

    Args:
        request: Which asked for it.
        steps: Of the search, as they come; closed when nobody reads any more.
        answer: Gives the answer's JSON once there are no more steps.
    """
    return stream_of(_events(request, steps, answer))


def stream_of(events: AsyncIterator[bytes]) -> Stream:
    """A stream of events."""
    return _Events(events, headers={"vary": "accept"})


class _Events(Stream):
    """A stream of events, whatever media type the operation has otherwise."""

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        return super().to_asgi_response(app, request, **{**given, "media_type": EVENTS})


async def _events(
    request: AnyRequest, steps: AsyncIterator[SearchStep], answer: Callable[[], Awaitable[bytes]]
) -> AsyncIterator[bytes]:
    try:
        async for profile, step in steps:
            yield event("progress", encode(PlanProgress.of(profile, step), JSON))
        yield event("answer", await answer())
    except Exception as failure:
        yield event("problem", problem_bytes(request.scope, problem_of(request, failure)))


def event(name: str, data: bytes, id: str = "") -> bytes:
    """One event; whoever reads on after a break says which `id` was the last."""
    named = b"id: %s\n" % id.encode() if id else b""
    return b"%sevent: %s\ndata: %s\n\n" % (named, name.encode(), data)
