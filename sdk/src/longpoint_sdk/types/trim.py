"""Types of the document's part "trim". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import LengthText, Request

if TYPE_CHECKING:
    ApronEnds = Literal["angled", "mitered_return", "square"]
    """An apron's end: with a return to the wall, cut square, or cut back at an angle below the stool."""
    BoxCorners = Literal["butted", "mitered"]
    """How a top board and side boards meet, of a jamb extension or a door's stop: butted, the top lies on the
    sides; or mitered.
    """
    Face = Literal["flat", "molded"]
    """A casing's face: molded, its profile the same along the whole stick, so that two pieces meet only on the
    bisector of their corner; or flat, so that any two widths meet corner to corner.
    """
    Finish = Literal["paint_grade", "prefinished", "stain_grade"]
    """What trim is finished with, and so what is done to it: paint grade is primed, filled, caulked and painted;
    stain grade is stained and cleared, its nail holes closed with putty and no joint caulked; prefinished
    trim comes as it stays, and only its nail holes are closed.
    """
    HeadStyle = Literal["butted", "corner_blocks", "mitered"]
    """How casing meets at the head: mitered, head over the side casings, or both against a block."""
    StoolEnds = Literal["eased", "mitered_return", "square"]
    """A horn's end: cut square, square with its edges eased, or with a return of its nosing to the wall.
    """
    StripEnds = Literal["mitered_return", "square"]
    """The ends of a fillet or a cap over a butted head."""
else:
    ApronEnds = str
    BoxCorners = str
    Face = str
    Finish = str
    HeadStyle = str
    StoolEnds = str
    StripEnds = str


class Apron(Request, frozen=True, kw_only=True):
    """The apron under a stool.

    Attributes:
        width: The width of the apron, measured down the wall from its upper to its lower edge. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        thickness: The thickness of the apron, measured from the wall out to its face. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        end_angle: How far angled ends slant back below the stool from a square cut. Degrees off a square cut.
        ends: It says how the ends are made: mitered returns, square cuts, or cut back at an angle.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    end_angle: float = 15.0
    ends: ApronEnds = "mitered_return"
    profile: str = "apron"


class BackBand(Request, frozen=True, kw_only=True):
    """A band round mitered casing.

    Attributes:
        width: The width of the band, measured across its face from edge to edge. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        thickness: The thickness of the band, measured from the wall out to its face. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        lap: The band lies this far over the casing's face, measured in from the casing's outer edge. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    lap: LengthText = "0 in"
    profile: str = "back band"


class Casing(Request, frozen=True, kw_only=True):
    """The stick that the casing is cut from.

    Attributes:
        width: The width of the stock, measured across its face from inner to outer edge. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        thickness: The thickness, measured from the back to the face at the thick (outer) edge. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        face: It says whether the face is molded or flat. Where one of two pieces of molded casing is ripped,
            both are mitered at the stock's full width first.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    face: Face = "molded"
    profile: str = "casing"


class CornerBlock(Request, frozen=True, kw_only=True):
    """A square block at each corner, at least as wide as the casing it ends.

    Attributes:
        width: The width of each face of the block, measured from edge to edge. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        thickness: The thickness of the block, measured from the wall out to its face. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    profile: str = "corner block"


class DoorStop(Request, frozen=True, kw_only=True):
    """The strip on a door's jamb that the closed door rests against.

    Attributes:
        width: The width of the stop, measured across its face from edge to edge. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        thickness: The thickness of the stop, measured from the jamb out to its face. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        corners: It says how the pieces of the door stop meet at a corner.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
    """

    width: LengthText
    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "door stop"


class HeadStrip(Request, frozen=True, kw_only=True):
    """A fillet under a butted head, or a cap over it.

    Attributes:
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
        height: The height of the strip as seen from the room, measured from its bottom to its top. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        depth: The depth of the strip, measured from the wall out to its face. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        ends: It says how the ends are finished: square, or with a mitered return to the wall.
        overhang: The strip runs this far past the outside edge of each side casing. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
    """

    profile: str
    height: LengthText
    depth: LengthText
    ends: StripEnds = "square"
    overhang: LengthText = "0 in"


class JambExtension(Request, frozen=True, kw_only=True):
    """Boards on the jamb's edge that bring it out to the wall.

    Attributes:
        thickness: The thickness of the board, measured from face to face. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        corners: It says how the boards meet at a corner.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the extension's
            inside face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
    """

    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "jamb extension"
    reveal: LengthText = "0 in"


class Plinth(Request, frozen=True, kw_only=True):
    """Plinth blocks under a door's side casings.

    Attributes:
        width: The width of each plinth block, measured across its face from edge to edge. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        height: The height of each plinth block, measured from the floor up. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        thickness: The thickness of each plinth block, measured from the wall out to its face. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
    """

    width: LengthText
    height: LengthText
    thickness: LengthText
    profile: str = "plinth"


class Stool(Request, frozen=True, kw_only=True):
    """The stool: the shelf at the bottom of a window, in the room; the side casing stands on it.

    Attributes:
        thickness: The thickness of the stock, measured from its underside to its top. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        horn: The length of each horn, measured from the trim's outside edge to the stool's end. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        nosing: The stool stands this far past the apron's face, measured from that face to the stool's front
            edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        ease: The radius that eased ends are rounded to, measured from the center of the round to its edge. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        ends: It says how the ends of the horns are finished.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
        sash_clearance: The gap left open, measured from the stool's back edge to the sash. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        scribe: The wood left on each horn's wall edge, to be scribed to the wall; it is measured square to
            that edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        stock_width: The width of the stock before ripping, measured from edge to edge, where it is known. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
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
        casing: The side casing, and the head and bottom casing unless these have their own; null leaves the
            opening uncased, the wall returning to the jamb.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's
            inner edge, on every side unless the opening says otherwise. A length as a tape reads it, with its
            unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        apron: The apron; null where there is none.
        back_band: The back band round mitered casing.
        bottom_casing: The bottom casing's stock, where it is not the side casing's.
        cap: The cap over a butted head.
        corner_block: The corner blocks, for a head style that has them.
        extension: The boards that bring the jamb out to the wall.
        fillet: The fillet under a butted head.
        finish: What the trim is finished with; materials and hours follow from it.
        floor_clearance: The gap under a door's side casings, measured from the floor up to their ends. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        head_casing: The head casing's stock, where it is not the side casing's.
        head_style: It says how the head casing meets the side casings: mitered, butted or with corner blocks.
        mull_casing: The casing that covers the joints between units.
        overhang: A butted head runs this far past the outside edge of each side casing. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        plinth: The plinth blocks under a door's side casings.
        species: The wood that the trim is of, as the yard names it; it is printed with the finish. A name on
            one line, not starting with a space.
        stool: The stool; null where there is none.
        stop: The strip on a door's jamb that the closed door rests against, for a door to be hung.
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
    finish: Finish = "paint_grade"
    floor_clearance: LengthText = "0 in"
    head_casing: Casing | None = None
    head_style: HeadStyle = "mitered"
    mull_casing: Casing | None = None
    overhang: LengthText = "0 in"
    plinth: Plinth | None = None
    species: str | None = None
    stool: Stool | None = None
    stop: DoorStop | None = None
