"""Calls of the document's part "jobs". Generated; do not edit."""

from __future__ import annotations

from typing import Any, Literal, overload

from longpoint_sdk import types
from longpoint_sdk._call import Call, path_part


def cancel_job(job_id: str) -> Call[types.JobAnswer]:
    """`DELETE /v1/jobs/{job_id}`: Cancel a job."""
    return Call(
        operation="cancel_job", method="DELETE", path=f"/v1/jobs/{path_part(job_id)}", result=types.JobAnswer
    )


def get_job(job_id: str) -> Call[types.JobAnswer]:
    """`GET /v1/jobs/{job_id}`: Read a job."""
    return Call(
        operation="get_job", method="GET", path=f"/v1/jobs/{path_part(job_id)}", result=types.JobAnswer
    )


def get_job_events(job_id: str, *, accept: Literal["text/event-stream"] = "text/event-stream") -> Call[bytes]:
    """`GET /v1/jobs/{job_id}/events`: Follow a job."""
    return Call(
        operation="get_job_events",
        method="GET",
        path=f"/v1/jobs/{path_part(job_id)}/events",
        result=bytes,
        accept=accept,
    )


@overload
def get_job_result(job_id: str) -> Call[Any]: ...


@overload
def get_job_result(
    job_id: str, *, accept: Literal["application/pdf", "image/svg+xml", "text/csv", "text/html"]
) -> Call[bytes]: ...


@overload
def get_job_result(job_id: str, *, accept: str) -> Call[Any]: ...


def get_job_result(job_id: str, *, accept: str = "application/json") -> Call[Any]:
    """`GET /v1/jobs/{job_id}/result`: Fetch a job's result."""
    return Call(
        operation="get_job_result",
        method="GET",
        path=f"/v1/jobs/{path_part(job_id)}/result",
        result=Any if accept == "application/json" else bytes,
        accept=accept,
    )
