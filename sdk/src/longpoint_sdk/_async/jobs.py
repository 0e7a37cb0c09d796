"""Operations of the document's part "jobs" as methods. Generated; do not edit."""

from __future__ import annotations

from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient


class Jobs(BaseAsyncClient):
    """Operations as methods."""

    async def cancel_job(self, job_id: str) -> types.JobAnswer:
        """Cancel a job.

        End it, and what is done for it. A job that has ended stays as it is, so cancelling twice does no
        more.

        Args:
            job_id: The id of a job.
        """
        return await self.send(calls.cancel_job(job_id))

    async def get_job(self, job_id: str) -> types.JobAnswer:
        """Read a job.

        Where long work stands that was asked for with `Prefer: respond-async`.

        A job ends as `done`, `failed` or `cancelled`. Its result is kept for a time and up to a size, then it
        is gone. A service that keeps schedules in SQLite, or none, forgets its jobs when it stops.

        Args:
            job_id: The id of a job.
        """
        return await self.send(calls.get_job(job_id))

    async def get_job_events(
        self, job_id: str, *, accept: Literal["text/event-stream"] = "text/event-stream"
    ) -> bytes:
        """Follow a job.

        An event each time that something has become of it, the first at once: named by the job's state, with
        the job as it then stands. The stream ends with the job; with Last-Event-ID it goes on after that one.

        Args:
            job_id: The id of a job.
            accept: The media type of the file; text/event-stream is the only one.

        Returns:
            The bytes of a file.
        """
        return await self.send(calls.get_job_events(job_id, accept=accept))

    @overload
    async def get_job_result(self, job_id: str) -> Any: ...

    @overload
    async def get_job_result(
        self, job_id: str, *, accept: Literal["application/pdf", "image/svg+xml", "text/csv", "text/html"]
    ) -> bytes: ...

    @overload
    async def get_job_result(self, job_id: str, *, accept: str) -> Any: ...

    async def get_job_result(self, job_id: str, *, accept: str = "application/json") -> Any:
        """Fetch a job's result.

        What the request would have been answered with, its status, fields and format; or its problem.

        Args:
            job_id: The id of a job.
            accept: The media type of a file to have instead of data: application/pdf, image/svg+xml,
                text/csv, text/html.

        Returns:
            `Any`, or the bytes of a file where `accept` asks for one.

        Raises:
            JobGone: The job's result has gone.
        """
        return await self.send(calls.get_job_result(job_id, accept=accept))
