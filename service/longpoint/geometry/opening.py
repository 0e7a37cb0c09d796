"""All the parts of one opening."""

from __future__ import annotations

import math
from enum import Flag, auto

from longpoint.geometry.apron import apron_parts
from longpoint.geometry.casing import cased_sides, casing_parts
from longpoint.geometry.checks import check_lengths, check_trim
from longpoint.geometry.faults import Faults
from longpoint.geometry.inputs import Foot, Opening, PlumbSides, Quadrilateral, Trim
from longpoint.geometry.kernel import ALL_SQUARE, Corner, Frame
from longpoint.geometry.parts import Part
from longpoint.geometry.plinth import plinth_parts
from longpoint.geometry.shapes import frame_of
from longpoint.geometry.stool import stool_part
from longpoint.geometry.value import Value

TAKEN_SQUARE = "Out of square by too little to open a joint: taken as square, each side at its own reading."
OUT_OF_LEVEL = "The heights differ: the sides are taken as plumb and the head as out of level."


class Built(Value, frozen=True):
    """An opening worked out.

    Attributes:
        opening: as it was given.
        frame: the jamb's inside faces.
        parts: every piece; left and right are a mirrored pair, each a part of its own.
        square_gap: the widest joint gap that taking the corners as square leaves, inches.
        notes: what was assumed.
    """

    opening: Opening
    frame: Frame
    parts: tuple[Part, ...]
    square_gap: float
    notes: tuple[str, ...]


class Pieces(Flag):
    """Which pieces of an opening are asked for."""

    STOOL = auto()
    APRON = auto()
    CASING = auto()
    ALL = STOOL | APRON | CASING


def build_opening(opening: Opening, wanted: Pieces = Pieces.ALL) -> Built:
    """Every part of an opening, or only those asked for.

    Raises:
        GeometryError: with every fault found.
    """
    faults = Faults()
    frame, gap, notes = _settled_frame(opening, faults)
    check_trim(opening, faults, stands_on_stool=Pieces.STOOL in wanted)
    faults.raise_any()
    assert frame is not None
    sides = cased_sides(opening, frame)
    parts: list[Part] = []
    if opening.foot is Foot.STOOL:
        if opening.trim.stool is not None and Pieces.STOOL in wanted:
            parts.append(stool_part(opening, frame, sides))
        if opening.trim.apron is not None and Pieces.APRON in wanted:
            parts.extend(apron_parts(opening, frame, sides))
    if Pieces.CASING in wanted:
        parts.extend(casing_parts(opening, frame, sides))
        if opening.foot is Foot.PLINTH:
            parts.extend(plinth_parts(opening))
    check_lengths(opening, parts, faults)
    faults.raise_any()
    return Built(opening, frame, tuple(parts), gap, notes)


def _settled_frame(opening: Opening, faults: Faults) -> tuple[Frame | None, float, tuple[str, ...]]:
    shape = opening.readings.shape
    frame = frame_of(shape, faults)
    if frame is None or frame.square or not isinstance(shape, PlumbSides | Quadrilateral):
        return frame, 0.0, ()
    gap = square_gap(frame.corners, opening.trim)
    if gap <= opening.square_gap:
        return squared(shape), gap, (TAKEN_SQUARE,)
    return frame, gap, (OUT_OF_LEVEL,) if isinstance(shape, PlumbSides) else ()


def squared(shape: PlumbSides | Quadrilateral) -> Frame:
    """An opening near enough to square, each side at its own reading."""
    width = shape.jamb_width
    head = shape.head_width if isinstance(shape, Quadrilateral) else width
    return Frame((width, shape.right_height, head, shape.left_height), ALL_SQUARE)


def square_gap(corners: tuple[Corner, ...], trim: Trim) -> float:
    """The widest gap that cuts for square corners would leave at these, along the longest mitre of this trim."""
    joint = math.hypot(trim.casing.width, (trim.head_casing or trim.casing).width)
    return max(joint * abs(math.tan(math.radians(float(c.degrees) - 90))) for c in corners)
