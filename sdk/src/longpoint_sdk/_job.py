"""Long work that is done while its caller does something else."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import aclosing, closing
from typing import TYPE_CHECKING, Any, Generic, TypeVar

from msgspec.structs import replace

from longpoint_sdk import types
from longpoint_sdk._call import Call, Reply
from longpoint_sdk._errors import ConnectionFailed

if TYPE_CHECKING:
    from longpoint_sdk._async_client import BaseAsyncClient
    from longpoint_sdk._client import BaseClient

T = TypeVar("T")
_ENDED = ("done", "failed", "cancelled")
_AGAIN = 1.0
"""Seconds after which a stream of events that broke off is asked for again."""
Told = Callable[[types.JobAnswer], object]


def to_be_done_later(call: Call[T]) -> Call[T]:
    """The same call, to be answered with a job."""
    return replace(call, headers={**call.headers, "Prefer": "respond-async"}, held=None)


class _Job(Generic[T]):
    """What a job is, however its client waits.

    Attributes:
        id: The job's id; "" where the answer was there at once.
        latest: The job as it was heard of last; None where it was not.
    """

    def __init__(self, call: Call[T], reply: Reply[T]) -> None:
        self.latest: types.JobAnswer | None = None
        self._reply = reply if reply.status != 202 else None
        self.id = "" if self._reply else reply.headers["location"].rpartition("/")[2]
        self._call = call
        self._seen = ""

    @property
    def _path(self) -> str:
        return f"/v1/jobs/{self.id}"

    def _read(self) -> Call[types.JobAnswer]:
        return Call(operation="get_job", method="GET", path=self._path, result=types.JobAnswer)

    def _cancel(self) -> Call[types.JobAnswer]:
        return Call(operation="cancel_job", method="DELETE", path=self._path, result=types.JobAnswer)

    def _events(self) -> Call[Any]:
        seen = {"Last-Event-ID": self._seen} if self._seen else {}
        path = f"{self._path}/events"
        return Call(operation="get_job_events", method="GET", path=path, result=None, headers=seen)

    def _result(self) -> Call[T]:
        own = {"operation": "get_job_result", "method": "GET", "path": f"{self._path}/result", "body": None}
        return replace(self._call, **own, query={}, headers={}, repeat="always", current=None, held=None)

    def _heard(self, event: Any, told: Told | None) -> bool:
        """Take an event; whether it was the last."""
        latest: types.JobAnswer = event.read(types.JobAnswer)
        self.latest, self._seen = latest, event.id
        if told is not None:
            told(latest)
        return latest.state in _ENDED

    def __repr__(self) -> str:
        return f"<{type(self).__name__} {self.id or 'done'}>"


class Job(_Job[T]):
    """Work that was begun with a client's `begin`."""

    def __init__(self, client: BaseClient, call: Call[T], reply: Reply[T]) -> None:
        super().__init__(call, reply)
        self._client = client

    def read(self) -> types.JobAnswer:
        """The job as it stands."""
        self.latest = self._client.send(self._read())
        return self.latest

    def cancel(self) -> types.JobAnswer:
        """End it."""
        self.latest = self._client.send(self._cancel())
        return self.latest

    def result(self, told: Told | None = None) -> T:
        """Wait for what the call would have answered; it is read on where the connection broke off.

        Args:
            told: Is called with the job each time that something became of it.

        Raises:
            Problem: the work was refused or failed; the job was cancelled, or is not known any more.
        """
        if self._reply is not None:
            return self._reply.value
        for _ in self._until_ended(told):
            time.sleep(_AGAIN)
        return self._client.send(self._result())

    def _until_ended(self, told: Told | None) -> Iterator[None]:
        while True:
            try:
                with closing(self._client.stream(self._events())) as events:
                    for event in events:
                        if self._heard(event, told):
                            return
            except ConnectionFailed:
                pass
            yield


class AsyncJob(_Job[T]):
    """Work that was begun with an async client's `begin`."""

    def __init__(self, client: BaseAsyncClient, call: Call[T], reply: Reply[T]) -> None:
        super().__init__(call, reply)
        self._client = client

    async def read(self) -> types.JobAnswer:
        """The job as it stands."""
        self.latest = await self._client.send(self._read())
        return self.latest

    async def cancel(self) -> types.JobAnswer:
        """End it."""
        self.latest = await self._client.send(self._cancel())
        return self.latest

    async def result(self, told: Told | None = None) -> T:
        """Wait for what the call would have answered; as `Job.result`."""
        if self._reply is not None:
            return self._reply.value
        while True:
            try:
                async with aclosing(self._client.stream(self._events())) as events:
                    async for event in events:
                        if self._heard(event, told):
                            return await self._client.send(self._result())
            except ConnectionFailed:
                pass
            import asyncio  # by now it is loaded; at the top it would slow the import of the sync client

            await asyncio.sleep(_AGAIN)

    def __await__(self) -> Any:
        return self.result().__await__()
