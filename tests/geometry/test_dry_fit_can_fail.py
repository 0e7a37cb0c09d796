"""A dry fit is worth something only if it finds a piece cut wrongly. Each wrong cut here must be found."""

import copy
from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import Any

import pytest

from asking import Service
from dryfit import dry_fit

Answer = dict[str, Any]

WINDOW: dict[str, Any] = {
    "mark": "A1",
    "readings": {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"},
    "trim": {
        "casing": {"width": "2 1/2 in", "thickness": "5/8 in"},
        "reveal": "3/16 in",
        "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
        "apron": {"width": "2 1/2 in", "thickness": "5/8 in"},
    },
}


@pytest.fixture(scope="module")
def answer() -> Iterator[Answer]:
    with Service() as service:
        yield service.opening(WINDOW)


def piece(answer: Answer, key: str) -> dict[str, Any]:
    (found,) = [each for each in answer["pieces"] if each["key"] == key]
    return found


def longer(key: str, figure: str, by: str = "1/64") -> Callable[[Answer], None]:
    """Make one length of a piece longer by very little."""

    def change(answer: Answer) -> None:
        length = piece(answer, key)[figure]
        length["exact"] = str(Fraction(length["exact"]) + Fraction(by))

    return change


def end(key: str, index: int, **fields: Any) -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        piece(answer, key)["ends"][index].update(fields)

    return change


def notch(index: int, figure: str, wrong: str = "3") -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        piece(answer, "stool")["ends"][index]["notch"][figure]["exact"] = wrong

    return change


def swapped(one: str, other: str) -> Callable[[Answer], None]:
    """Two pieces of a pair taken for each other."""

    def change(answer: Answer) -> None:
        first, second = piece(answer, one), piece(answer, other)
        for name in ("ends", "marks"):
            first[name], second[name] = second[name], first[name]

    return change


def mark(key: str, index: int) -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        piece(answer, key)["marks"][index]["at"]["exact"] = "10"

    return change


def lost(key: str) -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        answer["pieces"] = [each for each in answer["pieces"] if each["key"] != key]

    return change


WRONG: dict[str, Callable[[Answer], None]] = {
    "right leg long": longer("side_casing/right", "overall"),
    "left leg short": longer("side_casing/left", "overall", "-1/64"),
    "head long": longer("head_casing", "overall"),
    "short point told wrongly": longer("side_casing/left", "short_point"),
    "long point told wrongly": longer("head_casing", "long_point"),
    "width told wrongly": longer("head_casing", "width"),
    "miter a tenth of a degree off": end("head_casing", 0, miter_degrees=45.1),
    "miter swung the wrong way": end("side_casing/right", 0, miter_direction="left"),
    "foot out of square": end("side_casing/left", 0, miter_degrees=0.1, miter_direction="left"),
    "ends misnamed": end("side_casing/right", 0, at="foot"),
    "long edge misnamed": end("head_casing", 1, long_edge="inner"),
    "left and right legs mixed up": swapped("side_casing/left", "side_casing/right"),
    "leg mark off": mark("side_casing/left", 0),
    "head mark off": mark("head_casing", 0),
    "head forgotten": lost("head_casing"),
    "stool long": longer("stool", "overall"),
    "stool ripped wide": longer("stool", "rip_width"),
    "notch too shallow": notch(0, "depth"),
    "notch too deep": notch(1, "depth", "101/32"),
    "notch too short": notch(1, "length"),
    "stool mark off": mark("stool", 2),
    "apron long": longer("apron", "overall"),
    "apron mark off": mark("apron", 0),
    "apron beveled the wrong way": end("apron", 0, bevel_direction="right"),
    "apron end square": end("apron", 1, bevel_degrees=0.0),
    "return long": longer("apron_return/left", "overall"),
    "return beveled the wrong way": end("apron_return/right", 0, bevel_direction="right"),
    "returns mixed up": swapped("apron_return/left", "apron_return/right"),
    "return forgotten": lost("apron_return/right"),
}


def test_the_untouched_answer_fits(answer: Answer) -> None:
    assert dry_fit(WINDOW, answer) == []


@pytest.mark.parametrize("wrong", WRONG)
def test_a_piece_cut_wrongly_is_found(answer: Answer, wrong: str) -> None:
    tampered = copy.deepcopy(answer)
    WRONG[wrong](tampered)
    assert dry_fit(WINDOW, tampered) != []


@pytest.mark.parametrize("figure", ["text", "residual"])
@pytest.mark.parametrize("key", ["side_casing/right", "head_casing", "stool", "apron"])
def test_a_text_off_by_one_mark_is_found(answer: Answer, key: str, figure: str) -> None:
    tampered = copy.deepcopy(answer)
    piece(tampered, key)["overall"][figure] = {"text": "36 1/16 in", "residual": "1/16 in"}[figure]
    assert dry_fit(WINDOW, answer, as_marked=True) == []
    assert dry_fit(WINDOW, tampered, as_marked=True) != []
