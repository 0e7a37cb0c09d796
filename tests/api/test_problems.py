"""Every refusal is a problem document, whoever refused."""

import logging

import httpx
import pytest
from litestar import get
from litestar.exceptions import ClientException, InternalServerException
from litestar.params import FromQuery

from longpoint.api.http.problems import Problem
from longpoint.app import create_app

GOOD = {"lengths": ["30 5/8 in"]}
MEMBERS = {"type", "title", "status", "detail", "instance", "errors", "request_id"}


def assert_problem(answer: httpx.Response, status: int, slug: str) -> dict:
    assert answer.status_code == status, answer.text
    assert answer.headers["content-type"] == "application/problem+json"
    problem = answer.json()
    assert set(problem) == MEMBERS
    assert problem["type"] == f"/problems/{slug}"
    assert problem["status"] == status
    assert problem["title"] == Problem.kinds[slug].title
    assert problem["request_id"] == answer.headers["x-request-id"]
    return problem


async def test_an_unknown_address_is_a_problem(client):
    problem = assert_problem(await client.get("/v1/nothing%20here?x=1"), 404, "not-found")
    assert problem["instance"] == "/v1/nothing%20here"


@pytest.mark.parametrize("method", ["GET", "HEAD", "PUT", "DELETE", "PATCH"])
async def test_a_method_that_does_not_work_says_which_do(client, method):
    answer = await client.request(method, "/v1/lengths")
    assert answer.status_code == 405
    assert answer.headers["allow"] == "OPTIONS, POST"
    if method != "HEAD":
        assert_problem(answer, 405, "method-not-allowed")


async def test_allow_lists_head_where_get_works(client):
    assert (await client.post("/health/live")).headers["allow"] == "GET, HEAD, OPTIONS"
    assert (await client.options("/health/live")).headers["allow"] == "GET, HEAD, OPTIONS"


async def test_an_unknown_query_parameter_is_refused(client):
    problem = assert_problem(await client.post("/v1/lengths?unti=mm&x", json=GOOD), 422, "invalid-request")
    assert [(fault["code"], fault["parameter"]) for fault in problem["errors"]] == [
        ("unknown-parameter", "unti"),
        ("unknown-parameter", "x"),
    ]


@pytest.mark.parametrize("kind", list(Problem.kinds.values()), ids=list(Problem.kinds))
async def test_the_type_of_every_problem_leads_to_a_page(client, kind):
    page = await client.get(kind.type_uri())
    assert page.status_code == 200
    assert page.headers["content-type"] == "text/html; charset=utf-8"
    assert kind.title in page.text.replace("&#x27;", "'")
    assert kind.advice
    assert kind.type_uri() in (await client.get("/problems")).text


async def test_an_unknown_kind_of_problem_has_no_page(client):
    assert_problem(await client.get("/problems/no-such-kind"), 404, "not-found")


@get("/broken", include_in_schema=False)
async def broken() -> None:
    raise RuntimeError("the inside of the service")


@get("/refused", include_in_schema=False)
async def refused() -> None:
    raise ClientException("Not like this.", status_code=409)


@get("/failed", include_in_schema=False)
async def failed() -> None:
    raise InternalServerException("the inside of the service")


@get("/counted", include_in_schema=False)
async def counted(limit: FromQuery[int]) -> str:
    return str(limit)


@pytest.fixture
async def extended():
    """The service with some handlers that misbehave."""
    app = create_app()
    for handler in (broken, refused, failed, counted):
        app.register(handler)
    async with httpx.AsyncClient(
        transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
    ) as caller:
        yield caller


@pytest.mark.parametrize("path", ["/broken", "/failed"])
async def test_a_failure_is_logged_and_tells_nothing_of_the_inside(extended, caplog, path):
    with caplog.at_level(logging.ERROR, logger="longpoint.errors"):
        problem = assert_problem(await extended.get(path), 500, "internal-error")
    assert "inside of the service" not in problem["detail"]
    (record,) = caplog.records
    assert problem["request_id"] in record.getMessage()
    assert "the inside of the service" in str(record.exc_info[1])


async def test_any_other_refusal_of_the_framework_is_a_problem_too(extended):
    answer = await extended.get("/refused")
    assert answer.headers["content-type"] == "application/problem+json"
    assert answer.json()["detail"] == "Not like this."


@pytest.mark.parametrize("query", ["limit=many", "", "limit=1&limits=2"])
async def test_a_wrong_parameter_is_named(extended, query):
    problem = assert_problem(await extended.get(f"/counted?{query}"), 422, "invalid-request")
    assert problem["errors"][0]["parameter"] in ("limit", "limits")


async def test_a_right_parameter_is_taken(extended):
    assert (await extended.get("/counted?limit=3")).text == "3"


async def test_kinds_of_problem_have_one_meaning_each():
    with pytest.raises(TypeError, match="not-found"):

        class Other(Problem, status=404, title="Another", slug="not-found"):
            """None."""
