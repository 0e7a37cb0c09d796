"""The trim that can be chosen for an opening: stock, styles and the lengths that go with them. Inches, exact."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Length, PositiveLength
from longpoint.values import Given, Name

NOUGHT = Length.of("0 in")
CutAngle = Annotated[float, Meta(gt=0, le=60, description="Degrees off a square cut.")]


class HeadStyle(StrEnum):
    """How casing meets at the head: mitered, head over the legs, or both against a block."""

    MITERED = "mitered"
    BUTTED = "butted"
    CORNER_BLOCKS = "corner_blocks"


class StoolEnds(StrEnum):
    """A horn's end: cut square, square with its edges eased, or its nosing returned to the wall."""

    SQUARE = "square"
    EASED = "eased"
    MITERED_RETURN = "mitered_return"


class ApronEnds(StrEnum):
    """An apron's end: returned to the wall, cut square, or cut back at an angle below the stool."""

    MITERED_RETURN = "mitered_return"
    SQUARE = "square"
    ANGLED = "angled"


class StripEnds(StrEnum):
    """The ends of a fillet or a cap over a butted head."""

    SQUARE = "square"
    MITERED_RETURN = "mitered_return"


class BoxCorners(StrEnum):
    """How the boards of a jamb extension meet: head over the legs, or mitered."""

    BUTTED = "butted"
    MITERED = "mitered"


class Casing(Given, frozen=True):
    """Casing stock.

    Attributes:
        width: Across the face.
        thickness: At the thick (outer) edge.
        profile: Its name at the yard.
    """

    width: PositiveLength
    thickness: PositiveLength
    profile: Name = "casing"


class BackBand(Given, frozen=True):
    """A band round mitered casing.

    Attributes:
        width: Across its face.
        thickness: Off the wall.
        lap: How far it lies over the casing's face.
        profile: Its name at the yard.
    """

    width: PositiveLength
    thickness: PositiveLength
    lap: Length = NOUGHT
    profile: Name = "back band"


class CornerBlock(Given, frozen=True):
    """A square block at each corner, at least as wide as the casing it ends.

    Attributes:
        width: Of each face.
        thickness: Off the wall.
        profile: Its name at the yard.
    """

    width: PositiveLength
    thickness: PositiveLength
    profile: Name = "corner block"


class HeadStrip(Given, frozen=True):
    """A fillet under a butted head, or a cap over it.

    Attributes:
        profile: Its name at the yard.
        height: As seen from the room.
        depth: Off the wall.
        overhang: How far it runs past the legs' outside edges.
        ends: Square, or returned to the wall.
    """

    profile: Name
    height: PositiveLength
    depth: PositiveLength
    overhang: Length = NOUGHT
    ends: StripEnds = StripEnds.SQUARE


class Stool(Given, frozen=True):
    """The stool: the inside sill that the side casing stands on.

    Attributes:
        thickness: Of the stock.
        horn: How far it runs past the trim's outside edge, each end.
        nosing: How far it stands past the apron's face.
        sash_clearance: Left open between its back edge and the sash.
        stock_width: Width of the stock before ripping, where it is known.
        ends: How the horns end.
        ease: Radius of eased ends.
        scribe: Left on each horn's wall edge, to be scribed to the wall.
        profile: Its name at the yard.
    """

    thickness: PositiveLength
    horn: Length
    nosing: Length
    sash_clearance: Length = NOUGHT
    stock_width: Length | None = None
    ends: StoolEnds = StoolEnds.SQUARE
    ease: Length = Length.of("1/8 in")
    scribe: Length = NOUGHT
    profile: Name = "stool"


class Apron(Given, frozen=True):
    """The apron under a stool.

    Attributes:
        width: Down the wall.
        thickness: Off the wall.
        ends: Mitered returns, square cuts, or cut back at an angle.
        end_angle: Of angled ends, cut back below the stool.
        profile: Its name at the yard.
    """

    width: PositiveLength
    thickness: PositiveLength
    ends: ApronEnds = ApronEnds.MITERED_RETURN
    end_angle: CutAngle = 15.0
    profile: Name = "apron"


class Plinth(Given, frozen=True):
    """Plinth blocks under a door's legs.

    Attributes:
        width: Across the face.
        height: From the floor up.
        thickness: Off the wall.
        profile: Its name at the yard.
    """

    width: PositiveLength
    height: PositiveLength
    thickness: PositiveLength
    profile: Name = "plinth"


class JambExtension(Given, frozen=True):
    """Boards on the jamb's edge that bring it out to the wall.

    Attributes:
        thickness: Of the board.
        reveal: Jamb left showing inside the extension.
        corners: How the boards meet.
        profile: Its name at the yard.
    """

    thickness: PositiveLength
    reveal: Length = NOUGHT
    corners: BoxCorners = BoxCorners.BUTTED
    profile: Name = "jamb extension"


class DoorStop(Given, frozen=True):
    """The stop a door closes against.

    Attributes:
        width: Across its face.
        thickness: Off the jamb.
        corners: How its pieces meet.
        profile: Its name at the yard.
    """

    width: PositiveLength
    thickness: PositiveLength
    corners: BoxCorners = BoxCorners.BUTTED
    profile: Name = "door stop"


class Trim(Given, frozen=True):
    """The trim chosen for one opening or for many.

    Attributes:
        casing: Legs, and head and sill unless these have their own; null leaves the opening uncased, the wall returning
            to the jamb.
        reveal: Jamb left showing, on every side unless the opening says otherwise.
        head_style: Mitered, butted or with corner blocks.
        head_casing: The head's own, where it is not that of the legs.
        bottom_casing: A picture frame's sill's own, where it is not that of the legs.
        overhang: How far a butted head runs past the legs' outside edges.
        stool: Null for none.
        apron: Null for none.
        plinth: Blocks under a door's legs.
        floor_clearance: Left under a door's legs.
        back_band: Round mitered casing.
        corner_block: For a head style of corner blocks.
        fillet: Under a butted head.
        cap: Over a butted head.
        extension: Boards that bring the jamb out to the wall.
        mull_casing: Over the joints between units.
        stop: A door's stop, for a door to be hung.
    """

    casing: Casing | None
    reveal: Length
    head_style: HeadStyle = HeadStyle.MITERED
    head_casing: Casing | None = None
    bottom_casing: Casing | None = None
    overhang: Length = NOUGHT
    stool: Stool | None = None
    apron: Apron | None = None
    plinth: Plinth | None = None
    floor_clearance: Length = NOUGHT
    back_band: BackBand | None = None
    corner_block: CornerBlock | None = None
    fillet: HeadStrip | None = None
    cap: HeadStrip | None = None
    extension: JambExtension | None = None
    mull_casing: Casing | None = None
    stop: DoorStop | None = None
