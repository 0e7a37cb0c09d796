"""From the wire to the geometry room: every length read, every fault told with its pointer."""

from __future__ import annotations

from longpoint.api.read import Path, Reader
from longpoint.api.wire_opening import (
    ApronIn,
    CasingIn,
    OpeningFields,
    PlinthIn,
    ReadingsIn,
    RevealsIn,
    StoolIn,
    TrimIn,
)
from longpoint.geometry import (
    Apron,
    Casing,
    Opening,
    Plinth,
    PlumbSides,
    Polygon,
    Readings,
    Reveals,
    Stool,
    Trim,
)
from longpoint.lengths import Fraction


def read_opening(read: Reader, wire: OpeningFields, trim: Trim, at: Path) -> Opening:
    """The opening as the geometry room takes it."""
    return Opening(
        mark=wire.mark,
        readings=_readings(read, wire.readings, (*at, "readings")),
        trim=trim,
        foot=wire.foot_style,
        reveals=_reveals(read, wire.reveals, (*at, "reveals")),
        square_gap=read.length(wire.square_gap, at, "square_gap"),
    )


def read_trim(read: Reader, wire: TrimIn, at: Path) -> Trim:
    """A trim spec as the geometry room takes it."""
    return Trim(
        casing=_casing(read, wire.casing, (*at, "casing")),
        reveal=read.length(wire.reveal, at, "reveal"),
        head_style=wire.head_style,
        head_casing=None
        if wire.head_casing is None
        else _casing(read, wire.head_casing, (*at, "head_casing")),
        overhang=read.length(wire.overhang, at, "overhang"),
        stool=None if wire.stool is None else _stool(read, wire.stool, (*at, "stool")),
        apron=None if wire.apron is None else _apron(read, wire.apron, (*at, "apron")),
        plinth=None if wire.plinth is None else _plinth(read, wire.plinth, (*at, "plinth")),
        floor_clearance=read.length(wire.floor_clearance, at, "floor_clearance"),
    )


def _casing(read: Reader, wire: CasingIn, at: Path) -> Casing:
    width = read.positive(wire.width, at, "width")
    return Casing(wire.profile, width, read.positive(wire.thickness, at, "thickness"))


def _apron(read: Reader, wire: ApronIn, at: Path) -> Apron:
    return Apron(
        wire.profile,
        width=read.positive(wire.width, at, "width"),
        thickness=read.positive(wire.thickness, at, "thickness"),
        ends=wire.ends,
    )


def _plinth(read: Reader, wire: PlinthIn, at: Path) -> Plinth:
    return Plinth(
        wire.profile,
        width=read.positive(wire.width, at, "width"),
        height=read.positive(wire.height, at, "height"),
        thickness=read.positive(wire.thickness, at, "thickness"),
    )


def _stool(read: Reader, wire: StoolIn, at: Path) -> Stool:
    return Stool(
        wire.profile,
        thickness=read.positive(wire.thickness, at, "thickness"),
        horn=read.length(wire.horn, at, "horn"),
        nosing=read.length(wire.nosing, at, "nosing"),
        sash_clearance=read.length(wire.sash_clearance, at, "sash_clearance"),
        stock_width=read.optional(wire.stock_width, at, "stock_width"),
    )


def _reveals(read: Reader, wire: RevealsIn, at: Path) -> Reveals:
    return Reveals(
        read.optional(wire.left, at, "left"),
        read.optional(wire.right, at, "right"),
        read.optional(wire.head, at, "head"),
        read.optional(wire.sill, at, "sill"),
    )


def _readings(read: Reader, wire: ReadingsIn, at: Path) -> Readings:
    left_depth, right_depth = read_pair(read, wire.jamb_depth, wire.left_depth, wire.right_depth, at, "depth")
    return Readings(
        shape=_polygon(read, wire, at) if wire.sides is not None else _plumb_sides(read, wire, at),
        left_depth=left_depth,
        right_depth=right_depth,
        jamb_thickness=read.positive(wire.jamb_thickness, at, "jamb_thickness"),
    )


def _polygon(read: Reader, wire: ReadingsIn, at: Path) -> Polygon:
    for name in ("jamb_width", "leg_height", "left_height", "right_height"):
        if getattr(wire, name) is not None:
            read.fault(
                (*at, name),
                "given-twice",
                f"`sides` already gives the whole outline: leave out {name}, or leave out sides and angles.",
            )
    sides = tuple(read.positive(text, (*at, "sides"), number) for number, text in enumerate(wire.sides or ()))
    return Polygon(sides, tuple(Fraction(angle) for angle in wire.angles or ()))


def _plumb_sides(read: Reader, wire: ReadingsIn, at: Path) -> PlumbSides:
    if wire.angles is not None:
        read.fault(
            (*at, "angles"), "sides-missing", "Angles belong to a shape given by its `sides`: give them too."
        )
    width = read.required(wire.jamb_width, at, "jamb_width", "Measure from jamb to jamb.")
    left, right = read_pair(read, wire.leg_height, wire.left_height, wire.right_height, at, "height")
    if left is None or right is None:
        read.fault(
            (*at, "leg_height"),
            "missing",
            "Give leg_height, or left_height and right_height: from the stool top, sill jamb or floor to the "
            "underside of the head jamb.",
        )
        left = right = Fraction(1)
    return PlumbSides(width, left, right)


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
            return Fraction(1), Fraction(1)
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
