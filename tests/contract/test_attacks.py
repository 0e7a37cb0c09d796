"""What an attacker tried by hand, beyond what the document describes; deploy/SECURITY.md has the rest in a table."""

import asyncio
import csv
import io
import struct
from collections.abc import AsyncIterator
from time import perf_counter
from typing import Any
from xml.etree import ElementTree

import httpx
import msgspec
import pytest

from calls import body_of
from longpoint.api.http.body import refuse_keys_twice
from longpoint.api.http.problems import MalformedBody
from stored import TRIM, house, made, opening, serving

CSV = {"content-type": "text/csv"}
PACKED = {"content-type": "application/msgpack"}
pack = msgspec.msgpack.encode
TURNED = "K1\u202e \u20661 in"
FORMULA = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")


@pytest.fixture
async def service(database: str) -> AsyncIterator[httpx.AsyncClient]:
    async with serving(database) as caller:
        yield caller


@pytest.fixture
async def sqlite_service(sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
    async with serving(sqlite_database) as caller:
        yield caller


def packed_map(entries: list[tuple[Any, Any]], head: bytes = b"") -> bytes:
    """A MessagePack map with its keys in this order, however often each comes."""
    head = head or bytes([0x80 | len(entries)])
    return head + b"".join(pack(key) + pack(value) for key, value in entries)


class TestAddresses:
    @pytest.mark.parametrize(
        "name",
        ["%00", "a" * 5000, "x/" * 3000, "..%2f..%2fdocs.py", "%2e%2e/%2e%2e/docs.py", "%2fetc%2fpasswd"],
    )
    async def test_a_file_of_an_impossible_name_is_not_there(
        self, client: httpx.AsyncClient, name: str
    ) -> None:
        answer = await client.get(f"/docs/assets/{name}")
        assert answer.status_code == 404
        assert answer.headers["content-type"] == "application/problem+json"

    async def test_a_cursor_made_up_gives_a_page_or_a_refusal(self, service: httpx.AsyncClient) -> None:
        """The greatest numbers are no fault of the database's."""
        where = (await made(service, openings=[opening("K1")])).headers["location"]
        for cursor in ("YXQ6OTk5OTk5OTk5OTk5OTk5", "YXQ6MDE", "YXQ6Z3p6eg"):
            for things in ("openings", "revisions", "lengths", "work"):
                answer = await service.get(f"{where}/{things}", params={"cursor": cursor})
                assert answer.status_code in (200, 422), (things, cursor, answer.text)


class TestFields:
    async def test_a_field_on_two_lines_is_one_list(self, sqlite_service: httpx.AsyncClient) -> None:
        """RFC 9110, section 5.3; the last line does not win."""
        answer = await made(sqlite_service)
        where, tag = answer.headers["location"], answer.headers["etag"]
        twice = [("if-none-match", tag), ("if-none-match", '"another"')]
        assert (await sqlite_service.get(where, headers=twice)).status_code == 304
        no_list = [("accept", "application/json"), ("accept", "text/nothing")]
        assert (await sqlite_service.get(where, headers=no_list)).status_code == 200

    async def test_what_is_no_list_may_not_come_twice(self, sqlite_service: httpx.AsyncClient) -> None:
        headers = [("content-type", "application/json"), ("content-type", "application/msgpack")]
        answer = await sqlite_service.post("/v1/lengths", content=b"{}", headers=headers)
        assert answer.status_code == 415
        keys = [("idempotency-key", "one two"), ("idempotency-key", "three")]
        assert (await sqlite_service.post("/v1/schedules", json=house(), headers=keys)).status_code == 400


class TestPacked:
    async def test_a_key_given_twice_is_refused_as_in_json(self, client: httpx.AsyncClient) -> None:
        body = list(body_of("compute_stool").items())
        for entries in ([*body, ("jamb_width", "1 in")], [("jamb_width", "1 in"), *body]):
            answer = await client.post("/v1/stool", content=packed_map(entries), headers=PACKED)
            assert answer.status_code == 400
            assert '"jamb_width" twice' in answer.json()["detail"]

    async def test_other_forms_of_the_same_body_are_read(self, client: httpx.AsyncClient) -> None:
        entries = list(body_of("compute_stool").items())
        long_form = packed_map(entries, b"\xdf" + struct.pack(">I", len(entries)))
        answer = await client.post("/v1/stool", content=long_form, headers=PACKED)
        assert answer.status_code == 200, answer.text

    def test_a_key_is_found_wherever_and_however_it_stands(self) -> None:
        every = [
            None,
            True,
            -1,
            -(2**40),
            300,
            2**63,
            1.5,
            b"x" * 300,
            "y" * 70_000,
            ["z"] * 20,
            {"a": {"a": 1}},
        ]
        whole = {str(place): value for place, value in enumerate(every)}
        refuse_keys_twice(pack(whole), "msgpack")
        inner = packed_map([("a", 1), ("a", 2)])
        two_forms_of_one_text = b"\x82\xa1a\x01\xd9\x01a\x02"
        for body in (b"\x92" + pack(whole) + b"\x81\xa1b" + inner, two_forms_of_one_text):
            with pytest.raises(MalformedBody, match='"a"'):
                refuse_keys_twice(body, "msgpack")

    @pytest.mark.parametrize("number", [float("nan"), float("inf"), -float("inf"), 1e308, -1e308, 2**64 - 1])
    async def test_no_number_is_beyond_all_bounds(self, client: httpx.AsyncClient, number: float) -> None:
        """JSON has no NaN to refuse, MessagePack does."""
        body = body_of("compute_movement")
        for place in ("temperature", "relative_humidity"):
            sent = {**body, "installed": {**body["installed"], place: number}}
            answer = await client.post("/v1/movement", content=pack(sent), headers=PACKED)
            assert answer.status_code == 422, place


class TestFiles:
    @pytest.mark.parametrize(
        "file",
        [
            ",".join(f"jamb widht{number}" for number in range(100_000)) + "\nK1",
            "mark,trim,jamb width\n" + "K,painted,x\n" * 400_000,
            "mark,trim,jamb width\n" + "," * 4_000_000,
        ],
        ids=["columns", "bad rows", "cells"],
    )
    async def test_a_file_made_to_take_long_is_refused_soon(
        self, sqlite_service: httpx.AsyncClient, file: str
    ) -> None:
        """The first took sixteen seconds, in which nobody else was answered."""
        where = (await made(sqlite_service)).headers["location"]
        began, waits = perf_counter(), []
        sent = asyncio.create_task(sqlite_service.post(f"{where}/import", content=file.encode(), headers=CSV))
        while not sent.done():
            before = perf_counter()
            await asyncio.sleep(0.01)
            waits.append(perf_counter() - before)
        assert (await sent).status_code in (400, 422)
        assert perf_counter() - began < 8
        assert max(waits) < 1, "others are answered meanwhile"

    @pytest.mark.parametrize("mark", ["=1+1", "'=1+1", "''@x", "＝1+1", "-", "'quoted'", "it's", "'"])
    async def test_an_export_holds_no_formula_and_comes_back(
        self, sqlite_service: httpx.AsyncClient, mark: str
    ) -> None:
        sent = house(trim_specs={mark: TRIM}, openings=[opening(mark, trim=mark, room=mark)])
        where = (await made(sqlite_service, **sent)).headers["location"]
        text = (await sqlite_service.get(f"{where}/export", headers={"accept": "text/csv"})).text
        cells = [cell for row in csv.reader(io.StringIO(text)) for cell in row]
        assert not [cell for cell in cells if cell.startswith(FORMULA)]
        fresh = (await made(sqlite_service, trim_specs={mark: TRIM})).headers["location"]
        brought = await sqlite_service.post(f"{fresh}/import", content=text.encode(), headers=CSV)
        assert brought.status_code == 200, brought.text
        (back,) = (await sqlite_service.get(f"{fresh}/export")).json()["openings"]
        assert (back["mark"], back["room"], back["trim"]) == (mark, mark, mark)


class TestMarks:
    async def test_no_mark_turns_the_figures_after_it_around(self, client: httpx.AsyncClient) -> None:
        """37 1/2 must not read 2/1 73 on a sheet or a drawing."""
        body = {"unit": "in", "trim_specs": {"painted": TRIM}, "openings": [opening(TURNED)]}
        for sheet in ("opening-sheet", "labels", "measure-sheet"):
            page = await client.post(f"/v1/sheets/{sheet}", json=body, headers={"accept": "text/html"})
            assert page.status_code == 200, page.text
            assert "K1 1 in" in page.text
            assert not {"\u202e", "\u2066"} & set(page.text)
        one = {"mark": TURNED, "trim": TRIM, "readings": opening("")["readings"], "unit": "in"}
        for drawing in ("elevation", "section"):
            svg = await client.post(
                "/v1/opening", json=one, params={"drawing": drawing}, headers={"accept": "image/svg+xml"}
            )
            assert svg.status_code == 200, svg.text
            title = ElementTree.fromstring(svg.text).findtext("{http://www.w3.org/2000/svg}title") or ""
            assert "K1 1 in" in title
            assert not {"\u202e", "\u2066"} & set(svg.text)
