"""A returned stool's miter ends at its notch: where it runs further than the horn is long, the answer says so."""

from __future__ import annotations

import pytest
from msgspec.structs import replace

from geometry.builders import APRON, CASING, STOOL, F, opening
from longpoint.geometry import Horns, Opening, PlumbSides, StoolEnds, Trim, build_opening
from longpoint.lengths import Fraction


def returned(horn: Fraction, nosing: Fraction) -> Opening:
    """Casing 2 1/2 wide over an apron 5/8 thick."""
    stool = replace(STOOL, horn=horn, nosing=nosing, ends=StoolEnds.MITERED_RETURN)
    return opening(PlumbSides(F(30), F(46), F(46)), Trim(CASING, F(3, 16), stool=stool, apron=APRON))


def test_a_horn_longer_than_its_miter_runs_is_no_finding() -> None:
    # The horn is 3/16 + 2 1/2 + 3/4 = 3 7/16 long, the miter runs 5/8 + 7/8 = 1 1/2 along it.
    assert build_opening(returned(F(3, 4), F(7, 8))).findings == ()


def test_a_miter_just_as_long_as_the_horn_is_no_finding() -> None:
    assert build_opening(returned(F(0), F(33, 16))).findings == ()


def test_a_miter_that_would_enter_the_tongue_is_a_finding_with_ways_out() -> None:
    left, right = build_opening(returned(F(0), F(37, 16))).findings
    assert (left.code, left.side, right.side) == ("return-past-horn", "left", "right")
    # 5/8 + 2 5/16 along a horn of 2 11/16.
    assert left.amount == right.amount == F(1, 4)
    assert [offer.answer for offer in left.offers] == ["lengthen_horn", "square_end"]
    assert (left.offers[0].path, left.offers[0].worth) == (("horns", "left"), F(1, 4))


def test_each_way_out_settles_it() -> None:
    one = returned(F(0), F(37, 16))
    longer = replace(one, horns=Horns(left=F(1, 4), right=F(1, 4)))
    assert build_opening(longer).findings == ()
    assert one.trim.stool is not None
    square = replace(one.trim, stool=replace(one.trim.stool, ends=StoolEnds.SQUARE))
    assert build_opening(replace(one, trim=square)).findings == ()


@pytest.mark.parametrize("side", ["left", "right"])
def test_an_end_by_itself_has_its_own_finding(side: str) -> None:
    other = {"left": "right", "right": "left"}[side]
    one = replace(returned(F(0), F(37, 16)), horns=Horns(**{other: F(1)}))
    assert [finding.side for finding in build_opening(one).findings] == [side]
