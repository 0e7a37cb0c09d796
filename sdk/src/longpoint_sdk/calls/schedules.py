"""Calls of the document's part "schedules". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned


def list_schedules(
    *, limit: int | None = None, name: str | None = None, archived: bool | None = None
) -> Call[types.Page[types.ScheduleLine]]:
    """`GET /v1/schedules`: List schedules."""
    return Call(
        operation="list_schedules",
        method="GET",
        path="/v1/schedules",
        result=types.Page[types.ScheduleLine],
        query=query_fields(limit=limit, name=name, archived=archived),
    )


def create_schedule(
    request: types.NewSchedule | Mapping[str, Any],
    *,
    why: str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredSchedule]]:
    """`POST /v1/schedules`: Start a house's schedule."""
    return Call(
        operation="create_schedule",
        method="POST",
        path="/v1/schedules",
        result=types.StoredSchedule,
        query=query_fields(why=why),
        headers=header_fields(**{"Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        versioned=True,
    )


def delete_schedule(schedule_id: str, *, if_match: Versioned[Any] | str) -> Call[None]:
    """`DELETE /v1/schedules/{schedule_id}`: Delete an archived schedule."""
    return Call(
        operation="delete_schedule",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}",
        result=None,
        headers=header_fields(**{"If-Match": if_match}),
        current=get_schedule(schedule_id),
    )


def get_schedule(
    schedule_id: str, *, if_none_match: Versioned[types.StoredSchedule] | None = None
) -> Call[Versioned[types.StoredSchedule]]:
    """`GET /v1/schedules/{schedule_id}`: Read a schedule."""
    return Call(
        operation="get_schedule",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}",
        result=types.StoredSchedule,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def replace_schedule(
    schedule_id: str,
    request: types.KeptHouse | Mapping[str, Any],
    *,
    if_match: Versioned[Any] | str,
    why: str | None = None,
) -> Call[Versioned[types.StoredSchedule]]:
    """`PUT /v1/schedules/{schedule_id}`: Change what is said of the house."""
    return Call(
        operation="replace_schedule",
        method="PUT",
        path=f"/v1/schedules/{path_part(schedule_id)}",
        result=types.StoredSchedule,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        body=request,
        versioned=True,
        current=get_schedule(schedule_id),
    )


def archive_schedule(
    schedule_id: str,
    *,
    if_match: Versioned[Any] | str,
    why: str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredSchedule]]:
    """`POST /v1/schedules/{schedule_id}/archive`: Put a schedule away."""
    return Call(
        operation="archive_schedule",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/archive",
        result=types.StoredSchedule,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )


def unarchive_schedule(
    schedule_id: str,
    *,
    if_match: Versioned[Any] | str,
    why: str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.StoredSchedule]]:
    """`POST /v1/schedules/{schedule_id}/unarchive`: Take a schedule out of the archive."""
    return Call(
        operation="unarchive_schedule",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/unarchive",
        result=types.StoredSchedule,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )
