"""/v1/schedules/{id}/revisions: who wrote what, when and why; and going back."""

from __future__ import annotations

from typing import Annotated

import msgspec
from litestar import get, post
from litestar.params import JSONBody, PathParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.links import REVISION_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.operation import Example
from longpoint.api.http.problems import NotFound
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import HeldSchedule, changing_once
from longpoint.api.stored.paging import LINK, Cursor, Limit, Page, page, read_number_cursor
from longpoint.api.stored.schedules import schedule_reply
from longpoint.api.stored.storage import CHANGES, ScheduleId, Why, find_schedule, store_of, stored
from longpoint.schedules import history
from longpoint.schedules.answers import ItemChanged, Revision, RevisionDetail, StoredSchedule
from longpoint.schedules.rows import RevisionRow, ScheduleRow, VersionRow
from longpoint.schedules.sent import GoBack
from longpoint.schedules.values import Change, ItemKind, OpeningIndex
from longpoint.texts import say

_TAG = "Revisions"
_MOST_REVISIONS = 2_000_000_000
RevisionNumber = Annotated[
    int, PathParameter(ge=1, le=_MOST_REVISIONS, description="The number of a revision.")
]
INPUTS = (ItemKind.SCHEDULE, ItemKind.OPENING)
"""What going back brings back: what was said and measured. Pieces stay cut, and what is on hand stays there."""

_read_opening = msgspec.json.Decoder(OpeningIndex).decode
_RESTORE = {"first": Example(summary="Back to how it began", request={"revision": 1})}


@get(
    "/v1/schedules/{schedule_id:str}/revisions",
    **stored("list_revisions", summary="List revisions", tag=_TAG, headers=LINK, links=REVISION_LINKS),
)
async def list_revisions(
    request: AnyRequest, schedule_id: ScheduleId, limit: Limit = 50, cursor: Cursor = None
) -> Reply[Page[Revision]]:
    """Every write to the schedule, the latest first. None is ever changed or taken away."""
    before = read_number_cursor(cursor, _MOST_REVISIONS)
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        rows = await history.list_revisions(connection, schedule.id, before, limit + 1)
    last = rows[limit - 1].number if len(rows) > limit else None
    return page(request, [Revision.of(row) for row in rows], limit, last)


@get(
    "/v1/schedules/{schedule_id:str}/revisions/{number:int}",
    **stored("get_revision", summary="Read a revision", tag=_TAG, headers=ETAG),
)
async def get_revision(
    request: AnyRequest, schedule_id: ScheduleId, number: RevisionNumber
) -> Reply[RevisionDetail]:
    """One write, and each thing it wrote. An export of the schedule can be had as of any revision."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await find_revision(connection, schedule, number)
        tag = state_tag(row.number, row.digest)
        check_news(request, tag)
        versions = await history.versions_of(connection, schedule.id, number)
    wrote = tuple(_item(version) for version in versions)
    detail = RevisionDetail(**msgspec.structs.asdict(Revision.of(row)), wrote=wrote)
    return Reply(detail, status_code=200, headers={"etag": etag(request, tag)})


@post(
    "/v1/schedules/{schedule_id:str}/restore",
    **stored(
        "restore_revision",
        summary="Go back to a revision",
        tag=_TAG,
        access="write",
        examples=_RESTORE,
        problems=CHANGES,
        headers=ETAG,
    ),
)
async def restore_revision(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[GoBack], why: Why = ""
) -> Reply[StoredSchedule]:
    """Makes a new revision in which the house and its openings are as they were at an earlier one.

    Nothing of what came between is lost: it can be gone back to in the same way. Work done and lengths on hand
    stay as they are, since pieces stay cut.
    """

    async def work(held: HeldSchedule) -> Reply[StoredSchedule]:
        held.check_current()
        connection, schedule = held.connection, held.schedule
        await find_revision(connection, schedule, data.revision)
        pairs = await history.changed_between(
            connection, schedule.id, data.revision, schedule.revision, INPUTS
        )
        changes = [_back(then, now) for then, now in pairs]
        await held.write(f"restore {data.revision}", *changes)
        return await schedule_reply(
            connection, request, await find_schedule(connection, request, schedule_id)
        )

    return await changing_once(request, data, schedule_id, work, why)


async def find_revision(connection: AsyncConnection, schedule: ScheduleRow, number: int) -> RevisionRow:
    """A revision of a schedule.

    Raises:
        NotFound: when the schedule has none of that number.
    """
    row = await history.revision_of(connection, schedule.id, number)
    if row is None:
        raise NotFound(say("problem", "revision.unknown", number=number, latest=schedule.revision))
    return row


def _back(then: VersionRow | None, now: VersionRow | None) -> Change:
    if then is None:
        assert now is not None
        return Change(ItemKind(now.kind), now.item_id, None)
    return Change(ItemKind(then.kind), then.item_id, then.document, then.exact, then.position)


def _item(version: VersionRow) -> ItemChanged:
    mark = None
    if version.kind == ItemKind.OPENING and version.document is not None:
        mark = _read_opening(version.document).mark
    return ItemChanged(ItemKind(version.kind).value, version.item_id, mark, version.document is None)
