"""The dry fit of mulls, extensions, leaning casing and door jambs finds what is cut wrongly, too."""

import copy
from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import Any

import pytest

from asking import Service
from dryfit import dry_fit
from dryfit.refusals import unfounded

CASING = {"width": "2 1/2 in", "thickness": "3/4 in"}
BARE = {"casing": CASING, "reveal": "1/4 in"}
STOOL = {"thickness": "1 in", "horn": "3/4 in", "nosing": "1 in"}
SIZE = {"jamb_width": "30 in", "jamb_height": "50 in"}


def asked(foot: str, readings: dict[str, Any], trim: dict[str, Any], **fields: Any) -> dict[str, Any]:
    return {"mark": "A1", "bottom": foot, "readings": readings, "trim": BARE | trim, **fields}


OPENINGS = {
    "mulls": asked(
        "stool",
        {
            "joined_widths": ["24 in", "30 in"],
            "mull_widths": ["4 in"],
            "jamb_height": "50 in",
            "jamb_depth": "3 in",
        },
        {"stool": STOOL, "mull_casing": {"width": "3 in", "thickness": "5/8 in"}},
    ),
    "lining": asked(
        "casing",
        SIZE | {"wall": [{"proud": "1/2 in"}, {"proud": "3/8 in"}, {"proud": "1/4 in"}, {"proud": "1/2 in"}]},
        {"extension": {"thickness": "3/4 in", "reveal": "1/8 in", "corners": "mitered"}},
        wall_answer="extend",
    ),
    "leaning": asked("casing", SIZE | {"wall": [{"proud": "1/4 in"}] * 4}, {}, wall_answer="lean"),
    "door": asked(
        "floor",
        {"door": {"width": "30 in", "height": "80 in"}},
        {"stop": {"width": "1 1/4 in", "thickness": "3/8 in", "corners": "mitered"}},
    ),
    "raked lean": asked(
        "floor",
        {
            "jamb_width": "30 in",
            "left_jamb_height": "50 in",
            "right_jamb_height": "44 in",
            "wall": [{"proud": "1/4 in"}, {"proud": "1/8 in"}, {"proud": "3/8 in"}, {"shy": "1/8 in"}],
        },
        {"head_casing": {"width": "3 in", "thickness": "3/4 in"}},
        wall_answer="lean",
    ),
    "raked blocks": asked(
        "floor",
        {"jamb_width": "30 in", "left_jamb_height": "50 in", "right_jamb_height": "44 in"},
        {"head_style": "corner_blocks", "corner_block": {"width": "2 3/4 in", "thickness": "1 in"}},
    ),
    "ripped, angled, scribed": asked(
        "stool",
        SIZE | {"jamb_depth": "3 in", "left_horn_depth": "3 1/8 in", "sill": {"low": "left", "by": "1/4 in"}},
        {
            "stool": STOOL | {"scribe": "1/8 in"},
            "apron": {"width": "2 1/2 in", "thickness": "5/8 in", "ends": "angled"},
        },
        widths={"left": "2 in", "apron": "2 in"},
        horns={"right": "1/2 in"},
        sill_answer="tapered_shim",
    ),
}


@pytest.fixture(scope="module")
def answers() -> Iterator[dict[str, Any]]:
    with Service() as service:
        yield {name: service.opening(request) for name, request in OPENINGS.items()}


def longer(*path: Any) -> Callable[[dict[str, Any]], None]:
    """A sixty-fourth on a length that is exact or real."""

    def change(piece: dict[str, Any]) -> None:
        for step in path:
            piece = piece[step]
        if piece["exact"] is not None:
            piece["exact"] = str(Fraction(piece["exact"]) + Fraction(1, 64))
        else:
            piece["real"] += 1 / 64

    return change


def turned(name: str, amount: float) -> Callable[[dict[str, Any]], None]:
    def change(piece: dict[str, Any]) -> None:
        piece["ends"][0][name] += amount

    return change


def tipped(piece: dict[str, Any]) -> None:
    end = piece["ends"][0]
    end["bevel_direction"] = {"left": "right", "right": "left"}[end["bevel_direction"]]


WRONG = [
    ("mulls", "mull_casing/1", longer("overall")),
    ("mulls", "stool", longer("cutouts", 0, "at")),
    ("mulls", "stool", longer("cutouts", 0, "length")),
    ("mulls", "stool", longer("cutouts", 0, "depth")),
    ("lining", "jamb_extension/head", longer("overall")),
    ("lining", "jamb_extension/left", longer("taper", "left")),
    ("lining", "jamb_extension/left", turned("bevel_degrees", 1)),
    ("lining", "side_casing/left", longer("overall")),
    ("leaning", "head_casing", longer("overall")),
    ("leaning", "side_casing/left", turned("miter_degrees", 0.1)),
    ("leaning", "side_casing/left", turned("bevel_degrees", 0.1)),
    ("raked lean", "head_casing", longer("overall")),
    ("raked lean", "head_casing", longer("short_point")),
    ("raked lean", "side_casing/left", longer("width")),
    ("raked lean", "side_casing/left", turned("miter_degrees", 0.1)),
    ("raked lean", "side_casing/left", turned("bevel_degrees", 0.01)),
    ("raked lean", "side_casing/right", tipped),
    ("raked blocks", "corner_block/left", longer("overall")),
    ("raked blocks", "head_casing", longer("overall")),
    ("raked blocks", "side_casing/right", longer("overall")),
    ("raked blocks", "side_casing/left", turned("miter_degrees", 0.1)),
    ("ripped, angled, scribed", "side_casing/left", longer("width")),
    ("ripped, angled, scribed", "side_casing/left", longer("rip_width")),
    ("ripped, angled, scribed", "stool", longer("ends", 0, "notch", "depth")),
    ("ripped, angled, scribed", "stool", longer("ends", 0, "notch", "end_depth")),
    ("ripped, angled, scribed", "stool", longer("ends", 1, "notch", "length")),
    ("ripped, angled, scribed", "stool", longer("overall")),
    ("ripped, angled, scribed", "apron", longer("width")),
    ("ripped, angled, scribed", "apron", longer("short_point")),
    ("ripped, angled, scribed", "apron", turned("miter_degrees", 1)),
    ("ripped, angled, scribed", "tapered_shim", longer("overall")),
    ("ripped, angled, scribed", "tapered_shim", longer("taper", "left")),
    ("door", "jamb_leg/hinge", longer("marks", 1, "at")),
    ("door", "jamb_leg/strike", longer("marks", 1, "at")),
    ("door", "head_jamb", longer("width")),
    ("door", "jamb_leg/hinge", longer("overall")),
    ("door", "head_jamb", longer("overall")),
    ("door", "door_stop/left", longer("overall")),
    ("door", "door_stop/head", longer("overall")),
]


@pytest.mark.parametrize("name", OPENINGS)
def test_the_untouched_answer_fits(answers: dict[str, Any], name: str) -> None:
    assert dry_fit(OPENINGS[name], answers[name]) == []
    assert dry_fit(OPENINGS[name], answers[name], as_marked=True) == []


@pytest.mark.parametrize(("name", "key", "change"), WRONG)
def test_what_is_cut_wrongly_is_found(
    answers: dict[str, Any], name: str, key: str, change: Callable[[dict[str, Any]], None]
) -> None:
    tampered = copy.deepcopy(answers[name])
    (piece,) = [each for each in tampered["pieces"] if each["key"] == key]
    change(piece)
    assert dry_fit(OPENINGS[name], tampered) != []


def test_a_board_bevelled_the_wrong_way_is_found(answers: dict[str, Any]) -> None:
    tampered = copy.deepcopy(answers["lining"])
    tipped(next(piece for piece in tampered["pieces"] if piece["key"] == "jamb_extension/head"))
    with pytest.raises(AssertionError):
        dry_fit(OPENINGS["lining"], tampered)


@pytest.mark.parametrize("code", ["piece-vanishes", "block-too-narrow", "anything-else"])
@pytest.mark.parametrize("name", ["raked blocks", "lining", "ripped, angled, scribed"])
def test_refusing_what_can_be_built_is_found(name: str, code: str) -> None:
    assert unfounded(OPENINGS[name], {code}) == [code]


def test_a_leg_wider_than_its_block_and_casing_wider_than_its_frame_are_rightly_refused() -> None:
    wide = {"trim": OPENINGS["raked blocks"]["trim"] | {"casing": CASING | {"width": "2 11/16 in"}}}
    steep = {"readings": {"jamb_width": "30 in", "left_jamb_height": "70 in", "right_jamb_height": "44 in"}}
    assert unfounded(OPENINGS["raked blocks"] | wide | steep, {"block-too-narrow"}) == []
    thin = asked("casing", {"sides": ["30 in"] * 3}, {"reveal": "1/4 in"})
    assert unfounded(thin, {"piece-vanishes"}) == ["piece-vanishes"]
    flat = {"jamb_width": "40 in", "jamb_height": "2 in", "rise": "20 in", "head_pieces": 9}
    broad = asked("floor", flat, {"head_casing": {"width": "6 in", "thickness": "3/4 in"}})
    assert unfounded(broad, {"piece-vanishes"}) == []
