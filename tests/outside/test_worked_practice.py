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
    "readings": {"jamb_width": "34 1/2", "leg_height": "57 3/4", "jamb_depth": "2 3/4"},
    "trim": {
        "casing": {"width": "3 1/4", "thickness": "3/4"},
        "reveal": REVEAL,
        "stool": {"thickness": "1", "horn": "1", "nosing": "1"},
        "apron": {"width": "3 1/4", "thickness": "3/4"},
    },
}


@pytest.fixture(scope="module")
def parts() -> Iterator[dict[str, Any]]:
    with Service() as service:
        yield {part["key"]: part for part in service.opening(WINDOW)["parts"]}


def test_stool(parts: dict[str, Any]) -> None:
    stool = parts["stool"]
    assert stool["overall"]["text"] == "43 1/2 in"
    assert stool["rip_width"]["text"] == "4 1/2 in"
    for end in stool["ends"]:
        assert end["notch"]["depth"]["text"] == "2 3/4 in"
        assert end["notch"]["length"]["text"] == "4 1/2 in"


def test_centre_of_the_opening(parts: dict[str, Any]) -> None:
    marks = {mark["name"]: mark["at"]["text"] for mark in parts["stool"]["marks"]}
    # 17 1/4 from either jamb: past the left notch's 4 1/2 that is 21 3/4, half of the stool.
    assert marks["left jamb face"] == "4 1/2 in"
    assert marks["centre line of opening"] == "21 3/4 in"
    assert marks["right jamb face"] == "39 in"


def test_apron_and_its_returns(parts: dict[str, Any]) -> None:
    apron = parts["apron"]
    assert apron["overall"]["text"] == "41 1/2 in"
    assert [(end["cut"], end["bevel_degrees"]) for end in apron["ends"]] == [("bevel", 45.0)] * 2
    for side in ("left", "right"):
        assert parts[f"apron_return/{side}"]["long_point"]["text"] == "3/4 in"


@pytest.mark.parametrize("side", ["left", "right"])
def test_legs_are_58_at_the_short_point(parts: dict[str, Any], side: str) -> None:
    leg = parts[f"casing_leg/{side}"]
    assert leg["short_point"]["text"] == f"{TO_THE_REVEAL_MARK} in"
    ends = {end["at"]: (end["cut"], end["mitre_degrees"]) for end in leg["ends"]}
    assert ends == {"head": ("mitre", 45.0), "foot": ("square", 0.0)}


def test_head_is_41_1_2_long_point_to_long_point(parts: dict[str, Any]) -> None:
    head = parts["casing_head/head"]
    assert head["long_point"]["text"] == "41 1/2 in"
    assert [end["mitre_degrees"] for end in head["ends"]] == [45.0, 45.0]


def test_nothing_of_it_needed_rounding(parts: dict[str, Any]) -> None:
    for part in parts.values():
        for figure in ("short_point", "long_point", "overall"):
            assert part[figure]["residual"] == "0 in"
            assert part[figure]["exact"] is not None
