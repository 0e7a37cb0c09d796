"""The wire's view of an opening: its readings and its trim, as other programs send them."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.api.wire import LengthText, Name, Wire
from longpoint.api.wire_lengths import RoundingIn
from longpoint.geometry import ApronEnds, Foot, HeadStyle
from longpoint.lengths import Unit

SideText = Annotated[list[LengthText], Meta(min_length=3, max_length=24)]
Angle = Annotated[float, Meta(gt=0, lt=360, description="Degrees, inside the opening.")]
Count = Annotated[int, Meta(ge=1, le=500)]


class CasingIn(Wire):
    """Casing stock: its profile's name, its width across the face and its thickness at the thick edge."""

    width: LengthText
    thickness: LengthText
    profile: Name = "casing"


class StoolIn(Wire):
    """A stool: the horn runs past the casing's outside edge, the nosing past the apron's face.

    `sash_clearance` is left open between its back edge and the sash; `stock_width` is the width before ripping.
    """

    thickness: LengthText
    horn: LengthText
    nosing: LengthText
    sash_clearance: LengthText = "0 in"
    stock_width: LengthText | None = None
    profile: Name = "stool"


class ApronIn(Wire):
    """An apron under the stool: its width down the wall, its thickness off the wall, how its ends are cut."""

    width: LengthText
    thickness: LengthText
    ends: ApronEnds = ApronEnds.MITRED_RETURN
    profile: Name = "apron"


class PlinthIn(Wire):
    """Plinth blocks under a door's legs."""

    width: LengthText
    height: LengthText
    thickness: LengthText
    profile: Name = "plinth"


class TrimIn(Wire):
    """The trim chosen for one opening or for many.

    `reveal` is the jamb left showing; `overhang` is how far a butted head runs past the legs' outside edges;
    `floor_clearance` is left under a door's legs. `head_casing` is the legs' casing unless given.
    """

    casing: CasingIn
    reveal: LengthText
    head_style: HeadStyle = HeadStyle.MITRED
    head_casing: CasingIn | None = None
    overhang: LengthText = "0 in"
    stool: StoolIn | None = None
    apron: ApronIn | None = None
    plinth: PlinthIn | None = None
    floor_clearance: LengthText = "0 in"


class ReadingsIn(Wire):
    """What the tape read, from the jamb's inside faces.

    A plumb-sided opening has `jamb_width` and `leg_height` (stool top, sill jamb or floor to the underside of the
    head jamb); where the two sides differ, `left_height` and `right_height` instead: a raked head. One out of
    square has a `head_width` too, and at least one diagonal, inside corner to inside corner, or one corner's
    angle; further ones check the tape. A curved head has its `rise` above the springing (`leg_height` is up to
    the springing, left out where the curve stands on the base) and `head_pieces`, its number of straight
    pieces, or `departure`, how far a piece's middle may lie from the true curve. Any other convex shape has
    `sides`, anticlockwise from the base as seen from the room, and the interior `angles`, the base's right-hand
    corner first (a triangle needs none). A stool needs `jamb_depth`, wall face back to the sash stop, or
    `left_depth` and `right_depth`.
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


class RevealsIn(Wire):
    """A side's own reveal, where it is not the trim's."""

    left: LengthText | None = None
    right: LengthText | None = None
    head: LengthText | None = None
    sill: LengthText | None = None


class OpeningFields(Wire):
    """What every opening says of itself.

    `foot_style` is what the trim stands on. `square_gap` is the joint gap below which an opening that is out of
    square is treated as square.
    """

    mark: Name
    readings: ReadingsIn
    foot_style: Foot = Foot.STOOL
    reveals: RevealsIn = RevealsIn()
    square_gap: LengthText = "1/64 in"


class OpeningIn(OpeningFields, kw_only=True):
    """One opening of a house. `trim` names one of the request's trim specs; `count` is how many are alike."""

    trim: Name
    room: Annotated[str, Meta(max_length=80, pattern=r"^[^\x00]*$")] = ""
    count: Count = 1


class OpeningRequest(OpeningFields, kw_only=True):
    """One opening with its trim; answered with all of its parts."""

    trim: TrimIn
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()
