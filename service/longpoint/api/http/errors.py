"""From anything that goes wrong to a problem document: one shape for every status."""

import logging
import re
from collections.abc import Callable
from typing import Any

from litestar import Response
from litestar.exceptions import HTTPException, ValidationException

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
from longpoint.api.http.request import ROUNDING, AnyRequest
from longpoint.lengths import Rounding, length_writer
from longpoint.texts import SPOKEN, say
from longpoint.values import Refusal, encoder, moved, wrong_parameter

_log = logging.getLogger("longpoint.errors")
_MISSING = re.compile(r"required query parameter '([^']*)'")


def on_failure(request: Any, failure: Exception) -> Response[bytes]:
    """Answer whatever went wrong with a problem document."""
    problem = problem_of(request, failure)
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
    rounding: Callable[[], Rounding] | None = scope["state"].get(ROUNDING)
    return encoder(length_writer(rounding()) if rounding else SPOKEN).encode(body)


def problem_of(request: AnyRequest, failure: Exception) -> Problem:
    """What to answer the caller: a fault of the service is logged whole, and nothing of the inside is said."""
    if isinstance(failure, Problem):
        return failure
    if isinstance(failure, Refusal):
        # What of the body could not be read is reported with it, and whatever is reported is reported once.
        misread = request.misread
        found = dict.fromkeys([*misread, *failure.faults])
        return InvalidRequest.of(found, misread.omitted + failure.omitted)
    if isinstance(failure, HTTPException) and (known := _as_problem(request, failure)):
        return known
    _log.error("failed to answer %s", request.scope["state"][REQUEST_ID], exc_info=failure)
    return InternalError(say("problem", "service.failed"))


def _as_problem(request: AnyRequest, refusal: HTTPException) -> Problem | None:
    """The problem that a refusal of the framework's own is; None where it is a fault of the service."""
    headers = dict(refusal.headers or {})
    path = request.scope["path"]
    if refusal.status_code == 404:
        return NotFound(say("problem", "address.nothing", path=path) + moved(path), headers=headers)
    if refusal.status_code == 405:
        detail = say("problem", "address.method", method=request.scope["method"], path=path)
        return MethodNotAllowed(detail, headers=headers)
    if isinstance(refusal, ValidationException):
        if isinstance(refusal.extra, list):
            wrong = [(str(one.get("key", "")), one.get("message", "")) for one in refusal.extra]
        else:  # what is missing stands in a sentence alone
            wrong = [(name, say("word", "parameter.needed")) for name in _MISSING.findall(refusal.detail)]
        faults = [wrong_parameter(request.plan.named, name, why) for name, why in wrong]
        return InvalidRequest(say("problem", "parameter.some-wrong"), faults, headers)
    if refusal.status_code < 500:
        return BadRequest(say("problem", "request.invalid", words=refusal.detail), headers=headers)
    return None
