"""A call of one operation, ready to be sent, and the reply to it."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Any, Generic, Literal, TypeVar, cast

import msgspec

from longpoint_sdk._errors import UnreadableAnswer
from longpoint_sdk._length import Length

T = TypeVar("T")

Repeat = Literal["always", "with_key", "never"]
"""Whether a call may be sent again: `with_key` once it carries an Idempotency-Key."""

JSON = "application/json"


class Call(msgspec.Struct, Generic[T], frozen=True, kw_only=True):
    """One call of an operation. `longpoint_sdk.calls` has a function for each; a client sends it.

    Attributes:
        operation: The operation's id.
        method: The HTTP method.
        path: The path, filled in.
        result: The type of its answer; None for an answer without a body, bytes for any other.
        query: Query parameters.
        headers: Header fields besides those that every request carries.
        body: What is sent, encoded as JSON; None sends no body.
        accept: The media type to answer in.
        repeat: Whether it may be sent again.
        current: Path of the thing it changes; it is fetched when the change is refused as out of date.
    """

    operation: str
    method: str
    path: str
    result: Any
    query: Mapping[str, str] = {}
    headers: Mapping[str, str] = {}
    body: Any = None
    accept: str = JSON
    repeat: Repeat = "always"
    current: str | None = None


class Reply(Generic[T]):
    """An answer as it came, and what it says.

    Attributes:
        status: The HTTP status.
        headers: Header fields; names in any case.
        content: The body.
        request_id: The request's id, in the service's log too.
        attempts: How often the request was sent.
        seconds: From the first sending to the answer.
    """

    __slots__ = ("_value", "attempts", "content", "headers", "request_id", "result", "seconds", "status")

    def __init__(
        self,
        *,
        result: Any,
        status: int,
        headers: Mapping[str, str],
        content: bytes,
        request_id: str,
        attempts: int,
        seconds: float,
    ) -> None:
        self.result = result
        self.status = status
        self.headers = headers
        self.content = content
        self.request_id = request_id
        self.attempts = attempts
        self.seconds = seconds

    @property
    def value(self) -> T:
        """What the body says.

        Raises:
            UnreadableAnswer: when it is not of the form the document promises.
        """
        try:
            return self._value
        except AttributeError:
            self._value: T = self._read()
            return self._value

    @property
    def etag(self) -> str | None:
        """The version of what was answered; send it as `if_match` to change that and nothing newer."""
        return self.headers.get("etag")

    def _read(self) -> T:
        if self.result is bytes:
            return cast("T", self.content)
        if self.result is None:
            return cast("T", None)
        try:
            return cast("T", _decoder(self.result).decode(self.content))
        except (msgspec.DecodeError, ValueError) as fault:
            raise UnreadableAnswer(
                f"The answer is not what the document promises: {fault}",
                self.status,
                self.request_id,
                self.content,
            ) from fault

    def __repr__(self) -> str:
        return f"<Reply {self.status}, {len(self.content)} bytes, request {self.request_id}>"


@lru_cache(maxsize=512)
def _decoder(type_: Any) -> msgspec.json.Decoder[Any]:
    return msgspec.json.Decoder(type_)


def _encode_other(value: Any) -> Any:
    if isinstance(value, Length):
        return str(value)
    raise TypeError(f"{type(value).__name__} cannot be sent; a length is text or a Length.")


encode = msgspec.json.Encoder(enc_hook=_encode_other).encode
"""What is sent, as JSON; a `Length` as its exact text."""
