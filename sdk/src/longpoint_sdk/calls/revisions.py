"""Calls of the document's part "revisions". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


def compare_revisions(
    schedule_id: str,
    *,
    from_: int,
    to: int | None = None,
    if_none_match: Versioned[types.Changes] | None = None,
) -> Call[Versioned[types.Changes]]:
    """`GET /v1/schedules/{schedule_id}/changes`: Compare two revisions."""
    return Call(
        operation="compare_revisions",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/changes",
        result=types.Changes,
        query=query_fields(**{"from": from_}, to=to),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def restore_revision(
    schedule_id: str,
    request: types.GoBack | Mapping[str, Any],
    *,
    if_match: Versioned[Any] | str,
    why: str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredSchedule]]:
    """`POST /v1/schedules/{schedule_id}/restore`: Go back to a revision."""
    return Call(
        operation="restore_revision",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/restore",
        result=types.StoredSchedule,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )


def list_revisions(schedule_id: str, *, limit: int | None = None) -> Call[types.Page[types.Revision]]:
    """`GET /v1/schedules/{schedule_id}/revisions`: List revisions."""
    return Call(
        operation="list_revisions",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/revisions",
        result=types.Page[types.Revision],
        query=query_fields(limit=limit),
    )


def get_revision(
    schedule_id: str, number: int, *, if_none_match: Versioned[types.RevisionDetail] | None = None
) -> Call[Versioned[types.RevisionDetail]]:
    """`GET /v1/schedules/{schedule_id}/revisions/{number}`: Read a revision."""
    return Call(
        operation="get_revision",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/revisions/{path_part(number)}",
        result=types.RevisionDetail,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )
