"""What every stored operation shares: the store, who is asking, and how storage's failures are answered."""

import logging
from dataclasses import dataclass, replace
from typing import Annotated

from litestar import Response
from litestar.params import PathParameter, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.access import CALLER
from longpoint.api.http.errors import on_failure
from longpoint.api.http.operation import Endpoint, told_to_route
from longpoint.api.http.problems import NotFound, Overloaded
from longpoint.api.http.problems_stored import NoStorage, StorageUnavailable
from longpoint.api.http.request import ROUNDING, AnyRequest
from longpoint.schedules import houses
from longpoint.schedules.errors import DatabaseBusy, StorageError
from longpoint.schedules.kept import read_house
from longpoint.schedules.rows import ScheduleRow
from longpoint.schedules.store import Store
from longpoint.schedules.values import Author
from longpoint.texts import say

_log = logging.getLogger("longpoint.storage")

Why = Annotated[
    str,
    QueryParameter(
        max_length=500, pattern=r"^[^\x00]*$", description="Why this is changed; kept with the revision."
    ),
]
"""The reason of a change, kept with its revision."""
ScheduleId = Annotated[str, PathParameter(max_length=64, description="The id of a schedule.")]


def by_name(description: str) -> QueryParameter:
    """A query parameter that a list is filtered by."""
    return QueryParameter(min_length=1, max_length=120, pattern=r"^[^\x00]*$", description=description)


CHANGES = (403, 409, 412, 428)
"""Statuses that a change of something stored may refuse with."""


@dataclass(frozen=True)
class StoredEndpoint(Endpoint):
    """An operation on what is stored."""

    stored: bool = True


stored = told_to_route(StoredEndpoint)
"""Keyword arguments for the route decorator of an operation on what is stored; see `Endpoint`."""


def store_of(request: AnyRequest) -> Store:
    """The store.

    Raises:
        NoStorage: when this service keeps nothing.
    """
    store: Store | None = request.app.state.store
    if store is None:
        raise NoStorage(say("problem", "database.none"))
    return store


def caller_of(request: AnyRequest) -> Author:
    """Who is asking."""
    caller: Author = request.scope["state"][CALLER]
    return caller


def author_of(request: AnyRequest, why: str = "") -> Author:
    """Who is asking, as revisions are signed."""
    return replace(caller_of(request), why=why)


async def find_schedule(connection: AsyncConnection, request: AnyRequest, id: str) -> ScheduleRow:
    """A schedule of the caller's account, to read.

    Raises:
        NotFound: when the account has none of that id.
    """
    row = await houses.find(connection, caller_of(request).account_id, clean(id))
    if row is None:
        raise NotFound(say("problem", "schedule.unknown", id=id))
    speak_of(request, row)
    return row


def speak_of(request: AnyRequest, row: ScheduleRow) -> None:
    """Have what is refused of a house say lengths as that house has them, or as the one does that was sent for it."""
    request.scope["state"].setdefault(ROUNDING, lambda: read_house(row.document).rounding)


def clean(text: str) -> str:
    """A name out of an address as the database can look it up: nothing is called by a NUL or half a character."""
    return text if "\0" not in text and _encodable(text) else ""


def _encodable(text: str) -> bool:
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return True


def on_storage_error(request: AnyRequest, failure: StorageError) -> Response[bytes]:
    """Answer that storage cannot be used: why goes to the log, not to the caller."""
    if isinstance(failure, DatabaseBusy):
        busy = say("problem", "database.busy")
        return on_failure(request, Overloaded(busy, headers={"retry-after": "1"}))
    _log.error("storage: %s", failure)
    return on_failure(
        request,
        StorageUnavailable(
            say("problem", "database.unavailable"),
            headers={"retry-after": "1"},
        ),
    )
