"""The kinds of problem that stored things and the keys to them can have."""

from longpoint.api.http.problems import Problem


class KeyNeeded(Problem, status=401, title="A key is needed"):
    """Send a key of this service in the Authorization header, as a bearer token. Whoever runs the service makes keys
    with `python -m longpoint keys create`; a key is shown once, so ask for a new one if yours is lost."""


class KeyRefused(Problem, status=401, title="The key is not taken"):
    """The key is not one of this service, was revoked, or its time is over: the detail says which where that may be
    said. Check that it was copied whole, or ask whoever runs the service for a new one."""


class ScopeMissing(Problem, status=403, title="The key may not do this"):
    """The key works, but not for this: the detail names the scope it lacks. Ask for a key that has it."""


class PreconditionRequired(Problem, status=428, title="Say which version is to be changed"):
    """So that nobody's change is lost, a change says in an If-Match header which version it was made from: the ETag of
    the answer in which you read it."""


class PreconditionFailed(Problem, status=412, title="It was changed in the meantime"):
    """Somebody changed it since you read it. Read it again, see what became of it, and make the change to that; nothing
    was saved."""


class Archived(Problem, status=409, title="The schedule is archived", slug="schedule-archived"):
    """An archived schedule can be read but not changed. Take it out of the archive first."""


class NotArchived(Problem, status=409, title="The schedule is not archived", slug="schedule-not-archived"):
    """Deleting a schedule deletes its readings and its whole history for good, so only an archived one can be deleted.
    Archive it first; most often that is all that is wanted."""


class StickChanged(Problem, status=409, title="The stick is laid out otherwise by now"):
    """A stick's name stands for one layout. What the schedule holds was changed since this one was printed, so the plan
    that stands has other sticks in its place: each error says what was on it and where these pieces are today. A cut is
    a fact: where the stick was cut as it was printed, send the same with `as_printed`, and its pieces are recorded as
    they were; the sticks are planned anew from what is left."""


class StickClaimed(Problem, status=409, title="Somebody else has claimed the stick"):
    """Somebody is about to cut it: the detail says who, and until when. Take another stick, wait until the claim is
    over, or have it given up. To record a stick that you claimed yourself, say who you are in `by`."""


class StickCut(Problem, status=409, title="The stick was cut already"):
    """Its pieces are recorded: see what was cut with GET /v1/schedules/{id}/work, and take another stick."""


class KeyReused(
    Problem,
    status=422,
    title="The Idempotency-Key was used for another request",
    slug="idempotency-key-reused",
):
    """One key stands for one request: sent again with the same body it gives the same answer. For another request make
    a new key."""


class StorageUnavailable(Problem, status=503, title="Schedules cannot be reached at the moment"):
    """The database is busy, full or out of reach. Nothing of this request was half saved. Try again after the time in
    Retry-After, with the same Idempotency-Key where there was one."""


class NoStorage(Problem, status=503, title="This service keeps no schedules"):
    """It runs without a database, so it only computes. Whoever runs it can set LONGPOINT_DATABASE."""
