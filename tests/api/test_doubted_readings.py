"""Readings doubted by themselves and beside the house's others, and confirmed. What is usual is common practice: none
of the limits has a published source."""

from __future__ import annotations

from collections.abc import Iterator
from copy import deepcopy
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from asking import Service
from dryfit.openings import mixed
from longpoint.lengths import Fraction

TRIM: dict[str, Any] = {
    "casing": {"width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
    "apron": {"width": "2 1/2 in", "thickness": "5/8 in"},
}
SOUND = {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"}
DOUBTS = {
    "reading-unusual",
    "readings-swapped",
    "reading-repeated",
    "reading-ten-times",
    "reading-one-digit",
}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def window(**readings: Any) -> dict[str, Any]:
    return {"mark": "A1", "readings": {**SOUND, **readings}, "trim": TRIM}


def door(**readings: Any) -> dict[str, Any]:
    return {"mark": "D1", "bottom": "floor", "readings": {"door": readings}, "trim": TRIM}


def doubts(answer: dict[str, Any]) -> list[dict[str, Any]]:
    return [one for one in answer["findings"] if one["code"] in DOUBTS]


def house(*openings: tuple[str, str, str] | dict[str, Any]) -> dict[str, Any]:
    """A house of these openings: width, height and depth of each, or a whole one."""
    listed: list[dict[str, Any]] = []
    for number, one in enumerate(openings, 1):
        if isinstance(one, tuple):
            names = ("jamb_width", "jamb_height", "jamb_depth")
            one = {"readings": {name: f"{value} in" for name, value in zip(names, one, strict=True)}}
        listed.append({"mark": f"K{number}", "trim": "t", **one})
    return {"openings": listed, "trim_specs": {"t": TRIM}}


def doubted(service: Service, body: dict[str, Any]) -> dict[str, list[tuple[str, str]]]:
    """Code and field of what is doubted, by the opening's mark."""
    answer = service.post("/v1/cut-list", body)
    assert answer.status_code == 200, answer.json()
    return {
        one["mark"]: [(found["code"], found["field"]) for found in doubts(one)]
        for one in answer.json()["openings"]
        if doubts(one)
    }


ALONE = [
    # what is read, what its finding says, and the field
    ({"jamb_width": "305 5/8 in"}, ["305 5/8 in", "no wider than 192 in", "a digit too many"], "jamb_width"),
    (
        {"jamb_width": "30.625 ft"},
        ["30.625 ft, which is 367 1/2 in", "If its unit were 'in', it would be 30 5/8 in"],
        "jamb_width",
    ),
    ({"jamb_width": "778 in"}, ["If its unit were 'mm', it would be 30 5/8 in"], "jamb_width"),
    ({"jamb_width": "46.25 mm"}, ["If its unit were 'in', it would be 46 1/4 in"], "jamb_width"),
    ({"jamb_height": "462.5 in"}, ["no higher than 120 in", "a digit too many"], "jamb_height"),
    ({"jamb_depth": "31 1/8 in"}, ["from 1/2 in to 14 in", "a digit too many"], "jamb_depth"),
    ({"jamb_depth": "5/16 in"}, ["from 1/2 in to 14 in"], "jamb_depth"),
    ({"jamb_depth": "3 1/8 ft"}, ["If its unit were 'in', it would be 3 1/8 in"], "jamb_depth"),
]


@pytest.mark.parametrize(("read", "says", "field"), ALONE, ids=[str(one[0]) for one in ALONE])
def test_a_reading_that_no_window_has_is_found_says_what_would_mend_it_and_can_be_confirmed(
    service: Service, read: dict[str, str], says: list[str], field: str
) -> None:
    answer = service.opening(window(**read))
    (found,) = doubts(answer)
    assert (found["code"], found["field"]) == ("reading-unusual", f"/readings/{field}")
    for words in says:
        assert words in found["detail"]
    assert "common practice" in found["detail"]
    again, confirm = found["offers"]
    assert (again["answer"], again["field"]) == ("take_again", None)
    assert (confirm["answer"], confirm["field"], confirm["value"]) == (
        "confirm",
        f"/confirmed/{field}",
        read[field],
    )
    settled = service.opening({**window(**read), "confirmed": {field: confirm["value"]}})
    assert doubts(settled) == []
    assert settled["pieces"] == answer["pieces"]


def test_what_was_confirmed_is_that_reading_and_no_other(service: Service) -> None:
    body = {**window(jamb_width="305 5/8 in"), "confirmed": {"jamb_width": "305 5/8 in"}}
    assert doubts(service.opening(body)) == []
    # The same length in another unit is the same reading; another length is not.
    body["readings"]["jamb_width"] = "7762.875 mm"
    assert doubts(service.opening(body)) == []
    body["readings"]["jamb_width"] = "306 5/8 in"
    assert len(doubts(service.opening(body))) == 1


def test_a_confirmation_says_nothing_of_the_other_readings(service: Service) -> None:
    body = {
        **window(jamb_width="305 5/8 in", jamb_depth="31 1/8 in"),
        "confirmed": {"jamb_width": "305 5/8 in"},
    }
    assert [one["field"] for one in doubts(service.opening(body))] == ["/readings/jamb_depth"]


def test_a_bare_number_is_doubted_in_the_unit_of_its_request(service: Service) -> None:
    trim = {**TRIM, "reveal": "3/16 in"}
    body = {"mark": "A1", "unit": "ft", "readings": {**SOUND, "jamb_width": "30.625"}, "trim": trim}
    (found,) = doubts(service.opening(body))
    assert "If its unit were 'in', it would be 30 5/8 in" in found["detail"]
    (_, confirm) = found["offers"]
    assert doubts(service.opening({**body, "confirmed": {"jamb_width": confirm["value"]}})) == []


DOORS = [
    (door(width="80 in", height="30 in"), "readings-swapped", "/readings/door/width"),
    (
        door(
            width="30 in", height="8 in", top_hinge="1 in", bottom_hinge="1 in", hinge_length="1 in", hinges=2
        ),
        "reading-unusual",
        "/readings/door/height",
    ),
    (door(width="300 in", height="80 in"), "reading-unusual", "/readings/door/width"),
    (
        {**window(jamb_width="82 in", jamb_height="32 in"), "bottom": "floor"},
        "readings-swapped",
        "/readings/jamb_width",
    ),
]


@pytest.mark.parametrize(("body", "code", "field"), DOORS)
def test_a_door_that_nobody_walks_through_is_found(
    service: Service, body: dict[str, Any], code: str, field: str
) -> None:
    (found,) = doubts(service.opening(body))
    assert (found["code"], found["field"]) == (code, field)
    (_, confirm) = found["offers"]
    name = confirm["field"].removeprefix("/confirmed/")
    assert doubts(service.opening({**body, "confirmed": {name: confirm["value"]}})) == []


HOUSES = [
    # ten times its neighbors
    (
        house(
            ("30 5/8", "46 1/4", "3 1/8"),
            ("28", "46 1/8", "3 1/8"),
            ("31", "4.6", "3 1/8"),
            ("30", "46", "3 1/8"),
        ),
        {"K3": [("reading-ten-times", "/readings/jamb_height")]},
    ),
    (
        house(
            ("30 5/8", "46 1/4", "3 1/8"),
            ("130 5/8", "46 1/8", "3 1/16"),
            ("31", "45", "3 1/8"),
            ("30", "46", "3"),
        ),
        {"K2": [("reading-ten-times", "/readings/jamb_width")]},
    ),
    # a width where a height belongs
    (
        house(("30 5/8", "46 1/4", "3 1/8"), ("30 1/2", "46 1/8", "3 1/16"), ("46 1/4", "30 1/2", "3")),
        {"K3": [("readings-swapped", "/readings/jamb_width")]},
    ),
    (
        house(("30 5/8", "46 1/4", "3 1/8"), ("28", "46 1/4", "3 1/16"), ("46 1/4", "46 1/4", "3")),
        {"K3": [("reading-repeated", "/readings/jamb_width")]},
    ),
    # alike but for one digit
    (
        house(("30 5/8", "46 1/4", "3 1/8"), ("36 5/8", "46 1/4", "3 1/8")),
        {"K2": [("reading-one-digit", "/readings/jamb_width")]},
    ),
    (
        house(("30 5/8", "64 1/4", "3 1/8"), ("30 5/8", "46 1/4", "3 1/8"), ("30 5/8", "46 1/4", "3 1/8")),
        {"K1": [("reading-one-digit", "/readings/jamb_height")]},
    ),
]


@pytest.mark.parametrize(("body", "expected"), HOUSES)
def test_a_slip_shows_beside_the_other_openings_and_is_confirmed(
    service: Service, body: dict[str, Any], expected: dict[str, list[tuple[str, str]]]
) -> None:
    assert doubted(service, body) == expected
    answer = service.post("/v1/cut-list", body).json()
    confirmed = deepcopy(body)
    for number, one in enumerate(answer["openings"]):
        for found in doubts(one):
            (confirm,) = (offer for offer in found["offers"] if offer["answer"] == "confirm")
            _, group, name = confirm["field"].split("/")
            confirmed["openings"][number].setdefault(group, {})[name] = confirm["value"]
    settled = service.post("/v1/cut-list", confirmed).json()
    assert [doubts(one) for one in settled["openings"]] == [[] for _ in settled["openings"]]
    assert [one["pieces"] for one in settled["openings"]] == [one["pieces"] for one in answer["openings"]]


SILENT = [
    # another size, a landscape window beside a portrait one, a sidelight, a transom
    house(("30 5/8", "46 1/4", "3 1/8"), ("36 3/8", "46 1/4", "3 1/8"), ("24 1/2", "38", "3 1/8")),
    house(("30 5/8", "46 1/4", "3 1/8"), ("46 1/8", "30 1/2", "3 1/8")),
    house(("72", "60", "3 1/8"), ("12", "60 1/4", "3 1/8"), ("12 1/16", "60 1/4", "3 1/8")),
    house(("30 5/8", "46 1/4", "3 1/8"), ("30 9/16", "46 1/4", "3 1/8"), ("30 5/8", "46 3/16", "3 1/16")),
    # two sizes with several of each
    house(*[("30 5/8", "46 1/4", "3 1/8")] * 2, *[("36 5/8", "46 1/4", "3 1/8")] * 2),
    # sizes of a row that all differ
    house(("24 5/8", "46 1/4", "3 1/8"), ("28 5/8", "46 1/4", "3 1/8"), ("36 5/8", "46 1/4", "3 1/8")),
]


@pytest.mark.parametrize("body", SILENT)
def test_windows_of_several_sizes_are_not_doubted(service: Service, body: dict[str, Any]) -> None:
    assert doubted(service, body) == {}


def test_estimates_are_not_compared(service: Service) -> None:
    body = house(("30 5/8", "46 1/4", "3 1/8"), ("36 5/8", "46 1/4", "3 1/8"))
    assert doubted(service, body)
    body["openings"][1]["certainty"] = "estimated"
    assert doubted(service, body) == {}


def test_a_digit_of_whole_millimeters_counts_unless_it_is_the_last(service: Service) -> None:
    def of(width: str) -> dict[str, list[tuple[str, str]]]:
        body = house(("778", "1175", "80"), (width, "1175", "80"))
        for one in body["openings"]:
            one["readings"] = {
                name: f"{value.removesuffix(' in')} mm" for name, value in one["readings"].items()
            }
        return doubted(service, body)

    assert of("718") == {"K2": [("reading-one-digit", "/readings/jamb_width")]}
    assert of("779") == {}


def sixteenths(least: int, most: int) -> st.SearchStrategy[Fraction]:
    return st.integers(least * 16, most * 16).map(lambda count: Fraction(count, 16))


@settings(max_examples=60, deadline=None)
@given(
    sizes=st.lists(st.tuples(sixteenths(24, 40), sixteenths(40, 60)), min_size=3, max_size=7),
    at=st.integers(0, 6),
    shift=st.sampled_from((10, Fraction(1, 10))),
)
def test_a_point_out_of_place_is_found_in_any_house_and_changes_no_piece(
    service: Service, sizes: list[tuple[Fraction, Fraction]], at: int, shift: Fraction
) -> None:
    at %= len(sizes)
    written = [(mixed(width), mixed(height), "3 1/8") for width, height in sizes]
    slipped = sizes[at][0] * shift
    written[at] = (str(float(slipped)), *written[at][1:])
    body = house(*written)
    found = doubted(service, body)
    codes = {code for code, field in found[f"K{at + 1}"] if field == "/readings/jamb_width"}
    assert codes <= {"reading-ten-times", "reading-unusual"}
    assert codes
    # A finding is all there is of it: the pieces are those of the reading as it was sent.
    alone = service.opening({"mark": "A1", "readings": body["openings"][at]["readings"], "trim": TRIM})
    whole = service.post("/v1/cut-list", body).json()["openings"][at]
    assert whole["pieces"] == alone["pieces"]
