"""Operations of the document's part "revisions" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient
from longpoint_sdk._pages import Pages
from longpoint_sdk._versioned import Versioned


class Revisions(BaseClient):
    """Operations as methods."""

    def compare_revisions(
        self,
        schedule_id: str,
        *,
        from_: int,
        to: int | None = None,
        if_none_match: Versioned[types.ChangesOut] | None = None,
    ) -> Versioned[types.ChangesOut]:
        """Compare two revisions.

        Which readings changed, hence which parts are new, gone, longer, shorter or unchanged, by mark.

        The two may be given in either order: what is reported is what the one became on the way to the other.

        Args:
            schedule_id: The id of a schedule.
            from_: The earlier revision.
            to: The later revision; the latest when left out.
            if_none_match: What was read before; given back when it still stands.
        """
        return self.send(
            calls.compare_revisions(schedule_id, from_=from_, to=to, if_none_match=if_none_match)
        )

    def restore_revision(
        self,
        schedule_id: str,
        request: types.RestoreIn | Mapping[str, Any],
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.ScheduleOut]:
        """Go back to a revision.

        Makes a new revision in which the house and its openings are as they were at an earlier one.

        Nothing of what came between is lost: it can be gone back to in the same way. Work done and the rack
        stay as they are, since pieces stay cut.

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
            PreconditionRequired: Say which version is to be changed.
        """
        return self.send(
            calls.restore_revision(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def list_revisions(self, schedule_id: str, *, limit: int | None = None) -> Pages[types.RevisionOut]:
        """List revisions.

        Every write to the schedule, the latest first. None is ever changed or taken away.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to give at most.
        """
        return Pages(self, calls.list_revisions(schedule_id, limit=limit))

    def get_revision(
        self, schedule_id: str, number: int, *, if_none_match: Versioned[types.RevisionDetail] | None = None
    ) -> Versioned[types.RevisionDetail]:
        """Read a revision.

        One write, and each thing it wrote. An export of the schedule can be had as of any revision.

        Args:
            schedule_id: The id of a schedule.
            number: The number of a revision.
            if_none_match: What was read before; given back when it still stands.
        """
        return self.send(calls.get_revision(schedule_id, number, if_none_match=if_none_match))
