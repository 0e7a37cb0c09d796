"""Lengths in a caller's hands: exact, and printed as a tape reads."""

import pickle
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint import lengths
from longpoint_sdk import Length, LengthError, types

ON_A_TAPE = st.integers(0, 1000 * 64).map(lambda marks: Fraction(marks, 64))


def measured(exact: str | None, text: str, unit: str = "in", real: float | None = None) -> types.MarkedLength:
    return types.MarkedLength(exact=exact, real=real, text=text, unit=unit, residual="0 in")


def test_lengths_add_up_exactly() -> None:
    jamb, reveal, casing, horn = Length("30 5/8 in"), Length("3/16 in"), Length("2 1/2 in"), Length("3/4 in")
    assert str(jamb + 2 * (reveal + casing + horn)) == "37 1/2 in"


def test_inches_and_millimeters_mix() -> None:
    assert Length("25.4 mm") == Length("1 in")
    assert str(Length("1 in") + Length("10 mm")) == "35.4 mm"
    assert str(Length("10 mm") + Length("1 in")) == "35.4 mm"
    assert Length("1 ft") / Length("1 in") == 12


def test_a_sum_starts_from_nought() -> None:
    assert str(sum([Length("8 ft"), Length("8 ft")], start=Length("0 in"))) == "192 in"
    assert str(sum([Length("8 ft"), Length("6 in")])) == "8' 6\""


def test_how_many_fit_and_what_is_left() -> None:
    stick, piece = Length("96 in"), Length("36 1/8 in")
    assert stick // piece == 2
    assert str(stick % piece) == "23 3/4 in"
    assert Length("96 in") - stick // piece * piece == stick % piece


def test_comparing() -> None:
    assert Length("36 in") < Length("1 m") <= Length("1000 mm")
    assert max(Length("35 15/16 in"), Length("3'")) == Length("36 in")
    assert len({Length("36 in"), Length("3'"), Length("914.4 mm")}) == 1
    assert Length("36 in") != "36 in"
    assert not Length("0 in")


@pytest.mark.parametrize(
    ("value", "unit"),
    [
        ("30 5/8", None),
        ("30 5/8 yd", None),
        ("about a foot", None),
        ("1/0 in", None),
        ("5 9/8 in", None),
        ("9/8 in", None),
        ("30 5/7 in", None),
        ("2.10'", None),
        (34, None),
    ],
)
def test_what_is_no_length_is_refused(value: str | int, unit: None) -> None:
    with pytest.raises(LengthError):
        Length(value, unit)


@pytest.mark.parametrize("value", [30.625, True, None, b"34 in"])
def test_what_is_no_exact_number_is_refused(value: object) -> None:
    with pytest.raises(TypeError):
        Length(value, "in")  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        Length("1 in") * 0.5  # type: ignore[operator]
    with pytest.raises(TypeError):
        Length("1 in") + 1  # type: ignore[operator]


def test_a_length_never_changes() -> None:
    with pytest.raises(AttributeError):
        Length("1 in").inches = Fraction(2)  # type: ignore[misc]


def test_printing() -> None:
    assert str(Length("30.625", "in")) == "30 5/8 in"
    assert repr(Length("2' 6-5/8\"")) == "Length('2\\' 6 5/8\"')"
    assert f"{Length('778 mm'):>10}" == "    778 mm"
    assert str(Length("778 mm").to("in").round("1/16 in")) == "30 5/8 in"
    assert str(Length("-1/32 in")) == "-1/32 in"
    assert float(Length("1 ft")) == 1.0
    assert pickle.loads(pickle.dumps(Length("778 mm"))).unit == "mm"


@given(ON_A_TAPE, st.sampled_from(["in", "ft", "mm", "cm", "m"]))
def test_it_prints_what_the_service_prints_and_reads_it_back(inches: Fraction, unit: lengths.Unit) -> None:
    unit = lengths.Unit(unit)
    text = lengths.tape(lengths.Fraction(inches), unit)
    mine = Length.from_inches(inches, unit.value)
    assert str(mine) == text
    assert Length(text) == mine == Length(str(mine))


PRINTABLE = st.characters(min_codepoint=32, max_codepoint=126)
TEXTS = st.from_regex(
    r"[0-9]{1,4}([ -][0-9]{1,2}/[0-9]{1,3})?(\.[0-9]{1,4})? ?(in|\"|'|ft|mm|cm|m|)",
    fullmatch=True,
    alphabet=PRINTABLE,
)
FEET = st.from_regex(
    r"[0-9]{1,3} ?('|ft|feet) ?-?[0-9]{1,2}([ -][0-9]{1,2}/[0-9]{1,2})? ?(in|\"|)",
    fullmatch=True,
    alphabet=PRINTABLE,
)


@given(TEXTS | FEET, st.sampled_from([None, "in", "mm"]))
def test_it_reads_what_the_service_reads(text: str, unit: lengths.Unit | None) -> None:
    try:
        theirs: Fraction | None = lengths.parse(text, lengths.Unit(unit) if unit else None)
    except lengths.LengthError as refusal:
        theirs = None
        if refusal.code == "too-large":  # only the service has a longest length
            return
    try:
        mine: Fraction | None = Length(text, unit.value if isinstance(unit, lengths.Unit) else unit).inches
    except LengthError:
        mine = None
    assert mine == theirs


@given(ON_A_TAPE, st.sampled_from(list(lengths.RoundTo)), st.sampled_from(list(lengths.Mode)))
def test_it_rounds_as_the_service_rounds(inches: Fraction, to: lengths.RoundTo, mode: lengths.Mode) -> None:
    theirs = lengths.round_to(lengths.Fraction(inches), lengths.Rounding(to, mode))
    mine = Length.from_inches(inches).round(to.value, mode.value)
    assert mine.inches == theirs
    assert mine.unit == to.unit


def test_an_answered_length_reckons_exactly_and_prints_rounded() -> None:
    overall = measured("1201/32", "37 9/16 in")
    assert f"{overall}" == "37 9/16 in"
    assert str(overall + Length("1/32 in")) == "37 9/16 in"
    assert str(2 * overall) == "75 1/16 in"
    assert str(overall.rounded) == "37 9/16 in"
    assert overall.length.is_exact
    assert overall == Length("37 17/32 in")
    assert overall < Length("37 9/16 in")
    assert overall == measured("1201/32", "37 1/2 in")
    assert str(sum([overall, overall])) == "75 1/16 in"


def test_an_irrational_length_says_so_through_every_sum() -> None:
    leg = measured(None, "46 5/16 in", real=46.311698765)
    assert not leg.length.is_exact
    assert leg.inches == Fraction(46311698765, 10**9)
    assert not (Length("1 in") + leg).is_exact
    assert not (leg * 2).is_exact
    assert (Length("1 in") + Length("1 in")).is_exact
    metric = measured(None, "1176.5 mm", "mm", real=1176.317158631)
    assert metric.length.in_unit("mm") == Fraction(1176317158631, 10**9)
