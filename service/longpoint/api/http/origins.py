"""Which pages of other origins may call from a browser (the Fetch standard's CORS); everybody else needs none of it.

Keys are sent by the pages' scripts, so there are no credentials of the browser's to allow. The framework's own has the
Vary field of an answer say Origin and no longer Accept, and answers of the gate pass it by.
"""

from typing import Any

from litestar.types import ASGIApp, Receive, Send

from longpoint.api.http.frame import RAW_HEADERS

_MAY_SEND = b"Authorization, Content-Type, Idempotency-Key, If-Match, If-None-Match, X-Request-Id"
_MAY_READ = (
    b"Deprecation, ETag, Idempotency-Replayed, Link, Location, RateLimit, RateLimit-Policy, Retry-After, Sunset, "
    b"X-Request-Id"
)
_PREFLIGHT = [
    (b"access-control-allow-headers", _MAY_SEND),
    (b"access-control-allow-methods", b"DELETE, GET, POST, PUT"),
    (b"access-control-max-age", b"600"),
]


class Origins:
    """Wraps the application.

    Args:
        app: What answers.
        listed: Origins whose pages may call.
    """

    def __init__(self, app: ASGIApp, listed: tuple[str, ...]) -> None:
        self.app = app
        self._listed = frozenset(origin.lower().encode() for origin in listed)

    async def __call__(self, scope: Any, receive: Receive, send: Send) -> None:
        headers: dict[bytes, bytes] = scope["state"].get(RAW_HEADERS, {})
        origin = headers.get(b"origin", b"")
        listed = origin in self._listed

        async def send_told(message: Any) -> None:
            if message["type"] == "http.response.start":
                # On every answer: a cache must not give one page what it kept for another, or for none.
                fields = [*message["headers"], (b"vary", b"origin")]
                if listed:
                    fields.append((b"access-control-allow-origin", origin))
                    fields.append((b"access-control-expose-headers", _MAY_READ))
                message["headers"] = fields
            await send(message)

        if listed and scope["method"] == "OPTIONS" and b"access-control-request-method" in headers:
            await send_told({"type": "http.response.start", "status": 204, "headers": _PREFLIGHT})
            await send_told({"type": "http.response.body", "body": b"", "more_body": False})
            return
        await self.app(scope, receive, send_told)
