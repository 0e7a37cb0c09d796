"""Openings that many tests start from. Invented sizes."""

from __future__ import annotations

from typing import Any

from msgspec.structs import asdict, replace

from longpoint.geometry import (
    Apron,
    Arch,
    Built,
    Casing,
    Door,
    Mull,
    Opening,
    Piece,
    Polygon,
    Readings,
    Shape,
    Stool,
    Trim,
    Wall,
)
from longpoint.geometry.readings.readings import OffPlane
from longpoint.lengths import Fraction

F = Fraction
CASING = Casing(width=F(5, 2), thickness=F(5, 8))
STOOL = Stool(thickness=F(3, 4), horn=F(3, 4), nosing=F(7, 8))
APRON = Apron(width=F(5, 2), thickness=F(5, 8))
TRIM = Trim(CASING, F(3, 16), stool=STOOL, apron=APRON)
DEPTH = F("3.125")


def read(shape: Shape, left_depth: F | None = None, right_depth: F | None = None, **more: Any) -> Readings:
    """The readings that come to a shape."""
    if isinstance(shape, Door):
        own: dict[str, Any] = {"door": shape}
    elif isinstance(shape, Arch):
        own = asdict(shape)
        own["jamb_height"] = own.pop("spring_height")
    elif isinstance(shape, Polygon):
        own = {"sides": shape.sides, "angles": shape.angles or None}
    else:
        own = asdict(shape)
    return Readings(**own, left_depth=left_depth, right_depth=right_depth, **more)


def mulled(readings: Readings, mulls: tuple[Mull, ...]) -> Readings:
    """The same with mulls between its jambs, read unit by unit."""
    assert readings.jamb_width is not None
    starts = [F(0), *(mull.at + mull.width for mull in mulls)]
    ends = [*(mull.at for mull in mulls), readings.jamb_width]
    joined_widths = tuple(end - start for start, end in zip(starts, ends, strict=True))
    widths = tuple(mull.width for mull in mulls)
    return replace(readings, jamb_width=None, joined_widths=joined_widths, mull_widths=widths)


def off_plane(wall: Wall) -> tuple[OffPlane, ...]:
    """A wall as it is read at each corner."""
    return tuple(OffPlane(proud=by) if by >= 0 else OffPlane(shy=-by) for by in wall.proud)


def opening(shape: Shape, trim: Trim = TRIM, **fields: Any) -> Opening:
    """An opening of a shape on a stool, its depths read."""
    return Opening("T1", read(shape, DEPTH, DEPTH), trim=trim, **fields)


def piece(built: Built, key: str) -> Piece:
    """The one part of that key."""
    (found,) = [each for each in built.pieces if str(each.key) == key]
    return found
