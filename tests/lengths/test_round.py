"""Rounding: one rule for every length, and what it did."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import (
    Fraction,
    LengthError,
    Mode,
    Rounding,
    RoundTo,
    Unit,
    parse,
    residual,
    round_to,
    rounded,
    tape,
)

F = Fraction
SIXTEENTHS = Rounding()

exact_lengths = st.fractions(0, 12_000, max_denominator=10**6)
float_lengths = st.floats(0, 12_000)
roundings = st.builds(Rounding, st.sampled_from(RoundTo), st.sampled_from(Mode))
finenesses = st.sampled_from(RoundTo)


def test_sixteenths_to_the_nearest_unless_asked_otherwise() -> None:
    assert Rounding() == Rounding(RoundTo.SIXTEENTH, Mode.NEAREST)


@pytest.mark.parametrize("to", RoundTo)
def test_a_step_is_what_its_name_says(to: RoundTo) -> None:
    assert to.step == parse(to.value)
    assert to.unit is (Unit.MM if to.value.endswith("mm") else Unit.IN)


@pytest.mark.parametrize(
    ("mode", "inches", "mark", "moved"),
    [
        (Mode.NEAREST, F(1, 32), F(1, 16), F(1, 32)),
        (Mode.NEAREST, F(3, 32), F(1, 8), F(1, 32)),
        (Mode.NEAREST, F(5, 64), F(1, 16), F(-1, 64)),
        (Mode.UP, F(5, 64), F(1, 8), F(3, 64)),
        (Mode.DOWN, F(7, 64), F(1, 16), F(-3, 64)),
        (Mode.UP, F(1, 16), F(1, 16), F(0)),
    ],
)
def test_to_a_sixteenth(mode: Mode, inches: Fraction, mark: Fraction, moved: Fraction) -> None:
    done = rounded(inches, Rounding(RoundTo.SIXTEENTH, mode))
    assert (done.value, done.residual) == (mark, moved)


@given(exact_lengths, roundings)
def test_a_mark_is_a_whole_number_of_steps(inches: Fraction, rounding: Rounding) -> None:
    assert (round_to(inches, rounding) / rounding.to.step).denominator == 1


@given(exact_lengths, roundings)
def test_the_residual_is_exactly_what_was_added(inches: Fraction, rounding: Rounding) -> None:
    done = rounded(inches, rounding)
    assert done.value - done.residual == inches
    assert (round_to(inches, rounding), residual(inches, rounding)) == (done.value, done.residual)


@given(exact_lengths, roundings)
def test_rounding_again_changes_nothing(inches: Fraction, rounding: Rounding) -> None:
    once = round_to(inches, rounding)
    assert round_to(once, rounding) == once
    assert residual(once, rounding) == 0


@given(exact_lengths, finenesses)
def test_nearest_moves_a_length_by_half_a_step_at_most(inches: Fraction, to: RoundTo) -> None:
    assert abs(residual(inches, Rounding(to))) <= to.step / 2


@given(exact_lengths, finenesses)
def test_up_is_never_short_and_down_never_long(inches: Fraction, to: RoundTo) -> None:
    assert 0 <= residual(inches, Rounding(to, Mode.UP)) < to.step
    assert -to.step < residual(inches, Rounding(to, Mode.DOWN)) <= 0


@given(st.integers(0, 10_000), finenesses)
def test_a_tie_goes_to_the_longer(steps: int, to: RoundTo) -> None:
    assert round_to((steps + F(1, 2)) * to.step, Rounding(to)) == (steps + 1) * to.step


@given(st.integers(-10_000, 10_000), roundings)
def test_a_tie_below_nought_goes_to_the_greater_too(half_steps: int, rounding: Rounding) -> None:
    value = half_steps * rounding.to.step / 2
    assert round_to(value, Rounding(rounding.to)) >= value


@given(exact_lengths, roundings)
def test_a_mark_prints_in_its_own_unit_and_reads_back(inches: Fraction, rounding: Rounding) -> None:
    mark = round_to(inches, rounding)
    text = tape(mark, rounding.to.unit)
    assert parse(text) == mark
    assert len(text) <= len("12000 63/64 in")


@given(float_lengths, roundings)
def test_a_float_lands_within_a_step(inches: float, rounding: Rounding) -> None:
    done = rounded(inches, rounding)
    reach = rounding.to.step / (2 if rounding.mode is Mode.NEAREST else 1)
    assert isinstance(done.residual, float)
    assert abs(done.residual) <= reach + F(1, 10**9)
    assert done.residual == float(done.value - Fraction(inches))


@given(st.integers(0, 100_000), st.integers(-100, 100), roundings)
def test_a_float_beside_a_mark_or_a_tie_rounds_as_the_exact_length_does(
    half_steps: int, off: int, rounding: Rounding
) -> None:
    exactly = half_steps * rounding.to.step / 2
    assert round_to(float(exactly) + off * 1e-12, rounding) == round_to(exactly, rounding)


def test_a_float_is_given_no_more_slack_than_that() -> None:
    assert round_to(36 + 1e-8, Rounding(mode=Mode.UP)) == F(36) + F(1, 16)
    assert round_to(36 - 1e-8, Rounding(mode=Mode.DOWN)) == F(36) - F(1, 16)


def test_an_exact_length_is_given_no_slack() -> None:
    assert round_to(36 + F(1, 10**12), Rounding(mode=Mode.UP)) == F(36) + F(1, 16)


def test_a_length_through_a_root_and_a_sine_rounds_like_the_plain_one() -> None:
    by_root = math.hypot(22.5, 30)  # 3-4-5: 37 1/2
    by_sine = 75 * math.sin(math.radians(30))
    for mode in Mode:
        assert round_to(by_root, Rounding(mode=mode)) == F(75, 2)
        assert round_to(by_sine, Rounding(mode=mode)) == F(75, 2)


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_no_number_is_refused(value: float) -> None:
    with pytest.raises(LengthError) as refused:
        rounded(value, SIXTEENTHS)
    assert refused.value.code == "not-finite"


@pytest.mark.parametrize("value", [5e-324, 1e308, -0.0])
def test_the_ends_of_the_floats_round(value: float) -> None:
    assert abs(round_to(value, SIXTEENTHS) - Fraction(value)) <= F(1, 32)
