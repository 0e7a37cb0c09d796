"""Money and angles: what may be written, and what goes out."""

from __future__ import annotations

import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import Rounding, length_writer
from longpoint.values import Amount, Angle, Cents, Price, Unreadable

WRITE = length_writer(Rounding())


@pytest.mark.parametrize(
    ("text", "cents"),
    [("0", 0), ("14.80", 1480), ("14.8", 1480), ("14", 1400), ("0.01", 1), ("999999999.99", 10**11 - 1)],
)
def test_money_is_whole_cents(text: str, cents: int) -> None:
    assert Price.read(text, None) == cents


@pytest.mark.parametrize(
    "text", ["", "-1", "1.234", "1.", ".5", "1,50", "$1", "1e3", " 1", "1\n", "1234567890", "١"]
)
def test_what_is_no_amount_of_money_is_refused(text: str) -> None:
    with pytest.raises(Unreadable) as refused:
        Price.read(text, None)
    assert refused.value.code == "wrong-form"


def test_of_what_is_no_amount_the_first_forty_characters_are_said() -> None:
    with pytest.raises(Unreadable) as refused:
        Price.read("x" * 1000, None)
    assert str(refused.value).startswith(f'"{"x" * 40}" is not an amount of money. ')


@pytest.mark.parametrize("given_", [14.8, 14, True, None, ["1"], {}])
def test_money_is_text(given_: object) -> None:
    with pytest.raises(Unreadable) as refused:
        Price.read(given_, None)
    assert refused.value.code == "wrong-type"


@pytest.mark.parametrize(
    ("cents", "text"),
    [(0, "0.00"), (5, "0.05"), (1480, "14.80"), (-5, "-0.05"), (-1480, "-14.80")],
)
def test_money_goes_out_with_two_places(cents: int, text: str) -> None:
    assert Cents(cents).written(WRITE) == str(Cents(cents)) == text


@given(st.integers(0, 10**11 - 1))
def test_money_comes_back_as_it_went_out(cents: int) -> None:
    assert Price.read(Cents(cents).written(WRITE), None) == cents


def test_what_money_is_only_answered_is_not_read() -> None:
    with pytest.raises(Unreadable) as refused:
        Cents.read("1.00", None)
    assert refused.value.code == "wrong-type"


def test_money_survives_a_trip_between_processes() -> None:
    again = pickle.loads(pickle.dumps(Cents(1480)))
    assert (again, type(again)) == (1480, Cents)


@pytest.mark.parametrize("kind", [Angle, Amount])
@pytest.mark.parametrize("given_", ["45", True, None, [45]])
def test_an_angle_or_an_amount_is_a_number(kind: type[Angle | Amount], given_: object) -> None:
    with pytest.raises(Unreadable) as refused:
        kind.read(given_, None)
    assert refused.value.code == "wrong-type"


@pytest.mark.parametrize(
    ("degrees", "written"),
    [
        (45, 45.0),
        (0, 0.0),
        (22.5, 22.5),
        (51.42857142857143, 51.428571),
        (0.0000005, 0.000001),
        (0.0000004, 0.0),
    ],
)
def test_an_angle_is_written_to_a_millionth(degrees: float, written: float) -> None:
    assert Angle.read(degrees, None).written(WRITE) == written


def test_an_angle_is_a_float_in_every_sum() -> None:
    assert Angle(45) == 45
    assert hash(Angle(45)) == hash(45.0)
    assert Angle(30) + Angle(15) == 45


def test_an_amount_is_written_to_four_places() -> None:
    assert Amount(3.590481).written(WRITE) == 3.5905
