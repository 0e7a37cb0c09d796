"""Arches and polygons through the service: their marks and settings, laid out here, come back to where they began."""

from __future__ import annotations

import cmath
import itertools
import math
from collections.abc import Iterator
from copy import deepcopy
from itertools import pairwise
from typing import Any

import pytest

from asking import Service
from dryfit.chain import Laid, jamb, lay, misfits, openings, outside

ARCH: dict[str, Any] = {
    "mark": "A1",
    "bottom": "floor",
    "readings": {"jamb_width": "30 5/8 in", "jamb_height": "40 in", "rise": "15 in", "head_pieces": 40},
    "trim": {"casing": {"width": "2 1/2 in", "thickness": "5/8 in"}, "reveal": "3/16 in"},
}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def asked(service: Service, request: dict[str, Any]) -> dict[str, Any] | None:
    """The answer; None where the random shape has a corner too sharp or too flat, or a piece without length."""
    answer = service.post("/v1/opening", request)
    if answer.status_code == 422:
        codes = {fault["code"] for fault in answer.json()["errors"]}
        assert codes <= {"angle-out-of-range", "piece-vanishes", "does-not-close", "not-convex"}, codes
        return None
    found: dict[str, Any] = answer.json()
    return found


@pytest.mark.parametrize("to", ["1/8 in", "1/16 in", "1/32 in"])
def test_arches_and_polygons_close_within_a_step_and_every_corner_within_one_and_a_half(
    service: Service, to: str
) -> None:
    checked = alike = 0
    for kind, request in openings(120, 7, to):
        answer = asked(service, request)
        if answer is None:
            continue
        checked += 1
        assert answer["closings"][0]["closes"], request
        assert misfits(request, answer) == [], request
        laid = lay(request, answer)
        if kind == "regular" and request["bottom"] == "casing":
            alike += 1
            assert len(set(laid.marks)) <= 2
    assert checked > 80
    assert alike > 5


def test_at_a_64th_they_close_from_seven_pieces_on_and_else_a_finding_says_what_is_left(
    service: Service,
) -> None:
    for _, request in openings(200, 11, "1/64 in"):
        answer = asked(service, request)
        if answer is None:
            continue
        assert misfits(request, answer) == [], request
        (closing,) = answer["closings"]
        assert closing["closes"] or len(lay(request, answer).keys) <= 6
        assert (closing["least_gap"] is None) is closing["closes"]


@pytest.mark.parametrize(("width", "pieces", "least"), [("92 in", 3, 0.0249), ("85 in", 4, 0.0016)])
def test_a_few_long_pieces_that_do_not_close_are_found_with_the_least_gap_there_is(
    service: Service, width: str, pieces: int, least: float
) -> None:
    """The least gap was found once more by trying every mark and setting."""
    body = {**ARCH, "bottom": "casing", "rounding": {"to": "1/64 in"}}
    body["readings"] = {"jamb_width": width, "rise": f"{int(width[:2]) // 3} in", "head_pieces": pieces}
    body["trim"] = {"casing": {"width": "3 in", "thickness": "5/8 in"}, "reveal": "1/4 in"}
    answer = service.post("/v1/opening", body).json()
    (closing,) = answer["closings"]
    assert misfits(body, answer) == []
    assert max(lay(body, answer).gaps) > 1
    assert not closing["closes"]
    assert float(closing["least_gap"].split()[0]) == pytest.approx(least, abs=1e-4)
    assert _least(body) == pytest.approx(least, abs=1e-4)
    (found,) = [one for one in answer["findings"] if one["code"] == "stands-open"]
    assert [offer["answer"] for offer in found["offers"]] == ["bevel_gauge"]
    assert "No way of rounding leaves less" in found["detail"]


def _least(body: dict[str, Any]) -> float:
    """The least gap at the end of all ways to take one of the two nearest marks and settings, inches."""
    ends = outside(jamb(body["readings"]), 3.25, ring=True)
    runs = [end - start for start, end in pairwise([ends[-1], *ends])]
    ways = []
    for run in runs:
        marks = {math.floor(abs(run) * 64), math.ceil(abs(run) * 64)}
        turn = math.degrees(cmath.phase(run)) * 10
        turns = {math.floor(round(turn, 6)), math.ceil(round(turn, 6))}
        ways.append([cmath.rect(m / 64, math.radians(t / 10)) for m in marks for t in turns])
    return min(abs(sum(cut)) for cut in itertools.product(*ways))


def test_forty_pieces_reach_the_far_springing(service: Service) -> None:
    """Each rounded by itself, forty pieces miss it by half an inch."""
    answer = service.post("/v1/opening", ARCH).json()
    laid = lay(ARCH, answer)
    assert misfits(ARCH, answer) == []
    alone = [round(length * 16) / 16 for length in laid.exact]
    off = sum(mark - length for mark, length in zip(alone, laid.exact, strict=True))
    assert abs(off) > 0.5
    inner = laid.marks[2:-2]
    assert len(inner) == 38
    assert len(set(inner)) == 2
    assert inner == inner[::-1]


def test_the_residual_and_the_joint_error_are_those_of_the_mark_that_was_taken(service: Service) -> None:
    answer = service.post("/v1/opening", ARCH).json()
    farther = 0
    for piece in answer["pieces"]:
        length = piece["long_point"]
        if piece["kind"] != "head_casing":
            continue
        residual = float(length["residual"].split()[0])
        whole, _, part = length["text"].removesuffix(" in").rpartition(" ")
        above, _, below = part.partition("/")
        mark = float(whole or 0) + float(above) / float(below or 1)
        assert mark - length["real"] == pytest.approx(residual, abs=1e-6)
        farther += abs(residual) > 1 / 32
        assert float(piece["joint_error"].split()[0]) == pytest.approx(abs(residual), rel=0.01, abs=1e-4)
    assert farther > 0


def test_a_back_band_closes_too(service: Service) -> None:
    body = deepcopy(ARCH)
    body["trim"]["back_band"] = {"width": "1 in", "thickness": "1 in", "lap": "1/4 in"}
    answer = service.post("/v1/opening", body).json()
    casing, band = answer["closings"]
    assert (casing["first"], band["first"]) == ("side_casing/right", "back_band/right")
    laid: Laid = lay(body, answer, 1, past=0.75)
    assert max(laid.gaps) <= 1.5
    assert laid.gaps[-1] <= 1
    assert max(laid.off) <= 1


@pytest.mark.parametrize(
    "changed",
    [
        {"rounding": {"to": "1/16 in", "mode": "up"}},
        {"readings": {"jamb_width": "30 5/8 in", "jamb_height": "40 in"}},
        {
            "readings": {
                "jamb_width": "30 5/8 in",
                "head_width": "30 1/2 in",
                "jamb_height": "46 in",
                "diagonal_from_bottom_left": "55 1/8 in",
            }
        },
    ],
)
def test_what_is_rounded_by_itself_states_no_closing(service: Service, changed: dict[str, Any]) -> None:
    assert service.post("/v1/opening", {**ARCH, **changed}).json()["closings"] == []


def test_a_house_has_the_same_pieces_and_its_sheet_says_what_to_try_first(service: Service) -> None:
    alone = service.post("/v1/opening", ARCH).json()
    opening = {name: value for name, value in ARCH.items() if name != "trim"} | {"trim": "house"}
    house = {"openings": [opening], "trim_specs": {"house": ARCH["trim"]}, "stock": []}
    (answer,) = service.post("/v1/cut-list", house).json()["openings"]
    assert answer["closings"] == alone["closings"]
    assert answer["pieces"] == alone["pieces"]
    sheet = service.post("/v1/sheets/opening-sheet", house, accept="text/html").text
    assert "The 42 pieces are rounded together" in sheet
    assert "dry before the rest is cut" in sheet
