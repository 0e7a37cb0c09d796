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
        proud: How far the wall stands past the jamb's edge.
        shy: How far the jamb's edge stands past the wall.
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
        left: From the left jamb's inside face to a wall, a cabinet, another thing.
        right: From the right jamb's inside face.
        above: From the head jamb's underside up.
        below: From the stool's top, or the base, down.
        left_neighbor: From the left jamb's inside face to the next opening's jamb face.
        right_neighbor: From the right jamb's inside face to the next opening's jamb face.
    """

    left: Length | None = None
    right: Length | None = None
    above: Length | None = None
    below: Length | None = None
    left_neighbor: Length | None = None
    right_neighbor: Length | None = None


NOTHING_IN_THE_WAY = Clearances()


class SillLevel(Given, frozen=True):
    """A sill out of level.

    Attributes:
        low: The end that lies low.
        by: By how much, over the jamb's width.
    """

    low: Hand
    by: PositiveLength


class Door(Given, frozen=True, kw_only=True):
    """A door to be hung in a jamb made for it: the jamb's clear width and height follow from the door. The defaults are
    common practice.

    Attributes:
        width: Of the door itself.
        height: Of the door itself.
        thickness: Of the door itself.
        hinge_side: As seen from the room the trim is in.
        hinge_gap: Left between door and jamb at the hinges.
        strike_gap: Left between door and jamb at the strike.
        head_gap: Left between the door's top and the head jamb.
        floor_gap: Left under the door.
        jamb_thickness: Of the jamb stock.
        jamb_depth: Of the jamb stock, across the wall.
        housing: How deep the head jamb is let into the legs.
        rough_width: Of the framing, where it is to be checked.
        rough_height: Of the framing, where it is to be checked.
        hinges: How many.
        hinge_length: Of each.
        top_hinge: Top of the door to the top of its top hinge.
        bottom_hinge: Bottom of the door to the bottom of its lowest hinge.
        strike_height: Finished floor to the middle of the strike.
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
        jamb_width: Jamb to jamb, at the bottom.
        jamb_height: Stool top, sill jamb or floor to the underside of the head jamb; to the springing of a curve, and
            left out where the curve stands on the base.
        left_jamb_height: The same along the left jamb.
        right_jamb_height: The same along the right jamb.
        jamb_depth: Wall face back to the sash stop where the stool's back edge lands.
        left_depth: The same at the left jamb.
        right_depth: The same at the right jamb.
        jamb_thickness: Of the jamb's edge, on which reveal and casing must find room.
        head_width: Jamb to jamb at the top.
        diagonal_from_bottom_left: Bottom left to top right, inside corner to inside corner.
        diagonal_from_bottom_right: Bottom right to top left, inside corner to inside corner.
        bottom_left_angle: At the bottom left corner.
        bottom_right_angle: At the bottom right corner.
        top_right_angle: At the top right corner.
        top_left_angle: At the top left corner.
        rise: From the springing line up to the top of a curved head.
        head_pieces: How many straight pieces a curved head is made of.
        departure: The farthest that the middle of such a piece may lie from the true curve.
        sides: Every side's length, counterclockwise from the base as seen from the room.
        angles: The interior angles, the base's right-hand corner first; a triangle needs none.
        joined_widths: Widths of the joined units, left to right, each between jamb faces.
        mull_widths: Of the mulls between them, left to right, each between jamb faces.
        door: A door to be hung here.
        left_horn_depth: The depth at the left horn's end.
        right_horn_depth: The depth at the right horn's end.
        wall: How the wall lies to the jamb's edge at every corner, in the order of `angles`.
        clearances: What is in the way.
        sill: Out of level; left out where it is level.
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
    mull_widths: Annotated[tuple[PositiveLength, ...], Meta(min_length=1, max_length=11)] | None = None
    door: Door | None = None
    left_horn_depth: PositiveLength | None = None
    right_horn_depth: PositiveLength | None = None
    wall: Annotated[tuple[OffPlane, ...], Meta(min_length=3, max_length=64)] | None = None
    clearances: Clearances = NOTHING_IN_THE_WAY
    sill: SillLevel | None = None
