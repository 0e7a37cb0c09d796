"""Rounded chains, walked again from the marks and the saw's settings alone."""

from __future__ import annotations

import cmath
import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.fit.shapes import shapes
from longpoint.geometry.fit.chain import Chain, begun_at, equal_chords, mirror, polygon
from longpoint.geometry.fit.closing import Closed, close
from longpoint.lengths import Fraction

F = Fraction
STEPS = [F(1, 8), F(1, 16), F(1, 32), F(1, 64)]


def corners_of(lengths: list[float], directions: list[float]) -> list[complex]:
    """Where each piece ends, the first beginning at zero."""
    runs = [cmath.rect(length, math.radians(at)) for length, at in zip(lengths, directions, strict=True)]
    return list(itertools.accumulate(runs))


def walked(chain: Chain, closed: Closed) -> list[float]:
    """How far each piece's end lies from its place, in steps: walked along the rounded lengths, turned by the two saw
    settings at each corner, from the start that is held."""
    count = len(chain.lengths)
    order = [(closed.start + number) % count for number in range(count)]
    ahead = [chain.directions[at] + (360 if at < closed.start else 0) for at in order]
    sign = 1 if chain.directions[-1] > chain.directions[0] else -1
    cut = [chain.directions[closed.start] + closed.directions_off[closed.start]]
    for corner in order[:-1]:
        cut.append(cut[-1] + sign * float(sum(closed.settings[corner])))
    meant = corners_of([float(chain.lengths[at]) for at in order], ahead)
    made = corners_of([float(closed.lengths[at]) for at in order], cut)
    return [abs(one - other) / float(closed.step) for one, other in zip(made, meant, strict=True)]


def check(chain: Chain, closed: Closed) -> list[float]:
    """All that holds of every chain, whether it closes or not; its gaps in steps."""
    step = closed.step
    for length, exact in zip(closed.lengths, chain.lengths, strict=True):
        assert Fraction(length / step).denominator == 1
        assert abs(float(length) - float(exact)) <= float(step) * (1 + 1e-9)
    for turn, (one, other) in zip(closed.turns, closed.settings, strict=True):
        assert one + other == turn
        assert Fraction(one * 10).denominator == Fraction(other * 10).denominator == 1
        assert abs(one - other) <= F(1, 10)
    if chain.closed:
        assert sum(closed.turns) == 360
    assert max(map(abs, closed.directions_off)) <= 0.1 + 1e-9
    gaps = walked(chain, closed)
    stated = [gap / float(step) for gap in closed.corner_gaps]
    assert [stated[(closed.start + n) % len(stated)] for n in range(len(stated))] == pytest.approx(
        gaps, abs=1e-6
    )
    assert closed.gap / float(step) == pytest.approx(gaps[-1], abs=1e-6)
    return gaps


@pytest.mark.parametrize("step", STEPS[:3], ids=str)
def test_two_thousand_arches_and_polygons_close(step: F) -> None:
    alike = 0
    for kind, chain in shapes(2000):
        closed = close(chain, step)
        gaps = check(chain, closed)
        assert gaps[-1] <= 1 + 1e-6
        assert max(gaps) <= 1.5 + 1e-6
        assert closed.closes
        if kind == "arch" and closed.mirrored:
            assert closed.lengths == closed.lengths[::-1]
        if kind != "uneven":
            alike += 1
            assert len(set(closed.lengths)) <= 2
            assert len(set(closed.turns)) <= 3
    assert alike > 1300


def test_at_a_64th_they_close_from_seven_pieces_on_and_else_say_what_can_be_reached() -> None:
    few = 0
    for _, chain in shapes(2000):
        closed = close(chain, F(1, 64))
        gaps = check(chain, closed)
        if len(chain.lengths) >= 7:
            assert max(gaps[-1], max(gaps) / 1.5) <= 1 + 1e-6
        elif not closed.closes:
            few += 1
            assert closed.least_gap is not None
            assert closed.least_gap <= closed.gap + 1e-12
        assert closed.closes == (closed.least_gap is None)
    assert few > 0


@pytest.mark.parametrize("seed", range(4))
def test_the_least_gap_of_a_few_pieces_is_that_of_all_ways(seed: int) -> None:
    """Tried again here one product of marks and settings after the other."""
    tried = 0
    for kind, chain in shapes(1500, seed):
        closed = close(chain, F(1, 64))
        if closed.least_gap is None or len(chain.lengths) > 4 or kind != "uneven":
            continue
        tried += 1
        marks = [{math.floor(64 * length), math.ceil(64 * length)} for length in chain.lengths]
        nearest = [{math.floor(round(10 * at, 7)), math.ceil(round(10 * at, 7))} for at in chain.directions]
        end = corners_of([float(each) for each in chain.lengths], list(chain.directions))[-1]
        least = min(
            abs(corners_of([each / 64 for each in lengths], [at / 10 for at in ways])[-1] - end)
            for lengths in itertools.product(*marks)
            for ways in itertools.product(*nearest)
        )
        assert closed.least_gap == pytest.approx(least, abs=1e-9)
    assert tried > 0


def arch(width: float, rise: float, pieces: int) -> Chain:
    radius = (width * width / 4 + rise * rise) / (2 * rise)
    turn = 4 * math.degrees(math.atan2(2 * rise, width)) / pieces
    return equal_chords(2 * radius * math.sin(math.radians(turn / 2)), turn, pieces)


def test_forty_equal_pieces_meet_their_springing_where_each_rounded_alone_misses_it_by_half_an_inch() -> None:
    """A jamb 30 5/8 wide that rises 15, casing of 2 1/2 at a reveal of 3/16: the line of the long points."""
    jamb = arch(30.625, 15, 40)
    turn = math.radians(jamb.directions[0] - jamb.directions[1])
    chain = Chain((jamb.lengths[0] + 2 * 2.6875 * math.tan(turn / 2),) * 40, jamb.directions)
    width = corners_of([float(length) for length in chain.lengths], list(chain.directions))[-1]
    alone = round(16 * float(chain.lengths[0])) / 16
    end = corners_of([alone] * 40, list(chain.directions))[-1]
    assert abs(end - width) == pytest.approx(0.5218, abs=0.0001)
    closed = close(chain, F(1, 16))
    turned = [closed.directions_off[n] + chain.directions[n] for n in range(40)]
    end = corners_of([float(length) for length in closed.lengths], turned)[-1]
    assert abs(end - width) <= 1 / 16


@given(st.integers(12 * 16, 96 * 16), st.floats(0.05, 0.5), st.integers(3, 60), st.sampled_from(STEPS[:3]))
def test_mirrored_pieces_and_their_settings_come_out_alike(
    sixteenths: int, part: float, pieces: int, step: F
) -> None:
    closed = close(arch(sixteenths / 16, sixteenths / 16 * part, pieces), step)
    check(arch(sixteenths / 16, sixteenths / 16 * part, pieces), closed)
    if closed.mirrored:
        assert closed.lengths == closed.lengths[::-1]
        assert closed.turns == closed.turns[::-1]
        assert [-off for off in closed.directions_off[::-1]] == pytest.approx(closed.directions_off, abs=1e-9)
        for number, (one, other) in enumerate(closed.settings):
            if 2 * (number + 1) != pieces:
                assert closed.settings[pieces - 2 - number] == (other, one)


@given(st.integers(3, 40), st.floats(2, 30), st.sampled_from(STEPS), st.integers(0, 39))
def test_a_polygon_closes_wherever_it_is_begun(sides: int, side: float, step: F, start: int) -> None:
    chain = begun_at(polygon([side] * sides, [180 - 360 / sides] * sides), start % sides)
    gaps = check(chain, close(chain, step))
    if sides >= 7 and side < 16:
        assert gaps[-1] <= 1 + 1e-6
    assert mirror(chain) is not None


def test_a_direction_halfway_between_two_settings_goes_away_from_the_crown() -> None:
    closed = close(equal_chords(F(10), 0.1, 4), F(1, 16))
    assert closed.directions_off == pytest.approx((0.05, 0.05, -0.05, -0.05))
    assert closed.turns == (F(1, 10), F(1, 5), F(1, 10))


def test_an_even_polygon_on_the_marks_keeps_its_lengths() -> None:
    closed = close(polygon([F(20)] * 8, [135.0] * 8), F(1, 16))
    assert set(closed.lengths) == {20}
    assert set(closed.settings) == {(F(45, 2), F(45, 2))}
    assert closed.gap == pytest.approx(0, abs=1e-9)


def test_a_kite_has_an_axis_through_its_corners_and_a_scalene_triangle_none() -> None:
    kite = polygon([10.0, 20.0, 20.0, 10.0], [*_angles(10, 20, 24)])
    axis = mirror(kite)
    assert axis is not None
    assert (axis.start, axis.paired) == (0, 4)
    assert mirror(polygon([3, 4, 5], [90.0, 53.13010235415598, 36.86989764584402])) is None


@pytest.mark.parametrize(("sides", "side"), [(14, F(41, 4)), (11, F(12))])
def test_with_a_saw_of_half_degrees_lengths_on_a_mark_leave_it_so_that_the_polygon_closes(
    sides: int, side: F
) -> None:
    chain = polygon([side] * sides, [180 - 360 / sides] * sides)
    closed = close(chain, F(1, 32), F(1, 2))
    gaps = walked(chain, closed)
    assert max(gaps[-1], max(gaps) / 1.5) <= 1 + 1e-6
    assert len(set(closed.lengths)) == 2
    assert max(abs(length - side) for length in closed.lengths) == F(1, 32)


def test_with_a_saw_of_half_degrees_uneven_polygons_close_by_the_best_of_many_beginnings() -> None:
    chains = [chain for _, chain in itertools.islice(shapes(300, 21), 100, 280)]
    for number in (113, 167, 203, 224, 230, 272):
        chain = chains[number - 100]
        closed = close(chain, F(1, 32), F(1, 2))
        gaps = walked(chain, closed)
        assert closed.closes
        assert max(gaps[-1], max(gaps) / 1.5) <= 1 + 1e-6


def test_equal_lengths_that_turn_unequally_have_no_axis() -> None:
    assert mirror(Chain((10.0,) * 4, (30.0, 10.0, -12.0, -30.0))) is None
    assert mirror(Chain((10.0,) * 4, (30.0, 10.0, -10.0, -30.0))) is not None


def _angles(short: float, long: float, across: float) -> tuple[float, float, float, float]:
    """The corners of a kite at the ends of its sides, from two of its sides and its axis, by the law of cosines."""

    def corner(one: float, other: float, far: float) -> float:
        return math.degrees(math.acos((one * one + other * other - far * far) / (2 * one * other)))

    side = corner(short, long, across)
    return side, 2 * corner(long, across, short), side, 2 * corner(short, across, long)


def test_a_clockwise_polygon_turns_as_much() -> None:
    clockwise = Chain((F(3), F(4), F(5)), (0.0, -90.0, -216.86989764584402), closed=True)
    closed = close(clockwise, F(1, 16))
    assert sum(closed.turns) == 360
    assert closed.turns[0] == 90
    assert closed.lengths == (3, 4, 5)
