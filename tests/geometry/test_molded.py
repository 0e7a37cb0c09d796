"""Molded casing of which a piece is ripped: mitered on the bisector at the stock's width, then ripped, the wider
neighbor's tip trimmed in line with it.

The figures were worked by hand from the trade's rule, on a window of 30 5/8 by 46 1/4 with a reveal of 3/16 and casing
of 2 1/2, a leg ripped to 1 1/2. Common practice, no published source.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from asking import Service
from dryfit import dry_fit
from dryfit.openings import mixed

CASING: dict[str, Any] = {"width": "2 1/2 in", "thickness": "5/8 in"}
WINDOW: dict[str, Any] = {
    "mark": "A1",
    "readings": {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"},
    "widths": {"left": "1 1/2 in"},
    "trim": {
        "casing": CASING,
        "reveal": "3/16 in",
        "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
        "apron": {"width": "2 1/2 in", "thickness": "5/8 in"},
    },
}
FRAME = {**WINDOW, "bottom": "casing", "readings": {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in"}}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def with_casing(body: dict[str, Any], **casings: Any) -> dict[str, Any]:
    return {**body, "trim": {**body["trim"], **casings}}


def pieces_of(service: Service, body: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {piece["key"]: piece for piece in service.opening(body)["pieces"]}


def figures(piece: dict[str, Any]) -> tuple[str, ...]:
    return tuple(piece[name]["text"] for name in ("short_point", "overall", "long_point", "width"))


def miters(piece: dict[str, Any]) -> dict[str, float]:
    return {end["at"]: end["miter_degrees"] for end in piece["ends"]}


def test_the_leg_is_mitered_at_full_width_and_ripped_after(service: Service) -> None:
    leg = pieces_of(service, WINDOW)["side_casing/left"]
    # H + r; H + r + c before it is ripped; H + r + 1 1/2 after.
    assert figures(leg) == ("46 7/16 in", "48 15/16 in", "47 15/16 in", "1 1/2 in")
    assert leg["mitered_width"]["text"] == "2 1/2 in"
    assert leg["rip_width"]["text"] == "1 1/2 in"
    assert miters(leg) == {"head": 45.0, "foot": 0.0}
    (note,) = leg["notes"]
    assert "2 1/2 in wide, 48 15/16 in along" in note
    assert "rip that edge to 1 1/2 in; it is 47 15/16 in" in note


def test_the_heads_tip_is_trimmed_plumb_with_the_leg(service: Service) -> None:
    head = pieces_of(service, WINDOW)["head_casing"]
    # W + 2 r; W + 2 (r + c) as it is cut; an inch less where the left leg's outside edge lies an inch in.
    assert figures(head) == ("31 in", "36 in", "35 in", "2 1/2 in")
    assert miters(head) == {"left": 45.0, "right": 45.0}
    tips = {
        end["at"]: end["tip"] and (end["tip"]["along"]["text"], end["tip"]["across"]["text"])
        for end in head["ends"]
    }
    assert tips == {"left": ("1 in", "1 in"), "right": None}
    assert head["mitered_width"] is None


def test_what_is_as_wide_as_its_neighbors_is_as_it_was(service: Service) -> None:
    pieces = pieces_of(service, WINDOW)
    right = pieces["side_casing/right"]
    assert figures(right) == ("46 7/16 in", "48 15/16 in", "48 15/16 in", "2 1/2 in")
    assert (
        pieces["apron"]["overall"]["text"] == "35 in"
    )  # flush with the casing's outside edges, one an inch in


def test_all_ripped_alike_is_mitered_at_full_width_and_keeps_its_tips(service: Service) -> None:
    alike = {**FRAME, "widths": dict.fromkeys(("left", "right", "head", "sill"), "1 1/2 in")}
    pieces = pieces_of(service, alike)
    # W + 2 r; W + 2 (r + 2 1/2); W + 2 (r + 1 1/2)
    assert figures(pieces["head_casing"]) == ("31 in", "36 in", "34 in", "1 1/2 in")
    for piece in pieces.values():
        assert piece["mitered_width"]["text"] == "2 1/2 in"
        assert set(miters(piece).values()) == {45.0}
        assert [end["tip"] for end in piece["ends"]] == [None, None]


def test_flat_stock_keeps_its_unequal_miters(service: Service) -> None:
    flat = pieces_of(service, with_casing(WINDOW, casing={**CASING, "face": "flat"}))
    # The joint runs 2 1/2 over the leg's 1 1/2: atan(2.5 / 1.5) and its complement.
    assert miters(flat["side_casing/left"])["head"] == pytest.approx(59.0362, abs=1e-4)
    assert miters(flat["head_casing"]) == pytest.approx({"left": 30.9638, "right": 45.0}, abs=1e-4)
    assert figures(flat["side_casing/left"]) == ("46 7/16 in", "48 15/16 in", "48 15/16 in", "1 1/2 in")
    assert flat["side_casing/left"]["mitered_width"] is None
    assert service.opening(with_casing(WINDOW, casing={**CASING, "face": "flat"}))["findings"] == []


MISMATCHED = [
    # casing of the legs, of the head, and what differs; None where both meet
    ({}, {"profile": "crown"}, "profile being different"),
    ({}, {"width": "3 in"}, "width being different"),
    ({}, {"thickness": "3/4 in"}, "thickness being different"),
    ({"face": "flat"}, {}, "face being different"),
    ({"face": "flat"}, {"face": "flat", "thickness": "3/4 in"}, "shows its end grain"),
    ({"face": "flat"}, {"face": "flat", "width": "3 1/2 in", "profile": "1x4"}, None),
    ({}, {}, None),
]


@pytest.mark.parametrize(("legs", "head", "says"), MISMATCHED)
def test_two_profiles_or_thicknesses_at_a_miter_are_found_with_ways_out(
    service: Service, legs: dict[str, Any], head: dict[str, Any], says: str | None
) -> None:
    body = with_casing({**WINDOW, "widths": {}}, casing={**CASING, **legs}, head_casing={**CASING, **head})
    found = [one for one in service.opening(body)["findings"] if one["code"] == "miter-does-not-meet"]
    if says is None:
        assert found == []
        return
    (one,) = found
    assert says in one["detail"]
    assert one["field"] == "/trim/head_casing"
    answers = [offer["answer"] for offer in one["offers"]]
    assert {"one_stock", "corner_blocks", "butt_head"} <= set(answers)
    ways = {
        "butt_head": {"head_style": "butted"},
        "corner_blocks": {
            "head_style": "corner_blocks",
            "corner_block": {"width": "3 in", "thickness": "3/4 in"},
            "reveal": "3/8 in",  # which the block's corner must not run past
        },
        "one_stock": {"head_casing": {**CASING, **legs}},
    }
    for way in ways.values():
        settled = service.opening(with_casing(body, **way))
        assert "miter-does-not-meet" not in [one["code"] for one in settled["findings"]]


def test_leaning_molding_of_two_widths_is_found(service: Service) -> None:
    wall = [{"proud": "1/4 in"}] * 4
    body = {**WINDOW, "wall_answer": "lean", "readings": {**WINDOW["readings"], "wall": wall}}
    found = [one for one in service.opening(body)["findings"] if one["code"] == "miter-does-not-meet"]
    assert [one["field"] for one in found] == ["/widths/left"]
    body["widths"] = {}
    assert "miter-does-not-meet" not in [one["code"] for one in service.opening(body)["findings"]]


def at(piece: dict[str, Any], place: str) -> dict[str, Any]:
    (end,) = [end for end in piece["ends"] if end["at"] == place]
    return end  # type: ignore[no-any-return]


WRONG: dict[str, Callable[[dict[str, Any], dict[str, Any]], None]] = {
    "the leg's miter for its ripped width": lambda leg, _: at(leg, "head").update(miter_degrees=59.04),
    "the head's miter for two widths": lambda _, head: at(head, "left").update(miter_degrees=30.96),
    "a leg cut as long as it is put up": lambda leg, _: leg.update(overall=leg["long_point"]),
    "a leg never ripped": lambda leg, _: leg.update(width=leg["mitered_width"], mitered_width=None),
    "a tip left on": lambda _, head: at(head, "left").update(tip=None),
    "a tip trimmed too far": lambda _, head: at(head, "left")["tip"]["along"].update(exact="33/32"),
    "a tip trimmed too deep": lambda _, head: at(head, "left")["tip"]["across"].update(exact="33/32"),
}


@pytest.mark.parametrize("wrong", WRONG)
def test_a_dry_fit_finds_a_wrong_cut_of_it(service: Service, wrong: str) -> None:
    answer = service.opening(WINDOW)
    assert dry_fit(WINDOW, answer) == []
    pieces = {piece["key"]: piece for piece in answer["pieces"]}
    WRONG[wrong](pieces["side_casing/left"], pieces["head_casing"])
    assert dry_fit(WINDOW, answer) != []


def eighths(least: int, most: int) -> st.SearchStrategy[str]:
    return st.integers(least * 8, most * 8).map(lambda count: f"{mixed(Fraction(count, 8))} in")


@settings(max_examples=80, deadline=None)
@given(
    left=eighths(40, 60),
    right=eighths(40, 60),
    widths=st.fixed_dictionaries({}, optional=dict.fromkeys(("left", "right", "head"), eighths(1, 2))),
)
def test_both_pieces_of_every_molded_miter_take_half_the_corner(
    service: Service, left: str, right: str, widths: dict[str, str]
) -> None:
    """Of a raked head the corners are known by the two heights: 90 degrees and the rake, or less it."""
    size = {"jamb_width": "30 in", "left_jamb_height": left, "right_jamb_height": right, "jamb_depth": "3 in"}
    pieces = pieces_of(service, {**WINDOW, "readings": size, "widths": widths, "square_gap": "0 in"})
    rise = sum(map(Fraction, left.split()[:-1])) - sum(map(Fraction, right.split()[:-1]))
    rake = math.degrees(math.atan2(rise, 30))
    # Where the left side is the higher the head comes down to the right: its left corner is the sharper one.
    for side, inside in (("left", 90 - rake), ("right", 90 + rake)):
        leg, head = miters(pieces[f"side_casing/{side}"])["head"], miters(pieces["head_casing"])[side]
        assert leg == pytest.approx(90 - inside / 2, abs=1e-3)
        assert head == pytest.approx(90 - inside / 2, abs=1e-3)
