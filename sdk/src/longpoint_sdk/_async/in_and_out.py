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
        if_none_match: Versioned[types.NewSchedule] | None = None,
    ) -> Versioned[types.NewSchedule]: ...

    @overload
    async def export_schedule(
        self,
        schedule_id: str,
        *,
        accept: Literal["text/csv"],
        revision: int | None = None,
        if_none_match: Versioned[types.NewSchedule] | None = None,
    ) -> Versioned[bytes]: ...

    @overload
    async def export_schedule(
        self,
        schedule_id: str,
        *,
        accept: str,
        revision: int | None = None,
        if_none_match: Versioned[types.NewSchedule] | None = None,
    ) -> Any: ...

    async def export_schedule(
        self,
        schedule_id: str,
        *,
        revision: int | None = None,
        if_none_match: Versioned[types.NewSchedule] | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Export a schedule.

        The whole house as it stands, with its lengths on hand: a body that starts a schedule just like it.

        Plans, cut sticks and claims are not in it: the new schedule is planned for itself, under stick names
        of its own. A backup of the database has them. As CSV, the openings alone.

        Args:
            schedule_id: The id of a schedule.
            revision: As of this revision; the latest when left out.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.
            accept: The media type of a file to have instead of data: text/csv.

        Returns:
            A `Versioned`: its `value` is `types.NewSchedule`, or the bytes of a file where `accept` asks for
            one; its `etag` is the version.

        Example:
            house = await client.export_schedule(schedule_id)
            copy = await client.create_schedule(house.value.changed(name="Heron Cottage, again"))
            table = await client.export_schedule(schedule_id, accept="text/csv")
            Path("openings.csv").write_bytes(table.value)
        """
        return await self.send(
            calls.export_schedule(schedule_id, revision=revision, if_none_match=if_none_match, accept=accept)
        )

    async def import_openings(
        self,
        schedule_id: str,
        request: types.Openings | Mapping[str, Any] | str | bytes,
        *,
        existing: Literal["refuse", "update", "replace"] | None = None,
        dry_run: bool | None = None,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> Versioned[types.Imported]:
        """Import openings.

        All of it is kept, as one revision, or when anything is wrong none.

        Faults are reported by row and column in a CSV, all of one kind at once: first cells that are no value
        of their column, then lengths and trim specs, then what cannot be built or is there already.

        CSV has a column for each field, named by its words: "mark", "trim", "jamb width", "jamb height",
        "jamb depth". Comma, semicolon or tab; a cell of several values has | between them. An export has the
        columns that are in use.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.Openings`, a mapping of its shape, or the text of a file, as text/csv.
            existing: What to do about marks that are there already: refuse them all (when left out), update
                them, or replace the schedule's openings by these. If-Match is needed unless they are refused.
            dry_run: Only try it: keep nothing.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.Imported`; its `etag` is the version.

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
            table = Path("openings.csv").read_text(encoding="utf-8")
            try:
                tried = await client.import_openings(schedule_id, table, dry_run=True)
                print(tried.value.added)
            except problems.InvalidRequest as refusal:
                for fault in refusal.errors:
                    print(fault.row, fault.column, fault.detail)
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
