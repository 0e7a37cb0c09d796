"""What is sent again, how often, after how long; and what never is."""

import time
from typing import Any

import httpx
import pytest

from longpoint_sdk import AsyncClient, Call, Client, NotReached, Problem, Retry, TimedOut
from longpoint_sdk._retry import retry_after_seconds

Came = httpx.Response | Exception


class Unreliable(httpx.BaseTransport, httpx.AsyncBaseTransport):
    """Answers with each of these in turn, and keeps what was sent."""

    def __init__(self, *came: Came) -> None:
        self.came = iter(came)
        self.sent: list[httpx.Request] = []

    def handle_request(self, request: httpx.Request) -> httpx.Response:
        self.sent.append(request)
        came = next(self.came)
        if isinstance(came, Exception):
            raise came
        return came

    async def handle_async_request(self, request: httpx.Request) -> httpx.Response:
        return self.handle_request(request)


@pytest.fixture
def pauses(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    """Seconds that were waited; nobody waits them in a test."""
    waited: list[float] = []
    monkeypatch.setattr(time, "sleep", waited.append)
    return waited


def post(repeat: Any, **headers: str) -> Call[Any]:
    return Call(
        operation="x", method="POST", path="/x", result=dict, body={"a": 1}, repeat=repeat, headers=headers
    )


def client(transport: Unreliable, **options: Any) -> Client:
    return Client("http://longpoint", transport=transport, **options)


def ok() -> httpx.Response:
    return httpx.Response(200, json={"status": "ok"})


def busy(status: int = 503, **headers: str) -> httpx.Response:
    return httpx.Response(status, headers=headers)


@pytest.mark.parametrize("status", [408, 429, 500, 502, 503, 504])
def test_a_passing_trouble_is_tried_again(pauses: list[float], status: int) -> None:
    transport = Unreliable(busy(status), busy(status), ok())
    reply = client(transport).send_raw(post("always"))
    assert reply.attempts == 3
    assert len({sent.headers["x-request-id"] for sent in transport.sent}) == 1
    assert len({sent.content for sent in transport.sent}) == 1
    assert 0.375 <= pauses[0] <= 0.5 <= 0.75 <= pauses[1] <= 1.0


@pytest.mark.parametrize("status", [400, 401, 403, 404, 409, 412, 422, 428])
def test_what_will_not_fare_better_is_not(pauses: list[float], status: int) -> None:
    with pytest.raises(Problem) as caught:
        client(Unreliable(busy(status))).send(post("with_key"))
    assert (caught.value.status, caught.value.attempts, pauses) == (status, 1, [])


def test_it_gives_up(pauses: list[float]) -> None:
    with pytest.raises(Problem) as caught:
        client(Unreliable(busy(), busy(), busy())).send(post("always"))
    assert caught.value.attempts == 3
    assert len(pauses) == 2


async def test_the_async_twin_does_the_same() -> None:
    transport = Unreliable(httpx.ReadError("cut"), busy(), ok())
    async with AsyncClient("http://longpoint", transport=transport, retry=Retry(first=0.0)) as twin:
        reply = await twin.send_raw(post("always"))
    assert reply.attempts == 3


@pytest.mark.usefixtures("pauses")
@pytest.mark.parametrize("repeat", ["never", "with_key"])
def test_what_may_have_been_done_is_not_done_twice(repeat: str) -> None:
    lost = Unreliable(httpx.ReadTimeout("lost"), ok())
    if repeat == "never":
        with pytest.raises(TimedOut):
            client(lost).send(post(repeat))
        assert len(lost.sent) == 1
    else:
        assert client(lost).send_raw(post(repeat)).attempts == 2
        keys = {sent.headers["idempotency-key"] for sent in lost.sent}
        assert len(keys) == 1, "one key for every attempt of one call"
    assert client(Unreliable(httpx.ConnectError("refused"), ok())).send_raw(post(repeat)).attempts == 2


def test_each_call_has_a_key_of_its_own_and_a_given_one_is_kept() -> None:
    transport = Unreliable(ok(), ok(), ok())
    one = client(transport)
    for call in (post("with_key"), post("with_key"), post("with_key", **{"Idempotency-Key": '"mine"'})):
        one.send(call)
    first, second, third = (sent.headers["idempotency-key"] for sent in transport.sent)
    assert first != second
    assert third == '"mine"'


@pytest.mark.usefixtures("pauses")
def test_a_first_sending_still_under_way_is_waited_for() -> None:
    assert (
        client(Unreliable(busy(409, **{"Retry-After": "1"}), ok())).send_raw(post("with_key")).attempts == 2
    )


def test_retry_after_is_honoured(pauses: list[float]) -> None:
    later = busy(
        429, **{"Date": "Wed, 25 Nov 2026 10:00:00 GMT", "Retry-After": "Wed, 25 Nov 2026 10:00:30 GMT"}
    )
    client(Unreliable(busy(**{"Retry-After": "3"}), later, ok())).send(post("always"))
    assert 3 <= pauses[0] < 3.2
    assert 30 <= pauses[1] < 30.3


def test_no_one_waits_longer_than_patience(pauses: list[float]) -> None:
    with pytest.raises(Problem) as caught:
        client(Unreliable(busy(**{"Retry-After": "121"}))).send(post("always"))
    assert caught.value.retry_after == 121
    assert pauses == []


@pytest.mark.usefixtures("pauses")
def test_other_settings_over_the_same_connections() -> None:
    transport = Unreliable(busy(), busy(), ok())
    patient = client(transport)
    hasty = patient.with_options(retry=Retry(times=0), timeout=1.5)
    with pytest.raises(Problem):
        hasty.send(post("always"))
    assert transport.sent[0].extensions["timeout"]["read"] == 1.5
    assert patient.send_raw(post("always")).attempts == 2
    assert transport.sent[1].extensions["timeout"]["read"] == 30.0


def test_the_pause_is_bounded() -> None:
    assert all(Retry(times=9).pause(9, None) <= 8.0 for _ in range(50))  # type: ignore[operator]
    assert Retry(times=9).pause(10, None) is None


@pytest.mark.parametrize(
    ("value", "date", "seconds"),
    [
        ("5", None, 5.0),
        (None, None, None),
        ("soon", None, None),
        ("", None, None),
        ("-3", None, None),
        ("Wed, 25 Nov 2026 10:00:30 GMT", "Wed, 25 Nov 2026 10:00:00 GMT", 30.0),
        ("Wed, 25 Nov 2026 09:59:00 GMT", "Wed, 25 Nov 2026 10:00:00 GMT", 0.0),
    ],
)
def test_reading_retry_after(value: str | None, date: str | None, seconds: float | None) -> None:
    assert retry_after_seconds(value, date) == seconds


@pytest.mark.usefixtures("pauses")
def test_not_reached_is_always_tried_again() -> None:
    with pytest.raises(NotReached) as caught:
        client(Unreliable(*[httpx.ConnectError("no")] * 3)).send(post("never"))
    assert caught.value.attempts == 3
