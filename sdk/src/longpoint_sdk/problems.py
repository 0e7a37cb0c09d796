"""An exception for each kind of problem the service answers with. Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk._errors import Problem, VersionConflict


class BadRequest(Problem):
    """The request could not be read (400)."""

    type_uri = "/problems/bad-request"


class MalformedBody(Problem):
    """The body could not be read (400)."""

    type_uri = "/problems/malformed-body"


class KeyNeeded(Problem):
    """A key is needed (401)."""

    type_uri = "/problems/key-needed"


class KeyRefused(Problem):
    """The key is not taken (401)."""

    type_uri = "/problems/key-refused"


class ScopeMissing(Problem):
    """The key may not do this (403)."""

    type_uri = "/problems/scope-missing"


class NotFound(Problem):
    """Nothing is here (404)."""

    type_uri = "/problems/not-found"


class MethodNotAllowed(Problem):
    """This method does not work here (405)."""

    type_uri = "/problems/method-not-allowed"


class NotAcceptable(Problem):
    """None of the formats asked for can be given (406)."""

    type_uri = "/problems/not-acceptable"


class BodyTooSlow(Problem):
    """The body did not come in time (408)."""

    type_uri = "/problems/body-too-slow"


class ScheduleArchived(Problem):
    """The schedule is archived (409)."""

    type_uri = "/problems/schedule-archived"


class ScheduleNotArchived(Problem):
    """The schedule is not archived (409)."""

    type_uri = "/problems/schedule-not-archived"


class PreconditionFailed(VersionConflict):
    """It was changed in the meantime (412)."""

    type_uri = "/problems/precondition-failed"


class ContentTooLarge(Problem):
    """The body is too large (413)."""

    type_uri = "/problems/content-too-large"


class UnsupportedMediaType(Problem):
    """The body is in a format this address does not read (415)."""

    type_uri = "/problems/unsupported-media-type"


class IdempotencyKeyReused(Problem):
    """The Idempotency-Key was used for another request (422)."""

    type_uri = "/problems/idempotency-key-reused"


class InvalidRequest(Problem):
    """The request was read, but cannot be done as it stands (422)."""

    type_uri = "/problems/invalid-request"


class PreconditionRequired(Problem):
    """Say which version is to be changed (428)."""

    type_uri = "/problems/precondition-required"


class RateExceeded(Problem):
    """Too many requests (429)."""

    type_uri = "/problems/rate-exceeded"


class InternalError(Problem):
    """The service failed (500)."""

    type_uri = "/problems/internal-error"


class NoStorage(Problem):
    """This service keeps no schedules (503)."""

    type_uri = "/problems/no-storage"


class Overloaded(Problem):
    """The service has too much to do (503)."""

    type_uri = "/problems/overloaded"


class PlanningBusy(Problem):
    """Every planner is busy (503)."""

    type_uri = "/problems/planning-busy"


class Stopping(Problem):
    """The service is about to stop (503)."""

    type_uri = "/problems/stopping"


class StorageUnavailable(Problem):
    """Schedules cannot be reached at the moment (503)."""

    type_uri = "/problems/storage-unavailable"


KINDS: dict[str, type[Problem]] = {
    kind.type_uri: kind
    for kind in (
        BadRequest,
        MalformedBody,
        KeyNeeded,
        KeyRefused,
        ScopeMissing,
        NotFound,
        MethodNotAllowed,
        NotAcceptable,
        BodyTooSlow,
        ScheduleArchived,
        ScheduleNotArchived,
        PreconditionFailed,
        ContentTooLarge,
        UnsupportedMediaType,
        IdempotencyKeyReused,
        InvalidRequest,
        PreconditionRequired,
        RateExceeded,
        InternalError,
        NoStorage,
        Overloaded,
        PlanningBusy,
        Stopping,
        StorageUnavailable,
    )
}
"""Every kind, by its type."""
