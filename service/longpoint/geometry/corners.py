"""The corners of an opening as they really stand, and what treating them as square would cost."""

from __future__ import annotations

import math

from longpoint.geometry.faults import Faults
from longpoint.geometry.frame.kernel import Corner, Frame
from longpoint.geometry.frame.quadrilateral import determining_field, quadrilateral
from longpoint.geometry.frame.shapes import check_corners, frame_of
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.frame.tape import TapeCheck, check_tape
from longpoint.geometry.parts import Part
from longpoint.geometry.pieces.casing import casing_parts
from longpoint.geometry.readings.inputs import Opening, Quadrilateral
from longpoint.geometry.value import Value
from longpoint.lengths import Real

FAR_FROM_SQUARE = 15


class CornerReading(Value, frozen=True):
    """One corner of the jamb.

    Attributes:
        sides: the two sides that meet there, anticlockwise.
        degrees: interior angle.
        off_square: degrees less 90.
        gap_if_square: the joint gap that cutting it as a square corner would leave, inches; None where the corner
            is so far off that nobody would.
        vertex: where it lies, from the base's left corner, x along the base.
    """

    sides: tuple[str, str]
    degrees: Real
    off_square: Real
    gap_if_square: float | None
    vertex: tuple[Real, Real]


class Corners(Value, frozen=True):
    """Attributes:
    frame: the jamb's inside faces as read, never squared.
    corners: each corner, the base's right-hand one first.
    pieces: the casing by these corners, with the saw's reading at each end.
    square: whether every corner is square within the opening's square gap.
    computed_by: the reading that decided a quadrilateral's shape; None for other shapes.
    tape: what readings beyond the fifth say; None where there are none.
    """

    frame: Frame
    corners: tuple[CornerReading, ...]
    pieces: tuple[Part, ...]
    square: bool
    computed_by: str | None
    tape: TapeCheck | None


def corners(opening: Opening) -> Corners:
    """The corners of an opening, answered as read even where its readings disagree or it is nearly square.

    Raises:
        GeometryError: where the readings close on no shape.
    """
    faults = Faults()
    frame, tape = _as_read(opening, faults)
    faults.raise_any()
    assert frame is not None
    sides = cased_sides(opening, frame)
    vertices = frame.vertices
    count = len(sides)
    readings = tuple(
        CornerReading(
            sides=(sides[index].name, sides[(index + 1) % count].name),
            degrees=each.degrees,
            off_square=each.degrees - 90,
            gap_if_square=gap_if_square(each, sides[index], sides[(index + 1) % count]),
            vertex=vertices[(index + 1) % count],
        )
        for index, each in enumerate(frame.corners)
    )
    gaps = [each.gap_if_square for each in readings if each.gap_if_square is not None]
    shape = opening.readings.shape
    return Corners(
        frame=frame,
        corners=readings,
        pieces=casing_parts(opening, frame, sides),
        square=len(gaps) == len(readings) == 4 and max(gaps) <= opening.square_gap,
        computed_by=determining_field(shape) if isinstance(shape, Quadrilateral) else None,
        tape=tape,
    )


def _as_read(opening: Opening, faults: Faults) -> tuple[Frame | None, TapeCheck | None]:
    shape = opening.readings.shape
    if not isinstance(shape, Quadrilateral):
        return frame_of(shape, faults), None
    frame = quadrilateral(shape, faults)
    if frame is None:
        return None, None
    check_corners(frame.corners, ("readings", "jamb_width"), faults)
    return frame, check_tape(shape, frame.corners)


def gap_if_square(at: Corner, one: CasedSide, other: CasedSide) -> float | None:
    """The gap at a joint whose pieces were cut for a square corner: at its open end, across the joint."""
    off_square = float(at.degrees) - 90
    if abs(off_square) > FAR_FROM_SQUARE:
        return None
    widths = [float(side.casing.width) for side in (one, other) if side.casing is not None]
    joint = math.hypot(*widths)
    return joint * abs(math.tan(math.radians(off_square))) if widths else 0.0
