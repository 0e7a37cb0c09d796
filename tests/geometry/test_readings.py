"""What readings come to, what they lack or say twice, and at which of them a fault is told."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest
from msgspec.structs import replace

from geometry.builders import CASING, STOOL, TRIM, F
from longpoint.geometry import (
    Arch,
    Bottom,
    Casing,
    Door,
    GeometryError,
    Limits,
    Mull,
    Opening,
    PlumbSides,
    Polygon,
    Quadrilateral,
    Readings,
    Shape,
    Trim,
    Widths,
    build_opening,
)
from longpoint.geometry.readings.readings import OffPlane
from longpoint.geometry.readings.taken import outline_of
from longpoint.lengths import Length, LengthError, PositiveLength, Unit
from longpoint.values import Faults, decoder

W, H, D = PositiveLength.of("30 in"), Length.of("48 in"), PositiveLength.of("3 in")
DOOR = Door(width=W, height=H)
SIDES = (F(40), F(40), F(40))
PLAIN: dict[str, Any] = {"jamb_width": W, "jamb_height": H}
UNITS: dict[str, Any] = {"joined_widths": (F(20), F(24)), "mull_widths": (F(3),), "jamb_height": H}
CURVE: dict[str, Any] = {"jamb_width": W, "rise": F(10), "head_pieces": 5}
ALL_OTHERS: dict[str, Any] = {
    "jamb_width": W,
    "joined_widths": (F(20), F(24)),
    "mull_widths": (F(3),),
    "jamb_height": H,
    "left_jamb_height": H,
    "right_jamb_height": H,
    "head_width": W,
    "diagonal_from_bottom_left": F(55),
    "diagonal_from_bottom_right": F(55),
    "bottom_left_angle": 90.0,
    "bottom_right_angle": 90.0,
    "top_right_angle": 90.0,
    "top_left_angle": 90.0,
    "rise": F(10),
    "head_pieces": 5,
    "departure": F(1),
    "sides": SIDES,
    "angles": (60.0, 60.0, 60.0),
}


@pytest.mark.parametrize(
    ("given", "shape"),
    [
        (PLAIN, PlumbSides(W, H, H)),
        (
            {"jamb_width": W, "left_jamb_height": F(48), "right_jamb_height": F(47)},
            PlumbSides(W, F(48), F(47)),
        ),
        (UNITS, PlumbSides(F(47), H, H)),
        (PLAIN | {"head_width": F(31)}, Quadrilateral(W, F(31), H, H)),
        (PLAIN | {"top_left_angle": 91.5}, Quadrilateral(W, W, H, H, top_left_angle=F(183, 2))),
        (
            PLAIN | {"diagonal_from_bottom_left": F(56), "diagonal_from_bottom_right": F(57)},
            Quadrilateral(W, W, H, H, F(56), F(57)),
        ),
        ({"sides": SIDES}, Polygon(SIDES)),
        ({"sides": (F(40),) * 4, "angles": (90.0, 90.0, 90.0, 90.0)}, Polygon((F(40),) * 4, (F(90),) * 4)),
        (CURVE, Arch(W, F(0), F(10), 5)),
        (CURVE | {"jamb_height": H}, Arch(W, H, F(10), 5)),
        ({"jamb_width": W, "rise": F(10), "departure": F(1)}, Arch(W, F(0), F(10), departure=F(1))),
        ({"door": DOOR}, DOOR),
    ],
)
def test_readings_come_to_one_shape(given: dict[str, Any], shape: Shape) -> None:
    assert outline_of(Readings(**given)).shape == shape


def test_one_depth_stands_for_both_jambs() -> None:
    for given in ({"jamb_depth": D}, {"left_depth": D, "right_depth": D}):
        found = outline_of(Readings(**PLAIN, **given))
        assert (found.left_depth, found.right_depth) == (D, D)
    found = outline_of(Readings(**PLAIN))
    assert (found.left_depth, found.right_depth) == (None, None)


def test_mulls_lie_where_their_lights_end() -> None:
    found = outline_of(Readings(joined_widths=(F(20), F(24), F(10)), mull_widths=(F(3), F(4)), jamb_height=H))
    assert found.mulls == (Mull(F(20), F(3)), Mull(F(47), F(4)))
    assert isinstance(found.shape, PlumbSides)
    assert found.shape.jamb_width == 61


def test_a_wall_is_proud_shy_or_flush_at_each_corner() -> None:
    wall = (OffPlane(proud=F(1, 4)), OffPlane(shy=F(1, 8)), OffPlane(), OffPlane(proud=F(0)))
    found = outline_of(Readings(**PLAIN, wall=wall)).wall
    assert found is not None
    assert found.proud == (F(1, 4), F(-1, 8), 0, 0)


def _told(given: dict[str, Any]) -> set[tuple[tuple[str | int, ...], str]]:
    with pytest.raises(GeometryError) as refused:
        outline_of(Readings(**given))
    return {(fault.path, fault.code) for fault in refused.value.faults}


def _twice(*names: str) -> set[tuple[tuple[str | int, ...], str]]:
    return {(("readings", name), "given-twice") for name in names}


@pytest.mark.parametrize(
    ("given", "field", "code"),
    [
        ({"jamb_height": H}, "jamb_width", "missing"),
        ({"jamb_width": W}, "jamb_height", "missing"),
        ({"jamb_width": W, "left_jamb_height": H}, "right_jamb_height", "missing"),
        ({"jamb_width": W, "right_jamb_height": H}, "left_jamb_height", "missing"),
        (PLAIN | {"left_jamb_height": H}, "left_jamb_height", "given-twice"),
        (PLAIN | {"right_jamb_height": H}, "right_jamb_height", "given-twice"),
        (PLAIN | {"jamb_height": Length.of("0 in")}, "jamb_height", "zero"),
        (PLAIN | {"left_depth": D}, "right_depth", "missing"),
        (PLAIN | {"right_depth": D}, "left_depth", "missing"),
        (PLAIN | {"jamb_depth": D, "left_depth": D}, "left_depth", "given-twice"),
        (PLAIN | {"jamb_depth": D, "right_depth": D}, "right_depth", "given-twice"),
        (PLAIN | {"angles": (90.0,) * 4}, "angles", "sides-missing"),
        (UNITS | {"jamb_width": W}, "jamb_width", "given-twice"),
        (PLAIN | {"mull_widths": (F(3),)}, "mull_widths", "joined-widths-missing"),
        (UNITS | {"mull_widths": None}, "mull_widths", "mull-count"),
        (UNITS | {"mull_widths": (F(3), F(3))}, "mull_widths", "mull-count"),
        ({"jamb_width": W, "head_pieces": 5}, "rise", "missing"),
        ({"jamb_width": W, "departure": F(1)}, "rise", "missing"),
        ({"rise": F(10), "head_pieces": 5}, "jamb_width", "missing"),
    ],
)
def test_what_is_lacking_or_too_much_is_told_at_its_reading(
    given: dict[str, Any], field: str, code: str
) -> None:
    assert _told(given) == {(("readings", field), code)}


def test_nothing_at_all_lacks_a_width_and_a_height() -> None:
    assert _told({}) == {(("readings", "jamb_width"), "missing"), (("readings", "jamb_height"), "missing")}


def test_mulls_alone_lack_lights_and_a_width() -> None:
    assert _told({"mull_widths": (F(3),), "jamb_height": H}) == {
        (("readings", "mull_widths"), "joined-widths-missing"),
        (("readings", "jamb_width"), "missing"),
    }


@pytest.mark.parametrize("name", sorted(ALL_OTHERS))
def test_a_door_gives_its_outline_alone(name: str) -> None:
    assert _told({"door": DOOR, name: ALL_OTHERS[name]}) == _twice(name)


@pytest.mark.parametrize("name", sorted(ALL_OTHERS.keys() - {"sides", "angles"}))
def test_sides_give_their_outline_alone(name: str) -> None:
    assert _told({"sides": SIDES, name: ALL_OTHERS[name]}) == _twice(name)


IN_A_CURVE = {"jamb_width", "jamb_height", "rise", "head_pieces", "departure", "sides", "angles"}


@pytest.mark.parametrize("name", sorted(ALL_OTHERS.keys() - IN_A_CURVE))
def test_a_curve_stands_on_equal_legs(name: str) -> None:
    assert _told(CURVE | {name: ALL_OTHERS[name]}) == _twice(name)


def test_a_wall_cannot_be_proud_and_shy_at_one_corner() -> None:
    both, flush = OffPlane(proud=F(1, 4), shy=F(1, 8)), OffPlane()
    assert _told(PLAIN | {"wall": (flush, both, flush, both)}) == {
        (("readings", "wall", 1, "shy"), "given-twice"),
        (("readings", "wall", 3, "shy"), "given-twice"),
    }


def test_every_fault_is_told_at_once() -> None:
    assert _told({"jamb_width": W, "left_depth": D, "wall": (OffPlane(proud=F(1), shy=F(1)),) * 3}) == {
        (("readings", "jamb_height"), "missing"),
        (("readings", "right_depth"), "missing"),
        *((("readings", "wall", corner, "shy"), "given-twice") for corner in range(3)),
    }


def test_an_opening_tells_of_its_readings_from_further_up() -> None:
    faults = Faults()
    Opening("A", Readings(jamb_width=W), trim=TRIM).report(faults, ("openings", 4))
    assert [fault.path for fault in faults] == [("openings", 4, "readings", "jamb_height")]


def test_caulk_cannot_reach_further_than_planing() -> None:
    def told(caulk: F, plane: F) -> list[tuple[tuple[str | int, ...], str]]:
        faults = Faults()
        Opening("A", Readings(**PLAIN), trim=TRIM, wall_limits=Limits(caulk, plane)).report(faults)
        return [(fault.path, fault.code) for fault in faults]

    assert told(F(1, 4), F(1, 8)) == [(("wall_limits", "plane"), "out-of-order")]
    assert told(F(1, 4), F(1, 4)) == []


@pytest.mark.parametrize("side", Widths.__struct_fields__)
def test_nothing_is_ripped_to_nought(side: str) -> None:
    with pytest.raises(msgspec.ValidationError) as refused:
        decoder(Widths, Unit.IN).decode(msgspec.json.encode({side: "0"}))
    assert isinstance(refused.value.__cause__, LengthError)
    assert refused.value.__cause__.code == "zero"


BARE = Trim(CASING, F(3, 16))
CLEARED = replace(TRIM, stool=replace(STOOL, sash_clearance=F(1, 2)))
MULLED = replace(BARE, mull_casing=Casing(width=F(3), thickness=F(5, 8)))
SHALLOW = F(1, 4)


@pytest.mark.parametrize(
    ("given", "trim", "foot", "told"),
    [
        (PLAIN, TRIM, Bottom.STOOL, {("jamb_depth",)}),
        (PLAIN | {"jamb_depth": SHALLOW}, CLEARED, Bottom.STOOL, {("jamb_depth",)}),
        (
            PLAIN | {"left_depth": SHALLOW, "right_depth": SHALLOW},
            CLEARED,
            Bottom.STOOL,
            {("left_depth",), ("right_depth",)},
        ),
        (PLAIN | {"left_depth": D, "right_depth": SHALLOW}, CLEARED, Bottom.STOOL, {("right_depth",)}),
        (UNITS | {"mull_widths": (F(1, 2),)}, MULLED, Bottom.FLOOR, {("mull_widths", 0)}),
        (
            PLAIN | {"jamb_height": F(1, 8)},
            replace(BARE, floor_clearance=F(1)),
            Bottom.FLOOR,
            {("jamb_height",)},
        ),
        (
            {"jamb_width": W, "left_jamb_height": F(1, 8), "right_jamb_height": F(1, 8)},
            replace(BARE, floor_clearance=F(1)),
            Bottom.FLOOR,
            {("left_jamb_height",), ("right_jamb_height",)},
        ),
        (CURVE | {"rise": F(16)}, BARE, Bottom.CASING, {("rise",)}),
        ({"sides": (F(20), F(5), F(5))}, BARE, Bottom.CASING, {("sides",)}),
        ({"door": replace(DOOR, housing=F(1))}, BARE, Bottom.FLOOR, {("door", "housing")}),
    ],
)
def test_a_fault_is_told_at_the_reading_that_was_sent(
    given: dict[str, Any], trim: Trim, foot: Bottom, told: set[tuple[str | int, ...]]
) -> None:
    with pytest.raises(GeometryError) as refused:
        build_opening(Opening("A", Readings(**given), trim=trim, bottom=foot))
    paths = [fault.path for fault in refused.value.faults]
    assert {path[1:] for path in paths} == told
    assert {path[0] for path in paths} == {"readings"}
    assert len(set(refused.value.faults)) == len(paths), "one reading for both sides is told of once"
