"""A job as its caller sees it."""

from __future__ import annotations

from typing import Any, cast

import msgspec

from longpoint.api.http.problems import ProblemBody
from longpoint.jobs.job import Job, JobSeen, Line, Outcome


class JobAnswer(JobSeen, frozen=True, kw_only=True):
    """Long work that was asked for: where it stands, and how far it has come.

    Attributes:
        ahead: Jobs that are begun before it.
        estimate: Seconds in which it will be done, by how long the latest took; null where none has ended lately.
        result: Where the answer is, once it is there.
        problem: Why there is none, where it failed.
    """

    ahead: int
    estimate: float | None
    result: str | None
    problem: ProblemBody | None


def address_of(job: Job) -> str:
    """Where a job is."""
    return f"/v1/jobs/{job.id}"


def job_answer(job: Job, line: Line, outcome: Outcome | None) -> JobAnswer:
    """A job with what it has before it, and why it failed where it did."""
    there = job.status is not None and job.status < 400 and not job.gone
    failed = outcome is not None and outcome.status >= 400
    return JobAnswer(
        **{name: getattr(job, name) for name in JobSeen.__struct_fields__},
        ahead=line.ahead,
        estimate=None if job.ended else line.seconds,
        result=f"{address_of(job)}/result" if there else None,
        # As it was written: its sentences are words by now.
        problem=cast(Any, msgspec.json.decode(outcome.body)) if failed and outcome else None,
    )
