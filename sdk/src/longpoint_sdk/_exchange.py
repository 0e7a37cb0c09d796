"""One call from its first sending to its answer: what both clients do, without the sending itself.

It is a generator of steps. A client takes each step in its own way, sync or async, and hands back what came of it.
"""

from __future__ import annotations

import logging
import uuid
from collections.abc import Generator, Mapping
from time import perf_counter
from typing import Any, TypeVar

import msgspec

from longpoint_sdk._call import JSON, Call, Reply, encode
from longpoint_sdk._errors import ConnectionFailed, LongpointError, VersionConflict
from longpoint_sdk._refusal import refusal_of
from longpoint_sdk._retry import Retry, retry_after_seconds, worth_repeating

T = TypeVar("T")
_log = logging.getLogger("longpoint_sdk")


class Send(msgspec.Struct, frozen=True):
    """Step: send this, and hand back the `Answer`, or the `ConnectionFailed` there was instead."""

    method: str
    path: str
    query: Mapping[str, str | list[str]]
    headers: dict[str, str]
    content: bytes | None


class Pause(msgspec.Struct, frozen=True):
    """Step: wait, and hand back None."""

    seconds: float


class Answer(msgspec.Struct, frozen=True):
    """What came of a `Send`."""

    status: int
    headers: Mapping[str, str]
    content: bytes


Came = Answer | ConnectionFailed | None
"""What is handed back after a step."""
Steps = Generator[Send | Pause, Came, Reply[T]]


def exchange(call: Call[T], retry: Retry) -> Steps[T]:
    """Send a call, again where that is safe and may help.

    Raises:
        Problem: the service refused.
        ConnectionFailed: no answer came.
    """
    send = _request(call)
    request_id = send.headers["X-Request-Id"]
    repeatable = call.repeat != "never"
    started = perf_counter()
    attempts = 0
    while True:
        came = yield send
        attempts += 1
        if isinstance(came, ConnectionFailed):
            _log.debug("%s %s: %s (request %s)", send.method, send.path, came, request_id)
            came.request_id, came.attempts = request_id, attempts
            pause = retry.pause(attempts, None) if repeatable or not came.sent else None
            if pause is None:
                raise came
        else:
            assert came is not None
            seconds = perf_counter() - started
            _log.debug("%s %s: %d (request %s)", send.method, send.path, came.status, request_id)
            if "deprecation" in came.headers:  # RFC 9745; the Sunset field is RFC 8594
                ends = came.headers.get("sunset", "a day not set yet")
                _log.warning("%s is deprecated and ends on %s", call.operation, ends)
            if came.status < 300 or came.status == 304:
                return _reply(call, came, request_id, attempts, seconds)
            wait = retry_after_seconds(came.headers.get("retry-after"), came.headers.get("date"))
            helps = repeatable and worth_repeating(came.status, wait)
            pause = retry.pause(attempts, wait) if helps else None
            if pause is None:
                refusal = refusal_of(
                    came.status, came.headers, came.content, request_id=request_id, attempts=attempts
                )
                if isinstance(refusal, VersionConflict):
                    refusal.mine = call.body
                    refusal.current = yield from _now(call, retry)
                raise refusal
        _log.info("%s %s: again in %.1f s (request %s)", send.method, send.path, pause, request_id)
        yield Pause(pause)


def _now(call: Call[Any], retry: Retry) -> Generator[Send | Pause, Came, Any]:
    """What a change that came too late would have changed, as it stands; None where that cannot be read."""
    if call.current is None:
        return None
    try:
        reply = yield from exchange(call.current, retry)
        return reply.value
    except LongpointError:
        return None


def _request(call: Call[Any]) -> Send:
    headers = {"Accept": call.accept, "X-Request-Id": uuid.uuid4().hex, **call.headers}
    if call.repeat == "with_key":
        headers.setdefault("Idempotency-Key", f'"{uuid.uuid4()}"')
    content = None
    if call.body is not None:
        raw = call.body.encode() if isinstance(call.body, str) else call.body
        as_it_is = isinstance(raw, bytes)
        content = raw if as_it_is else encode(raw)
        headers.setdefault("Content-Type", call.raw_as if as_it_is else JSON)
    return Send(call.method, call.path, call.query, headers, content)


def _reply(call: Call[T], answer: Answer, request_id: str, attempts: int, seconds: float) -> Reply[T]:
    return Reply(
        call,
        status=answer.status,
        headers=answer.headers,
        content=answer.content,
        request_id=answer.headers.get("x-request-id", request_id),
        attempts=attempts,
        seconds=seconds,
    )
