"""Operations of the document's part "rack" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient
from longpoint_sdk._pages import Pages
from longpoint_sdk._versioned import Versioned


class Rack(BaseClient):
    """Operations as methods."""

    def list_offcuts(
        self, schedule_id: str, *, limit: int | None = None, profile: str | None = None
    ) -> Pages[types.StoredLength]:
        """List what is on the rack.

        Lengths on hand, which cut lists use before they buy where that is cheaper.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.
            profile: Only those of this profile.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.
        """
        return Pages(self, calls.list_offcuts(schedule_id, limit=limit, profile=profile))

    def add_offcut(
        self,
        schedule_id: str,
        request: types.RackLength | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredLength]:
        """Put a length on the rack.

        One length of stock, from now on used by cut lists.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.RackLength`, or a mapping of its shape.
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
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(
            calls.add_offcut(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def remove_offcut(
        self, schedule_id: str, offcut_id: str, *, if_match: Versioned[Any] | str, why: str | None = None
    ) -> types.Made:
        """Take a length off the rack.

        It was used elsewhere or thrown away: cut lists no longer count on it.

        Args:
            schedule_id: The id of a schedule.
            offcut_id: The id of an offcut.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_offcut` that this is made from, or its `etag`: a newer one is
                left as it is.

        Raises:
            ScheduleArchived: The schedule is archived.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            PreconditionRequired: No version was named to change: give `if_match`.
        """
        return self.send(calls.remove_offcut(schedule_id, offcut_id, why=why, if_match=if_match))

    def get_offcut(
        self, schedule_id: str, offcut_id: str, *, if_none_match: Versioned[types.StoredLength] | None = None
    ) -> Versioned[types.StoredLength]:
        """Read an offcut.

        One length on the rack.

        Args:
            schedule_id: The id of a schedule.
            offcut_id: The id of an offcut.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StoredLength`; its `etag` is the version.
        """
        return self.send(calls.get_offcut(schedule_id, offcut_id, if_none_match=if_none_match))
