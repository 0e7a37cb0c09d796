"""What is said of an opening's readings: agreement, slips and their suspects, bow, and what cannot be."""

from __future__ import annotations

import random
from collections.abc import Callable
from fractions import Fraction as Exact

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.fit.openings import ALL, ANY, MIDDLE, NINE, SIX, TEN, exact, opening, read, slipped, swapped
from longpoint.geometry.fit.adjust import adjust
from longpoint.geometry.fit.check import Checked, Verdict, check
from longpoint.geometry.fit.readings import Reading, ReadingKind
from longpoint.geometry.fit.slips import usual_slips
from longpoint.lengths import Fraction

F = Fraction
COUNT = 1000


def perfect(kinds: tuple[ReadingKind, ...], seed: int = 1) -> list[Reading]:
    true = exact(opening(random.Random(seed)))
    return [Reading(kind, true[kind]) for kind in kinds]


def rectangle(*values: Exact | int) -> list[Reading]:
    return [Reading(kind, F(value)) for kind, value in zip(SIX, values, strict=True)]


def tried(kinds: tuple[ReadingKind, ...], size: float, count: int = COUNT) -> list[tuple[int, Checked]]:
    draw = random.Random(f"{kinds}{size}")
    found = []
    for _ in range(count):
        readings = read(draw, opening(draw), kinds)
        number = draw.randrange(len(kinds))
        found.append((number, check(slipped(readings, number, size * draw.choice((1, -1))))))
    return found


def part(found: list[tuple[int, Checked]], holds: Callable[[int, Checked], bool]) -> float:
    return sum(holds(number, checked) for number, checked in found) / len(found)


def alarmed(_: int, checked: Checked) -> bool:
    return checked.verdict not in (Verdict.AGREE, Verdict.NO_CHECK, Verdict.NOT_DETERMINED)


@pytest.mark.parametrize(("size", "least"), [(0.5, 0.97), (1.0, 0.99), (12.0, 0.99)])
def test_six_readings_find_a_slip(size: float, least: float) -> None:
    found = tried(SIX, size)
    assert part(found, alarmed) >= least
    assert part(found, lambda number, checked: not checked.suspects or number in _numbers(checked)) == 1


def test_six_readings_find_swapped_digits() -> None:
    draw = random.Random("swapped")
    alarms = count = 0
    while count < COUNT:
        readings = read(draw, opening(draw, sizes=ANY), SIX)
        number = draw.randrange(6)
        by = swapped(readings[number])
        if by is not None:
            count += 1
            alarms += alarmed(number, check(slipped(readings, number, by)))
    assert alarms / count >= 0.99


def test_with_the_sill_and_both_plumbs_a_quarter_is_found_and_named_among_three() -> None:
    found = tried(NINE, 0.25)
    assert part(found, alarmed) >= 0.94
    named = [each for each in found if each[1].suspects]
    assert part(named, lambda _, checked: len(checked.suspects) <= 3) >= 0.98
    assert part(named, lambda number, checked: number in _numbers(checked)) >= 0.98


def test_with_four_bubbles_one_reading_is_named() -> None:
    named = [each for each in tried(TEN, 1.0) if each[1].suspects]
    assert part(named, lambda number, checked: _numbers(checked) == (number,)) >= 0.99


@pytest.mark.parametrize("kinds", [SIX, NINE, TEN, ALL], ids=len)
def test_true_readings_alarm_in_a_hundredth(kinds: tuple[ReadingKind, ...]) -> None:
    assert part(tried(kinds, 0.0, 4000), alarmed) <= 0.015


def _numbers(checked: Checked) -> tuple[int, ...]:
    return tuple(suspect.number for suspect in checked.suspects)


@pytest.mark.parametrize(
    ("bow", "least", "most"), [(1 / 32, 0.03, 0.2), (1 / 16, 0.2, 0.5), (1 / 8, 0.9, 1.0)]
)
def test_a_bow_is_said_to_be_one_and_is_no_slip(bow: float, least: float, most: float) -> None:
    draw = random.Random(f"{bow}")
    found = [check(read(draw, opening(draw), MIDDLE, bow)) for _ in range(1000)]
    assert least <= sum(bool(checked.bows) for checked in found) / 1000 <= most
    assert sum(checked.verdict is not Verdict.AGREE for checked in found) / 1000 <= 0.015


def test_a_bow_has_its_size_and_its_side() -> None:
    readings = perfect(MIDDLE)
    readings[6] = Reading(ReadingKind.WIDTH_MIDDLE, float(readings[6].value) - 0.1875)
    checked = check(readings)
    assert checked.verdict is Verdict.AGREE
    (bow,) = checked.bows
    assert (bow.kind, bow.by) == (ReadingKind.WIDTH_MIDDLE, pytest.approx(-0.1875, abs=1e-6))


def test_a_middle_reading_an_inch_off_is_a_slip() -> None:
    checked = check(slipped(perfect(ALL), ALL.index(ReadingKind.WIDTH_MIDDLE), 1.0))
    assert checked.verdict is Verdict.ONE_SLIP
    assert [suspect.kind for suspect in checked.suspects] == [ReadingKind.WIDTH_MIDDLE]


@pytest.mark.parametrize(("kinds", "least"), [(NINE, 0.65), (TEN, 0.85)], ids=["9", "10"])
def test_two_slips_of_an_inch_are_said_to_be_more_than_one(
    kinds: tuple[ReadingKind, ...], least: float
) -> None:
    draw = random.Random("two")
    many = alarms = 0
    for _ in range(1000):
        readings = read(draw, opening(draw), kinds)
        for number in draw.sample(range(len(kinds)), 2):
            readings = slipped(readings, number, draw.choice((1, -1)))
        checked = check(readings)
        many += checked.verdict is Verdict.MORE_THAN_ONE
        alarms += alarmed(0, checked)
        assert (checked.verdict is Verdict.MORE_THAN_ONE) <= (not checked.suspects)
    assert alarms >= 990
    assert many / alarms >= least


def test_one_diagonal_gives_no_check_and_the_other_would() -> None:
    checked = check(rectangle(36, 36, 48, 48, 60, 60)[:5])
    assert checked.verdict is Verdict.NO_CHECK
    assert checked.ask == (ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT,)
    assert checked.unchecked == (0, 1, 2, 3, 4)
    assert checked.shape is not None


def test_four_sides_alone_ask_for_a_diagonal() -> None:
    checked = check(rectangle(36, 36, 48, 48, 60, 60)[:4])
    assert (checked.verdict, checked.shape) == (Verdict.NOT_DETERMINED, None)
    assert checked.ask == (ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT,)


@pytest.mark.parametrize("kind", TEN[6:])
def test_a_single_bubble_checks_nothing(kind: ReadingKind) -> None:
    checked = check(perfect((*SIX, kind)))
    assert checked.verdict is Verdict.AGREE
    assert checked.unchecked == (6,)
    assert checked.shape is not None
    assert checked.shape.checks == 1


def test_six_readings_suspect_all_six_that_they_cannot_tell_apart() -> None:
    checked = check(rectangle(37, 36, 48, 48, 60, 60))
    assert checked.verdict is Verdict.ONE_SLIP
    assert len(checked.suspects) == 6
    for suspect in checked.suspects:
        assert set(suspect.alike) == {0, 1, 2, 3, 4, 5} - {suspect.number}
    assert len(checked.take_again) == 2
    assert checked.ask == (ReadingKind.SILL_LEVEL, ReadingKind.LEFT_PLUMB, ReadingKind.RIGHT_PLUMB)


def test_suspects_say_by_how_much_and_which_slip_that_is() -> None:
    """36 wide read as 48: a foot. As 63: swapped digits. What is not a usual slip has no name."""
    (suspect,) = check(slipped(perfect(TEN), 0, 12.0)).suspects
    assert (suspect.kind, suspect.off) == (ReadingKind.WIDTH_BOTTOM, pytest.approx(12.0, abs=1e-4))
    assert suspect.slip is not None
    assert suspect.slip.name == "12 in"
    odd = slipped(perfect(TEN), 3, 0.75)
    (suspect,) = check(odd).suspects
    assert (suspect.number, suspect.slip) == (3, None)
    assert suspect.off == pytest.approx(0.75, abs=1e-4)
    assert 0.03 < suspect.spread < 0.1
    small = check(slipped(perfect(TEN), 3, -0.3))
    assert [each.slip for each in small.suspects] == [None]


def test_what_is_under_three_eighths_is_no_usual_slip_though_one_lies_within_its_spreads() -> None:
    """A side of the six would have to be off by a third, which is nearer to a half than it can tell."""
    checked = check(rectangle(36, 36, 48, 48, Exact(601, 10) + Exact(1, 10), 60))
    near = [suspect for suspect in checked.suspects if 0.3 < abs(suspect.off) < 0.375]
    assert near
    for suspect in near:
        assert 0.5 - abs(suspect.off) < 2.5 * suspect.spread
        assert suspect.slip is None


def test_mends_that_agree_best_come_first() -> None:
    readings = rectangle(36, 36, 48, 48, 84, 60)
    mends = check(readings).mends
    sums = []
    for mend in mends:
        mended = list(readings)
        mended[mend.number] = Reading(mend.kind, mend.slip.would_read)
        shape = adjust(mended)
        assert shape is not None
        sums.append(shape.sum_of_squares)
    assert len(sums) > 1
    assert sums == sorted(sums)


def test_the_usual_slip_puts_a_suspect_first() -> None:
    """36 by 48 with a diagonal of 61: an inch there. A side would have to be off by five eighths or so."""
    checked = check(rectangle(36, 36, 48, 48, 61, 60))
    first = checked.suspects[0]
    assert first.slip is not None
    assert {suspect.kind for suspect in checked.suspects[:2]} == {
        ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT,
        ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT,
    }
    assert first.slip.name == "1 in"
    assert checked.take_again == (checked.suspects[0].number, checked.suspects[1].number)


def test_readings_of_no_shape_name_the_triangle_and_the_slip_that_would_mend_it() -> None:
    """305 5/8 for 30 5/8, beside 46 1/4 and a diagonal of 55 15/32."""
    diagonal = Exact(55) + Exact(15, 32)
    checked = check(
        rectangle(Exact(2445, 8), Exact(245, 8), Exact(185, 4), Exact(185, 4), diagonal, diagonal)
    )
    assert (checked.verdict, checked.shape) == (Verdict.IMPOSSIBLE, None)
    assert {found.kinds[0] for found in checked.contradictions} == {ReadingKind.WIDTH_BOTTOM}
    assert checked.contradictions[0].by == Exact(2445, 8) - Exact(185, 4) - diagonal
    assert checked.mends[0].kind is ReadingKind.WIDTH_BOTTOM
    assert (checked.mends[0].slip.name, checked.mends[0].slip.would_read) == (
        "a digit too many",
        Exact(245, 8),
    )
    assert checked.mends[0].closes
    assert checked.take_again == (0,)


def test_a_flat_triangle_is_no_shape() -> None:
    checked = check(rectangle(36, 36, 48, 48, 84, 60))
    assert checked.verdict is Verdict.IMPOSSIBLE
    assert checked.contradictions[0].by == 0


def test_usual_slips_of_a_length() -> None:
    names = {(slip.name, slip.would_read) for slip in usual_slips(Reading(ReadingKind.WIDTH_TOP, F(241, 8)))}
    eighth = Exact(1, 8)
    assert {
        ("1/2 in", 29 + 5 * eighth),
        ("1 in", 31 + eighth),
        ("12 in", 18 + eighth),
        ("ten times too long", 3 + Exact(1, 80)),
    } <= names
    assert "swapped digits" not in {name for name, _ in names}  # 03
    assert ("swapped digits", Exact(64) + eighth) in {
        (slip.name, slip.would_read) for slip in usual_slips(Reading(ReadingKind.WIDTH_TOP, 46 + F(1, 8)))
    }
    assert ("read the other way", F(-1, 4)) not in names


def test_a_bubble_read_the_other_way_is_a_usual_slip() -> None:
    true = exact({"bl": 0j, "br": 40 + 0.4j, "tr": 39.6 + 50.4j, "tl": -0.5 + 50j})
    readings = [Reading(kind, -true[kind] if kind is ReadingKind.SILL_LEVEL else true[kind]) for kind in TEN]
    (suspect,) = check(readings).suspects
    assert suspect.kind is ReadingKind.SILL_LEVEL
    assert suspect.slip is not None
    assert suspect.slip.name == "read the other way"


@given(
    st.lists(
        st.tuples(st.sampled_from(list(ReadingKind)), st.fractions(F(1, 4), 400, max_denominator=64)),
        max_size=13,
    )
)
def test_any_readings_have_a_verdict(pairs: list[tuple[ReadingKind, Exact]]) -> None:
    checked = check([Reading(kind, F(value)) for kind, value in pairs])
    assert bool(checked.suspects) == (checked.verdict is Verdict.ONE_SLIP)
    assert bool(checked.contradictions) == (checked.verdict is Verdict.IMPOSSIBLE)
    assert len(checked.take_again) <= 2
    assert not {kind for kind, _ in pairs} & set(checked.ask)
