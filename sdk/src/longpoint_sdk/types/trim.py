"""Types of the document's part "trim". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import LengthText, Request

if TYPE_CHECKING:
    ApronEnds = Literal["angled", "mitered_return", "square"]
    """An apron's end: returned to the wall, cut square, or cut back at an angle below the stool."""
    BoxCorners = Literal["butted", "mitered"]
    """How the boards of a jamb extension meet: head over the legs, or mitered."""
    HeadStyle = Literal["butted", "corner_blocks", "mitered"]
    """How casing meets at the head: mitered, head over the legs, or both against a block."""
    StoolEnds = Literal["eased", "mitered_return", "square"]
    """A horn's end: cut square, square with its edges eased, or its nosing returned to the wall."""
    StripEnds = Literal["mitered_return", "square"]
    """The ends of a fillet or a cap over a butted head."""
else:
    ApronEnds = str
    BoxCorners = str
    HeadStyle = str
    StoolEnds = str
    StripEnds = str


class Apron(Request, frozen=True, kw_only=True):
    """The apron under a stool.

    Attributes:
        width: Down the wall.
        thickness: Off the wall.
        end_angle: Of angled ends, cut back below the stool. Degrees off a square cut.
        ends: Mitered returns, square cuts, or cut back at an angle.
        profile: Its name at the yard. A name on one line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    end_angle: float = 15.0
    ends: ApronEnds = "mitered_return"
    profile: str = "apron"


class BackBand(Request, frozen=True, kw_only=True):
    """A band round mitered casing.

    Attributes:
        width: Across its face.
        thickness: Off the wall.
        lap: How far it lies over the casing's face.
        profile: Its name at the yard. A name on one line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    lap: LengthText = "0 in"
    profile: str = "back band"


class Casing(Request, frozen=True, kw_only=True):
    """Casing stock.

    Attributes:
        width: Across the face.
        thickness: At the thick (outer) edge.
        profile: Its name at the yard. A name on one line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    profile: str = "casing"


class CornerBlock(Request, frozen=True, kw_only=True):
    """A square block at each corner, at least as wide as the casing it ends.

    Attributes:
        width: Of each face.
        thickness: Off the wall.
        profile: Its name at the yard. A name on one line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    profile: str = "corner block"


class DoorStop(Request, frozen=True, kw_only=True):
    """The stop a door closes against.

    Attributes:
        width: Across its face.
        thickness: Off the jamb.
        corners: How its pieces meet.
        profile: Its name at the yard. A name on one line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "door stop"


class HeadStrip(Request, frozen=True, kw_only=True):
    """A fillet under a butted head, or a cap over it.

    Attributes:
        profile: Its name at the yard. A name on one line, not starting with a space.
        height: As seen from the room.
        depth: Off the wall.
        ends: Square, or returned to the wall.
        overhang: How far it runs past the legs' outside edges.
    """

    profile: str
    height: LengthText
    depth: LengthText
    ends: StripEnds = "square"
    overhang: LengthText = "0 in"


class JambExtension(Request, frozen=True, kw_only=True):
    """Boards on the jamb's edge that bring it out to the wall.

    Attributes:
        thickness: Of the board.
        corners: How the boards meet.
        profile: Its name at the yard. A name on one line, not starting with a space.
        reveal: Jamb left showing inside the extension.
    """

    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "jamb extension"
    reveal: LengthText = "0 in"


class Plinth(Request, frozen=True, kw_only=True):
    """Plinth blocks under a door's legs.

    Attributes:
        width: Across the face.
        height: From the floor up.
        thickness: Off the wall.
        profile: Its name at the yard. A name on one line, not starting with a space.
    """

    width: LengthText
    height: LengthText
    thickness: LengthText
    profile: str = "plinth"


class Stool(Request, frozen=True, kw_only=True):
    """The stool: the inside sill that the side casing stands on.

    Attributes:
        thickness: Of the stock.
        horn: How far it runs past the trim's outside edge, each end.
        nosing: How far it stands past the apron's face.
        ease: Radius of eased ends.
        ends: How the horns end.
        profile: Its name at the yard. A name on one line, not starting with a space.
        sash_clearance: Left open between its back edge and the sash.
        scribe: Left on each horn's wall edge, to be scribed to the wall.
        stock_width: Width of the stock before ripping, where it is known.
    """

    thickness: LengthText
    horn: LengthText
    nosing: LengthText
    ease: LengthText = "1/8 in"
    ends: StoolEnds = "square"
    profile: str = "stool"
    sash_clearance: LengthText = "0 in"
    scribe: LengthText = "0 in"
    stock_width: LengthText | None = None


class Trim(Request, frozen=True, kw_only=True):
    """The trim chosen for one opening or for many.

    Attributes:
        casing: Legs, and head and sill unless these have their own; null leaves the opening uncased, the wall
            returning to the jamb.
        reveal: Jamb left showing, on every side unless the opening says otherwise.
        apron: Null for none.
        back_band: Round mitered casing.
        bottom_casing: A picture frame's sill's own, where it is not that of the legs.
        cap: Over a butted head.
        corner_block: For a head style of corner blocks.
        extension: Boards that bring the jamb out to the wall.
        fillet: Under a butted head.
        floor_clearance: Left under a door's legs.
        head_casing: The head's own, where it is not that of the legs.
        head_style: Mitered, butted or with corner blocks.
        mull_casing: Over the joints between units.
        overhang: How far a butted head runs past the legs' outside edges.
        plinth: Blocks under a door's legs.
        stool: Null for none.
        stop: A door's stop, for a door to be hung.
    """

    casing: Casing | None
    reveal: LengthText
    apron: Apron | None = None
    back_band: BackBand | None = None
    bottom_casing: Casing | None = None
    cap: HeadStrip | None = None
    corner_block: CornerBlock | None = None
    extension: JambExtension | None = None
    fillet: HeadStrip | None = None
    floor_clearance: LengthText = "0 in"
    head_casing: Casing | None = None
    head_style: HeadStyle = "mitered"
    mull_casing: Casing | None = None
    overhang: LengthText = "0 in"
    plinth: Plinth | None = None
    stool: Stool | None = None
    stop: DoorStop | None = None
