"""Movement of a mitered piece over the seasons."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.builders import F
from longpoint.geometry import Air, Conditions, GeometryError, Grain, Movement, Species, movement

SHOP = Air("shop", moisture_content=8.0)


def oak(*seasons: Air) -> Movement:
    """A mitered piece of oak made up in the shop."""
    conditions = Conditions(species=Species.RED_OAK, grain=Grain.FLAT_SAWN, installed=SHOP, seasons=seasons)
    return movement(F("3.5"), 45.0, conditions)


def test_a_dry_winter_opens_the_short_point_and_a_wet_summer_the_long_point() -> None:
    found = oak(Air("winter", 70.0, 25.0), Air("summer", 75.0, 65.0))
    winter, summer = found.seasons
    assert (winter.opens_at, summer.opens_at) == ("short point", "long point")
    assert winter.change < 0 < summer.change
    assert found.widest_gap == max(winter.gap, summer.gap)


def test_nothing_moves_where_nothing_changes() -> None:
    (same,) = oak(Air("same", moisture_content=8.0)).seasons
    assert (same.change, same.gap, same.opens_at) == (0, pytest.approx(0, abs=1e-12), "")


def test_the_gap_is_what_a_drawing_of_the_shrunken_pieces_shows() -> None:
    (dry,) = oak(Air("dry", moisture_content=6.0)).seasons
    width = 3.5 * (1 - 0.00369 * 2)
    # Two shrunken pieces touch at their long points; each short point has drawn back from the diagonal.
    short = (3.5, width)
    along = math.hypot(*short)
    off_diagonal = math.radians(45) - math.atan2(width, 3.5)
    assert dry.gap == pytest.approx(2 * along * math.sin(off_diagonal), rel=0.01)


def test_beyond_the_table_it_says_so() -> None:
    (soaked,) = oak(Air("wet", 70.0, 90.0)).seasons
    assert not soaked.within_table


@given(st.floats(6, 14), st.floats(6, 14), st.floats(1, 80))
def test_going_and_coming_back_cancel_to_first_order(start: float, end: float, miter: float) -> None:
    dry, wet = Air("", moisture_content=start), Air("", moisture_content=end)

    def between(installed: Air, season: Air) -> Movement:
        conditions = Conditions(
            species=Species.WHITE_OAK, grain=Grain.QUARTER_SAWN, installed=installed, seasons=(season,)
        )
        return movement(F(3), miter, conditions)

    (there,), (back,) = between(dry, wet).seasons, between(wet, dry).seasons
    assert there.change == pytest.approx(-back.change)
    assert there.gap == pytest.approx(back.gap, rel=0.1, abs=1e-9)


@pytest.mark.parametrize(
    ("air", "field"),
    [
        (Air("a"), "moisture_content"),
        (Air("a", 70.0), "moisture_content"),
        (Air("a", 70.0, 40.0, 8.0), "moisture_content"),
        (Air("a", moisture_content=31.0), "moisture_content"),
        (Air("a", 0.0, 40.0), "temperature"),
        (Air("a", 70.0, 99.0), "relative_humidity"),
    ],
)
def test_conditions_that_say_nothing_are_refused(air: Air, field: str) -> None:
    with pytest.raises(GeometryError) as refused:
        oak(air)
    assert refused.value.faults[0].path == ("seasons", 0, field)


def test_wood_that_has_no_width_or_miter_is_refused() -> None:
    with pytest.raises(GeometryError) as refused:
        movement(F(0), 90.0, Conditions(species=Species.MDF, installed=SHOP, seasons=()))
    assert {fault.path for fault in refused.value.faults} == {("width",), ("miter_degrees",)}
