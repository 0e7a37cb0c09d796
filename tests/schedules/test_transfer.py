"""Whole houses in and out: all or nothing, every fault at its row and column, and back to the same."""

import httpx
import pytest

from longpoint.api.stored.csv_openings import read_csv, write_csv
from longpoint.lengths import Unit
from stored import house, made, opening

CSV = {"content-type": "text/csv; charset=utf-8"}


async def bring(
    service: httpx.AsyncClient, where: str, text: str, query: str = "", **headers: str
) -> httpx.Response:
    return await service.post(f"{where}/import{query}", content=text.encode(), headers={**CSV, **headers})


async def test_a_spreadsheet_with_its_oddities_is_read(service: httpx.AsyncClient) -> None:
    where = (await made(service)).headers["location"]
    text = (
        "\ufeffMark;Room;Trim;Count;Jamb width;JAMB_HEIGHT;jamb  depth;reveals left\r\n"
        "K1;kitchen;painted;2;30 5/8;46 1/4;3 1/8;\r\n"
        ";;;;;;;\r\n"
        '"B;1";bath;painted;;2′ 6-5/8″;1175 mm;3 1/8;1/4 in\r\n'
    )
    answer = await bring(service, where, text)
    assert answer.status_code == 200, answer.text
    assert answer.json()["added"] == ["K1", "B;1"]
    openings = (await service.get(f"{where}/openings")).json()["items"]
    assert [one["exact"]["/readings/jamb_width"] for one in openings] == ["245/8", "245/8"]
    assert openings[1]["exact"]["/readings/jamb_height"] == "5875/127"
    assert openings[0]["count"] == 2
    assert openings[1]["reveals"]["left"] == "1/4 in"


async def test_every_bad_row_is_told_with_its_row_and_column_and_nothing_is_kept(
    service: httpx.AsyncClient,
) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    head = "mark,trim,count,jamb width,jamb height,jamb depth\n"
    text = head + "A,painted,x,30,40,3\n,painted,1,30,40,3\nB,painted,1,30,40,3,9\n"
    answer = await bring(service, where, text)
    assert answer.status_code == 422
    assert [(one["row"], one.get("column")) for one in answer.json()["errors"]] == [
        (2, "count"),
        (3, "mark"),
        (4, None),
    ]
    head = "mark,trim,jamb width,jamb height,jamb depth\n"
    text = head + 'A,oak,30,40,3\nB,painted,"0",40,3\nB,painted,30,tall,3\n\nC,painted,30,40,\n'
    answer = await bring(service, where, text)
    assert {(one["row"], one["column"], one["code"]) for one in answer.json()["errors"]} >= {
        (2, "trim", "unknown-trim"),
        (3, "jamb width", "zero"),
        (4, "mark", "duplicate-mark"),
        (4, "jamb height", "not-a-length"),
    }
    answer = await bring(service, where, "mark,trim,jamb width,jamb height,jamb depth\nC,painted,30,40,\n")
    assert [(one["row"], one["column"]) for one in answer.json()["errors"]] == [(2, "jamb depth")]
    answer = await bring(service, where, "mark,trim,jamb width,jamb height,jamb depth\nK1,painted,30,40,3\n")
    assert [(one["row"], one["code"]) for one in answer.json()["errors"]] == [(2, "duplicate-mark")]
    assert (await service.get(where)).json()["revision"] == 1


@pytest.mark.parametrize(
    ("body", "status"),
    [
        (b"", 400),
        (b"\xff\xfe", 400),
        (b'mark,trim\n"A,painted', 400),
        (b"mark,trim\n", 422),
        (b"mark,trim,color\nA,painted,red\n", 422),
        (b"mark,mark,trim\nA,A,painted\n", 422),
        (b"room\nattic\n", 422),
        (b"mark,trim,jamb width\nA\0,painted,30\n", 422),
        (b"mark,trim,wall\nA,painted," + b"[" * 10_000 + b"\n", 422),
        (b"mark,trim\n" + b"A" * 9_000_000, 413),
        (b"\xed\xa0\x80", 400),
    ],
)
async def test_files_that_are_none(sqlite_service: httpx.AsyncClient, body: bytes, status: int) -> None:
    where = (await made(sqlite_service)).headers["location"]
    answer = await sqlite_service.post(f"{where}/import", content=body, headers=CSV)
    assert answer.status_code == status, answer.text
    assert answer.headers["content-type"] == "application/problem+json"
    assert (await sqlite_service.get(where)).json()["revision"] == 1


async def test_existing_marks_are_refused_updated_or_the_whole_replaced(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
    ids = {one["mark"]: one["id"] for one in (await service.get(f"{where}/openings")).json()["items"]}
    body = {"openings": [opening("K1", "31"), opening("K3")]}
    assert (await service.post(f"{where}/import", json=body)).status_code == 422
    assert (await service.post(f"{where}/import?existing=update", json=body)).status_code == 428
    tag = {"if-match": (await service.get(where)).headers["etag"]}
    tried = await service.post(f"{where}/import?existing=replace&dry_run=true", json=body, headers=tag)
    assert tried.json() == {
        "dry_run": True,
        "revision": 1,
        "added": ["K3"],
        "updated": ["K1"],
        "unchanged": 0,
        "removed": ["K2"],
    }
    assert (await service.get(where)).headers["etag"] == tag["if-match"]
    done = await service.post(f"{where}/import?existing=update", json=body, headers=tag)
    assert (done.json()["revision"], done.json()["removed"]) == (2, [])
    again = await service.post(
        f"{where}/import?existing=replace", json=body, headers={"if-match": done.headers["etag"]}
    )
    assert (again.json()["removed"], again.json()["unchanged"], again.json()["revision"]) == (["K2"], 2, 3)
    openings = (await service.get(f"{where}/openings")).json()["items"]
    assert [one["mark"] for one in openings] == ["K1", "K3"]
    assert openings[0]["id"] == ids["K1"]
    same = await service.post(
        f"{where}/import?existing=replace", json=body, headers={"if-match": again.headers["etag"]}
    )
    assert same.json()["revision"] == 3, "nothing changed, so there is no revision"


async def test_an_export_starts_a_schedule_just_like_it(service: httpx.AsyncClient) -> None:
    openings = [
        opening("K1", room="kitchen", count=3, reveals={"left": "1/4 in"}),
        opening('Tri"angle, 1', bottom="casing"),
        opening("=1+1"),
    ]
    openings[1]["readings"] = {"sides": ["30 in", "40 in", "50 in"]}
    body = house(openings=openings, lengths=[{"profile": "casing", "length": "1.2 m"}], site_note="a\nb")
    where = (await made(service, **body)).headers["location"]
    out = await service.get(f"{where}/export")
    copy = await service.post("/v1/schedules", json=out.json())
    assert copy.status_code == 201, copy.text
    again = await service.get(f"{copy.headers['location']}/export")
    assert again.content == out.content
    text = await service.get(f"{where}/export", headers={"accept": "text/csv"})
    assert text.headers["content-type"].startswith("text/csv")
    bare = house(trim_specs=body["trim_specs"])
    third = (await made(service, **bare)).headers["location"]
    brought = await bring(service, third, text.text)
    assert brought.status_code == 200, brought.text
    back = (await service.get(f"{third}/export")).json()
    assert back["openings"] == out.json()["openings"]


async def test_an_export_can_be_had_as_of_any_revision(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    first = await service.get(f"{where}/export")
    await service.post(f"{where}/openings", json=opening("K2"))
    assert (await service.get(f"{where}/export?revision=1")).content == first.content
    assert len((await service.get(f"{where}/export")).json()["openings"]) == 2
    tag = {"if-none-match": first.headers["etag"]}
    assert (await service.get(f"{where}/export?revision=1", headers=tag)).status_code == 304
    assert (await service.get(f"{where}/export?revision=9")).status_code == 404


def test_every_column_comes_back() -> None:
    """Whatever field an opening has, CSV carries it."""
    text = "mark,trim,without apron,top left angle,sides,angles\nA,t,yes,90.5,1 in|2 in|3 in,30|60|90.25\n"
    sent, _, _ = read_csv(text.encode(), Unit.IN)
    assert [side.text for side in sent.openings[0].readings.sides or ()] == ["1 in", "2 in", "3 in"]
    assert sent.openings[0].without_apron
    again, _, _ = read_csv(write_csv(sent.openings).encode(), Unit.IN)
    assert again == sent


async def test_an_old_column_is_told_what_it_is_called_now(service: httpx.AsyncClient) -> None:
    where = (await made(service)).headers["location"]
    rows = b"mark,trim,jamb width,leg height,jamb depth\r\nK1,painted,30 5/8,46 1/4,3 1/8\r\n"
    answer = await service.post(f"{where}/import", content=rows, headers={"content-type": "text/csv"})
    assert answer.status_code == 422
    (fault,) = [one for one in answer.json()["errors"] if one.get("column") == "leg height"]
    assert '"leg height" is called "jamb height" now' in fault["detail"]
