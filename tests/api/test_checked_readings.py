"""Six readings of an opening against each other, through the service: what is found of slips that were put in here."""

from __future__ import annotations

import random
from collections.abc import Iterator
from copy import deepcopy
from fractions import Fraction
from typing import Any

import pytest

from asking import Service
from dryfit.openings import mixed
from longpoint.api.computed.opening import OpeningRequest
from longpoint.geometry import build_opening
from longpoint.values import converted

TRUE = {
    "jamb_width": "30 5/8 in",
    "head_width": "30 1/2 in",
    "left_jamb_height": "46 1/4 in",
    "right_jamb_height": "46 1/8 in",
    "diagonal_from_bottom_left": "55 3/8 in",
    "diagonal_from_bottom_right": "55 3/8 in",
}
WINDOW: dict[str, Any] = {
    "mark": "A1",
    "bottom": "floor",
    "readings": TRUE,
    "trim": {"casing": {"width": "2 1/2 in", "thickness": "5/8 in"}, "reveal": "3/16 in"},
}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def window(**changed: Any) -> dict[str, Any]:
    body = deepcopy(WINDOW)
    body["readings"] |= changed
    return {**body, "readings": {name: value for name, value in body["readings"].items() if value}}


def doubts(answer: dict[str, Any]) -> list[dict[str, Any]]:
    return [one for one in answer["findings"] if one["code"] == "readings-disagree"]


def test_readings_that_agree_say_how_well(service: Service) -> None:
    answer = service.post("/v1/opening", WINDOW).json()
    assert doubts(answer) == []
    assert any("The two diagonals check the readings" in note for note in answer["notes"])


def test_a_diagonal_a_tenth_of_an_inch_off_is_said(service: Service) -> None:
    answer = service.post("/v1/opening", window(diagonal_from_bottom_right="55.478 in")).json()
    assert doubts(answer) == []
    (note,) = [note for note in answer["notes"] if "check the readings" in note]
    assert "they are 1/16 in off" in note or "they are 1/8 in off" in note


@pytest.mark.parametrize("lacking", ["diagonal_from_bottom_left", "diagonal_from_bottom_right"])
def test_an_opening_without_a_check_says_which_reading_would_be_one(service: Service, lacking: str) -> None:
    answer = service.post("/v1/opening", window(**{lacking: None})).json()
    assert f"Nothing checks the readings of this opening; {lacking} would." in answer["notes"]


@pytest.mark.parametrize("slip", [Fraction(1, 2), Fraction(-1), Fraction(12)])
@pytest.mark.parametrize("field", TRUE)
def test_a_slip_is_found_its_reading_is_among_the_suspects_and_its_size_is_told(
    service: Service, field: str, slip: Fraction
) -> None:
    whole, part = TRUE[field].removesuffix(" in").split(" ")
    answer = service.post("/v1/opening", window(**{field: f"{mixed(int(whole) + Fraction(part) + slip)} in"}))
    if (
        answer.status_code == 422
    ):  # 12 in more or less of a side may leave no shape, or a corner that cannot be cased
        assert abs(slip) == 12
        assert answer.json()["errors"][0]["code"] in (
            "impossible-triangle",
            "angle-out-of-range",
            "not-convex",
        )
        return
    (found,) = doubts(answer.json())
    assert field in found["detail"]
    (own,) = [offer for offer in found["offers"] if f"{field} again" in offer["detail"]]
    off = own["figures"]["off by"].removesuffix(" in")
    sign = -1 if off.startswith("-") else 1
    told = sign * sum(map(Fraction, off.removeprefix("-").split(" ")))
    assert abs(told - slip) <= Fraction(1, 4)
    assert sum("again first" in offer["detail"] for offer in found["offers"]) <= 2


def test_the_tapes_spread_is_a_setting(service: Service) -> None:
    slipped = window(diagonal_from_bottom_left="55 3/4 in")
    assert doubts(service.post("/v1/opening", slipped).json())
    assert not doubts(service.post("/v1/opening", {**slipped, "tape_spread": "1/8 in"}).json())


def test_one_height_for_both_sides_is_named_once(service: Service) -> None:
    body = window(
        left_jamb_height=None,
        right_jamb_height=None,
        jamb_height="46 1/4 in",
        diagonal_from_bottom_left="56 3/8 in",
    )
    (found,) = doubts(service.post("/v1/opening", body).json())
    assert found["detail"].count("jamb_height") == 1


def test_readings_of_which_no_shape_can_be_made_say_which_by_how_much_and_what_would_mend_it(
    service: Service,
) -> None:
    """553 5/8 for 55 3/8 would be a digit too many; so is 555 3/8."""
    answer = service.post("/v1/opening", window(diagonal_from_bottom_right="555 3/8 in"))
    assert answer.status_code == 422
    (fault,) = answer.json()["errors"]
    assert (fault["pointer"], fault["code"]) == (
        "/readings/diagonal_from_bottom_right",
        "impossible-triangle",
    )
    # 555 3/8 less 30 5/8 and 46 1/4.
    assert "is 478 1/2 in longer than" in fault["detail"]
    assert (
        "With diagonal_from_bottom_right at 55 3/8 in it would close (a digit too many)." in fault["detail"]
    )


def _readings(chance: random.Random) -> dict[str, float]:
    """An opening whose corners lie within an inch of square, read with a tape of 1/32 in rms."""
    width, height = chance.uniform(20, 70), chance.uniform(20, 80)
    left, right, top_right, top_left = (
        complex(x + chance.uniform(-0.5, 0.5), y + chance.uniform(-0.5, 0.5))
        for x, y in ((0, 0), (width, 0), (width, height), (0, height))
    )
    lengths = {
        "jamb_width": abs(right - left),
        "head_width": abs(top_right - top_left),
        "left_jamb_height": abs(top_left - left),
        "right_jamb_height": abs(top_right - right),
        "diagonal_from_bottom_left": abs(top_right - left),
        "diagonal_from_bottom_right": abs(top_left - right),
    }
    return {name: length + chance.gauss(0, 1 / 32) for name, length in lengths.items()}


def _alarms(readings: dict[str, float]) -> bool:
    """Whether the readings, to the nearest 1/64, are found to disagree, or refused."""
    texts = {name: f"{mixed(Fraction(round(value * 64), 64))} in" for name, value in readings.items()}
    request = converted({**WINDOW, "readings": texts}, OpeningRequest)
    return any(one.code == "readings-disagree" for one in build_opening(request).findings)


def test_true_openings_seldom_alarm() -> None:
    chance = random.Random(3)
    assert sum(_alarms(_readings(chance)) for _ in range(2000)) <= 30


@pytest.mark.parametrize(("slip", "found"), [(0.5, 0.97), (1.0, 0.99)])
def test_slips_are_found(slip: float, found: float) -> None:
    chance = random.Random(5)
    alarms = 0
    for _ in range(1000):
        readings = _readings(chance)
        readings[chance.choice(list(readings))] += chance.choice((slip, -slip))
        alarms += _alarms(readings)
    assert alarms >= 1000 * found
