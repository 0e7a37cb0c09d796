"""Types of the document's part "one_opening". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import (
    Bottom,
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
        thickness: Off the wall.
        jamb_width: Jamb to jamb.
        reveal: Jamb left showing beside the casing.
        casing_width: Across the face of the side casing.
        end_angle: Of angled ends, cut back below the stool. Degrees off a square cut.
        ends: Mitered returns, square cuts, or cut back at an angle.
        profile: Its name at the yard. A name on one line, not starting with a space.
        rounding: How lengths of the answer are rounded.
        unit: The unit of lengths that are written without one; without it each must carry its own.
        width: Down the wall.
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
        jamb_width: Jamb to jamb.
        reveal: Jamb left showing beside the casing.
        casing_width: Across the face.
        bottom: What the casing stands on.
        casing_thickness: At the thick (outer) edge.
        floor_clearance: Left under a door's legs.
        head_style: Mitered or butted.
        jamb_height: Stool top, sill jamb or floor to the underside of the head jamb.
        left_jamb_height: The same along the left jamb.
        overhang: How far a butted head runs past the legs' outside edges.
        plinth_height: Of plinth blocks under a door's legs, from the floor up.
        profile: The casing's name at the yard. A name on one line, not starting with a space.
        right_jamb_height: The same along the right jamb.
        rounding: How lengths of the answer are rounded.
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
        reading: Its field.
        measured: As read.
        computed: As the others have it.
        difference: Measured less computed.
        agrees: Whether that is no more than a tape's, or an angle finder's, own error.
    """

    reading: str
    measured: str
    computed: str
    difference: str
    agrees: bool


class CompoundCut(Result, frozen=True, kw_only=True):
    """A compound cut.

    Attributes:
        miter_degrees: The saw's table off a square cut.
        bevel_degrees: The blade's tilt from upright.
    """

    miter_degrees: float
    bevel_degrees: float


class Point(Result, frozen=True, kw_only=True):
    """A place on the wall, from the base's left inside corner.

    Attributes:
        x: Along the base.
        y: Square to it.
    """

    x: str
    y: str


class CornerReading(Result, frozen=True, kw_only=True):
    """One inside corner of the jamb.

    Attributes:
        sides: The two sides that meet there, counterclockwise.
        degrees: The inside angle.
        off_square_degrees: How far that is from 90; positive where it is wider.
        gap_if_square: The joint gap that cutting for a square corner would leave; null where the corner is
            far from square.
        at: Where it lies.
        compound: The saw's setting for casing that leans, where its spring was given.
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
        reading: Its field.
        measured: As read.
        would_be: What it should read if every other reading is right.
        change: What it would be less what was measured.
        why: What speaks for it.
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
        readings: What the tape read.
        casing_width: Across the face.
        reveal: Jamb left showing beside the casing.
        bottom: What the casing stands on.
        casing_thickness: At the thick (outer) edge.
        head_casing_width: The head's own, where it is not that of the legs.
        profile: The casing's name at the yard. A name on one line, not starting with a space.
        rounding: How lengths of the answer are rounded.
        spring_degrees: The angle between a leaning casing's back and the upright of the wall's plane: 90 lies
            flat, and gives no bevel.
        square_gap: The joint gap below which the opening is called square.
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
        moisture_content: What the wood comes to in them, percent.
        change: Of its width; negative where it shrank.
        opens_degrees: The angle by which the miter stands open.
        gap: Width of that opening at its open end.
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
    """How a mitered piece moves. Coefficients are averages of clear wood: one board may move half as much again.

    Attributes:
        installed_moisture_content: When the joint was made, percent.
        coefficient: Change per unit of width and per percent of moisture content.
        seasons: The piece in each set of conditions.
        widest_gap: The widest of all seasons.
        source: Where formulas and coefficients come from.
        notes: What to bear in mind.
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
        species: The wood.
        installed: Where the joint is made.
        seasons: Each set of conditions it will live through.
        width: Of the piece, across its face.
        grain: How the boards were sawn.
        miter_degrees: Its miter, off a square cut.
        scale: The thermometer's.
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
        readings: What the tape read.
        trim: What it is trimmed with.
        bottom: What the trim stands on.
        horns: Its own, where they are not the trim's.
        movement: The wood, and the air its joints will live through: the answer then says how far its miters
            open.
        reveals: Its own, where they are not the trim's.
        rounding: How lengths of the answer are rounded.
        sill_answer: What is done under a stool on a sill out of level.
        square_gap: The joint gap below which an opening that is out of square is treated as square.
        unit: The unit of lengths that are written without one; without it each must carry its own.
        wall_answer: Takes up what was found of a wall out of plane; until one is chosen no size changes for
            it.
        wall_limits: How far the wall may lie off the jamb's edge before the casing is planed or the jamb
            extended.
        widths: Its own, where pieces are ripped.
        without_apron: Leaves the trim's apron out.
    """

    mark: str
    readings: Readings
    trim: Trim
    bottom: Bottom = "stool"
    horns: Horns = Horns()
    movement: Conditions | None = None
    reveals: Reveals = Reveals()
    rounding: Rounding = Rounding()
    sill_answer: SillAnswer = "shim"
    square_gap: LengthText = "1/64 in"
    unit: Unit | None = None
    wall_answer: WallAnswer = "flat"
    wall_limits: Limits = Limits()
    widths: Widths = Widths()
    without_apron: bool = False


class PiecesAnswer(Result, frozen=True, kw_only=True):
    """The pieces asked for, and what was assumed.

    Attributes:
        pieces: Each piece.
        notes: What was assumed.
    """

    pieces: list[Piece]
    notes: list[str]


class StoolRequest(Request, frozen=True, kw_only=True):
    """A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ.

    Attributes:
        horn: How far it runs past the trim's outside edge, each end.
        nosing: How far it stands past the apron's face.
        jamb_width: Jamb to jamb.
        reveal: Jamb left showing beside the casing.
        casing_width: Across the face of the side casing.
        apron_thickness: Off the wall: the nosing stands past its face.
        ease: Radius of eased ends.
        ends: How the horns end.
        jamb_depth: Wall face back to the sash stop where the stool's back edge lands.
        left_depth: The same at the left jamb.
        profile: Its name at the yard. A name on one line, not starting with a space.
        right_depth: The same at the right jamb.
        rounding: How lengths of the answer are rounded.
        sash_clearance: Left open between its back edge and the sash.
        scribe: Left on each horn's wall edge, to be scribed to the wall.
        stock_width: Width of the stock before ripping, where it is known.
        thickness: Of the stock.
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
