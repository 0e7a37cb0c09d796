"""One window as a practitioner states it. Common practice, no source: the figures come from the trade, not a book.

The readings: jamb to jamb 34 1/2, the jamb 2 3/4 deep, stool to the reveal mark at the head 58. The trim: reveal
1/4, casing 3 1/4, horn 1 past the casing, apron 3/4 thick, nosing 1.
"""

from collections.abc import Iterator
from typing import Any

import pytest

from asking import Service

TO_THE_REVEAL_MARK, REVEAL = "58", "1/4"
WINDOW: dict[str, Any] = {
    "mark": "W",
    "unit": "in",
    "readings": {"jamb_width": "34 1/2", "jamb_height": "57 3/4", "jamb_depth": "2 3/4"},
    "trim": {
        "casing": {"width": "3 1/4", "thickness": "3/4"},
        "reveal": REVEAL,
        "stool": {"thickness": "1", "horn": "1", "nosing": "1"},
        "apron": {"width": "3 1/4", "thickness": "3/4"},
    },
}


@pytest.fixture(scope="module")
def pieces() -> Iterator[dict[str, Any]]:
    with Service() as service:
        yield {piece["key"]: piece for piece in service.opening(WINDOW)["pieces"]}


def test_stool(pieces: dict[str, Any]) -> None:
    stool = pieces["stool"]
    assert stool["overall"]["text"] == "43 1/2 in"
    assert stool["rip_width"]["text"] == "4 1/2 in"
    for end in stool["ends"]:
        assert end["notch"]["depth"]["text"] == "2 3/4 in"
        assert end["notch"]["length"]["text"] == "4 1/2 in"


def test_center_of_the_opening(pieces: dict[str, Any]) -> None:
    marks = {mark["name"]: mark["at"]["text"] for mark in pieces["stool"]["marks"]}
    # 17 1/4 from either jamb: past the left notch's 4 1/2 that is 21 3/4, half of the stool.
    assert marks["left jamb face"] == "4 1/2 in"
    assert marks["center line of opening"] == "21 3/4 in"
    assert marks["right jamb face"] == "39 in"


def test_apron_and_its_returns(pieces: dict[str, Any]) -> None:
    apron = pieces["apron"]
    assert apron["overall"]["text"] == "41 1/2 in"
    assert [(end["cut"], end["bevel_degrees"]) for end in apron["ends"]] == [("bevel", 45.0)] * 2
    for side in ("left", "right"):
        assert pieces[f"apron_return/{side}"]["long_point"]["text"] == "3/4 in"


@pytest.mark.parametrize("side", ["left", "right"])
def test_legs_are_58_at_the_short_point(pieces: dict[str, Any], side: str) -> None:
    leg = pieces[f"side_casing/{side}"]
    assert leg["short_point"]["text"] == f"{TO_THE_REVEAL_MARK} in"
    ends = {end["at"]: (end["cut"], end["miter_degrees"]) for end in leg["ends"]}
    assert ends == {"head": ("miter", 45.0), "foot": ("square", 0.0)}


def test_head_is_41_1_2_long_point_to_long_point(pieces: dict[str, Any]) -> None:
    head = pieces["head_casing"]
    assert head["long_point"]["text"] == "41 1/2 in"
    assert [end["miter_degrees"] for end in head["ends"]] == [45.0, 45.0]


def test_nothing_of_it_needed_rounding(pieces: dict[str, Any]) -> None:
    for piece in pieces.values():
        for figure in ("short_point", "long_point", "overall"):
            assert piece[figure]["residual"] == "0 in"
            assert piece[figure]["exact"] is not None
