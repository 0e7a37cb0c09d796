"""A call of one operation, ready to be sent, and the reply to it."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from http import HTTPStatus
from pathlib import PurePath
from typing import Any, Generic, Literal, TypeVar, cast
from urllib.parse import quote

import msgspec

from longpoint_sdk._errors import UnreadableAnswer
from longpoint_sdk._length import Length
from longpoint_sdk._versioned import Versioned

T = TypeVar("T")

Repeat = Literal["always", "with_key", "never"]
"""Whether a call may be sent again; `with_key` has it carry an Idempotency-Key, which makes it so."""

JSON = "application/json"


class Call(msgspec.Struct, Generic[T], frozen=True, kw_only=True):
    """One call of an operation, not yet sent. `longpoint_sdk.calls` has a function that makes each.

    A client sends it: `send` for what it answers, `send_raw` for the whole reply, `follow` to hear how it comes along.

    Attributes:
        operation: The operation's id.
        method: The HTTP method.
        path: The path, filled in.
        result: The type of its answer; None for an answer without a body, bytes for any other.
        query: Query parameters.
        headers: Header fields besides those that every request carries.
        body: What is sent, encoded as JSON; text and bytes go as they are; None sends no body.
        raw_as: What text and bytes are.
        accept: The media type to answer in.
        repeat: Whether it may be sent again.
        versioned: Whether the answer comes as a `Versioned`.
        held: What was read before; it is the answer when the service says that it has not changed.
        current: Reads what this would change; sent when the change is refused as out of date.
    """

    operation: str
    method: str
    path: str
    result: Any
    query: Mapping[str, str | list[str]] = {}
    headers: Mapping[str, str] = {}
    body: Any = None
    raw_as: str = "application/octet-stream"
    accept: str = JSON
    repeat: Repeat = "always"
    versioned: bool = False
    held: Versioned[Any] | None = None
    current: Call[Any] | None = None


class Reply(Generic[T]):
    """An answer as it came, from a client's `send_raw`; `value` is what it says.

    Attributes:
        status: The HTTP status.
        headers: Header fields; names in any case.
        content: The body.
        request_id: The request's id, in the service's log too.
        attempts: How often the request was sent.
        seconds: From the first sending to the answer.
    """

    __slots__ = ("_call", "_value", "attempts", "content", "headers", "request_id", "seconds", "status")

    def __init__(
        self,
        call: Call[T],
        *,
        status: int,
        headers: Mapping[str, str],
        content: bytes,
        request_id: str,
        attempts: int,
        seconds: float,
    ) -> None:
        self._call = call
        self._value: Any = None
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
        if self._value is None:
            self._value = self._read()
        return cast("T", self._value)

    @property
    def etag(self) -> str | None:
        """The version of what was answered; send it as `if_match` to change that and nothing newer."""
        return self.headers.get("etag")

    def _read(self) -> Any:
        if self.status == HTTPStatus.NOT_MODIFIED:
            return self._call.held
        value = self._decoded()
        return Versioned(value, self.etag or "") if self._call.versioned else value

    def _decoded(self) -> Any:
        if self._call.result is bytes:
            return self.content
        if self._call.result is None:
            return None
        try:
            return _decoder(self._call.result).decode(self.content)
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
    kind = type(value).__name__
    if isinstance(value, Versioned):
        raise TypeError(f"A {kind} cannot be sent as it is: send its `value`, or `value.changed(...)`.")
    if isinstance(value, PurePath):
        raise TypeError(
            f"A path cannot be sent: send what is in the file, as Path({str(value)!r}).read_text()."
        )
    raise TypeError(
        f"{kind} cannot be sent: give a struct of `types`, a mapping or text; a length is text or a Length."
    )


encode = msgspec.json.Encoder(enc_hook=_encode_other).encode
"""What is sent, as JSON; a `Length` as its exact text."""


def path_part(value: object) -> str:
    """A value as one part of a path.

    Raises:
        ValueError: for empty text, which would name something else.
    """
    text = quote(str(value), safe="")
    if not text:
        raise ValueError("An id cannot be empty.")
    return text.replace(".", "%2E") if text in (".", "..") else text


def query_fields(**given: object) -> dict[str, str | list[str]]:
    """Query parameters, those without a value left out; one with a list is sent once for each of its values."""
    return {
        name: [_written(one) for one in value] if isinstance(value, (list, tuple)) else _written(value)
        for name, value in given.items()
        if value is not None
    }


def header_fields(**given: object) -> dict[str, str]:
    """Header fields, those without a value left out."""
    return {name: _written(value) for name, value in given.items() if value is not None}


def _written(value: object) -> str:
    if isinstance(value, Versioned):
        return value.etag
    return str(value).lower() if isinstance(value, bool) else str(value)
