"""Sheets and drawings by the SDK: every format that the document gives an operation comes as its bytes."""

import csv
import io
from typing import Any
from xml.etree import ElementTree

import pytest

from calls import OPERATIONS, body_of
from longpoint_sdk import AsyncClient, Client, Versioned, calls, problems, types

DATA = {"application/json", "application/msgpack", "application/vnd.msgpack", "text/event-stream"}
STARTS = {
    "application/pdf": b"%PDF-",
    "image/svg+xml": b"<svg ",
    "text/csv": b"",
    "text/html": b"<!doctype html>",
}


def formats(name: str) -> list[str]:
    """The media types of an operation's answer that are files rather than data."""
    answers = OPERATIONS[name][2]["responses"]
    return sorted(answers["200"].get("content", {}).keys() - DATA) if "200" in answers else []


FILES = [(name, accept) for name in OPERATIONS if name != "get_job_result" for accept in formats(name)]
"""Every operation that answers in some format beside data, and each of its formats; a job's result is of its own."""


def arguments(client: Client, name: str) -> list[Any]:
    """What an operation takes by place: a body of the document's examples, or a stored house's id and what is in it."""
    path = OPERATIONS[name][0]
    if "{" not in path:
        return [body for body in [body_of(name)] if body is not None]
    made = client.create_schedule(body_of("create_schedule") | {"openings": [body_of("add_opening")]}).value
    known = {"schedule_id": made.id, "opening": body_of("add_opening")["mark"], "sheet": "material-list"}
    return [known[piece[1:-1]] for piece in path.split("/") if piece.startswith("{")]


def check(content: bytes, accept: str) -> None:
    assert content.startswith(STARTS[accept])
    if accept == "text/csv":
        head, *rows = csv.reader(io.StringIO(content.decode()))
        assert rows
        assert all(len(row) == len(head) for row in rows)
    elif accept == "image/svg+xml":
        assert ElementTree.fromstring(content.decode()).tag == "{http://www.w3.org/2000/svg}svg"
    elif accept == "text/html":
        assert content.decode().rstrip().endswith("</html>")
    else:
        assert content.rstrip().endswith(b"%%EOF")


def test_there_are_files_in_every_format() -> None:
    assert {accept for _, accept in FILES} == STARTS.keys()
    assert len({name for name, _ in FILES}) >= 12


@pytest.mark.parametrize(("name", "accept"), FILES)
def test_a_file_comes_as_its_bytes(client: Client, name: str, accept: str) -> None:
    answer = getattr(client, name)(*arguments(client, name), accept=accept)
    if isinstance(answer, Versioned):
        assert answer.etag
        answer = answer.value
    assert type(answer) is bytes
    check(answer, accept)


async def test_as_much_when_awaited(async_client: AsyncClient) -> None:
    house = body_of("make_material_list")
    check(
        await async_client.make_material_list(house, accept="application/pdf", paper="a4"), "application/pdf"
    )
    check(await async_client.compute_cut_list(house, accept="image/svg+xml"), "image/svg+xml")


def test_a_sheet_as_data_is_typed(client: Client) -> None:
    sheet = client.make_material_list(types.CutListRequest(**body_of("make_material_list")))
    assert isinstance(sheet, types.SheetContents)
    assert sheet.tables[0].rows


def test_the_name_of_a_file_is_in_the_reply(client: Client) -> None:
    call = calls.make_stick_sheet(
        body_of("make_stick_sheet"), title="Heron Cottage", accept="application/pdf"
    )
    reply = client.send_raw(call)
    assert reply.headers["Content-Disposition"] == 'inline; filename="heron-cottage-stick-sheet.pdf"'
    assert reply.value == reply.content


def test_a_table_there_is_none_of(client: Client) -> None:
    with pytest.raises(problems.InvalidRequest, match="table"):
        client.make_material_list(body_of("make_material_list"), accept="text/csv", table="moons")


def test_what_labels_say_comes_as_a_table(client: Client) -> None:
    text = client.make_labels(body_of("make_labels"), accept="text/csv")
    head, first, *_ = csv.reader(text.decode().splitlines())
    assert head == ["label", "length", "piece", "stock", "ends"]
    assert first[0].startswith("K1-1")
    assert all(first)


def test_a_format_there_is_none_of(client: Client) -> None:
    with pytest.raises(problems.NotAcceptable):
        client.make_material_list(body_of("make_material_list"), accept="image/png")
