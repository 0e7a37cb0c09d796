"""Sentences speak the unit of the house they are about, as every other length of the answer does."""

import re
from collections.abc import Iterator
from typing import Any

import pytest

from asking import Service

METRIC = {"unit": "mm", "rounding": {"to": "1 mm"}}
TRIM = {
    "casing": {"width": "64 mm", "thickness": "16 mm"},
    "stool": {"thickness": "19 mm", "horn": "19 mm", "nosing": "22 mm"},
    "apron": {"width": "64 mm", "thickness": "16 mm"},
    "reveal": "5 mm",
}
READINGS = {"jamb_width": "778 mm", "jamb_height": "1180 mm", "jamb_depth": "100 mm"}
WINDOW: dict[str, Any] = {"mark": "K1", "readings": READINGS, "trim": TRIM, **METRIC}
INCHES = re.compile(r"\d in\b")


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def test_a_finding_of_a_metric_house_is_in_millimeters(service: Service) -> None:
    clear = READINGS | {"clearances": {"left": "50 mm"}}
    answer = service.opening(WINDOW | {"readings": clear})
    finding = next(one for one in answer["findings"] if one["code"] == "casing-collides")
    assert finding["detail"] == "The left casing would run 19 mm into what stands 50 mm from the jamb."
    assert not INCHES.search(str([one["detail"] for one in answer["findings"]]))


def test_a_note_of_a_metric_house_is_in_millimeters(service: Service) -> None:
    depths = {
        "jamb_width": "778 mm",
        "jamb_height": "1180 mm",
        "left_depth": "100 mm",
        "right_depth": "93 mm",
    }
    (stool,) = (
        one for one in service.opening(WINDOW | {"readings": depths})["pieces"] if one["kind"] == "stool"
    )
    assert "at the right end the nosing stands 7 mm further off the wall" in stool["notes"][0]


def test_the_same_in_inches_is_in_inches(service: Service) -> None:
    asked = WINDOW | {"readings": READINGS | {"clearances": {"left": "50 mm"}}, "rounding": {"to": "1/16 in"}}
    finding = service.opening(asked)["findings"][0]
    assert finding["detail"] == "The left casing would run 3/4 in into what stands 1 15/16 in from the jamb."


def test_what_cannot_be_built_of_a_metric_house_is_refused_in_millimeters(service: Service) -> None:
    short = READINGS | {"jamb_height": "20 mm"}
    problem = service.post("/v1/opening", WINDOW | {"bottom": "plinth", "readings": short}).json()
    wide = service.post("/v1/opening", WINDOW | {"trim": TRIM | {"reveal": "25 mm"}}).json()
    assert wide["errors"][0]["detail"].startswith("A reveal of 25 mm leaves the casing no jamb to lie on")
    assert not INCHES.search(str([problem, wide]))


def test_one_answer_does_not_speak_as_the_one_before_it(service: Service) -> None:
    """Pieces and sentences are remembered, but not the unit they were said in."""
    for _ in range(2):
        test_a_note_of_a_metric_house_is_in_millimeters(service)
        inches = WINDOW | {
            "readings": {
                "jamb_width": "778 mm",
                "jamb_height": "1180 mm",
                "left_depth": "100 mm",
                "right_depth": "93 mm",
            },
            "rounding": {"to": "1/16 in"},
        }
        (stool,) = (one for one in service.opening(inches)["pieces"] if one["kind"] == "stool")
        assert "stands 1/4 in further off the wall" in stool["notes"][0]


def test_a_sheet_of_a_metric_house_is_in_millimeters(service: Service) -> None:
    depths = {
        "jamb_width": "778 mm",
        "jamb_height": "1180 mm",
        "left_depth": "100 mm",
        "right_depth": "93 mm",
    }
    asked = {
        "openings": [{"mark": "K1", "readings": depths, "trim": "plain"}],
        "trim_specs": {"plain": TRIM},
        **METRIC,
    }
    notes = service.post("/v1/sheets/opening-sheet", asked).json()["notes"]
    assert any("the nosing stands 7 mm further off the wall" in note for note in notes)
    assert not INCHES.search(" ".join(notes))
