"""Types of the document's part "one_opening". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import (
    Foot,
    HornsIn,
    RevealsIn,
    RoundingIn,
    SillAnswer,
    WallAnswer,
    WallLimitsIn,
    WidthsIn,
)
from longpoint_sdk.types.movement import AirIn, ConditionsIn, Grain, Scale, Species
from longpoint_sdk.types.parts import PartOut
from longpoint_sdk.types.readings import ReadingsIn
from longpoint_sdk.types.trim import ApronEnds, HeadStyle, TrimIn


class ApronRequest(Request, frozen=True, kw_only=True):
    """An apron's readings and choices: it ends flush with the casing's outside edges.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    thickness: LengthText
    ends: ApronEnds = "mitred_return"
    profile: str = "apron"
    rounding: RoundingIn = RoundingIn()
    unit: Unit | None = None
    width: LengthText = "2 1/2 in"


class CasingRequest(Request, frozen=True, kw_only=True):
    """Casing's readings and choices, for plumb sides. Give `leg_height`, or `left_height` and `right_height`.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    casing_thickness: LengthText = "5/8 in"
    floor_clearance: LengthText = "0 in"
    foot_style: Foot = "stool"
    head_style: HeadStyle = "mitred"
    left_height: LengthText | None = None
    leg_height: LengthText | None = None
    overhang: LengthText = "0 in"
    plinth_height: LengthText | None = None
    profile: str = "casing"
    right_height: LengthText | None = None
    rounding: RoundingIn = RoundingIn()
    unit: Unit | None = None


class CompoundOut(Result, frozen=True, kw_only=True):
    """A compound cut: the table's turn off a square cut, and the blade's tilt from upright."""

    mitre_degrees: float
    bevel_degrees: float


class PointOut(Result, frozen=True, kw_only=True):
    """A place on the wall, from the base's left inside corner, x along the base, as decimal text."""

    x: str
    y: str


class CornerOut(Result, frozen=True, kw_only=True):
    """One inside corner of the jamb.

    `sides` meet there. `gap_if_square` is the joint gap that cutting for a square corner would leave, null
    where the corner is far from square. `compound` is the saw's setting where `spring_degrees` was given.

    Attributes:
        degrees: The inside angle.
        off_square_degrees: How far that is from 90; positive where it is wider.
    """

    sides: tuple[str, str]
    degrees: float
    off_square_degrees: float
    gap_if_square: str | None
    at: PointOut
    compound: CompoundOut | None


class SuspectOut(Result, frozen=True, kw_only=True):
    """A reading that alone could explain the disagreement: what it would be, and by how much it would change."""

    reading: str
    measured: str
    would_be: str
    change: str
    why: str


class TapeCheckOut(Result, frozen=True, kw_only=True):
    """A reading that the shape did not need, against what the others make of it; `difference` is measured less
    computed.
    """

    reading: str
    measured: str
    computed: str
    difference: str
    agrees: bool


class CornersOut(Result, frozen=True, kw_only=True):
    """Every corner, the base's right-hand one first, and the casing cut to them.

    `square` says that no joint would open by more than `square_gap` were all corners taken as square.
    `computed_by` is the diagonal or angle that decided the shape. `suspects` are told where readings
    disagree, the likeliest wrong one first: one reading too many shows that something is wrong, not for
    certain which.

    Attributes:
        pieces: The casing.
        checks: Readings that the shape did not need, against it.
    """

    corners: list[CornerOut]
    pieces: list[PartOut]
    square: bool
    computed_by: str | None
    checks: list[TapeCheckOut]
    suspects: list[SuspectOut]


class CornersRequest(Request, frozen=True, kw_only=True):
    """Readings of an opening that may be out of square, and the casing that is to go round it.

    `square_gap` is the joint gap below which the opening is called square. `spring_degrees` is the angle
    between a leaning casing's back and the upright of the wall's plane: 90 lies flat, and gives no bevel.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    readings: ReadingsIn
    casing_width: LengthText
    reveal: LengthText
    casing_thickness: LengthText = "5/8 in"
    foot_style: Foot = "stool"
    head_casing_width: LengthText | None = None
    profile: str = "casing"
    rounding: RoundingIn = RoundingIn()
    spring_degrees: float | None = None
    square_gap: LengthText = "1/64 in"
    unit: Unit | None = None


class SeasonOut(Result, frozen=True, kw_only=True):
    """The piece in one set of conditions. `change` is of its width, negative where it shrank; `gap` is the
    mitre's opening at its open end, `opens_at` the short or the long point, empty where nothing moved.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: What the wood comes to in them, in percent.
        opens_degrees: By how much the joint opens.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: float
    change: str
    opens_degrees: float
    gap: str
    opens_at: str
    within_table: bool


class MovementOut(Result, frozen=True, kw_only=True):
    """How the piece moves. Coefficients are averages of clear wood: one board may move half as much again.

    `coefficient` is the change per unit of width and per percent of moisture content.

    Attributes:
        installed_moisture_content: When the joint was made, in percent.
        widest_gap: The widest of all seasons.
        source: Where formulas and coefficients come from.
    """

    installed_moisture_content: float
    coefficient: float
    seasons: list[SeasonOut]
    widest_gap: str
    source: str
    notes: list[str]


class MovementRequest(Request, frozen=True, kw_only=True):
    """A mitred piece, the conditions its joint was made in, and those it will live through.

    `mitre_degrees` is off a square cut.

    Attributes:
        seasons: Each set of conditions they will live through.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    species: Species
    installed: AirIn
    seasons: list[AirIn]
    width: LengthText
    grain: Grain = "flat_sawn"
    mitre_degrees: float = 45.0
    scale: Scale = "fahrenheit"
    unit: Unit | None = None


class OpeningRequest(Request, frozen=True, kw_only=True):
    """One opening with its trim; answered with all of its parts.

    With `movement`, the answer also says how far its mitres will open as the wood moves.

    Attributes:
        mark: What it is called in the house; part of each piece's name.
        foot_style: What the trim stands on.
        horns: Its own, where they are not the trim's.
        reveals: Its own, where they are not the trim's.
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
    readings: ReadingsIn
    trim: TrimIn
    foot_style: Foot = "stool"
    horns: HornsIn = HornsIn()
    movement: ConditionsIn | None = None
    reveals: RevealsIn = RevealsIn()
    rounding: RoundingIn = RoundingIn()
    sill_answer: SillAnswer = "shim"
    square_gap: LengthText = "1/64 in"
    unit: Unit | None = None
    wall_answer: WallAnswer = "flat"
    wall_limits: WallLimitsIn = WallLimitsIn()
    widths: WidthsIn = WidthsIn()
    without_apron: bool = False


class PartsOut(Result, frozen=True, kw_only=True):
    """The parts asked for, and what was assumed."""

    parts: list[PartOut]
    notes: list[str]


class StoolRequest(Request, frozen=True, kw_only=True):
    """A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    horn: LengthText
    nosing: LengthText
    apron_thickness: LengthText
    jamb_depth: LengthText | None = None
    left_depth: LengthText | None = None
    profile: str = "stool"
    right_depth: LengthText | None = None
    rounding: RoundingIn = RoundingIn()
    sash_clearance: LengthText = "0 in"
    thickness: LengthText = "3/4 in"
    unit: Unit | None = None
