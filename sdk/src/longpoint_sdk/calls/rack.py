"""Calls of the document's part "rack". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


def list_offcuts(
    schedule_id: str, *, limit: int | None = None, profile: str | None = None
) -> Call[types.Page[types.StoredLength]]:
    """`GET /v1/schedules/{schedule_id}/offcuts`: List what is on the rack."""
    return Call(
        operation="list_offcuts",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/offcuts",
        result=types.Page[types.StoredLength],
        query=query_fields(limit=limit, profile=profile),
    )


def add_offcut(
    schedule_id: str,
    request: types.RackLength | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredLength]]:
    """`POST /v1/schedules/{schedule_id}/offcuts`: Put a length on the rack."""
    return Call(
        operation="add_offcut",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/offcuts",
        result=types.StoredLength,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )


def remove_offcut(
    schedule_id: str, offcut_id: str, *, if_match: Versioned[Any] | str, why: str | None = None
) -> Call[types.Made]:
    """`DELETE /v1/schedules/{schedule_id}/offcuts/{offcut_id}`: Take a length off the rack."""
    return Call(
        operation="remove_offcut",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}/offcuts/{path_part(offcut_id)}",
        result=types.Made,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        current=get_offcut(schedule_id, offcut_id),
    )


def get_offcut(
    schedule_id: str, offcut_id: str, *, if_none_match: Versioned[types.StoredLength] | None = None
) -> Call[Versioned[types.StoredLength]]:
    """`GET /v1/schedules/{schedule_id}/offcuts/{offcut_id}`: Read an offcut."""
    return Call(
        operation="get_offcut",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/offcuts/{path_part(offcut_id)}",
        result=types.StoredLength,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )
