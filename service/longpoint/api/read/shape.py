"""From the wire to an opening's outline: which kind of shape the readings describe, and what is lacking or too much."""

from __future__ import annotations

from longpoint.api.read.reader import PLACEHOLDER, Path, Reader
from longpoint.api.wire.readings import DoorIn, ReadingsIn
from longpoint.geometry import Arch, Door, PlumbSides, Polygon, Quadrilateral, Shape
from longpoint.lengths import Fraction, Real

_WIDTHS = ("jamb_width", "lights", "mull_widths")
_HEIGHTS = ("leg_height", "left_height", "right_height")
_DIAGONALS = ("diagonal_from_bottom_left", "diagonal_from_bottom_right")
_ANGLES = ("bottom_left_angle", "bottom_right_angle", "top_right_angle", "top_left_angle")
_OUT_OF_SQUARE = ("head_width", *_DIAGONALS, *_ANGLES)
_CURVE = ("rise", "head_pieces", "departure")
_POLYGON = ("sides", "angles")


def read_shape(read: Reader, wire: ReadingsIn, at: Path) -> Shape:
    """The outline that the readings describe."""
    if wire.door is not None:
        _refuse(read, wire, at, (*_WIDTHS, *_HEIGHTS, *_OUT_OF_SQUARE, *_CURVE, *_POLYGON), "`door`")
        return _door(read, wire.door, (*at, "door"))
    if wire.sides is not None:
        _refuse(read, wire, at, (*_WIDTHS, *_HEIGHTS, *_OUT_OF_SQUARE, *_CURVE), "`sides`")
        return _polygon(read, wire, at)
    if wire.angles is not None:
        read.fault(
            (*at, "angles"), "sides-missing", "Angles belong to a shape given by its `sides`: give them too."
        )
    if _any(wire, _CURVE):
        _refuse(read, wire, at, (*_WIDTHS[1:], *_HEIGHTS[1:], *_OUT_OF_SQUARE), "a curved head on equal legs")
        return _arch(read, wire, at)
    width = _width(read, wire, at)
    left, right = read_pair(read, wire.leg_height, wire.left_height, wire.right_height, at, "height")
    if left is None or right is None:
        read.fault(
            (*at, "leg_height"),
            "missing",
            "Give leg_height, or left_height and right_height: from the stool top, sill jamb or floor to the "
            "underside of the head jamb.",
        )
        left = right = PLACEHOLDER
    if _any(wire, _OUT_OF_SQUARE):
        return _quadrilateral(read, wire, width, left, right, at)
    return PlumbSides(width, left, right)


def _width(read: Reader, wire: ReadingsIn, at: Path) -> Fraction:
    """Jamb to jamb: read as such, or made up of lights and the mulls between them."""
    if wire.lights is None:
        if wire.mull_widths is not None:
            read.fault((*at, "mull_widths"), "lights-missing", "Mulls lie between lights: give `lights` too.")
        return read.required(wire.jamb_width, at, "jamb_width", "Measure from jamb to jamb.")
    _refuse(read, wire, at, ("jamb_width",), "`lights`")
    mulls = wire.mull_widths or []
    if len(mulls) != len(wire.lights) - 1:
        read.fault(
            (*at, "mull_widths"),
            "mull-count",
            f"{len(wire.lights)} lights have {len(wire.lights) - 1} mulls between them, and {len(mulls)} came.",
        )
    texts = [("lights", wire.lights), ("mull_widths", mulls)]
    return sum(
        (
            read.positive(text, (*at, name), number)
            for name, list_ in texts
            for number, text in enumerate(list_)
        ),
        Fraction(0),
    )


def _door(read: Reader, wire: DoorIn, at: Path) -> Door:
    def positive(name: str) -> Fraction:
        return read.positive(getattr(wire, name), at, name)

    def length(name: str) -> Fraction:
        return read.length(getattr(wire, name), at, name)

    return Door(
        width=positive("width"),
        height=positive("height"),
        thickness=positive("thickness"),
        hinge_side=wire.hinge_side,
        hinge_gap=length("hinge_gap"),
        strike_gap=length("strike_gap"),
        head_gap=length("head_gap"),
        floor_gap=length("floor_gap"),
        jamb_profile=wire.profile,
        jamb_thickness=positive("jamb_thickness"),
        jamb_depth=positive("jamb_depth"),
        housing=length("housing"),
        rough_width=read.optional_positive(wire.rough_width, at, "rough_width"),
        rough_height=read.optional_positive(wire.rough_height, at, "rough_height"),
        hinges=wire.hinges,
        hinge_length=positive("hinge_length"),
        top_hinge=positive("top_hinge"),
        bottom_hinge=positive("bottom_hinge"),
        strike_height=positive("strike_height"),
    )


def _any(wire: ReadingsIn, names: tuple[str, ...]) -> bool:
    return any(getattr(wire, name) is not None for name in names)


def _refuse(read: Reader, wire: ReadingsIn, at: Path, names: tuple[str, ...], by: str) -> None:
    for name in names:
        if getattr(wire, name) is not None:
            read.fault(
                (*at, name),
                "given-twice",
                f"The outline is already given by {by}: leave out {name}, or describe it the other way.",
            )


def _polygon(read: Reader, wire: ReadingsIn, at: Path) -> Polygon:
    sides = tuple(read.positive(text, (*at, "sides"), number) for number, text in enumerate(wire.sides or ()))
    return Polygon(sides, tuple(Fraction(angle) for angle in wire.angles or ()))


def _arch(read: Reader, wire: ReadingsIn, at: Path) -> Arch:
    return Arch(
        jamb_width=read.required(wire.jamb_width, at, "jamb_width", "Measure from jamb to jamb."),
        spring_height=Fraction(0)
        if wire.leg_height is None
        else read.length(wire.leg_height, at, "leg_height"),
        rise=read.required(
            wire.rise, at, "rise", "Measure from the springing line up to the top of the curve."
        ),
        head_pieces=wire.head_pieces,
        departure=read.optional_positive(wire.departure, at, "departure"),
    )


def _quadrilateral(
    read: Reader, wire: ReadingsIn, width: Fraction, left: Fraction, right: Fraction, at: Path
) -> Quadrilateral:
    head = read.optional_positive(wire.head_width, at, "head_width")
    rising, falling = (read.optional_positive(getattr(wire, name), at, name) for name in _DIAGONALS)
    angles: list[Real | None] = [
        None if (value := getattr(wire, name)) is None else Fraction(value) for name in _ANGLES
    ]
    return Quadrilateral(width, width if head is None else head, left, right, rising, falling, *angles)


def read_pair(
    read: Reader, both: str | None, left: str | None, right: str | None, at: Path, what: str
) -> tuple[Fraction | None, Fraction | None]:
    """A reading taken once for both sides, or once for each."""
    shared = "leg_height" if what == "height" else "jamb_depth"
    if both is None:
        if (left is None) is not (right is None):
            lacking = "left" if left is None else "right"
            read.fault(
                (*at, f"{lacking}_{what}"),
                "missing",
                f"One side's {what} was given without the other: give {lacking}_{what} too, or {shared} alone.",
            )
            return PLACEHOLDER, PLACEHOLDER
        return (
            read.optional_positive(left, at, f"left_{what}"),
            read.optional_positive(right, at, f"right_{what}"),
        )
    for side, own in (("left", left), ("right", right)):
        if own is not None:
            read.fault(
                (*at, f"{side}_{what}"),
                "given-twice",
                f"{shared} already speaks for both sides: leave one of the two out.",
            )
    value = read.positive(both, at, shared)
    return value, value
