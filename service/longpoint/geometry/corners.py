"""The corners of an opening as they really stand, and what treating them as square would cost."""

from __future__ import annotations

import math

from longpoint.geometry.faults import GeometryError
from longpoint.geometry.frame.kernel import Corner, Frame
from longpoint.geometry.frame.quadrilateral import determining_field, quadrilateral
from longpoint.geometry.frame.saw import compound
from longpoint.geometry.frame.shapes import base_rise, check_corners, frame_of
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.frame.tape import Check, Suspect, TapeCheck, check_tape
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_order import in_order
from longpoint.geometry.pieces.casing import casing_pieces
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.outline import Quadrilateral
from longpoint.lengths import Gap
from longpoint.values import Angle, Faults, Value

FAR_FROM_SQUARE = 15


class Point(Value, frozen=True):
    """A place on the wall, measured from the left inside corner of the opening's base.

    Attributes:
        x: The distance from the base's left inside corner along the base.
        y: The distance from the base, square to it.
    """

    x: Gap
    y: Gap


class CompoundCut(Value, frozen=True):
    """The saw's setting for a compound cut: the table is turned and the blade is tilted at once.

    Attributes:
        miter_degrees: The saw's table off a square cut.
        bevel_degrees: The saw is tilted this far from upright.
    """

    miter_degrees: Angle
    bevel_degrees: Angle


class CornerReading(Value, frozen=True):
    """One inside corner of the jamb.

    Attributes:
        sides: The two sides that meet there, counterclockwise.
        degrees: The inside angle of the corner.
        off_square_degrees: How far that is from 90; positive where it is wider.
        gap_if_square: The joint gap that cutting for a square corner would leave; null where the corner is far from
            square.
        at: The place of the corner on the wall.
        compound: The saw's setting for casing that leans off the wall, which needs a compound cut; null unless
            `spring_degrees` was given.
    """

    sides: tuple[str, str]
    degrees: Angle
    off_square_degrees: Angle
    gap_if_square: Gap | None
    at: Point
    compound: CompoundCut | None = None


class Corners(Value, frozen=True):
    """Every corner, and the casing cut to them. `suspects` are named where readings disagree, the likeliest wrong one
    first: one reading too many shows that something is wrong, not for certain which.

    Attributes:
        corners: Each corner, the base's right-hand one first.
        pieces: The casing by these corners, with the saw's reading at each end.
        square: Whether no joint would open by more than the square gap were all corners taken as square.
        computed_by: The diagonal or angle that decided the shape; null for other shapes.
        checks: Readings that the shape did not need, against it.
        suspects: Readings that alone could explain a disagreement.
    """

    corners: tuple[CornerReading, ...]
    pieces: tuple[Piece, ...]
    square: bool
    computed_by: str | None
    checks: tuple[Check, ...] = ()
    suspects: tuple[Suspect, ...] = ()


def corners(opening: Opening, spring_degrees: float | None = None) -> Corners:
    """The corners of an opening, answered as read even where its readings disagree or it is nearly square.

    Args:
        opening: as read.
        spring_degrees: the angle between a leaning casing's back and the upright of the wall's plane.

    Raises:
        GeometryError: where the readings close on no shape.
    """
    faults = Faults()
    frame, tape = _as_read(opening, faults)
    faults.raise_any(GeometryError)
    assert frame is not None
    sides = cased_sides(opening, frame)
    vertices = frame.vertices
    count = len(sides)
    readings = tuple(
        CornerReading(
            sides=(sides[index].name, sides[(index + 1) % count].name),
            degrees=Angle(each.degrees),
            off_square_degrees=Angle(each.degrees - 90),
            gap_if_square=gap_if_square(each, sides[index], sides[(index + 1) % count]),
            at=Point(*map(Gap, vertices[(index + 1) % count])),
            compound=None
            if spring_degrees is None
            else CompoundCut(*map(Angle, compound(each.degrees, spring_degrees))),
        )
        for index, each in enumerate(frame.corners)
    )
    gaps = [each.gap_if_square for each in readings if each.gap_if_square is not None]
    shape = opening.outline.shape
    return Corners(
        corners=readings,
        pieces=in_order(casing_pieces(opening, frame, sides)),
        square=len(gaps) == len(readings) == 4 and max(gaps) <= opening.square_gap,
        computed_by=determining_field(shape) if isinstance(shape, Quadrilateral) else None,
        checks=tape.checks if tape else (),
        suspects=tape.suspects if tape else (),
    )


def _as_read(opening: Opening, faults: Faults) -> tuple[Frame | None, TapeCheck | None]:
    shape = opening.outline.shape
    if not isinstance(shape, Quadrilateral):
        return frame_of(shape, faults, base_rise(opening)), None
    frame = quadrilateral(shape, faults)
    if frame is None:
        return None, None
    check_corners(frame.corners, ("readings", "jamb_width"), faults)
    return frame, check_tape(shape, frame.corners)


def gap_if_square(at: Corner, one: CasedSide, other: CasedSide) -> Gap | None:
    """The gap at a joint whose pieces were cut for a square corner: at its open end, across the joint."""
    off_square = float(at.degrees) - 90
    if abs(off_square) > FAR_FROM_SQUARE:
        return None
    widths = [float(side.casing.width) for side in (one, other) if side.casing is not None]
    joint = math.hypot(*widths)
    return Gap(joint * abs(math.tan(math.radians(off_square))) if widths else 0.0)
