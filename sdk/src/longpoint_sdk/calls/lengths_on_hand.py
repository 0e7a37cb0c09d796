"""Calls of the document's part "lengths_on_hand". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


def list_lengths(
    schedule_id: str,
    *,
    limit: int | None = None,
    profile: str | None = None,
    state: types.LengthState | None = None,
) -> Call[types.Page[types.StoredLength]]:
    """`GET /v1/schedules/{schedule_id}/lengths`: List lengths on hand."""
    return Call(
        operation="list_lengths",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/lengths",
        result=types.Page[types.StoredLength],
        query=query_fields(limit=limit, profile=profile, state=state),
    )


def add_length(
    schedule_id: str,
    request: types.LengthOnHand | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredLength]]:
    """`POST /v1/schedules/{schedule_id}/lengths`: Add lengths that are on hand."""
    return Call(
        operation="add_length",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/lengths",
        result=types.StoredLength,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )


def remove_length(
    schedule_id: str, lot: str, *, if_match: Versioned[Any] | str, why: str | None = None
) -> Call[types.Made]:
    """`DELETE /v1/schedules/{schedule_id}/lengths/{lot}`: Remove a lot."""
    return Call(
        operation="remove_length",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}/lengths/{path_part(lot)}",
        result=types.Made,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        current=get_length(schedule_id, lot),
    )


def get_length(
    schedule_id: str, lot: str, *, if_none_match: Versioned[types.StoredLength] | None = None
) -> Call[Versioned[types.StoredLength]]:
    """`GET /v1/schedules/{schedule_id}/lengths/{lot}`: Read a lot."""
    return Call(
        operation="get_length",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/lengths/{path_part(lot)}",
        result=types.StoredLength,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def put_length(
    schedule_id: str,
    lot: str,
    request: types.LengthOnHand | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
) -> Call[Versioned[types.StoredLength]]:
    """`PUT /v1/schedules/{schedule_id}/lengths/{lot}`: Say what there is of a lot."""
    return Call(
        operation="put_length",
        method="PUT",
        path=f"/v1/schedules/{path_part(schedule_id)}/lengths/{path_part(lot)}",
        result=types.StoredLength,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        body=request,
        versioned=True,
        current=get_length(schedule_id, lot),
    )
