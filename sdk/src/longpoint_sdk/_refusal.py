"""From an answer that refuses to the problem that is raised."""

from __future__ import annotations

from collections.abc import Mapping
from http import HTTPStatus
from typing import Any

import msgspec

from longpoint_sdk._errors import Fault, Problem
from longpoint_sdk._retry import retry_after_seconds
from longpoint_sdk.problems import KINDS


class _Body(msgspec.Struct, kw_only=True):
    """A problem document as RFC 9457 has it: any member may be left out."""

    type: str = "about:blank"
    status: int = 0
    title: str = ""
    detail: str = ""
    instance: str = ""
    errors: list[Fault] = []
    request_id: str = ""


_decode = msgspec.json.Decoder(_Body).decode


def refusal_of(
    status: int, headers: Mapping[str, str], content: bytes, *, request_id: str, attempts: int
) -> Problem:
    """The problem an answer tells of; also for an answer of a proxy on the way, which knows no problems."""
    is_problem = headers.get("content-type", "").partition(";")[0].strip() == "application/problem+json"
    return _made(_read(content) if is_problem else _Body(), status, headers, request_id, attempts)


def refusal_in(content: bytes) -> Problem:
    """The problem that a problem document tells of by itself, as at the end of a stream."""
    body = _read(content)
    return _made(body, body.status, {}, "", 1)


def _made(body: _Body, status: int, headers: Mapping[str, str], request_id: str, attempts: int) -> Problem:
    title = body.title or _phrase(status)
    kind = KINDS.get(body.type, Problem)
    arguments: dict[str, Any] = {
        "status": status,
        "type": body.type,
        "title": title,
        "detail": body.detail or f"{title or 'Refused'}, answered without saying why.",
        "instance": body.instance,
        "errors": body.errors,
        "request_id": body.request_id or headers.get("x-request-id", request_id),
        "retry_after": retry_after_seconds(headers.get("retry-after"), headers.get("date")),
        "headers": headers,
        "attempts": attempts,
    }
    return kind(**arguments)


def _phrase(status: int) -> str:
    try:
        return HTTPStatus(status).phrase
    except ValueError:
        return ""


def _read(content: bytes) -> _Body:
    try:
        return _decode(content)
    except (msgspec.DecodeError, ValueError):
        return _Body()
