"""Types of the document's part "jobs". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result

if TYPE_CHECKING:
    State = Literal["cancelled", "done", "failed", "waiting", "working"]
    """Where a job stands."""
else:
    State = str


class Fault(Result, frozen=True, kw_only=True):
    """One thing that was wrong, where it was, and what to do about it.

    Attributes:
        code: A short stable name for the kind of fault, for programs.
        detail: A sentence for people: what was wrong and what to send instead.
        column: The column of a CSV body, as the file names it.
        header: The header field at fault, when it is one.
        parameter: The query or path parameter at fault, when it is one.
        pointer: RFC 6901 JSON pointer into the body; "" is the whole body. Absent when it is not in the body.
        row: The row of a CSV body, the first being 1; absent when it is not in one.
    """

    code: str
    detail: str
    column: str | None = None
    header: str | None = None
    parameter: str | None = None
    pointer: str | None = None
    row: int | None = None


class PlanProgress(Result, frozen=True, kw_only=True):
    """How far the search for one profile's sticks has come.

    Attributes:
        profile: Whose sticks.
        cost: Of the best plan so far. An amount of money as decimal text with two places.
        bound: No plan costs less. An amount of money as decimal text with two places.
        gap: How far the cost may be from the cheapest, as a share of it.
        seconds: Since the search began.
    """

    profile: str
    cost: Decimal
    bound: Decimal
    gap: float
    seconds: float


class ProblemBody(Result, frozen=True, kw_only=True):
    """What every refusal looks like: application/problem+json, as RFC 9457 has it.

    Attributes:
        type: Where this kind of problem is explained, a path on this service; stable, so match on it.
        title: The kind of problem, in a few words.
        status: The HTTP status of the answer, repeated.
        detail: It says what happened this time.
        instance: The path that was asked for.
        errors: Everything that was wrong, each with where it was; may be empty.
        request_id: The id of this request, as in the X-Request-Id header; give it when asking for help.
    """

    type: str
    title: str
    status: int
    detail: str
    instance: str
    errors: list[Fault]
    request_id: str


class JobAnswer(Result, frozen=True, kw_only=True):
    """Long work that was asked for: where it stands, and how far it has come.

    Attributes:
        id: The name it has, with which its address ends.
        operation: What is done, by the id that this document gives it.
        state: Where it stands.
        tries: How often it was begun; its third worker that is lost is the last.
        progress: The latest of each profile whose sticks are searched; it never gets worse.
        created_at: When it was asked for, in UTC.
        started_at: When it was last begun.
        ended_at: When it ended.
        expires_at: When its result goes; a plan that was made stays with its schedule.
        ahead: Jobs that are begun before it.
        estimate: Seconds in which it will be done, by how long the latest took; null where none has ended
            lately.
        result: Where the answer is, once it is there.
        problem: Why there is none, where it failed.
    """

    id: str
    operation: str
    state: State | str
    tries: int
    progress: list[PlanProgress]
    created_at: str
    started_at: str | None
    ended_at: str | None
    expires_at: str | None
    ahead: int
    estimate: float | None
    result: str | None
    problem: ProblemBody | None
