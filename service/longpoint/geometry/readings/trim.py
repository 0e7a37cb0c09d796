"""The trim that can be chosen for an opening: stock, styles and the lengths that go with them. Inches, exact."""

from __future__ import annotations

from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real


class HeadStyle(StrEnum):
    """How casing meets at the head: mitred, head over the legs, or both against a block."""

    MITRED = "mitred"
    BUTTED = "butted"
    CORNER_BLOCKS = "corner_blocks"


class StoolEnds(StrEnum):
    """A horn's end: cut square, square with its edges eased, or its nosing returned to the wall."""

    SQUARE = "square"
    EASED = "eased"
    MITRED_RETURN = "mitred_return"


class ApronEnds(StrEnum):
    """An apron's end: returned to the wall, cut square, or cut back at an angle below the stool."""

    MITRED_RETURN = "mitred_return"
    SQUARE = "square"
    ANGLED = "angled"


class StripEnds(StrEnum):
    """The ends of a fillet or a cap over a butted head."""

    SQUARE = "square"
    MITRED_RETURN = "mitred_return"


class BoxCorners(StrEnum):
    """How the boards of a jamb extension meet: head over the legs, or mitred."""

    BUTTED = "butted"
    MITRED = "mitred"


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


class BackBand(Value, frozen=True):
    """A band round mitred casing.

    Attributes:
        profile: its name at the yard.
        width: across its face.
        thickness: off the wall.
        lap: how far it lies over the casing's face.
    """

    profile: str
    width: Fraction
    thickness: Fraction
    lap: Fraction = Fraction(0)


class CornerBlock(Value, frozen=True):
    """A square block at a corner. Attributes: profile, width of each face, thickness."""

    profile: str
    width: Fraction
    thickness: Fraction


class HeadStrip(Value, frozen=True):
    """A fillet under a butted head, or a cap over it.

    Attributes:
        profile: its name at the yard.
        height: as seen from the room.
        depth: off the wall.
        overhang: how far it runs past the legs' outside edges.
        ends: square, or returned to the wall.
    """

    profile: str
    height: Fraction
    depth: Fraction
    overhang: Fraction = Fraction(0)
    ends: StripEnds = StripEnds.SQUARE


class Stool(Value, frozen=True):
    """Attributes:
    profile: the stool stock's name.
    thickness: of the stock.
    horn: how far the stool runs past the trim's outside edge.
    nosing: how far it stands past the apron's face.
    sash_clearance: left open between its back edge and the sash.
    stock_width: width of the stock before ripping; None when not known.
    ends: how the horns end.
    ease: radius of eased ends.
    scribe: left on each horn's wall edge, to be scribed to the wall.
    """

    profile: str
    thickness: Fraction
    horn: Fraction
    nosing: Fraction
    sash_clearance: Fraction = Fraction(0)
    stock_width: Fraction | None = None
    ends: StoolEnds = StoolEnds.SQUARE
    ease: Fraction = Fraction(1, 8)
    scribe: Fraction = Fraction(0)


class Apron(Value, frozen=True):
    """Attributes:
    profile: the apron stock's name.
    width: down the wall.
    thickness: off the wall.
    ends: mitred returns, square cuts, or cut back at an angle.
    end_angle: of angled ends, degrees off a square cut.
    """

    profile: str
    width: Fraction
    thickness: Fraction
    ends: ApronEnds = ApronEnds.MITRED_RETURN
    end_angle: Real = Fraction(15)


class Plinth(Value, frozen=True):
    """A plinth block under a leg. Attributes: profile, width, height, thickness."""

    profile: str
    width: Fraction
    height: Fraction
    thickness: Fraction


class JambExtension(Value, frozen=True):
    """Boards on the jamb's edge that bring it out to the wall.

    Attributes:
        profile: the board's name at the yard.
        thickness: of the board.
        reveal: jamb left showing inside the extension.
        corners: how the boards meet.
    """

    profile: str
    thickness: Fraction
    reveal: Fraction = Fraction(0)
    corners: BoxCorners = BoxCorners.BUTTED


class DoorStop(Value, frozen=True):
    """The stop a door closes against. Attributes: profile, width across its face, thickness off the jamb, corners."""

    profile: str
    width: Fraction
    thickness: Fraction
    corners: BoxCorners = BoxCorners.BUTTED


class Trim(Value, frozen=True):
    """The trim chosen for an opening.

    Attributes:
        casing: legs, and head and sill unless these have their own; None leaves the opening uncased, the wall
            returning to the jamb.
        reveal: jamb left showing, on every side unless the opening says otherwise.
        head_style: mitred, butted or with corner blocks.
        overhang: how far a butted head runs past the legs' outside edges.
        fillet, cap: under and over a butted head.
        mull_casing: between joined units; None where there is none.
    """

    casing: Casing | None
    reveal: Fraction
    head_style: HeadStyle = HeadStyle.MITRED
    head_casing: Casing | None = None
    overhang: Fraction = Fraction(0)
    stool: Stool | None = None
    apron: Apron | None = None
    plinth: Plinth | None = None
    floor_clearance: Fraction = Fraction(0)
    sill_casing: Casing | None = None
    back_band: BackBand | None = None
    corner_block: CornerBlock | None = None
    fillet: HeadStrip | None = None
    cap: HeadStrip | None = None
    extension: JambExtension | None = None
    mull_casing: Casing | None = None
    stop: DoorStop | None = None
