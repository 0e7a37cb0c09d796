"""Operations of the document's part "lengths_on_hand" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient
from longpoint_sdk._pages import Pages
from longpoint_sdk._versioned import Versioned


class LengthsOnHand(BaseClient):
    """Operations as methods."""

    def list_lengths(
        self,
        schedule_id: str,
        *,
        limit: int | None = None,
        profile: str | None = None,
        state: types.LengthState | None = None,
    ) -> Pages[types.StoredLength]:
        """List lengths on hand.

        Every lot, the first kept first; sticks are planned from what is left of each before any are bought.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.
            profile: Only those of this profile.
            state: Only those of which this can be said: some are ordered and still to come, some were
                delivered, some are on hand, or all are used up.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.
        """
        return Pages(self, calls.list_lengths(schedule_id, limit=limit, profile=profile, state=state))

    def add_length(
        self,
        schedule_id: str,
        request: types.LengthOnHand | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredLength]:
        """Add lengths that are on hand.

        A lot that is new, an offcut found behind the bench for one: where it has no name, the service makes
        one.

        An If-Match header, where there is one, names the schedule's state.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.LengthOnHand`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredLength`; its `etag` is the version.

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
        return self.send(
            calls.add_length(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def remove_length(
        self, schedule_id: str, lot: str, *, if_match: Versioned[Any] | str, why: str | None = None
    ) -> types.Made:
        """Remove a lot.

        For one that was entered by mistake. One that is used up stays listed, and is not planned with.

        Args:
            schedule_id: The id of a schedule.
            lot: The name of a lot, or its id (its id when the name has a slash in it).
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_length` that this is made from, or its `etag`: a newer one is
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
        return self.send(calls.remove_length(schedule_id, lot, why=why, if_match=if_match))

    def get_length(
        self, schedule_id: str, lot: str, *, if_none_match: Versioned[types.StoredLength] | None = None
    ) -> Versioned[types.StoredLength]:
        """Read a lot.

        One lot of lengths on hand.

        Args:
            schedule_id: The id of a schedule.
            lot: The name of a lot, or its id (its id when the name has a slash in it).
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StoredLength`; its `etag` is the version.
        """
        return self.send(calls.get_length(schedule_id, lot, if_none_match=if_none_match))

    def put_length(
        self,
        schedule_id: str,
        lot: str,
        request: types.LengthOnHand | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
    ) -> Versioned[types.StoredLength]:
        """Say what there is of a lot.

        Makes the lot, or says anew what there is of it. Quantities are in all, so that the same again changes
        nothing.

        To change a lot that is there, If-Match is needed: it names the lot's own state. What is left of it,
        ordered or there, is planned with from now on. More than were ordered may come: `notes` says so.

        Args:
            schedule_id: The id of a schedule.
            lot: The name of a lot, or its id (its id when the name has a slash in it).
            request: A `types.LengthOnHand`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_length` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.

        Returns:
            A `Versioned`: its `value` is `types.StoredLength`; its `etag` is the version.

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
            came = types.LengthOnHand(profile="casing", length="14 ft", ordered=10, delivered=6, paid="16.10")
            lot = client.put_length(schedule_id, "yard 1", came)
            print(lot.value.available, lot.value.notes)
        """
        return self.send(calls.put_length(schedule_id, lot, request, why=why, if_match=if_match))
