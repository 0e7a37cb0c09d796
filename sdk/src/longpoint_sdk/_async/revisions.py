"""Operations of the document's part "revisions" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._pages import AsyncPages
from longpoint_sdk._versioned import Versioned


class Revisions(BaseAsyncClient):
    """Operations as methods."""

    async def compare_revisions(
        self,
        schedule_id: str,
        *,
        from_: int,
        to: int | None = None,
        if_none_match: Versioned[types.Changes] | None = None,
    ) -> Versioned[types.Changes]:
        """Compare two revisions.

        Which readings changed, hence which pieces are new, gone, longer, shorter or unchanged, by mark.

        The two may be given in either order: what is reported is what the one became on the way to the other.

        Args:
            schedule_id: The id of a schedule.
            from_: The revision to compare from.
            to: The revision to compare to; the latest when left out.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.Changes`; its `etag` is the version.
        """
        return await self.send(
            calls.compare_revisions(schedule_id, from_=from_, to=to, if_none_match=if_none_match)
        )

    async def restore_revision(
        self,
        schedule_id: str,
        request: types.GoBack | Mapping[str, Any],
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredSchedule]:
        """Go back to a revision.

        Makes a new revision in which the house and its openings are as they were at an earlier one.

        Nothing of what came between is lost: it can be gone back to in the same way. Work done and lengths on
        hand stay as they are, since pieces stay cut.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.GoBack`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredSchedule`; its `etag` is the version.

        Raises:
            BodyTooSlow: The body did not come in time.
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            PreconditionRequired: No version was named to change: give `if_match`.

        Example:
            house = await client.get_schedule(schedule_id)
            await client.restore_revision(schedule_id, {"revision": 1}, if_match=house)
        """
        return await self.send(
            calls.restore_revision(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def list_revisions(self, schedule_id: str, *, limit: int | None = None) -> AsyncPages[types.Revision]:
        """List revisions.

        Every write to the schedule, the latest first. None is ever changed or taken away.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.
        """
        return AsyncPages(self, calls.list_revisions(schedule_id, limit=limit))

    async def get_revision(
        self, schedule_id: str, number: int, *, if_none_match: Versioned[types.RevisionDetail] | None = None
    ) -> Versioned[types.RevisionDetail]:
        """Read a revision.

        One write, and each thing it wrote. An export of the schedule can be had as of any revision.

        Args:
            schedule_id: The id of a schedule.
            number: The number of a revision.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.RevisionDetail`; its `etag` is the version.
        """
        return await self.send(calls.get_revision(schedule_id, number, if_none_match=if_none_match))
