"""Two readings alike but for one digit."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import Length
from longpoint.shop.digits import differ_by_one


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [
        ("30 5/8 in", "36 5/8 in", True),
        ("30 5/8 in", "80 5/8 in", True),
        ("46 1/4 in", "64 1/4 in", True),
        ("30 5/8 in", "30 3/8 in", False),  # two windows of one size differ so
        ("30 5/8 in", "36 3/8 in", False),
        ("30 5/8 in", "41 5/8 in", False),
        ("9 1/2 in", "19 1/2 in", False),
        ("30.625 in", "36.625 in", True),
        ("778 mm", "718 mm", True),
        ("778 mm", "774 mm", False),
        ("77.8 cm", "71.8 cm", True),
        ("778.5 mm", "718.5 mm", False),  # no tape is read to half a millimeter
        ("778 mm", "30 5/8 in", False),
    ],
)
def test_one_digit(one: str, other: str, alike: bool) -> None:
    assert differ_by_one(Length.of(one), Length.of(other)) is alike
    assert differ_by_one(Length.of(other), Length.of(one)) is alike


@given(st.integers(10, 99), st.integers(0, 15), st.integers(0, 1), st.integers(1, 9))
def test_a_digit_that_was_changed_is_seen(whole: int, sixteenths: int, place: int, digit: int) -> None:
    digits = list(str(whole))
    digits[place] = str(digit)
    changed = int("".join(digits))
    part = Fraction(sixteenths, 16)
    one, other = (Length.of(f"{float(number + part)} in") for number in (whole, changed))
    assert differ_by_one(one, other) is (changed != whole)
