"""A door's jamb from the door: a 30 by 80 slab, gaps 1/8, 1/2 under it, jamb stock 3/4 by 4 5/8."""

from __future__ import annotations

from typing import Any

import pytest
from msgspec.structs import replace

from geometry.builders import CASING, F, opening, piece
from longpoint.geometry import (
    Bottom,
    BoxCorners,
    Built,
    Door,
    DoorStop,
    GeometryError,
    Hand,
    Trim,
    build_opening,
)

DOOR = Door(width=F(30), height=F(80), thickness=F("1.375"), hinge_side=Hand.RIGHT)
STOP = DoorStop(width=F("1.25"), thickness=F(3, 8), profile="stop")
TRIM = Trim(CASING, F(1, 4), floor_clearance=F(1, 8), stop=STOP)


def built(door: Door = DOOR, trim: Trim = TRIM) -> Built:
    return build_opening(opening(door, trim, bottom=Bottom.FLOOR))


def test_jamb_and_casing_follow_from_the_door() -> None:
    found = built()
    # Clear 30 1/4 by 80 5/8; legs run past the head jamb to its upper side.
    assert piece(found, "head_jamb").overall == F("30.25")
    assert piece(found, "jamb_leg/hinge").overall == piece(found, "jamb_leg/strike").overall == F("81.375")
    assert piece(found, "head_casing").short_point == F("30.75")
    assert piece(found, "side_casing/left").short_point == F("80.625") + F(1, 4) - F(1, 8)
    assert "right" in str(piece(found, "jamb_leg/hinge").notes[0])


def test_a_housed_head_is_longer_by_both_housings() -> None:
    assert piece(built(replace(DOOR, housing=F(1, 4))), "head_jamb").overall == F("30.75")


def test_hinges_are_marked_from_the_foot() -> None:
    marks = {mark.name: mark.at for mark in piece(built(), "jamb_leg/hinge").marks}
    # Top of door at 80 1/2: the top hinge 7 down; the lowest's bottom 11 up from the door's, its top 3 1/2 higher.
    assert marks == {
        "underside of head jamb": F("80.625"),
        "top of hinge 1": F("73.5"),
        "top of hinge 2": F("44.25"),
        "top of hinge 3": F(15),
    }
    assert piece(built(), "jamb_leg/strike").marks[1].at == 36


def test_stops_butt_or_miter() -> None:
    butted = built()
    assert piece(butted, "door_stop/head").overall == F("30.25")
    assert piece(butted, "door_stop/left").overall == F("80.25")
    mitered = built(trim=replace(TRIM, stop=replace(STOP, corners=BoxCorners.MITERED)))
    head, leg = piece(mitered, "door_stop/head"), piece(mitered, "door_stop/left")
    assert (head.short_point, head.long_point) == (F("29.5"), F("30.25"))
    assert (leg.short_point, leg.long_point) == (F("80.25"), F("80.625"))
    assert [end.bevel for end in leg.ends] == [0, 45]
    assert [end.bevel_direction for end in head.ends] == [Hand.RIGHT, Hand.LEFT]


@pytest.mark.parametrize(
    ("rough", "code"),
    [
        (("32.25", "82"), None),
        (("31.5", "82"), "rough-opening-too-small"),
        (("32", "82"), "rough-opening-tight"),
        (("34", "82"), "rough-opening-loose"),
        (("32.25", "81"), "rough-opening-too-small"),
    ],
)
def test_the_framing_is_checked_for_shim_room(rough: tuple[str, str], code: str | None) -> None:
    findings = built(replace(DOOR, rough_width=F(rough[0]), rough_height=F(rough[1]))).findings
    assert [finding.code for finding in findings] == ([code] if code else [])


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"hinges": 1}, "hinges"),
        ({"hinge_length": F(30)}, "hinge_length"),
        ({"housing": F(1)}, "housing"),
        ({"thickness": F(5)}, "thickness"),
    ],
)
def test_doors_that_cannot_be_hung_are_refused(change: dict[str, Any], field: str) -> None:
    with pytest.raises(GeometryError) as refused:
        built(replace(DOOR, **change))
    assert ("readings", "door", field) in {fault.path for fault in refused.value.faults}
