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
    ) -> Pages[types.OffcutStored]:
        """List what is on the rack.

        Lengths on hand, which cut lists use before they buy where that is cheaper.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to give at most.
            profile: Only those of a profile.
        """
        return Pages(self, calls.list_offcuts(schedule_id, limit=limit, profile=profile))

    def add_offcut(
        self,
        schedule_id: str,
        request: types.OffcutIn | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.OffcutStored]:
        """Put a length on the rack.

        One length of stock, from now on used by cut lists.

        Args:
            schedule_id: The id of a schedule.
            why: Why this is changed; kept with the revision.
            if_match: What was read, to change that and nothing newer.
            idempotency_key: Names this request, so that sent again it is done once; made when not given.

        Raises:
            BodyTooSlow: The body did not come in time.
            ScheduleArchived: The schedule is archived.
            ScheduleNotArchived: The schedule is not archived.
            PreconditionFailed: It was changed in the meantime.
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
            if_match: What was read, to change that and nothing newer.

        Raises:
            ScheduleArchived: The schedule is archived.
            ScheduleNotArchived: The schedule is not archived.
            PreconditionFailed: It was changed in the meantime.
            PreconditionRequired: Say which version is to be changed.
        """
        return self.send(calls.remove_offcut(schedule_id, offcut_id, why=why, if_match=if_match))

    def get_offcut(
        self, schedule_id: str, offcut_id: str, *, if_none_match: Versioned[types.OffcutStored] | None = None
    ) -> Versioned[types.OffcutStored]:
        """Read an offcut.

        One length on the rack.

        Args:
            schedule_id: The id of a schedule.
            offcut_id: The id of an offcut.
            if_none_match: What was read before; given back when it still stands.
        """
        return self.send(calls.get_offcut(schedule_id, offcut_id, if_none_match=if_none_match))
