"""Openings of an invented house in every style of trim, for pieces that plain windows do not have."""

from typing import Any

from geometry.builders import read
from longpoint.geometry import (
    Apron,
    ApronEnds,
    Arch,
    BackBand,
    Bottom,
    BoxCorners,
    Built,
    Casing,
    Door,
    DoorStop,
    Hand,
    HeadStrip,
    HeadStyle,
    JambExtension,
    Opening,
    Readings,
    SillAnswer,
    SillLevel,
    Stool,
    StoolEnds,
    StripEnds,
    Trim,
    WallAnswer,
    build_opening,
)
from longpoint.geometry.readings.readings import OffPlane
from longpoint.lengths import Fraction

F = Fraction

CASING = Casing(F(13, 4), F(11, 16))
HEAD = Casing(F(9, 2), F(3, 4), "head casing")
DEPTH = F(11, 4)
PROUD = tuple(OffPlane(proud=one) for one in (F(1, 2), F(5, 8), F(5, 8), F(1, 2)))
EXTENSION = JambExtension(F(3, 4), F(1, 8), profile="extension")
MITERED_EXTENSION = JambExtension(F(3, 4), F(1, 8), BoxCorners.MITERED, profile="extension")
BAND = BackBand(F(1), F(1), F(1, 4), profile="band")
FILLET = HeadStrip("fillet", F(3, 8), F(1), F(3, 8), StripEnds.MITERED_RETURN)
CAP = HeadStrip("cap", F(3, 4), F(7, 4), F(3, 4), StripEnds.MITERED_RETURN)
STOP = DoorStop(F(5, 4), F(3, 8), profile="stop")
MITERED_STOP = DoorStop(F(5, 4), F(3, 8), BoxCorners.MITERED, profile="stop")
BUTTED: dict[str, Any] = {
    "head_style": HeadStyle.BUTTED,
    "head_casing": HEAD,
    "overhang": F(1, 4),
    "fillet": FILLET,
    "cap": CAP,
}


def trim(stool_ends: StoolEnds = StoolEnds.SQUARE, **chosen: Any) -> Trim:
    stool = Stool(F(1), F(1), F(1), F(1, 16), ends=stool_ends)
    return Trim(CASING, F(1, 4), **{"stool": stool, "apron": Apron(F(13, 4), F(3, 4)), **chosen})


def window(mark: str, width: F | int | None, height: F | int, chosen: Trim, **more: Any) -> Built:
    """A width of None is made up of units and the mulls between them."""
    also = {name: more.pop(name, None) for name in ("wall", "sill", "joined_widths", "mull_widths")}
    across = None if width is None else F(width)
    read = Readings(jamb_width=across, jamb_height=F(height), jamb_depth=DEPTH, **also)
    return build_opening(Opening(mark=mark, readings=read, trim=chosen, **more))


def door(mark: str, leaf: Door, **chosen: Any) -> Built:
    settled = Trim(CASING, F(1, 4), floor_clearance=F(1, 8), **chosen)
    return build_opening(Opening(mark=mark, readings=read(leaf), trim=settled, bottom=Bottom.FLOOR))


def leaf(width: int, thickness: F, hinge_side: Hand, **more: Any) -> Door:
    return Door(width=F(width), height=F(80), thickness=thickness, hinge_side=hinge_side, **more)


ARCHED = read(Arch(F(40), F(48), F(20), 8), left_depth=DEPTH, right_depth=DEPTH)
RETURNED = StoolEnds.MITERED_RETURN
EXTEND: dict[str, Any] = {"wall": PROUD, "wall_answer": WallAnswer.EXTEND}
STYLED = {
    "returned": window("R1", F(245, 8), F(169, 4), trim(RETURNED)),
    "small returned": window("R2", 12, 12, trim(RETURNED)),
    "extended": window("E1", F(61, 2), 48, trim(extension=EXTENSION), **EXTEND),
    "box and band": window("E2", 36, 48, trim(extension=MITERED_EXTENSION, back_band=BAND), **EXTEND),
    "boxed frame": window(
        "E3", 30, 40, trim(extension=EXTENSION, back_band=BAND), bottom=Bottom.CASING, **EXTEND
    ),
    "dressed": window("H1", 36, 54, trim(RETURNED, **BUTTED)),
    "three units": window(
        "M1",
        None,
        60,
        trim(mull_casing=Casing(F(4), F(11, 16), "mull"), **{**BUTTED, "fillet": None}),
        joined_widths=(F(46), F(44), F(46)),
        mull_widths=(F(4), F(4)),
    ),
    "sloping sill": window(
        "L1",
        40,
        30,
        trim(apron=Apron(F(13, 4), F(3, 4), ApronEnds.ANGLED)),
        sill=SillLevel(Hand.LEFT, F(3, 8)),
        sill_answer=SillAnswer.TAPERED_SHIM,
    ),
    "hung left": door("D1", leaf(32, F(11, 8), Hand.LEFT), stop=MITERED_STOP),
    "hung right": door("D2", leaf(36, F(7, 4), Hand.RIGHT, housing=F(1, 4)), stop=STOP, **BUTTED),
    "arched": build_opening(Opening(mark="A1", readings=ARCHED, trim=trim())),
}
