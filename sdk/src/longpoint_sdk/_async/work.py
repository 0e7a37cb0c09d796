"""Operations of the document's part "work" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._pages import AsyncPages
from longpoint_sdk._versioned import Versioned


class Work(BaseAsyncClient):
    """Operations as methods."""

    async def compute_schedule_cut_list(
        self,
        schedule_id: str,
        *,
        include: list[types.Section] | None = None,
        if_none_match: Versioned[types.ScheduleCutListOut] | None = None,
    ) -> Versioned[types.ScheduleCutListOut]:
        """What is still to be cut.

        The cut list of what is not cut yet, from the stock at the yard and the rack.

        Pieces cut before that are not right any more are told, with what each can be cut again into and what
        must be cut from stock once more.

        Args:
            schedule_id: The id of a schedule.
            include: Sections to work out, too; materials, hours and cost are the whole house's.
            if_none_match: What was read before; given back when it still stands.
        """
        return await self.send(
            calls.compute_schedule_cut_list(schedule_id, include=include, if_none_match=if_none_match)
        )

    async def cut_sticks(
        self,
        schedule_id: str,
        request: types.SticksIn | Mapping[str, Any],
        *,
        if_match: Versioned[Any] | str,
        why: str | None = None,
        idempotency_key: str | None = None,
    ) -> types.WorkMade:
        """Record sticks cut as the cut list has them.

        Every piece on the sticks is cut, remnants go off the rack, and offcuts long enough to keep go on it.

        If-Match names the schedule's state that the cut list was worked out from, since another has other
        sticks.

        Args:
            schedule_id: The id of a schedule.
            why: Why this is changed; kept with the revision.
            if_match: What was read, to change that and nothing newer.
            idempotency_key: Names this request, so that sent again it is done once; made when not given.

        Raises:
            ScheduleArchived: The schedule is archived.
            ScheduleNotArchived: The schedule is not archived.
            PreconditionFailed: It was changed in the meantime.
            PreconditionRequired: Say which version is to be changed.
        """
        return await self.send(
            calls.cut_sticks(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def list_pieces(
        self,
        schedule_id: str,
        *,
        limit: int | None = None,
        opening: str | None = None,
        state: types.PieceState | None = None,
    ) -> AsyncPages[types.PieceStored]:
        """List pieces that were cut.

        Every piece that is in the shop, on the wall, or was spoiled; the first recorded first.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to give at most.
            opening: Only those of an opening, by its mark or id.
            state: Only those in a state.
        """
        return AsyncPages(self, calls.list_pieces(schedule_id, limit=limit, opening=opening, state=state))

    async def record_work(
        self,
        schedule_id: str,
        request: types.WorkIn | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> types.WorkMade:
        """Record what was cut, fitted or spoiled.

        Pieces are taken to be cut as the cut list has them now. An If-Match header names the schedule's
        state.

        Args:
            schedule_id: The id of a schedule.
            why: Why this is changed; kept with the revision.
            if_match: What was read, to change that and nothing newer.
            idempotency_key: Names this request, so that sent again it is done once; made when not given.

        Raises:
            ScheduleArchived: The schedule is archived.
            ScheduleNotArchived: The schedule is not archived.
            PreconditionFailed: It was changed in the meantime.
        """
        return await self.send(
            calls.record_work(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    async def remove_piece(
        self, schedule_id: str, piece_id: str, *, if_match: Versioned[Any] | str, why: str | None = None
    ) -> types.Made:
        """Strike a piece that was recorded by mistake.

        Its place counts as not cut again. A piece that was cut and spoiled is recorded as spoiled instead.

        Args:
            schedule_id: The id of a schedule.
            piece_id: The id of a piece.
            why: Why this is changed; kept with the revision.
            if_match: What was read, to change that and nothing newer.

        Raises:
            ScheduleArchived: The schedule is archived.
            ScheduleNotArchived: The schedule is not archived.
            PreconditionFailed: It was changed in the meantime.
            PreconditionRequired: Say which version is to be changed.
        """
        return await self.send(calls.remove_piece(schedule_id, piece_id, why=why, if_match=if_match))

    async def get_piece(
        self, schedule_id: str, piece_id: str, *, if_none_match: Versioned[types.PieceStored] | None = None
    ) -> Versioned[types.PieceStored]:
        """Read a piece.

        One piece that was cut.

        Args:
            schedule_id: The id of a schedule.
            piece_id: The id of a piece.
            if_none_match: What was read before; given back when it still stands.
        """
        return await self.send(calls.get_piece(schedule_id, piece_id, if_none_match=if_none_match))
