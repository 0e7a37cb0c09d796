"""Request ids, protective headers, HEAD and the log."""

import json
import logging

import httpx
import pytest

from longpoint.app import create_app
from longpoint.settings import Settings


async def test_every_answer_has_an_id_of_its_own(client):
    paths = ["/health/live", "/health/live", "/nothing", "/docs"]
    ids = [(await client.get(path)).headers["x-request-id"] for path in paths]
    assert len(set(ids)) == len(ids)


async def test_an_id_that_was_sent_comes_back(client):
    answer = await client.get("/nothing", headers={"x-request-id": "bench-2.saw_14"})
    assert answer.headers["x-request-id"] == "bench-2.saw_14"
    assert answer.json()["request_id"] == "bench-2.saw_14"


@pytest.mark.parametrize("sent", ["short", "x" * 65, "two words", 'quote"quote'])
async def test_an_id_that_is_not_sane_is_replaced(client, sent):
    answer = await client.get("/health/live", headers={"x-request-id": sent})
    assert answer.headers["x-request-id"] != sent


@pytest.mark.parametrize(
    "path", ["/health/live", "/nothing", "/docs", "/openapi.json", "/docs/assets/page.css"]
)
async def test_every_answer_is_protected(client, path):
    headers = (await client.get(path)).headers
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["referrer-policy"] == "no-referrer"
    assert "frame-ancestors 'none'" in headers["content-security-policy"]
    assert len(headers.get_list("content-security-policy")) == 1
    assert len(headers.get_list("cache-control")) == 1


async def test_an_answer_is_not_stored_unless_it_says_so(client):
    assert (await client.get("/health/live")).headers["cache-control"] == "no-store"


@pytest.mark.parametrize(
    "path", ["/health/live", "/docs", "/openapi.json", "/problems", "/docs/assets/mark.svg"]
)
async def test_head_says_what_get_would(client, path):
    head, got = await client.head(path), await client.get(path)
    assert head.status_code == got.status_code == 200
    assert head.content == b""
    assert head.headers["content-length"] == got.headers["content-length"]
    assert head.headers["content-type"] == got.headers["content-type"]


async def test_each_request_is_logged_as_json_without_its_body_or_query(caplog):
    app = create_app(Settings(access_log=True))
    transport = httpx.ASGITransport(app=app)
    with caplog.at_level(logging.INFO, logger="longpoint.access"):
        async with httpx.AsyncClient(transport=transport, base_url="http://longpoint") as client:
            answers = [
                await client.post("/v1/lengths?secret=1", json={"lengths": ["30 5/8 in"]}),
                await client.head("/health/live"),
            ]
        async with app.lifespan():
            pass  # stopping writes what was waiting
    lines = [json.loads(line) for record in caplog.records for line in record.getMessage().splitlines()]
    assert [line["request_id"] for line in lines] == [each.headers["x-request-id"] for each in answers]
    assert [(line["method"], line["path"], line["status"]) for line in lines] == [
        ("POST", "/v1/lengths", 422),
        ("HEAD", "/health/live", 200),
    ]
    assert all(line["ms"] >= 0 and line["time"] and line["level"] == "info" for line in lines)
    assert "secret" not in caplog.text
    assert "30 5/8" not in caplog.text


async def test_nothing_is_logged_when_it_is_turned_off(caplog, client):
    with caplog.at_level(logging.INFO):
        await client.get("/health/live")
    assert not [record for record in caplog.records if record.name == "longpoint.access"]
