"""The stated spreads, against openings measured a few thousand times over."""

from __future__ import annotations

import random
import statistics

import pytest

from geometry.fit.openings import NINE, SIX, exact, opening, read
from longpoint.geometry.fit.adjust import adjust
from longpoint.geometry.fit.readings import Reading, ReadingKind
from longpoint.geometry.fit.spreads import angle, expected_opening, side, spread_of


@pytest.mark.parametrize("kinds", [SIX, NINE], ids=["6", "9"])
def test_measured_again_and_again_the_lengths_and_angles_spread_as_stated(
    kinds: tuple[ReadingKind, ...],
) -> None:
    draw = random.Random(11)
    shape = opening(draw, 2)
    true = exact(shape)
    first = adjust([Reading(kind, true[kind]) for kind in kinds])
    assert first is not None
    measures = [side(2), side(3), angle(1), angle(2), lambda corners: corners[2][0] + 2 * corners[3][1]]
    found: list[list[float]] = [[] for _ in measures]
    for _ in range(3000):
        again = adjust(read(draw, shape, kinds))
        assert again is not None
        for row, measure in zip(found, measures, strict=True):
            row.append(measure(again.corners))
    for row, measure in zip(found, measures, strict=True):
        assert statistics.stdev(row) == pytest.approx(spread_of(first, measure), rel=0.05)
        assert statistics.mean(row) == pytest.approx(
            measure(first.corners), abs=spread_of(first, measure) / 10
        )


def test_more_readings_make_surer_lengths() -> None:
    true = exact(opening(random.Random(5)))
    six = adjust([Reading(kind, true[kind]) for kind in SIX])
    nine = adjust([Reading(kind, true[kind]) for kind in NINE])
    assert six is not None
    assert nine is not None
    for number in range(4):
        assert spread_of(nine, angle(number)) < spread_of(six, angle(number))


def test_a_rectangles_corners_are_square() -> None:
    shape = adjust([Reading(kind, value) for kind, value in zip(SIX, (36, 36, 48, 48, 60, 60), strict=True)])
    assert shape is not None
    assert [angle(number)(shape.corners) for number in range(4)] == pytest.approx([90] * 4)
    assert [side(number)(shape.corners) for number in range(4)] == pytest.approx([36, 48, 36, 48])


def test_a_joint_opens_by_what_its_corner_and_its_two_cuts_are_off() -> None:
    """Drawn: a corner's angle with its spread, and two cuts each anywhere within half a step of the scale."""
    draw = random.Random(13)
    drawn = [
        3.5
        * (draw.gauss(0, 0.08) + draw.uniform(-0.05, 0.05) + draw.uniform(-0.05, 0.05))
        * 3.141592653589793
        / 180
        for _ in range(20_000)
    ]
    assert expected_opening(3.5, 0.08, 0.1) == pytest.approx(statistics.pstdev(drawn), rel=0.03)
