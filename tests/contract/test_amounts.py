"""How much one request may be: beyond it the caller hears so before the work, and what to ask for instead."""

import csv
import io
from collections.abc import AsyncIterator
from typing import Any

import httpx
import msgspec
import pytest

from amounts import PIECES, asked, fault_of
from calls import DOCUMENT
from longpoint.sheets import MOST_PRINTED
from longpoint.shop.too_much import MOST_PIECES
from stored import house, made, opening, serving

DRAWN = ("opening-sheet", "stick-sheet", "labels")


@pytest.fixture
async def sqlite_service(sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
    async with serving(sqlite_database) as caller:
        yield caller


def alike(pieces: int) -> list[dict[str, Any]]:
    """Windows that have so many pieces among them, or up to six more."""
    counts = [500] * (pieces // (500 * PIECES))
    left = -(-(pieces - sum(counts) * PIECES) // PIECES)
    return [opening(f"K{n}", count=count) for n, count in enumerate([*counts, left]) if count]


def refusal(answer: httpx.Response) -> dict[str, Any]:
    fault = fault_of(answer)
    assert fault["code"] == "too-many-pieces"
    return fault


def test_the_document_says_how_many() -> None:
    said = DOCUMENT["components"]["schemas"]["CutListRequest"]["description"]
    assert f"{MOST_PIECES:,} pieces" in said
    assert f"{MOST_PRINTED:,}" in said


async def test_so_many_pieces_are_worked_out(client: httpx.AsyncClient) -> None:
    answer = await client.post("/v1/cut-list", json=asked(*alike(MOST_PIECES - PIECES)))
    assert answer.status_code == 200
    made = sum(piece["quantity"] for one in answer.json()["openings"] for piece in one["pieces"])
    assert MOST_PIECES - PIECES <= made <= MOST_PIECES


@pytest.mark.parametrize("path", ["/v1/cut-list", *(f"/v1/sheets/{sheet}" for sheet in DRAWN)])
async def test_more_are_not(client: httpx.AsyncClient, path: str) -> None:
    openings = alike(MOST_PIECES + 1)
    fault = refusal(await client.post(path, json=asked(*openings)))
    assert fault["pointer"] == f"/openings/{len(openings) - 1}/count"
    assert str(MOST_PIECES) in fault["detail"]


async def test_a_stored_house_of_more_says_so(sqlite_service: httpx.AsyncClient) -> None:
    openings = alike(MOST_PIECES + 1)
    refusal(await sqlite_service.post("/v1/schedules", json=house(openings=openings)))
    stored = (await made(sqlite_service, openings=openings[:-1])).json()
    where = f"/v1/schedules/{stored['id']}"
    assert (await sqlite_service.post(f"{where}/openings", json=openings[-1])).status_code == 201
    refusal(await sqlite_service.get(f"{where}/cut-list"))
    refusal(await sqlite_service.get(f"{where}/sheets/material-list"))


@pytest.mark.parametrize("sheet", DRAWN)
@pytest.mark.parametrize("accept", ["text/html", "application/pdf"])
async def test_a_sheet_of_too_many_pieces_is_not_printed(
    client: httpx.AsyncClient, sheet: str, accept: str
) -> None:
    few = [opening(f"K{n}") for n in range(MOST_PRINTED // PIECES + 1)]
    fault = refusal(await client.post(f"/v1/sheets/{sheet}", json=asked(*few), headers={"accept": accept}))
    assert fault["header"] == "accept"
    assert str(MOST_PRINTED) in fault["detail"]


@pytest.mark.parametrize("accept", ["text/html", "application/pdf", "image/svg+xml"])
async def test_a_cut_list_of_too_many_pieces_is_not_printed(client: httpx.AsyncClient, accept: str) -> None:
    body = asked(*alike(MOST_PRINTED + 1))
    refusal(await client.post("/v1/cut-list", json=body, headers={"accept": accept}))


async def test_as_a_table_they_may_all_be_had(client: httpx.AsyncClient) -> None:
    body = asked(*alike(3 * MOST_PRINTED))
    answer = await client.post("/v1/sheets/labels", json=body, headers={"accept": "text/csv"})
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    assert len(rows) >= 3 * MOST_PRINTED
    answer = await client.post("/v1/sheets/labels", json=body, headers={"accept": "application/json"})
    assert len(answer.json()["labels"]) == len(rows)


async def test_openings_alike_take_one_page_together(client: httpx.AsyncClient) -> None:
    answer = await client.post(
        "/v1/sheets/opening-sheet",
        json=asked(opening("K1", count=400)),
        headers={"accept": "text/html"},
    )
    assert answer.status_code == 200


async def test_a_stored_sheet_of_too_many_pieces_is_not_printed(sqlite_service: httpx.AsyncClient) -> None:
    stored = (await made(sqlite_service, openings=alike(MOST_PRINTED + 1))).json()
    where = f"/v1/schedules/{stored['id']}"
    for address in ("sheets/stick-sheet?format=html", "sheets/labels?format=pdf", "drawings/sticks"):
        refusal(await sqlite_service.get(f"{where}/{address}"))
    for address in ("sheets/stick-sheet?format=csv", "sheets/material-list?format=html"):
        assert (await sqlite_service.get(f"{where}/{address}")).status_code == 200


async def test_a_long_stored_cut_list_is_the_same_in_every_encoding(
    sqlite_service: httpx.AsyncClient,
) -> None:
    stored = (await made(sqlite_service, openings=[opening(f"K{n}") for n in range(120)])).json()
    where = f"/v1/schedules/{stored['id']}/cut-list"
    first = await sqlite_service.get(where)
    packed = await sqlite_service.get(where, headers={"accept": "application/msgpack"})
    assert len(first.json()["cut_list"]["openings"]) == 120
    assert msgspec.msgpack.decode(packed.content) == first.json()
    assert (await sqlite_service.get(where)).content == first.content, "as it was kept"
