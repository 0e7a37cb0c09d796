"""One opening, one kind of piece, corners and movement over HTTP: in the unit and the rounding that were asked for."""

from typing import Any

import httpx
import pytest

from longpoint.api.document.examples import OPENING
from longpoint.api.document.examples_shapes import MOVEMENT

WINDOW = OPENING["window"].request
READINGS: dict[str, dict[str, Any]] = {
    "stool": {"jamb_width": "30 5/8", "jamb_depth": "3 1/8", "reveal": "3/16", "casing_width": "2 17/32"},
    "apron": {"jamb_width": "30 5/8", "reveal": "3/16", "casing_width": "2 17/32", "thickness": "5/8"},
    "casing": {"jamb_width": "30 5/8", "jamb_height": "46 1/4", "reveal": "3/16", "casing_width": "2 17/32"},
    "corners": {
        "readings": {"jamb_width": "30 5/8", "jamb_height": "46 1/4"},
        "reveal": "3/16",
        "casing_width": "2 17/32",
    },
}
MORE = {"stool": {"horn": "3/4", "nosing": "7/8", "apron_thickness": "5/8"}}
PIECES = {
    "stool": {"stool": "37 9/16"},
    "apron": {"apron": "36 1/16", "apron_return/left": "5/8", "apron_return/right": "5/8"},
    "casing": {"side_casing/left": "48 31/32", "head_casing": "36 1/16", "side_casing/right": "48 31/32"},
    "corners": {"side_casing/left": "48 31/32", "head_casing": "36 1/16", "side_casing/right": "48 31/32"},
}


async def answered(client: httpx.AsyncClient, path: str, body: dict[str, Any], **params: str) -> Any:
    answer = await client.post(f"/v1/{path}", json=body, params=params)
    assert answer.status_code == 200, answer.text
    return answer.json()


@pytest.mark.parametrize("kind", READINGS)
async def test_pieces_are_rounded_as_asked(client: httpx.AsyncClient, kind: str) -> None:
    body = {**READINGS[kind], **MORE.get(kind, {}), "unit": "in"}
    for to, mode in (("1/32 in", "nearest"), ("1/8 in", "up"), ("1/8 in", "down")):
        answer = await answered(client, kind, {**body, "rounding": {"to": to, "mode": mode}})
        pieces = {one["key"]: one["overall"] for one in answer["pieces"]}
        assert [*pieces] == [*PIECES[kind]]
        for key, length in PIECES[kind].items():
            if to == "1/32 in":
                assert (pieces[key]["text"], pieces[key]["residual"]) == (f"{length} in", "0 in")
            elif mode == "up":
                assert not pieces[key]["residual"].startswith("-")
                assert pieces[key]["text"] != f"{length} in" or length == "5/8"
            else:
                assert pieces[key]["residual"].startswith("-") or length == "5/8"


async def test_a_corner_stands_where_the_readings_say_in_their_unit(client: httpx.AsyncClient) -> None:
    readings = {"jamb_width": "900", "jamb_height": "1200"}
    body = {"readings": readings, "casing_width": "70", "reveal": "5", "unit": "mm"}
    answer = await answered(client, "corners", {**body, "rounding": {"to": "1 mm"}})
    assert {(one["at"]["x"], one["at"]["y"]) for one in answer["corners"]} == {
        ("0.000 mm", "0.000 mm"),
        ("900.000 mm", "0.000 mm"),
        ("900.000 mm", "1200.000 mm"),
        ("0.000 mm", "1200.000 mm"),
    }


async def test_movement_is_told_in_the_unit_of_the_request_for_a_miter_of_45(
    client: httpx.AsyncClient,
) -> None:
    inches = MOVEMENT["oak_over_a_year"].request
    plain = await answered(client, "movement", inches)
    assert plain == await answered(client, "movement", {**inches, "miter_degrees": 45.0})
    assert plain != await answered(client, "movement", {**inches, "miter_degrees": 46.0})
    assert plain["widest_gap"].endswith(" in")
    millimeters = {**inches, "width": "88.9", "unit": "mm"}
    assert (await answered(client, "movement", millimeters))["widest_gap"] == "1.772 mm"


async def test_an_opening_by_itself_is_in_no_room_and_there_once(client: httpx.AsyncClient) -> None:
    answer = await answered(client, "opening", WINDOW)
    assert (answer["mark"], answer["room"], answer["count"], answer["movement"]) == ("K1", "", 1, None)
    assert {one["quantity"] for one in answer["pieces"]} == {1}
    moving = {name: MOVEMENT["oak_over_a_year"].request[name] for name in ("species", "installed", "seasons")}
    answer = await answered(client, "opening", {**WINDOW, "movement": moving})
    assert [one["name"] for one in answer["movement"]] == ["winter", "summer"]


async def test_an_opening_is_rounded_as_asked(client: httpx.AsyncClient) -> None:
    for to in ("1/8 in", "1/16 in"):
        answer = await answered(client, "opening", {**WINDOW, "rounding": {"to": to, "mode": "nearest"}})
        lengths = [one["overall"]["text"] for one in answer["pieces"]]
        assert all("/16" not in text for text in lengths) is (to == "1/8 in")


async def test_drawings_are_named_by_the_opening_and_what_is_drawn(client: httpx.AsyncClient) -> None:
    for params, name in (
        ({}, "k1-elevation"),
        ({"drawing": "section"}, "k1-section"),
        ({"drawing": "piece", "piece": "side_casing/left"}, "k1-side-casing-left"),
        ({"drawing": "section", "piece": "side_casing/left"}, "k1-section"),
    ):
        headers = {"accept": "image/svg+xml"}
        answer = await client.post("/v1/opening", json=WINDOW, params=params, headers=headers)
        assert answer.headers["content-disposition"] == f'inline; filename="{name}.svg"'
    headers = {"accept": "image/svg+xml"}
    params = {"drawing": "piece", "piece": "newel"}
    refused = await client.post("/v1/opening", json=WINDOW, params=params, headers=headers)
    assert [(one["code"], one["parameter"]) for one in refused.json()["errors"]] == [
        ("unknown-piece", "piece")
    ]


async def test_a_drawing_is_in_feet_where_that_is_asked(client: httpx.AsyncClient) -> None:
    headers = {"accept": "image/svg+xml"}
    plain = (await client.post("/v1/opening", json=WINDOW, headers=headers)).text
    feet = (await client.post("/v1/opening", json=WINDOW, headers=headers, params={"feet": "true"})).text
    assert "2' 6" not in plain.replace("&#39;", "'").replace("&#x27;", "'")
    assert "2' 6" in feet.replace("&#39;", "'").replace("&#x27;", "'")
