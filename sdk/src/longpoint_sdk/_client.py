"""What a client is, apart from the operations it has."""

from __future__ import annotations

import time
from collections.abc import Callable, Generator
from contextlib import closing
from types import EllipsisType, TracebackType
from typing import TYPE_CHECKING, Any, TypeVar

from longpoint_sdk._call import Call, Reply
from longpoint_sdk._errors import ConnectionFailed
from longpoint_sdk._events import Event, EventReader, Progress, answer_in, as_stream, without_answer
from longpoint_sdk._exchange import Came, Pause, Send, exchange
from longpoint_sdk._job import Job, to_be_done_later
from longpoint_sdk._retry import Retry
from longpoint_sdk._settings import Settings

if TYPE_CHECKING:
    import httpx

T = TypeVar("T")
Self = TypeVar("Self", bound="BaseClient")


class BaseClient:
    """What a client does besides its operations: sends calls made by `longpoint_sdk.calls`, and waits for answers."""

    def __init__(
        self,
        url: str | None = None,
        *,
        api_key: str | None = None,
        timeout: float | None = 30.0,
        retry: Retry | None = None,
        proxy: str | None = None,
        transport: httpx.BaseTransport | None = None,
        http_client: httpx.Client | None = None,
    ) -> None:
        """Set a client up; nothing is sent yet.

        Args:
            url: The service's address; LONGPOINT_URL, or else http://127.0.0.1:8000.
            api_key: The key to call it with; LONGPOINT_API_KEY, or else none.
            timeout: Seconds to wait to connect, and then for each part of an answer; None waits for ever.
            retry: How what is safe to repeat is repeated; `Retry()` when left out, `Retry(times=0)` never does.
            proxy: A proxy's address. HTTP_PROXY, HTTPS_PROXY and NO_PROXY are heeded without it.
            transport: A httpx transport to send through.
            http_client: A httpx client to send through; yours to close, and it brings its own proxy and transport.

        Raises:
            ConfigError: for an address or a key that cannot be one.
        """
        from longpoint_sdk._http import Wire  # httpx takes longer to import than all the rest

        self._settings = Settings.find(url, api_key, timeout, retry)
        self._wire = Wire(self._settings, http_client, proxy=proxy, transport=transport)

    @property
    def url(self) -> str:
        """The service's address."""
        return self._settings.url

    def send(self, call: Call[T]) -> T:
        """Send a call and give what it answers: `client.send(calls.check_ready())` is `client.check_ready()`.

        Raises:
            Problem: the service refused.
            ConnectionFailed: no answer came.
            UnreadableAnswer: one came that is not of the form the document promises.
        """
        return self.send_raw(call).value

    def send_raw(self, call: Call[T]) -> Reply[T]:
        """Send a call and give the whole reply: status, header fields, bytes, and what they say.

        Raises:
            Problem: the service refused.
            ConnectionFailed: no answer came.
        """
        steps = exchange(call, self._settings.retry)
        came: Came = None
        try:
            while True:
                came = self._take(steps.send(came))
        except StopIteration as end:
            reply: Reply[T] = end.value
            return reply

    def _take(self, step: Send | Pause) -> Came:
        if isinstance(step, Pause):
            self._pause(step)
            return None
        try:
            return self._wire.send(step, self._settings.timeout)
        except ConnectionFailed as failure:
            return failure

    def _pause(self, step: Pause) -> None:
        time.sleep(step.seconds)

    def stream(self, call: Call[Any]) -> Generator[Event, None, None]:
        """Send a call and give its events as they come; `follow` makes more of them.

        What fails before the first event is sent again like any other call; after it, nothing is. Only
        long searches answer with events: `progress`, then `answer` or `problem`; and `calls.get_job_events`.

        Raises:
            Problem: the service refused.
            ConnectionFailed: no answer came, or it broke off.
        """
        step, response = self._open(as_stream(call))
        reader = EventReader()
        for chunk in self._wire.chunks(step, response):
            yield from reader.feed(chunk)

    def follow(self, call: Call[T], progress: Callable[[Progress], object]) -> T:
        """Send a call that takes a while, report how it comes along, and get its answer.

        Args:
            call: A call of an operation that can answer with events: `calls.compute_cut_list(...)`.
            progress: Is called with each step.

        Raises:
            Problem: the service refused, or could not go on.
            ConnectionFailed: no answer came, or it broke off.
            UnreadableAnswer: the events ended without an answer.

        Example:
            house = types.CutListRequest(openings=[window], trim_specs={"plain": trim}, stock=[yard])
            cut_list = client.follow(calls.compute_cut_list(house), lambda step: print(step.profile, step.cost))
        """
        with closing(self.stream(call)) as events:
            for event in events:
                answer = answer_in(event, call, progress)
                if answer is not None:
                    return answer
        raise without_answer()

    def begin(self, call: Call[T]) -> Job[T]:
        """Have a call answered later: work goes on at the service, whatever becomes of the connection.

        Args:
            call: A call of long work: a plan, a cut list, a sheet. What is soon done may be answered at once.

        Raises:
            Problem: the service refused.
            ConnectionFailed: no answer came.

        Example:
            job = client.begin(calls.make_opening_sheet(house, accept="application/pdf"))
            pdf = job.result(lambda job: print(job.state, job.ahead, job.progress))
        """
        return Job(self, call, self.send_raw(to_be_done_later(call)))

    def _open(self, call: Call[Any]) -> tuple[Send, httpx.Response]:
        steps = exchange(call, self._settings.retry)
        came: Came = None
        try:
            while True:
                step = steps.send(came)
                if isinstance(step, Pause):
                    self._pause(step)
                    came = None
                    continue
                sent = step
                try:
                    came, response = self._wire.open(step, self._settings.timeout)
                except ConnectionFailed as failure:
                    came = failure
        except StopIteration:
            return sent, response

    def with_options(
        self: Self, *, timeout: float | EllipsisType | None = ..., retry: Retry | None = None
    ) -> Self:
        """This client, over the same connections, with another timeout or other retries.

        Args:
            timeout: Seconds, as in `Client`; None waits for ever, left out it stays as it is.
            retry: Other retries; left out they stay as they are.

        Example:
            client.with_options(timeout=1.0, retry=Retry(times=0)).check_ready()
        """
        twin = object.__new__(type(self))
        twin._wire = self._wire
        twin._settings = self._settings.changed(timeout, retry)
        return twin

    def close(self) -> None:
        """Close the connections, unless they came with a `http_client`."""
        self._wire.close()

    def __enter__(self: Self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, fault: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def __repr__(self) -> str:
        return f"<{type(self).__name__} of {self.url}>"
