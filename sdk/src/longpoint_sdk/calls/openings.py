"""Calls of the document's part "openings". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


def hold_openings(
    schedule_id: str,
    request: types.Chosen | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[types.Released]:
    """`POST /v1/schedules/{schedule_id}/hold`: Hold openings back."""
    return Call(
        operation="hold_openings",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/hold",
        result=types.Released,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        current=get_schedule(schedule_id),
    )


def list_openings(
    schedule_id: str,
    *,
    limit: int | None = None,
    room: str | None = None,
    trim: str | None = None,
    bottom: types.Bottom | None = None,
) -> Call[types.Page[types.StoredOpening]]:
    """`GET /v1/schedules/{schedule_id}/openings`: List openings."""
    return Call(
        operation="list_openings",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/openings",
        result=types.Page[types.StoredOpening],
        query=query_fields(limit=limit, room=room, trim=trim, bottom=bottom),
    )


def add_opening(
    schedule_id: str,
    request: types.HouseOpening | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredOpening]]:
    """`POST /v1/schedules/{schedule_id}/openings`: Add an opening."""
    return Call(
        operation="add_opening",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/openings",
        result=types.StoredOpening,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )


def remove_opening(
    schedule_id: str, opening: str, *, if_match: Versioned[Any] | str, why: str | None = None
) -> Call[types.Made]:
    """`DELETE /v1/schedules/{schedule_id}/openings/{opening}`: Take an opening off the schedule."""
    return Call(
        operation="remove_opening",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}/openings/{path_part(opening)}",
        result=types.Made,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        current=get_opening(schedule_id, opening),
    )


def get_opening(
    schedule_id: str, opening: str, *, if_none_match: Versioned[types.StoredOpening] | None = None
) -> Call[Versioned[types.StoredOpening]]:
    """`GET /v1/schedules/{schedule_id}/openings/{opening}`: Read an opening."""
    return Call(
        operation="get_opening",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/openings/{path_part(opening)}",
        result=types.StoredOpening,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def replace_opening(
    schedule_id: str,
    opening: str,
    request: types.HouseOpening | Mapping[str, Any],
    *,
    if_match: Versioned[Any] | str,
    why: str | None = None,
) -> Call[Versioned[types.StoredOpening]]:
    """`PUT /v1/schedules/{schedule_id}/openings/{opening}`: Measure an opening again."""
    return Call(
        operation="replace_opening",
        method="PUT",
        path=f"/v1/schedules/{path_part(schedule_id)}/openings/{path_part(opening)}",
        result=types.StoredOpening,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        body=request,
        versioned=True,
        current=get_opening(schedule_id, opening),
    )


def release_openings(
    schedule_id: str,
    request: types.Chosen | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[types.Released]:
    """`POST /v1/schedules/{schedule_id}/release`: Release openings for buying and cutting."""
    return Call(
        operation="release_openings",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/release",
        result=types.Released,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        current=get_schedule(schedule_id),
    )
