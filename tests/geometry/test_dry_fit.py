"""Every answer of the service, put together as it would be on the wall, must close."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import assume, given, note, settings

from asking import Service
from dryfit import dry_fit
from dryfit.openings import curved, framed, leaning, skewed, standing
from dryfit.refusals import unfounded
from dryfit.styles import dressed, extended, hung, joined, leant

DEMO = Path(__file__).parents[2] / "deploy/demo/house.json"


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def misfits(service: Service, request: dict[str, Any]) -> list[str]:
    note(json.dumps(request))
    response = service.post("/v1/opening", request)
    answer = response.json()
    if response.status_code == 422:
        # Wide casing beside narrow, or a reveal beside none, can eat a short side up at a flat corner; and a block no
        # wider than the leg on it is too narrow along a raked head.
        assert unfounded(request, {error["code"] for error in answer["errors"]}) == []
        assume(False)
    assert response.status_code == 200, answer
    return dry_fit(request, answer) + [f"as marked: {m}" for m in dry_fit(request, answer, as_marked=True)]


@settings(max_examples=250)
@given(request=standing)
def test_an_opening_with_plumb_sides_closes(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=150)
@given(request=framed)
def test_a_picture_frame_of_any_convex_shape_closes(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=120)
@given(request=leaning)
def test_legs_that_lean_stand_flat_and_close(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=200)
@given(request=skewed)
def test_an_opening_out_of_square_closes(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=60)
@given(request=curved)
def test_a_curved_head_on_legs_closes(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=120)
@given(request=dressed())
def test_the_trades_other_styles_close(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=100)
@given(request=joined())
def test_lights_joined_by_mulls_close(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=100)
@given(request=extended())
def test_an_extended_jamb_closes_and_the_casing_on_it(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=60)
@given(request=leant())
def test_casing_that_leans_closes(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


@settings(max_examples=60)
@given(request=hung())
def test_a_door_jamb_closes_round_its_door(service: Service, request: dict[str, Any]) -> None:
    assert misfits(service, request) == []


def test_every_opening_of_the_demo_house_closes(service: Service) -> None:
    house = json.loads(DEMO.read_text())
    answer = service.post("/v1/cut-list", house).json()
    for sent, made in zip(house["openings"], answer["openings"], strict=True):
        request = sent | {"trim": house["trim_specs"][sent["trim"]]}
        assert dry_fit(request, made) == [], sent["mark"]
        assert dry_fit(request, made, as_marked=True) == [], sent["mark"]
