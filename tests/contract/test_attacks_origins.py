"""What pages of other origins tried by hand."""

from collections.abc import AsyncIterator

import httpx
import pytest

from longpoint.app import create_app
from longpoint.settings import Settings
from stored import made, opening

pytestmark = pytest.mark.usefixtures("sound")


class TestOrigins:
    """Which pages may call from a browser: the listed, to the letter."""

    LISTED = ("https://trim.example", "http://localhost:5173", "https://Yard.example")
    NOT_LISTED = (
        "null",
        "",
        "*",
        "https://trim.example.evil.example",
        "https://trim.examples",
        "https://trimxexample",
        "https://sub.trim.example",
        "https://trim.example:443",
        "https://trim.example/",
        "https://trim.example@evil.example",
        "https://trim.example, https://evil.example",
        "https://trim.example|http://localhost:5173",
        "HTTPS://TRIM.EXAMPLE",
        "http://trim.example",
        "http://localhost",
        "http://localhost:51730",
    )

    @pytest.fixture
    async def listed(self, sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
        app = create_app(Settings(access_log=False, database=sqlite_database, cors_origins=self.LISTED))
        async with httpx.AsyncClient(
            transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
        ) as caller:
            yield caller
        await app.state.access.close()
        await app.state.store.close()

    async def test_no_other_may(self, listed: httpx.AsyncClient) -> None:
        for origin in self.NOT_LISTED:
            for method in ("GET", "POST", "PUT", "DELETE", "PATCH", "get", "TRACE", "x" * 1000):
                asked = await listed.options(
                    "/v1/schedules", headers={"origin": origin, "access-control-request-method": method}
                )
                assert not [name for name in asked.headers if name.startswith("access-control-allow")], origin
            answer = await listed.get("/v1/schedules", headers={"origin": origin})
            assert answer.status_code == 200
            assert not [name for name in answer.headers if name.startswith("access-control")], origin
        both = [("origin", "https://trim.example"), ("origin", "https://evil.example")]
        assert "access-control-allow-origin" not in (await listed.get("/v1/schedules", headers=both)).headers

    async def test_a_listed_one_may_do_what_there_is_to_do(self, listed: httpx.AsyncClient) -> None:
        for origin in (one.lower() for one in self.LISTED):
            for path in ("/v1/schedules", "/v1/lengths", "/v1/nowhere"):
                asked = await listed.options(
                    path, headers={"origin": origin, "access-control-request-method": "DELETE"}
                )
                assert asked.status_code == 204
                assert asked.headers["access-control-allow-origin"] == origin
                assert asked.headers["access-control-allow-methods"] == "DELETE, GET, POST, PUT"
                assert "access-control-allow-credentials" not in asked.headers
            plain = await listed.options("/v1/schedules", headers={"origin": origin})
            assert "GET" in plain.headers["allow"], "no preflight: a question for the methods"

    async def test_every_answer_says_what_it_depends_on(self, listed: httpx.AsyncClient) -> None:
        """Accept was lost where Origin came; a cache could give a page in one format to who asked for another."""
        where = (await made(listed, openings=[opening("K1")])).headers["location"]
        await listed.post(f"{where}/plans", json={})
        for origin in ("https://trim.example", "https://evil.example", None):
            headers = {"origin": origin} if origin else {}
            for rest in ("", "/cut-list", "/sheets/stick-sheet", "/openings/K1/drawing", "/export"):
                answer = await listed.get(where + rest, headers=headers)
                assert set(answer.headers["vary"].split(", ")) == {"accept", "origin"}, rest
                told = await listed.get(
                    where + rest, headers={**headers, "if-none-match": answer.headers["etag"]}
                )
                assert told.status_code == 304
                assert set(told.headers["vary"].split(", ")) == {"accept", "origin"}, rest

    async def test_a_listed_page_hears_why_it_was_turned_away(self, listed: httpx.AsyncClient) -> None:
        late = {"origin": "https://trim.example", "x-request-start": "t=1000000000.000"}
        for answer, status in (
            (await listed.get("/v1/schedules", headers=late), 503),
            (await listed.get("/v1/nowhere", headers={"origin": "https://trim.example"}), 404),
            (await listed.put("/v1/lengths", headers={"origin": "https://trim.example"}), 405),
        ):
            assert answer.status_code == status
            assert answer.headers["access-control-allow-origin"] == "https://trim.example"
            assert "Retry-After" in answer.headers["access-control-expose-headers"]
