"""What the geometry room is told: an opening's readings and the trim chosen for it. Inches, exact."""

from __future__ import annotations

from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real


class Foot(StrEnum):
    """What the trim stands on."""

    STOOL = "stool"
    PICTURE_FRAME = "picture_frame"
    FLOOR = "floor"
    PLINTH = "plinth"


class HeadStyle(StrEnum):
    MITRED = "mitred"
    BUTTED = "butted"


class ApronEnds(StrEnum):
    MITRED_RETURN = "mitred_return"
    SQUARE = "square"


class Casing(Value, frozen=True):
    """Casing stock.

    Attributes:
        profile: its name at the yard.
        width: across the face.
        thickness: at the thick (outer) edge.
    """

    profile: str
    width: Fraction
    thickness: Fraction


class Stool(Value, frozen=True):
    """Attributes:
    profile: the stool stock's name.
    thickness: of the stock.
    horn: how far the stool runs past the casing's outside edge.
    nosing: how far it stands past the apron's face.
    sash_clearance: left open between its back edge and the sash.
    stock_width: width of the stock before ripping; None when not known.
    """

    profile: str
    thickness: Fraction
    horn: Fraction
    nosing: Fraction
    sash_clearance: Fraction = Fraction(0)
    stock_width: Fraction | None = None


class Apron(Value, frozen=True):
    """Attributes:
    profile: the apron stock's name.
    width: down the wall.
    thickness: off the wall.
    ends: mitred returns or square cuts.
    """

    profile: str
    width: Fraction
    thickness: Fraction
    ends: ApronEnds = ApronEnds.MITRED_RETURN


class Plinth(Value, frozen=True):
    """A plinth block under a leg. Attributes: profile, width, height, thickness."""

    profile: str
    width: Fraction
    height: Fraction
    thickness: Fraction


class Trim(Value, frozen=True):
    """The trim chosen for an opening.

    Attributes:
        casing: legs, and the head unless `head_casing` is given.
        reveal: jamb left showing, on every side unless the opening says otherwise.
        head_style: mitred or butted.
        overhang: how far a butted head runs past the legs' outside edges.
    """

    casing: Casing
    reveal: Fraction
    head_style: HeadStyle = HeadStyle.MITRED
    head_casing: Casing | None = None
    overhang: Fraction = Fraction(0)
    stool: Stool | None = None
    apron: Apron | None = None
    plinth: Plinth | None = None
    floor_clearance: Fraction = Fraction(0)


class Reveals(Value, frozen=True):
    """Each side's own reveal; None takes the trim's."""

    left: Fraction | None = None
    right: Fraction | None = None
    head: Fraction | None = None
    sill: Fraction | None = None


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


Shape = PlumbSides | Quadrilateral | Polygon | Arch


class Readings(Value, frozen=True):
    """What the tape read, from the jamb's inside faces.

    Attributes:
        shape: the opening's outline.
        left_depth, right_depth: wall face back to the sash stop; None where there is no stool.
        jamb_thickness: of the jamb's edge, on which reveal and casing must find room.
    """

    shape: Shape
    left_depth: Fraction | None = None
    right_depth: Fraction | None = None
    jamb_thickness: Fraction = Fraction(3, 4)


class Opening(Value, frozen=True):
    """One opening and all that was decided about it.

    Attributes:
        mark: its name on the schedule.
        foot: what the trim stands on.
        square_gap: the joint gap below which an opening that is out of square is treated as square.
    """

    mark: str
    readings: Readings
    trim: Trim
    foot: Foot = Foot.STOOL
    reveals: Reveals = Reveals()
    square_gap: Fraction = Fraction(1, 64)
