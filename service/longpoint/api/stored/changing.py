"""Changing a schedule: hold it, check what the change was made from, write a revision, answer."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from functools import cached_property
from typing import TypeVar

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import check_current, check_match, etag, state_tag
from longpoint.api.http.problems import NotFound
from longpoint.api.http.problems_stored import Archived
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.retrying import once
from longpoint.api.stored.storage import author_of, caller_of, clean, speak_of, store_of
from longpoint.schedules import houses
from longpoint.schedules.kept import KeptHouse, read_house
from longpoint.schedules.rows import LengthRow, OpeningRow, PieceRow, ScheduleRow
from longpoint.schedules.values import Change, Stamp
from longpoint.texts import say
from longpoint.values import Given

T = TypeVar("T")
Stands = ScheduleRow | OpeningRow | PieceRow | LengthRow


class HeldSchedule:
    """A schedule held for a change: every other writer of it waits until the transaction ends.

    Attributes:
        request: whose change it is.
        connection: the writing transaction.
        schedule: the schedule as it stands.
        why: the reason that was given.
    """

    def __init__(
        self, request: AnyRequest, connection: AsyncConnection, schedule: ScheduleRow, why: str
    ) -> None:
        self.request = request
        self.connection = connection
        self.schedule = schedule
        self.why = why

    @cached_property
    def house(self) -> KeptHouse:
        """What is said of the house as a whole."""
        return read_house(self.schedule.document)

    def check_current(self, row: Stands | None = None) -> None:
        """Make sure the change was made from what now stands: the schedule, or one thing in it.

        Raises:
            PreconditionRequired: when it does not say what it was made from.
            PreconditionFailed: when it was made from another.
        """
        row = row or self.schedule
        check_current(self.request, state_tag(row.revision, row.digest))

    def check_match(self) -> None:
        """The same, for a change that may leave it unsaid.

        Raises:
            PreconditionFailed: when it was made from another state.
        """
        check_match(self.request, self.tag)

    @property
    def tag(self) -> str:
        """What the schedule's state is named by."""
        return state_tag(self.schedule.revision, self.schedule.digest)

    def refuse_misread(self) -> None:
        """Refuse a body of which something could not be read; what else is wrong was reported before.

        Raises:
            Refusal: with every such text.
        """
        self.request.misread.raise_any()

    async def write(
        self, action: str, *changes: Change, as_planned: bool = False, **columns: str | None
    ) -> Stamp:
        """Append a revision; `as_planned` where a plan of the sticks that was made before it stands.

        Raises:
            Refusal: when something of the body could not be read.
        """
        self.refuse_misread()
        author = author_of(self.request, self.why)
        return await houses.write(
            self.connection,
            self.schedule,
            author,
            action,
            list(changes),
            as_planned=as_planned,
            **columns,
        )

    def headers(self, row: Stands | Stamp) -> dict[str, str]:
        """The ETag field of what was written."""
        number = row.number if isinstance(row, Stamp) else row.revision
        return {"etag": etag(self.request, state_tag(number, row.digest))}


async def hold(
    request: AnyRequest, connection: AsyncConnection, id: str, why: str, *, archived: bool
) -> HeldSchedule:
    """A schedule of the caller's account, held for a change.

    Raises:
        NotFound: when the account has none of that id.
        Archived: when it is archived and may not be.
    """
    row = await houses.find(connection, caller_of(request).account_id, clean(id), hold=True)
    if row is None:
        raise NotFound(say("problem", "schedule.unknown", id=id))
    if row.archived_at is not None and not archived:
        raise Archived(say("problem", "schedule.archived", at=row.archived_at))
    speak_of(request, row)
    return HeldSchedule(request, connection, row, why)


@asynccontextmanager
async def changing(
    request: AnyRequest, id: str, why: str = "", *, archived: bool = False
) -> AsyncIterator[HeldSchedule]:
    """A schedule held for a change: what is written is kept when all went well, else nothing."""
    async with store_of(request).writing() as connection:
        yield await hold(request, connection, id, why, archived=archived)


async def changing_once(
    request: AnyRequest,
    data: Given | None,
    id: str,
    work: Callable[[HeldSchedule], Awaitable[Reply[T]]],
    why: str = "",
    *,
    archived: bool = False,
) -> Reply[T]:
    """The same for a POST, which may come with an Idempotency-Key: it is then done at most once."""

    async def held(connection: AsyncConnection) -> Reply[T]:
        return await work(await hold(request, connection, id, why, archived=archived))

    return await once(request, data, held)
