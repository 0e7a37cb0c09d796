"""The outermost layer: request ids, protective headers, HEAD, and the log line of each request."""

import itertools
import re
import secrets
from collections.abc import Callable, Iterable
from time import perf_counter
from typing import Any

from litestar.types import ASGIApp, Receive, Send

from longpoint.api.http.access_log import AccessLog

RAW_HEADERS = "raw_headers"
"""Key in the scope's state of the request's header fields, as a dict of bytes."""
REQUEST_ID = "request_id"
"""Key in the scope's state of the request's id."""
RATE_FIELDS = "rate_fields"
"""Key in the scope's state of the rate fields that the answer carries, where requests are counted."""

_SANE_ID = re.compile(rb"[A-Za-z0-9._\-]{8,64}")
_PROTECTIVE = (
    (b"x-content-type-options", b"nosniff"),
    (b"content-security-policy", b"default-src 'none'; frame-ancestors 'none'"),
    (b"referrer-policy", b"no-referrer"),
    (b"cache-control", b"no-store"),
)


class RequestFrame:
    """Wraps the whole application, its refusals of unknown addresses included.

    Args:
        app: What answers.
        log: Where each request is noted; None notes nothing.
        count: Called with each answer's handler, status and seconds; None counts nothing.
    """

    def __init__(
        self, app: ASGIApp, log: AccessLog | None, count: Callable[[Any, int, float], None] | None = None
    ) -> None:
        self.app = app
        self.log = log
        self.count = count
        self._prefix = secrets.token_hex(6).encode()
        self._numbers = itertools.count(1)

    async def __call__(self, scope: Any, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        started = perf_counter()
        headers = dict(scope["headers"])
        if len(headers) != len(scope["headers"]):
            headers = _joined(scope["headers"])
        given = headers.get(b"x-request-id", b"")
        request_id = given if _SANE_ID.fullmatch(given) else b"%s%08x" % (self._prefix, next(self._numbers))
        state = scope.setdefault("state", {})
        state[RAW_HEADERS] = headers
        state[REQUEST_ID] = request_id.decode()
        method: str = scope["method"]
        head = method == "HEAD"
        if head:
            scope = {**scope, "method": "GET"}  # a copy: the server goes by its own to leave the body out
        status = 0

        async def send_framed(message: Any) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                fields: list[tuple[bytes, bytes]] = list(message["headers"])
                present = {name for name, _ in fields}
                fields += [field for field in _PROTECTIVE if field[0] not in present]
                fields.append((b"x-request-id", request_id))
                if RATE_FIELDS in state:
                    fields += state[RATE_FIELDS]
                if b"allow" in present:
                    fields = [_allow_head(field) for field in fields]
                message["headers"] = fields
            elif head:
                message["body"] = b""
            await send(message)

        try:
            await self.app(scope, receive, send_framed)
        finally:
            seconds = perf_counter() - started
            if self.log:
                self.log.note(request_id, method, scope["path"], status, seconds)
            if self.count:
                self.count(scope.get("route_handler"), status, seconds)


def _joined(fields: Iterable[tuple[bytes, bytes]]) -> dict[bytes, bytes]:
    """Header fields, those on several lines as the one list they are (RFC 9110, section 5.3).

    A field that is no list, a key or a content type, then has a value that is none, and is refused.
    """
    found: dict[bytes, bytes] = {}
    for name, value in fields:
        found[name] = b"%s, %s" % (found[name], value) if name in found else value
    return found


def _allow_head(field: tuple[bytes, bytes]) -> tuple[bytes, bytes]:
    """An Allow field that lists GET lists HEAD too, since every GET answers HEAD."""
    name, value = field
    methods = {part.strip() for part in value.split(b",")}
    if name != b"allow" or b"GET" not in methods:
        return field
    return name, b", ".join(sorted(methods | {b"HEAD"}))
