"""What an attacker would try, by the OWASP API Security Top 10 of 2023; deploy/SECURITY.md has it in a table."""

import ast
import json
import logging
import re
from pathlib import Path
from typing import Any

import httpx
import pytest
from litestar.routes import HTTPRoute

import longpoint
from calls import DOCUMENT, OPERATIONS, body_of, prepare
from longpoint.api.document.docs import PAGES
from longpoint.app import create_app
from longpoint.settings import Settings
from stored import serving

WITH_BODY = [name for name, (_, _, entry) in OPERATIONS.items() if "requestBody" in entry]
ROOT = Path(__file__).parents[2]


@pytest.fixture
async def service(sqlite_database):
    async with serving(sqlite_database) as caller:
        yield caller


@pytest.mark.parametrize("name", WITH_BODY)
async def test_what_a_caller_may_not_set_is_refused(service, name):
    """API3: whose a thing is, its id, its revision and its times are never taken from a body."""
    call = await prepare(service, name)
    for field in ("id", "account_id", "account", "created_at", "scopes", "key_id", "__proto__"):
        answer = await call._replace(body={**call.body, field: "x"}).send(service)
        assert answer.status_code == 422, field
        assert any(each["pointer"] == f"/{field}" for each in answer.json()["errors"]), field


def test_what_goes_out_tells_nothing_of_keys_or_accounts():
    """API3: no answer has a field of an account, or of a key's secret."""
    names = {
        name for schema in DOCUMENT["components"]["schemas"].values() for name in schema.get("properties", {})
    }
    assert not {name for name in names if re.search(r"account|secret|hash|password|token", name)}


@pytest.mark.parametrize("name", WITH_BODY)
async def test_a_body_that_is_too_long_or_too_deep_is_refused(service, name):
    """API4: before it is worked on, and before it is all in memory where its length is announced."""
    call = await prepare(service, name)
    path, method, headers = call.address, call.method, {**call.headers, "content-type": "application/json"}
    announced = {**headers, "content-length": str(80 * 1024 * 1024)}
    long = await service.request(method, path, content=b"{}", headers=announced)
    assert long.status_code == 413
    deep = await service.request(method, path, content=b"[" * 100_000, headers=headers)
    assert deep.status_code == 400
    nested = b'{"a":' * 50_000 + b"1" + b"}" * 50_000
    assert (await service.request(method, path, content=nested, headers=headers)).status_code == 400


@pytest.mark.parametrize("name", WITH_BODY)
async def test_every_text_and_list_of_a_body_has_its_limit(service, name):
    """API4: each text of the example made too long, and each list made endless, is refused with its place."""
    call = await prepare(service, name)
    for place, value in _places(call.body):
        longer: Any = value * 5000 if isinstance(value, list) else "9" * 100_000
        if not longer:
            continue
        answer = await call._replace(body=_with(call.body, place, longer)).send(service)
        assert answer.status_code in (413, 422), (place, answer.text[:300])
        if answer.status_code == 422:
            assert answer.json()["errors"], place
            assert len(answer.content) < 200_000, f"a refusal of {place} repeats what was sent"


def _places(node: Any, path: tuple[Any, ...] = ()) -> Any:
    """Where the texts and lists of a body are."""
    if isinstance(node, (str, list)) and path:
        yield path, node
    items: Any = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
    for key, inner in items:
        yield from _places(inner, (*path, key))


def _with(node: Any, place: tuple[Any, ...], value: Any) -> Any:
    if not place:
        return value
    copy = node.copy()
    copy[place[0]] = _with(node[place[0]], place[1:], value)
    return copy


async def test_pages_are_bounded(service):
    """API4: no list gives more than it says."""
    for name, (path, _, entry) in OPERATIONS.items():
        for one in entry.get("parameters", []):
            if one["name"] == "limit":
                assert one["schema"]["maximum"] <= 500, name
                call = await prepare(service, name)
                refused = await call._replace(params={"limit": 501}).send(service)
                assert refused.status_code == 422, path


def test_the_service_calls_nobody():
    """API7 and API10: nothing in it opens a connection but the database's driver, so no address sent is ever fetched.

    The one exception is where traces go, which the operator sets.
    """
    calling = {
        "http",
        "httpx",
        "requests",
        "aiohttp",
        "urllib3",
        "ftplib",
        "smtplib",
        "socket",
        "urllib.request",
    }
    for file in Path(longpoint.__file__).parent.rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text())):
            names = (
                [alias.name for alias in node.names]
                if isinstance(node, ast.Import)
                else [f"{node.module}", f"{node.module}".partition(".")[0]]
                if isinstance(node, ast.ImportFrom)
                else []
            )
            assert not calling & set(names), f"{file.name} imports {names}"


def test_no_field_takes_an_address_to_fetch():
    """API7."""
    taken = json.dumps([OPERATIONS[name][2]["requestBody"] for name in WITH_BODY])
    assert '"format": "uri"' not in taken
    for schema in (body_of(name) for name in WITH_BODY):
        assert "http" not in json.dumps(schema)


def test_every_route_is_documented_or_a_page():
    """API9: nothing is served that the document does not list, but the pages that are listed here."""
    routes = {
        (route.path_format, method)
        for route in create_app(Settings(access_log=False)).routes
        if isinstance(route, HTTPRoute)
        for method in route.methods - {"OPTIONS", "HEAD"}
    }
    known = {(path, method.upper()) for path, method, _ in OPERATIONS.values()}
    pages = {path for path, _ in routes - known}
    assert pages == {
        "/",
        "/docs",
        "/docs/assets/{file_path}",
        "/openapi.json",
        "/problems",
        "/problems/{slug}",
    }
    assert len(PAGES) == len(pages)


@pytest.mark.parametrize("method", ["TRACE", "CONNECT", "PATCH", "PROPFIND"])
async def test_a_method_nobody_needs_does_nothing(service, method):
    """API8."""
    answer = await service.request(method, "/v1/lengths")
    assert answer.status_code == 405
    assert "POST" in answer.headers["allow"]


async def test_a_fault_inside_tells_nothing_of_the_inside(service, monkeypatch, caplog):
    """API8: the caller hears an id, the log the rest."""

    def broken(*_: Any) -> Any:
        raise RuntimeError("the inside of it")

    monkeypatch.setattr("longpoint.api.stored.schedules.caller_of", broken)
    with caplog.at_level(logging.ERROR):
        answer = await service.get("/v1/schedules")
    assert answer.status_code == 500
    assert "inside of it" not in answer.text
    assert "Traceback" not in answer.text
    assert answer.json()["request_id"] in caplog.text
    assert "inside of it" in caplog.text


async def test_no_log_line_holds_a_key_a_body_or_a_query(sqlite_database, caplog):
    """API8: not even where something is wrong with them."""
    app = create_app(Settings(access_log=True, database=sqlite_database))
    transport = httpx.ASGITransport(app=app)
    secret = "lp_aaaaaaaaaaaaaaaaaaaaaaaaaa_hushhushhushhushhushhushhush"
    with caplog.at_level(logging.INFO, logger="longpoint"):
        async with httpx.AsyncClient(transport=transport, base_url="http://longpoint") as client:
            bearer = {"authorization": f"Bearer {secret}"}
            await client.post("/v1/lengths", json={"lengths": ["hush"]}, headers=bearer)
            await client.get("/v1/schedules?name=hush&nothing=hush", headers=bearer)
            await client.post("/v1/schedules", json={"name": "hush", "unit": "hush"})
        await app.state.access.close()
        await app.state.store.close()
        app.asgi_handler.log.flush()
    own = [record for record in caplog.records if record.name.startswith("longpoint")]
    lines = [line for record in own for line in record.getMessage().splitlines()]
    requests = [json.loads(line) for line in lines]
    assert [line["status"] for line in requests] == [401, 401, 422]
    assert all(line["request_id"] for line in requests)
    assert "hush" not in "".join(lines)


async def test_a_stolen_address_of_a_page_tells_of_no_other_account(service):
    """API1: a cursor says where a page ended, and never whose list it was."""
    for _ in range(3):
        await prepare(service, "get_schedule")
    page = (await service.get("/v1/schedules", params={"limit": 1})).json()
    assert page["next"]
    following = (await service.get("/v1/schedules", params={"limit": 1, "cursor": page["next"]})).json()
    assert following["items"][0]["id"] != page["items"][0]["id"]


class TestTheTable:
    """deploy/SECURITY.md."""

    text = (ROOT / "deploy/SECURITY.md").read_text()

    def test_it_has_all_ten(self):
        assert re.findall(r"^\| (API\d+):2023 ", self.text, re.MULTILINE) == [f"API{n}" for n in range(1, 11)]

    def test_every_test_it_names_is_there(self):
        named = re.findall(r"`(tests/[\w/]+\.py)(?:::(\w+))?`", self.text)
        assert len(named) > 10
        for file, test in named:
            assert (ROOT / file).exists(), file
            assert not test or re.search(rf"def {test}\(", (ROOT / file).read_text()), f"{file}::{test}"
