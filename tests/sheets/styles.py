"""Openings of an invented house in every style of trim, for pieces that plain windows do not have."""

from typing import Any

from longpoint.geometry import (
    Apron,
    ApronEnds,
    Arch,
    BackBand,
    BoxCorners,
    Built,
    Casing,
    Door,
    DoorStop,
    Foot,
    Hand,
    HeadStrip,
    HeadStyle,
    JambExtension,
    Mull,
    Opening,
    PlumbSides,
    Readings,
    SillAnswer,
    SillLevel,
    Stool,
    StoolEnds,
    StripEnds,
    Trim,
    Wall,
    WallAnswer,
    build_opening,
)
from longpoint.lengths import Fraction

F = Fraction

CASING = Casing("casing", F(13, 4), F(11, 16))
HEAD = Casing("head casing", F(9, 2), F(3, 4))
DEPTH = F(11, 4)
PROUD = Wall((F(1, 2), F(5, 8), F(5, 8), F(1, 2)))
EXTENSION = JambExtension("extension", F(3, 4), F(1, 8))
MITRED_EXTENSION = JambExtension("extension", F(3, 4), F(1, 8), BoxCorners.MITRED)
BAND = BackBand("band", F(1), F(1), F(1, 4))
FILLET = HeadStrip("fillet", F(3, 8), F(1), F(3, 8), StripEnds.MITRED_RETURN)
CAP = HeadStrip("cap", F(3, 4), F(7, 4), F(3, 4), StripEnds.MITRED_RETURN)
STOP = DoorStop("stop", F(5, 4), F(3, 8))
MITRED_STOP = DoorStop("stop", F(5, 4), F(3, 8), BoxCorners.MITRED)
BUTTED: dict[str, Any] = {
    "head_style": HeadStyle.BUTTED,
    "head_casing": HEAD,
    "overhang": F(1, 4),
    "fillet": FILLET,
    "cap": CAP,
}


def trim(stool_ends: StoolEnds = StoolEnds.SQUARE, **chosen: Any) -> Trim:
    stool = Stool("stool", F(1), F(1), F(1), F(1, 16), ends=stool_ends)
    return Trim(CASING, F(1, 4), **{"stool": stool, "apron": Apron("apron", F(13, 4), F(3, 4)), **chosen})


def window(
    mark: str, width: F | int, height: F | int, chosen: Trim, *, mulls: tuple[Mull, ...] = (), **more: Any
) -> Built:
    wall, sill = more.pop("wall", None), more.pop("sill", None)
    sides = PlumbSides(F(width), F(height), F(height))
    readings = Readings(sides, DEPTH, DEPTH, mulls=mulls, wall=wall, sill=sill)
    return build_opening(Opening(mark, readings, chosen, **more))


def door(mark: str, leaf: Door, **chosen: Any) -> Built:
    settled = Trim(CASING, F(1, 4), floor_clearance=F(1, 8), **chosen)
    return build_opening(Opening(mark, Readings(leaf), settled, Foot.FLOOR))


RETURNED = StoolEnds.MITRED_RETURN
EXTEND: dict[str, Any] = {"wall": PROUD, "wall_answer": WallAnswer.EXTEND}
STYLED = {
    "returned": window("R1", F(69, 2), F(169, 4), trim(RETURNED)),
    "small returned": window("R2", 12, 12, trim(RETURNED)),
    "extended": window("E1", F(61, 2), 48, trim(extension=EXTENSION), **EXTEND),
    "box and band": window("E2", 36, 48, trim(extension=MITRED_EXTENSION, back_band=BAND), **EXTEND),
    "boxed frame": window(
        "E3", 30, 40, trim(extension=EXTENSION, back_band=BAND), foot=Foot.PICTURE_FRAME, **EXTEND
    ),
    "dressed": window("H1", 36, 54, trim(RETURNED, **BUTTED)),
    "three lights": window(
        "M1",
        144,
        60,
        trim(mull_casing=Casing("mull", F(4), F(11, 16)), **{**BUTTED, "fillet": None}),
        mulls=(Mull(F(46), F(4)), Mull(F(94), F(4))),
    ),
    "sloping sill": window(
        "L1",
        40,
        30,
        trim(apron=Apron("apron", F(13, 4), F(3, 4), ApronEnds.ANGLED)),
        sill=SillLevel(Hand.LEFT, F(3, 8)),
        sill_answer=SillAnswer.TAPERED_STRIP,
    ),
    "hung left": door("D1", Door(F(32), F(80), F(11, 8), Hand.LEFT), stop=MITRED_STOP),
    "hung right": door("D2", Door(F(36), F(80), F(7, 4), Hand.RIGHT, housing=F(1, 4)), stop=STOP, **BUTTED),
    "arched": build_opening(Opening("A1", Readings(Arch(F(40), F(48), F(20), 8), DEPTH, DEPTH), trim())),
}
