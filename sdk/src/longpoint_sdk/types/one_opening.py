"""Types of the document's part "one_opening". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import (
    Bottom,
    Confirmed,
    Horns,
    Limits,
    Reveals,
    Rounding,
    SillAnswer,
    WallAnswer,
    Widths,
)
from longpoint_sdk.types.movement import Air, Conditions, Grain, Scale, Species
from longpoint_sdk.types.pieces import Piece
from longpoint_sdk.types.readings import Readings
from longpoint_sdk.types.trim import ApronEnds, HeadStyle, StoolEnds, Trim


class ApronRequest(Request, frozen=True, kw_only=True):
    """An apron's readings and choices: it ends flush with the casing's outside edges.

    Attributes:
        thickness: The thickness of the apron, measured from the wall out to its face. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        jamb_width: The clear width, measured from the left jamb's inside face to the right jamb's. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's
            inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        casing_width: The width of the side casing, measured across its face from inner to outer edge. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        end_angle: How far angled ends slant back below the stool from a square cut. Degrees off a square cut.
        ends: It says how the ends are made: mitered returns, square cuts, or cut back at an angle.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
        rounding: It says how lengths of the answer are rounded.
        unit: The unit of lengths that are written without one; without it each must carry its own.
        width: The width of the apron, measured down the wall from its upper to its lower edge. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
    """

    thickness: LengthText
    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    end_angle: float = 15.0
    ends: ApronEnds = "mitered_return"
    profile: str = "apron"
    rounding: Rounding = Rounding()
    unit: Unit | None = None
    width: LengthText = "2 1/2 in"


class CasingRequest(Request, frozen=True, kw_only=True):
    """Casing's readings and choices, for plumb sides. Give `jamb_height`, or `left_jamb_height` and
    `right_jamb_height`.

    Attributes:
        jamb_width: The clear width, measured from the left jamb's inside face to the right jamb's. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's
            inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        casing_width: The width of the casing, measured across its face from inner to outer edge. A length as
            a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit
            it is in the request's `unit`, when the request has one.
        bottom: It says what the casing stands on.
        casing_thickness: The casing's thickness, measured from the wall to its face at the thick (outer)
            edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        floor_clearance: The gap under a door's side casings, measured from the floor up to their ends. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        head_style: It says how the head casing meets the side casings: mitered, or butted on top of them.
        jamb_height: The height, measured from the stool's top, the sill jamb or the floor up to the underside
            of the head jamb. A length as a tape reads it, with its unit: feet, inches and fractions,
            decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one.
        left_jamb_height: The height along the left jamb, measured as `jamb_height` is. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        overhang: A butted head runs this far past the outside edge of each side casing. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        plinth_height: The height of plinth blocks under a door's side casings, measured from the floor up. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        profile: The casing's name at the yard. A name on one line, not starting with a space.
        right_jamb_height: The height along the right jamb, measured as `jamb_height` is. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        rounding: It says how lengths of the answer are rounded.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    bottom: Bottom = "stool"
    casing_thickness: LengthText = "5/8 in"
    floor_clearance: LengthText = "0 in"
    head_style: HeadStyle = "mitered"
    jamb_height: LengthText | None = None
    left_jamb_height: LengthText | None = None
    overhang: LengthText = "0 in"
    plinth_height: LengthText | None = None
    profile: str = "casing"
    right_jamb_height: LengthText | None = None
    rounding: Rounding = Rounding()
    unit: Unit | None = None


class Check(Result, frozen=True, kw_only=True):
    """A reading that the shape did not need, against what the others make of it.

    Attributes:
        reading: The field of `readings` that was checked.
        measured: The value as the tape read it.
        computed: The value that the other readings give.
        difference: The measured value less the computed one.
        agrees: Whether the difference is no more than a tape's, or an angle finder's, own error.
    """

    reading: str
    measured: str
    computed: str
    difference: str
    agrees: bool


class CompoundCut(Result, frozen=True, kw_only=True):
    """The saw's setting for a compound cut: the table is turned and the blade is tilted at once.

    Attributes:
        miter_degrees: The saw's table off a square cut.
        bevel_degrees: The saw is tilted this far from upright.
    """

    miter_degrees: float
    bevel_degrees: float


class Point(Result, frozen=True, kw_only=True):
    """A place on the wall, measured from the left inside corner of the opening's base.

    Attributes:
        x: The distance from the base's left inside corner along the base.
        y: The distance from the base, square to it.
    """

    x: str
    y: str


class CornerReading(Result, frozen=True, kw_only=True):
    """One inside corner of the jamb.

    Attributes:
        sides: The two sides that meet there, counterclockwise.
        degrees: The inside angle of the corner.
        off_square_degrees: How far that is from 90; positive where it is wider.
        gap_if_square: The joint gap that cutting for a square corner would leave; null where the corner is
            far from square.
        at: The place of the corner on the wall.
        compound: The saw's setting for casing that leans off the wall, which needs a compound cut; null
            unless `spring_degrees` was given.
    """

    sides: tuple[str, str]
    degrees: float
    off_square_degrees: float
    gap_if_square: str | None
    at: Point
    compound: CompoundCut | None


class Suspect(Result, frozen=True, kw_only=True):
    """A reading that alone could explain the disagreement.

    Attributes:
        reading: The field of `readings` that is suspected.
        measured: The value as the tape read it.
        would_be: The value that it should read if every other reading is right.
        change: The difference: what it should read, less what was measured.
        why: It says what speaks for this reading being wrong.
    """

    reading: str
    measured: str
    would_be: str
    change: str
    why: str


class Corners(Result, frozen=True, kw_only=True):
    """Every corner, and the casing cut to them. `suspects` are named where readings disagree, the likeliest
    wrong one first: one reading too many shows that something is wrong, not for certain which.

    Attributes:
        corners: Each corner, the base's right-hand one first.
        pieces: The casing by these corners, with the saw's reading at each end.
        square: Whether no joint would open by more than the square gap were all corners taken as square.
        computed_by: The diagonal or angle that decided the shape; null for other shapes.
        checks: Readings that the shape did not need, against it.
        suspects: Readings that alone could explain a disagreement.
    """

    corners: list[CornerReading]
    pieces: list[Piece]
    square: bool
    computed_by: str | None
    checks: list[Check]
    suspects: list[Suspect]


class CornersRequest(Request, frozen=True, kw_only=True):
    """Readings of an opening that may be out of square, and the casing that is to go round it.

    Attributes:
        readings: The readings that the tape gave.
        casing_width: The width of the casing, measured across its face from inner to outer edge. A length as
            a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit
            it is in the request's `unit`, when the request has one.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's
            inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        bottom: It says what the casing stands on.
        casing_thickness: The casing's thickness, measured from the wall to its face at the thick (outer)
            edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        head_casing_width: The head casing's own width, measured as `casing_width` is, where the two differ:
            the stock is flat then, since two widths of molded casing do not meet at a miter. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        profile: The casing's name at the yard. A name on one line, not starting with a space.
        rounding: It says how lengths of the answer are rounded.
        spring_degrees: The angle between a leaning casing's back and a line that stands square out of the
            wall: at 90 the back lies flat on the wall, and there is no bevel.
        square_gap: The widest gap, measured at the open end of a miter, that cuts for square corners may
            leave: up to it an opening is treated as square. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    readings: Readings
    casing_width: LengthText
    reveal: LengthText
    bottom: Bottom = "stool"
    casing_thickness: LengthText = "5/8 in"
    head_casing_width: LengthText | None = None
    profile: str = "casing"
    rounding: Rounding = Rounding()
    spring_degrees: float | None = None
    square_gap: LengthText = "1/64 in"
    unit: Unit | None = None


class Moved(Result, frozen=True, kw_only=True):
    """A mitered piece in one set of conditions, against how it was when the joint was made.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: The moisture content that the wood comes to in them, in percent.
        change: The change of the piece's width; negative where it shrank.
        opens_degrees: The angle by which the miter stands open.
        gap: The width of the gap that opens, measured at its open end.
        opens_at: "short point" when the wood dried, "long point" when it took up moisture, empty when
            neither.
        within_table: Whether both moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: float
    change: str
    opens_degrees: float
    gap: str
    opens_at: str
    within_table: bool


class Movement(Result, frozen=True, kw_only=True):
    """It says how a mitered piece moves. Coefficients are averages of clear wood: a board may move half as much
    again.

    Attributes:
        installed_moisture_content: The wood's moisture content when the joint was made, in percent.
        coefficient: The change per unit of width and per percent of moisture content.
        seasons: The piece in each set of conditions.
        widest_gap: The widest gap that the joint opens to in any season.
        source: The source of the formulas and coefficients.
        notes: They say what else there is to know.
    """

    installed_moisture_content: float
    coefficient: float
    seasons: list[Moved]
    widest_gap: str
    source: str
    notes: list[str]


class MovementRequest(Request, frozen=True, kw_only=True):
    """A mitered piece, the conditions its joint was made in, and those it will live through.

    Attributes:
        species: The species of the wood.
        installed: The conditions in which the joint is made.
        seasons: Each set of conditions it will live through.
        width: The width of the piece, measured from edge to edge across its face. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        grain: The way the boards were sawn from the log: flat-sawn or quarter-sawn. A flat-sawn board shrinks
            and swells more across its width.
        miter_degrees: The miter of the piece, measured off a square cut.
        scale: The scale of the thermometer: Celsius or Fahrenheit.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    species: Species
    installed: Air
    seasons: list[Air]
    width: LengthText
    grain: Grain = "flat_sawn"
    miter_degrees: float = 45.0
    scale: Scale = "fahrenheit"
    unit: Unit | None = None


class OpeningRequest(Request, frozen=True, kw_only=True):
    """One opening with its trim; answered with all of its pieces.

    Attributes:
        mark: What it is called in the house; part of each piece's name. A name on one line, not starting with
            a space.
        readings: The readings that the tape gave at this opening.
        trim: The trim that is put round the opening.
        bottom: It says what the casing stands on.
        confirmed: The readings that were doubted and stand as they are.
        horns: The horns of this opening, where they are not the trim's.
        movement: The wood, and the air its joints will live through: the answer then says how far its miters
            open.
        reveals: The reveals of this opening, where they are not the trim's.
        rounding: It says how lengths of the answer are rounded.
        sill_answer: It says what is done under a stool on a sill out of level.
        square_gap: The widest gap, measured at the open end of a miter, that cuts for square corners may
            leave: up to it an opening that is out of square is treated as square. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        tape_spread: How far a reading of the tape is off as a rule, root mean square, measured between what
            was read and what is there; readings that check each other are weighed by it. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        unit: The unit of lengths that are written without one; without it each must carry its own.
        wall_answer: The remedy chosen for a wall out of plane; until one is chosen no size changes for it.
        wall_limits: It says how far the wall may lie off the jamb's edge before the casing is planed or the
            jamb extended.
        widths: The widths that pieces of this opening are ripped to.
        without_apron: True leaves out the apron that the trim has.
    """

    mark: str
    readings: Readings
    trim: Trim
    bottom: Bottom = "stool"
    confirmed: Confirmed = Confirmed()
    horns: Horns = Horns()
    movement: Conditions | None = None
    reveals: Reveals = Reveals()
    rounding: Rounding = Rounding()
    sill_answer: SillAnswer = "shim"
    square_gap: LengthText = "1/64 in"
    tape_spread: LengthText = "1/32 in"
    unit: Unit | None = None
    wall_answer: WallAnswer = "flat"
    wall_limits: Limits = Limits()
    widths: Widths = Widths()
    without_apron: bool = False


class PiecesAnswer(Result, frozen=True, kw_only=True):
    """The pieces asked for, and what was assumed.

    Attributes:
        pieces: The pieces, each with its length, its ends and how they were computed.
        notes: They say what was assumed.
    """

    pieces: list[Piece]
    notes: list[str]


class StoolRequest(Request, frozen=True, kw_only=True):
    """A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ.

    Attributes:
        horn: The length of each horn, measured from the trim's outside edge to the stool's end. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        nosing: The stool stands this far past the apron's face, measured from that face to the stool's front
            edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        jamb_width: The clear width, measured from the left jamb's inside face to the right jamb's. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's
            inner edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        casing_width: The width of the side casing, measured across its face from inner to outer edge. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        apron_thickness: The apron's thickness, measured from the wall to its face; the nosing stands past its
            face. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        ease: The radius that eased ends are rounded to, measured from the center of the round to its edge. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        ends: It says how the ends of the horns are finished.
        jamb_depth: The depth, measured from the wall's face back to the sash stop, where the stool's back
            edge lands. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        left_depth: The depth at the left jamb, measured as `jamb_depth` is. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        profile: The name that the yard sells it under, as the `profile` of a stock has it. A name on one
            line, not starting with a space.
        right_depth: The depth at the right jamb, measured as `jamb_depth` is. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        rounding: It says how lengths of the answer are rounded.
        sash_clearance: The gap left open, measured from the stool's back edge to the sash. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        scribe: The wood left on each horn's wall edge, to be scribed to the wall; it is measured square to
            that edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        stock_width: The width of the stock before ripping, measured from edge to edge, where it is known. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        thickness: The thickness of the stock, measured from its underside to its top. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    horn: LengthText
    nosing: LengthText
    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    apron_thickness: LengthText
    ease: LengthText = "1/8 in"
    ends: StoolEnds = "square"
    jamb_depth: LengthText | None = None
    left_depth: LengthText | None = None
    profile: str = "stool"
    right_depth: LengthText | None = None
    rounding: Rounding = Rounding()
    sash_clearance: LengthText = "0 in"
    scribe: LengthText = "0 in"
    stock_width: LengthText | None = None
    thickness: LengthText = "3/4 in"
    unit: Unit | None = None
