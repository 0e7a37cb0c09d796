"""How often a caller may ask, how much is taken on at once, and how long a body may take."""

import asyncio
import itertools
import re
import time
from time import perf_counter

import httpx
import pytest

from longpoint.api.http.gate import ARRIVED, Gate
from longpoint.app import create_app
from longpoint.settings import Settings, SettingsError

ASK = {"lengths": ["30 5/8 in"]}


def calling(app, **further):
    transport = httpx.ASGITransport(app=app, **further)
    return httpx.AsyncClient(transport=transport, base_url="http://longpoint")


async def test_every_answer_says_how_many_requests_are_left():
    async with calling(create_app(Settings(access_log=False, rate_limit=3, rate_seconds=60))) as client:
        answers = [await client.post("/v1/lengths", json=ASK) for _ in range(4)]
        health = await client.get("/health/live")
    assert [answer.status_code for answer in answers] == [200, 200, 200, 429]
    assert {answer.headers["ratelimit-policy"] for answer in answers} == {'"caller";q=3;w=60'}
    fields = [re.fullmatch(r'"caller";r=(\d+);t=(\d+)', answer.headers["ratelimit"]) for answer in answers]
    assert [int(field[1]) for field in fields] == [2, 1, 0, 0]
    assert all(0 < int(field[2]) <= 60 for field in fields)
    refused = answers[-1]
    assert 0 < int(refused.headers["retry-after"]) <= 60
    assert refused.json()["type"] == "/problems/rate-exceeded"
    assert health.status_code == 200
    assert "ratelimit" not in health.headers


async def test_a_new_window_begins_when_the_last_is_over(monkeypatch):
    now = [100.0]
    monkeypatch.setattr("longpoint.api.http.limits.monotonic", lambda: now[0])
    async with calling(create_app(Settings(access_log=False, rate_limit=1, rate_seconds=10))) as client:
        assert (await client.post("/v1/lengths", json=ASK)).status_code == 200
        assert (await client.post("/v1/lengths", json=ASK)).status_code == 429
        now[0] += 10
        assert (await client.post("/v1/lengths", json=ASK)).status_code == 200


async def test_one_address_does_not_use_up_what_another_has():
    app = create_app(Settings(access_log=False, rate_limit=1))
    for address in ("127.0.0.1", "127.0.0.2"):
        async with calling(app, client=(address, 1234)) as client:
            assert (await client.post("/v1/lengths", json=ASK)).status_code == 200


async def test_without_a_limit_nothing_is_said_of_one(client):
    assert "ratelimit" not in (await client.post("/v1/lengths", json=ASK)).headers


async def test_more_at_once_than_may_be_is_turned_away_and_the_rest_is_answered():
    """The gate around an application that answers when it is told to."""
    go = asyncio.Event()
    app = create_app(Settings(access_log=False, max_in_progress=2))

    async def held(_scope, _receive, send):
        await go.wait()
        await send({"type": "http.response.start", "status": 200, "headers": []})
        await send({"type": "http.response.body", "body": b"", "more_body": False})

    app.asgi_handler.app.app = held
    async with calling(app) as client:
        let_in = [asyncio.create_task(client.get("/slow")) for _ in range(2)]
        while app.asgi_handler.app.under_way < 2:
            await asyncio.sleep(0)
        refused = await client.get("/slow")
        go.set()
        answered = [(await each).status_code for each in let_in]
        after = await client.get("/slow")
    assert refused.status_code == 503
    assert refused.json()["type"] == "/problems/overloaded"
    assert refused.headers["retry-after"] == "1"
    assert refused.headers["x-content-type-options"] == "nosniff"
    assert answered == [200, 200]
    assert after.status_code == 200


@pytest.mark.parametrize(("ago", "status"), [(0.0, 200), (0.4, 200), (0.6, 503)])
async def test_what_waited_too_long_is_turned_away(ago, status):
    statuses = []

    async def answer(_scope, _receive, send):
        await send({"type": "http.response.start", "status": 200, "headers": []})

    async def sent(message):
        if message["type"] == "http.response.start":
            statuses.append(message["status"])

    gate = Gate(answer, most=10, wait=0.5)
    state = {ARRIVED: perf_counter() - ago, "request_id": "a-request"}
    await gate({"type": "http", "path": "/v1/lengths", "state": state}, None, sent)
    assert statuses == [status]
    assert gate.turned_away["waiting"] == (status == 503)
    assert gate.under_way == 0


@pytest.mark.parametrize(("ago", "status"), [(0.4, 200), (0.6, 503), (-5.0, 200)])
async def test_the_proxy_knows_better_how_long_it_waited(ago, status):
    app = create_app(Settings(access_log=False, max_wait_seconds=0.5))
    async with calling(app) as client:
        passed_on = {"x-request-start": f"t={time.time() - ago:.3f}"}
        assert (await client.post("/v1/lengths", json=ASK, headers=passed_on)).status_code == status
        for nonsense in ("t=1", "0", "t=17e8", ""):
            odd = {"x-request-start": nonsense}
            assert (await client.post("/v1/lengths", json=ASK, headers=odd)).status_code == 200


def hold_the_loop(seconds):
    ends = perf_counter() + seconds
    while perf_counter() < ends:
        pass


def asking(path, gate, statuses):
    """A request of a gate, whose status is noted."""

    async def sent(message):
        if message["type"] == "http.response.start":
            statuses.append(message["status"])

    state = {ARRIVED: perf_counter(), "request_id": "a-request"}
    return asyncio.create_task(gate({"type": "http", "path": path, "state": state}, None, sent))


def working(seconds, done):
    """An application: at /waits it needs the event loop again and again until told, else it holds it for a time."""
    told = asyncio.Event()
    seen = []

    async def answer(scope, _receive, send):
        if scope["path"] == "/waits":
            while not told.is_set():
                await asyncio.sleep(0)
                seen.append(len(done))
        else:
            hold_the_loop(seconds)
            done.append(scope["path"])
        await send({"type": "http.response.start", "status": 200, "headers": []})

    return answer, told, seen


async def test_what_waits_for_something_is_not_kept_waiting_by_all_that_came_meanwhile():
    """Thirty requests come at once, each holding the loop for three milliseconds: turns of the loop stay short."""
    done, statuses = [], []
    answer, told, seen = working(0.003, done)
    gate = Gate(answer, most=100, wait=10)
    waiting = asking("/waits", gate, statuses)
    await asyncio.sleep(0)
    computing = [asking("/v1/lengths", gate, statuses) for _ in range(30)]
    await asyncio.gather(*computing)
    told.set()
    await waiting
    assert max(later - before for before, later in itertools.pairwise([0, *seen])) <= 2
    assert statuses == [200] * 31
    assert gate.under_way == 0


async def test_where_nobody_waits_they_go_in_at_once():
    done, statuses = [], []
    gate = Gate(working(0.003, done)[0], most=100, wait=10)
    computing = [asking("/v1/lengths", gate, statuses) for _ in range(30)]
    await asyncio.sleep(0)
    assert len(done) == 30
    await asyncio.gather(*computing)


async def test_what_waits_in_line_too_long_is_turned_away_and_whoever_left_is_passed_over():
    done, statuses = [], []
    answer, told, _ = working(0.01, done)
    gate = Gate(answer, most=100, wait=0.045)
    waiting = asking("/waits", gate, statuses)
    await asyncio.sleep(0)
    asked = [asking("/v1/lengths", gate, statuses) for _ in range(20)]
    await asyncio.sleep(0)
    asked[3].cancel()
    await asyncio.gather(*asked, return_exceptions=True)
    assert 1 <= statuses.count(200) == len(done) <= 5
    assert statuses.count(503) == gate.turned_away["waiting"] == 19 - len(done)
    told.set()
    await waiting
    assert gate.under_way == 0
    await asking("/v1/lengths", gate, statuses)
    assert statuses[-1] == 200


async def test_health_is_told_however_much_there_is_to_do():
    app = create_app(Settings(access_log=False, max_in_progress=1))
    app.asgi_handler.app.under_way = 1
    async with calling(app) as client:
        assert (await client.get("/health/live")).status_code == 200
        assert (await client.post("/v1/lengths", json=ASK)).status_code == 503


async def test_a_body_that_does_not_come_is_not_waited_for():
    app = create_app(Settings(access_log=False, body_seconds=0.05))

    sent = []

    async def receive():
        return await anext(pieces)

    async def pieces_of_it():
        yield {"type": "http.request", "body": b'{"lengths": [', "more_body": True}
        await asyncio.Event().wait()

    async def send(message):
        sent.append(message)

    pieces = pieces_of_it()
    scope = {
        "type": "http",
        "method": "POST",
        "path": "/v1/lengths",
        "raw_path": b"/v1/lengths",
        "query_string": b"",
        "headers": [(b"content-type", b"application/json")],
        "client": ("127.0.0.1", 1),
        "server": ("longpoint", 80),
        "scheme": "http",
        "http_version": "1.1",
        "root_path": "",
    }
    await app(scope, receive, send)
    assert sent[0]["status"] == 408
    assert b"/problems/body-too-slow" in sent[1]["body"]


class TestPagesOfOtherOrigins:
    """Which pages may call from a browser."""

    @pytest.fixture
    async def listed(self):
        app = create_app(Settings(access_log=False, cors_origins=("https://trim.example",)))
        async with calling(app) as client:
            yield client

    async def test_a_listed_one_may(self, listed):
        asked = await listed.options(
            "/v1/lengths",
            headers={
                "origin": "https://trim.example",
                "access-control-request-method": "POST",
                "access-control-request-headers": "content-type,authorization",
            },
        )
        assert asked.status_code in (200, 204)
        assert asked.headers["access-control-allow-origin"] == "https://trim.example"
        assert "POST" in asked.headers["access-control-allow-methods"]
        assert "authorization" in asked.headers["access-control-allow-headers"].lower()
        assert "access-control-allow-credentials" not in asked.headers
        answer = await listed.post("/v1/lengths", json=ASK, headers={"origin": "https://trim.example"})
        assert answer.status_code == 200
        assert answer.headers["access-control-allow-origin"] == "https://trim.example"
        assert "etag" in answer.headers["access-control-expose-headers"].lower()
        refused = await listed.post("/v1/lengths", json={}, headers={"origin": "https://trim.example"})
        assert refused.status_code == 422
        assert refused.headers["access-control-allow-origin"] == "https://trim.example"

    async def test_another_may_not(self, listed):
        asked = await listed.options(
            "/v1/lengths",
            headers={"origin": "https://elsewhere.example", "access-control-request-method": "POST"},
        )
        assert "access-control-allow-origin" not in asked.headers
        answer = await listed.post("/v1/lengths", json=ASK, headers={"origin": "https://elsewhere.example"})
        assert "access-control-allow-origin" not in answer.headers

    async def test_none_may_by_default(self, client):
        answer = await client.post("/v1/lengths", json=ASK, headers={"origin": "https://trim.example"})
        assert "access-control-allow-origin" not in answer.headers

    @pytest.mark.parametrize("origin", ["*", "https://trim.example/", "trim.example", "null"])
    def test_only_origins_can_be_listed(self, origin):
        with pytest.raises(SettingsError):
            Settings.from_environment({"LONGPOINT_CORS_ORIGINS": f"https://a.example, {origin}"})
