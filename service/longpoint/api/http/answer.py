"""Answers: encoded in what was negotiated, and sent without detours."""

from collections.abc import Callable
from typing import Any, Generic, TypeVar, cast

import msgspec
from litestar import Response
from litestar.response.base import ASGIResponse
from litestar.types import Receive, Scope, Send

from longpoint.api.http.negotiate import JSON
from longpoint.lengths import LengthWriter, Rounding, length_writer
from longpoint.values import encoder, packer

PLAIN = length_writer(Rounding())
"""Writes what holds no computed length, or lengths that nobody asked to have rounded otherwise."""
_MEDIA_TYPES = (None, JSON)
_MANY = 100
"""Items of a list that are encoded by themselves; of fewer, each is looked into for longer lists."""
T = TypeVar("T")


def encode(content: Any, media_type: str, write: LengthWriter = PLAIN) -> bytes:
    """Content as one of the two data formats."""
    return (encoder if media_type == JSON else packer)(write).encode(content)


def in_pieces(content: T, media_type: str, write: LengthWriter = PLAIN) -> T:
    """A long answer, each item of its long lists encoded in its place, so that the whole is soon put together.

    While one thing is encoded no other thread runs: in a thread the items let others in between, where the answer of a
    hundred megabytes at once held everybody up for half a second and more.
    """
    return cast("T", _in_pieces(content, (encoder if media_type == JSON else packer)(write).encode))


def _in_pieces(value: Any, encode: Callable[[Any], bytes]) -> Any:
    """The value itself where nothing in it is long: much of it is remembered and belongs to others, too."""
    if isinstance(value, msgspec.Struct):
        fields = [(name, getattr(value, name)) for name in value.__struct_fields__]
        changed = {name: new for name, old in fields if (new := _in_pieces(old, encode)) is not old}
        return msgspec.structs.replace(value, **changed) if changed else value
    if isinstance(value, tuple | list):
        if len(value) > _MANY:
            return [msgspec.Raw(encode(item)) for item in value]
        items = [_in_pieces(item, encode) for item in value]
        return value if all(new is old for new, old in zip(items, value, strict=True)) else items
    return value


class Answer(Response[Any]):
    """A response whose content goes out as JSON or MessagePack, whichever the request negotiated.

    Text and bytes, and whatever was given another media type, go out as the framework sends them.
    """

    write: LengthWriter = PLAIN

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        wanted: str = getattr(request, "wanted", "")
        plain = isinstance(self.content, (bytes, str)) or self.media_type not in _MEDIA_TYPES
        if not wanted or plain or self.cookies or self.background:
            return super().to_asgi_response(app, request, **given)
        body = encode(self.content, wanted, self.write)
        fields = [(b"vary", b"accept")]
        for name, value in {**(given.get("headers") or {}), **self.headers}.items():
            fields.append((name.lower().encode("latin-1"), value.encode("latin-1")))
        return Encoded(self.status_code or given.get("status_code") or 200, body, wanted, fields)


class Reply(Answer, Generic[T]):
    """An answer with header fields or a status of its own; T is the type of its content."""

    def __init__(
        self,
        content: T,
        write: LengthWriter = PLAIN,
        *,
        status_code: int | None = None,
        headers: dict[str, str] | None = None,
    ) -> None:
        super().__init__(content, status_code=status_code, headers=headers)
        self.write = write


class File(Reply[Any]):
    """An answer that is a file: a page, a drawing, a table. It goes out as it is."""

    def __init__(self, content: bytes, media_type: str, headers: dict[str, str]) -> None:
        Response.__init__(self, content, media_type=media_type, headers={"vary": "accept", **headers})


class Encoded(ASGIResponse):
    """An encoded answer on its way out, without the framework's header objects: they cost more than it all."""

    __slots__ = ("raw_headers",)

    def __init__(self, status: int, body: bytes, media_type: str, fields: list[tuple[bytes, bytes]]) -> None:
        self.status_code = status
        self.body = body
        own = (b"content-type", media_type.encode()), (b"content-length", b"%d" % len(body))
        self.raw_headers = [*own, *fields]

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:  # noqa: ARG002
        await send({"type": "http.response.start", "status": self.status_code, "headers": self.raw_headers})
        await send({"type": "http.response.body", "body": self.body, "more_body": False})
