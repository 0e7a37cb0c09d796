"""Server-sent events, read as they come."""

from collections.abc import AsyncIterator, Iterator
from itertools import pairwise

import httpx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint_sdk import (
    AsyncClient,
    Call,
    Client,
    ConnectionFailed,
    Event,
    Problem,
    Progress,
    Retry,
    UnreadableAnswer,
    problems,
)
from longpoint_sdk._events import EventReader

STREAM = (
    "\ufeff: a comment\n"
    'event: progress\nid: 1\ndata: {"gap": 0.5}\n\n'
    "retry: 3000\rdata: two\rdata: lines\r\r"
    "event: empty\r\n\r\n"
    "data:½ in\r\nid: 7\0\r\nunknown: field\r\n\r\n"
    "data: cut short"
).encode()
EVENTS = [
    Event("progress", '{"gap": 0.5}', "1"),
    Event("message", "two\nlines", "1"),
    Event("message", "½ in", "1"),
]
CALL = Call(operation="x", method="POST", path="/x", result=dict, body={})


@given(st.lists(st.integers(0, len(STREAM)), max_size=12))
def test_it_does_not_matter_how_the_bytes_are_cut(cuts: list[int]) -> None:
    reader = EventReader()
    edges = [0, *sorted(cuts), len(STREAM)]
    pieces = [STREAM[start:end] for start, end in pairwise(edges)]
    assert [event for piece in pieces for event in reader.feed(piece)] == EVENTS


def test_what_an_event_says() -> None:
    assert EVENTS[0].read(dict[str, float]) == {"gap": 0.5}
    with pytest.raises(UnreadableAnswer):
        EVENTS[1].read()


class Pieces(httpx.SyncByteStream, httpx.AsyncByteStream):
    """A body that comes in pieces, and may break off."""

    def __init__(self, *pieces: bytes, broken: bool = False) -> None:
        self.pieces = pieces
        self.broken = broken
        self.closed = False

    def __iter__(self) -> Iterator[bytes]:
        yield from self.pieces
        if self.broken:
            raise httpx.ReadError("cut")

    async def __aiter__(self) -> AsyncIterator[bytes]:
        for piece in self:
            yield piece

    def close(self) -> None:
        self.closed = True

    async def aclose(self) -> None:
        self.closed = True


def transport(*answers: httpx.Response) -> httpx.MockTransport:
    coming = iter(answers)
    return httpx.MockTransport(lambda _: next(coming))


def test_events_come_one_by_one_and_the_connection_is_given_back() -> None:
    body = Pieces(b"data: 1\n\n", b"data: 2\n\n", b"data: 3\n\n")
    client = Client(transport=transport(httpx.Response(200, stream=body)))
    events = client.stream(CALL)
    assert next(events).data == "1"
    assert not body.closed
    events.close()
    assert body.closed


def test_it_is_sent_again_until_it_streams() -> None:
    answers = transport(httpx.Response(503), httpx.Response(200, stream=Pieces(STREAM)))
    assert list(Client(transport=answers, retry=Retry(first=0.0)).stream(CALL)) == EVENTS


async def test_the_async_twin() -> None:
    answers = transport(httpx.Response(503), httpx.Response(200, stream=Pieces(STREAM)))
    async with AsyncClient(transport=answers, retry=Retry(first=0.0)) as client:
        assert [event async for event in client.stream(CALL)] == EVENTS


def test_a_refusal_is_a_problem() -> None:
    with pytest.raises(Problem) as caught:
        next(Client(transport=transport(httpx.Response(422))).stream(CALL))
    assert caught.value.status == 422


def test_a_stream_that_breaks_off_is_not_begun_again() -> None:
    client = Client(transport=transport(httpx.Response(200, stream=Pieces(b"data: 1\n\n", broken=True))))
    events = client.stream(CALL)
    assert next(events).data == "1"
    with pytest.raises(ConnectionFailed):
        next(events)


STEP = (
    b'event: progress\ndata: {"profile":"casing","cost":"9.60","bound":"9.10","gap":0.05,"seconds":0.1}\n\n'
)


@pytest.mark.parametrize(
    ("end", "raised"),
    [
        (
            b'event: problem\ndata: {"type":"/problems/invalid-request","status":422,"detail":"No."}\n\n',
            Problem,
        ),
        (b"", UnreadableAnswer),
        (b"event: answer\ndata: nothing\n\n", UnreadableAnswer),
    ],
)
def test_a_stream_that_comes_to_nothing(end: bytes, raised: type[Exception]) -> None:
    told: list[Progress] = []
    client = Client(transport=transport(httpx.Response(200, stream=Pieces(STEP, end))))
    with pytest.raises(raised) as caught:
        client.follow(CALL, told.append)
    assert [step.gap for step in told] == [0.05]
    if raised is Problem:
        assert type(caught.value) is problems.InvalidRequest
        assert (caught.value.status, caught.value.detail) == (422, "No.")
