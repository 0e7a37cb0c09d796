"""What a house cannot be: each fault at its field, and how much one may hold."""

from __future__ import annotations

from typing import Any

import pytest

from longpoint.lengths import Unit
from longpoint.shop.house import MOST_LENGTHS_ON_HAND, MOST_SEASONS, House
from longpoint.values import Faults, converted
from stored import house, opening

PAIR = {"mark": "pair", "openings": ["W1", "W2"]}
YEAR = [{"name": str(number), "moisture_content": 8} for number in range(4)]


def told(**said: Any) -> list[tuple[str, str]]:
    """The faults of a house of two windows, and of whatever else is said of it, each with its field."""
    body = house(**{"openings": [opening("W1"), opening("W2")], **said})
    del body["name"]
    faults = Faults()
    converted(body, House, Unit.IN).report(faults)
    return [(str(fault.place), fault.code) for fault in faults]


@pytest.mark.parametrize(
    ("said", "faults"),
    [
        ({}, []),
        ({"openings": [opening("W1"), opening("W1")]}, [("/openings/1/mark", "duplicate-mark")]),
        ({"openings": [opening("W1"), opening("..")]}, [("/openings/1/mark", "mark-is-a-path")]),
        ({"openings": [opening("."), opening("W2")]}, [("/openings/0/mark", "mark-is-a-path")]),
        ({"openings": [opening("W1", trim="oiled")]}, [("/openings/0/trim", "unknown-trim")]),
        ({"groups": [PAIR]}, []),
        ({"groups": [{**PAIR, "mark": "W2"}]}, [("/groups/0/mark", "duplicate-mark")]),
        ({"groups": [{**PAIR, "mark": "."}]}, [("/groups/0/mark", "mark-is-a-path")]),
        (
            {"groups": [{**PAIR, "openings": ["W1"]}, {**PAIR, "openings": ["W2"]}]},
            [("/groups/1/mark", "duplicate-mark")],
        ),
        ({"groups": [{**PAIR, "openings": ["W1", "W3"]}]}, [("/groups/0/openings/1", "unknown-opening")]),
        (
            {"groups": [PAIR, {**PAIR, "mark": "more"}]},
            [("/groups/1/openings/0", "taken-twice"), ("/groups/1/openings/1", "taken-twice")],
        ),
        (
            {"groups": [PAIR], "openings": [opening("W1"), opening("W2", count=2)]},
            [("/groups/0/openings/1", "count-not-one")],
        ),
        ({"groups": [{**PAIR, "solid": ["16"]}]}, [("/groups/0/solid", "gaps-missing")]),
        (
            {"stock": [*house()["stock"], house()["stock"][0]]},
            [("/stock/3/profile", "duplicate-profile")],
        ),
        (
            {"movement": {"species": "red_oak", "installed": {"temperature": 70}, "seasons": YEAR}},
            [("/movement/installed/moisture_content", "missing")],
        ),
    ],
)
def test_a_house_tells_what_it_cannot_be(said: dict[str, Any], faults: list[tuple[str, str]]) -> None:
    assert told(**said) == faults


def test_an_unknown_trim_is_told_with_those_there_are() -> None:
    body = house(openings=[opening("W1", trim="oiled")])
    del body["name"]
    faults = Faults()
    converted(body, House, Unit.IN).report(faults)
    assert [str(fault.detail) for fault in faults] == [
        "No trim spec is called 'oiled'; trim_specs has 'painted'."
    ]


def test_lengths_on_hand_are_laid_out_up_to_their_number_and_one_more_is_told_where_it_is() -> None:
    most = [200] * (MOST_LENGTHS_ON_HAND // 200)
    stock = [
        {
            "profile": "all",
            "sticks": [],
            "lengths_on_hand": [{"length": "40", "count": count} for count in most],
        }
    ]
    one = {"profile": "one more", "sticks": [], "lengths_on_hand": [{"length": "40"}]}
    assert told(stock=stock) == []
    assert told(stock=[*stock, one]) == [("/stock/1/lengths_on_hand", "too-many-lengths-on-hand")]


def test_seasons_are_worked_out_up_to_their_number() -> None:
    movement = {"species": "red_oak", "installed": {"moisture_content": 8}, "seasons": YEAR}
    most = [opening(f"W{number}") for number in range(MOST_SEASONS // len(YEAR))]
    assert told(openings=most, movement=movement) == []
    more = told(openings=[opening("one more"), *most[:4999]], movement={**movement, "seasons": YEAR * 2})
    assert more == [("/movement/seasons", "too-many-seasons")]
