"""The dry fit of the trade's other styles finds a piece cut wrongly, too."""

import copy
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

import pytest

from asking import Service
from dryfit import dry_fit

STRIP = {"height": "1/2 in", "depth": "1 1/4 in", "overhang": "3/4 in", "ends": "mitered_return"}
CASING = {"width": "2 1/2 in", "thickness": "3/4 in"}
STOOL = {"thickness": "1 in", "horn": "3 in", "nosing": "1 in", "ends": "mitered_return"}


def window(foot: str, **trim: Any) -> dict[str, Any]:
    return {
        "mark": "A1",
        "bottom": foot,
        "readings": {"jamb_width": "30 in", "jamb_height": "50 in", "jamb_depth": "3 in"},
        "trim": {"casing": CASING, "reveal": "1/4 in", **trim},
    }


STYLES = {
    "blocks": window(
        "casing", head_style="corner_blocks", corner_block={"width": "3 in", "thickness": "1 in"}
    ),
    "dressed head": window(
        "floor",
        head_style="butted",
        overhang="1/2 in",
        fillet=STRIP | {"profile": "fillet"},
        cap=STRIP | {"profile": "cap"},
    ),
    "band": window("floor", back_band={"width": "1 in", "thickness": "1 in", "lap": "1/4 in"}),
    "returned horns": window("stool", stool=STOOL),
}
WRONG = [
    ("blocks", "corner_block/left", "overall"),
    ("blocks", "side_casing/right", "overall"),
    ("blocks", "head_casing", "overall"),
    ("blocks", "bottom_casing", "overall"),
    ("dressed head", "side_casing/left", "overall"),
    ("dressed head", "head_casing", "overall"),
    ("dressed head", "fillet", "overall"),
    ("dressed head", "cap", "overall"),
    ("dressed head", "cap", "ends"),
    ("dressed head", "fillet_return/left", "overall"),
    ("dressed head", "cap_return/right", "ends"),
    ("band", "back_band/left", "overall"),
    ("band", "back_band/head", "overall"),
    ("band", "back_band/right", "ends"),
    ("returned horns", "stool", "overall"),
    ("returned horns", "stool", "ends"),
    ("returned horns", "stool_return/left", "overall"),
    ("returned horns", "stool_return/right", "ends"),
]


@pytest.fixture(scope="module")
def answers() -> Iterator[dict[str, Any]]:
    with Service() as service:
        yield {name: service.opening(request) for name, request in STYLES.items()}


@pytest.mark.parametrize("style", STYLES)
def test_the_untouched_answer_fits(answers: dict[str, Any], style: str) -> None:
    assert dry_fit(STYLES[style], answers[style]) == []
    assert dry_fit(STYLES[style], answers[style], as_marked=True) == []


@pytest.mark.parametrize(("style", "key", "figure"), WRONG)
def test_a_piece_cut_wrongly_is_found(answers: dict[str, Any], style: str, key: str, figure: str) -> None:
    tampered = copy.deepcopy(answers[style])
    (piece,) = [each for each in tampered["pieces"] if each["key"] == key]
    if figure == "ends":
        mitered = next(end for end in piece["ends"] if end["miter_direction"])
        mitered["miter_direction"] = {"left": "right", "right": "left"}[mitered["miter_direction"]]
    else:
        piece[figure]["exact"] = str(Fraction(piece[figure]["exact"]) + Fraction(1, 64))
    assert dry_fit(STYLES[style], tampered) != []
