"""The stool: length with horns, ripped width, notches."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.builders import APRON, CASING, STOOL, TRIM, F, opening, piece, read
from longpoint.geometry import Opening, PlumbSides, Reveals, Stool, StoolEnds, Trim, build_opening
from longpoint.lengths import Fraction

SHAPE = PlumbSides(F("30.625"), F("46.25"), F("46.25"))
sizes = st.fractions(F(1, 64), F(8), max_denominator=64)


def test_the_worked_window() -> None:
    stool = piece(build_opening(opening(SHAPE)), "stool")
    assert stool.overall == stool.long_point == stool.short_point == F(75, 2)
    assert stool.rip_width == stool.width == F(37, 8)
    assert [(end.notch.depth, end.notch.length) for end in stool.ends if end.notch] == [
        (F(25, 8), F(55, 16))
    ] * 2


def test_the_clearance_to_the_sash_comes_off_width_and_notches() -> None:
    tight = Stool(thickness=F(3, 4), horn=F(3, 4), nosing=F(7, 8), sash_clearance=F(1, 16), profile="stool")
    stool = piece(build_opening(opening(SHAPE, Trim(CASING, F(3, 16), stool=tight, apron=APRON))), "stool")
    assert stool.rip_width == F(37, 8) - F(1, 16)
    assert [end.notch.depth for end in stool.ends if end.notch] == [F(25, 8) - F(1, 16)] * 2


def test_without_an_apron_the_nosing_is_kept_past_the_casing() -> None:
    bare = Trim(CASING, F(3, 16), stool=STOOL)
    assert piece(build_opening(opening(SHAPE, bare)), "stool").rip_width == F(25, 8) + F(5, 8) + F(7, 8)


def test_two_depths_rip_to_the_deeper_and_notch_each_its_own() -> None:
    readings = read(SHAPE, F(3), F("3.125"))
    stool = piece(build_opening(Opening("T1", readings, trim=TRIM)), "stool")
    assert stool.rip_width == F("3.125") + F(5, 8) + F(7, 8)
    assert [end.notch.depth for end in stool.ends if end.notch] == [F(3), F("3.125")]
    assert any("depths differ" in str(note) for note in stool.notes)


@given(width=sizes, left=sizes, right=sizes, horn=sizes)
def test_horns_are_as_asked_whatever_the_reveals(
    width: Fraction, left: Fraction, right: Fraction, horn: Fraction
) -> None:
    trim = Trim(
        CASING, F(0), stool=Stool(thickness=F(3, 4), horn=horn, nosing=F(1), profile="stool"), apron=APRON
    )
    shape = PlumbSides(10 * width, F(40), F(40))
    reveals = Reveals(left=left / 16, right=right / 16)
    built = build_opening(opening(shape, trim, reveals=reveals))
    stool, apron = piece(built, "stool"), piece(built, "apron")
    assert stool.overall == apron.overall + 2 * horn
    assert apron.overall == 10 * width + left / 16 + right / 16 + 2 * CASING.width
    notches = [end.notch for end in stool.ends if end.notch]
    assert [notch.length for notch in notches] == [side / 16 + CASING.width + horn for side in (left, right)]
    assert stool.overall - sum(notch.length for notch in notches) == 10 * width


def test_a_returned_horn_reaches_the_wall_where_its_end_meets_it() -> None:
    returned = replace(TRIM, stool=replace(STOOL, ends=StoolEnds.MITERED_RETURN))
    # Ripped to 4 5/8: the left end, read shallower than its jamb, stands 1 3/4 off the wall; the right one 1 1/2.
    readings = read(SHAPE, F("3.125"), F("3.125"), left_horn_depth=F("2.875"))
    built = build_opening(Opening("T1", readings, trim=returned))
    assert piece(built, "stool_return/left").overall == F("1.75")
    assert piece(built, "stool_return/right").overall == F("1.5")
    stool = piece(built, "stool")
    assert stool.long_point - stool.short_point == F("3.25")
    (left, right) = (end.notch for end in stool.ends)
    assert left is not None
    assert right is not None
    assert (left.depth, left.end_depth) == (F("3.125"), F("2.875"))
    assert (right.depth, right.end_depth) == (F("3.125"), None)
