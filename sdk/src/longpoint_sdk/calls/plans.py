"""Calls of the document's part "plans". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned


def list_plans(schedule_id: str, *, limit: int | None = None) -> Call[types.Page[types.PlanLine]]:
    """`GET /v1/schedules/{schedule_id}/plans`: List plans."""
    return Call(
        operation="list_plans",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/plans",
        result=types.Page[types.PlanLine],
        query=query_fields(limit=limit),
    )


def make_plan(
    schedule_id: str, request: types.PlanAsked | Mapping[str, Any], *, idempotency_key: str | None = None
) -> Call[Versioned[types.StoredPlan]]:
    """`POST /v1/schedules/{schedule_id}/plans`: Plan the sticks."""
    return Call(
        operation="make_plan",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/plans",
        result=types.StoredPlan,
        headers=header_fields(**{"Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        versioned=True,
    )


def get_plan(
    schedule_id: str,
    number: int,
    *,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[types.StoredPlan] | None = None,
) -> Call[Versioned[types.StoredPlan]]:
    """`GET /v1/schedules/{schedule_id}/plans/{number}`: Read a plan."""
    return Call(
        operation="get_plan",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/plans/{path_part(number)}",
        result=types.StoredPlan,
        query=query_fields(room=room, opening=opening),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def get_stick(
    schedule_id: str, name: str, *, if_none_match: Versioned[types.StickDetail] | None = None
) -> Call[Versioned[types.StickDetail]]:
    """`GET /v1/schedules/{schedule_id}/sticks/{name}`: Read a stick."""
    return Call(
        operation="get_stick",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/sticks/{path_part(name)}",
        result=types.StickDetail,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def give_up_claim(schedule_id: str, name: str, *, by: str | None = None) -> Call[types.StickDetail]:
    """`DELETE /v1/schedules/{schedule_id}/sticks/{name}/claim`: Give up a claim."""
    return Call(
        operation="give_up_claim",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}/sticks/{path_part(name)}/claim",
        result=types.StickDetail,
        query=query_fields(by=by),
    )


def claim_stick(
    schedule_id: str, name: str, request: types.Claim | Mapping[str, Any]
) -> Call[types.StickDetail]:
    """`PUT /v1/schedules/{schedule_id}/sticks/{name}/claim`: Claim a stick to cut it."""
    return Call(
        operation="claim_stick",
        method="PUT",
        path=f"/v1/schedules/{path_part(schedule_id)}/sticks/{path_part(name)}/claim",
        result=types.StickDetail,
        body=request,
    )
