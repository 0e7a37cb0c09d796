"""What is raised, and what it carries."""

import pickle

import httpx
import pytest

from longpoint_sdk import (
    Client,
    ConnectionFailed,
    LongpointError,
    NotReached,
    Problem,
    Retry,
    TimedOut,
    UnreadableAnswer,
    calls,
    problems,
    types,
)
from longpoint_sdk._errors import Fault

NEVER = Retry(times=0)


def answering(response: httpx.Response) -> Client:
    return Client("http://longpoint", transport=httpx.MockTransport(lambda _: response), retry=NEVER)


def failing(failure: Exception) -> Client:
    def fail(_: httpx.Request) -> httpx.Response:
        raise failure

    return Client("http://longpoint", transport=httpx.MockTransport(fail), retry=NEVER)


def test_a_refusal_lists_every_fault_with_its_pointer(client: Client) -> None:
    with pytest.raises(problems.InvalidRequest) as caught:
        client.read_lengths(types.LengthsRequest(lengths=["30 5/8", "778 mm", "5 9/8 in"]))
    refusal = caught.value
    assert refusal.status == 422
    assert refusal.type == problems.InvalidRequest.type_uri
    assert refusal.pointers == ("/lengths/0", "/lengths/2")
    assert [fault.code for fault in refusal.errors] == ["missing-unit", "improper-fraction"]
    assert refusal.request_id == refusal.headers["x-request-id"]
    assert refusal.retry_after is None
    assert refusal.attempts == 1
    assert "/lengths/2: " in str(refusal)
    assert refusal.request_id in str(refusal)


def test_a_mapping_with_a_wrong_field_is_refused_by_the_service(client: Client) -> None:
    with pytest.raises(problems.InvalidRequest) as caught:
        client.read_lengths({"lenghts": ["1 in"]})
    assert set(caught.value.pointers) == {"/lenghts", "/lengths"}


def test_every_problem_is_one_tree() -> None:
    assert all(issubclass(kind, Problem) for kind in problems.KINDS.values())
    assert issubclass(Problem, LongpointError)
    assert issubclass(TimedOut, ConnectionFailed)
    assert issubclass(ConnectionFailed, LongpointError)


def test_a_problem_survives_a_trip_between_processes() -> None:
    one = problems.NotFound(status=404, detail="Gone.", errors=[Fault(code="x", detail="y", pointer="/a")])
    two = pickle.loads(pickle.dumps(one))
    assert type(two) is problems.NotFound
    assert two.pointers == ("/a",)
    assert str(two) == str(one)


def test_a_proxy_that_knows_no_problems() -> None:
    page = httpx.Response(502, html="<h1>Bad gateway</h1>", headers={"Retry-After": "7"})
    with answering(page) as client, pytest.raises(Problem) as caught:
        client.check_live()
    assert type(caught.value) is Problem
    assert (caught.value.status, caught.value.type, caught.value.title) == (502, "about:blank", "Bad Gateway")
    assert caught.value.retry_after == 7
    assert len(caught.value.request_id) == 32


def test_a_kind_of_problem_from_a_newer_service() -> None:
    body = {
        "type": "/problems/too-fancy",
        "title": "Too fancy",
        "detail": "No.",
        "errors": [{"code": "f", "detail": "d"}],
    }
    answer = httpx.Response(422, json=body, headers={"Content-Type": "application/problem+json"})
    with answering(answer) as client, pytest.raises(Problem) as caught:
        client.check_live()
    assert caught.value.type == "/problems/too-fancy"
    assert caught.value.errors[0].code == "f"


@pytest.mark.parametrize("content", [b"", b"not json", b"[]", b'{"status": 3}'])
def test_an_answer_that_is_not_what_was_promised(content: bytes) -> None:
    with answering(httpx.Response(200, content=content)) as client, pytest.raises(UnreadableAnswer) as caught:
        client.check_live()
    assert caught.value.content == content
    assert caught.value.status == 200


def test_fields_and_options_of_a_newer_service_are_borne() -> None:
    with answering(httpx.Response(200, json={"status": "splendid", "since": "Tuesday"})) as client:
        assert client.check_live().status == "splendid"


def test_a_redirect_is_not_followed() -> None:
    away = httpx.Response(307, headers={"Location": "http://elsewhere/"})
    with answering(away) as client, pytest.raises(Problem) as caught:
        client.send_raw(calls.check_live())
    assert caught.value.status == 307


@pytest.mark.parametrize(
    ("failure", "kind"),
    [
        (httpx.ConnectError("refused"), NotReached),
        (httpx.ConnectTimeout("slow"), NotReached),
        (httpx.ReadTimeout("slow"), TimedOut),
        (httpx.ReadError("cut"), ConnectionFailed),
        (httpx.RemoteProtocolError("cut"), ConnectionFailed),
    ],
)
def test_no_answer(failure: Exception, kind: type[ConnectionFailed]) -> None:
    with failing(failure) as client, pytest.raises(ConnectionFailed) as caught:
        client.check_live()
    assert type(caught.value) is kind
    assert caught.value.__cause__ is failure
    assert len(caught.value.request_id) == 32
    assert "GET http://longpoint/health/live" in str(caught.value)


def test_nothing_listens() -> None:
    with Client("http://127.0.0.1:9", retry=NEVER) as client, pytest.raises(NotReached):
        client.check_live()
