"""Printing: texts worked by hand, and every text reads back to its length."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import Fraction, LengthError, Unit, exact, feet_inches, parse, tape
from longpoint.lengths.printing import readable

F = Fraction


@pytest.mark.parametrize(
    ("inches", "unit", "text"),
    [
        (F(75, 2), Unit.IN, "37 1/2 in"),
        (F(1, 16), Unit.IN, "1/16 in"),
        (F(0), Unit.IN, "0 in"),
        (F(36), Unit.IN, "36 in"),
        (F(-1, 32), Unit.IN, "-1/32 in"),
        (F(-75, 2), Unit.IN, "-37 1/2 in"),
        (F(343, 10), Unit.IN, "34.3 in"),
        (F(1, 128), Unit.IN, "0.0078125 in"),
        (F(1, 3), Unit.IN, "1/3 in"),
        (F(3890, 127), Unit.IN, "30 80/127 in"),
        (F(75, 2), Unit.MM, "952.5 mm"),
        (F(5, 127), Unit.MM, "1 mm"),
        (F(5, 381), Unit.MM, "1/3 mm"),
        (F(1, 64), Unit.MM, "0.396875 mm"),
        (F(1, 64), Unit.M, "0.000396875 m"),
        (F(75, 2), Unit.CM, "95.25 cm"),
        (F(75, 2), Unit.M, "0.9525 m"),
        (F(75, 2), Unit.FT, "3' 1 1/2\""),
        (F(0), Unit.FT, '0"'),
    ],
)
def test_tape(inches: Fraction, unit: Unit, text: str) -> None:
    assert tape(inches, unit) == text


def test_inches_are_the_plain_case() -> None:
    assert tape(F(75, 2)) == "37 1/2 in"


@pytest.mark.parametrize(
    ("inches", "text"),
    [(F(75, 2), "3' 1 1/2\""), (F(60), "5' 0\""), (F(21, 2), '10 1/2"'), (F(-75, 2), "-3' 1 1/2\"")],
)
def test_feet_inches(inches: Fraction, text: str) -> None:
    assert feet_inches(inches) == text


@pytest.mark.parametrize(
    ("inches", "unit", "text"),
    [
        (F(75, 2), Unit.IN, "75/2"),
        (F(36), Unit.IN, "36"),
        (F(75, 2), Unit.FT, "25/8"),
        (F(75, 2), Unit.MM, "1905/2"),
        (F(-1, 32), Unit.IN, "-1/32"),
    ],
)
def test_exact(inches: Fraction, unit: Unit, text: str) -> None:
    assert exact(inches, unit) == text


printable = st.fractions(0, 12_000, max_denominator=10**9)
on_a_tape = st.integers(0, 64 * 12_000).map(lambda marks: F(marks, 64))


@given(on_a_tape, st.sampled_from(Unit))
def test_what_is_printed_reads_back_to_the_same_length(inches: Fraction, unit: Unit) -> None:
    assert parse(tape(inches, unit)) == inches
    assert parse(feet_inches(inches)) == inches


@given(printable, st.sampled_from(Unit))
def test_the_exact_fraction_is_the_same_length(inches: Fraction, unit: Unit) -> None:
    assert Fraction(exact(inches, unit)) * parse("1", unit) == inches


@given(st.integers(0, 300), st.text("0123456789", min_size=1, max_size=6), st.sampled_from(Unit))
def test_what_is_read_prints_and_reads_back_in_every_unit(ones: int, places: str, unit: Unit) -> None:
    # Feet to two places, as 2.10, may be meant for feet and inches.
    length = parse(f"{ones}.{places}{'0' * (unit is Unit.FT and len(places) == 2)} {unit}")
    assert parse(readable(length)) == length
    assert parse(tape(length, unit)) == length


def test_inches_and_millimeters_together_print_in_millimeters() -> None:
    assert readable(parse("1 in") + parse("10 mm")) == "35.4 mm"
    assert readable(parse("30 5/8 in")) == "30 5/8 in"


@given(st.integers(1, 64 * 1000), st.sampled_from([Unit.MM, Unit.CM, Unit.M]))
def test_a_tapes_fraction_of_an_inch_is_a_decimal_in_every_metric_unit(
    sixty_fourths: int, unit: Unit
) -> None:
    assert "/" not in tape(F(sixty_fourths, 64), unit)


def test_a_negative_prints_and_is_refused_on_the_way_back() -> None:
    with pytest.raises(LengthError) as refused:
        parse(tape(F(-1, 16)))
    assert refused.value.code == "negative"
