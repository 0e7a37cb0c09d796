"""An exception for each kind of problem the service answers with. Generated; do not edit.

Each is a `longpoint_sdk.Problem`, which says what they all carry: `status`, `detail`, `errors`, `request_id`.

    try:
        client.read_lengths({"lengths": ["30 5/8"]})
    except problems.InvalidRequest as refusal:
        for fault in refusal.errors:
            print(fault.pointer, fault.code, fault.detail)
"""

from __future__ import annotations

from longpoint_sdk._errors import Problem, VersionConflict


class BadRequest(Problem):
    """The request could not be read (400).

    Something about the request line or its header fields is not valid HTTP: the detail says what.
    """

    type_uri = "/problems/bad-request"


class MalformedBody(Problem):
    """The body could not be read (400).

    The body is not valid JSON or MessagePack, is not UTF-8, gives one key twice, or is nested too deeply. Let
    a library write it rather than joining text by hand, and check that it was sent whole.
    """

    type_uri = "/problems/malformed-body"


class KeyNeeded(Problem):
    """A key is needed (401).

    Send a key of this service in the Authorization header, as a bearer token. Whoever runs the service makes
    keys with `python -m longpoint keys create`; a key is shown once, so ask for a new one if yours is lost.

    Here the key is the client's `api_key`, or LONGPOINT_API_KEY.
    """

    type_uri = "/problems/key-needed"


class KeyRefused(Problem):
    """The key is not taken (401).

    The key is not one of this service, was revoked, or its time is over: the detail says which where that may
    be said. Check that it was copied whole, or ask whoever runs the service for a new one.

    Here the key is the client's `api_key`, or LONGPOINT_API_KEY.
    """

    type_uri = "/problems/key-refused"


class ScopeMissing(Problem):
    """The key may not do this (403).

    The key works, but not for this: the detail names the scope it lacks. Ask for a key that has it.
    """

    type_uri = "/problems/scope-missing"


class NotFound(Problem):
    """Nothing is here (404).

    There is no address of this path, or nothing of that id or mark any more: the detail says which. Compare
    the path with the list in /openapi.json or at /docs.
    """

    type_uri = "/problems/not-found"


class MethodNotAllowed(Problem):
    """This method does not work here (405).

    The address exists, but not for this method. The Allow header of the answer lists those that work.
    """

    type_uri = "/problems/method-not-allowed"


class NotAcceptable(Problem):
    """None of the formats asked for can be given (406).

    The Accept header leaves out every format this address can answer in. Ask for application/json, or one of
    the others that the detail lists, or send no Accept header.

    Here the Accept header is `accept`.
    """

    type_uri = "/problems/not-acceptable"


class BodyTooSlow(Problem):
    """The body did not come in time (408).

    The body took longer to come than this service waits. Send it again over a better connection, or less.
    """

    type_uri = "/problems/body-too-slow"


class ScheduleArchived(Problem):
    """The schedule is archived (409).

    An archived schedule can be read but not changed. Take it out of the archive first.
    """

    type_uri = "/problems/schedule-archived"


class ScheduleNotArchived(Problem):
    """The schedule is not archived (409).

    Deleting a schedule deletes its readings and its whole history for good, so only an archived one can be
    deleted. Archive it first; most often that is all that is wanted.
    """

    type_uri = "/problems/schedule-not-archived"


class StickChanged(Problem):
    """The stick is laid out otherwise by now (409).

    A stick's name stands for one layout. What the schedule holds was changed since this one was printed, so
    the plan that stands has other sticks in its place: each error says what was on it and where these pieces
    are today. A cut is a fact: where the stick was cut as it was printed, send the same with `as_printed`,
    and its pieces are recorded as they were; the sticks are planned anew from what is left.
    """

    type_uri = "/problems/stick-changed"


class StickClaimed(Problem):
    """Somebody else has claimed the stick (409).

    Somebody is about to cut it: the detail says who, and until when. Take another stick, wait until the claim
    is over, or have it given up. To record a stick that you claimed yourself, say who you are in `by`.
    """

    type_uri = "/problems/stick-claimed"


class StickCut(Problem):
    """The stick was cut already (409).

    Its pieces are recorded: see what was cut with GET /v1/schedules/{id}/work, and take another stick.
    """

    type_uri = "/problems/stick-cut"


class JobGone(Problem):
    """The job's result has gone (410).

    Results are kept for a while only. Send the request again; a plan that was made is still its schedule's.
    """

    type_uri = "/problems/job-gone"


class PreconditionFailed(VersionConflict):
    """It was changed in the meantime (412).

    Somebody changed it since you read it. Read it again, see what became of it, and make the change to that;
    nothing was saved.

    `mine` is what was sent, `current` a `Versioned` of what stands: change that, and send it with
    `if_match=current`.
    """

    type_uri = "/problems/precondition-failed"


class ContentTooLarge(Problem):
    """The body is too large (413).

    The body is longer than this service takes: the detail says how long it may be. Send less at once.
    """

    type_uri = "/problems/content-too-large"


class UnsupportedMediaType(Problem):
    """The body is in a format this address does not read (415).

    Say what the body is with a Content-Type header: application/json in UTF-8, application/vnd.msgpack or
    application/msgpack, without a Content-Encoding.
    """

    type_uri = "/problems/unsupported-media-type"


class IdempotencyKeyReused(Problem):
    """The Idempotency-Key was used for another request (422).

    One key stands for one request: sent again with the same body it gives the same answer. For another
    request make a new key.

    Here the key is `idempotency_key`; one is made for each call that is not given any.
    """

    type_uri = "/problems/idempotency-key-reused"


class InvalidRequest(Problem):
    """The request was read, but cannot be done as it stands (422).

    Each of the errors says where (a JSON pointer into the body, a parameter or a header), what was wrong and
    what to send, measure or change. All that could be found is listed at once. Nothing was saved.

    `errors` holds a `Fault` for each; `pointers` their JSON pointers.
    """

    type_uri = "/problems/invalid-request"


class PreconditionRequired(Problem):
    """Say which version is to be changed (428).

    So that nobody's change is lost, a change says in an If-Match header which version it was made from: the
    ETag of the answer in which you read it.

    Here the If-Match header is `if_match`, which takes the `Versioned` that was read.
    """

    type_uri = "/problems/precondition-required"


class RateExceeded(Problem):
    """Too many requests (429).

    The key, or the address where no key is shown, made more requests than it may in a time. Retry-After says
    when to go on; the RateLimit fields of every answer say how many are left.
    """

    type_uri = "/problems/rate-exceeded"


class TooManyJobs(Problem):
    """You have too many jobs under way (429).

    Each account may have so many jobs waiting and under way. Wait for one to end, or cancel one: Retry-After
    says when there will be a place, by how long the latest jobs took.
    """

    type_uri = "/problems/too-many-jobs"


class InternalError(Problem):
    """The service failed (500).

    This is a fault of the service, not of the request. Trying again may help. If it does not, tell whoever
    runs the service the request_id of the answer: it finds the fault in their log.
    """

    type_uri = "/problems/internal-error"


class JobsBusy(Problem):
    """There are too many jobs (503).

    More jobs wait than the service takes. Send the request again after the seconds in the Retry-After header,
    which follow from how long the latest jobs took.
    """

    type_uri = "/problems/jobs-busy"


class NoStorage(Problem):
    """This service keeps no schedules (503).

    It runs without a database, so it only computes. Whoever runs it can set LONGPOINT_DATABASE.
    """

    type_uri = "/problems/no-storage"


class Overloaded(Problem):
    """The service has too much to do (503).

    More was asked at once than this service can answer in time, so this request was turned away before any
    work was done for it. Send it again after the time in Retry-After, a little later each time.
    """

    type_uri = "/problems/overloaded"


class PlanningBusy(Problem):
    """Every planner is busy (503).

    The service plans only so many cuttings at once and lets only so many wait. Try again after the seconds in
    the Retry-After header, or ask for `planning_seconds` of 0, which is answered first-fit without waiting.
    """

    type_uri = "/problems/planning-busy"


class Stopping(Problem):
    """The service is about to stop (503).

    This one of the services is about to stop; ask again, and another will answer.
    """

    type_uri = "/problems/stopping"


class StorageUnavailable(Problem):
    """Schedules cannot be reached at the moment (503).

    The database is busy, full or out of reach. Nothing of this request was half saved. Try again after the
    time in Retry-After, with the same Idempotency-Key where there was one.
    """

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
        StickChanged,
        StickClaimed,
        StickCut,
        JobGone,
        PreconditionFailed,
        ContentTooLarge,
        UnsupportedMediaType,
        IdempotencyKeyReused,
        InvalidRequest,
        PreconditionRequired,
        RateExceeded,
        TooManyJobs,
        InternalError,
        JobsBusy,
        NoStorage,
        Overloaded,
        PlanningBusy,
        Stopping,
        StorageUnavailable,
    )
}
"""Every kind, by its type."""
