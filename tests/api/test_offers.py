"""Every answer that a finding offers, sent back as it was offered, settles what was found; or it says why not."""

import copy
import json
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, note, settings
from hypothesis import strategies as st

from asking import Service
from dryfit.openings import mixed

CASING = {"width": "2 1/2 in", "thickness": "5/8 in"}
STOOL = {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"}
APRON = {"width": "2 1/2 in", "thickness": "5/8 in"}
PLINTH = {"profile": "plinth", "width": "3 in", "height": "6 in", "thickness": "1 in"}
EXTENSION = {"thickness": "3/4 in"}
Draw = st.DrawFn

DONE_BY_HAND = {
    "caulk",
    "plane_wall",
    "plane_jamb",
    "fur_wall",
    "thin_stool",
    "enlarge_framing",
    "thin_jamb",
    "pack_framing",
    "fur_head",
    "shim",
    "stop_head_short",
    "rip_block",
    "share_mull_casing",
    "saw_curve",
    "wider_nosing",
    "thinner_casing",
    "take_again",
    "say_flat",
    "one_stock",
    "corner_blocks",
    "butt_head",
    "back_band",
    "same_widths",
    "read_floor",
    "floor_is_level",
}
"""Answers that no field takes up: they are work on the wall, the framing or the trim, or a matter of two openings."""
ANSWERS = {
    "casing-collides": {"rip_casing", "rip_and_return_casing", "share_mull_casing"},
    "horn-collides": {"shorten_horn", "butt_stool"},
    "head-collides": {"rip_casing"},
    "plinth-collides": {"rip_block"},
    "head-overhang-collides": {"stop_head_short"},
    "sill-collides": {"rip_casing"},
    "stool-collides": {"thin_stool"},
    "apron-collides": {"drop_apron", "rip_apron"},
    "wall-proud": {"caulk", "plane_wall", "lean_casing", "extend_jamb"},
    "jamb-proud": {"caulk", "plane_jamb", "fur_wall"},
    "sill-out-of-level": {"shim", "tapered_shim"},
    "rough-opening-too-small": {"enlarge_framing"},
    "rough-opening-tight": {"thin_jamb"},
    "rough-opening-loose": {"pack_framing"},
    "heads-out-of-line": {"line_up_head", "fur_head"},
    "arch-covers-daylight": {"more_pieces", "saw_curve"},
    "readings-disagree": {"take_again"},
    "casing-past-stool": {"wider_nosing", "thinner_casing"},
    "miter-does-not-meet": {
        "say_flat",
        "one_stock",
        "corner_blocks",
        "butt_head",
        "back_band",
        "same_widths",
    },
    "reading-unusual": {"take_again", "confirm"},
    "head-or-floor": {"read_floor", "floor_is_level"},
}
"""Every kind of finding, and every answer that it may offer."""
SAYS_WHY = ("cannot be sent as things are", "does not settle it alone")


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def inches(least: int, most: int) -> st.SearchStrategy[str]:
    return st.integers(least * 32, most * 32).map(lambda number: f"{mixed(Fraction(number, 32))} in")


@st.composite
def crowded(draw: Draw) -> dict[str, Any]:
    """An opening with things in the way, a wall out of plane, a sill out of level, or several of these."""
    foot = draw(st.sampled_from(("stool", "stool", "floor", "plinth", "casing")))
    style = draw(st.sampled_from(("mitered", "mitered", "butted", "corner_blocks", "banded")))
    if foot == "casing" and style == "butted":
        style = "mitered"
    trim: dict[str, Any] = {"casing": CASING, "reveal": "3/16 in"}
    if style == "butted":
        trim |= {"head_style": style, "overhang": draw(st.sampled_from(("0 in", "1/2 in", "2 in")))}
        if draw(st.booleans()):
            trim["cap"] = {"profile": "cap", "height": "3/4 in", "depth": "1 in", "overhang": "1 in"}
    if style == "corner_blocks":
        trim |= {"head_style": style, "corner_block": {"width": "2 3/4 in", "thickness": "1 in"}}
    if style == "banded":
        trim["back_band"] = {"width": "1 in", "thickness": "1 in", "lap": "1/4 in"}
    if foot == "stool":
        trim |= {"stool": STOOL} | ({"apron": APRON} if draw(st.booleans()) else {})
    if foot == "plinth":
        trim["plinth"] = PLINTH
    if draw(st.booleans()):
        trim["extension"] = EXTENSION | {"corners": draw(st.sampled_from(("butted", "mitered")))}
    readings: dict[str, Any] = {"jamb_width": draw(inches(20, 50)), "jamb_depth": "3 1/8 in"}
    readings |= draw(
        st.sampled_from(
            (
                {"jamb_height": "46 1/4 in"},
                {"left_jamb_height": "48 in", "right_jamb_height": "44 in"},
                {"head_width": "31 in", "jamb_height": "50 in", "bottom_left_angle": 91.0},
                {"sides": ["40 in", "30 in", "50 in", "60 in"], "angles": [90, 126.8699, 53.1301, 90]},
                {"jamb_height": "40 in", "rise": "8 in", "head_pieces": 3},
            )
        )
    )
    if "sides" in readings or "head_width" in readings or "rise" in readings:
        readings["jamb_width"] = "30 in"
    if "sides" in readings:
        del readings["jamb_width"]
    kinds = ("left", "right", "above", "below", "left_neighbor", "right_neighbor")
    clear = draw(st.fixed_dictionaries({}, optional=dict.fromkeys(kinds, inches(0, 7))))
    if draw(st.integers(0, 9)) == 0:
        clear["below"] = "1/2 in"
    readings["clearances"] = {name: room for name, room in clear.items() if room != "0 in"}
    if draw(st.booleans()):
        count = 6 if "rise" in readings else 4
        off = st.sampled_from(({}, {"proud": "1/16 in"}, {"proud": "1/8 in"}, {"proud": "1/2 in"}))
        shy = st.sampled_from(({"shy": "1/32 in"}, {"shy": "1/8 in"}, {"shy": "1/4 in"}))
        readings["wall"] = [draw(off | shy) for _ in range(count)]
    plumb = not {"sides", "head_width", "rise"} & readings.keys()
    if (foot == "stool" or plumb) and draw(st.booleans()):
        readings["sill"] = {"low": draw(st.sampled_from(("left", "right"))), "by": "3/16 in"}
    to = draw(st.sampled_from(("1/16 in", "1 mm")))
    return {"mark": "A1", "bottom": foot, "readings": readings, "trim": trim, "rounding": {"to": to}}


def what(finding: dict[str, Any]) -> tuple[str, str, bool]:
    """What tells one finding of an opening from another."""
    return finding["code"], finding["side"], "neighbor" in finding["detail"]


def sent(request: dict[str, Any], *offers: dict[str, Any]) -> dict[str, Any]:
    """The request with offers taken up: each value written where its field points."""
    changed = copy.deepcopy(request)
    for offer in offers:
        *way, last = offer["field"].removeprefix("/").split("/")
        at = changed
        for step in way:
            at = at[int(step)] if isinstance(at, list) else at.setdefault(step, {})
        at[last] = offer["value"]
    return changed


def check(service: Service, path: str, request: dict[str, Any], findings: Any) -> set[tuple[str, str, bool]]:
    """Take up every offer by itself; gives which answers were met, and whether each was taken up."""
    met: set[tuple[str, str, bool]] = set()
    for finding in findings(service.post(path, request).json()):
        code = finding["code"]
        assert ANSWERS[code] >= {offer["answer"] for offer in finding["offers"]}, finding
        for offer in finding["offers"]:
            met.add((code, offer["answer"], offer["field"] is not None))
            if offer["field"] is None:
                assert offer["value"] is None
                told = any(why in offer["detail"] for why in SAYS_WHY)
                assert told or offer["answer"] in DONE_BY_HAND, offer
                continue
            assert offer["answer"] not in DONE_BY_HAND
            answer = service.post(path, sent(request, offer))
            assert answer.status_code == 200, (offer, answer.json())
            assert what(finding) not in map(what, findings(answer.json())), offer
    return met


@settings(max_examples=400, deadline=None)
@given(request=crowded())
def test_every_offer_of_an_opening_can_be_sent_back_as_it_came(
    service: Service, request: dict[str, Any]
) -> None:
    note(json.dumps(request))
    answer = service.post("/v1/opening", request)
    if answer.status_code == 422:  # not every style goes with every shape
        styles = {
            "butted-many-heads",
            "blocks-many-heads",
            "corner-count",
            "piece-vanishes",
            "joint-too-sharp",
            "block-too-wide",
            "block-too-narrow",
        }
        assert {error["code"] for error in answer.json()["errors"]} <= styles, answer.json()
        return
    check(service, "/v1/opening", request, found_at_opening)


def window(foot: str = "stool", **readings: Any) -> dict[str, Any]:
    trim = {"casing": CASING, "reveal": "3/16 in", "stool": STOOL, "apron": APRON, "extension": EXTENSION}
    size = {"jamb_width": "30 in", "jamb_height": "50 in", "jamb_depth": "3 in"}
    return {"mark": "A1", "bottom": foot, "readings": size | readings, "trim": trim}


def among(foot: str = "stool", **clear: str) -> dict[str, Any]:
    return window(foot, clearances=clear)


def door(width: str, height: str) -> dict[str, Any]:
    asked = window("floor")
    size = {"width": "30 in", "height": "80 in", "rough_width": width, "rough_height": height}
    return asked | {"readings": {"door": size}}


def butted(overhang: str, **clear: str) -> dict[str, Any]:
    asked = among("floor", **clear)
    return asked | {"trim": asked["trim"] | {"head_style": "butted", "overhang": overhang}}


def on_blocks(**clear: str) -> dict[str, Any]:
    asked = among("plinth", **clear)
    return asked | {"trim": asked["trim"] | {"plinth": PLINTH}}


def with_thick_casing() -> dict[str, Any]:
    asked = window()
    return asked | {"trim": asked["trim"] | {"casing": {**CASING, "thickness": "1 3/4 in"}}}


def with_head(**head: str) -> dict[str, Any]:
    asked = window()
    return asked | {"trim": asked["trim"] | {"head_casing": CASING | head}}


OPENINGS = [
    with_head(thickness="3/4 in"),
    window(wall=[{"proud": "1/4 in"}] * 4) | {"wall_answer": "lean", "widths": {"left": "2 in"}},
    window(jamb_width="305 in"),
    window("floor", jamb_height=None, left_jamb_height="80 in", right_jamb_height="80 1/2 in"),
    on_blocks(left="2 1/2 in", right_neighbor="5 in"),
    among(left="2 1/2 in"),
    among(right="3 in", left_neighbor="4 in"),
    among("floor", above="2 in"),
    butted("2 in", left="3 in"),
    among("casing", below="2 in"),
    among(below="1/2 in"),
    among(below="2 1/2 in"),
    window(wall=[{"proud": "1/32 in"}] * 4),
    window(wall=[{"proud": "1/8 in"}] * 4),
    window(wall=[{"shy": "1/32 in"}] * 4),
    window(wall=[{"shy": "1/8 in"}] * 4),
    window(sill={"low": "left", "by": "1/4 in"}),
    door("30 in", "82 in"),
    door("32 1/8 in", "84 in"),
    door("36 in", "85 in"),
    window(rise="8 in", head_pieces=4, jamb_height="40 in"),
    window(rise="8 in", departure="1/2 in", jamb_height="40 in"),
    with_thick_casing(),
    window(head_width="30 in", diagonal_from_bottom_left="58 3/8 in", diagonal_from_bottom_right="59 in"),
]


def group(heads: list[str], **opening: Any) -> dict[str, Any]:
    readings = {"jamb_width": "30 in", "jamb_height": "50 in", "jamb_depth": "3 in"}
    openings = [
        {"mark": f"W{number}", "trim": "house", "readings": readings, **opening}
        for number in range(len(heads))
    ]
    trims = {"house": {"casing": CASING, "reveal": "3/16 in", "stool": STOOL, "apron": APRON}}
    named = [one["mark"] for one in openings]
    return {
        "openings": [{**openings[0], "mark": "K0"}, *openings],
        "trim_specs": trims,
        "groups": [{"mark": "row", "openings": named, "heads": heads}],
    }


def found_at_opening(body: dict[str, Any]) -> list[dict[str, Any]]:
    findings: list[dict[str, Any]] = body["findings"]
    return findings


def found_in_house(body: dict[str, Any]) -> list[dict[str, Any]]:
    return [finding for one in body["openings"] for finding in one["findings"]]


def test_several_heads_out_of_line_are_lined_up_by_all_of_their_offers(service: Service) -> None:
    request = group(["79 7/8 in", "80 in", "79 3/4 in"])
    (finding,) = found_in_house(service.post("/v1/cut-list", request).json())
    assert [offer["field"] for offer in finding["offers"]] == [
        "/openings/1/reveals/head",
        "/openings/3/reveals/head",
    ]
    for offer in finding["offers"]:
        assert "every head" in offer["detail"]
    answer = service.post("/v1/cut-list", sent(request, *finding["offers"]))
    assert answer.status_code == 200
    assert found_in_house(answer.json()) == []


HOUSES = [group(["80 in", "79 7/8 in"]), group(["80 in", "79 in"])]


def test_every_kind_of_answer_can_be_sent_back_or_says_why_not(service: Service) -> None:
    met: set[tuple[str, str, bool]] = set()
    for request in OPENINGS:
        met |= check(service, "/v1/opening", request, found_at_opening)
    for request in HOUSES:
        met |= check(service, "/v1/cut-list", request, found_in_house)
    offered = {(code, answer) for code, answers in ANSWERS.items() for answer in answers}
    assert {(code, answer) for code, answer, _ in met} == offered
    taken_up = {answer for _, answer, by_field in met if by_field}
    assert taken_up == {answer for _, answer in offered} - DONE_BY_HAND - {"butt_stool"}


def test_an_answer_that_wants_more_than_its_field_says_what(service: Service) -> None:
    request = window(wall=[{"proud": "1/2 in"}] * 4)
    del request["trim"]["extension"]
    finding = service.post("/v1/opening", request).json()["findings"][0]
    extend = next(offer for offer in finding["offers"] if offer["answer"] == "extend_jamb")
    assert (extend["field"], extend["value"]) == (None, None)
    assert "needs the extension's stock" in extend["detail"]
    (shared, _) = service.post("/v1/opening", among(left_neighbor="4 in")).json()["findings"][0]["offers"]
    assert shared["field"] is None
    assert "`joined_widths` and `mull_widths`" in shared["detail"]
