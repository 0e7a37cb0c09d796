"""Types of the document's part "readings". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request
from longpoint_sdk.types.basics import Hand


class ClearancesIn(Request, frozen=True, kw_only=True):
    """What is in the way. `left` and `right` are from the jamb's inside face, `above` from the head jamb's
    underside, `below` from the stool's top or the base; a neighbour's distance is from jamb face to jamb
    face.
    """

    above: LengthText | None = None
    below: LengthText | None = None
    left: LengthText | None = None
    left_neighbour: LengthText | None = None
    right: LengthText | None = None
    right_neighbour: LengthText | None = None


class DoorIn(Request, frozen=True, kw_only=True):
    """A door to be hung in a jamb made for it: `width`, `height` and `thickness` are the door's own.

    Gaps are left between door and jamb and under the door. `housing` is how deep the head jamb is let into
    the legs. The rough opening is told where it is to be checked. Hinges are measured from the door's top and
    bottom to the hinge's near end, the strike from the floor to its middle; the defaults are common practice.
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


class OffPlaneIn(Request, frozen=True, kw_only=True):
    """How the wall lies to the jamb's edge at one corner: `proud` of it or `shy` of it; neither where it is
    flush.
    """

    proud: LengthText | None = None
    shy: LengthText | None = None


class SillIn(Request, frozen=True, kw_only=True):
    """A sill out of level: the end that lies low, and by how much over the jamb's width."""

    low: Hand
    by: LengthText


class ReadingsIn(Request, frozen=True, kw_only=True):
    """What the tape read, from the jamb's inside faces.

    A plumb-sided opening has `jamb_width` and `leg_height` (stool top, sill jamb or floor to the underside of
    the head jamb); where the two sides differ, `left_height` and `right_height` instead: a raked head. One
    out of square has a `head_width` too, and at least one diagonal, inside corner to inside corner, or one
    corner's angle; further ones check the tape. A curved head has its `rise` above the springing
    (`leg_height` is up to the springing, left out where the curve stands on the base) and `head_pieces`, its
    number of straight pieces, or `departure`, how far a piece's middle may lie from the true curve. Any other
    convex shape has `sides`, anticlockwise from the base as seen from the room, and the interior `angles`,
    the base's right-hand corner first (a triangle needs none). Joined units have their `lights`, left to
    right, and the `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's width and
    height by itself.

    A stool needs `jamb_depth`, wall face back to the sash stop, or `left_depth` and `right_depth`; where the
    wall is out of plane, the same depth at each horn's end too. `wall` tells at every corner, in the order of
    `angles`, how the wall lies to the jamb's edge.

    Attributes:
        bottom_left_angle: Degrees, inside the opening.
        bottom_right_angle: Degrees, inside the opening.
        top_left_angle: Degrees, inside the opening.
        top_right_angle: Degrees, inside the opening.
    """

    angles: list[float] | None = None
    bottom_left_angle: float | None = None
    bottom_right_angle: float | None = None
    clearances: ClearancesIn = ClearancesIn()
    departure: LengthText | None = None
    diagonal_from_bottom_left: LengthText | None = None
    diagonal_from_bottom_right: LengthText | None = None
    door: DoorIn | None = None
    head_pieces: int | None = None
    head_width: LengthText | None = None
    jamb_depth: LengthText | None = None
    jamb_thickness: LengthText = "3/4 in"
    jamb_width: LengthText | None = None
    left_depth: LengthText | None = None
    left_height: LengthText | None = None
    left_horn_depth: LengthText | None = None
    leg_height: LengthText | None = None
    lights: list[LengthText] | None = None
    mull_widths: list[LengthText] | None = None
    right_depth: LengthText | None = None
    right_height: LengthText | None = None
    right_horn_depth: LengthText | None = None
    rise: LengthText | None = None
    sides: list[LengthText] | None = None
    sill: SillIn | None = None
    top_left_angle: float | None = None
    top_right_angle: float | None = None
    wall: list[OffPlaneIn] | None = None
