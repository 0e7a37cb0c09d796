"""The client of all operations. Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk._async.a_house import AHouse
from longpoint_sdk._async.health import Health
from longpoint_sdk._async.in_and_out import InAndOut
from longpoint_sdk._async.jobs import Jobs
from longpoint_sdk._async.lengths import Lengths
from longpoint_sdk._async.lengths_on_hand import LengthsOnHand
from longpoint_sdk._async.one_opening import OneOpening
from longpoint_sdk._async.openings import Openings
from longpoint_sdk._async.plans import Plans
from longpoint_sdk._async.revisions import Revisions
from longpoint_sdk._async.schedules import Schedules
from longpoint_sdk._async.sheets import Sheets
from longpoint_sdk._async.work import Work


class AsyncClient(
    AHouse,
    Health,
    InAndOut,
    Jobs,
    Lengths,
    LengthsOnHand,
    OneOpening,
    Openings,
    Plans,
    Revisions,
    Schedules,
    Sheets,
    Work,
):
    """The service, for async code. Use it in an `async with`, or close it. Each operation is a method.

    Nearly every operation may raise these; those from NotReached to UnreadableAnswer are of `longpoint_sdk`,
    the others of `longpoint_sdk.problems`. What else an operation may raise stands with it. Each is a
    LongpointError.

    Raises:
        NotReached: There was no way to the service; nothing was done.
        TimedOut: No answer came in time; a ConnectionFailed.
        ConnectionFailed: No answer came; what was asked may or may not have been done.
        UnreadableAnswer: The answer is not of the form the document promises.
        BadRequest: The request could not be read.
        MalformedBody: The body could not be read.
        KeyNeeded: A key is needed.
        KeyRefused: The key is not taken.
        ScopeMissing: The key may not do this.
        NotFound: Nothing is here.
        NotAcceptable: None of the formats asked for can be given.
        IdempotencyKeyReused: The Idempotency-Key was used for another request.
        InvalidRequest: The request was read, but cannot be done as it stands.
        RateExceeded: Too many requests.
        TooManyJobs: You have too many jobs under way.
        InternalError: The service failed.
        JobsBusy: There are too many jobs.
        NoStorage: This service keeps no schedules.
        Overloaded: The service has too much to do.
        PlanningBusy: Every planner is busy.
        Stopping: The service is about to stop.
        StorageUnavailable: Schedules cannot be reached at the moment.
    """
