"""What each operation says of itself: its id, its examples, what it answers in and how it may refuse."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import KW_ONLY, dataclass, field
from typing import Any, Literal, ParamSpec

import msgspec
from litestar.handlers.base import BaseRouteHandler

from longpoint.api.http.negotiate import BOTH
from longpoint.lengths import Unit
from longpoint.values import Faults

Access = Literal["open", "read", "write"]
_OPT = "operation"
ReadsCsv = Callable[[bytes, Unit | None], tuple[object, object, Faults]]
"""Reads a body of CSV, its bare lengths in a unit: gives the handler's wire type, what came from where, and faults."""
P = ParamSpec("P")


class Example(msgspec.Struct, frozen=True, kw_only=True):
    """A real request, and the real answer to it where it is short and always the same.

    Attributes:
        summary: What the example shows.
        request: The body, as it would be decoded from JSON; None for an operation without one.
        response: The whole answer, decoded from JSON; None leaves it out of the document.
    """

    summary: str
    request: Any = None
    response: Any = None


@dataclass(frozen=True)
class Endpoint:
    """What an operation says of itself beyond its types.

    Attributes:
        id: The operation id, verb_noun; the SDK's method has this name.
        summary: One line; the handler's docstring is the description.
        tag: The heading it stands under in the docs.
        status: The status of success.
        examples: Real requests, by a short name; each is tried against the service by a test.
        problems: Statuses it may refuse with, besides those that every operation of its kind shares.
        offers: Media types it answers in, the favorite first.
        headers: Fields its answer carries, with what each says.
        links: OpenAPI links to operations that take up from its answer, by a short name.
        access: What a key must allow for it; "open" needs no key.
        stored: Whether it works on what is stored.
        reads_csv: Reads a text/csv body, where it takes one: gives the handler's wire type, and what came from where.
        needs_match: Whether an answer of 428 means that If-Match is needed always, not only for some requests.
        creates: Whether it makes what is not there yet, which it answers with 201.
    """

    id: str
    _: KW_ONLY
    summary: str
    tag: str
    status: int = 200
    examples: Mapping[str, Example] = field(default_factory=dict)
    problems: Sequence[int] = ()
    offers: tuple[str, ...] = BOTH
    headers: Mapping[str, str] = field(default_factory=dict)
    links: Mapping[str, object] = field(default_factory=dict)
    access: Access = "read"
    stored: bool = False
    reads_csv: ReadsCsv | None = None
    needs_match: bool = True
    creates: bool = False


def told_to_route(kind: Callable[P, Endpoint]) -> Callable[P, dict[str, Any]]:
    """What gives the keyword arguments of a route decorator, called as a kind of operation is."""

    def stated(*args: P.args, **kwargs: P.kwargs) -> dict[str, Any]:
        said = kind(*args, **kwargs)
        return {
            "operation_id": said.id,
            "summary": said.summary,
            "tags": [said.tag],
            "status_code": said.status,
            "opt": {_OPT: said},
        }

    return stated


operation = told_to_route(Endpoint)
"""Keyword arguments for a route decorator; see `Endpoint`."""


def operation_of(handler: BaseRouteHandler) -> Endpoint | None:
    """What a handler said of itself; None for pages and files, which are no part of the API."""
    said = handler.opt.get(_OPT)
    return said if isinstance(said, Endpoint) else None
