"""Operations of the document's part "openings" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._pages import AsyncPages
from longpoint_sdk._versioned import Versioned


class Openings(BaseAsyncClient):
    """Operations as methods."""

    async def hold_openings(
        self,
        schedule_id: str,
        request: types.Chosen | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> types.Released:
        """Hold openings back.

        Nothing is bought or cut for these openings until they are released; they still count in the cost.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.Chosen`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

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
        """
        return await self.send(
            calls.hold_openings(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def list_openings(
        self,
        schedule_id: str,
        *,
        limit: int | None = None,
        room: str | None = None,
        trim: str | None = None,
        bottom: types.Bottom | None = None,
    ) -> AsyncPages[types.StoredOpening]:
        """List openings.

        Openings in the schedule's order.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.
            room: Only those in this room.
            trim: Only those that name this trim spec.
            bottom: Only those whose trim stands on this.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.
        """
        return AsyncPages(
            self, calls.list_openings(schedule_id, limit=limit, room=room, trim=trim, bottom=bottom)
        )

    async def add_opening(
        self,
        schedule_id: str,
        request: types.HouseOpening | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredOpening]:
        """Add an opening.

        Adds an opening after the others. An If-Match header, where there is one, names the schedule's state.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.HouseOpening`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredOpening`; its `etag` is the version.

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
        """
        return await self.send(
            calls.add_opening(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    async def remove_opening(
        self, schedule_id: str, opening: str, *, if_match: Versioned[Any] | str, why: str | None = None
    ) -> types.Made:
        """Take an opening off the schedule.

        The opening goes; earlier revisions keep it, and restoring one of them brings it back.

        One that a group names cannot go before the group lets go of it.

        Args:
            schedule_id: The id of a schedule.
            opening: An opening's id, or its mark (its id when the mark has a slash in it).
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_opening` that this is made from, or its `etag`: a newer one is
                left as it is.

        Raises:
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            PreconditionRequired: No version was named to change: give `if_match`.
        """
        return await self.send(calls.remove_opening(schedule_id, opening, why=why, if_match=if_match))

    async def get_opening(
        self, schedule_id: str, opening: str, *, if_none_match: Versioned[types.StoredOpening] | None = None
    ) -> Versioned[types.StoredOpening]:
        """Read an opening.

        One opening, as it was sent and exactly.

        Args:
            schedule_id: The id of a schedule.
            opening: An opening's id, or its mark (its id when the mark has a slash in it).
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StoredOpening`; its `etag` is the version.

        Example:
            k1 = await client.get_opening(schedule_id, "K1")
            print(k1.value.readings.jamb_width)
            k1 = await client.get_opening(schedule_id, "K1", if_none_match=k1)
        """
        return await self.send(calls.get_opening(schedule_id, opening, if_none_match=if_none_match))

    async def replace_opening(
        self,
        schedule_id: str,
        opening: str,
        request: types.HouseOpening | Mapping[str, Any],
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
    ) -> Versioned[types.StoredOpening]:
        """Measure an opening again.

        Replaces all that is said of an opening; If-Match names the opening's own state, so that others may
        change.

        A group that names it must still be buildable with it, and it keeps the mark by which the group names
        it.

        Args:
            schedule_id: The id of a schedule.
            opening: An opening's id, or its mark (its id when the mark has a slash in it).
            request: A `types.HouseOpening`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_opening` that this is made from, or its `etag`: a newer one is
                left as it is.

        Returns:
            A `Versioned`: its `value` is `types.StoredOpening`; its `etag` is the version.

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
            k1 = await client.get_opening(schedule_id, "K1")
            readings = k1.value.readings.changed(jamb_width="30 3/4 in")
            try:
                k1 = await client.replace_opening(schedule_id, "K1", k1.value.changed(readings=readings), if_match=k1)
            except VersionConflict as conflict:
                print(conflict.current.value.readings, "stands by now")
        """
        return await self.send(
            calls.replace_opening(schedule_id, opening, request, why=why, if_match=if_match)
        )

    async def release_openings(
        self,
        schedule_id: str,
        request: types.Chosen | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> types.Released:
        """Release openings for buying and cutting.

        Sticks are bought and cut for these openings from now on; one that is only estimated waits until it is
        measured.

        What is held already stays held, and what is released stays so. Nothing is changed when all of it is
        so already.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.Chosen`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

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
        """
        return await self.send(
            calls.release_openings(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )
