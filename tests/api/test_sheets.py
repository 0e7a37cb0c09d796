"""Sheets and drawings over HTTP: each format as negotiated, named, safe to show, and kept where it may be."""

import asyncio
import csv
import io
from xml.etree import ElementTree

import httpx
import pytest

from longpoint.api.document.examples import CUT_LIST, LABELS, OPENING
from longpoint.sheets import UnsetError

HOUSE = CUT_LIST["two_rooms"].request
SHEETS = ("opening-sheet", "stick-sheet", "material-list", "cost-sheet", "measure-sheet", "labels")
every_sheet = pytest.mark.parametrize("sheet", SHEETS)


async def ask(
    client: httpx.AsyncClient, path: str, accept: str, body: object = HOUSE, **params: str
) -> httpx.Response:
    return await client.post(path, json=body, headers={"accept": accept}, params=params)


@every_sheet
async def test_a_sheet_is_a_page(client: httpx.AsyncClient, sheet: str) -> None:
    answer = await ask(client, f"/v1/sheets/{sheet}", "text/html", title="12 Alder Row")
    assert answer.status_code == 200
    assert answer.headers["content-type"] == "text/html; charset=utf-8"
    assert answer.headers["vary"] == "accept"
    assert answer.headers["content-disposition"].startswith('inline; filename="12-alder-row-')
    assert "script-src" not in answer.headers["content-security-policy"]
    assert "default-src 'none'" in answer.headers["content-security-policy"]
    assert answer.text.startswith("<!doctype html>")


@every_sheet
async def test_a_sheet_is_a_pdf(client: httpx.AsyncClient, sheet: str) -> None:
    answer = await ask(client, f"/v1/sheets/{sheet}", "application/pdf")
    assert answer.headers["content-type"] == "application/pdf"
    assert answer.headers["content-disposition"].endswith('.pdf"')
    assert answer.content.startswith(b"%PDF-")


@pytest.mark.parametrize("title", ["\N{GRINNING FACE} 中", "\U000666e6", "\ud7ff\ue000", "مرحبا"])
async def test_a_pdf_bears_characters_no_font_has(client: httpx.AsyncClient, title: str) -> None:
    answer = await ask(client, "/v1/sheets/labels", "application/pdf", title=title)
    assert answer.status_code == 200, answer.text
    assert answer.content.startswith(b"%PDF-")


@every_sheet
async def test_a_sheet_is_data(client: httpx.AsyncClient, sheet: str) -> None:
    answer = (await ask(client, f"/v1/sheets/{sheet}", "*/*")).json()
    assert answer["title"]
    assert answer["tables"] or answer["labels"]
    for table in answer["tables"]:
        assert all(len(row) == len(table["columns"]) for row in table["rows"])


async def test_a_cut_list_is_whatever_is_asked_for(client: httpx.AsyncClient) -> None:
    kinds = {
        "application/json": b"{",
        "text/html": b"<!doctype html>",
        "application/pdf": b"%PDF-",
        "text/csv": b"piece,",
        "image/svg+xml": b"<svg ",
    }
    for accept, start in kinds.items():
        answer = await ask(client, "/v1/cut-list", accept)
        assert answer.headers["content-type"].startswith(accept)
        assert answer.content.startswith(start)
    refused = await ask(client, "/v1/cut-list", "image/png")
    assert refused.status_code == 406


async def test_csv_of_each_table(client: httpx.AsyncClient) -> None:
    rows = list(csv.DictReader(io.StringIO((await ask(client, "/v1/cut-list", "text/csv")).text)))
    assert len(rows) == 7 + 4
    (head,) = (row for row in rows if row["piece"] == "K1-6")
    assert head["title"] == "head casing"
    assert head["long_point"] == "36 in"
    assert head["long_point_in"] == "36"
    buy = await ask(client, "/v1/cut-list", "text/csv", table="buy")
    assert "attachment" in buy.headers["content-disposition"]
    assert buy.headers["content-disposition"].endswith('buy.csv"')
    bought = list(csv.DictReader(io.StringIO(buy.text)))
    whole = (await ask(client, "/v1/cut-list", "application/json")).json()
    assert sum(float(row["cost"]) for row in bought) == pytest.approx(float(whole["cost"]))


async def test_an_unknown_table_is_refused_with_those_there_are(client: httpx.AsyncClient) -> None:
    answer = await ask(client, "/v1/cut-list", "text/csv", table="stairs")
    assert answer.status_code == 422
    (error,) = answer.json()["errors"]
    assert (error["code"], error["parameter"]) == ("unknown-table", "table")
    assert "buy, pieces" in error["detail"]


@pytest.mark.parametrize(
    ("name", "value"), [("paper", "legal"), ("title", "two\nlines"), ("feet", "often"), ("color", "red")]
)
async def test_how_a_sheet_looks_is_checked(client: httpx.AsyncClient, name: str, value: str) -> None:
    answer = await ask(client, "/v1/sheets/material-list", "text/html", **{name: value})
    assert answer.status_code in (400, 422)
    assert name in answer.text


async def test_a_house_at_fault_is_refused_as_everywhere(client: httpx.AsyncClient) -> None:
    body = {**HOUSE, "openings": [{**HOUSE["openings"][0], "trim": "no such"}]}
    for accept in ("text/html", "application/pdf", "application/json"):
        answer = await ask(client, "/v1/sheets/stick-sheet", accept, body)
        assert answer.status_code == 422
        assert answer.headers["content-type"] == "application/problem+json"
        assert answer.json()["errors"][0]["pointer"] == "/openings/0/trim"


async def test_labels_that_leave_the_paper_are_refused(client: httpx.AsyncClient) -> None:
    own = LABELS["own_grid"].request
    body = {**own, "grid": {**own["grid"], "across": 4, "down": 20}}
    answer = await ask(client, "/v1/sheets/labels", "application/pdf", body, paper="a4")
    assert answer.status_code == 422
    assert {error["pointer"] for error in answer.json()["errors"]} == {"/grid"}
    assert len(answer.json()["errors"]) == 2


async def test_hostile_names_stay_text(client: httpx.AsyncClient) -> None:
    evil = "</style><script>alert(1)</script>"
    body = {**HOUSE, "openings": [{**HOUSE["openings"][0], "mark": evil, "room": "=1+1"}]}
    for sheet in SHEETS:
        page = (await ask(client, f"/v1/sheets/{sheet}", "text/html", body, title=evil)).text
        assert "<script" not in page
        assert (
            await ask(client, f"/v1/sheets/{sheet}", "application/pdf", body, title=evil)
        ).status_code == 200
    rows = list(csv.DictReader(io.StringIO((await ask(client, "/v1/cut-list", "text/csv", body)).text)))
    assert {row["room"] for row in rows} == {"'=1+1"}


async def test_an_opening_is_drawn(client: httpx.AsyncClient) -> None:
    body = OPENING["window"].request
    plain = (await ask(client, "/v1/opening", "*/*", body)).json()
    drawings = [("elevation", ""), ("section", ""), *(("piece", piece["key"]) for piece in plain["pieces"])]
    for drawing, name in drawings:
        answer = await ask(client, "/v1/opening", "image/svg+xml", body, drawing=drawing, piece=name)
        assert answer.headers["content-type"] == "image/svg+xml"
        assert answer.headers["content-disposition"].startswith('inline; filename="k1-')
        assert ElementTree.fromstring(answer.text).tag.endswith("svg")
    refused = await ask(client, "/v1/opening", "image/svg+xml", body, drawing="piece", piece="newel")
    assert refused.status_code == 422
    assert "side_casing/left" in refused.json()["errors"][0]["detail"]


async def test_a_file_is_named_and_says_what_it_may_do(client: httpx.AsyncClient) -> None:
    for accept, params, name in (
        ("text/html", {"title": "Alder Row"}, 'inline; filename="alder-row-cut-list.html"'),
        ("application/pdf", {}, 'inline; filename="cut-list.pdf"'),
        ("text/csv", {"table": "buy"}, 'attachment; filename="cut-list-buy.csv"'),
        ("image/svg+xml", {"title": "É"}, 'inline; filename="e-sticks.svg"'),
    ):
        answer = await ask(client, "/v1/cut-list", accept, **params)
        assert answer.headers["content-disposition"] == name
        styled = "'unsafe-inline'" in answer.headers["content-security-policy"]
        assert styled is (accept in ("text/html", "image/svg+xml"))


async def test_a_sheet_that_cannot_be_set_is_told_with_what_to_ask_for(
    client: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def unset(*_: object) -> bytes:
        raise UnsetError("it took too long")

    monkeypatch.setattr("longpoint.api.answers.sheet.pdf", unset)
    answer = await ask(client, "/v1/sheets/stick-sheet", "application/pdf")
    assert answer.status_code == 422
    assert [(one["code"], one["header"]) for one in answer.json()["errors"]] == [("too-long", "accept")]
    assert "it took too long" in caplog.text
    assert "it took too long" not in answer.text


async def test_the_last_piece_that_a_sheet_shows_is_shown_and_one_more_is_not(
    client: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    plain = (await ask(client, "/v1/cut-list", "application/json")).json()
    pieces = sum(piece["quantity"] for one in plain["openings"] for piece in one["pieces"])
    for most, status in ((pieces, 200), (pieces - 1, 422)):
        monkeypatch.setattr("longpoint.api.answers.sheet.MOST_PRINTED", most)
        assert (await ask(client, "/v1/sheets/labels", "text/html")).status_code == status
    assert (await ask(client, "/v1/sheets/labels", "text/csv")).status_code == 200


async def test_labels_lie_where_they_are_asked_for(client: httpx.AsyncClient) -> None:
    own = LABELS["own_grid"].request
    pages = {
        name: (await ask(client, "/v1/sheets/labels", "text/html", {**own, **said}, paper=paper)).text
        for name, said, paper in (
            ("as asked", {}, "letter"),
            ("on A4", {}, "a4"),
            ("on the usual grid", {"grid": None}, "letter"),
            ("after three", {"skip": own.get("skip", 0) + 3}, "letter"),
        )
    }
    assert len(set(pages.values())) == len(pages)
    tall = {**own, "grid": {**own["grid"], "down": 50}}
    refused = await ask(client, "/v1/sheets/labels", "text/html", tall)
    assert {(one["pointer"], one["code"]) for one in refused.json()["errors"]} == {
        ("/grid", "grid-off-paper")
    }


async def test_a_title_stands_on_every_sheet(client: httpx.AsyncClient) -> None:
    for sheet in SHEETS:
        assert (
            "Heron Cottage"
            in (await ask(client, f"/v1/sheets/{sheet}", "text/html", title="Heron Cottage")).text
        )
    blank = "/v1/sheets/blank-measure-sheet"
    answers = [
        await client.get(blank, params=params, headers={"accept": "text/html"})
        for params in ({"title": "Heron Cottage"}, {}, {"paper": "a4"})
    ]
    assert ["Heron Cottage" in answer.text for answer in answers] == [True, False, False]
    assert len({answer.headers["etag"] for answer in answers}) == 3
    assert answers[1].text != answers[2].text


async def test_the_one_table_of_labels_is_named_where_another_is_asked_for(client: httpx.AsyncClient) -> None:
    answer = await ask(client, "/v1/sheets/labels", "text/csv", table="buy")
    assert answer.status_code == 422
    assert answer.json()["errors"][0]["detail"] == "This sheet has labels."


async def test_a_blank_measure_sheet_can_be_kept(client: httpx.AsyncClient) -> None:
    address = "/v1/sheets/blank-measure-sheet?paper=a4"
    tags = set()
    for accept in ("text/html", "application/pdf"):
        first = await client.get(address, headers={"accept": accept})
        assert first.status_code == 200
        assert first.headers["cache-control"] == "public, max-age=86400"
        tags.add(first.headers["etag"])
        again = await client.get(address, headers={"accept": accept, "if-none-match": first.headers["etag"]})
        assert again.status_code == 304
        assert again.content == b""
        head = await client.head(address, headers={"accept": accept})
        assert head.headers["etag"] == first.headers["etag"]
    assert len(tags) == 2, "two formats are two representations"
    other = await client.get("/v1/sheets/blank-measure-sheet", headers={"accept": "text/html"})
    assert other.headers["etag"] not in tags


async def test_the_service_answers_while_a_pdf_is_set(client: httpx.AsyncClient) -> None:
    one = HOUSE["openings"][0]
    body = {**HOUSE, "openings": [{**one, "mark": f"K{index}"} for index in range(200)]}
    setting = asyncio.create_task(ask(client, "/v1/sheets/opening-sheet", "application/pdf", body))
    answered = 0
    while not setting.done():
        assert (
            await client.get("/v1/sheets/blank-measure-sheet", headers={"if-none-match": "*"})
        ).status_code == 304
        answered += 1
        # A caller has a network between: without a pause the loop lets no thread in for seconds on end.
        await asyncio.sleep(0.001)
    assert (await setting).status_code == 200
    assert answered > 3
