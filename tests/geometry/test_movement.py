"""Movement of a mitered piece over the seasons."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.builders import F
from longpoint.geometry import Air, Conditions, GeometryError, Grain, Movement, Scale, Species, movement
from longpoint.geometry.moving.wood import COLDER

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
    assert dry.gap == pytest.approx(2 * along * math.sin(off_diagonal), abs=1e-12)


@given(st.floats(0.5, 12), st.floats(6, 14), st.floats(6, 14), st.floats(1, 84))
def test_the_gap_follows_with_the_length_along_the_grain_kept(
    width: float, start: float, end: float, miter: float
) -> None:
    """By the two tips: a face of (w + change) / cos(miter after) on each side of the joint."""
    installed, season = Air("", moisture_content=start), Air("", moisture_content=end)
    conditions = Conditions(species=Species.BEECH, installed=installed, seasons=(season,))
    (found,) = movement(F(width), miter, conditions).seasons
    change = width * 0.00431 * (end - start)
    run = width * math.tan(math.radians(miter))
    after = math.atan2(run, width + change)
    face = (width + change) / math.cos(after)
    turned = after - math.radians(miter)
    assert found.change == pytest.approx(change, abs=1e-9)
    assert found.gap == pytest.approx(abs(2 * face * math.sin(turned)), abs=1e-9)
    assert found.opens_degrees == pytest.approx(abs(math.degrees(2 * turned)), abs=1e-9)


@pytest.mark.parametrize(("scale", "cold"), [(Scale.FAHRENHEIT, -20.0), (Scale.CELSIUS, -29.0)])
def test_air_colder_than_the_table_is_taken_as_its_coldest_and_says_so(scale: Scale, cold: float) -> None:
    def in_air(degrees: float) -> Movement:
        seasons = (Air("winter", degrees, 70.0),)
        conditions = Conditions(species=Species.RED_OAK, installed=SHOP, seasons=seasons, scale=scale)
        return movement(F("3.5"), 45.0, conditions)

    found, coldest = in_air(cold), in_air(30.0 if scale is Scale.FAHRENHEIT else -10 / 9)
    (winter,), (tabled,) = found.seasons, coldest.seasons
    assert float(winter.moisture_content) == pytest.approx(float(tabled.moisture_content))
    assert COLDER in found.notes
    assert COLDER not in coldest.notes


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
        (Air("a", 141.0, 40.0), "temperature"),
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
