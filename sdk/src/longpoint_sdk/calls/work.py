"""Calls of the document's part "work". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


def compute_schedule_cut_list(
    schedule_id: str,
    *,
    include: list[types.Section] | None = None,
    if_none_match: Versioned[types.ScheduleCutListOut] | None = None,
) -> Call[Versioned[types.ScheduleCutListOut]]:
    """`GET /v1/schedules/{schedule_id}/cut-list`: What is still to be cut."""
    return Call(
        operation="compute_schedule_cut_list",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/cut-list",
        result=types.ScheduleCutListOut,
        query=query_fields(include=include),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def cut_sticks(
    schedule_id: str,
    request: types.SticksIn | Mapping[str, Any],
    *,
    if_match: Versioned[Any] | str,
    why: str | None = None,
    idempotency_key: str | None = None,
) -> Call[types.WorkMade]:
    """`POST /v1/schedules/{schedule_id}/cut-sticks`: Record sticks cut as the cut list has them."""
    return Call(
        operation="cut_sticks",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/cut-sticks",
        result=types.WorkMade,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        current=get_schedule(schedule_id),
    )


def list_pieces(
    schedule_id: str,
    *,
    limit: int | None = None,
    opening: str | None = None,
    state: types.PieceState | None = None,
) -> Call[types.Page[types.PieceStored]]:
    """`GET /v1/schedules/{schedule_id}/work`: List pieces that were cut."""
    return Call(
        operation="list_pieces",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/work",
        result=types.Page[types.PieceStored],
        query=query_fields(limit=limit, opening=opening, state=state),
    )


def record_work(
    schedule_id: str,
    request: types.WorkIn | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[types.WorkMade]:
    """`POST /v1/schedules/{schedule_id}/work`: Record what was cut, fitted or spoiled."""
    return Call(
        operation="record_work",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/work",
        result=types.WorkMade,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        current=get_schedule(schedule_id),
    )


def remove_piece(
    schedule_id: str, piece_id: str, *, if_match: Versioned[Any] | str, why: str | None = None
) -> Call[types.Made]:
    """`DELETE /v1/schedules/{schedule_id}/work/{piece_id}`: Strike a piece that was recorded by mistake."""
    return Call(
        operation="remove_piece",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}/work/{path_part(piece_id)}",
        result=types.Made,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        current=get_piece(schedule_id, piece_id),
    )


def get_piece(
    schedule_id: str, piece_id: str, *, if_none_match: Versioned[types.PieceStored] | None = None
) -> Call[Versioned[types.PieceStored]]:
    """`GET /v1/schedules/{schedule_id}/work/{piece_id}`: Read a piece."""
    return Call(
        operation="get_piece",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/work/{path_part(piece_id)}",
        result=types.PieceStored,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )
