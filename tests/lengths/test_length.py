"""A length as somebody sent it: its value and their text."""

from __future__ import annotations

import copy
import decimal
import fractions
import operator
import pickle
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import (
    Fraction,
    Irrational,
    Length,
    LengthError,
    PositiveLength,
    Rounding,
    Unit,
    length_writer,
    real,
)

HALF = Length.of("1/2 in")


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [
        ("30 5/8 in", None, Fraction(245, 8)),
        ("30 5/8", Unit.IN, Fraction(245, 8)),
        ("  2' 6-5/8\" ", None, Fraction(245, 8)),
        ("25.4", Unit.MM, Fraction(1)),
        ("0 in", None, Fraction(0)),
    ],
)
def test_it_keeps_its_text(text: str, unit: Unit | None, value: Fraction) -> None:
    length = Length.read(text, unit)
    assert (length, length.text, length.written(length_writer(Rounding()))) == (value, text, text)


def test_one_without_a_text_has_that_of_a_tape() -> None:
    assert Length(Fraction(245, 8)).text == "30 5/8 in"


def test_equality_and_hash_are_by_value_alone() -> None:
    inch, metric = Length.of("1 in"), Length.of("25.4 mm")
    assert inch == metric == PositiveLength.of("1 in") == 1 == 1.0 == Fraction(1) == fractions.Fraction(1)
    assert len({inch, metric, Fraction(1), fractions.Fraction(1), 1}) == 1
    assert inch != Length.of("2 in")
    assert metric.text == "25.4 mm"


@pytest.mark.parametrize(
    "other", [0.25, 1, Fraction(1, 4), fractions.Fraction(1, 4), decimal.Decimal("0.25"), HALF]
)
def test_it_compares_with_every_number(other: Any) -> None:
    plain = Fraction(1, 2)
    for compare in (operator.lt, operator.le, operator.eq, operator.ne, operator.ge, operator.gt):
        assert compare(HALF, other) == compare(plain, other)
        assert compare(other, HALF) == compare(other, plain)


@given(st.integers(1, 10**6), st.integers(1, 64), st.floats(0, 10**6))
def test_it_compares_with_a_float_as_its_value_does(top: int, bottom: int, other: float) -> None:
    length, plain = Length(Fraction(top, bottom)), Fraction(top, bottom)
    assert (length < other, length >= other, length == other) == (
        plain < other,
        plain >= other,
        plain == other,
    )


SUMS = {
    "plus": lambda a: a + Fraction(1, 3),
    "plus itself": lambda a: a + a,
    "plus a whole": lambda a: a + 1,
    "added to a whole": lambda a: 1 + a,
    "added to the library's": lambda a: fractions.Fraction(1, 3) + a,
    "minus": lambda a: a - Fraction(1, 3),
    "times": lambda a: a * 2,
    "over": lambda a: a / 3,
    "under": lambda a: 1 / a,
    "rest": lambda a: a % Fraction(1, 3),
    "squared": lambda a: a**2,
    "negative": lambda a: -a,
    "positive": lambda a: +a,
    "absolute": lambda a: abs(a),
    "rounded": lambda a: round(a, 2),
    "nearest": lambda a: a.limit_denominator(3),
    "sum": lambda a: sum([a, a]),
    "from a float": lambda a: a.from_float(0.5),
    "from a decimal": lambda a: a.from_decimal(decimal.Decimal("0.5")),
}


@pytest.mark.parametrize("kind", [Length, PositiveLength])
@pytest.mark.parametrize("sum_", SUMS)
def test_what_is_reckoned_from_it_is_nobodys_text(sum_: str, kind: type[Length]) -> None:
    found = SUMS[sum_](kind.of("1/2 in"))
    assert found == SUMS[sum_](Fraction(1, 2))
    assert isinstance(found, Fraction)
    assert not isinstance(found, Length)
    assert not hasattr(found, "text")


def test_with_a_float_it_is_a_float() -> None:
    assert type(HALF + 0.5) is float
    assert type(0.5 * HALF) is float


def test_one_that_cannot_be_nought_is_refused_so() -> None:
    for text in ("0 in", "0/8 in", "0.000 mm"):
        with pytest.raises(LengthError) as refused:
            PositiveLength.of(text)
        assert refused.value.code == "zero"
    assert Length.of("0 in") == 0
    assert PositiveLength.of("1/64 in") == Fraction(1, 64)


def test_reading_it_as_one_kind_is_not_reading_it_as_the_other() -> None:
    """Both are remembered by their text: neither is handed out for the other."""
    assert type(Length.of("7 in")) is Length
    assert type(PositiveLength.of("7 in")) is PositiveLength
    assert type(Length.of("7 in")) is Length


@pytest.mark.parametrize("given_", [30, 30.5, None, True, ["30 in"], {"text": "30 in"}])
def test_a_length_is_text(given_: object) -> None:
    with pytest.raises(LengthError) as refused:
        Length.read(given_, Unit.IN)
    assert refused.value.code == "wrong-type"


def test_a_bare_number_needs_a_unit() -> None:
    with pytest.raises(LengthError) as refused:
        Length.of("30 5/8")
    assert refused.value.code == "missing-unit"


def test_a_text_too_long_is_refused() -> None:
    with pytest.raises(LengthError) as refused:
        Length.read("1" * 65, Unit.IN)
    assert refused.value.code == "too-long"


@pytest.mark.parametrize("kind", [Length, PositiveLength])
@pytest.mark.parametrize("way", [lambda it: pickle.loads(pickle.dumps(it)), copy.copy, copy.deepcopy])
def test_it_survives_pickling_and_copying(kind: type[Length], way: Any) -> None:
    again = way(kind.of("778 mm"))
    assert (again, again.text, type(again)) == (kind.of("778 mm"), "778 mm", kind)


def test_in_an_answer_it_goes_without_its_text_and_a_float_is_marked() -> None:
    assert type(real(0.5)) is Irrational
    assert real(Fraction(1, 2)) == Fraction(1, 2)
    for kind in (Length, PositiveLength):
        found = real(kind.of("1/2 in"))
        assert found == Fraction(1, 2)
        assert not isinstance(found, Length)
