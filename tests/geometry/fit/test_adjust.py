"""The best shape, against coordinates and matrices of its own."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.fit.openings import ALL, BUBBLE, BUBBLES, NINE, SIX, SPREAD, TEN, Shape, exact, opening, read
from longpoint.geometry.fit import least_squares
from longpoint.geometry.fit.adjust import Adjusted, adjust, without
from longpoint.geometry.fit.four_sided import says
from longpoint.geometry.fit.readings import MIDDLES, Reading, ReadingKind

SETS = [SIX, NINE, TEN, ALL]


def shape_of(at: np.ndarray) -> Shape:
    """The corners of a set of unknowns, turned by its last."""
    turn = complex(math.cos(at[5]), math.sin(at[5])) if len(at) > 5 else 1
    return {
        "bl": 0j,
        "br": at[0] * turn,
        "tr": complex(at[1], at[2]) * turn,
        "tl": complex(at[3], at[4]) * turn,
    }


def weighed(at: np.ndarray, readings: list[Reading]) -> np.ndarray:
    """Each reading less what the coordinates say, in its spreads."""
    true = exact(shape_of(at))
    spreads = [
        1 / 8 if one.kind in MIDDLES else BUBBLE if one.kind in BUBBLES else SPREAD for one in readings
    ]
    return np.array([(float(r.value) - true[r.kind]) / s for r, s in zip(readings, spreads, strict=True)])


def slopes(at: np.ndarray, readings: list[Reading]) -> np.ndarray:
    """By small differences, column by column."""
    columns = []
    for number in range(len(at)):
        step = np.zeros(len(at))
        step[number] = 1e-5
        columns.append((weighed(at - step, readings) - weighed(at + step, readings)) / 2e-5)
    return np.array(columns).T


@given(st.integers(0, 10**6), st.sampled_from(SETS))
def test_perfect_readings_give_their_opening_back(seed: int, kinds: tuple[ReadingKind, ...]) -> None:
    true = exact(opening(random.Random(seed), off_square=4))
    found = adjust([Reading(kind, true[kind]) for kind in kinds])
    assert found is not None
    assert found.sum_of_squares < 1e-12
    (_, right, top, left) = (complex(*corner) for corner in found.corners)
    assert abs(right) == pytest.approx(true[ReadingKind.WIDTH_BOTTOM], abs=1e-8)
    assert abs(top - left) == pytest.approx(true[ReadingKind.WIDTH_TOP], abs=1e-8)
    assert abs(top) == pytest.approx(true[ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT], abs=1e-8)
    assert abs(left - right) == pytest.approx(true[ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT], abs=1e-8)
    if found.turn is not None:
        rise = abs(right) * math.sin(math.radians(found.turn))
        assert rise == pytest.approx(true[ReadingKind.SILL_LEVEL], abs=1e-8)


@given(st.integers(0, 10**6), st.sampled_from(SETS))
def test_no_shape_near_it_fits_better(seed: int, kinds: tuple[ReadingKind, ...]) -> None:
    draw = random.Random(seed)
    readings = read(draw, opening(draw, off_square=4), kinds)
    found = adjust(readings)
    assert found is not None
    at = np.array(found.unknowns)
    least = float(np.sum(weighed(at, readings) ** 2))
    assert found.sum_of_squares == pytest.approx(least, rel=1e-6, abs=1e-9)
    assert (
        np.abs(slopes(at, readings).T @ weighed(at, readings)).max() < 1e-2
    )  # of slopes of some 30 to the inch
    for _ in range(20):
        near = at + np.array([draw.gauss(0, 0.01) for _ in at]) * ([1] * 5 + [0.02])[: len(at)]
        assert float(np.sum(weighed(near, readings) ** 2)) > least


@given(st.integers(0, 10**6), st.sampled_from(SETS))
def test_spreads_and_redundancies_are_those_of_the_inverse(seed: int, kinds: tuple[ReadingKind, ...]) -> None:
    draw = random.Random(seed)
    readings = read(draw, opening(draw, off_square=4), kinds)
    found = adjust(readings)
    assert found is not None
    rows = slopes(np.array(found.unknowns), readings)
    inverse = np.linalg.inv(rows.T @ rows)
    assert np.array(found.cofactors) == pytest.approx(inverse, rel=1e-4, abs=1e-8)
    left = np.eye(len(kinds)) - rows @ inverse @ rows.T
    quality = found.quality
    assert np.array(quality.redundancies) == pytest.approx(np.diag(left), abs=1e-5)
    assert sum(quality.redundancies) == pytest.approx(found.checks, abs=1e-6)
    spread = np.sqrt(np.diag(left))
    assert np.array(quality.correlations) == pytest.approx(left / np.outer(spread, spread), abs=1e-3)


@given(st.integers(0, 10**6), st.sampled_from([NINE, TEN, ALL]), st.floats(-14, 14))
def test_a_refit_is_the_shape_of_the_others(seed: int, kinds: tuple[ReadingKind, ...], slip: float) -> None:
    draw = random.Random(seed)
    readings = read(draw, opening(draw), kinds)
    number = draw.randrange(6)
    readings[number] = Reading(readings[number].kind, float(readings[number].value) + slip)
    found = adjust(readings)
    if found is None:
        return
    fresh = adjust(readings[:number] + readings[number + 1 :])
    again = without(found, number, SPREAD, found.cofactors, found.quality.redundancies[number])
    assert isinstance(fresh, Adjusted)
    assert isinstance(again, Adjusted)
    assert again.unknowns == pytest.approx(fresh.unknowns, abs=1e-6)
    assert again.sum_of_squares == pytest.approx(fresh.sum_of_squares, abs=1e-5)


def test_over_a_levels_own_length_the_same_lean_reads_less() -> None:
    true = exact(opening(random.Random(3), off_square=4))
    lengths = [Reading(kind, true[kind]) for kind in SIX]
    plumb, height = true[ReadingKind.LEFT_PLUMB], true[ReadingKind.HEIGHT_LEFT]
    whole = adjust(
        [
            *lengths,
            Reading(ReadingKind.LEFT_PLUMB, plumb),
            Reading(ReadingKind.SILL_LEVEL, true[ReadingKind.SILL_LEVEL]),
        ]
    )
    short = adjust(
        [
            *lengths,
            Reading(ReadingKind.LEFT_PLUMB, plumb * 24 / height, over=24),
            Reading(
                ReadingKind.SILL_LEVEL,
                true[ReadingKind.SILL_LEVEL] * 16 / true[ReadingKind.WIDTH_BOTTOM],
                over=16,
            ),
        ]
    )
    assert whole is not None
    assert short is not None
    assert short.sum_of_squares < 1e-9
    assert short.unknowns == pytest.approx(whole.unknowns, abs=1e-7)


@pytest.mark.parametrize("kind", ReadingKind)
def test_what_a_reading_says_of_each_unknown_is_its_slope(kind: ReadingKind) -> None:
    """Also over a level's own length, where a longer side leans less."""
    at = [36.0, 37.5, 48.0, -2.0, 46.5, 0.04]
    for over in (None, 24):
        reading = Reading(kind, 0, over=over)
        said, row = says(reading, at)
        for number in range(6):
            ahead, behind = list(at), list(at)
            ahead[number] += 1e-5
            behind[number] -= 1e-5
            slope = (says(reading, ahead)[0] - says(reading, behind)[0]) / 2e-5
            assert row[number] == pytest.approx(slope, abs=1e-7)
        whole = exact(shape_of(np.array(at)))[kind]
        if over and kind in BUBBLES:
            side = {
                "sill": ReadingKind.WIDTH_BOTTOM,
                "head": ReadingKind.WIDTH_TOP,
                "left": ReadingKind.HEIGHT_LEFT,
            }
            along = side.get(kind.split("_")[0], ReadingKind.HEIGHT_RIGHT)
            whole *= over / exact(shape_of(np.array(at)))[along]
        assert said == pytest.approx(whole, abs=1e-12)


@pytest.mark.parametrize(
    "values", [(41.44, 41.7, 83.22, 38.37, 56.62, 56.42), (35.99, 35.86, 49.11, 94.11, 60.87, 60.74)]
)
def test_a_nearly_flat_shape_is_found_though_full_steps_overshoot(values: tuple[float, ...]) -> None:
    found = adjust([Reading(kind, value) for kind, value in zip(SIX, values, strict=True)])
    assert found is not None
    at = np.array(found.unknowns)
    readings = [Reading(kind, value) for kind, value in zip(SIX, values, strict=True)]
    assert (
        np.abs(slopes(at, readings).T @ weighed(at, readings)).max() < 1
    )  # of a sum of squares of thousands
    assert found.sum_of_squares > 1000


def test_four_sides_rack() -> None:
    true = exact(opening(random.Random(1)))
    sides = [Reading(kind, true[kind]) for kind in SIX[:4]]
    assert adjust(sides) is None
    assert adjust([*sides, Reading(ReadingKind.WIDTH_MIDDLE, true[ReadingKind.WIDTH_MIDDLE])]) is None
    held = adjust([*sides, Reading(SIX[4], true[SIX[4]])])
    assert held is not None
    assert held.checks == 0


def chi_square_tail(value: float, freedom: int) -> float:
    """The part of a chi-square beyond a value, by the series of the incomplete gamma function."""
    half, x = freedom / 2, value / 2
    term = total = 1 / half
    for number in range(1, 400):
        term *= x / (half + number)
        total += term
    return 1 - total * math.exp(-x + half * math.log(x) - math.lgamma(half))


@pytest.mark.parametrize("checks", [*range(1, 21), 21, 30, 60])
def test_the_alarm_is_where_a_hundredth_lies_beyond(checks: int) -> None:
    """To the last place of the table up to twenty; beyond it by an approximation."""
    off = 0.0005 if checks <= 20 else 0.01
    assert chi_square_tail(least_squares.alarm_at(checks), checks) == pytest.approx(0.01, rel=off)
