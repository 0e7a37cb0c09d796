"""Openings out of square, from two widths, two heights and a diagonal or an angle."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from geometry.builders import F, opening, piece
from longpoint.geometry import (
    Bottom,
    Fault,
    GeometryError,
    PlumbSides,
    Quadrilateral,
    build_opening,
    corners,
)

SIDES = (F("30.625"), F("30.5"), F("46.25"), F("46.125"))
SKEWED = Quadrilateral(*SIDES, diagonal_from_bottom_left=F("55.375"))


def test_a_worked_window_keeps_each_corner_and_each_leg_its_own() -> None:
    found = corners(opening(SKEWED))
    left, head, right = found.pieces
    assert [round(float(each.degrees), 4) for each in found.corners] == [90.0200, 90.2145, 89.9407, 89.8249]
    assert right.short_point == pytest.approx(46.3117, abs=1e-4)
    assert right.long_point == pytest.approx(48.8015, abs=1e-4)
    assert left.short_point == pytest.approx(46.4383, abs=1e-4)
    assert left.long_point == pytest.approx(48.9485, abs=1e-4)
    assert head.short_point == pytest.approx(30.8745, abs=1e-4)
    assert head.long_point == pytest.approx(35.8677, abs=1e-4)
    assert [end.miter for end in head.ends] == pytest.approx([45.0297, 44.8928], abs=1e-4)
    right_foot, left_foot = right.ends[1], left.ends[0]
    assert (right_foot.at, right_foot.long_edge) == ("foot", "inner")
    assert right_foot.miter == pytest.approx(0.0200, abs=1e-4)
    assert (left_foot.at, left_foot.long_edge) == ("foot", "outer")
    assert left_foot.miter == pytest.approx(0.1751, abs=1e-4)


def test_a_second_diagonal_checks_the_tape() -> None:
    shape = Quadrilateral(
        *SIDES, diagonal_from_bottom_left=F("55.375"), diagonal_from_bottom_right=F("55.375")
    )
    found = corners(opening(shape))
    (check,) = found.checks
    assert check.agrees
    assert found.suspects == ()
    assert float(check.computed) == pytest.approx(55.3922, abs=1e-4)


def _true_lengths(shape: Quadrilateral) -> dict[str, F]:
    return {
        name: value
        for name in shape.__struct_fields__
        if isinstance(value := getattr(shape, name), F) and not name.endswith("_angle")
    }


@pytest.mark.parametrize(
    ("field", "slip"),
    [
        ("diagonal_from_bottom_right", F(1)),
        ("diagonal_from_bottom_left", F(-1)),
        ("jamb_width", F(1)),
        ("head_width", F(-1)),
        ("left_jamb_height", F(1)),
        ("diagonal_from_bottom_right", F("0.375")),
    ],
)
def test_the_reading_that_slipped_is_suspected_first(field: str, slip: F) -> None:
    square = Quadrilateral(F(36), F(36), F(48), F(48), F(60), F(60))
    readings = _true_lengths(square)
    readings[field] += slip
    found = corners(opening(Quadrilateral(**readings)))
    assert not all(check.agrees for check in found.checks)
    assert found.suspects[0].reading == field
    assert found.suspects[0].change == pytest.approx(-float(slip), abs=1e-9)


def test_readings_that_disagree_are_found_and_each_that_may_be_off_is_named() -> None:
    built = build_opening(opening(Quadrilateral(*SIDES, F("55.375"), F("56.375"))))
    (finding,) = built.findings
    assert finding.code == "readings-disagree"
    assert len(finding.offers) == 6
    assert "diagonal_from_bottom_right" in str(finding.detail)


def test_an_angle_serves_in_place_of_a_diagonal() -> None:
    by_diagonal = corners(opening(SKEWED)).corners
    names = ("bottom_right", "top_right", "top_left", "bottom_left")
    for name, known in zip(names, by_diagonal, strict=True):
        shape = Quadrilateral(*SIDES, **{f"{name}_angle": float(known.degrees)})
        found = corners(opening(shape)).corners
        assert [float(c.degrees) for c in found] == pytest.approx([float(c.degrees) for c in by_diagonal])


def test_an_angle_that_denies_the_diagonal_is_told() -> None:
    shape = Quadrilateral(*SIDES, diagonal_from_bottom_left=F("55.375"), top_left_angle=F(92))
    (fault,) = _refusal(shape)
    assert fault.path == ("readings", "top_left_angle")


def _refusal(shape: Quadrilateral) -> tuple[Fault, ...]:
    with pytest.raises(GeometryError) as refused:
        build_opening(opening(shape))
    return refused.value.faults


@pytest.mark.parametrize(
    ("shape", "code", "field"),
    [
        (Quadrilateral(*SIDES), "not-determined", "diagonal_from_bottom_left"),
        (Quadrilateral(*SIDES, F(80)), "impossible-triangle", "diagonal_from_bottom_left"),
        (Quadrilateral(*SIDES, None, F(10)), "impossible-triangle", "diagonal_from_bottom_right"),
        (Quadrilateral(F(20), F(20), F(20), F(20), F("39.99")), "reading-tells-too-little", None),
        (Quadrilateral(F(0), F(20), F(20), F(20), F(28)), "not-positive", "jamb_width"),
        (Quadrilateral(F(40), F("33.5"), F(40), F(31), F("12.75")), "not-convex", None),
    ],
)
def test_readings_that_make_no_opening_are_refused(
    shape: Quadrilateral, code: str, field: str | None
) -> None:
    faults = _refusal(shape)
    fault = next(fault for fault in faults if fault.code == code)
    assert field is None or fault.path == ("readings", field)


@pytest.mark.parametrize("field", ["diagonal_from_bottom_left", "diagonal_from_bottom_right"])
def test_a_square_opening_given_as_out_of_square_has_the_exact_pieces(field: str) -> None:
    plain = build_opening(opening(PlumbSides(F(36), F(48), F(48))))
    shape = Quadrilateral(F(36), F(36), F(48), F(48), **{field: F(60)})
    built = build_opening(opening(shape, square_gap=F(0)))
    assert built.pieces == plain.pieces
    assert built.frame == plain.frame


def test_a_diagonal_rounded_by_the_tape_still_has_the_exact_pieces() -> None:
    width, height = F("30.625"), F("46.25")
    diagonal = F(round(math.hypot(width, height) * 16), 16)
    plain = build_opening(opening(PlumbSides(width, height, height)))
    built = build_opening(opening(Quadrilateral(width, width, height, height, diagonal)))
    assert built.pieces == plain.pieces
    assert 0 < built.square_gap < F(1, 64)


lengths = st.integers(min_value=12 * 16, max_value=96 * 16).map(lambda n: F(n, 16))
angles = st.integers(min_value=30 * 4, max_value=150 * 4).map(lambda n: F(n, 4))


@given(lengths, lengths, lengths, angles, angles)
def test_the_frame_closes_and_a_diagonal_finds_the_same_corners(
    width: F, left: F, right: F, left_angle: F, right_angle: F
) -> None:
    a, b = math.radians(left_angle), math.radians(right_angle)
    top_left = (float(left) * math.cos(a), float(left) * math.sin(a))
    top_right = (float(width) - float(right) * math.cos(b), float(right) * math.sin(b))
    lean = math.degrees(math.atan2(top_right[1] - top_left[1], top_right[0] - top_left[0]))
    assume(30 <= 180 - float(left_angle) + lean <= 150)
    assume(30 <= 180 - float(right_angle) - lean <= 150)
    assume(math.dist(top_left, top_right) >= 6)
    head = F(math.dist(top_left, top_right))
    shape = Quadrilateral(width, head, left, right, diagonal_from_bottom_left=F(math.hypot(*top_right)))
    found = corners(opening(shape, bottom=Bottom.CASING))
    assert sum(float(c.degrees) for c in found.corners) == pytest.approx(360)
    assert float(found.corners[3].degrees) == pytest.approx(float(left_angle), abs=1e-6)
    assert float(found.corners[0].degrees) == pytest.approx(float(right_angle), abs=1e-6)
    assert (found.corners[2].at.x, found.corners[2].at.y) == pytest.approx(top_left, abs=1e-6)
    last = found.corners[3].at
    assert math.hypot(last.x, last.y) == pytest.approx(0, abs=1e-6)


def test_a_nearly_square_opening_says_what_squaring_it_costs() -> None:
    built = build_opening(opening(SKEWED))
    assert built.square_gap == pytest.approx(0.0132, abs=1e-4)
    assert piece(built, "side_casing/left").short_point == F("46.4375")
