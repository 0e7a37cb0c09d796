"""An exception for each kind of problem the service answers with. Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk._errors import Problem


class BadRequest(Problem):
    """The request could not be read (400)."""

    type_uri = "/problems/bad-request"


class MalformedBody(Problem):
    """The body could not be read (400)."""

    type_uri = "/problems/malformed-body"


class NotFound(Problem):
    """Nothing is here (404)."""

    type_uri = "/problems/not-found"


class MethodNotAllowed(Problem):
    """This method does not work here (405)."""

    type_uri = "/problems/method-not-allowed"


class NotAcceptable(Problem):
    """None of the formats asked for can be given (406)."""

    type_uri = "/problems/not-acceptable"


class ContentTooLarge(Problem):
    """The body is too large (413)."""

    type_uri = "/problems/content-too-large"


class UnsupportedMediaType(Problem):
    """The body is in a format this address does not read (415)."""

    type_uri = "/problems/unsupported-media-type"


class InvalidRequest(Problem):
    """The request was read, but cannot be done as it stands (422)."""

    type_uri = "/problems/invalid-request"


class InternalError(Problem):
    """The service failed (500)."""

    type_uri = "/problems/internal-error"


KINDS: dict[str, type[Problem]] = {
    kind.type_uri: kind
    for kind in (
        BadRequest,
        MalformedBody,
        NotFound,
        MethodNotAllowed,
        NotAcceptable,
        ContentTooLarge,
        UnsupportedMediaType,
        InvalidRequest,
        InternalError,
    )
}
"""Every kind, by its type."""
