"""What a saw off its zero does, computed again by bending the arch."""

from __future__ import annotations

import math

import pytest

from longpoint.geometry.fit.chain import equal_chords, polygon
from longpoint.geometry.fit.closing import close
from longpoint.geometry.fit.saw_check import saw_check
from longpoint.lengths import Fraction

F = Fraction
HALF_ROUND = equal_chords(48 * math.sin(math.radians(4.5)), 9.0, 20)


def test_a_half_round_of_twenty_opens_by_almost_an_inch() -> None:
    """Computed: each of 19 turns grows from 9.0 to 9.1 degrees, so the arch curls in. The exact lengths
    give 0.7870 down and 0.5401 back along the springings, 0.9546 in all; rounding to 1/64 moves that by hairs."""
    found = saw_check(HALF_ROUND, close(HALF_ROUND, F(1, 64)))
    assert found.across == pytest.approx(-0.7870, abs=0.001)
    assert found.along == pytest.approx(-0.5401, abs=0.001)
    assert found.opens == pytest.approx(0.9546, abs=0.001)


def test_an_arch_bent_at_every_corner_ends_where_the_saw_check_says() -> None:
    closed = close(HALF_ROUND, F(1, 8))
    found = saw_check(HALF_ROUND, closed, off_zero=0.5)
    at = HALF_ROUND.directions[0] + closed.directions_off[0]
    meant = cut = 0j
    bent = at
    for number, length in enumerate(closed.lengths):
        if number:
            at -= float(closed.turns[number - 1])
            bent -= float(closed.turns[number - 1]) + 1.0
        meant += float(length) * complex(math.cos(math.radians(at)), math.sin(math.radians(at)))
        cut += float(length) * complex(math.cos(math.radians(bent)), math.sin(math.radians(bent)))
    assert complex(found.along, found.across) == pytest.approx(cut - meant, abs=1e-9)


def test_a_true_saw_opens_nothing() -> None:
    assert saw_check(HALF_ROUND, close(HALF_ROUND, F(1, 16)), off_zero=0.0).opens == 0


def test_the_joint_tried_first_is_the_one_that_recurs() -> None:
    """Of a gable the three square corners recur, and not the two at the eaves."""
    chain = equal_chords(10.0, 9.0, 20)
    found = saw_check(chain, close(chain, F(1, 16)))
    assert (found.first_joint, found.alike, found.dry_fit) == (0, 19, 5)
    side = math.sqrt(200)
    house = polygon([20.0, 10.0, side, side, 10.0], [90.0, 135.0, 90.0, 135.0, 90.0])
    found = saw_check(house, close(house, F(1, 16)))
    assert (found.first_joint, found.alike, found.dry_fit) == (0, 3, 2)
