"""The frame kernel: where two lines beside a corner cross, and the angle the saw reads."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.builders import F
from longpoint.geometry.frame.kernel import SQUARE, corner, meet, plumb_sided, rectangle, saw_angle

angles = st.floats(20, 160)
offsets = st.fractions(0, 6, max_denominator=64)


def test_a_right_angle_is_the_square_corner_itself() -> None:
    assert corner(F(90)) is SQUARE


def test_at_a_square_corner_a_line_runs_on_by_the_others_offset() -> None:
    assert meet(SQUARE, F(3), F(7, 16)) == F(7, 16)


@given(degrees=angles, width=offsets, reveal=offsets)
def test_equal_widths_give_half_the_turn(degrees: float, width: F, reveal: F) -> None:
    width = width + 1
    at = corner(degrees)
    run = meet(at, reveal + width, reveal + width) - meet(at, reveal, reveal)
    assert saw_angle(float(run), width) == pytest.approx(90 - degrees / 2)


@given(degrees=angles, mine=offsets, theirs=offsets)
def test_unequal_widths_share_the_turn(degrees: float, mine: F, theirs: F) -> None:
    mine, theirs = mine + 1, theirs + 1
    at = corner(degrees)
    on_mine = saw_angle(float(meet(at, mine, theirs)), mine)
    on_theirs = saw_angle(float(meet(at, theirs, mine)), theirs)
    assert on_mine + on_theirs == pytest.approx(180 - degrees)


@given(degrees=angles, own=offsets, other=offsets)
def test_two_lines_cross_as_coordinates_say(degrees: float, own: F, other: F) -> None:
    """The corner at the origin, this side coming in along x, the other leaving at the turn."""
    turn = math.pi - math.radians(degrees)
    x = float(meet(corner(degrees), own, other))
    # Outside of a side going counterclockwise is to its right.
    off_other = x * math.sin(turn) - float(-own) * math.cos(turn)
    assert off_other == pytest.approx(float(other), abs=1e-9)


def test_a_square_cut_keeps_no_noise_of_floats() -> None:
    assert saw_angle(1e-13, F(5, 2)) == 0
    assert saw_angle(F(5, 2), F(5, 2)) == 45


def test_equal_heights_make_a_rectangle() -> None:
    assert plumb_sided(F(30), F(40), F(40)) == rectangle(F(30), F(40))


def test_vertices_run_counterclockwise_from_the_bottom_left() -> None:
    assert rectangle(F(30), F(40)).vertices == ((0, 0), (30, 0), (30, 40), (0, 40))
    raked = plumb_sided(F(40), F(60), F(30)).vertices
    assert [pytest.approx(point) for point in ((0, 0), (40, 0), (40, 30), (0, 60))] == [
        tuple(map(float, point)) for point in raked
    ]
