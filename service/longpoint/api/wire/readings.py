"""The wire's view of what the tape read at an opening."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.geometry import Hand

SideText = Annotated[list[LengthText], Meta(min_length=3, max_length=24)]
Angle = Annotated[float, Meta(gt=0, lt=360, description="Degrees, inside the opening.")]


class OffPlaneIn(Wire):
    """How the wall lies to the jamb's edge at one corner: `proud` of it or `shy` of it; neither where it is flush."""

    proud: LengthText | None = None
    shy: LengthText | None = None


class ClearancesIn(Wire):
    """What is in the way. `left` and `right` are from the jamb's inside face, `above` from the head jamb's underside,
    `below` from the stool's top or the base; a neighbour's distance is from jamb face to jamb face."""

    left: LengthText | None = None
    right: LengthText | None = None
    above: LengthText | None = None
    below: LengthText | None = None
    left_neighbour: LengthText | None = None
    right_neighbour: LengthText | None = None


class SillIn(Wire):
    """A sill out of level: the end that lies low, and by how much over the jamb's width."""

    low: Hand
    by: LengthText


class DoorIn(Wire):
    """A door to be hung in a jamb made for it: `width`, `height` and `thickness` are the door's own.

    Gaps are left between door and jamb and under the door. `housing` is how deep the head jamb is let into the legs.
    The rough opening is told where it is to be checked. Hinges are measured from the door's top and bottom to the
    hinge's near end, the strike from the floor to its middle; the defaults are common practice.
    """

    width: LengthText
    height: LengthText
    thickness: LengthText = "1 3/8 in"
    hinge_side: Hand = Hand.LEFT
    hinge_gap: LengthText = "1/8 in"
    strike_gap: LengthText = "1/8 in"
    head_gap: LengthText = "1/8 in"
    floor_gap: LengthText = "1/2 in"
    jamb_thickness: LengthText = "3/4 in"
    jamb_depth: LengthText = "4 5/8 in"
    housing: LengthText = "0 in"
    rough_width: LengthText | None = None
    rough_height: LengthText | None = None
    hinges: Annotated[int, Meta(ge=2, le=5)] = 3
    hinge_length: LengthText = "3 1/2 in"
    top_hinge: LengthText = "7 in"
    bottom_hinge: LengthText = "11 in"
    strike_height: LengthText = "36 in"
    profile: Name = "jamb"


class ReadingsIn(Wire):
    """What the tape read, from the jamb's inside faces.

    A plumb-sided opening has `jamb_width` and `leg_height` (stool top, sill jamb or floor to the underside of the
    head jamb); where the two sides differ, `left_height` and `right_height` instead: a raked head. One out of
    square has a `head_width` too, and at least one diagonal, inside corner to inside corner, or one corner's
    angle; further ones check the tape. A curved head has its `rise` above the springing (`leg_height` is up to
    the springing, left out where the curve stands on the base) and `head_pieces`, its number of straight
    pieces, or `departure`, how far a piece's middle may lie from the true curve. Any other convex shape has
    `sides`, anticlockwise from the base as seen from the room, and the interior `angles`, the base's right-hand
    corner first (a triangle needs none). Joined units have their `lights`, left to right, and the
    `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's width and height by itself.

    A stool needs `jamb_depth`, wall face back to the sash stop, or `left_depth` and `right_depth`; where the wall is
    out of plane, the same depth at each horn's end too. `wall` tells at every corner, in the order of `angles`, how
    the wall lies to the jamb's edge.
    """

    jamb_width: LengthText | None = None
    leg_height: LengthText | None = None
    left_height: LengthText | None = None
    right_height: LengthText | None = None
    jamb_depth: LengthText | None = None
    left_depth: LengthText | None = None
    right_depth: LengthText | None = None
    jamb_thickness: LengthText = "3/4 in"
    head_width: LengthText | None = None
    diagonal_from_bottom_left: LengthText | None = None
    diagonal_from_bottom_right: LengthText | None = None
    bottom_left_angle: Angle | None = None
    bottom_right_angle: Angle | None = None
    top_right_angle: Angle | None = None
    top_left_angle: Angle | None = None
    rise: LengthText | None = None
    head_pieces: Annotated[int, Meta(ge=2, le=60)] | None = None
    departure: LengthText | None = None
    sides: SideText | None = None
    angles: Annotated[list[Angle], Meta(max_length=24)] | None = None
    lights: Annotated[list[LengthText], Meta(min_length=2, max_length=12)] | None = None
    mull_widths: Annotated[list[LengthText], Meta(min_length=1, max_length=11)] | None = None
    door: DoorIn | None = None
    left_horn_depth: LengthText | None = None
    right_horn_depth: LengthText | None = None
    wall: Annotated[list[OffPlaneIn], Meta(min_length=3, max_length=64)] | None = None
    clearances: ClearancesIn = ClearancesIn()
    sill: SillIn | None = None
