"""Reading lengths: every form people write, and every refusal."""

import pickle

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from longpoint.lengths import MAX_LENGTH, MAX_TEXT, Fraction, LengthError, Unit, parse, tape

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
        ("30.625 IN", F(245, 8)),
        (".5 in", F(1, 2)),
        ("9/8 in", F(9, 8)),
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
        ("2 1/2'", F(30)),
        ("778 mm", F(3890, 127)),
        ("77.8cm", F(3890, 127)),
        ("0.778 m", F(3890, 127)),
        ("1 m", F(5000, 127)),
        ("1 metre", F(5000, 127)),
        ("25.4 millimeters", F(1)),
        ("25 2/5 mm", F(1)),
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
        ("34 in\n", "not-a-length"),
        ("\0", "not-a-length"),
        ("34\0 in", "not-a-length"),
        ("34 in; drop table", "not-a-length"),
        ("34 1/0", "zero-denominator"),
        ("1/00 in", "zero-denominator"),
        ("34 9/8 in", "improper-fraction"),
        ("34 8/8 in", "improper-fraction"),
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
        ("1/1000000001 in", "too-fine"),
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
    for asked in Unit:
        assert parse(tape(length, asked)) == length
