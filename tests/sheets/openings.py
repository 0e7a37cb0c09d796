"""Openings of an invented house, of every shape the drawings must manage."""

from geometry.builders import read
from longpoint.geometry import (
    Apron,
    Bottom,
    Built,
    Casing,
    HeadStyle,
    Opening,
    Plinth,
    PlumbSides,
    Polygon,
    Stool,
    Trim,
    build_opening,
)
from longpoint.lengths import Fraction

CASING = Casing(Fraction(5, 2), Fraction(5, 8), "casing 2 1/2")
HEAD_CASING = Casing(Fraction(9, 2), Fraction(3, 4), "head casing")
STOOL = Stool(Fraction(3, 4), Fraction(3, 4), Fraction(7, 8), Fraction(1, 16), profile="stool stock")
APRON = Apron(Fraction(13, 4), Fraction(5, 8))
TRIM = Trim(CASING, Fraction(3, 16), stool=STOOL, apron=APRON)
DEPTH = Fraction(25, 8)


def window(
    mark: str,
    width: Fraction | int,
    left: Fraction | int,
    right: Fraction | int | None = None,
    trim: Trim = TRIM,
) -> Built:
    sides = PlumbSides(Fraction(width), Fraction(left), Fraction(left if right is None else right))
    return build_opening(
        Opening(mark=mark, readings=read(sides, left_depth=DEPTH, right_depth=DEPTH), trim=trim)
    )


def framed(mark: str, *sides: int, angles: tuple[Fraction, ...] = ()) -> Built:
    shape = Polygon(tuple(Fraction(side) for side in sides), angles)
    return build_opening(Opening(mark=mark, readings=read(shape), trim=TRIM, bottom=Bottom.CASING))


def door(mark: str, width: Fraction | int, height: Fraction | int) -> Built:
    taken = read(PlumbSides(Fraction(width), Fraction(height), Fraction(height)))
    trim = Trim(CASING, Fraction(3, 16), floor_clearance=Fraction(1, 8))
    return build_opening(Opening(mark=mark, readings=taken, trim=trim, bottom=Bottom.FLOOR))


def plinth_door(mark: str) -> Built:
    trim = Trim(
        CASING,
        Fraction(3, 16),
        head_style=HeadStyle.BUTTED,
        head_casing=HEAD_CASING,
        overhang=Fraction(1, 2),
        plinth=Plinth(Fraction(3), Fraction(6), Fraction(1)),
    )
    taken = read(PlumbSides(Fraction(36), Fraction(84), Fraction(84)))
    return build_opening(Opening(mark=mark, readings=taken, trim=trim, bottom=Bottom.PLINTH))


EVERY = {
    "plain": window("K1", Fraction(245, 8), Fraction(185, 4)),
    "small": window("K2", 12, 12),
    "mulled": window("F1", 144, 60),
    "wide": window("F2", 140, 14),
    "tall": window("S1", 14, 90),
    "raked": window("S2", 40, 36, 48),
    "framed": framed("B1", 36, 24, 36, 24, angles=(Fraction(90),) * 4),
    "triangle": framed("A1", 30, 40, 50),
    "octagon": framed("A2", *(10,) * 8, angles=(Fraction(135),) * 8),
    "little octagon": framed("A3", *(5,) * 8, angles=(Fraction(135),) * 8),
    "door": door("D1", 32, 81),
    "plinth": plinth_door("D2"),
}
