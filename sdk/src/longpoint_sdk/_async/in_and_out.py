"""Operations of the document's part "in_and_out" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._versioned import Versioned


class InAndOut(BaseAsyncClient):
    """Operations as methods."""

    @overload
    async def export_schedule(
        self,
        schedule_id: str,
        *,
        revision: int | None = None,
        if_none_match: Versioned[types.ScheduleIn] | None = None,
    ) -> Versioned[types.ScheduleIn]: ...

    @overload
    async def export_schedule(
        self,
        schedule_id: str,
        *,
        accept: Literal["text/csv"],
        revision: int | None = None,
        if_none_match: Versioned[types.ScheduleIn] | None = None,
    ) -> Versioned[bytes]: ...

    @overload
    async def export_schedule(
        self,
        schedule_id: str,
        *,
        accept: str,
        revision: int | None = None,
        if_none_match: Versioned[types.ScheduleIn] | None = None,
    ) -> Any: ...

    async def export_schedule(
        self,
        schedule_id: str,
        *,
        revision: int | None = None,
        if_none_match: Versioned[types.ScheduleIn] | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Take a house out.

        The whole house as it was sent: a body that starts a schedule just like it. As CSV, its openings
        alone.

        Args:
            schedule_id: The id of a schedule.
            revision: As of this revision; the latest when left out.
            if_none_match: What was read before; given back when it still stands.
            accept: The media type to have it in; its bytes are then given as they come.
        """
        return await self.send(
            calls.export_schedule(schedule_id, revision=revision, if_none_match=if_none_match, accept=accept)
        )

    async def import_openings(
        self,
        schedule_id: str,
        request: types.ImportIn | Mapping[str, Any] | str | bytes,
        *,
        existing: Literal["refuse", "update", "replace"] | None = None,
        dry_run: bool | None = None,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.ImportOut]:
        """Bring a house's openings in.

        All of it is kept, as one revision, or when anything is wrong none; then every fault is told.

        CSV has a column for each field, named by its words: "mark", "trim", "jamb width", "leg height", "jamb
        depth". Comma, semicolon or tab; a cell of several values has | between them. An export has the
        columns that are in use.

        Args:
            schedule_id: The id of a schedule.
            request: A struct, a mapping of its shape, or text as text/csv.
            existing: What to do about marks that are there already: refuse them all, update them, or replace
                the schedule's openings by these. If-Match is needed unless they are refused.
            dry_run: Only try it: keep nothing.
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
        return await self.send(
            calls.import_openings(
                schedule_id,
                request,
                existing=existing,
                dry_run=dry_run,
                why=why,
                if_match=if_match,
                idempotency_key=idempotency_key,
            )
        )
