"""Everything this SDK raises, in one tree.

LongpointError
├── ConfigError          the client was set up in a way that cannot work
├── LengthError          text that is no length
├── ConnectionFailed     no answer came
│   ├── NotReached       there was no way to the service, so nothing was done
│   └── TimedOut         none came in time
├── UnreadableAnswer     an answer came, but not of the form the document promises
└── Problem              the service refused; a class for each kind in `longpoint_sdk.problems`
    └── VersionConflict  what was to be changed had been changed by someone else; carries both versions
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, ClassVar

import msgspec


class LongpointError(Exception):
    """Anything this SDK raises about a call, a length or its set-up: catch it to catch them all."""


class ConfigError(LongpointError, ValueError):
    """The client was set up in a way that cannot work."""


class LengthError(LongpointError, ValueError):
    """Text or a number that cannot be read as a length."""


class ConnectionFailed(LongpointError):
    """No answer came. The request may or may not have been done.

    Attributes:
        request_id: What the request was sent as; finds it in the service's log, if it got there.
        attempts: How often it was sent.
    """

    request_id: str = ""
    attempts: int = 1

    sent: ClassVar[bool] = True
    """Whether any of the request may have reached the service."""


class NotReached(ConnectionFailed):
    """There was no way to the service, so nothing was done."""

    sent = False


class TimedOut(ConnectionFailed):
    """No answer came in time. The request may or may not have been done."""


class UnreadableAnswer(LongpointError):
    """An answer came that is not of the form the document promises.

    Attributes:
        status: Its HTTP status.
        request_id: The request's id.
        content: Its body.
    """

    def __init__(self, message: str, status: int, request_id: str, content: bytes) -> None:
        super().__init__(message, status, request_id, content)
        self.status = status
        self.request_id = request_id
        self.content = content

    def __str__(self) -> str:
        return str(self.args[0])


class Fault(msgspec.Struct, frozen=True, kw_only=True):
    """One thing that was wrong with a request.

    Attributes:
        code: A short stable name for the kind of fault.
        detail: What was wrong and what to send instead.
        pointer: RFC 6901 JSON pointer into the body that was sent, as "/lengths/0"; None when the fault is not in the
            body.
        parameter: The query or path parameter at fault, when it is one.
        header: The header field at fault, when it is one.
        row: The row of a CSV body, the first being 1.
        column: The column of a CSV body, as the file names it.
    """

    code: str
    detail: str
    pointer: str | None = None
    parameter: str | None = None
    header: str | None = None
    row: int | None = None
    column: str | None = None

    def __str__(self) -> str:
        row = f"row {self.row}" if self.row is not None else None
        places = [row, self.column, self.pointer, self.parameter, self.header]
        place = ", ".join(one for one in places if one)
        return f"{place}: {self.detail}" if place else self.detail


class Problem(LongpointError):
    """The service refused a request (RFC 9457).

    Attributes:
        status: The HTTP status.
        type: The kind of problem, `/problems/<slug>`; "about:blank" when something before the service answered.
        title: The kind in a few words.
        detail: What happened this time.
        instance: The path that was asked for.
        errors: Everything that was wrong, each with a pointer to where it was.
        request_id: The request's id; give it when asking for help.
        retry_after: Seconds after which the service asks to be tried again; None when it does not say.
        headers: The answer's header fields.
        attempts: How often the request was sent.
    """

    type_uri: ClassVar[str] = "about:blank"
    """The `type` of this kind of problem."""

    def __init__(
        self,
        *,
        status: int,
        detail: str,
        type: str = "",
        title: str = "",
        instance: str = "",
        errors: Sequence[Fault] = (),
        request_id: str = "",
        retry_after: float | None = None,
        headers: Mapping[str, str] | None = None,
        attempts: int = 1,
    ) -> None:
        super().__init__(detail)
        self.status = status
        self.type = type or self.type_uri
        self.title = title
        self.detail = detail
        self.instance = instance
        self.errors = tuple(errors)
        self.request_id = request_id
        self.retry_after = retry_after
        self.headers: Mapping[str, str] = headers or {}
        self.attempts = attempts

    @property
    def pointers(self) -> tuple[str, ...]:
        """JSON pointers to everything in the body that was wrong: `("/openings/0/readings/jamb_width",)`."""
        return tuple(fault.pointer for fault in self.errors if fault.pointer is not None)

    def __str__(self) -> str:
        lines = [f"{self.status} {self.detail or self.title}", *(f"  {fault}" for fault in self.errors)]
        if self.request_id:
            lines.append(f"  (request {self.request_id})")
        return "\n".join(lines)

    def __reduce__(self) -> tuple[Any, ...]:
        return _remake, (type(self), {**vars(self), "headers": dict(self.headers)})


class VersionConflict(Problem):
    """What was to be changed had been changed since it was read. Nothing was done.

    When it was sent more than once (`attempts`), the change found may be this one: its first answer may have been
    lost on the way. Then `current` looks as it was to look.

    Attributes:
        mine: What was sent.
        current: A `Versioned` of how it stands now, to change instead; None where it could not be read.
    """

    mine: Any = None
    current: Any = None


def _remake(kind: type[Problem], state: dict[str, Any]) -> Problem:
    made = kind.__new__(kind, state["detail"])
    made.__dict__.update(state)
    return made
