"""Openings as they really stand, through the API: findings, offers, groups, and where faults point."""

from __future__ import annotations

from collections.abc import Iterator
from copy import deepcopy
from typing import Any

import pytest
from litestar.testing import TestClient

from longpoint.api.document.examples_shapes import CORNERS, GROUPED, MOVEMENT, REAL_OPENINGS
from longpoint.app import create_app
from longpoint.settings import Settings

Answer = dict[str, Any]


@pytest.fixture(scope="module")
def client() -> Iterator[TestClient[Any]]:
    with TestClient(create_app(Settings(access_log=False))) as running:
        yield running


def ask(client: TestClient[Any], path: str, body: Any) -> Answer:
    answer = client.post(path, json=body)
    assert answer.status_code == 200, answer.text
    found: Answer = answer.json()
    return found


def pointers(client: TestClient[Any], path: str, body: Any) -> set[tuple[str, str]]:
    answer = client.post(path, json=body)
    assert answer.status_code == 422, answer.text
    return {(fault["pointer"], fault["code"]) for fault in answer.json()["errors"]}


def test_an_opening_by_itself_stands_once_and_in_no_room(client: TestClient[Any]) -> None:
    answer = ask(client, "/v1/opening", REAL_OPENINGS["out_of_square"].request)
    assert (answer["count"], answer["room"]) == (1, "")


def test_an_opening_by_itself_has_the_pieces_that_its_cut_list_has(client: TestClient[Any]) -> None:
    alone = {key: value for key, value in REAL_OPENINGS["out_of_square"].request.items() if key != "rounding"}
    answer = ask(client, "/v1/opening", alone)
    unit = {"unit": alone["unit"]} if "unit" in alone else {}
    member = {key: value for key, value in alone.items() if key not in ("trim", "unit", "movement")}
    house = {**unit, "openings": [{**member, "trim": "t"}], "trim_specs": {"t": alone["trim"]}, "stock": []}
    pieces = ask(client, "/v1/cut-list", house)["openings"][0]["pieces"]
    assert len(pieces) > 3
    assert answer["pieces"] == pieces


def test_an_offer_sent_back_in_its_field_settles_what_was_found(client: TestClient[Any]) -> None:
    body = deepcopy(REAL_OPENINGS["out_of_square"].request)
    answer = ask(client, "/v1/opening", body)
    horn = next(each for each in answer["findings"] if each["code"] == "horn-collides")
    offer = horn["offers"][0]
    assert offer["field"] == "/horns/left"
    body["horns"] = {"left": offer["value"]}
    assert "horn-collides" not in {each["code"] for each in ask(client, "/v1/opening", body)["findings"]}


def test_a_tapered_extension_tells_both_widths(client: TestClient[Any]) -> None:
    answer = ask(client, "/v1/opening", REAL_OPENINGS["extended_jamb"].request)
    right = next(piece for piece in answer["pieces"] if piece["key"] == "jamb_extension/right")
    assert (right["taper"]["left"]["exact"], right["taper"]["right"]["exact"]) == ("14", "12")
    assert answer["findings"] == []


def test_a_mulled_units_stool_is_sawn_out_at_its_mull(client: TestClient[Any]) -> None:
    answer = ask(client, "/v1/opening", REAL_OPENINGS["mulled_pair"].request)
    stool = next(piece for piece in answer["pieces"] if piece["kind"] == "stool")
    assert [cutout["length"]["text"] for cutout in stool["cutouts"]] == ["3 1/2 in"]


def test_a_second_diagonal_checks_the_tape(client: TestClient[Any]) -> None:
    body = deepcopy(CORNERS["two_diagonals"].request)
    assert ask(client, "/v1/corners", body)["checks"][0]["agrees"] is True
    body["readings"]["diagonal_from_bottom_right"] = "56 3/8 in"
    answer = ask(client, "/v1/corners", body)
    assert answer["suspects"][0]["reading"] == "diagonal_from_bottom_right"
    opening = {
        **REAL_OPENINGS["out_of_square"].request,
        "readings": {**body["readings"], "jamb_depth": "3 in"},
    }
    found = ask(client, "/v1/opening", opening)["findings"]
    (doubt,) = [one for one in found if one["code"] == "readings-disagree"]
    assert {offer["answer"] for offer in doubt["offers"]} == {"take_again"}


def test_movement_tells_where_a_miter_opens(client: TestClient[Any]) -> None:
    winter, summer = ask(client, "/v1/movement", MOVEMENT["oak_over_a_year"].request)["seasons"]
    assert (winter["opens_at"], summer["opens_at"]) == ("short point", "long point")


def test_movement_faults_point_at_their_season(client: TestClient[Any]) -> None:
    body = {**MOVEMENT["celsius"].request, "seasons": [{"temperature": 21}]}
    assert pointers(client, "/v1/movement", body) == {("/seasons/0/moisture_content", "missing")}


def test_a_group_shares_its_stool_in_the_cut_list(client: TestClient[Any]) -> None:
    body = deepcopy(GROUPED["one_stool_under_two"].request)
    body["stock"] = [{"profile": "stool stock", "sticks": [{"length": "8 ft", "price": "20"}]}]
    answer = ask(client, "/v1/cut-list", body)
    first, second, shared = answer["openings"]
    assert (shared["mark"], shared["room"]) == ("H1+H2", "Hall")
    assert {piece["kind"] for each in (first, second) for piece in each["pieces"]} == {
        "side_casing",
        "head_casing",
    }
    (plan,) = answer["plans"]
    assert sorted(piece["piece"] for stick in plan["sticks"] for piece in stick["pieces"]) == [
        "stool/1 of 2",
        "stool/2 of 2",
    ]
    (finding,) = shared["findings"]
    offer = finding["offers"][0]
    assert offer["field"] == "/openings/0/reveals/head"
    body["openings"][0]["reveals"] = {"head": offer["value"]}
    assert ask(client, "/v1/cut-list", body)["openings"][2]["findings"] == []


def test_group_faults_point_at_the_group_or_its_member(client: TestClient[Any]) -> None:
    body = deepcopy(GROUPED["one_stool_under_two"].request)
    group = body["groups"][0]
    group["openings"] = ["H1", "H9"]
    assert pointers(client, "/v1/cut-list", body) == {("/groups/0/openings/1", "unknown-opening")}
    group["openings"], group["gaps"] = ["H1", "H2"], ["12 in", "12 in"]
    assert pointers(client, "/v1/cut-list", body) == {("/groups/0/gaps", "gap-count")}
    group["gaps"], group["stock_length"] = ["12 in"], "2 ft"
    assert pointers(client, "/v1/cut-list", body) == {("/groups/0/solid", "no-joint-in-reach")}
    group.pop("stock_length")
    body["openings"][1]["bottom"] = "casing"
    assert ("/openings/1/bottom", "stool-missing") in pointers(client, "/v1/cut-list", body)


def test_what_is_shared_and_fits_no_stick_points_at_the_group(client: TestClient[Any]) -> None:
    body = deepcopy(GROUPED["one_stool_under_two"].request)
    body["groups"][0].pop("stock_length")
    body["stock"] = [{"profile": "stool stock", "sticks": [{"length": "6 ft", "price": "20"}]}]
    assert {pointer for pointer, _ in pointers(client, "/v1/cut-list", body)} == {"/groups/0"}


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"door": {"width": "30 in", "height": "80 in"}}, "/readings/jamb_width"),
        ({"joined_widths": ["10 in", "10 in"], "mull_widths": ["2 in"]}, "/readings/jamb_width"),
        ({"joined_widths": ["10 in", "10 in"], "jamb_width": None}, "/readings/mull_widths"),
        ({"mull_widths": ["2 in"]}, "/readings/mull_widths"),
        ({"wall": [{"proud": "1/8 in", "shy": "1/8 in"}, {}, {}, {}]}, "/readings/wall/0/shy"),
        ({"wall": [{}, {}, {}]}, "/readings/wall"),
        ({"rise": "8 in", "left_jamb_height": "20 in"}, "/readings/left_jamb_height"),
        ({"head_width": "31 in"}, "/readings/diagonal_from_bottom_left"),
        ({"head_pieces": 4}, "/readings/rise"),
    ],
)
def test_readings_that_contradict_each_other_are_told_at_their_field(
    client: TestClient[Any], change: Answer, pointer: str
) -> None:
    body = {
        "mark": "A1",
        "bottom": "casing",
        "trim": {"casing": {"width": "2 in", "thickness": "1/2 in"}, "reveal": "1/8 in"},
        "readings": {"jamb_width": "30 in", "jamb_height": "40 in", **change},
    }
    assert pointer in {where for where, _ in pointers(client, "/v1/opening", body)}


WOOD = {
    "species": "red_oak",
    "installed": {"moisture_content": 8},
    "seasons": [{"name": "winter", "moisture_content": 6}, {"name": "summer", "moisture_content": 11}],
}


def test_an_opening_tells_how_far_its_miters_will_open(client: TestClient[Any]) -> None:
    body = {**REAL_OPENINGS["out_of_square"].request, "movement": WOOD}
    winter, summer = ask(client, "/v1/opening", body)["movement"]
    assert (winter["name"], winter["opens_at"], summer["opens_at"]) == ("winter", "short point", "long point")
    assert "_casing" in winter["piece"]
    alone = {**WOOD, "width": "2 1/2 in"}
    assert winter["gap"] == ask(client, "/v1/movement", alone)["seasons"][0]["gap"]


def test_a_house_tells_it_opening_by_opening(client: TestClient[Any]) -> None:
    body = {**GROUPED["one_stool_under_two"].request, "movement": WOOD}
    openings = ask(client, "/v1/cut-list", body)["openings"]
    assert ["_casing" in (each["movement"][0]["piece"] or "") for each in openings] == [True, True, False]
    assert openings[2]["movement"][0]["gap"] == "0.0000 in"
    assert (
        ask(client, "/v1/cut-list", GROUPED["one_stool_under_two"].request)["openings"][0]["movement"] is None
    )


def test_conditions_at_fault_are_told_in_their_place(client: TestClient[Any]) -> None:
    body = {**REAL_OPENINGS["out_of_square"].request, "movement": {**WOOD, "installed": {}}}
    assert pointers(client, "/v1/opening", body) == {("/movement/installed/moisture_content", "missing")}
