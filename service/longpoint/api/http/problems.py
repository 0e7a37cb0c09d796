"""Problems: what the service answers when it cannot do what was asked (RFC 9457)."""

import re
from collections.abc import Iterable, Mapping, Sequence
from typing import ClassVar, Self

import msgspec

from longpoint.texts import Sentence, say
from longpoint.values import Fault

PROBLEM_JSON = "application/problem+json"


class ProblemBody(msgspec.Struct, frozen=True, kw_only=True):
    """What every refusal looks like: application/problem+json, as RFC 9457 has it.

    Attributes:
        type: Where this kind of problem is explained, a path on this service; stable, so match on it.
        title: The kind of problem, in a few words.
        status: The HTTP status of the answer, repeated.
        detail: It says what happened this time.
        instance: The path that was asked for.
        errors: Everything that was wrong, each with where it was; may be empty.
        request_id: The id of this request, as in the X-Request-Id header; give it when asking for help.
    """

    type: str
    title: str
    status: int
    detail: Sentence
    instance: str
    errors: list[Fault]
    request_id: str


class Problem(Exception):  # noqa: N818 - RFC 9457 calls it a problem
    """A refusal. Each kind is a subclass that says its status and title. Its docstring says what a caller can do about
    it: one paragraph for the page the type URI leads to.

    Attributes:
        status: The HTTP status.
        slug: The last part of the type URI, /problems/<slug>: the class's name, unless it says another; never changes
            once published.
        title: The kind of problem in a few words.
        advice: What to do about it.
        detail: What happened this time.
        errors: Each thing that was wrong.
        headers: Header fields the answer must carry.
    """

    status: ClassVar[int]
    slug: ClassVar[str]
    title: ClassVar[str]
    advice: ClassVar[str]

    kinds: ClassVar[dict[str, type["Problem"]]] = {}
    """Every kind of problem, by slug."""

    def __init_subclass__(cls, *, status: int, title: str, slug: str = "") -> None:
        super().__init_subclass__()
        cls.status = status
        cls.slug = slug or re.sub(r"\B([A-Z])", r"-\1", cls.__name__).lower()
        cls.title = title
        cls.advice = " ".join((cls.__doc__ or "").split())
        if Problem.kinds.setdefault(cls.slug, cls) is not cls:
            raise TypeError(f"two kinds of problem are called {cls.slug}")

    def __init__(
        self, detail: Sentence, errors: Sequence[Fault] = (), headers: Mapping[str, str] | None = None
    ) -> None:
        super().__init__(detail)
        self.detail = detail
        self.errors = list(errors)
        self.headers = dict(headers or {})

    @classmethod
    def type_uri(cls) -> str:
        """The relative URI that names this kind of problem and leads to its page."""
        return f"/problems/{cls.slug}"


class BadRequest(Problem, status=400, title="The request could not be read"):
    """Something about the request line or its header fields is not valid HTTP: the detail says what."""


class MalformedBody(Problem, status=400, title="The body could not be read"):
    """The body is not valid JSON or MessagePack, is not UTF-8, gives one key twice, or is nested too deeply. Let a
    library write it rather than joining text by hand, and check that it was sent whole."""


class NotFound(Problem, status=404, title="Nothing is here"):
    """There is no address of this path, or nothing of that id or mark any more: the detail says which. Compare the path
    with the list in /openapi.json or at /docs."""


class MethodNotAllowed(Problem, status=405, title="This method does not work here"):
    """The address exists, but not for this method. The Allow header of the answer lists those that work."""


class NotAcceptable(Problem, status=406, title="None of the formats asked for can be given"):
    """The Accept header leaves out every format this address can answer in. Ask for application/json, or one of the
    others that the detail lists, or send no Accept header."""


class ContentTooLarge(Problem, status=413, title="The body is too large"):
    """The body is longer than this service takes: the detail says how long it may be. Send less at once."""


class UnsupportedMediaType(Problem, status=415, title="The body is in a format this address does not read"):
    """Say what the body is with a Content-Type header: application/json in UTF-8, application/vnd.msgpack or
    application/msgpack, without a Content-Encoding."""


class InternalError(Problem, status=500, title="The service failed"):
    """This is a fault of the service, not of the request. Trying again may help. If it does not, tell whoever runs the
    service the request_id of the answer: it finds the fault in their log."""


class BodyTooSlow(Problem, status=408, title="The body did not come in time"):
    """The body took longer to come than this service waits. Send it again over a better connection, or less."""


class RateExceeded(Problem, status=429, title="Too many requests"):
    """The key, or the address where no key is shown, made more requests than it may in a time. Retry-After says when to
    go on; the RateLimit fields of every answer say how many are left."""


class Overloaded(Problem, status=503, title="The service has too much to do"):
    """More was asked at once than this service can answer in time, so this request was turned away before any work was
    done for it. Send it again after the time in Retry-After, a little later each time."""


class Stopping(Problem, status=503, title="The service is about to stop"):
    """This one of the services is about to stop; ask again, and another will answer."""


class InvalidRequest(Problem, status=422, title="The request was read, but cannot be done as it stands"):
    """Each of the errors says where (a JSON pointer into the body, a parameter or a header), what was wrong and what to
    send, measure or change. All that could be found is listed at once. Nothing was saved."""

    @classmethod
    def of(cls, faults: Iterable[Fault], omitted: int = 0) -> Self:
        """One refusal with every fault that was gathered, and how many more there were."""
        found = list(faults)
        count = len(found) + omitted
        detail = found[0].detail if count == 1 else say("problem", "request.several-wrong", faults=count)
        listed = say("hint", "request.first-listed", listed=len(found)) if omitted else None
        return cls(detail + listed, found)
