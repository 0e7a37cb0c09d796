"""What the tape read at an opening, as it was read. Inches, exact."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.geometry.piece import Hand
from longpoint.lengths import Fraction, Length, PositiveLength
from longpoint.values import Given, Name

Degrees = Annotated[float, Meta(gt=0, lt=360, description="Degrees, inside the opening.")]
Sides = Annotated[tuple[PositiveLength, ...], Meta(min_length=3, max_length=24)]


class OffPlane(Given, frozen=True):
    """How the wall lies to the jamb's edge at one corner, where the casing's outside edge is to lie; neither where it
    is flush.

    Attributes:
        proud: The wall stands this far past the jamb's edge, measured square to the wall.
        shy: The jamb's edge stands this far past the wall, measured square to the wall.
    """

    proud: Length | None = None
    shy: Length | None = None

    @property
    def by(self) -> Fraction:
        """How far proud; negative where it is shy."""
        return (self.proud or Fraction(0)) - (self.shy or Fraction(0))


class Clearances(Given, frozen=True):
    """What is in the way, each to where the next thing begins; left out where nothing is.

    Attributes:
        left: The free space to the left, measured from the left jamb's inside face to a wall, a cabinet or
            another thing.
        right: The free space to the right, measured from the right jamb's inside face to a wall, a cabinet or
            another thing.
        above: The free space above, measured from the head jamb's underside up to the next thing.
        below: The free space below, measured from the stool's top, or the base without one, down to the next thing.
        left_neighbor: The distance from the left jamb's inside face to the jamb face of the next opening on the
            left.
        right_neighbor: The distance from the right jamb's inside face to the jamb face of the next opening on
            the right.
    """

    left: Length | None = None
    right: Length | None = None
    above: Length | None = None
    below: Length | None = None
    left_neighbor: Length | None = None
    right_neighbor: Length | None = None


NOTHING_IN_THE_WAY = Clearances()


class SillLevel(Given, frozen=True):
    """How a sill, or the floor that trim stands on, lies to a level line from jamb to jamb.

    Attributes:
        low: The end that lies low; either one where it is level.
        by: The end that `low` names lies this much lower than the other, measured straight down from a level line; 0
            where it is level.
    """

    low: Hand
    by: Length


class Door(Given, frozen=True, kw_only=True):
    """A door to be hung in a jamb made for it: the jamb's clear width and height follow from the door. The defaults are
    common practice.

    Attributes:
        width: The door's own width, measured from edge to edge.
        height: The door's own height, measured from its bottom to its top.
        thickness: The door's own thickness, measured from face to face.
        hinge_side: The side that the hinges are on, as seen from the room the trim is in.
        hinge_gap: The gap at the hinges, measured from the door's edge to the jamb.
        strike_gap: The gap at the strike, measured from the door's latch edge to the jamb.
        head_gap: The gap over the door, measured from its top to the underside of the head jamb.
        floor_gap: The gap under the door, measured from the finished floor to the door's bottom.
        jamb_thickness: The thickness of the jamb stock, measured from face to face.
        jamb_depth: The width of the jamb stock, measured across the wall from edge to edge; of a window's readings
            `jamb_depth` is another measure, to the sash stop.
        housing: The head jamb is let this deep into each side jamb, measured from the side jamb's face.
        rough_width: The width of the rough opening, measured from stud to stud. Give it to have it checked.
        rough_height: The height of the rough opening, measured from the finished floor to the underside of the header.
            Give it to have it checked.
        hinges: The number of hinges.
        hinge_length: The length of each hinge, measured from top to bottom.
        top_hinge: The distance from the door's top down to the top of its top hinge.
        bottom_hinge: The distance from the door's bottom up to the bottom of its lowest hinge.
        strike_height: The height of the strike, measured from the finished floor to the strike's middle.
        profile: The jamb stock's name at the yard.
    """

    width: PositiveLength
    height: PositiveLength
    thickness: PositiveLength = PositiveLength.of("1 3/8 in")
    hinge_side: Hand = Hand.LEFT
    hinge_gap: Length = Length.of("1/8 in")
    strike_gap: Length = Length.of("1/8 in")
    head_gap: Length = Length.of("1/8 in")
    floor_gap: Length = Length.of("1/2 in")
    jamb_thickness: PositiveLength = PositiveLength.of("3/4 in")
    jamb_depth: PositiveLength = PositiveLength.of("4 5/8 in")
    housing: Length = Length.of("0 in")
    rough_width: PositiveLength | None = None
    rough_height: PositiveLength | None = None
    hinges: Annotated[int, Meta(ge=2, le=5)] = 3
    hinge_length: PositiveLength = PositiveLength.of("3 1/2 in")
    top_hinge: PositiveLength = PositiveLength.of("7 in")
    bottom_hinge: PositiveLength = PositiveLength.of("11 in")
    strike_height: PositiveLength = PositiveLength.of("36 in")
    profile: Name = "jamb"

    @property
    def jamb_width(self) -> Fraction:
        """Jamb to jamb."""
        return self.width + self.hinge_gap + self.strike_gap

    @property
    def clear_height(self) -> Fraction:
        """Finished floor to the head jamb's underside."""
        return self.height + self.head_gap + self.floor_gap


class Readings(Given, frozen=True, kw_only=True):
    """What the tape read, from the jamb's inside faces.

    A plumb-sided opening has `jamb_width` and `jamb_height`; where the two sides differ, `left_jamb_height` and
    `right_jamb_height` instead: a raked head. One out of square has a `head_width` too, and at least one diagonal or
    one corner's angle; further ones check the tape. A curved head has its `rise` and `head_pieces` or `departure`. Any
    other convex shape has `sides` and `angles`. Joined units have their `joined_widths` and the `mull_widths` between
    them in place of `jamb_width`. A `door` gives its jamb's width and height by itself.

    A stool needs `jamb_depth`, or `left_depth` and `right_depth`; where the wall is out of plane, the same depth at
    each horn's end too.

    Attributes:
        jamb_width: The clear width, measured at the bottom from the left jamb's inside face to the right
            jamb's.
        jamb_height: The height, measured from the stool's top, the sill jamb or the floor up to the underside
            of the head jamb, or to the springing of a curve. Left out where the curve stands on the base.
        left_jamb_height: The height along the left jamb, measured as `jamb_height` is.
        right_jamb_height: The height along the right jamb, measured as `jamb_height` is.
        jamb_depth: The depth, measured from the wall's face back to the sash stop, where the stool's back edge
            lands.
        left_depth: The depth at the left jamb, measured as `jamb_depth` is.
        right_depth: The depth at the right jamb, measured as `jamb_depth` is.
        jamb_thickness: The thickness of the jamb, measured across its edge, on which reveal and casing must
            find room.
        head_width: The clear width at the top, measured from the left jamb's inside face to the right jamb's.
        diagonal_from_bottom_left: The diagonal, measured from the bottom left inside corner to the top right
            one.
        diagonal_from_bottom_right: The diagonal, measured from the bottom right inside corner to the top left
            one.
        bottom_left_angle: The inside angle of the bottom left corner.
        bottom_right_angle: The inside angle of the bottom right corner.
        top_right_angle: The inside angle of the top right corner.
        top_left_angle: The inside angle of the top left corner.
        rise: The rise of a curved head, measured from the springing line up to the top of the curve.
        head_pieces: The number of straight pieces that a curved head is made of.
        departure: A limit to choose, not a reading: how far the middle of a straight head piece may lie inside the
            jamb's true curve, measured square to the piece. There are as many pieces as that takes.
        sides: The lengths of all sides, counterclockwise from the base as seen from the room, each measured
            from inside corner to inside corner.
        angles: The interior angles, the base's right-hand corner first; a triangle needs none.
        joined_widths: The widths of the joined units, left to right, each measured from one jamb's inside face
            to the other's.
        mull_widths: The widths of the mulls between the units, left to right, each measured from one unit's
            inside jamb face to the next one's, so that both jambs' thicknesses count.
        door: The door that is to be hung here.
        left_horn_depth: The depth at the left horn's end, measured as `jamb_depth` is.
        right_horn_depth: The depth at the right horn's end, measured as `jamb_depth` is.
        wall: It says how the wall lies to the jamb's edge at every corner, in the order of `angles`.
        clearances: They say what is in the way, and how far off it is.
        sill: It says how the sill is out of level, or under a door the floor: with two heights that settles whether
            head or floor is out of level. Left out where no level was held to it, or a stool's sill is level.
    """

    jamb_width: PositiveLength | None = None
    jamb_height: Length | None = None
    left_jamb_height: PositiveLength | None = None
    right_jamb_height: PositiveLength | None = None
    jamb_depth: PositiveLength | None = None
    left_depth: PositiveLength | None = None
    right_depth: PositiveLength | None = None
    jamb_thickness: PositiveLength = PositiveLength.of("3/4 in")
    head_width: PositiveLength | None = None
    diagonal_from_bottom_left: PositiveLength | None = None
    diagonal_from_bottom_right: PositiveLength | None = None
    bottom_left_angle: Degrees | None = None
    bottom_right_angle: Degrees | None = None
    top_right_angle: Degrees | None = None
    top_left_angle: Degrees | None = None
    rise: PositiveLength | None = None
    head_pieces: Annotated[int, Meta(ge=2, le=60)] | None = None
    departure: PositiveLength | None = None
    sides: Sides | None = None
    angles: Annotated[tuple[Degrees, ...], Meta(max_length=24)] | None = None
    joined_widths: Annotated[tuple[PositiveLength, ...], Meta(min_length=2, max_length=12)] | None = None
    mull_widths: Annotated[tuple[PositiveLength, ...], Meta(max_length=11)] | None = None
    door: Door | None = None
    left_horn_depth: PositiveLength | None = None
    right_horn_depth: PositiveLength | None = None
    wall: Annotated[tuple[OffPlane, ...], Meta(min_length=3, max_length=64)] | None = None
    clearances: Clearances = NOTHING_IN_THE_WAY
    sill: SillLevel | None = None
