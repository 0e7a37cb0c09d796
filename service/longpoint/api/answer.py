"""Answers: encoded in what was negotiated, without detours."""

from typing import Any

import msgspec
from litestar import Response
from litestar.response.base import ASGIResponse

from longpoint.api.negotiate import JSON

_json = msgspec.json.Encoder()
_msgpack = msgspec.msgpack.Encoder()


class Answer(Response[Any]):
    """A response whose content is encoded as JSON or MessagePack, whichever the request negotiated.

    Text and bytes go out as they are, with the media type they were given.
    """

    def to_asgi_response(self, app: Any, request: Any, **given: Any) -> ASGIResponse:
        wanted: str = getattr(request, "wanted", "")
        if wanted and self.media_type in (None, JSON) and not isinstance(self.content, (bytes, str)):
            encoder = _json if wanted == JSON else _msgpack
            self.content = encoder.encode(self.content)
            self.media_type = wanted
            self.headers.setdefault("vary", "accept")
        return super().to_asgi_response(app, request, **given)
