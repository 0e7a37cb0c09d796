"""A field sent in the wrong place is told where it belongs."""

import msgspec

from longpoint.values.belongs import belongs


class Bore(msgspec.Struct):
    depth: int


class Latch(msgspec.Struct):
    bore: Bore
    backset: int


class Door(msgspec.Struct):
    latch: Latch | None = None
    hinges: list[Bore] = []
    knobs: dict[str, Latch] = {}


class House(msgspec.Struct):
    doors: list[Door]


def test_the_whole_path_is_named() -> None:
    assert str(belongs("latch", House)) == "This is not a field here: `latch` belongs under `doors`."
    assert str(belongs("backset", House)) == (
        "This is not a field here: `backset` belongs under `doors.latch` or `doors.knobs`."
    )


def test_the_nearest_place_goes_before_one_further_in() -> None:
    assert str(belongs("depth", Door)) == "This is not a field here: `depth` belongs under `hinges`."


def test_a_field_that_no_record_has_is_not_placed() -> None:
    assert belongs("paint", House) is None
    assert belongs("doors", House) is None


class Many(msgspec.Struct):
    a: Bore
    b: Latch
    c: Bore
    d: Bore
    e: Bore


def test_a_field_of_many_places_is_not_placed() -> None:
    assert belongs("depth", Many) is None
