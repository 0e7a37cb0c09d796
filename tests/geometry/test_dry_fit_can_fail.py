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
    "readings": {"jamb_width": "30 5/8 in", "leg_height": "46 1/4 in", "jamb_depth": "3 1/8 in"},
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


def part(answer: Answer, key: str) -> dict[str, Any]:
    (found,) = [each for each in answer["parts"] if each["key"] == key]
    return found


def longer(key: str, figure: str, by: str = "1/64") -> Callable[[Answer], None]:
    """Make one length of a piece longer by very little."""

    def change(answer: Answer) -> None:
        length = part(answer, key)[figure]
        length["exact"] = str(Fraction(length["exact"]) + Fraction(by))

    return change


def end(key: str, index: int, **fields: Any) -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        part(answer, key)["ends"][index].update(fields)

    return change


def notch(index: int, figure: str, wrong: str = "3") -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        part(answer, "stool")["ends"][index]["notch"][figure]["exact"] = wrong

    return change


def swapped(one: str, other: str) -> Callable[[Answer], None]:
    """Two pieces of a pair taken for each other."""

    def change(answer: Answer) -> None:
        first, second = part(answer, one), part(answer, other)
        for name in ("ends", "marks"):
            first[name], second[name] = second[name], first[name]

    return change


def mark(key: str, index: int) -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        part(answer, key)["marks"][index]["at"]["exact"] = "10"

    return change


def lost(key: str) -> Callable[[Answer], None]:
    def change(answer: Answer) -> None:
        answer["parts"] = [each for each in answer["parts"] if each["key"] != key]

    return change


WRONG: dict[str, Callable[[Answer], None]] = {
    "right leg long": longer("casing_leg/right", "overall"),
    "left leg short": longer("casing_leg/left", "overall", "-1/64"),
    "head long": longer("casing_head/head", "overall"),
    "short point told wrongly": longer("casing_leg/left", "short_point"),
    "long point told wrongly": longer("casing_head/head", "long_point"),
    "width told wrongly": longer("casing_head/head", "width"),
    "mitre a tenth of a degree off": end("casing_head/head", 0, mitre_degrees=45.1),
    "mitre swung the wrong way": end("casing_leg/right", 0, swing="left"),
    "foot out of square": end("casing_leg/left", 0, mitre_degrees=0.1, swing="left"),
    "ends misnamed": end("casing_leg/right", 0, at="foot"),
    "long edge misnamed": end("casing_head/head", 1, long_edge="inner"),
    "left and right legs mixed up": swapped("casing_leg/left", "casing_leg/right"),
    "leg mark off": mark("casing_leg/left", 0),
    "head mark off": mark("casing_head/head", 0),
    "head forgotten": lost("casing_head/head"),
    "stool long": longer("stool", "overall"),
    "stool ripped wide": longer("stool", "rip_width"),
    "notch too shallow": notch(0, "depth"),
    "notch too deep": notch(1, "depth", "101/32"),
    "notch too short": notch(1, "length"),
    "stool mark off": mark("stool", 2),
    "apron long": longer("apron", "overall"),
    "apron mark off": mark("apron", 0),
    "apron bevelled the wrong way": end("apron", 0, tilt="right"),
    "apron end square": end("apron", 1, bevel_degrees=0.0),
    "return long": longer("apron_return/left", "overall"),
    "return bevelled the wrong way": end("apron_return/right", 0, tilt="right"),
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
@pytest.mark.parametrize("key", ["casing_leg/right", "casing_head/head", "stool", "apron"])
def test_a_text_off_by_one_mark_is_found(answer: Answer, key: str, figure: str) -> None:
    tampered = copy.deepcopy(answer)
    part(tampered, key)["overall"][figure] = {"text": "36 1/16 in", "residual": "1/16 in"}[figure]
    assert dry_fit(WINDOW, answer, as_marked=True) == []
    assert dry_fit(WINDOW, tampered, as_marked=True) != []
