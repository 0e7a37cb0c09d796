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
from longpoint.jobs.searches import SearchStep
from longpoint.values import Cents, Value


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


def search_events(
    request: AnyRequest, steps: AsyncIterator[SearchStep], answer: Callable[[], Awaitable[bytes]]
) -> Stream:
    """A stream of `progress` events and one `answer` or `problem`.

    Args:
        request: Which asked for it.
        steps: Of the search, as they come; closed when nobody reads any more.
        answer: Gives the answer's JSON once there are no more steps.
    """
    return _Events(_events(request, steps, answer), headers={"vary": "accept"})


class _Events(Stream):
    """A stream of events, whatever media type the operation has otherwise."""

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        return super().to_asgi_response(app, request, **{**given, "media_type": EVENTS})


async def _events(
    request: AnyRequest, steps: AsyncIterator[SearchStep], answer: Callable[[], Awaitable[bytes]]
) -> AsyncIterator[bytes]:
    try:
        async for profile, step in steps:
            progress = PlanProgress(
                profile, Cents(step.cost_cents), Cents(step.bound_cents), step.gap, round(step.seconds, 3)
            )
            yield _event("progress", encode(progress, JSON))
        yield _event("answer", await answer())
    except Exception as failure:
        yield _event("problem", problem_bytes(request.scope, problem_of(request, failure)))


def _event(name: str, data: bytes) -> bytes:
    return b"event: %s\ndata: %s\n\n" % (name.encode(), data)
