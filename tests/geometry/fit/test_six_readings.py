"""The line of six readings, against exact shapes and the full adjustment."""

from __future__ import annotations

import math
import random

import pytest

from geometry.fit.openings import ANY, SIX, SPREAD, exact, opening, read, slipped
from longpoint.geometry.fit.adjust import adjust
from longpoint.geometry.fit.check import Verdict, check
from longpoint.geometry.fit.six_readings import ALARM, six_check
from longpoint.lengths import Fraction

F = Fraction


def test_a_true_rectangle_and_a_true_trapezoid_check_to_nothing() -> None:
    """36 by 48 has diagonals of 60; the trapezoid's are equal and their square is left^2 + bottom x top."""
    assert six_check(F(36), F(36), F(48), F(48), F(60), F(60)).z == 0
    across = math.sqrt(50**2 + 30 * 40)
    found = six_check(30, 40, 50, 50, across, across)
    assert found.z == pytest.approx(0, abs=1e-9)
    assert not found.near_square


def test_the_sum_of_the_diagonals_must_come_within_five_thirty_seconds() -> None:
    found = six_check(F(36), F(36), F(48), F(48), F(60), F(60))
    assert found.allowed == pytest.approx(5 / 32, abs=0.006)
    within = six_check(F(36), F(36), F(48), F(48), F(60), F(60) + F(5, 32))
    beyond = six_check(F(36), F(36), F(48), F(48), F(60), F(60) + F(11, 64))
    assert not within.alarm
    assert beyond.alarm
    assert beyond.diagonals_off == pytest.approx(11 / 64, abs=0.001)
    assert abs(beyond.z) > ALARM


def test_a_slip_in_a_side_shows() -> None:
    assert six_check(F(37), F(36), F(48), F(48), F(60), F(60)).z < -ALARM
    assert six_check(F(36), F(36), F(48), F(48), F(61), F(60)).z > ALARM


def test_it_says_when_it_no_longer_holds() -> None:
    assert six_check(*_six(36, 48, 1)).near_square
    assert not six_check(*_six(36, 48, 3)).near_square
    assert not six_check(36, 33, 48, 48, 60, 60).near_square


def _six(width: float, height: float, lean: float) -> tuple[float, float, float, float, float, float]:
    side = math.hypot(lean, height)
    return width, width, side, side, math.hypot(width + lean, height), math.hypot(width - lean, height)


@pytest.mark.parametrize(("off_square", "apart"), [(0.5, 0.003), (1.0, 0.01), (2.0, 0.05)])
def test_it_judges_as_the_full_adjustment_does(off_square: float, apart: float) -> None:
    """In 2,000 openings, half of them with a slip that may just show. The farther from square, the more the two are
    apart, and only within that of the alarm may they judge differently."""
    draw = random.Random(7)
    for _ in range(2000):
        readings = read(draw, opening(draw, off_square, ANY), SIX)
        readings = slipped(readings, draw.randrange(6), draw.choice((0, 0, 0.125, 0.25)))
        line = six_check(*(reading.value for reading in readings))
        shape = adjust(readings)
        assert shape is not None
        assert abs(line.z) == pytest.approx(math.sqrt(shape.sum_of_squares), abs=apart)
        if abs(abs(line.z) - ALARM) > apart:
            assert line.alarm == (check(readings).verdict is Verdict.ONE_SLIP)


def test_the_exact_readings_of_any_opening_do_not_alarm() -> None:
    draw = random.Random(8)
    for _ in range(500):
        true = exact(opening(draw, 2, ANY))
        assert not six_check(*(true[kind] for kind in SIX), spread=SPREAD).alarm
