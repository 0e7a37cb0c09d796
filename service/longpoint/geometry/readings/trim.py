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
    """How casing meets at the head: mitered, head over the side casings, or both against a block."""

    MITERED = "mitered"
    BUTTED = "butted"
    CORNER_BLOCKS = "corner_blocks"


class StoolEnds(StrEnum):
    """A horn's end: cut square, square with its edges eased, or with a return of its nosing to the wall."""

    SQUARE = "square"
    EASED = "eased"
    MITERED_RETURN = "mitered_return"


class ApronEnds(StrEnum):
    """An apron's end: with a return to the wall, cut square, or cut back at an angle below the stool."""

    MITERED_RETURN = "mitered_return"
    SQUARE = "square"
    ANGLED = "angled"


class StripEnds(StrEnum):
    """The ends of a fillet or a cap over a butted head."""

    SQUARE = "square"
    MITERED_RETURN = "mitered_return"


class BoxCorners(StrEnum):
    """How a top board and side boards meet, of a jamb extension or a door's stop: butted, the top lies on the sides; or
    mitered."""

    BUTTED = "butted"
    MITERED = "mitered"


class Face(StrEnum):
    """A casing's face: molded, its profile the same along the whole stick, so that two pieces meet only on the bisector
    of their corner; or flat, so that any two widths meet corner to corner."""

    MOLDED = "molded"
    FLAT = "flat"


class Casing(Given, frozen=True):
    """The stick that the casing is cut from.

    Attributes:
        width: The width of the stock, measured across its face from inner to outer edge.
        thickness: The thickness, measured from the back to the face at the thick (outer) edge.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
        face: It says whether the face is molded or flat. Where one of two pieces of molded casing is ripped, both are
            mitered at the stock's full width first.
    """

    width: PositiveLength
    thickness: PositiveLength
    profile: Name = "casing"
    face: Face = Face.MOLDED


class BackBand(Given, frozen=True):
    """A band round mitered casing.

    Attributes:
        width: The width of the band, measured across its face from edge to edge.
        thickness: The thickness of the band, measured from the wall out to its face.
        lap: The band lies this far over the casing's face, measured in from the casing's outer edge.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
    """

    width: PositiveLength
    thickness: PositiveLength
    lap: Length = NOUGHT
    profile: Name = "back band"


class CornerBlock(Given, frozen=True):
    """A square block at each corner, at least as wide as the casing it ends.

    Attributes:
        width: The width of each face of the block, measured from edge to edge.
        thickness: The thickness of the block, measured from the wall out to its face.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
    """

    width: PositiveLength
    thickness: PositiveLength
    profile: Name = "corner block"


class HeadStrip(Given, frozen=True):
    """A fillet under a butted head, or a cap over it.

    Attributes:
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
        height: The height of the strip as seen from the room, measured from its bottom to its top.
        depth: The depth of the strip, measured from the wall out to its face.
        overhang: The strip runs this far past the outside edge of each side casing.
        ends: It says how the ends are finished: square, or with a mitered return to the wall.
    """

    profile: Name
    height: PositiveLength
    depth: PositiveLength
    overhang: Length = NOUGHT
    ends: StripEnds = StripEnds.SQUARE


class Stool(Given, frozen=True):
    """The stool: the shelf at the bottom of a window, in the room; the side casing stands on it.

    Attributes:
        thickness: The thickness of the stock, measured from its underside to its top.
        horn: The length of each horn, measured from the trim's outside edge to the stool's end.
        nosing: The stool stands this far past the apron's face, measured from that face to the stool's front
            edge.
        sash_clearance: The gap left open, measured from the stool's back edge to the sash.
        stock_width: The width of the stock before ripping, measured from edge to edge, where it is known.
        ends: It says how the ends of the horns are finished.
        ease: The radius that eased ends are rounded to, measured from the center of the round to its edge.
        scribe: The wood left on each horn's wall edge, to be scribed to the wall; it is measured square to that
            edge.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
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
        width: The width of the apron, measured down the wall from its upper to its lower edge.
        thickness: The thickness of the apron, measured from the wall out to its face.
        ends: It says how the ends are made: mitered returns, square cuts, or cut back at an angle.
        end_angle: How far angled ends slant back below the stool from a square cut.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
    """

    width: PositiveLength
    thickness: PositiveLength
    ends: ApronEnds = ApronEnds.MITERED_RETURN
    end_angle: CutAngle = 15.0
    profile: Name = "apron"


class Plinth(Given, frozen=True):
    """Plinth blocks under a door's side casings.

    Attributes:
        width: The width of each plinth block, measured across its face from edge to edge.
        height: The height of each plinth block, measured from the floor up.
        thickness: The thickness of each plinth block, measured from the wall out to its face.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
    """

    width: PositiveLength
    height: PositiveLength
    thickness: PositiveLength
    profile: Name = "plinth"


class JambExtension(Given, frozen=True):
    """Boards on the jamb's edge that bring it out to the wall.

    Attributes:
        thickness: The thickness of the board, measured from face to face.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the extension's inside
            face.
        corners: It says how the boards meet at a corner.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
    """

    thickness: PositiveLength
    reveal: Length = NOUGHT
    corners: BoxCorners = BoxCorners.BUTTED
    profile: Name = "jamb extension"


class DoorStop(Given, frozen=True):
    """The strip on a door's jamb that the closed door rests against.

    Attributes:
        width: The width of the stop, measured across its face from edge to edge.
        thickness: The thickness of the stop, measured from the jamb out to its face.
        corners: It says how the pieces of the door stop meet at a corner.
        profile: The name that the yard sells it under, as the `profile` of a stock has it.
    """

    width: PositiveLength
    thickness: PositiveLength
    corners: BoxCorners = BoxCorners.BUTTED
    profile: Name = "door stop"


class Finish(StrEnum):
    """What trim is finished with, and so what is done to it: paint grade is primed, filled, caulked and painted; stain
    grade is stained and cleared, its nail holes closed with putty and no joint caulked; prefinished trim comes as it
    stays, and only its nail holes are closed."""

    PAINT_GRADE = "paint_grade"
    STAIN_GRADE = "stain_grade"
    PREFINISHED = "prefinished"


class Trim(Given, frozen=True):
    """The trim chosen for one opening or for many.

    Attributes:
        casing: The side casing, and the head and bottom casing unless these have their own; null leaves the
            opening uncased, the wall returning to the jamb.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner
            edge, on every side unless the opening says otherwise.
        head_style: It says how the head casing meets the side casings: mitered, butted or with corner blocks.
        head_casing: The head casing's stock, where it is not the side casing's.
        bottom_casing: The bottom casing's stock, where it is not the side casing's.
        overhang: A butted head runs this far past the outside edge of each side casing.
        stool: The stool; null where there is none.
        apron: The apron; null where there is none.
        plinth: The plinth blocks under a door's side casings.
        floor_clearance: The gap under a door's side casings, measured from the floor up to their ends.
        back_band: The back band round mitered casing.
        corner_block: The corner blocks, for a head style that has them.
        fillet: The fillet under a butted head.
        cap: The cap over a butted head.
        extension: The boards that bring the jamb out to the wall.
        mull_casing: The casing that covers the joints between units.
        stop: The strip on a door's jamb that the closed door rests against, for a door to be hung.
        finish: What the trim is finished with; materials and hours follow from it.
        species: The wood that the trim is of, as the yard names it; it is printed with the finish.
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
    finish: Finish = Finish.PAINT_GRADE
    species: Name | None = None
