"""The widest miter of an opening over the seasons."""

from __future__ import annotations

import pytest
from msgspec.structs import replace

from geometry.builders import CASING, TRIM, F, opening
from longpoint.geometry import (
    Air,
    Bottom,
    Casing,
    Conditions,
    Grain,
    HeadStyle,
    PlumbSides,
    Polygon,
    Species,
    Trim,
    build_opening,
    movement,
    open_joints,
)

DRY = Conditions(
    species=Species.RED_OAK,
    grain=Grain.FLAT_SAWN,
    installed=Air("installed", moisture_content=9.0),
    seasons=(Air("dry", moisture_content=6.0),),
)
WINDOW = PlumbSides(F(30), F(40), F(40))


def test_equal_casing_opens_as_one_piece_by_itself_does() -> None:
    (found,) = open_joints(build_opening(opening(WINDOW)), DRY)
    (alone,) = movement(CASING.width, 45.0, DRY).seasons
    assert (found.gap, found.opens_at) == (pytest.approx(alone.gap), "short point")


def test_the_widest_joint_is_told() -> None:
    trim = replace(TRIM, head_casing=Casing(width=F(6), thickness=F(5, 8), profile="wide"))
    (found,) = open_joints(build_opening(opening(WINDOW, trim)), DRY)
    assert str(found.piece) == "head_casing"


def test_a_miter_too_sharp_to_move_is_passed_over() -> None:
    """A head ripped to a sliver beside a broad leg: nothing can be said of their joint, and the rest is."""
    trim = replace(TRIM, head_casing=Casing(width=F(1, 10), thickness=F(5, 8), profile="sliver"))
    (found,) = open_joints(build_opening(opening(WINDOW, trim)), DRY)
    assert (found.name, found.piece) == ("dry", None)


def test_flat_corners_open_less_than_sharp_ones() -> None:
    trim = Trim(CASING, F(1, 8))
    octagon = Polygon((F(20),) * 8, (F(135),) * 8)
    triangle = Polygon((F(40),) * 3)
    gaps = [
        open_joints(build_opening(opening(shape, trim, bottom=Bottom.CASING)), DRY)[0].gap
        for shape in (octagon, triangle)
    ]
    assert gaps[0] < gaps[1]


def test_square_cuts_have_no_miter_to_open() -> None:
    (found,) = open_joints(build_opening(opening(WINDOW, replace(TRIM, head_style=HeadStyle.BUTTED))), DRY)
    assert (found.piece, found.gap, found.opens_at) == (None, 0.0, "")


def test_a_leg_cut_at_an_angle_under_a_raked_butted_head_is_no_miter() -> None:
    raked = PlumbSides(F(30), F(46), F(52))
    (found,) = open_joints(build_opening(opening(raked, replace(TRIM, head_style=HeadStyle.BUTTED))), DRY)
    assert (found.piece, found.gap) == (None, 0.0)
