"""What an attacker tried by hand to write into records and into the log."""

import json
import logging
import re
from collections.abc import AsyncIterator
from urllib.parse import quote

import httpx
import pytest

from accounts import FOUND, Pair
from longpoint.app import create_app
from longpoint.log import JsonFormatter
from longpoint.settings import Settings
from stored import TRIM, house, made, opening

pytestmark = pytest.mark.usefixtures("sound")


FORGED = '"}\n{"level":"error"}\r\x1b[2J\x7f\x85\x9b31m\u2028\u202e\u2066'
"""What ends a text, an object or a line, and what a terminal obeys."""


class TestRecords:
    """What is written into a record stays in its field."""

    async def test_a_reason_and_a_note_forge_no_other_record(self, pair: Pair) -> None:
        """They may have any character but NUL; they come back as they were sent, in one revision each."""
        where = (await made(pair.ann)).headers["location"]
        text = FORGED + '", "who": "bob", "number": 99'
        added = await pair.ann.post(
            f"{where}/lengths", json={**FOUND, "note": text}, params={"why": text}, headers={"if-match": "*"}
        )
        assert added.status_code == 201, added.text
        assert added.json()["note"] == text
        latest, first = (await pair.ann.get(f"{where}/revisions")).json()["items"]
        assert (latest["number"], latest["who"], latest["why"]) == (2, "key", text)
        assert (first["number"], first["why"]) == (1, "")
        assert (await pair.ann.get(f"{where}/export")).json()["lengths"][0]["note"] == text

    async def test_a_mark_and_a_name_are_one_line(self, pair: Pair) -> None:
        where = (await made(pair.ann)).headers["location"]
        for mark in ("K1\nK2", "K1\r", "K1\x00", "\x1b[2JK1", "K1\x7f", "K1\t", " K1"):
            for answer in (
                await pair.ann.post(f"{where}/openings", json=opening(mark)),
                await pair.ann.post(f"{where}/import", json={"openings": [opening(mark)]}),
                await pair.ann.post("/v1/schedules", json=house(name=mark)),
                await pair.ann.post("/v1/schedules", json=house(trim_specs={mark: TRIM})),
            ):
                assert answer.status_code == 422, (mark, answer.text)

    async def test_a_mark_and_a_filter_forge_no_field_of_an_answer(self, pair: Pair) -> None:
        """File names and links to the next page are made from what was sent."""
        mark = 'K1"; filename="x.exe>; rel="next", <//evil.example\x85\u2028é'
        sent = {"name": mark, "trim_specs": {mark: TRIM}, "openings": [opening(mark, trim=mark, room=mark)]}
        where = (await made(pair.ann, **sent)).headers["location"]
        await pair.ann.post(f"{where}/openings", json=opening("K2", trim=mark, room=mark))
        page = await pair.ann.get(f"{where}/openings", params={"room": mark, "limit": 1})
        assert page.links["next"]["url"].startswith(f"{where}/openings?room=")
        assert page.headers["link"].count("<") == page.headers["link"].count(">") == 1
        following = await pair.ann.get(page.links["next"]["url"])
        assert [one["mark"] for one in following.json()["items"]] == ["K2"]
        id = page.json()["items"][0]["id"]
        for rest in ("/sheets/stick-sheet?format=csv", f"/openings/{id}/drawing"):
            name = (await pair.ann.get(where + rest)).headers["content-disposition"]
            assert re.fullmatch(r'(inline|attachment); filename="[a-z0-9-]+\.(csv|svg)"', name), name


class TestTheLog:
    """One request is one line, and a terminal that shows it does nothing else."""

    @pytest.fixture
    async def logged(self, sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
        app = create_app(Settings(access_log=True, database=sqlite_database))
        async with httpx.AsyncClient(
            transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
        ) as caller:
            yield caller
            app.asgi_handler.log.flush()
        await app.state.access.close()
        await app.state.store.close()

    async def test_an_address_forges_no_line(
        self, logged: httpx.AsyncClient, caplog: pytest.LogCaptureFixture
    ) -> None:
        with caplog.at_level(logging.INFO, logger="longpoint"):
            for path in ("/v1/nowhere", "/v1/schedules", "/docs/assets"):
                assert (await logged.get(f"{path}/{quote(FORGED, safe='')}")).status_code == 404
            logged._transport.app.asgi_handler.log.flush()
        lines = caplog.messages[-1].splitlines()
        assert len(lines) == 3
        assert all(line.isprintable() for line in lines)
        assert {json.loads(line)["path"].rpartition("/")[2] for line in lines} == {FORGED}

    @pytest.mark.parametrize("text", [FORGED, "half a character: \ud800"])
    def test_a_failure_that_repeats_what_was_sent_forges_no_line(self, text: str) -> None:
        try:
            raise ValueError(text)
        except ValueError as failure:
            info = (type(failure), failure, failure.__traceback__)
        record = logging.LogRecord("longpoint.errors", logging.ERROR, "", 0, "no %s", (text,), info)
        line = JsonFormatter().format(record)
        assert line.isprintable()
        assert json.loads(line)["message"] == f"no {text}"
        assert text in json.loads(line)["trace"]

    def test_letters_stay_readable(self) -> None:
        record = logging.LogRecord("longpoint", logging.INFO, "", 0, "Fenêtre 3″", (), None)
        assert "Fenêtre 3″" in JsonFormatter().format(record)
