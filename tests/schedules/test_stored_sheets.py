"""Sheets and drawings of a stored house: every sheet in every format, fresh, private, and of what is still to cut."""

import csv
import io
from typing import Any
from xml.etree import ElementTree

import httpx
import pytest

from longpoint.schedules import keys
from longpoint.schedules.store import Store
from stored import STOCK, house, made, opening, serving

SHEETS = (
    "cut-list",
    "opening-sheet",
    "stick-sheet",
    "material-list",
    "cost-sheet",
    "measure-sheet",
    "labels",
)
STARTS = {
    "application/json": b"{",
    "text/html": b"<!doctype html>",
    "application/pdf": b"%PDF-",
}
LEG = {"opening": "K1", "piece": "side_casing/left"}
every_sheet = pytest.mark.parametrize("sheet", SHEETS)


async def place(service: httpx.AsyncClient, **changed: Any) -> str:
    openings = changed.pop("openings", [opening("K1", count=2, room="Kitchen"), opening("K2", room="Hall")])
    where = (await made(service, openings=openings, **changed)).headers["location"]
    await service.post(f"{where}/plans", json={})  # or a search goes on meanwhile
    return where


async def sheet_of(service: httpx.AsyncClient, where: str, sheet: str, **params: Any) -> dict[str, Any]:
    answer = await service.get(f"{where}/sheets/{sheet}", params=params)
    assert answer.status_code == 200, answer.text
    return answer.json()


def rows(sheet: dict[str, Any], key: str) -> list[dict[str, str]]:
    (table,) = (one for one in sheet["tables"] if one["key"] == key)
    return [dict(zip(table["columns"], row, strict=True)) for row in table["rows"]]


async def record(service: httpx.AsyncClient, where: str, *pieces: dict[str, Any]) -> None:
    answer = await service.post(f"{where}/work", json={"pieces": list(pieces)})
    assert answer.status_code == 201, answer.text


@every_sheet
async def test_a_sheet_in_each_format_with_an_etag_of_its_own(
    sqlite_service: httpx.AsyncClient, sheet: str
) -> None:
    where = await place(sqlite_service)
    tags = set()
    for accept, start in STARTS.items():
        first = await sqlite_service.get(f"{where}/sheets/{sheet}", headers={"accept": accept})
        assert first.status_code == 200, first.text
        assert first.headers["content-type"].startswith(accept)
        assert first.content.startswith(start)
        assert first.headers["cache-control"] == "private, no-cache"
        if accept != "application/json":
            assert first.headers["content-disposition"].startswith('inline; filename="heron-cottage-')
        tag = first.headers["etag"]
        assert tag.startswith('"'), "strong"
        tags.add(tag)
        same = await sqlite_service.get(f"{where}/sheets/{sheet}", headers={"accept": accept})
        assert same.content == first.content, "a strong tag names these very octets"
        again = await sqlite_service.get(
            f"{where}/sheets/{sheet}", headers={"accept": accept, "if-none-match": tag}
        )
        assert (again.status_code, again.content) == (304, b"")
        assert (again.headers["etag"], again.headers["cache-control"]) == (tag, "private, no-cache")
    assert len(tags) == len(STARTS)


async def test_a_link_names_its_format(sqlite_service: httpx.AsyncClient) -> None:
    where = await place(sqlite_service)
    browser = {"accept": "text/html,application/xhtml+xml,*/*;q=0.8"}
    address = f"{where}/sheets/material-list"
    plain = await sqlite_service.get(address, headers=browser)
    assert plain.headers["content-type"].startswith("text/html")
    linked = await sqlite_service.get(address, params={"format": "pdf"}, headers=browser)
    negotiated = await sqlite_service.get(address, headers={"accept": "application/pdf"})
    assert linked.content == negotiated.content
    assert linked.headers["etag"] == negotiated.headers["etag"]
    assert linked.headers["content-disposition"] == 'inline; filename="heron-cottage-material-list.pdf"'
    bought = await sqlite_service.get(address, params={"format": "csv", "table": "buy"}, headers=browser)
    assert (
        bought.headers["content-disposition"] == 'attachment; filename="heron-cottage-material-list-buy.csv"'
    )
    assert sum(int(row["quantity"]) for row in csv.DictReader(io.StringIO(bought.text)) if row["profile"]) > 0
    refused = await sqlite_service.get(address, params={"format": "docx"})
    assert refused.status_code in (400, 422)
    assert "format" in refused.text


async def test_a_change_of_the_schedule_and_of_what_is_asked_is_news(
    sqlite_service: httpx.AsyncClient,
) -> None:
    where = await place(sqlite_service)
    address = f"{where}/sheets/labels"
    tag = (await sqlite_service.get(address)).headers["etag"]
    for params in ({"paper": "a4"}, {"title": "Other"}, {"skip": 3}):
        answer = await sqlite_service.get(address, params=params, headers={"if-none-match": tag})
        assert answer.status_code == 200, params
        assert answer.headers["etag"] != tag
    await record(sqlite_service, where, {**LEG, "state": "cut"})
    assert (await sqlite_service.get(address, headers={"if-none-match": tag})).status_code == 200


async def test_sheets_hold_what_is_still_to_cut(service: httpx.AsyncClient) -> None:
    where = await place(service)
    before = await sheet_of(service, where, "labels")
    pieces = rows(await sheet_of(service, where, "cut-list"), "pieces")
    assert sum(int(row["Qty"]) for row in pieces) == len(before["labels"]) == 21
    # The second of two legs alike is still to be cut, the stool of K2 is not.
    await record(
        service, where, {**LEG, "state": "cut"}, {"opening": "K2", "piece": "stool", "state": "installed"}
    )
    after = await sheet_of(service, where, "labels")
    left = rows(await sheet_of(service, where, "cut-list"), "pieces")
    assert sum(int(row["Qty"]) for row in left) == len(after["labels"]) == 19
    texts = [" ".join(label) for label in after["labels"]]
    assert not any("side casing, left, 1 of 2" in text for text in texts if text.startswith("K1"))
    assert {row["Piece"] for row in pieces} - {row["Piece"] for row in left} == {
        row["Piece"] for row in pieces if row["Piece"].startswith("K2") and row["What"] == "stool"
    }
    assert rows(await sheet_of(service, where, "measure-sheet"), "readings")


async def test_a_house_all_cut_needs_no_stock(service: httpx.AsyncClient) -> None:
    where = await place(service, openings=[opening("K1")])
    cuts = (await service.get(f"{where}/cut-list")).json()["cut_list"]
    pieces = [piece["key"] for one in cuts["openings"] for piece in one["pieces"]]
    await record(service, where, *({"opening": "K1", "piece": key, "state": "cut"} for key in pieces))
    for sheet in SHEETS:
        found = await sheet_of(service, where, sheet)
        assert not any("No stock was given" in note for note in found["notes"]), sheet
        page = await service.get(f"{where}/sheets/{sheet}", params={"format": "pdf"})
        assert page.content.startswith(b"%PDF-"), sheet
    assert (await sheet_of(service, where, "labels"))["labels"] == []


async def test_the_shop_is_kept_and_works_out_sections(service: httpx.AsyncClient) -> None:
    shop = {"build_year": 1931, "wages": {"hour": "30.00"}}
    dear = {"build_year": 1931, "wages": {"hour": "60.00"}}
    asked = {"include": ["saw_order", "materials", "hours", "cost"]}
    labor = []
    for one in (shop, dear):
        where = await place(service, shop=one)
        answer = await service.get(f"{where}/cut-list", params=asked)
        assert answer.status_code == 200, answer.text
        cuts = answer.json()["cut_list"]
        assert all(cuts[name] for name in ("saw_order", "materials", "hours", "cost_sheet"))
        sheet = await sheet_of(service, where, "cost-sheet")
        (whole,) = (row for row in rows(sheet, "rooms") if row["Room"] == "Hall")
        labor.append((float(cuts["cost_sheet"]["total"]["labor"]), whole["Labor"]))
    assert labor[1][0] == pytest.approx(2 * labor[0][0], abs=0.1)
    assert labor[0][1] != labor[1][1]
    assert (await service.get(where)).json()["house"]["shop"]["build_year"] == 1931


async def test_drawings_of_a_stored_house(sqlite_service: httpx.AsyncClient) -> None:
    where = await place(sqlite_service)
    addresses = [f"{where}/drawings/sticks"]
    addresses += [f"{where}/openings/K1/drawing?drawing={name}" for name in ("elevation", "section")]
    addresses += [f"{where}/openings/K1/drawing?drawing=piece&piece=side_casing/left"]
    tags = set()
    for address in addresses:
        first = await sqlite_service.get(address)
        assert first.status_code == 200, first.text
        assert first.headers["content-type"] == "image/svg+xml"
        assert ElementTree.fromstring(first.text).tag.endswith("svg")
        assert first.headers["content-disposition"].startswith('inline; filename="heron-cottage-')
        assert first.headers["cache-control"] == "private, no-cache"
        tags.add(first.headers["etag"])
        again = await sqlite_service.get(address, headers={"if-none-match": first.headers["etag"]})
        assert (again.status_code, again.content) == (304, b"")
    assert len(tags) == len(addresses)
    for address, status in (
        (f"{where}/openings/K1/drawing?drawing=piece&piece=newel", 422),
        (f"{where}/openings/K9/drawing", 404),
    ):
        assert (await sqlite_service.get(address)).status_code == status


async def test_a_sheet_there_is_none_of(sqlite_service: httpx.AsyncClient) -> None:
    where = await place(sqlite_service)
    assert (await sqlite_service.get(f"{where}/sheets/stair-sheet")).status_code in (404, 422)
    assert (await sqlite_service.get("/v1/schedules/none/sheets/material-list")).status_code == 404
    wrong = await sqlite_service.get(
        f"{where}/sheets/material-list", params={"format": "csv", "table": "stairs"}
    )
    assert wrong.status_code == 422
    assert wrong.json()["errors"][0]["parameter"] == "table"


async def test_stock_that_cannot_give_a_piece_is_told(sqlite_service: httpx.AsyncClient) -> None:
    short = [{**STOCK[0], "sticks": [{"length": "3 ft", "price": "3.00"}]}, *STOCK[1:]]
    where = await place(sqlite_service, stock=short)
    answer = await sqlite_service.get(f"{where}/sheets/stick-sheet", headers={"accept": "application/pdf"})
    assert answer.status_code == 422
    assert answer.headers["content-type"] == "application/problem+json"


async def test_sheets_are_their_account_s_own(sqlite_database: str) -> None:
    store = Store(sqlite_database)
    bearers = {}
    async with store.writing() as connection:
        for name, scopes in (
            ("ann", keys.SCOPES),
            ("bob", keys.SCOPES),
            ("ann", {"read"}),
            ("ann", {"write"}),
        ):
            id = await keys.account_named(connection, name)
            key = await keys.make_key(connection, id, name, frozenset(scopes), None)
            bearers[name, len(scopes), *sorted(scopes)] = {"authorization": f"Bearer {key}"}
    await store.close()
    owner, other, reader, writer = bearers.values()
    async with serving(sqlite_database) as service:
        kept = await service.post("/v1/schedules", json=house(openings=[opening("K1")]), headers=owner)
        where = kept.headers["location"]
        for path in ("sheets/stick-sheet", "drawings/sticks", "openings/K1/drawing"):
            mine = await service.get(f"{where}/{path}", headers=reader)
            assert mine.status_code == 200, mine.text
            theirs = await service.get(
                f"{where}/{path}", headers={**other, "if-none-match": mine.headers["etag"]}
            )
            assert theirs.status_code == 404
            assert (
                await service.get(f"{where}/{path}", headers={**other, "if-none-match": "*"})
            ).status_code == 404
            assert (await service.get(f"{where}/{path}", headers=writer)).status_code == 403
            assert (await service.get(f"{where}/{path}")).status_code == 401
