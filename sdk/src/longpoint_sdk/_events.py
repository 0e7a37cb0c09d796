"""Server-sent events (WHATWG HTML, section 9.2), read as they come."""

from __future__ import annotations

import codecs
import re
from collections.abc import Callable
from decimal import Decimal
from typing import Any, TypeVar, cast

import msgspec
from msgspec.structs import replace

from longpoint_sdk._call import Call
from longpoint_sdk._errors import UnreadableAnswer
from longpoint_sdk._refusal import refusal_in

T = TypeVar("T")
EVENT_STREAM = "text/event-stream"
_LINE_END = re.compile(r"\r\n|\r|\n")


class Progress(msgspec.Struct, frozen=True, kw_only=True):
    """How far the search for one profile's sticks has come.

    Attributes:
        profile: The profile's name.
        cost: What the best plan so far costs.
        bound: No plan costs less.
        gap: How far the best may be from the cheapest, as a share of it; 0 is proven.
        seconds: How long the search has worked.
    """

    profile: str
    cost: Decimal
    bound: Decimal
    gap: float
    seconds: float


def as_stream(call: Call[Any]) -> Call[Any]:
    """The same call, to be answered with events."""
    return replace(call, accept=EVENT_STREAM, result=bytes, versioned=False)


class Event(msgspec.Struct, frozen=True):
    """One event of a stream.

    Attributes:
        name: What kind of event it is.
        data: What it says, as it came.
        id: Its id, where the service gives one.
    """

    name: str
    data: str
    id: str = ""

    def read(self, kind: type[T] | Any = Any) -> T | Any:
        """What it says, from JSON.

        Raises:
            UnreadableAnswer: when it is not of that kind.
        """
        try:
            return msgspec.json.decode(self.data, type=kind)
        except (msgspec.DecodeError, ValueError) as fault:
            raise UnreadableAnswer(
                f"The event is not what the document promises: {fault}", 200, "", self.data.encode()
            ) from fault


def answer_in(event: Event, call: Call[T], progress: Callable[[Progress], object]) -> T | None:
    """The answer, if this event holds it; one of progress is reported.

    Raises:
        Problem: the service refused after all.
    """
    if event.name == "progress":
        progress(event.read(Progress))
    elif event.name == "problem":
        raise refusal_in(event.data.encode())
    elif event.name == "answer":
        return cast("T", event.read(call.result))
    return None


def without_answer() -> UnreadableAnswer:
    """What is raised for a stream that ends without an answer."""
    return UnreadableAnswer("The stream ended without an answer.", 200, "", b"")


class EventReader:
    """Takes bytes as they come and gives each event once it is whole; one cut short at the end is left out."""

    def __init__(self) -> None:
        self._decode = codecs.getincrementaldecoder("utf-8-sig")(errors="replace").decode
        self._waiting = ""
        self._name = ""
        self._id = ""
        self._data: list[str] = []

    def feed(self, chunk: bytes) -> list[Event]:
        """The events that this completes."""
        text = self._waiting + self._decode(chunk)
        held = "\r" if text.endswith("\r") else ""  # the line feed that belongs to it may be still on its way
        *lines, rest = _LINE_END.split(text.removesuffix(held) if held else text)
        self._waiting = rest + held
        return [event for line in lines if (event := self._take(line))]

    def _take(self, line: str) -> Event | None:
        if not line:
            return self._dispatch()
        name, _, value = line.partition(":")
        value = value.removeprefix(" ")
        if name == "data":
            self._data.append(value)
        elif name == "event":
            self._name = value
        elif name == "id" and "\0" not in value:
            self._id = value
        return None

    def _dispatch(self) -> Event | None:
        event = Event(self._name or "message", "\n".join(self._data), self._id) if self._data else None
        self._name, self._data = "", []
        return event
