"""What the geometry room is told: an opening's readings and the trim chosen for it. Inches, exact."""

from __future__ import annotations

from enum import StrEnum

from longpoint.geometry.parts import Hand
from longpoint.geometry.readings.trim import Trim
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real


class Foot(StrEnum):
    """What the trim stands on."""

    STOOL = "stool"
    PICTURE_FRAME = "picture_frame"
    FLOOR = "floor"
    PLINTH = "plinth"


class Reveals(Value, frozen=True):
    """Each side's own reveal; None takes the trim's."""

    left: Fraction | None = None
    right: Fraction | None = None
    head: Fraction | None = None
    sill: Fraction | None = None


NO_REVEALS = Reveals()


class PlumbSides(Value, frozen=True):
    """A base and two sides square to it.

    Attributes:
        jamb_width: jamb to jamb.
        left_height, right_height: stool top, sill jamb or floor to the underside of the head jamb.
    """

    jamb_width: Fraction
    left_height: Fraction
    right_height: Fraction


class Polygon(Value, frozen=True):
    """Any convex shape, anticlockwise from the base as seen from the room.

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
        left_height, right_height: along each jamb.
        diagonal_from_bottom_left: bottom left to top right, inside corner to inside corner.
        diagonal_from_bottom_right: bottom right to top left.
        bottom_left_angle, bottom_right_angle, top_right_angle, top_left_angle: interior, degrees.
    """

    jamb_width: Fraction
    head_width: Fraction
    left_height: Fraction
    right_height: Fraction
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
        spring_height: base to where the curve springs; nought where the curve stands on the base.
        rise: of the curve above the springing, at most half the width.
        head_pieces: how many segments; None to let `departure` decide.
        departure: the farthest a segment's middle may lie from the true curve.
    """

    jamb_width: Fraction
    spring_height: Fraction
    rise: Fraction
    head_pieces: int | None = None
    departure: Fraction | None = None


class Door(Value, frozen=True):
    """A door to be hung in a jamb made for it: the jamb's clear width and height follow from the door.

    Attributes:
        width, height, thickness: of the door itself.
        hinge_side: as seen from the room the trim is in.
        hinge_gap, strike_gap, head_gap: left between door and jamb.
        floor_gap: under the door.
        jamb_profile, jamb_thickness, jamb_depth: the jamb stock; its depth is the wall's.
        housing: how deep the head jamb is let into the legs.
        rough_width, rough_height: of the framing; None where they were not read.
        hinges: how many.
        hinge_length: of each.
        top_hinge: top of the door to the top of its top hinge.
        bottom_hinge: bottom of the door to the bottom of its lowest hinge.
        strike_height: finished floor to the middle of the strike.
    """

    width: Fraction
    height: Fraction
    thickness: Fraction
    hinge_side: Hand
    hinge_gap: Fraction = Fraction(1, 8)
    strike_gap: Fraction = Fraction(1, 8)
    head_gap: Fraction = Fraction(1, 8)
    floor_gap: Fraction = Fraction(1, 2)
    jamb_profile: str = "jamb"
    jamb_thickness: Fraction = Fraction(3, 4)
    jamb_depth: Fraction = Fraction(37, 8)
    housing: Fraction = Fraction(0)
    rough_width: Fraction | None = None
    rough_height: Fraction | None = None
    hinges: int = 3
    hinge_length: Fraction = Fraction(7, 2)
    top_hinge: Fraction = Fraction(7)
    bottom_hinge: Fraction = Fraction(11)
    strike_height: Fraction = Fraction(36)

    @property
    def jamb_width(self) -> Fraction:
        """Jamb to jamb."""
        return self.width + self.hinge_gap + self.strike_gap

    @property
    def clear_height(self) -> Fraction:
        """Finished floor to the head jamb's underside."""
        return self.height + self.head_gap + self.floor_gap


Shape = PlumbSides | Quadrilateral | Polygon | Arch | Door


class Wall(Value, frozen=True):
    """How the wall lies to the jamb's edge.

    Attributes:
        proud: by corner, the base's right-hand one first: how far the wall stands past the jamb's edge where the
            casing's outside edge is to lie; negative where the jamb stands past the wall.
    """

    proud: tuple[Fraction, ...]


class Clearances(Value, frozen=True):
    """What is in the way; None where nothing is.

    Attributes:
        left, right: from the jamb's inside face to a wall, a cabinet, another thing.
        above: from the head jamb's underside up.
        below: from the stool's top, or the base, down.
        left_neighbour, right_neighbour: from this jamb's inside face to the next opening's.
    """

    left: Fraction | None = None
    right: Fraction | None = None
    above: Fraction | None = None
    below: Fraction | None = None
    left_neighbour: Fraction | None = None
    right_neighbour: Fraction | None = None


NOTHING_IN_THE_WAY = Clearances()


class Mull(Value, frozen=True):
    """Where two units are joined. Attributes: its left face from the left jamb, and its width between jamb faces."""

    at: Fraction
    width: Fraction


class SillLevel(Value, frozen=True):
    """A sill out of level. Attributes: the end that lies low, and by how much over the jamb's width."""

    low: Hand
    by: Fraction


class Readings(Value, frozen=True):
    """What the tape read, from the jamb's inside faces.

    Attributes:
        shape: the opening's outline.
        left_depth, right_depth: wall face back to the sash stop; None where there is no stool.
        jamb_thickness: of the jamb's edge, on which reveal and casing must find room.
        left_horn_depth, right_horn_depth: the same depth at the horn's end, where the wall is out of plane.
        mulls: where joined units meet, left to right.
        wall: how it lies to the jamb's edge; None where it was not read.
        clearances: what is in the way.
        sill: out of level; None where it is level.
    """

    shape: Shape
    left_depth: Fraction | None = None
    right_depth: Fraction | None = None
    jamb_thickness: Fraction = Fraction(3, 4)
    left_horn_depth: Fraction | None = None
    right_horn_depth: Fraction | None = None
    mulls: tuple[Mull, ...] = ()
    wall: Wall | None = None
    clearances: Clearances = NOTHING_IN_THE_WAY
    sill: SillLevel | None = None


class WallAnswer(StrEnum):
    """What is done where the wall does not lie flush: nothing that changes a size, casing that leans on it, or a
    jamb extension."""

    FLAT = "flat"
    LEAN = "lean"
    EXTEND = "extend"


class SillAnswer(StrEnum):
    """What is done under a stool on a sill out of level: shims, or one tapered strip."""

    SHIM = "shim"
    TAPERED_STRIP = "tapered_strip"


class Limits(Value, frozen=True):
    """How far the wall may lie off the jamb's edge. Common practice, no source.

    Attributes:
        caulk: up to here the joint is caulked.
        plane: up to here the wall is planed back or the casing back-bevelled; beyond, the jamb is extended.
    """

    caulk: Fraction = Fraction(1, 16)
    plane: Fraction = Fraction(3, 16)


USUAL_LIMITS = Limits()


class Horns(Value, frozen=True):
    """A stool's own horns; None takes the trim's."""

    left: Fraction | None = None
    right: Fraction | None = None


NO_HORNS = Horns()


class Widths(Value, frozen=True):
    """Widths that pieces are ripped to at this opening; None keeps the stock's."""

    left: Fraction | None = None
    right: Fraction | None = None
    head: Fraction | None = None
    sill: Fraction | None = None
    apron: Fraction | None = None


NO_WIDTHS = Widths()


class Opening(Value, frozen=True):
    """One opening and all that was decided about it.

    Attributes:
        mark: its name on the schedule.
        foot: what the trim stands on.
        square_gap: the joint gap below which an opening that is out of square is treated as square.
        horns, widths: its own, where they are not the trim's.
        without_apron: leaves out the trim's apron.
        wall_answer, limits: what is done about the wall, and from where on it matters.
        sill_answer: what is done under a stool on a sill out of level.
    """

    mark: str
    readings: Readings
    trim: Trim
    foot: Foot = Foot.STOOL
    reveals: Reveals = NO_REVEALS
    square_gap: Fraction = Fraction(1, 64)
    horns: Horns = NO_HORNS
    widths: Widths = NO_WIDTHS
    without_apron: bool = False
    wall_answer: WallAnswer = WallAnswer.FLAT
    limits: Limits = USUAL_LIMITS
    sill_answer: SillAnswer = SillAnswer.SHIM
