"""A sentence: a key with values, put into words by whoever writes the answer."""

import pickle

import pytest

from longpoint.lengths import Fraction, Length, Rounding, RoundTo, length_writer
from longpoint.texts import Sentence, say
from longpoint.texts import catalog as catalogs
from longpoint.values import Angle, Fault, encoder

METRIC = length_writer(Rounding(RoundTo.MILLIMETER))
SIXTEENTHS = length_writer(Rounding())
LEAVES = "The rough opening's width leaves {} for shims at each side; {} is usual."


def leaves(room: object, usual: object = Fraction(1, 4)) -> Sentence:
    return say("finding", "framing.width-tight", room=room, usual=usual)


def test_a_sentence_is_its_key_and_its_values() -> None:
    assert leaves(Fraction(1, 8)) == leaves(Fraction(1, 8))
    assert hash(leaves(Fraction(1, 8))) == hash(leaves(Fraction(1, 8)))
    assert leaves(Fraction(1, 8)) != leaves(Fraction(1, 16))
    assert say("offer", "apron.rip") != say("offer", "apron.drop")
    assert say("offer", "apron.rip") != "apron.rip"


def test_it_goes_from_one_process_to_another_and_says_the_same() -> None:
    said = leaves(Fraction(1, 8)) + say("hint", "values.nearest", name="left")
    again = pickle.loads(pickle.dumps(said))
    assert again == said
    assert str(again) == str(said)


def test_the_answer_gives_its_lengths_their_unit_and_rounding() -> None:
    said = leaves(Fraction(1, 10), Length.of("1/4 in"))
    assert str(said) == LEAVES.format("0.100 in", "1/4 in")
    assert said.written(SIXTEENTHS) == LEAVES.format("1/8 in", "1/4 in")
    assert said.written(METRIC) == LEAVES.format("3 mm", "6 mm")


def test_an_irrational_length_is_a_length() -> None:
    assert leaves(2**0.5 / 16).written(SIXTEENTHS) == LEAVES.format("1/16 in", "1/4 in")


@pytest.mark.parametrize(
    ("room", "inches", "metric"),
    [
        (Fraction(15, 64), ("15/64 in", "1/4 in"), ("5.95 mm", "6.35 mm")),
        (Fraction(1, 64), ("1/64 in", "1/4 in"), ("0.4 mm", "6.35 mm")),
        (Fraction(1, 4), ("1/4 in", "1/4 in"), ("6 mm", "6 mm")),
        (Fraction(0), ("0 in", "1/4 in"), ("0 mm", "6 mm")),
    ],
)
def test_lengths_that_differ_never_read_alike(
    room: Fraction, inches: tuple[str, str], metric: tuple[str, str]
) -> None:
    assert leaves(room).written(SIXTEENTHS) == LEAVES.format(*inches)
    assert leaves(room).written(METRIC) == LEAVES.format(*metric)


def test_a_number_is_written_as_the_catalog_says() -> None:
    said = say("problem", "frame.corner-turns-in", corner="top left", degrees=Angle(181.256), reading="rise")
    assert str(said) == "The top left corner would turn inward (181.26 degrees). Measure the rise again."


def test_a_list_is_joined_as_the_catalog_says() -> None:
    one, two = ("`doors`",), ("`doors`", "`walls`", "`sills`")
    said = "This is not a field here: `latch` belongs under"
    assert str(say("problem", "values.belongs-under", field="latch", places=one)) == f"{said} `doors`."
    assert str(say("problem", "values.belongs-under", field="latch", places=two)) == (
        f"{said} `doors`, `walls` or `sills`."
    )
    assert str(say("caution", "sheet.here", marks=("K1", "K2"))) == "Here: K1, K2."


def test_a_count_decides_between_singular_and_plural() -> None:
    one = say("problem", "mulls.width-count", units=2, count=1, given=0)
    several = say("problem", "mulls.width-count", units=3, count=2, given=0)
    assert "one mull stands:" in str(one)
    assert "stand 2 mulls:" in str(several)


def test_a_sentence_within_one_is_written_by_the_same() -> None:
    said = say("offer", "tried.refused", why=leaves(Fraction(1)))
    assert said.written(METRIC) == f"It cannot be sent as things are: {LEAVES.format('25 mm', '6 mm')}"


def test_one_is_said_after_another() -> None:
    first, second, third = say("offer", "apron.rip"), say("offer", "apron.drop"), say("offer", "head.rip")
    assert str(first + second) == f"{first} {second}"
    assert str((first + second) + third) == str(first + (second + third)) == f"{first} {second} {third}"
    assert first + None is first


def test_on_the_wire_it_is_text_in_the_words_of_the_answer() -> None:
    fault = Fault.at(("readings",), "x", leaves(Fraction(1), Fraction(2)))
    assert b'"detail":"' + LEAVES.format("25 mm", "51 mm").encode() in encoder(METRIC).encode(fault)


def test_one_without_values_is_read_once_and_one_that_is_not_written_never() -> None:
    catalogs.words.cache_clear()
    said = say("offer", "apron.rip")
    assert catalogs.words.cache_info().currsize == 0
    assert str(said) is str(said)
    assert catalogs.words.cache_info().misses == 1


def test_what_the_catalog_has_not_is_a_fault_of_the_service() -> None:
    with pytest.raises(KeyError):
        str(say("offer", "no.such"))
    with pytest.raises(KeyError):
        str(say("offer", "wall.plane"))
    with pytest.raises(KeyError):
        str(say("offer", "wall.plane", depth=Fraction(1)))
