"""A cut list as events: what goes wrong on the way is told as an event, and whoever leaves ends the search."""

import asyncio
import json
from collections.abc import Awaitable, Callable
from typing import Any

import pytest
from litestar import Litestar

from api.test_planning import request_for
from longpoint.api.running.threads import PlanningBusy
from longpoint.app import create_app
from longpoint.settings import Settings
from longpoint.stock import Progress


class Pool:
    """A pool whose search is as the test says."""

    def __init__(self, search: Callable[[Any], Awaitable[None]]) -> None:
        self.search = search

    def refuse_when_full(self, seconds: float) -> None:
        """There is always room."""

    async def plan(self, cuttings: Any, seconds: float, tell: Any) -> list[None]:  # noqa: ARG002
        await self.search(tell)
        return [None] * len(cuttings)

    async def close(self) -> None:
        """Nothing is open."""


async def streamed(app: Litestar, leave: Callable[[bytes], bool]) -> tuple[dict[bytes, bytes], str]:
    """The head and the body of a cut list's events, as far as a caller reads who leaves when it says so."""
    body = json.dumps(request_for(20, planning_seconds=20)).encode()
    headers = [
        (b"host", b"longpoint"),
        (b"accept", b"text/event-stream"),
        (b"content-type", b"application/json"),
        (b"content-length", str(len(body)).encode()),
    ]
    scope: dict[str, Any] = {
        "type": "http",
        "asgi": {"version": "3.0"},
        "http_version": "1.1",
        "method": "POST",
        "scheme": "http",
        "path": "/v1/cut-list",
        "raw_path": b"/v1/cut-list",
        "root_path": "",
        "query_string": b"",
        "headers": headers,
        "client": ("127.0.0.1", 4000),
        "server": ("longpoint", 80),
    }
    asked, gone = iter([{"type": "http.request", "body": body, "more_body": False}]), asyncio.Event()
    head: dict[bytes, bytes] = {}
    read: list[bytes] = []

    async def receive() -> Any:
        for message in asked:
            return message
        await gone.wait()
        return {"type": "http.disconnect"}

    async def send(message: Any) -> None:
        head.update(message.get("headers", ()))
        if message["type"] == "http.response.body":
            read.append(message["body"])
            if leave(message["body"]) or not message.get("more_body"):
                gone.set()

    await asyncio.wait_for(app(scope, receive, send), 10)  # type: ignore[arg-type]
    return head, b"".join(read).decode()


def served(search: Callable[[Any], Awaitable[None]]) -> Litestar:
    app = create_app(Settings(access_log=False))
    app.state.planning = Pool(search)
    return app


def last(text: str) -> tuple[str, Any]:
    name, data = text.strip().split("\n\n")[-1].split("\n")
    return name.removeprefix("event: "), json.loads(data.removeprefix("data: "))


async def test_whoever_leaves_ends_the_search() -> None:
    ended: list[str] = []

    async def search(tell: Any) -> None:
        tell(0, Progress(800, 700, 1.23456))
        try:
            await asyncio.Event().wait()
        finally:
            ended.append("ended")

    _, text = await streamed(served(search), lambda body: b"progress" in body)
    await asyncio.sleep(0)
    assert ended == ["ended"]
    assert last(text) == (
        "progress",
        {"profile": "casing 2 1/2", "cost": "8.00", "bound": "7.00", "gap": 0.125, "seconds": 1.235},
    )


@pytest.mark.parametrize(
    ("failure", "kind"),
    [
        (PlanningBusy("The queue is full."), "/problems/planning-busy"),
        (RuntimeError("a secret of the inside"), "/problems/internal-error"),
    ],
)
async def test_what_fails_on_the_way_is_told_as_the_last_event(failure: Exception, kind: str) -> None:
    async def search(tell: Any) -> None:  # noqa: ARG001
        raise failure

    head, text = await streamed(served(search), lambda body: False)  # noqa: ARG005
    assert head[b"content-type"].startswith(b"text/event-stream")
    assert head[b"vary"] == b"accept"
    name, problem = last(text)
    assert name == "problem"
    assert problem["type"] == kind
    assert "secret" not in text


async def test_a_search_that_finds_nothing_better_ends_in_the_answer() -> None:
    async def search(tell: Any) -> None:
        tell(0, Progress(900, 800, 0.5))

    _, text = await streamed(served(search), lambda body: False)  # noqa: ARG005
    name, answer = last(text)
    assert (name, answer["plans"][0]["method"]) == ("answer", "first_fit")
