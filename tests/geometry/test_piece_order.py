"""Pieces come in one order, whatever the opening: it is written out here a second time, by names alone."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import assume, given, note, settings
from hypothesis import strategies as st

from asking import Service
from dryfit.openings import curved, framed, leaning, skewed, standing
from dryfit.rows import rows
from dryfit.styles import dressed, extended, hung, joined, leant
from longpoint.geometry import PieceKind
from longpoint.geometry.piece_order import KINDS

IN_ORDER = (
    r"stool(/\d of \d)?",
    r"apron(/\d of \d)?",
    "apron_return/left",
    "apron_return/right",
    "stool_return/left",
    "stool_return/right",
    "side_casing/left",
    r"head_casing(/\d+)?",
    "side_casing/right",
    "bottom_casing",
    "corner_block/left",
    "corner_block/right",
    "corner_block/sill left",
    "corner_block/sill right",
    "plinth_block/left",
    "plinth_block/right",
    *(
        f"{kind}/{side}"
        for kind in ("back_band", "jamb_extension")
        for side in ("left", r"head( \d+)?", "right", "sill")
    ),
    r"mull_casing/\d+",
    "fillet",
    "fillet_return/left",
    "fillet_return/right",
    "cap",
    "cap_return/left",
    "cap_return/right",
    "jamb_leg/hinge",
    "jamb_leg/strike",
    "head_jamb",
    "door_stop/left",
    "door_stop/head",
    "door_stop/right",
    "tapered_shim",
)


def place(key: str) -> tuple[int, int]:
    """The row of a piece's name, and its number along that row, counted from the left."""
    (row,) = (row for row, name in enumerate(IN_ORDER) if re.fullmatch(name, key))
    number = re.search(r"\d+", key)
    return row, int(number[0]) if number else 0


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


@settings(max_examples=400)
@given(
    request=st.one_of(
        standing, framed, leaning, skewed, curved, dressed(), joined(), extended(), leant(), hung()
    )
)
def test_the_pieces_of_any_opening_come_in_that_order(service: Service, request: dict[str, Any]) -> None:
    note(json.dumps(request))
    response = service.post("/v1/opening", request)
    assume(response.status_code == 200)
    keys = [piece["key"] for piece in response.json()["pieces"]]
    assert keys == sorted(keys, key=place)


@settings(max_examples=40)
@given(request=rows())
def test_what_a_group_shares_comes_in_that_order(service: Service, request: dict[str, Any]) -> None:
    note(json.dumps(request))
    response = service.post("/v1/cut-list", request)
    assume(response.status_code == 200)
    for one in response.json()["openings"]:
        keys = [piece["key"] for piece in one["pieces"]]
        assert keys == sorted(keys, key=place)


def test_a_window_is_numbered_from_its_stool_round_to_its_right_side(service: Service) -> None:
    window = {
        "readings": {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"},
        "trim": {
            "casing": {"width": "2 1/2 in", "thickness": "5/8 in"},
            "reveal": "3/16 in",
            "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
            "apron": {"width": "2 1/2 in", "thickness": "5/8 in"},
        },
    }
    answer = service.post("/v1/opening", {"mark": "K1", **window}).json()
    assert [piece["title"] for piece in answer["pieces"]] == [
        "stool",
        "apron",
        "left apron return",
        "right apron return",
        "left side casing",
        "head casing",
        "right side casing",
    ]


@pytest.mark.parametrize(
    ("readings", "lengths"),
    [
        ({"sides": ["20 in", "15 in", "13 in"]}, ["13 in", "15 in", "20 in"]),
        (
            {"sides": ["20 in", "12 in", "16 in", "20 in", "12 in", "16 in"], "angles": [120] * 6},
            ["16 in", "12 in", "20 in", "16 in", "12 in", "20 in"],
        ),
    ],
)
def test_the_sides_of_a_picture_frame_are_numbered_from_the_left_over_the_top(
    service: Service, readings: dict[str, Any], lengths: list[str]
) -> None:
    """They are read the other way round, from the bottom, and the bottom is the last piece."""
    trim = {
        "casing": {"width": "2 in", "thickness": "5/8 in"},
        "back_band": {"width": "1 in", "thickness": "1 in", "lap": "3/8 in"},
        "reveal": "1/4 in",
    }
    request = {"mark": "K1", "bottom": "casing", "readings": readings, "trim": trim}
    pieces = service.post("/v1/opening", request).json()["pieces"]
    numbers = range(1, len(lengths) + 1)
    titles = [f"{what} side {number}" for what in ("casing", "back band") for number in numbers]
    assert [piece["title"] for piece in pieces] == titles
    # Of what goes into a piece's length the side it lies on comes first.
    assert [next(iter(piece["how"][0]["inputs"].values())) for piece in pieces] == [*lengths, *lengths]


def test_every_kind_of_piece_has_its_place() -> None:
    named = [kind for row in KINDS for kind in row]
    assert sorted(named) == sorted(PieceKind)
