"""Cursor pages: the cursor says where the last page ended, so what comes and goes elsewhere moves nothing."""

import base64
import binascii
from typing import Annotated, Generic, TypeVar
from urllib.parse import parse_qsl, urlencode

import msgspec
from litestar.params import QueryParameter

from longpoint.api.http.answer import PLAIN, Reply
from longpoint.api.http.problems import InvalidRequest
from longpoint.api.http.request import AnyRequest
from longpoint.lengths import LengthWriter
from longpoint.texts import say
from longpoint.values import Fault

T = TypeVar("T")


class Page(msgspec.Struct, Generic[T], frozen=True):
    """One page of a list.

    Attributes:
        items: What stands on this page.
        next: Cursor of the next page, for the `cursor` parameter; null on the last page.
    """

    items: list[T]
    next: str | None = None


DEFAULT_LIMIT = 50
Limit = Annotated[int, QueryParameter(ge=1, le=500, description="How many to give at most.")]
Cursor = Annotated[
    str | None,
    QueryParameter(
        max_length=200,
        pattern=r"^[A-Za-z0-9_\-]+$(?![\s\S])",
        description="Where to go on: `next` of the page before.",
    ),
]
LINK = {"Link": "RFC 8288; rel=next is the next page, where there is one."}


def read_cursor(cursor: str | None) -> str | None:
    """Where the page before ended.

    Raises:
        InvalidRequest: when it is no cursor of this service.
    """
    if cursor is None:
        return None
    try:
        text = base64.urlsafe_b64decode(cursor + "=" * (-len(cursor) % 4)).decode("ascii")
    except (binascii.Error, ValueError):
        text = ""
    kind, _, place = text.partition(":")
    if kind != "at" or not place.isalnum():
        fault = Fault(code="wrong-cursor", detail=say("problem", "cursor.send-next"), parameter="cursor")
        raise InvalidRequest(say("problem", "cursor.not-of-this-service"), [fault])
    return place


def read_number_cursor(cursor: str | None, most: int = 10**15) -> int | None:
    """The same, where pages end at a number.

    Args:
        cursor: As it was sent.
        most: The greatest number that the column can be compared with.

    Raises:
        InvalidRequest: when it is no cursor of this service.
    """
    place = read_cursor(cursor)
    if place is None:
        return None
    if not place.isdigit() or len(place) > 15 or int(place) > most:
        fault = Fault(code="wrong-cursor", detail=say("problem", "cursor.send-next"), parameter="cursor")
        raise InvalidRequest(say("problem", "cursor.not-of-this-list"), [fault])
    return int(place)


def page(
    request: AnyRequest,
    items: list[T],
    limit: int,
    last: str | int | None,
    headers: dict[str, str] | None = None,
    write: LengthWriter = PLAIN,
) -> Reply[Page[T]]:
    """A page of a list.

    Args:
        request: Which asked for it.
        items: One more than the limit, when there are more.
        limit: How many it may hold.
        last: Where it ends: what the item at the limit is sorted by.
        headers: Further fields of the answer.
        write: Of lengths in it.
    """
    if len(items) <= limit or last is None:
        return Reply(Page(items=items[:limit], next=None), write, headers=headers)
    cursor = base64.urlsafe_b64encode(f"at:{last}".encode()).decode().rstrip("=")
    query = [(name, value) for name, value in _query(request) if name != "cursor"]
    address = f"{request.scope['path']}?{urlencode([*query, ('cursor', cursor)])}"
    return Reply(
        Page(items=items[:limit], next=cursor),
        write,
        headers={**(headers or {}), "link": f'<{address}>; rel="next"'},
    )


def _query(request: AnyRequest) -> list[tuple[str, str]]:
    return parse_qsl(request.scope["query_string"].decode("latin-1"), keep_blank_values=True)
