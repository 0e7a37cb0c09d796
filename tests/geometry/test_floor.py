"""A door on a floor out of level: a level held to the floor says whether head or feet are out of square.

The worked figures: 36 between plumb sides, the left one 80 and the right one 80 1/2, reveal 3/16, casing 2 1/2.
Common practice, no published source; the angles are plain trigonometry, atan(1/2 / 36) = 0.7957 degrees.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from asking import Service
from dryfit import dry_fit
from dryfit.openings import mixed

DOOR: dict[str, Any] = {
    "mark": "D1",
    "bottom": "floor",
    "readings": {"jamb_width": "36 in", "left_jamb_height": "80 in", "right_jamb_height": "80 1/2 in"},
    "trim": {"casing": {"width": "2 1/2 in", "thickness": "5/8 in"}, "reveal": "3/16 in"},
}
SLOPE = math.degrees(math.atan2(0.5, 36))


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def door(**readings: Any) -> dict[str, Any]:
    return {**DOOR, "readings": {**DOOR["readings"], **readings}}


def pieces_of(answer: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {piece["key"]: piece for piece in answer["pieces"]}


def miters(piece: dict[str, Any]) -> dict[str, float]:
    return {end["at"]: end["miter_degrees"] for end in piece["ends"]}


def test_with_no_level_held_to_the_floor_a_raked_head_is_taken_and_said_to_be(service: Service) -> None:
    answer = service.opening(DOOR)
    pieces = pieces_of(answer)
    # The left side is the shorter, so the head rises to the right: 90 + 0.7957 at the left, halved.
    assert miters(pieces["head_casing"])["left"] == pytest.approx(45 - SLOPE / 2, abs=1e-4)
    assert miters(pieces["head_casing"])["right"] == pytest.approx(45 + SLOPE / 2, abs=1e-4)
    assert miters(pieces["side_casing/left"])["foot"] == 0
    (found,) = [one for one in answer["findings"] if one["code"] == "head-or-floor"]
    assert found["field"] == "/readings/right_jamb_height"
    assert "1/2 in longer" in found["detail"]
    assert "44.60 degrees at the left and 45.40 at the right" in found["detail"]
    assert [offer["answer"] for offer in found["offers"]] == ["read_floor", "floor_is_level"]
    assert "1/2 in low at the right" in found["offers"][0]["detail"]


def test_a_floor_that_is_low_by_the_difference_leaves_the_head_level(service: Service) -> None:
    answer = service.opening(door(sill={"low": "right", "by": "1/2 in"}))
    assert [one["code"] for one in answer["findings"]] == []
    pieces = pieces_of(answer)
    head = pieces["head_casing"]
    assert miters(head) == {"left": 45.0, "right": 45.0}
    assert (head["short_point"]["exact"], head["long_point"]["exact"]) == (
        "291/8",
        "331/8",
    )  # 36 3/8 and 41 3/8
    left, right = pieces["side_casing/left"], pieces["side_casing/right"]
    for leg in (left, right):
        assert miters(leg) == pytest.approx({"head": 45.0, "foot": SLOPE}, abs=1e-4)
    # The floor falls to the right: at the left leg's outer edge it lies higher, at the right leg's lower.
    per_inch = 0.5 / 36
    for leg, height, sign in ((left, 80.0, 1), (right, 80.5, -1)):
        short = height + 0.1875 - sign * 0.1875 * per_inch
        assert leg["short_point"]["real"] == pytest.approx(short, abs=1e-6)
        assert leg["long_point"]["real"] == pytest.approx(short + 2.5 - sign * 2.5 * per_inch, abs=1e-6)
    said = " ".join(answer["notes"])
    assert "1/2 in out of level from jamb to jamb" in said
    assert "0.80 degrees off square" in said
    assert "the head is level" in said


def test_a_floor_that_is_read_level_settles_that_the_head_is_raked(service: Service) -> None:
    raked = service.opening(DOOR)
    answer = service.opening(door(sill={"low": "left", "by": "0 in"}))
    assert [one["code"] for one in answer["findings"]] == []
    assert answer["pieces"] == raked["pieces"]
    assert any("its left end lies 1/2 in lower" in note for note in answer["notes"])


def test_what_the_floor_does_not_explain_is_left_to_the_head(service: Service) -> None:
    answer = service.opening(door(sill={"low": "right", "by": "3/8 in"}))
    rest = math.degrees(math.atan2(0.125, 36))
    head = miters(pieces_of(answer)["head_casing"])
    assert head == pytest.approx({"left": 45 - rest / 2, "right": 45 + rest / 2}, abs=1e-4)
    assert any("its left end lies 1/8 in lower" in note for note in answer["notes"])


def test_equal_heights_over_a_floor_out_of_level_have_a_head_as_far_out(service: Service) -> None:
    sill = {"low": "left", "by": "1/4 in"}
    readings = {"jamb_width": "36 in", "jamb_height": "80 in", "sill": sill}
    body = {**DOOR, "readings": readings, "square_gap": "0 in"}
    answer = service.opening(body)
    slope = math.degrees(math.atan2(0.25, 36))
    pieces = pieces_of(answer)
    assert miters(pieces["head_casing"]) == pytest.approx(
        {"left": 45 - slope / 2, "right": 45 + slope / 2}, abs=1e-4
    )
    assert miters(pieces["side_casing/left"])["foot"] == pytest.approx(slope, abs=1e-4)


def test_plinths_and_a_floor_clearance_go_with_the_floor(service: Service) -> None:
    body = door(sill={"low": "right", "by": "1/2 in"})
    plain = pieces_of(service.opening(body))["side_casing/left"]["short_point"]["real"]
    raised = {**body, "trim": {**body["trim"], "floor_clearance": "1/2 in"}}
    cleared = pieces_of(service.opening(raised))["side_casing/left"]["short_point"]["real"]
    # Half an inch square off the floor is as much along a leg as the slope's secant makes of it.
    assert plain - cleared == pytest.approx(0.5 / math.cos(math.radians(SLOPE)), abs=1e-6)
    for foot in ("floor", "plinth"):
        on = {**raised, "bottom": foot}
        on["trim"] = {**on["trim"], "plinth": {"width": "3 in", "height": "6 in", "thickness": "1 in"}}
        assert dry_fit(on, service.opening(on)) == []


REFUSED: list[tuple[dict[str, Any], str, str]] = [
    ({"horns": {"left": "1 in"}}, "/horns/left", "no-stool"),
    ({"horns": {"right": "0 in"}}, "/horns/right", "no-stool"),
    ({"widths": {"sill": "2 in"}}, "/widths/sill", "no-bottom-casing"),
    ({"widths": {"apron": "2 in"}}, "/widths/apron", "no-apron"),
    ({"reveals": {"sill": "1/4 in"}}, "/reveals/sill", "no-bottom-casing"),
    (
        {
            "readings": {
                "jamb_width": "36 in",
                "rise": "8 in",
                "head_pieces": 6,
                "jamb_height": "70 in",
                "sill": {"low": "left", "by": "1/4 in"},
            }
        },
        "/readings/sill",
        "level-not-used",
    ),
    (
        {
            "readings": {
                "door": {"width": "30 in", "height": "80 in"},
                "sill": {"low": "left", "by": "1/4 in"},
            }
        },
        "/readings/sill",
        "level-not-used",
    ),
]


@pytest.mark.parametrize(("sent", "pointer", "code"), REFUSED, ids=[one[1] + one[2] for one in REFUSED])
@pytest.mark.parametrize("foot", ["floor", "plinth"])
def test_what_a_floor_has_no_use_for_is_refused_at_its_field(
    service: Service, foot: str, sent: dict[str, Any], pointer: str, code: str
) -> None:
    trim = {**DOOR["trim"], "plinth": {"width": "3 in", "height": "6 in", "thickness": "1 in"}}
    plain = {
        **DOOR,
        "bottom": foot,
        "trim": trim,
        "readings": {"jamb_width": "36 in", "jamb_height": "80 in"},
    }
    assert service.post("/v1/opening", plain).status_code == 200
    answer = service.post("/v1/opening", {**plain, **sent})
    assert answer.status_code == 422
    assert [(fault["pointer"], fault["code"]) for fault in answer.json()["errors"]] == [(pointer, code)]


def eighths(least: int, most: int) -> st.SearchStrategy[Fraction]:
    return st.integers(least * 8, most * 8).map(lambda count: Fraction(count, 8))


@settings(max_examples=60, deadline=None)
@given(
    left=eighths(70, 90),
    fall=st.integers(-16, 16).map(lambda count: Fraction(count, 8)),
    width=eighths(24, 72),
)
def test_a_head_that_the_floor_makes_level_is_cut_as_over_a_level_floor(
    service: Service, left: Fraction, fall: Fraction, width: Fraction
) -> None:
    """Whatever the floor does, a level head is the same piece, and both feet are as much out of square."""
    readings = {
        "jamb_width": f"{mixed(width)} in",
        "left_jamb_height": f"{mixed(left)} in",
        "right_jamb_height": f"{mixed(left + fall)} in",
        "sill": {"low": "right" if fall > 0 else "left", "by": f"{mixed(abs(fall))} in"},
    }
    body = {**DOOR, "readings": readings, "square_gap": "0 in"}
    answer = service.opening(body)
    assert dry_fit(body, answer) == []
    level = {**body, "readings": {"jamb_width": readings["jamb_width"], "jamb_height": f"{mixed(left)} in"}}
    pieces, plain = pieces_of(answer), pieces_of(service.opening(level))
    assert pieces["head_casing"] == plain["head_casing"]
    feet = [miters(pieces[f"side_casing/{side}"])["foot"] for side in ("left", "right")]
    assert feet == pytest.approx([abs(math.degrees(math.atan2(fall, width)))] * 2, abs=1e-4)
