"""Types of the document's part "readings". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request
from longpoint_sdk.types.basics import Hand


class Clearances(Request, frozen=True, kw_only=True):
    """What is in the way, each to where the next thing begins; left out where nothing is.

    Attributes:
        above: From the head jamb's underside up.
        below: From the stool's top, or the base, down.
        left: From the left jamb's inside face to a wall, a cabinet, another thing.
        left_neighbor: From the left jamb's inside face to the next opening's jamb face.
        right: From the right jamb's inside face.
        right_neighbor: From the right jamb's inside face to the next opening's jamb face.
    """

    above: LengthText | None = None
    below: LengthText | None = None
    left: LengthText | None = None
    left_neighbor: LengthText | None = None
    right: LengthText | None = None
    right_neighbor: LengthText | None = None


class Door(Request, frozen=True, kw_only=True):
    """A door to be hung in a jamb made for it: the jamb's clear width and height follow from the door. The
    defaults are common practice.

    Attributes:
        width: Of the door itself.
        height: Of the door itself.
        bottom_hinge: Bottom of the door to the bottom of its lowest hinge.
        floor_gap: Left under the door.
        head_gap: Left between the door's top and the head jamb.
        hinge_gap: Left between door and jamb at the hinges.
        hinge_length: Of each.
        hinge_side: As seen from the room the trim is in.
        hinges: How many.
        housing: How deep the head jamb is let into the legs.
        jamb_depth: Of the jamb stock, across the wall.
        jamb_thickness: Of the jamb stock.
        profile: The jamb stock's name at the yard. A name on one line, not starting with a space.
        rough_height: Of the framing, where it is to be checked.
        rough_width: Of the framing, where it is to be checked.
        strike_gap: Left between door and jamb at the strike.
        strike_height: Finished floor to the middle of the strike.
        thickness: Of the door itself.
        top_hinge: Top of the door to the top of its top hinge.
    """

    width: LengthText
    height: LengthText
    bottom_hinge: LengthText = "11 in"
    floor_gap: LengthText = "1/2 in"
    head_gap: LengthText = "1/8 in"
    hinge_gap: LengthText = "1/8 in"
    hinge_length: LengthText = "3 1/2 in"
    hinge_side: Hand = "left"
    hinges: int = 3
    housing: LengthText = "0 in"
    jamb_depth: LengthText = "4 5/8 in"
    jamb_thickness: LengthText = "3/4 in"
    profile: str = "jamb"
    rough_height: LengthText | None = None
    rough_width: LengthText | None = None
    strike_gap: LengthText = "1/8 in"
    strike_height: LengthText = "36 in"
    thickness: LengthText = "1 3/8 in"
    top_hinge: LengthText = "7 in"


class OffPlane(Request, frozen=True, kw_only=True):
    """How the wall lies to the jamb's edge at one corner, where the casing's outside edge is to lie; neither
    where it is flush.

    Attributes:
        proud: How far the wall stands past the jamb's edge.
        shy: How far the jamb's edge stands past the wall.
    """

    proud: LengthText | None = None
    shy: LengthText | None = None


class SillLevel(Request, frozen=True, kw_only=True):
    """A sill out of level.

    Attributes:
        low: The end that lies low.
        by: By how much, over the jamb's width.
    """

    low: Hand
    by: LengthText


class Readings(Request, frozen=True, kw_only=True):
    """What the tape read, from the jamb's inside faces.

    A plumb-sided opening has `jamb_width` and `jamb_height`; where the two sides differ, `left_jamb_height`
    and `right_jamb_height` instead: a raked head. One out of square has a `head_width` too, and at least one
    diagonal or one corner's angle; further ones check the tape. A curved head has its `rise` and
    `head_pieces` or `departure`. Any other convex shape has `sides` and `angles`. Joined units have their
    `joined_widths` and the `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's
    width and height by itself.

    A stool needs `jamb_depth`, or `left_depth` and `right_depth`; where the wall is out of plane, the same
    depth at each horn's end too.

    Attributes:
        angles: The interior angles, the base's right-hand corner first; a triangle needs none.
        bottom_left_angle: At the bottom left corner.
        bottom_right_angle: At the bottom right corner.
        clearances: What is in the way.
        departure: The farthest that the middle of such a piece may lie from the true curve.
        diagonal_from_bottom_left: Bottom left to top right, inside corner to inside corner.
        diagonal_from_bottom_right: Bottom right to top left, inside corner to inside corner.
        door: A door to be hung here.
        head_pieces: How many straight pieces a curved head is made of.
        head_width: Jamb to jamb at the top.
        jamb_depth: Wall face back to the sash stop where the stool's back edge lands.
        jamb_height: Stool top, sill jamb or floor to the underside of the head jamb; to the springing of a
            curve, and left out where the curve stands on the base.
        jamb_thickness: Of the jamb's edge, on which reveal and casing must find room.
        jamb_width: Jamb to jamb, at the bottom.
        joined_widths: Widths of the joined units, left to right, each between jamb faces.
        left_depth: The same at the left jamb.
        left_horn_depth: The depth at the left horn's end.
        left_jamb_height: The same along the left jamb.
        mull_widths: Of the mulls between them, left to right, each between jamb faces.
        right_depth: The same at the right jamb.
        right_horn_depth: The depth at the right horn's end.
        right_jamb_height: The same along the right jamb.
        rise: From the springing line up to the top of a curved head.
        sides: Every side's length, counterclockwise from the base as seen from the room.
        sill: Out of level; left out where it is level.
        top_left_angle: At the top left corner.
        top_right_angle: At the top right corner.
        wall: How the wall lies to the jamb's edge at every corner, in the order of `angles`.
    """

    angles: list[float] | None = None
    bottom_left_angle: float | None = None
    bottom_right_angle: float | None = None
    clearances: Clearances = Clearances()
    departure: LengthText | None = None
    diagonal_from_bottom_left: LengthText | None = None
    diagonal_from_bottom_right: LengthText | None = None
    door: Door | None = None
    head_pieces: int | None = None
    head_width: LengthText | None = None
    jamb_depth: LengthText | None = None
    jamb_height: LengthText | None = None
    jamb_thickness: LengthText = "3/4 in"
    jamb_width: LengthText | None = None
    joined_widths: list[LengthText] | None = None
    left_depth: LengthText | None = None
    left_horn_depth: LengthText | None = None
    left_jamb_height: LengthText | None = None
    mull_widths: list[LengthText] | None = None
    right_depth: LengthText | None = None
    right_horn_depth: LengthText | None = None
    right_jamb_height: LengthText | None = None
    rise: LengthText | None = None
    sides: list[LengthText] | None = None
    sill: SillLevel | None = None
    top_left_angle: float | None = None
    top_right_angle: float | None = None
    wall: list[OffPlane] | None = None
