"""From the wire to the geometry room: every length read, every fault told with its pointer."""

from __future__ import annotations

from longpoint.api.read import Path, Reader
from longpoint.api.read_shape import read_pair, read_shape
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
    Readings,
    Reveals,
    Stool,
    Trim,
)


def read_opening(read: Reader, wire: OpeningFields, trim: Trim, at: Path) -> Opening:
    """The opening as the geometry room takes it."""
    return Opening(
        mark=wire.mark,
        readings=read_readings(read, wire.readings, (*at, "readings")),
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


def read_readings(read: Reader, wire: ReadingsIn, at: Path) -> Readings:
    """What the tape read, as the geometry room takes it."""
    left_depth, right_depth = read_pair(read, wire.jamb_depth, wire.left_depth, wire.right_depth, at, "depth")
    return Readings(
        shape=read_shape(read, wire, at),
        left_depth=left_depth,
        right_depth=right_depth,
        jamb_thickness=read.positive(wire.jamb_thickness, at, "jamb_thickness"),
    )
