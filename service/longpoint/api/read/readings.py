"""From the wire to the readings that the geometry room takes: the outline, and what surrounds it."""

from __future__ import annotations

from longpoint.api.read.reader import PLACEHOLDER, Path, Reader
from longpoint.api.read.shape import read_pair, read_shape
from longpoint.api.wire.readings import ClearancesIn, OffPlaneIn, ReadingsIn
from longpoint.geometry import Clearances, Mull, Readings, SillLevel, Wall
from longpoint.geometry.readings.inputs import NOTHING_IN_THE_WAY
from longpoint.lengths import Fraction

NO_CLEARANCES = ClearancesIn()


def read_readings(read: Reader, wire: ReadingsIn, at: Path) -> Readings:
    """What the tape read, as the geometry room takes it."""
    left_depth, right_depth = read_pair(read, wire.jamb_depth, wire.left_depth, wire.right_depth, at, "depth")
    return Readings(
        shape=read_shape(read, wire, at),
        left_depth=left_depth,
        right_depth=right_depth,
        jamb_thickness=read.positive(wire.jamb_thickness, at, "jamb_thickness"),
        left_horn_depth=read.optional_positive(wire.left_horn_depth, at, "left_horn_depth"),
        right_horn_depth=read.optional_positive(wire.right_horn_depth, at, "right_horn_depth"),
        mulls=() if wire.lights is None else _mulls(read, wire),
        wall=None if wire.wall is None else _wall(read, wire.wall, (*at, "wall")),
        clearances=NOTHING_IN_THE_WAY
        if wire.clearances == NO_CLEARANCES
        else _clearances(read, wire.clearances, (*at, "clearances")),
        sill=None
        if wire.sill is None
        else SillLevel(wire.sill.low, read.positive(wire.sill.by, (*at, "sill"), "by")),
    )


def _mulls(read: Reader, wire: ReadingsIn) -> tuple[Mull, ...]:
    """Each mull from the left jamb; the outline's width was made up of the same readings."""
    mulls: list[Mull] = []
    reached = Fraction(0)
    for number, text in enumerate(wire.mull_widths or ()):
        if number < len(wire.lights or ()):
            reached += _quietly(read, (wire.lights or [])[number])
        width = _quietly(read, text)
        mulls.append(Mull(reached, width))
        reached += width
    return tuple(mulls)


def _quietly(read: Reader, text: str) -> Fraction:
    """A length whose fault, if it has one, was told where the outline was read."""
    return Reader(read.unit).length(text, (), "") or PLACEHOLDER


def _wall(read: Reader, wire: list[OffPlaneIn], at: Path) -> Wall:
    proud: list[Fraction] = []
    for number, one in enumerate(wire):
        if one.proud is not None and one.shy is not None:
            read.fault((*at, number, "shy"), "given-twice", "A wall is proud or shy at a corner, not both.")
        stands = read.optional(one.proud, (*at, number), "proud") or Fraction(0)
        lies = read.optional(one.shy, (*at, number), "shy") or Fraction(0)
        proud.append(stands - lies)
    return Wall(tuple(proud))


def _clearances(read: Reader, wire: ClearancesIn, at: Path) -> Clearances:
    return Clearances(
        left=read.optional(wire.left, at, "left"),
        right=read.optional(wire.right, at, "right"),
        above=read.optional(wire.above, at, "above"),
        below=read.optional(wire.below, at, "below"),
        left_neighbour=read.optional(wire.left_neighbour, at, "left_neighbour"),
        right_neighbour=read.optional(wire.right_neighbour, at, "right_neighbour"),
    )
