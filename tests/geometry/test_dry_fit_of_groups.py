"""What openings share, laid over them from the cut list's answer alone."""

import copy
import json
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import assume, given, note, settings

from asking import Service
from dryfit.rows import rows
from dryfit.shared import fit_shared
from dryfit.tape import as_cut, rounding_error, unrounded


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


TRIM = {
    "casing": {"width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
    "apron": {"width": "2 1/2 in", "thickness": "5/8 in"},
}


@settings(max_examples=150)
@given(request=rows())
def test_what_a_group_shares_closes(service: Service, request: dict[str, Any]) -> None:
    note(json.dumps(request))
    response = service.post("/v1/cut-list", request)
    answer = response.json()
    if response.status_code == 422:
        assume({error["code"] for error in answer["errors"]} != {"no-joint-in-reach"})
    assert response.status_code == 200, answer
    assert fit_shared(request, answer, unrounded, 1e-9) == []
    away = sum(abs(rounding_error(piece["overall"])) for piece in answer["openings"][-1]["pieces"])
    assert fit_shared(request, answer, as_cut, away + 1e-9) == []


@pytest.mark.parametrize("figure", ["overall", "at", "ends", "missing"])
def test_what_is_cut_wrongly_is_found(service: Service, figure: str) -> None:
    openings = [
        {
            "mark": mark,
            "trim": "house",
            "readings": {"jamb_width": "40 in", "jamb_height": "48 in", "jamb_depth": "3 in"},
        }
        for mark in "AB"
    ]
    group = {
        "mark": "AB",
        "openings": ["A", "B"],
        "gaps": ["10 in"],
        "stock_length": "8 ft",
        "solid": ["45 in"],
    }
    request = {"openings": openings, "trim_specs": {"house": TRIM}, "groups": [group]}
    answer = service.post("/v1/cut-list", request).json()
    assert fit_shared(request, answer, unrounded, 1e-9) == []
    tampered = copy.deepcopy(answer)
    shared = tampered["openings"][-1]["pieces"]
    stool = next(piece for piece in shared if piece["key"] == "stool/2 of 2")
    if figure == "overall":
        stool["overall"]["exact"] += "1"
    elif figure == "at":
        stool["cutouts"][0]["at"]["exact"] = "1/64"
    elif figure == "ends":
        stool["ends"][0]["long_edge"] = "back"
    else:
        stool["cutouts"].clear()
    assert fit_shared(request, tampered, unrounded, 1e-9) != []
