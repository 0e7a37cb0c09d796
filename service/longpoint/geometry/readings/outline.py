"""The outlines that readings come to. Inches, exact."""

from __future__ import annotations

from longpoint.geometry.readings.readings import Door
from longpoint.lengths import Fraction, Real
from longpoint.values import Value


class PlumbSides(Value, frozen=True):
    """A base and two sides square to it.

    Attributes:
        jamb_width: jamb to jamb.
        left_jamb_height, right_jamb_height: stool top, sill jamb or floor to the underside of the head jamb.
    """

    jamb_width: Fraction
    left_jamb_height: Fraction
    right_jamb_height: Fraction


class Polygon(Value, frozen=True):
    """Any convex shape, counterclockwise from the base as seen from the room.

    Attributes:
        sides: every side's length, the base first.
        angles: the interior angles in degrees, the base's right-hand corner first; a triangle needs none.
    """

    sides: tuple[Fraction, ...]
    angles: tuple[Real, ...] = ()


class Quadrilateral(Value, frozen=True):
    """Four sides out of square, held by at least one diagonal or angle; more of them check the tape.

    Attributes:
        jamb_width, head_width: jamb to jamb at the bottom and at the top.
        left_jamb_height, right_jamb_height: along each jamb.
        diagonal_from_bottom_left: bottom left to top right, inside corner to inside corner.
        diagonal_from_bottom_right: bottom right to top left.
        bottom_left_angle, bottom_right_angle, top_right_angle, top_left_angle: interior, degrees.
    """

    jamb_width: Fraction
    head_width: Fraction
    left_jamb_height: Fraction
    right_jamb_height: Fraction
    diagonal_from_bottom_left: Fraction | None = None
    diagonal_from_bottom_right: Fraction | None = None
    bottom_left_angle: Real | None = None
    bottom_right_angle: Real | None = None
    top_right_angle: Real | None = None
    top_left_angle: Real | None = None


class Arch(Value, frozen=True):
    """A segmental or half-round head in straight segments, their ends on the curve.

    Attributes:
        jamb_width: jamb to jamb; the curve's chord.
        spring_height: base to where the curve springs; zero where the curve stands on the base.
        rise: of the curve above the springing, at most half the width.
        head_pieces: how many segments; None to let `departure` decide.
        departure: the farthest the middle of a segment may lie inside the true curve of the jamb.
    """

    jamb_width: Fraction
    spring_height: Fraction
    rise: Fraction
    head_pieces: int | None = None
    departure: Fraction | None = None


Shape = PlumbSides | Quadrilateral | Polygon | Arch | Door


class Mull(Value, frozen=True):
    """Where two units are joined. Attributes: its left face from the left jamb, and its width between jamb faces."""

    at: Fraction
    width: Fraction


class Wall(Value, frozen=True):
    """How the wall lies to the jamb's edge.

    Attributes:
        proud: by corner, the base's right-hand one first: how far the wall stands past the jamb's edge where the
            casing's outside edge is to lie; negative where the jamb stands past the wall.
    """

    proud: tuple[Fraction, ...]


class Outline(Value, frozen=True):
    """What an opening's readings come to.

    Attributes:
        shape: its outline.
        left_depth, right_depth: wall face back to the sash stop; None where it was not read.
        left_horn_depth, right_horn_depth: the same depth at the horn's end, where the wall is out of plane.
        mulls: where joined units meet, left to right.
        wall: how it lies to the jamb's edge; None where it was not read.
    """

    shape: Shape
    left_depth: Fraction | None = None
    right_depth: Fraction | None = None
    left_horn_depth: Fraction | None = None
    right_horn_depth: Fraction | None = None
    mulls: tuple[Mull, ...] = ()
    wall: Wall | None = None
