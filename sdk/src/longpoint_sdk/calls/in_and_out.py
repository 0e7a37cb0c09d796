"""Calls of the document's part "in_and_out". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


@overload
def export_schedule(
    schedule_id: str,
    *,
    revision: int | None = None,
    if_none_match: Versioned[types.NewSchedule] | None = None,
) -> Call[Versioned[types.NewSchedule]]: ...


@overload
def export_schedule(
    schedule_id: str,
    *,
    accept: Literal["text/csv"],
    revision: int | None = None,
    if_none_match: Versioned[types.NewSchedule] | None = None,
) -> Call[Versioned[bytes]]: ...


@overload
def export_schedule(
    schedule_id: str,
    *,
    accept: str,
    revision: int | None = None,
    if_none_match: Versioned[types.NewSchedule] | None = None,
) -> Call[Any]: ...


def export_schedule(
    schedule_id: str,
    *,
    revision: int | None = None,
    if_none_match: Versioned[types.NewSchedule] | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`GET /v1/schedules/{schedule_id}/export`: Export a schedule."""
    return Call(
        operation="export_schedule",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/export",
        result=types.NewSchedule if accept == "application/json" else bytes,
        query=query_fields(revision=revision),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        accept=accept,
        versioned=True,
        held=if_none_match,
    )


def import_openings(
    schedule_id: str,
    request: types.Openings | Mapping[str, Any] | str | bytes,
    *,
    existing: Literal["refuse", "update", "replace"] | None = None,
    dry_run: bool | None = None,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[Versioned[types.Imported]]:
    """`POST /v1/schedules/{schedule_id}/import`: Import openings."""
    return Call(
        operation="import_openings",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/import",
        result=types.Imported,
        query=query_fields(existing=existing, dry_run=dry_run, why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        raw_as="text/csv",
        repeat="with_key",
        versioned=True,
        current=get_schedule(schedule_id),
    )
