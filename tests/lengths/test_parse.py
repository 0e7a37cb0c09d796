"""Reading lengths: every form people write, and every refusal."""

import pickle

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from longpoint.lengths import MAX_LENGTH, MAX_TEXT, Fraction, Length, LengthError, Unit, parse
from longpoint.lengths.parsing import MAX_DENOMINATOR
from longpoint.lengths.printing import readable

F = Fraction


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ('30-5/8"', F(245, 8)),
        ("30 5/8 in", F(245, 8)),
        ("30 5/8in", F(245, 8)),
        ("30-5/8 in.", F(245, 8)),
        ("30 5/8 inches", F(245, 8)),
        ("1 inch", F(1)),
        ("30 5/8 ins", F(245, 8)),
        ("30 5/8 ins.", F(245, 8)),
        ("30 5/8 inches.", F(245, 8)),
        ("30 5/8 in\n", F(245, 8)),
        ("\r\n30 5/8 in\r\n", F(245, 8)),
        ("1/128 in", F(1, 128)),
        ("1 in.", F(1)),
        ("30.625 IN", F(245, 8)),
        (".5 in", F(1, 2)),
        ("0 in", F(0)),
        ("\t30\u00a05/8\u202fin ", F(245, 8)),
        ("2' 6-5/8\"", F(245, 8)),
        ("2'6-5/8\"", F(245, 8)),
        ("2'-6 5/8\"", F(245, 8)),
        ("2' - 6 5/8\"", F(245, 8)),
        ("2ft 6.625in", F(245, 8)),
        ("2 feet 6 5/8 inches", F(245, 8)),
        ("2 ft. 10 in.", F(34)),
        ("2' 0\"", F(24)),
        ("5'", F(60)),
        ("1 foot", F(12)),
        ("2.5 ft", F(30)),
        ("2.5'", F(30)),
        ("2.100 ft", F(126, 5)),
        ("2.12'", F(636, 25)),
        ("2' 6-5/8 ins.", F(245, 8)),
        ("2 1/2'", F(30)),
        ("778 mm", F(3890, 127)),
        ("778 mm.", F(3890, 127)),
        ("77.8 cm.", F(3890, 127)),
        ("77.8cm", F(3890, 127)),
        ("0.778 m", F(3890, 127)),
        ("1 m", F(5000, 127)),
        ("1 metre", F(5000, 127)),
        ("25.4 millimeters", F(1)),
        ("25 1/2 mm", F(255, 254)),
        ("30⅝ in", F(245, 8)),
        ("30 ⅝″", F(245, 8)),
        ("34-⅜”", F(275, 8)),
        ("⅝ in", F(5, 8)),
        ("2′ 6⅝″", F(245, 8)),
        ("2’ 6⅝”", F(245, 8)),
        ("30 5⁄8 in", F(245, 8)),
        ("34 ³⁄₁₆ in", F(547, 16)),
        ("34³⁄₁₆ in", F(547, 16)),
        ("30–5/8 in", F(245, 8)),
        ("34''", F(34)),
        ("2' 10''", F(34)),
        ("2’ 10’’", F(34)),
        ("12000 in", F(12000)),
        ("1000'", F(12000)),
    ],
)
def test_reads(text: str, inches: Fraction) -> None:
    assert parse(text) == inches


@pytest.mark.parametrize("text", ["30 5/8", "30-5/8", "30⅝", "30.625"])
def test_a_bare_number_takes_the_unit_given(text: str) -> None:
    assert parse(text, Unit.IN) == F(245, 8)
    assert parse(text, Unit.FT) == F(735, 2)
    assert parse(text, Unit.MM) == F(1225, 1016)


def test_a_written_unit_wins_over_the_unit_given() -> None:
    assert parse("34 in", Unit.MM) == 34


def test_inches_after_feet_may_be_bare_where_the_unit_given_is_inches() -> None:
    assert parse("2' 6-5/8", Unit.IN) == F(245, 8)
    for unit in (None, Unit.FT, Unit.MM):
        with pytest.raises(LengthError) as refused:
            parse("2' 6-5/8", unit)
        assert refused.value.code == "missing-unit"


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "empty"),
        ("   ", "empty"),
        ("34", "missing-unit"),
        ("30 5/8", "missing-unit"),
        ("2' 10", "missing-unit"),
        ("34 yd", "unknown-unit"),
        ("30 5/8 1/2", "not-a-length"),
        ("30 5/8 1/2 in", "not-a-length"),
        ("½½ in", "not-a-length"),
        ("½5 in", "not-a-length"),
        ("1/2/3 in", "not-a-length"),
        ("30 5/8.5 in", "not-a-length"),
        ("30.625 1/2 in", "not-a-length"),
        ("34 - 1/2 in", "not-a-length"),
        ("34. in", "not-a-length"),
        ("in", "not-a-length"),
        ('"', "not-a-length"),
        ("+3 in", "not-a-length"),
        ("3 4 in", "not-a-length"),
        ("3² in", "not-a-length"),
        ("٣ in", "not-a-length"),
        ("1_000 in", "not-a-length"),
        ("34\nin", "not-a-length"),
        ("34 in\n 1", "not-a-length"),
        ("\0", "not-a-length"),
        ("34\0 in", "not-a-length"),
        ("34 in; drop table", "not-a-length"),
        ("34 1/0", "zero-denominator"),
        ("1/00 in", "zero-denominator"),
        ("34 9/8 in", "improper-fraction"),
        ("34 8/8 in", "improper-fraction"),
        ("5/3 in", "improper-fraction"),
        ("30 5/3 in", "improper-fraction"),
        ("9/8 in", "improper-fraction"),
        ("5/7 in", "not-on-a-tape"),
        ("30 5/9 in", "not-on-a-tape"),
        ("1/3 in", "not-on-a-tape"),
        ("1/256 in", "not-on-a-tape"),
        ("1/10 in", "not-on-a-tape"),
        ("1/1000000 in", "not-on-a-tape"),
        ("25 2/5 mm", "not-on-a-tape"),
        ("1/3 ft", "not-on-a-tape"),
        ("2' 6-5/7\"", "not-on-a-tape"),
        ("2.10'", "feet-or-inches"),
        ("2.10 ft", "feet-or-inches"),
        ("2.11 feet", "feet-or-inches"),
        ("2.06'", "feet-or-inches"),
        ("-3 in", "negative"),
        ("−3 in", "negative"),
        ("-½ in", "negative"),
        ("-.5 in", "negative"),
        ("1e400 in", "exponent"),
        ("1E-3 in", "exponent"),
        ("NaN", "not-finite"),
        ("nan mm", "not-finite"),
        ("inf in", "not-finite"),
        ("-Infinity in", "not-finite"),
        ("87,6 cm", "decimal-comma"),
        ("1,250 mm", "decimal-comma"),
        ("2' 12\"", "inches-past-a-foot"),
        ("2' 14\"", "inches-past-a-foot"),
        ("5' 3' 2\"", "mixed-units"),
        ("3\" 2'", "mixed-units"),
        ("2.5' 3\"", "mixed-units"),
        ("2 1/2' 3\"", "mixed-units"),
        ("1 m 20 cm", "mixed-units"),
        ("12000.001 in", "too-large"),
        ("1001'", "too-large"),
        ("400 m", "too-large"),
        ("99999999999999 in", "too-many-digits"),
        ("0.00000000000001 in", "too-many-digits"),
        ("1/10000000000000 in", "too-many-digits"),
        ("1/1000000001 in", "not-on-a-tape"),
        ("0.1234567891 in", "too-fine"),
        ("9" * 10_000, "too-long"),
        ("34 1/" + "0" * 100, "too-long"),
    ],
)
def test_refuses(text: str, code: str) -> None:
    with pytest.raises(LengthError) as refused:
        parse(text)
    assert refused.value.code == code
    assert str(refused.value) == str(refused.value.detail)
    assert str(refused.value).endswith(".")
    assert str(refused.value).isprintable()


@pytest.mark.parametrize(
    ("text", "nearest"),
    [
        ("5/7 in", "11/16 in"),
        ("30 5/9 in", "30 9/16 in"),
        ("1/3 in", "5/16 in"),
        ("1/1000000 in", "0 in"),
        ("30 14/15 in", "30 15/16 in"),
        ("30 99/100 in", "31 in"),
        ("5/3 in", "1 11/16 in"),
        ("30 5/3 in", "31 11/16 in"),
        ("9/8 in", "1 1/8 in"),
        ("30 35/32 in", "31 3/32 in"),
        ("25 2/5 mm", "25 mm"),
        ("25 2/3 cm", "25.7 cm"),
        ("2 1/3 ft", "2' 4\""),
        ("2' 6-5/7\"", "2' 6 11/16\""),
    ],
)
def test_a_fraction_no_tape_shows_is_refused_with_the_nearest_mark(text: str, nearest: str) -> None:
    with pytest.raises(LengthError) as refused:
        parse(text)
    assert str(refused.value).endswith(f"nearest tape mark is {nearest}.")
    parse(nearest)


@given(st.integers(0, 300), st.integers(1, 400), st.integers(1, 400))
def test_the_nearest_mark_is_a_mark_and_no_other_is_nearer(ones: int, above: int, below: int) -> None:
    text, halves = f"{ones} {above}/{below} in", (1, 2, 4, 8, 16, 32, 64, 128)
    if above < below and below in halves:
        assert parse(text) == ones + F(above, below)
        return
    with pytest.raises(LengthError) as refused:
        parse(text)
    assert refused.value.code == ("improper-fraction" if above >= below else "not-on-a-tape")
    mark = parse(str(refused.value).removesuffix(".").rpartition("mark is ")[2])
    assert mark.denominator in halves
    assert abs(mark - ones - F(above, below)) <= F(1, 32)


def test_decimals_of_feet_that_read_as_inches_are_refused_with_both_ways_of_writing_it() -> None:
    with pytest.raises(
        LengthError, match=r"2' 10\" or decimal feet\. Write 2' 10\", or 2\.100 ft"
    ) as refused:
        parse("2.10'")
    assert refused.value.code == "feet-or-inches"
    with pytest.raises(LengthError):
        parse("2.10", Unit.FT)
    assert parse("2.10", Unit.IN) == F(21, 10)


def test_a_length_keeps_its_text_without_the_end_of_its_line() -> None:
    assert Length.of("30 5/8 in\n").text == "30 5/8 in"


def test_the_longest_text_is_read_and_one_more_is_not() -> None:
    assert parse(" " * (MAX_TEXT - 4) + "1 in") == 1
    with pytest.raises(LengthError):
        parse(" " * (MAX_TEXT - 3) + "1 in")


def test_a_refusal_shows_what_does_not_print_and_leaves_quotes_alone() -> None:
    with pytest.raises(LengthError, match=r"“2' \\x00 14\"”"):
        parse("2' \0 14\"")


def test_a_refusal_survives_a_trip_between_processes() -> None:
    with pytest.raises(LengthError) as refused:
        parse("-3 in")
    copy = pickle.loads(pickle.dumps(refused.value))
    assert (copy.code, copy.detail) == (refused.value.code, refused.value.detail)


@given(st.text(max_size=80), st.sampled_from([None, *Unit]))
@example("\ud800 in", None)
@example("'''", None)
@example("1'1\"1", None)
def test_any_text_is_a_length_or_a_refusal(text: str, unit: Unit | None) -> None:
    _is_a_length_or_a_refusal(text, unit)


@given(st.text("0123456789 .,/-'\"’½³⁄₆″inftcmex+", max_size=24), st.sampled_from([None, *Unit]))
def test_anything_like_a_length_is_a_length_or_a_refusal(text: str, unit: Unit | None) -> None:
    _is_a_length_or_a_refusal(text, unit)


def _is_a_length_or_a_refusal(text: str, unit: Unit | None) -> None:
    try:
        length = parse(text, unit)
    except LengthError:
        return
    assert isinstance(length, Fraction)
    assert 0 <= length <= MAX_LENGTH
    assert parse(readable(length)) == length
    if length.denominator <= MAX_DENOMINATOR // 1000:
        assert parse(Length(length, text).text, unit) == length
