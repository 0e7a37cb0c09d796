"""Trim that does not meet as wood does, sent to the service: each is named with its field and the way out, and settled
by taking that way."""

from __future__ import annotations

import math
from collections.abc import Iterator
from copy import deepcopy
from typing import Any

import pytest

from asking import Service

WINDOW: dict[str, Any] = {
    "mark": "A1",
    "unit": "in",
    "bottom": "stool",
    "readings": {"jamb_width": "30 5/8", "jamb_height": "46 1/4", "jamb_depth": "3 1/8"},
    "trim": {
        "casing": {"width": "2 1/2", "thickness": "5/8"},
        "reveal": "3/16",
        "stool": {"thickness": "3/4", "horn": "3/4", "nosing": "7/8"},
        "apron": {"width": "2 1/2", "thickness": "5/8"},
    },
}
BAND = {"width": "1", "thickness": "1", "lap": "1/4"}
PLINTH = {"width": "3", "height": "6", "thickness": "1"}
BLOCK = {"width": "2 5/8", "thickness": "1"}
CAP = {"profile": "cap", "height": "3/4", "depth": "1 1/4"}
ARCH = {"jamb_width": "30", "jamb_height": "40", "rise": "8", "jamb_depth": "3"}
UNITS = {"joined_widths": ["20", "3"], "mull_widths": ["4"], "jamb_height": "40", "jamb_depth": "3"}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def window(**changed: Any) -> dict[str, Any]:
    """The window with fields changed, each by its path, as `trim__casing__width`."""
    body = deepcopy(WINDOW)
    for path, value in changed.items():
        *way, last = path.split("__")
        at = body
        for step in way:
            at = at.setdefault(step, {})
        at[last] = value
    return body


Way = tuple[dict[str, Any], str, str, dict[str, Any]]
FOUND: list[Way] = [
    # what is sent, what is found, its field, and the way out
    (
        {"trim__casing__thickness": "1 3/4"},
        "casing-past-stool",
        "/trim/stool/nosing",
        {"trim__stool__nosing": "1 1/8"},
    ),
    (
        {"bottom": "plinth", "trim__plinth": {**PLINTH, "thickness": "1/2"}},
        "plinth-thin",
        "/trim/plinth/thickness",
        {"trim__plinth__thickness": "5/8"},
    ),
    (
        {"bottom": "plinth", "trim__plinth": {**PLINTH, "width": "2 1/4"}},
        "plinth-narrow",
        "/trim/plinth/width",
        {"trim__plinth__width": "2 1/2"},
    ),
    (
        {"trim__head_style": "butted", "trim__cap": {**CAP, "depth": "1/2"}},
        "cap-thin",
        "/trim/cap/depth",
        {"trim__cap__depth": "5/8"},
    ),
    (
        {"trim__head_style": "butted", "trim__fillet": {**CAP, "depth": "1/2"}},
        "fillet-thin",
        "/trim/fillet/depth",
        {"trim__fillet__depth": "5/8"},
    ),
    (
        {"trim__head_style": "butted", "trim__head_casing": {"width": "3", "thickness": "1/2"}},
        "head-thin",
        "/trim/head_casing/thickness",
        {"trim__head_casing__thickness": "5/8"},
    ),
    (
        {"trim__head_style": "corner_blocks", "trim__corner_block": {**BLOCK, "thickness": "1/2"}},
        "block-thin",
        "/trim/corner_block/thickness",
        {"trim__corner_block__thickness": "5/8"},
    ),
    (
        {"trim__back_band": {**BAND, "thickness": "5/8"}},
        "band-thin",
        "/trim/back_band/thickness",
        {"trim__back_band__thickness": "3/4"},
    ),
    ({"trim__casing__width": "25"}, "casing-wide", "/trim/casing/width", {"trim__casing__width": "2 1/2"}),
    ({"trim__stool__horn": "100"}, "horn-long", "/trim/stool/horn", {"trim__stool__horn": "3/4"}),
    ({"horns__left": "100"}, "horn-long", "/horns/left", {"horns__left": "1"}),
    (
        {"readings__jamb_width": "1/64"},
        "opening-small",
        "/readings/jamb_width",
        {"readings__jamb_width": "30 5/8"},
    ),
    (
        {"readings__jamb_height": "3"},
        "opening-small",
        "/readings/jamb_height",
        {"readings__jamb_height": "46 1/4"},
    ),
    (
        {"readings": UNITS, "trim__mull_casing": {"width": "3", "thickness": "5/8"}},
        "opening-small",
        "/readings/joined_widths/1",
        {"readings__joined_widths": ["20", "16"]},
    ),
    (
        {"readings": {**ARCH, "head_pieces": 4}},
        "arch-covers-daylight",
        "/readings/head_pieces",
        {"readings__head_pieces": 8},
    ),
    (
        {"readings": {**ARCH, "departure": "1/2"}},
        "arch-covers-daylight",
        "/readings/departure",
        {"readings__departure": "3/16"},
    ),
]


@pytest.mark.parametrize(("sent", "code", "field", "way"), FOUND, ids=[f"{one[1]}{one[2]}" for one in FOUND])
def test_what_does_not_meet_is_found_at_its_field_and_settled_by_the_way_out(
    service: Service, sent: dict[str, Any], code: str, field: str, way: dict[str, Any]
) -> None:
    assert service.post("/v1/opening", WINDOW).json()["findings"] == []
    answer = service.post("/v1/opening", window(**sent))
    assert answer.status_code == 200, answer.json()
    found = [one for one in answer.json()["findings"] if one["code"] == code]
    assert found
    assert found[0]["field"] == field
    assert found[0]["offers"]
    settled = service.post("/v1/opening", window(**{**sent, **way}))
    assert settled.status_code == 200, settled.json()
    assert code not in [one["code"] for one in settled.json()["findings"]]


REFUSED = [
    ({"widths__left": "5"}, "/widths/left", "wider-than-stock", {"widths__left": "2 1/2"}),
    ({"widths__head": "2 9/16"}, "/widths/head", "wider-than-stock", {"widths__head": "2 7/16"}),
    ({"widths__apron": "3"}, "/widths/apron", "wider-than-stock", {"widths__apron": "2"}),
    (
        {"trim__back_band": {**BAND, "width": "4", "lap": "2 5/8"}},
        "/trim/back_band/lap",
        "lap-past-casing",
        {"trim__back_band": BAND},
    ),
    (
        {"trim__back_band": {**BAND, "width": "4", "lap": "2"}, "widths__left": "1 3/4"},
        "/trim/back_band/lap",
        "lap-past-casing",
        {"trim__back_band": BAND},
    ),
]


@pytest.mark.parametrize(("sent", "pointer", "code", "way"), REFUSED)
def test_what_cannot_be_made_is_refused_at_its_field(
    service: Service, sent: dict[str, Any], pointer: str, code: str, way: dict[str, Any]
) -> None:
    answer = service.post("/v1/opening", window(**sent))
    assert answer.status_code == 422
    assert [(fault["pointer"], fault["code"]) for fault in answer.json()["errors"]] == [(pointer, code)]
    assert service.post("/v1/opening", window(**{**sent, **way})).status_code == 200


def test_an_offered_number_of_pieces_leaves_the_jamb_in_sight(service: Service) -> None:
    body = window(readings={**ARCH, "head_pieces": 4})
    (found,) = service.post("/v1/opening", body).json()["findings"]
    offer = found["offers"][0]
    assert (offer["answer"], offer["field"], offer["value"]) == ("more_pieces", "/readings/head_pieces", 7)
    # The radius of a 30 in chord that rises 8 in is 18 1/16 in, and its half angle 56.14 degrees.
    departure = [18.0625 * (1 - math.cos(math.radians(56.14497 / pieces))) for pieces in (6, 7)]
    assert departure[1] <= 3 / 16 < departure[0]
    body["readings"]["head_pieces"] = offer["value"]
    assert service.post("/v1/opening", body).json()["findings"] == []


def test_an_extended_wall_read_at_another_number_of_corners_than_the_arch_has_is_refused(
    service: Service,
) -> None:
    readings = {**ARCH, "head_pieces": 7, "wall": [{"proud": "1/4"}] * 4}
    body = window(readings=readings, wall_answer="extend", trim__extension={"thickness": "3/4"})
    answer = service.post("/v1/opening", body)
    assert answer.status_code == 422
    assert ("/readings/wall", "corner-count") in {
        (fault["pointer"], fault["code"]) for fault in answer.json()["errors"]
    }


def test_casing_ripped_to_its_own_width_is_not_ripped(service: Service) -> None:
    pieces = service.post("/v1/opening", window(widths__left="2 1/2")).json()["pieces"]
    left = next(piece for piece in pieces if piece["key"] == "side_casing/left")
    assert left["rip_width"] is None


def test_a_house_names_them_too_and_its_opening_sheet_prints_them(service: Service) -> None:
    body = window(trim__stool__horn="100")
    trim = body.pop("trim")
    house = {
        "unit": body.pop("unit"),
        "openings": [{**body, "trim": "house"}],
        "trim_specs": {"house": trim},
        "stock": [],
    }
    (opening,) = service.post("/v1/cut-list", house).json()["openings"]
    assert [one["code"] for one in opening["findings"]] == ["horn-long", "horn-long"]
    sheet = service.post("/v1/sheets/opening-sheet", house, accept="text/html").text
    assert "Check on site" in sheet
    assert "The left horn is 100" in sheet
