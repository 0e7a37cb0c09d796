"""From the wire to the geometry room: every length read, every fault told with its pointer."""

from __future__ import annotations

from longpoint.api.read.reader import Path, Reader
from longpoint.api.read.readings import read_readings
from longpoint.api.wire.opening import HornsIn, OpeningFields, RevealsIn, WallLimitsIn, WidthsIn
from longpoint.geometry import Horns, Limits, Opening, Reveals, Trim, Widths
from longpoint.geometry.readings.inputs import NO_HORNS, NO_REVEALS, NO_WIDTHS, USUAL_LIMITS

# What an opening is sent as that has nothing of its own.
_NO_REVEALS, _NO_HORNS, _NO_WIDTHS, _USUAL_LIMITS = RevealsIn(), HornsIn(), WidthsIn(), WallLimitsIn()


def read_opening(read: Reader, wire: OpeningFields, trim: Trim, at: Path) -> Opening:
    """The opening as the geometry room takes it."""
    return Opening(
        mark=wire.mark,
        readings=read_readings(read, wire.readings, (*at, "readings")),
        trim=trim,
        foot=wire.foot_style,
        reveals=NO_REVEALS if wire.reveals == _NO_REVEALS else _reveals(read, wire.reveals, (*at, "reveals")),
        square_gap=read.length(wire.square_gap, at, "square_gap"),
        horns=NO_HORNS if wire.horns == _NO_HORNS else _horns(read, wire.horns, (*at, "horns")),
        widths=NO_WIDTHS if wire.widths == _NO_WIDTHS else _widths(read, wire.widths, (*at, "widths")),
        without_apron=wire.without_apron,
        wall_answer=wire.wall_answer,
        limits=USUAL_LIMITS
        if wire.wall_limits == _USUAL_LIMITS
        else _limits(read, wire.wall_limits, (*at, "wall_limits")),
        sill_answer=wire.sill_answer,
    )


def _reveals(read: Reader, wire: RevealsIn, at: Path) -> Reveals:
    return Reveals(
        read.optional(wire.left, at, "left"),
        read.optional(wire.right, at, "right"),
        read.optional(wire.head, at, "head"),
        read.optional(wire.sill, at, "sill"),
    )


def _horns(read: Reader, wire: HornsIn, at: Path) -> Horns:
    return Horns(read.optional(wire.left, at, "left"), read.optional(wire.right, at, "right"))


def _widths(read: Reader, wire: WidthsIn, at: Path) -> Widths:
    return Widths(
        read.optional_positive(wire.left, at, "left"),
        read.optional_positive(wire.right, at, "right"),
        read.optional_positive(wire.head, at, "head"),
        read.optional_positive(wire.sill, at, "sill"),
        read.optional_positive(wire.apron, at, "apron"),
    )


def _limits(read: Reader, wire: WallLimitsIn, at: Path) -> Limits:
    caulk, plane = read.length(wire.caulk, at, "caulk"), read.length(wire.plane, at, "plane")
    if caulk > plane:
        read.fault(
            (*at, "plane"),
            "out-of-order",
            "Planing begins where caulk ends: make this the larger.",
        )
    return Limits(caulk, plane)
