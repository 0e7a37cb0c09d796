"""Cautions: raised by what is in the cutting, and worded so that they defer."""

from __future__ import annotations

import re

import pytest

from geometry.builders import read
from longpoint.geometry import Bottom, Opening, PlumbSides
from longpoint.shop import Section, Shop, cautions, work
from longpoint.shop import cautions as cautions_of
from longpoint.shop.cautions import AT_THE_SAW
from shop.builders import FLAT, SAME_STOCK, Entry, F, window, worked_out

DOOR = Opening(mark="D1", readings=read(PlumbSides(F(30), F(80), F(80))), trim=FLAT, bottom=Bottom.FLOOR)
WINDOW = window("W1", F(30), F(46), trim=SAME_STOCK)


def codes(*openings: Opening, year: int | None = None) -> set[str]:
    house = worked_out(tuple(Entry(one) for one in openings))
    return {caution.code for caution in cautions(house, build_year=year)}


@pytest.mark.parametrize(("year", "said"), [(1977, True), (1978, False), (2010, False), (None, True)])
def test_lead_paint_is_said_of_old_houses_and_of_unknown_age(year: int | None, said: bool) -> None:
    assert ("lead_paint" in codes(DOOR, year=year)) == said


def test_escape_openings_are_said_of_windows_by_mark() -> None:
    assert "escape_opening" not in codes(DOOR)
    house = worked_out((Entry(DOOR), Entry(WINDOW)))
    (escape,) = [each for each in cautions_of(house, build_year=2000) if each.code == "escape_opening"]
    assert escape.applies_to == ("W1",)
    assert "not a determination" in escape.source


def test_guards_dust_finishes_and_codes_are_always_said() -> None:
    assert {"saw_guards", "wood_dust", "finishes", "local_codes"} <= codes(DOOR, year=2020)


def test_what_the_cuts_raised_is_among_the_cuttings_cautions() -> None:
    house = worked_out((Entry(WINDOW),))
    found = work(house, {Section.SAW_ORDER}, Shop(build_year=2000))
    assert "short_piece" in {caution.code for caution in found.cautions}
    assert found.materials is None
    assert found.cost is None


def test_no_caution_approves_anything() -> None:
    house = worked_out((Entry(WINDOW),))
    for caution in (*cautions(house, build_year=None), *AT_THE_SAW.values()):
        words = re.sub("safety-glazing", "", str(caution.text).lower())
        assert not re.search(r"\bsafe|complian|compliant|guarantee|certif", words)
        assert caution.source
    (codes_first,) = [each for each in cautions(house, build_year=2000) if each.code == "local_codes"]
    assert "come first" in str(codes_first.text)
    assert "approve nothing" in str(codes_first.text)
