"""Operations of the document's part "schedules" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._pages import AsyncPages
from longpoint_sdk._versioned import Versioned


class Schedules(BaseAsyncClient):
    """Operations as methods."""

    def list_schedules(
        self, *, limit: int | None = None, name: str | None = None, archived: bool | None = None
    ) -> AsyncPages[types.ScheduleLine]:
        """List schedules.

        The account's schedules, the latest made first.

        Args:
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.
            name: Part of the name, in capitals or not.
            archived: Only those archived, or only those not; both when left out.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.

        Example:
            async for line in client.list_schedules(name="heron"):
                print(line.id, line.name, line.opening_count)
        """
        return AsyncPages(self, calls.list_schedules(limit=limit, name=name, archived=archived))

    async def create_schedule(
        self,
        request: types.NewSchedule | Mapping[str, Any],
        *,
        why: str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredSchedule]:
        """Start a house's schedule.

        Keeps a house: how it is trimmed, what stock there is, and its openings where they are known already.

        An export of a schedule is a body for this. All of it is kept or, when anything is wrong, none.

        Args:
            request: A `types.NewSchedule`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredSchedule`; its `etag` is the version.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # The key is one of your own: sent again, even from another process, the house is kept once.
            house = await client.create_schedule(types.NewSchedule(name="Heron Cottage"), idempotency_key="order-1041")
            print(house.value.id, house.etag)
        """
        return await self.send(calls.create_schedule(request, why=why, idempotency_key=idempotency_key))

    async def delete_schedule(self, schedule_id: str, *, if_match: Versioned[Any] | str) -> None:
        """Delete an archived schedule.

        Deletes a schedule with its readings, its work and its history, for good; it must be archived first.

        Args:
            schedule_id: The id of a schedule.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is.

        Raises:
            ScheduleNotArchived: The schedule is not archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            PreconditionRequired: No version was named to change: give `if_match`.
        """
        return await self.send(calls.delete_schedule(schedule_id, if_match=if_match))

    async def get_schedule(
        self, schedule_id: str, *, if_none_match: Versioned[types.StoredSchedule] | None = None
    ) -> Versioned[types.StoredSchedule]:
        """Read a schedule.

        What is said of the house as a whole; its openings are listed under it.

        Args:
            schedule_id: The id of a schedule.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StoredSchedule`; its `etag` is the version.
        """
        return await self.send(calls.get_schedule(schedule_id, if_none_match=if_none_match))

    async def replace_schedule(
        self,
        schedule_id: str,
        request: types.KeptHouse | Mapping[str, Any],
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
    ) -> Versioned[types.StoredSchedule]:
        """Change what is said of the house.

        Replaces everything said of the house as a whole; openings and lengths on hand stay as they are.

        Every opening must still be buildable with its trim, and every group with its openings: else all those
        that are not are reported, and nothing is saved.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.KeptHouse`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is.

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
            thinner = house.value.house.changed(kerf="3/32 in")
            house = await client.replace_schedule(schedule_id, thinner, if_match=house, why="another blade")
        """
        return await self.send(calls.replace_schedule(schedule_id, request, why=why, if_match=if_match))

    async def archive_schedule(
        self,
        schedule_id: str,
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredSchedule]:
        """Put a schedule away.

        An archived schedule can be read but not changed.

        Args:
            schedule_id: The id of a schedule.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredSchedule`; its `etag` is the version.

        Raises:
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            PreconditionRequired: No version was named to change: give `if_match`.
        """
        return await self.send(
            calls.archive_schedule(schedule_id, why=why, if_match=if_match, idempotency_key=idempotency_key)
        )

    async def unarchive_schedule(
        self,
        schedule_id: str,
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredSchedule]:
        """Take a schedule out of the archive.

        It can be changed again.

        Args:
            schedule_id: The id of a schedule.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredSchedule`; its `etag` is the version.

        Raises:
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            PreconditionRequired: No version was named to change: give `if_match`.
        """
        return await self.send(
            calls.unarchive_schedule(schedule_id, why=why, if_match=if_match, idempotency_key=idempotency_key)
        )
