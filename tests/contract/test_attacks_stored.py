"""What an attacker tried by hand on what is stored: another's things, retries, races, keys, origins and the log."""

import json
import logging
from collections.abc import AsyncIterator
from urllib.parse import quote

import httpx
import pytest

from longpoint.app import create_app
from longpoint.log import JsonFormatter
from longpoint.settings import Settings

FORGED = '"}\n{"level":"error"}\r\x1b[2J\x7f\x85\x9b31m\u2028\u202e\u2066'
"""What ends a text, an object or a line, and what a terminal obeys."""


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
