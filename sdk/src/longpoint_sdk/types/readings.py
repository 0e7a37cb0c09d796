"""Types of the document's part "readings". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request
from longpoint_sdk.types.basics import Hand


class Clearances(Request, frozen=True, kw_only=True):
    """What is in the way, each to where the next thing begins; left out where nothing is.

    Attributes:
        above: The free space above, measured from the head jamb's underside up to the next thing. A length as
            a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit
            it is in the request's `unit`, when the request has one.
        below: The free space below, measured from the stool's top, or the base without one, down to the next
            thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        left: The free space to the left, measured from the left jamb's inside face to a wall, a cabinet or
            another thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals,
            mm, cm or m. Without a unit it is in the request's `unit`, when the request has one.
        left_neighbor: The distance from the left jamb's inside face to the jamb face of the next opening on
            the left. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm
            or m. Without a unit it is in the request's `unit`, when the request has one.
        right: The free space to the right, measured from the right jamb's inside face to a wall, a cabinet or
            another thing. A length as a tape reads it, with its unit: feet, inches and fractions, decimals,
            mm, cm or m. Without a unit it is in the request's `unit`, when the request has one.
        right_neighbor: The distance from the right jamb's inside face to the jamb face of the next opening on
            the right. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
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
        width: The door's own width, measured from edge to edge. A length as a tape reads it, with its unit:
            feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`,
            when the request has one.
        height: The door's own height, measured from its bottom to its top. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        bottom_hinge: The distance from the door's bottom up to the bottom of its lowest hinge. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        floor_gap: The gap under the door, measured from the finished floor to the door's bottom. A length as
            a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit
            it is in the request's `unit`, when the request has one.
        head_gap: The gap over the door, measured from its top to the underside of the head jamb. A length as
            a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit
            it is in the request's `unit`, when the request has one.
        hinge_gap: The gap at the hinges, measured from the door's edge to the jamb. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        hinge_length: The length of each hinge, measured from top to bottom. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        hinge_side: The side that the hinges are on, as seen from the room the trim is in.
        hinges: The number of hinges.
        housing: The head jamb is let this deep into each side jamb, measured from the side jamb's face. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        jamb_depth: The width of the jamb stock, measured across the wall from edge to edge; of a window's
            readings `jamb_depth` is another measure, to the sash stop. A length as a tape reads it, with its
            unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        jamb_thickness: The thickness of the jamb stock, measured from face to face. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        profile: The jamb stock's name at the yard. A name on one line, not starting with a space.
        rough_height: The height of the rough opening, measured from the finished floor to the underside of
            the header. Give it to have it checked. A length as a tape reads it, with its unit: feet, inches
            and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the
            request has one.
        rough_width: The width of the rough opening, measured from stud to stud. Give it to have it checked. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        strike_gap: The gap at the strike, measured from the door's latch edge to the jamb. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        strike_height: The height of the strike, measured from the finished floor to the strike's middle. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        thickness: The door's own thickness, measured from face to face. A length as a tape reads it, with its
            unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        top_hinge: The distance from the door's top down to the top of its top hinge. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
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
        proud: The wall stands this far past the jamb's edge, measured square to the wall. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        shy: The jamb's edge stands this far past the wall, measured square to the wall. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
    """

    proud: LengthText | None = None
    shy: LengthText | None = None


class SillLevel(Request, frozen=True, kw_only=True):
    """How a sill, or the floor that trim stands on, lies to a level line from jamb to jamb.

    Attributes:
        low: The end that lies low; either one where it is level.
        by: The end that `low` names lies this much lower than the other, measured straight down from a level
            line; 0 where it is level. A length as a tape reads it, with its unit: feet, inches and fractions,
            decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one.
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
        bottom_left_angle: The inside angle of the bottom left corner. Degrees, inside the opening.
        bottom_right_angle: The inside angle of the bottom right corner. Degrees, inside the opening.
        clearances: They say what is in the way, and how far off it is.
        departure: A limit to choose, not a reading: how far the middle of a straight head piece may lie
            inside the jamb's true curve, measured square to the piece. There are as many pieces as that
            takes. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        diagonal_from_bottom_left: The diagonal, measured from the bottom left inside corner to the top right
            one. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        diagonal_from_bottom_right: The diagonal, measured from the bottom right inside corner to the top left
            one. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        door: The door that is to be hung here.
        head_pieces: The number of straight pieces that a curved head is made of.
        head_width: The clear width at the top, measured from the left jamb's inside face to the right jamb's.
            A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        jamb_depth: The depth, measured from the wall's face back to the sash stop, where the stool's back
            edge lands. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        jamb_height: The height, measured from the stool's top, the sill jamb or the floor up to the underside
            of the head jamb, or to the springing of a curve. Left out where the curve stands on the base. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        jamb_thickness: The thickness of the jamb, measured across its edge, on which reveal and casing must
            find room. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        jamb_width: The clear width, measured at the bottom from the left jamb's inside face to the right
            jamb's. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm
            or m. Without a unit it is in the request's `unit`, when the request has one.
        joined_widths: The widths of the joined units, left to right, each measured from one jamb's inside
            face to the other's.
        left_depth: The depth at the left jamb, measured as `jamb_depth` is. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        left_horn_depth: The depth at the left horn's end, measured as `jamb_depth` is. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        left_jamb_height: The height along the left jamb, measured as `jamb_height` is. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        mull_widths: The widths of the mulls between the units, left to right, each measured from one unit's
            inside jamb face to the next one's, so that both jambs' thicknesses count.
        right_depth: The depth at the right jamb, measured as `jamb_depth` is. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        right_horn_depth: The depth at the right horn's end, measured as `jamb_depth` is. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        right_jamb_height: The height along the right jamb, measured as `jamb_height` is. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        rise: The rise of a curved head, measured from the springing line up to the top of the curve. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        sides: The lengths of all sides, counterclockwise from the base as seen from the room, each measured
            from inside corner to inside corner.
        sill: It says how the sill is out of level, or under a door the floor: with two heights that settles
            whether head or floor is out of level. Left out where no level was held to it, or a stool's sill
            is level.
        top_left_angle: The inside angle of the top left corner. Degrees, inside the opening.
        top_right_angle: The inside angle of the top right corner. Degrees, inside the opening.
        wall: It says how the wall lies to the jamb's edge at every corner, in the order of `angles`.
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
