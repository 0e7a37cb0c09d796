"""What cannot be trimmed: each a clear problem that says where and what to do, quickly, and the service goes on."""

import copy
import json
from collections.abc import Iterator
from time import perf_counter
from typing import Any

import httpx
import pytest

from asking import Service

SOON = 2.0
"""Seconds: generous, for a busy machine. What takes long takes minutes."""

WINDOW: dict[str, Any] = {
    "mark": "A1",
    "readings": {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"},
    "trim": {
        "casing": {"width": "2 1/2 in", "thickness": "5/8 in"},
        "reveal": "3/16 in",
        "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
        "apron": {"width": "2 1/2 in", "thickness": "5/8 in"},
        "plinth": {"width": "4 in", "height": "6 in", "thickness": "1 in"},
    },
}
FRAMED: dict[str, Any] = {"mark": "P1", "bottom": "casing", "trim": WINDOW["trim"]}
HOUSE: dict[str, Any] = {
    "trim_specs": {"plain": WINDOW["trim"]},
    "openings": [WINDOW | {"trim": "plain"}],
    "stock": [{"profile": "casing", "sticks": [{"length": "8 ft", "price": "9.20"}]}],
}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    """One service for all of it: it answers a good request after every bad one."""
    with Service() as service:
        yield service


def with_(base: dict[str, Any], pointer: str, value: Any) -> dict[str, Any]:
    """A request with one field put in or changed."""
    body = copy.deepcopy(base)
    *steps, last = pointer.strip("/").split("/")
    at: Any = body
    for step in steps:
        at = at[int(step)] if isinstance(at, list) else at.setdefault(step, {})
    at[last] = value
    return body


def refused(service: Service, body: Any, path: str = "/v1/opening") -> dict[str, Any]:
    """The problem document of a request that must be refused, soon, with the service none the worse."""
    began = perf_counter()
    response = service.post(path, body)
    took = perf_counter() - began
    assert 400 <= response.status_code < 500, response.text
    assert response.headers["content-type"] == "application/problem+json"
    assert took < SOON
    assert service.post("/v1/opening", WINDOW).status_code == 200
    problem: dict[str, Any] = response.json()
    assert problem["status"] == response.status_code
    return problem


def told(problem: dict[str, Any]) -> list[tuple[str, str]]:
    return [(error["pointer"], error["code"]) for error in problem["errors"]]


LENGTHS = [
    ("30 5/8", "missing-unit"),
    ("34 1/0", "zero-denominator"),
    ("-3 in", "negative"),
    ("1e400 in", "exponent"),
    ("9" * 10_000 + " in", "too-long"),
    ("9" * 10_000, "too-long"),
    ("9" * 50 + " in", "too-many-digits"),
    ("9999999999999 in", "too-large"),
    ("0.0000000000001 in", "too-fine"),
    ("NaN", "not-finite"),
    ("Infinity in", "not-finite"),
    ("30 5/8 1/2", "not-a-length"),
    ("34 3/2 in", "improper-fraction"),
    ("5/3 in", "improper-fraction"),
    ("30 5/7 in", "not-on-a-tape"),
    ("1/1000000 in", "not-on-a-tape"),
    ("2.10'", "feet-or-inches"),
    ("34,5 in", "decimal-comma"),
    ("3 in 4 mm", "mixed-units"),
    ("30 5/8 furlongs", "unknown-unit"),
    ("about a yard", "not-a-length"),
    ("  ", "empty"),
    ("", "empty"),
    ("0 in", "zero"),
    ("34\u0000 in", "nul-character"),
    (30.625, "wrong-type"),
    (None, "missing"),
    (["34 in"], "wrong-type"),
]


@pytest.mark.parametrize(("text", "code"), LENGTHS, ids=lambda value: repr(value)[:24])
def test_a_length_that_cannot_be_read(service: Service, text: Any, code: str) -> None:
    problem = refused(service, with_(WINDOW, "/readings/jamb_width", text))
    assert told(problem) == [("/readings/jamb_width", code)]
    assert len(problem["errors"][0]["detail"]) > 20


@pytest.mark.parametrize("number", [b"NaN", b"Infinity", b"-Infinity"])
def test_a_number_that_json_does_not_have(service: Service, number: bytes) -> None:
    body = json.dumps(WINDOW).encode().replace(b'"30 5/8 in"', number)
    assert refused(service, body)["type"] == "/problems/malformed-body"


@pytest.mark.parametrize("number", [b"1e400", b"9" * 10_000, b"-3", b"30.625"])
def test_a_length_as_a_number_is_asked_for_as_text(service: Service, number: bytes) -> None:
    problem = refused(service, json.dumps(WINDOW).encode().replace(b'"30 5/8 in"', number))
    assert told(problem) == [("/readings/jamb_width", "wrong-type")]
    assert "with its unit" in problem["errors"][0]["detail"]


DOES_NOT_FIT: list[tuple[str, Any, str]] = [
    ("/trim/reveal", "13/16 in", "reveal-too-wide"),
    ("/trim/reveal", "3/4 in", "reveal-too-wide"),
    ("/trim/stool/horn", "-1 in", "negative"),
    ("/trim/stool/nosing", "-1/8 in", "negative"),
    ("/trim/stool/stock_width", "4 in", "stock-too-narrow"),
    ("/readings/jamb_depth", "0 in", "zero"),
    ("/readings/left_jamb_height", "57 in", "given-twice"),
    ("/readings/jamb_heigth", "57 in", "unknown-field"),
    ("/trim/casing/width", "0 mm", "zero"),
    ("/bottom", "stoop", "not-an-option"),
    ("/mark", "", "too-short"),
]


@pytest.mark.parametrize(("pointer", "value", "code"), DOES_NOT_FIT)
def test_trim_that_does_not_fit(service: Service, pointer: str, value: Any, code: str) -> None:
    problem = refused(service, with_(WINDOW, pointer, value))
    assert (pointer, code) in told(problem)


def test_lengths_in_sentences_read_as_a_tape_does(service: Service) -> None:
    wide = refused(service, with_(WINDOW, "/trim/stool/stock_width", "4 in"))
    assert "must be 4 5/8 in wide and its stock is 4 in" in wide["detail"]
    metric = refused(service, with_(WINDOW, "/reveals/left", "30 mm"))
    assert "A reveal of 1 3/16 in leaves" in metric["detail"]


def test_a_side_with_its_own_reveal_is_pointed_at(service: Service) -> None:
    problem = refused(service, with_(with_(WINDOW, "/reveals/left", "1 in"), "/reveals/head", "30 mm"))
    assert told(problem) == [("/reveals/left", "reveal-too-wide"), ("/reveals/head", "reveal-too-wide")]


def test_a_fault_of_one_reading_for_both_sides_is_told_once(service: Service) -> None:
    body = with_(WINDOW, "/readings", {"jamb_width": "34 in", "jamb_height": "40 in"})
    assert told(refused(service, body)) == [("/readings/jamb_depth", "depth-missing")]


def test_a_fault_of_a_trim_spec_is_told_once_for_all_its_openings(service: Service) -> None:
    openings = [WINDOW | {"mark": f"A{n}", "trim": "plain"} for n in range(20)]
    body = with_(HOUSE | {"openings": openings}, "/trim_specs/plain/reveal", "1 in")
    assert told(refused(service, body, "/v1/cut-list")) == [("/trim_specs/plain/reveal", "reveal-too-wide")]


SHAPES: list[tuple[str, dict[str, Any], str, str]] = [
    ("not convex", {"sides": ["10 in"] * 5, "angles": [90, 90, 90, 200, 70]}, "/angles/3", "not-convex"),
    ("no triangle", {"sides": ["10 in", "10 in", "30 in"]}, "/sides", "impossible-triangle"),
    ("flat triangle", {"sides": ["10 in", "10 in", "20 in"]}, "/sides", "impossible-triangle"),
    ("does not close", {"sides": ["10 in"] * 3 + ["50 in"], "angles": [90] * 4}, "/sides", "does-not-close"),
    (
        "angles do not add up",
        {"sides": ["10 in"] * 4, "angles": [90, 90, 90, 100]},
        "/angles",
        "does-not-close",
    ),
    ("too few angles", {"sides": ["10 in"] * 4, "angles": [90]}, "/angles", "angle-count"),
    ("no angles", {"sides": ["10 in"] * 4}, "/angles", "angle-count"),
    ("too sharp", {"sides": ["50 in", "50 in", "5 in"]}, "/sides", "angle-out-of-range"),
    ("two sides", {"sides": ["50 in"] * 2}, "/sides", "too-few"),
    ("25 sides", {"sides": ["5 in"] * 25}, "/sides", "too-many"),
    (
        "angles without sides",
        {"jamb_width": "9 in", "jamb_height": "9 in", "angles": [90]},
        "/angles",
        "sides-missing",
    ),
    ("sides and a width", {"sides": ["9 in"] * 3, "jamb_width": "9 in"}, "/jamb_width", "given-twice"),
    ("one height", {"jamb_width": "9 in", "left_jamb_height": "9 in"}, "/right_jamb_height", "missing"),
    ("no height", {"jamb_width": "9 in"}, "/jamb_height", "missing"),
    ("no width", {"jamb_height": "9 in"}, "/jamb_width", "missing"),
    ("nothing", {}, "/jamb_width", "missing"),
]


@pytest.mark.parametrize(
    ("readings", "pointer", "code"), [each[1:] for each in SHAPES], ids=[s[0] for s in SHAPES]
)
def test_an_impossible_shape(service: Service, readings: dict[str, Any], pointer: str, code: str) -> None:
    problem = refused(service, FRAMED | {"readings": readings})
    assert (f"/readings{pointer}", code) in told(problem)


@pytest.mark.parametrize(
    ("changes", "pointer"),
    [
        ({"bottom": "floor", "trim/floor_clearance": "60 in"}, "/readings/jamb_height"),
        ({"bottom": "floor", "trim/floor_clearance": "58 in"}, "/readings/jamb_height"),
        ({"bottom": "plinth", "trim/plinth/height": "58 1/16 in"}, "/readings/jamb_height"),
        ({"trim/apron/thickness": "21 in"}, "/readings/jamb_width"),
        (
            {
                "bottom": "floor",
                "trim/floor_clearance": "30 in",
                "readings": {"sides": ["20 in", "20 in", "20 in", "20 in"], "angles": [90.0] * 4},
            },
            "/readings/sides/1",
        ),
    ],
)
def test_a_piece_whose_short_point_would_be_negative(
    service: Service, changes: dict[str, Any], pointer: str
) -> None:
    body = WINDOW
    for name, value in changes.items():
        body = with_(body, name, value)
    problem = refused(service, body)
    assert (pointer, "piece-vanishes") in told(problem)
    assert "at its shorter edge" in problem["errors"][0]["detail"]


def test_a_piece_longer_than_any_stick_sold(service: Service) -> None:
    body = with_(HOUSE, "/stock/0/sticks/0/length", "4 ft")
    problem = refused(service, body, "/v1/cut-list")
    assert told(problem) == [("/openings/0", "piece-too-long")] * 2
    details = [error["detail"] for error in problem["errors"]]
    assert details[0].startswith(
        "Opening 'A1', left side casing: The piece is 48 15/16 in long and the longest clear stock, trimmed, "
        "is 47 in: 1 15/16 in short."
    )
    assert details[1].startswith("Opening 'A1', right side casing: ")


@pytest.mark.parametrize(
    ("pointer", "value", "code"),
    [
        ("/openings/0/trim", "other", "unknown-trim"),
        ("/openings/0/count", 0, "out-of-range"),
        ("/openings/0/count", 501, "out-of-range"),
        ("/openings", [], "too-few"),
        ("/trim_specs", {}, "too-few"),
        ("/stock/0/sticks/0/price", "-1", "wrong-form"),
        ("/stock/0/sticks/0/price", "1.999", "wrong-form"),
        ("/stock/0/sticks/0/length", "0 ft", "zero"),
        ("/kerf", "9 ft", "kerf-exceeds-stock"),
        ("/currency", "dollars", "wrong-form"),
    ],
)
def test_a_house_that_makes_no_sense(service: Service, pointer: str, value: Any, code: str) -> None:
    problem = refused(service, with_(HOUSE, pointer, value), "/v1/cut-list")
    assert (pointer, code) in told(problem)


def test_two_openings_of_one_mark(service: Service) -> None:
    problem = refused(service, HOUSE | {"openings": HOUSE["openings"] * 2}, "/v1/cut-list")
    assert told(problem) == [("/openings/1/mark", "duplicate-mark")]


def test_100_000_openings(service: Service) -> None:
    whole = json.dumps(HOUSE | {"openings": HOUSE["openings"] * 100_000}).encode()
    assert refused(service, whole, "/v1/cut-list")["type"] == "/problems/content-too-large"
    empty = refused(service, HOUSE | {"openings": [{}] * 100_000}, "/v1/cut-list")
    assert ("/openings", "too-many") in told(empty)


def test_more_openings_than_are_taken_at_once(service: Service) -> None:
    short = [{"mark": str(n), "trim": "plain", "readings": {"jamb_width": "9'"}} for n in range(5001)]
    problem = refused(service, HOUSE | {"openings": short}, "/v1/cut-list")
    assert ("/openings", "too-many") in told(problem)
    assert "5000" in problem["errors"][0]["detail"]


def test_every_fault_of_a_request_is_told_at_once(service: Service) -> None:
    body = {
        "mark": "",
        "bottom": "stol",
        "readings": {"jamb_width": "34", "jamb_height": "-3 in", "jamb_dept": "1 in"},
        "trim": {"casing": {"width": "wide", "thickness": 7}, "reveal": "1/0 in"},
    }
    assert {pointer for pointer, _ in told(refused(service, body))} == {
        "/mark",
        "/bottom",
        "/readings/jamb_width",
        "/readings/jamb_height",
        "/readings/jamb_dept",
        "/trim/casing/width",
        "/trim/casing/thickness",
        "/trim/reveal",
    }


def test_faults_of_many_openings_are_told_at_once(service: Service) -> None:
    sides = {"sides": ["9 in", "9 in", "90 in"]}
    openings = [FRAMED | {"mark": str(n), "readings": sides, "trim": "plain"} for n in range(3)]
    problem = refused(service, HOUSE | {"openings": openings}, "/v1/cut-list")
    assert told(problem) == [(f"/openings/{n}/readings/sides", "impossible-triangle") for n in range(3)]


@pytest.mark.parametrize(
    ("style", "shape"),
    [
        ("casing", {"jamb_width": "30 in", "jamb_height": "40 in"}),
        ("floor", {"sides": ["30 in"] * 3}),
        ("floor", {"jamb_width": "30 in", "jamb_height": "40 in", "rise": "10 in", "head_pieces": 5}),
    ],
)
def test_a_butted_head_needs_one_straight_head(service: Service, style: str, shape: dict[str, Any]) -> None:
    body = with_(WINDOW | {"bottom": style, "readings": shape}, "/trim/head_style", "butted")
    assert [pointer for pointer, _ in told(refused(service, body))] == ["/trim/head_style"]


@pytest.mark.parametrize(
    ("pointer", "value"),
    [
        ("/widths/head", "1/4 in"),
        ("/trim/head_casing", {"width": "1/2 in", "thickness": "3/4 in"}),
        ("/trim/casing/width", "1 in"),
    ],
)
def test_casing_narrower_than_the_wall_is_proud_cannot_lean(
    service: Service, pointer: str, value: Any
) -> None:
    leaning = with_(WINDOW | {"wall_answer": "lean"}, "/readings/wall", [{"proud": "3/4 in"}] * 4)
    assert told(refused(service, with_(leaning, pointer, value))) == [("/wall_answer", "leans-too-far")]


def test_a_bodys_own_faults(service: Service) -> None:
    for body in (b"", b"{", b"[" * 100_000, b'{"mark": "\xff"}', b"null", b"[]"):
        problem = refused(service, body)
        assert problem["type"] in ("/problems/malformed-body", "/problems/invalid-request")


def test_a_refusal_shows_nothing_of_the_inside(service: Service) -> None:
    response: httpx.Response = service.post("/v1/opening", with_(WINDOW, "/readings/jamb_width", "x" * 60))
    assert "Traceback" not in response.text
    assert "longpoint/" not in response.text


@pytest.mark.parametrize(
    ("path", "body", "pointer", "said"),
    [
        (
            "/v1/opening",
            WINDOW | {"jamb_width": "34 in"},
            "/jamb_width",
            "`jamb_width` belongs under `readings`.",
        ),
        (
            "/v1/cut-list",
            with_(HOUSE, "/openings/0/jamb_width", "34 in"),
            "/openings/0/jamb_width",
            "`jamb_width` belongs under `readings`.",
        ),
        (
            "/v1/opening",
            with_(
                with_(
                    with_(WINDOW, "/readings/joined_widths", ["20 in", "20 in"]), "/readings/mull_widths", []
                ),
                "/readings/jamb_width",
                None,
            ),
            "/readings/mull_widths",
            "Between 2 joined units one mull stands: give 1 `mull_widths`",
        ),
        (
            "/v1/opening",
            FRAMED | {"bottom": "plinth", "readings": {"jamb_width": "30 in", "jamb_height": "2 in"}},
            "/readings/jamb_height",
            "has no length left at its shorter edge: it is 3 13/16 in too short.",
        ),
        (
            "/v1/cut-list",
            with_(HOUSE, "/stock/0/sticks/0/price", 9.2),
            "/stock/0/sticks/0/price",
            'An amount of money is text: write it as "9.20".',
        ),
        ("/v1/cut-list", HOUSE | {"openings": []}, "/openings", "Too few items: send 1 or more; none came."),
    ],
)
def test_a_text_says_what_to_do(service: Service, path: str, body: Any, pointer: str, said: str) -> None:
    details = {error["pointer"]: error["detail"] for error in refused(service, body, path)["errors"]}
    assert said in details[pointer]
    assert " -" not in details[pointer], "no length is negative"


@pytest.mark.parametrize("path", ["/v1/cut-list", "/v1/sheets/material-list"])
def test_a_whole_number_may_have_a_point(service: Service, path: str) -> None:
    whole, pointed = (with_(HOUSE, "/openings/0/count", count) for count in (2, 2.0))
    answers = [service.post(path, body) for body in (whole, pointed)]
    assert [answer.status_code for answer in answers] == [200, 200]
    problem = refused(service, with_(HOUSE, "/openings/0/count", 2.5), path)
    assert told(problem) == [("/openings/0/count", "wrong-type")]


def test_an_opening_with_air_that_cannot_be(service: Service) -> None:
    air = {"temperature": 68, "relative_humidity": 45}
    conditions = {
        "species": "red_oak",
        "installed": air,
        "seasons": [{**air, "name": "winter", "moisture_content": 6}],
    }
    problem = refused(service, with_(WINDOW, "/movement", conditions))
    assert {error["pointer"] for error in problem["errors"]} == {"/movement/seasons/0/moisture_content"}


def test_no_more_of_the_trims_than_fits_a_sentence(service: Service) -> None:
    trims = {letter * 90: WINDOW["trim"] for letter in "abc"}
    problem = refused(
        service, with_(with_(HOUSE, "/openings/0/trim", "oak"), "/trim_specs", trims), "/v1/cut-list"
    )
    (error,) = problem["errors"]
    named = ", ".join(map(repr, trims))[:200]
    assert error["detail"].startswith(f"No trim spec is called 'oak'; trim_specs has {named}.")
