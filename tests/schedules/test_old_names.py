"""Names of 0.1.0, and other names that are wrong, are answered with those there are."""

from typing import Any

import httpx
import pytest

from stored import house, made, opening


@pytest.fixture
async def schedule(sqlite_service: httpx.AsyncClient) -> str:
    """The address of a schedule of one opening."""
    answer = await made(sqlite_service, openings=[opening("A1")])
    return f"/v1/schedules/{answer.json()['id']}"


def fault(answer: httpx.Response, status: int = 422) -> dict[str, Any]:
    assert answer.status_code == status, answer.text
    return answer.json()["errors"][0]


@pytest.mark.parametrize(("old", "new"), [("used_offcuts", "used_lengths"), ("offcuts", "lengths")])
async def test_work_names_the_fields_it_has_now(sqlite_service, schedule, old, new):
    answer = await sqlite_service.post(f"{schedule}/work", json={old: []})
    assert f'"{old}" is called "{new}" now.' in fault(answer)["detail"]


@pytest.mark.parametrize(
    ("old", "new"),
    [("casing_leg/left", "side_casing/left"), ("casing_head/head", "head_casing")],
)
async def test_a_piece_is_named_by_its_key_of_today(sqlite_service, schedule, old, new):
    piece = {"opening": "A1", "piece": old, "state": "cut"}
    answer = await sqlite_service.post(f"{schedule}/work", json={"pieces": [piece]})
    assert f'"{old}" is called "{new}" now.' in fault(answer)["detail"]
    asked = {"drawing": "piece", "piece": old}
    drawing = await sqlite_service.get(f"{schedule}/openings/A1/drawing", params=asked)
    assert f'"{old}" is called "{new}" now.' in fault(drawing)["detail"]


async def test_a_schedule_names_its_lengths_and_rates(sqlite_service):
    body = house(rack=[], shop={"rates": {"setup_minutes": 2, "cut_minutes": 1}})
    answer = await sqlite_service.post("/v1/schedules", json=body)
    assert answer.status_code == 422
    said = {one["pointer"]: one["detail"] for one in answer.json()["errors"]}
    assert '"rack" is called "lengths" now.' in said["/rack"]
    assert '"detent_seconds", ' in said["/shop/rates/setup_minutes"]
    assert '"cut_seconds", "short_cut_seconds" and ' in said["/shop/rates/cut_minutes"]


@pytest.mark.parametrize("place", ["offcuts", "offcuts/01m8"])
async def test_the_address_of_offcuts_says_where_lengths_are(sqlite_service, schedule, place):
    answer = await sqlite_service.get(f"{schedule}/{place}")
    assert answer.status_code == 404
    assert '"offcuts" is called "lengths" now.' in answer.json()["detail"]


@pytest.mark.parametrize(
    ("address", "parameter", "choice", "said"),
    [
        ("sheets/saw-sheet", "sheet", "stick-sheet", '"saw-sheet" is called "stick-sheet" now.'),
        ("sheets/yard-list", "sheet", "material-list", '"yard-list" is called "material-list" now.'),
        ("work?state=fitted", "state", "installed", '"fitted" is called "installed" now.'),
        ("openings?bottom=picture_frame", "bottom", "casing", '"picture_frame" is called "casing" now.'),
        ("lengths?state=lost", "state", "used_up", 'not "lost".'),
        ("cut-list?include=cost&include=hour", "include", "hours", 'Was "hours" meant?'),
        ("sheets/labels?format=doc", "format", "pdf", 'not "doc".'),
        ("work?limit=0", "limit", "", ">= 1"),
    ],
)
async def test_a_wrong_value_names_its_parameter_and_the_choices(
    sqlite_service, schedule, address, parameter, choice, said
):
    found = fault(await sqlite_service.get(f"{schedule}/{address}"))
    assert found["parameter"] == parameter
    assert f'"{parameter}"' in found["detail"]
    assert choice in found["detail"]
    assert said in found["detail"]


async def test_a_name_that_no_stick_can_have_is_answered_with_what_one_is(sqlite_service, schedule):
    answer = await sqlite_service.post(f"{schedule}/cut-sticks", json={"sticks": ["c1"]})
    found = fault(answer)
    assert found["pointer"] == "/sticks/0"
    assert "A stick's name is a letter and a number, such as C7." in found["detail"]
    assert "[" not in found["detail"]


async def test_a_stick_there_never_was_is_pointed_at(sqlite_service, schedule):
    first = (await sqlite_service.get(f"{schedule}/plans")).json()["items"]
    assert first == []
    answer = await sqlite_service.post(f"{schedule}/cut-sticks", json={"sticks": ["C1", "C99"]})
    found = fault(answer, 404)
    assert found["pointer"] == "/sticks/1"
    assert found["code"] == "unknown-stick"
    assert "C99" in found["detail"]
