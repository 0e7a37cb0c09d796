"""From anything that goes wrong to a problem document: one shape for every status."""

import logging
import re
from collections.abc import Callable
from typing import Any

from litestar import Request, Response
from litestar.exceptions import HTTPException, ValidationException

from longpoint.api.http.answer import PLAIN
from longpoint.api.http.frame import REQUEST_ID
from longpoint.api.http.problems import (
    PROBLEM_JSON,
    BadRequest,
    InternalError,
    InvalidRequest,
    MethodNotAllowed,
    NotFound,
    Problem,
    ProblemBody,
)
from longpoint.api.http.request import MISREAD
from longpoint.values import Fault, Faults, Refusal, encoder, moved

_log = logging.getLogger("longpoint.errors")
_encode = encoder(PLAIN).encode


def on_problem(request: Request[Any, Any, Any], problem: Problem) -> Response[bytes]:
    """Answer with a problem document."""
    return Response(
        problem_bytes(request.scope, problem),
        status_code=problem.status,
        media_type=PROBLEM_JSON,
        headers=problem.headers,
    )


def problem_bytes(scope: Any, problem: Problem) -> bytes:
    """The problem document of a request that was refused."""
    raw_path: bytes = scope.get("raw_path") or scope["path"].encode()
    body = ProblemBody(
        type=problem.type_uri(),
        title=problem.title,
        status=problem.status,
        detail=problem.detail,
        instance=raw_path.decode("latin-1"),
        errors=problem.errors,
        request_id=scope["state"][REQUEST_ID],
    )
    return _encode(body)


def on_refusal(request: Request[Any, Any, Any], refusal: Refusal) -> Response[bytes]:
    """Answer what one of the rooms refused, and what of the body could not be read."""
    misread: Faults = request.scope["state"].get(MISREAD) or Faults()
    told = dict.fromkeys([*misread, *refusal.faults])
    return on_problem(request, InvalidRequest.of(told, misread.omitted + refusal.omitted))


def on_http_exception(request: Request[Any, Any, Any], refusal: HTTPException) -> Response[bytes]:
    """Answer a refusal of the framework's own as the problem it is."""
    return on_problem(request, _as_problem(request, refusal))


def on_failure(request: Request[Any, Any, Any], failure: Exception) -> Response[bytes]:
    """Answer a fault of the service: log it whole, tell the caller nothing of the inside."""
    return on_problem(request, logged(request, failure))


def logged(request: Request[Any, Any, Any], failure: Exception) -> Problem:
    """Log a fault of the service, and what to tell the caller instead."""
    _log.error("failed to answer %s", request.scope["state"][REQUEST_ID], exc_info=failure)
    return InternalError("Something went wrong inside the service; it has been logged.")


HANDLERS: dict[int | type[Exception], Callable[..., Any]] = {
    Problem: on_problem,
    Refusal: on_refusal,
    HTTPException: on_http_exception,
    Exception: on_failure,
}


def _as_problem(request: Request[Any, Any, Any], refusal: HTTPException) -> Problem:
    headers = dict(refusal.headers or {})
    path = request.scope["path"]
    if refusal.status_code == 404:
        return NotFound(f"There is nothing at {path}.{moved(path)}", headers=headers)
    if refusal.status_code == 405:
        return MethodNotAllowed(f"{request.scope['method']} does not work at {path}.", headers=headers)
    if isinstance(refusal, ValidationException):
        entries = refusal.extra if isinstance(refusal.extra, list) else [_missing(refusal.detail)]
        faults = [_parameter_fault(entry) for entry in entries]
        return InvalidRequest("A parameter of the request is wrong.", faults, headers)
    if refusal.status_code < 500:
        return BadRequest(refusal.detail or "The request could not be read.", headers=headers)
    return logged(request, refusal)


def _missing(detail: str) -> dict[str, str]:
    """What is missing, from the one sentence the framework has on it."""
    found = re.search(r"required (\w+) parameter '([^']*)'", detail)
    source, name = found.groups() if found else ("query", "")
    return {"source": source, "key": name, "message": "is needed"}


def _parameter_fault(entry: Any) -> Fault:
    name = str(entry.get("key", ""))
    detail = f'"{name}": {entry.get("message", "is wrong")}.'
    if entry.get("source") == "header":
        return Fault(code="wrong-header", detail=detail, header=name)
    return Fault(code="wrong-parameter", detail=detail, parameter=name)
