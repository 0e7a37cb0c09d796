"""Answers: encoded in what was negotiated, and sent without detours."""

from collections.abc import Callable
from typing import Any, Generic, TypeVar

import msgspec
from litestar import Response
from litestar.response.base import ASGIResponse
from litestar.types import Receive, Scope, Send

from longpoint.api.http.negotiate import JSON

_json = msgspec.json.Encoder().encode
_msgpack = msgspec.msgpack.Encoder().encode
_MEDIA_TYPES = (None, JSON)
_MANY = 100
"""Items of a list that are encoded by themselves; of fewer, each is looked into for longer lists."""
T = TypeVar("T")


def in_pieces(content: T, media_type: str) -> T:
    """A long answer, each item of its lists encoded in its place, so that the whole is soon put together.

    While one thing is encoded no other thread runs: in a thread the items let others in between, where the answer of a
    hundred megabytes at once held everybody up for half a second and more. The items go as they are encoded, so that
    the answer is not held twice: it can only be sent then.
    """
    _in_pieces(content, _json if media_type == JSON else _msgpack)
    return content


def _in_pieces(value: Any, encode: Callable[[Any], bytes]) -> None:
    if isinstance(value, msgspec.Struct):
        for name in value.__struct_fields__:
            _in_pieces(getattr(value, name), encode)
    elif isinstance(value, list):
        for place, item in enumerate(value):
            if len(value) > _MANY:
                value[place] = msgspec.Raw(encode(item))
            else:
                _in_pieces(item, encode)


class Answer(Response[Any]):
    """A response whose content goes out as JSON or MessagePack, whichever the request negotiated.

    Text and bytes, and whatever was given another media type, go out as the framework sends them.
    """

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        wanted: str = getattr(request, "wanted", "")
        plain = isinstance(self.content, (bytes, str)) or self.media_type not in _MEDIA_TYPES
        if not wanted or plain or self.cookies or self.background:
            return super().to_asgi_response(app, request, **given)
        body = (_json if wanted == JSON else _msgpack)(self.content)
        headers = {**(given.get("headers") or {}), **self.headers}
        return _Encoded(self.status_code or given.get("status_code") or 200, body, wanted, headers)


class Reply(Answer, Generic[T]):
    """An answer with header fields or a status of its own; T is the type of its content."""

    def __init__(
        self, content: T, *, status_code: int | None = None, headers: dict[str, str] | None = None
    ) -> None:
        super().__init__(content, status_code=status_code, headers=headers)


class File(Reply[Any]):
    """An answer that is a file: a page, a drawing, a table. It goes out as it is."""

    def __init__(self, content: bytes, media_type: str, headers: dict[str, str]) -> None:
        Response.__init__(self, content, media_type=media_type, headers={"vary": "accept", **headers})


class _Encoded(ASGIResponse):
    """An encoded answer on its way out, without the framework's header objects: they cost more than it all."""

    __slots__ = ("raw_headers",)

    def __init__(self, status: int, body: bytes, media_type: str, headers: dict[str, str]) -> None:
        self.status_code = status
        self.body = body
        self.raw_headers = [
            (b"content-type", media_type.encode()),
            (b"content-length", b"%d" % len(body)),
            (b"vary", b"accept"),
        ]
        for name, value in headers.items():
            self.raw_headers.append((name.lower().encode("latin-1"), value.encode("latin-1")))

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:  # noqa: ARG002
        await send({"type": "http.response.start", "status": self.status_code, "headers": self.raw_headers})
        await send({"type": "http.response.body", "body": self.body, "more_body": False})
