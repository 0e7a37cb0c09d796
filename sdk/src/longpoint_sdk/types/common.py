"""Types of the document's part "common". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk._measured import Measured
from longpoint_sdk.types._base import LengthText, Request, Result

if TYPE_CHECKING:
    ApronEnds = Literal["angled", "mitred_return", "square"]
    """An apron's end: returned to the wall, cut square, or cut back at an angle below the stool."""
    BoxCorners = Literal["butted", "mitred"]
    """How the boards of a jamb extension meet: head over the legs, or mitred."""
    CutKind = Literal["bevel", "compound", "mitre", "square"]
    Foot = Literal["floor", "picture_frame", "plinth", "stool"]
    """What the trim stands on."""
    Hand = Literal["left", "right"]
    HeadStyle = Literal["butted", "corner_blocks", "mitred"]
    """How casing meets at the head: mitred, head over the legs, or both against a block."""
    Mode = Literal["down", "nearest", "up"]
    """Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long).
    """
    PartKind = Literal[
        "apron",
        "apron_return",
        "back_band",
        "cap",
        "cap_return",
        "casing_head",
        "casing_leg",
        "casing_sill",
        "corner_block",
        "door_stop",
        "fillet",
        "fillet_return",
        "head_jamb",
        "jamb_extension",
        "jamb_leg",
        "levelling_strip",
        "mull_casing",
        "plinth_block",
        "stool",
        "stool_return",
    ]
    RoundTo = Literal["0.5 mm", "1 mm", "1/16 in", "1/32 in", "1/64 in", "1/8 in"]
    """The fineness of the marks a length is rounded to."""
    SillAnswer = Literal["shim", "tapered_strip"]
    """What is done under a stool on a sill out of level: shims, or one tapered strip."""
    StoolEnds = Literal["eased", "mitred_return", "square"]
    """A horn's end: cut square, square with its edges eased, or its nosing returned to the wall."""
    StripEnds = Literal["mitred_return", "square"]
    """The ends of a fillet or a cap over a butted head."""
    Unit = Literal["cm", "ft", "in", "m", "mm"]
    """A unit of length, named as it is written after a number."""
    WallAnswer = Literal["extend", "flat", "lean"]
    """What is done where the wall does not lie flush: nothing that changes a size, casing that leans on it, or a
    jamb extension.
    """
else:
    ApronEnds = str
    BoxCorners = str
    CutKind = str
    Foot = str
    Hand = str
    HeadStyle = str
    Mode = str
    PartKind = str
    RoundTo = str
    SillAnswer = str
    StoolEnds = str
    StripEnds = str
    Unit = str
    WallAnswer = str


class ApronIn(Request, frozen=True, kw_only=True):
    """An apron under the stool: its width down the wall, its thickness off the wall, how its ends are cut.

    `end_angle` is that of angled ends, cut back below the stool.

    Attributes:
        end_angle: Degrees off a square cut.
    """

    width: LengthText
    thickness: LengthText
    end_angle: float = 15.0
    ends: ApronEnds = "mitred_return"
    profile: str = "apron"


class BackBandIn(Request, frozen=True, kw_only=True):
    """A band round mitred casing: its width across its face, its thickness off the wall, and how far it laps
    over the casing.
    """

    width: LengthText
    thickness: LengthText
    lap: LengthText = "0 in"
    profile: str = "back band"


class CasingIn(Request, frozen=True, kw_only=True):
    """Casing stock: its profile's name, its width across the face and its thickness at the thick edge."""

    width: LengthText
    thickness: LengthText
    profile: str = "casing"


class ClearancesIn(Request, frozen=True, kw_only=True):
    """What is in the way. `left` and `right` are from the jamb's inside face, `above` from the head jamb's
    underside, `below` from the stool's top or the base; a neighbour's distance is from jamb face to jamb
    face.
    """

    above: LengthText | None = None
    below: LengthText | None = None
    left: LengthText | None = None
    left_neighbour: LengthText | None = None
    right: LengthText | None = None
    right_neighbour: LengthText | None = None


class CornerBlockIn(Request, frozen=True, kw_only=True):
    """A square block at each corner, at least as wide as the casing it ends."""

    width: LengthText
    thickness: LengthText
    profile: str = "corner block"


class LengthOut(Measured, Result, frozen=True, kw_only=True):
    """A length going out.

    Attributes:
        exact: The exact length in `unit`, as a fraction or whole number; null when it is irrational.
        real: When it is irrational, the length in `unit` before rounding, to nine decimals; else null.
        text: The length rounded as asked, as a tape reads.
        unit: The unit of all of these.
        residual: What rounding added: positive when the piece is long.
    """

    exact: str | None
    real: float | None
    text: str
    unit: Unit | str
    residual: str


class CutoutOut(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back edge where it passes a mull or a stretch of wall: `at` from its left
    end, `depth` at its left, `end_depth` at its right where that is another.
    """

    at: LengthOut
    length: LengthOut
    depth: LengthOut
    end_depth: LengthOut | None


class DefectIn(Request, frozen=True, kw_only=True):
    """A stretch of a stick that no piece may touch, measured from its left end."""

    start: LengthText
    end: LengthText


class DoorIn(Request, frozen=True, kw_only=True):
    """A door to be hung in a jamb made for it: `width`, `height` and `thickness` are the door's own.

    Gaps are left between door and jamb and under the door. `housing` is how deep the head jamb is let into
    the legs. The rough opening is told where it is to be checked. Hinges are measured from the door's top and
    bottom to the hinge's near end, the strike from the floor to its middle; the defaults are common practice.
    """

    width: LengthText
    height: LengthText
    bottom_hinge: LengthText = "11 in"
    floor_gap: LengthText = "1/2 in"
    head_gap: LengthText = "1/8 in"
    hinge_gap: LengthText = "1/8 in"
    hinge_length: LengthText = "3 1/2 in"
    hinge_side: Hand = "left"
    hinges: int = 3
    housing: LengthText = "0 in"
    jamb_depth: LengthText = "4 5/8 in"
    jamb_thickness: LengthText = "3/4 in"
    profile: str = "jamb"
    rough_height: LengthText | None = None
    rough_width: LengthText | None = None
    strike_gap: LengthText = "1/8 in"
    strike_height: LengthText = "36 in"
    thickness: LengthText = "1 3/8 in"
    top_hinge: LengthText = "7 in"


class NotchOut(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back corner: `depth` from the back edge, `length` from the end. `end_depth`
    is the depth at the horn's end where the wall is out of plane.
    """

    depth: LengthOut
    length: LengthOut
    end_depth: LengthOut | None


class EndOut(Result, frozen=True, kw_only=True):
    """One end of a part as it lies on the saw: face up, outer edge against the fence.

    `at` is the end as installed (a leg's foot or head, else the side it meets), `on_saw` the end as it lies.
    `mitre_degrees` is the table's turn off a square cut towards `swing`; `bevel_degrees` the blade's tilt
    from upright towards `tilt`. `long_edge` is the edge or face that keeps the long point.
    """

    at: str
    on_saw: Hand | str
    cut: CutKind | str
    mitre_degrees: float
    swing: Hand | str | None
    bevel_degrees: float
    tilt: Hand | str | None
    long_edge: str | None
    notch: NotchOut | None


class ExtensionIn(Request, frozen=True, kw_only=True):
    """Boards on the jamb's edge that bring it out to the wall; `reveal` is the jamb left showing inside them."""

    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "jamb extension"
    reveal: LengthText = "0 in"


class OfferOut(Result, frozen=True, kw_only=True):
    """One of the trade's answers.

    Attributes:
        answer: its name.
        detail: what it means.
        field: a JSON pointer into the opening, to the field that takes it up; null where none does, as for
            caulk.
        value: what to write there.
        figures: the lengths, and the angles in degrees, that go with it.
    """

    answer: str
    detail: str
    field: str | None
    value: str | bool | None
    figures: dict[str, str]


class FindingOut(Result, frozen=True, kw_only=True):
    """Something found. It has changed no size: an answer that is taken up is sent back in its field."""

    code: str
    side: str
    detail: str
    amount: LengthOut
    offers: list[OfferOut]


class HeadStripIn(Request, frozen=True, kw_only=True):
    """A fillet under a butted head, or a cap over it: its height as seen, its depth off the wall, and how far it
    runs past the legs' outside edges.
    """

    profile: str
    height: LengthText
    depth: LengthText
    ends: StripEnds = "square"
    overhang: LengthText = "0 in"


class HornsIn(Request, frozen=True, kw_only=True):
    """A stool's own horns at this opening, past the trim's outside edge."""

    left: LengthText | None = None
    right: LengthText | None = None


class RoundingIn(Request, frozen=True, kw_only=True):
    """How lengths of the answer are rounded.

    Attributes:
        mode: Which mark is taken: the nearest (the longer of two equally near), the next up or the next down.
        to: The fineness of the tape they will be marked with. It decides the unit of the answer, too.
    """

    mode: Mode = "nearest"
    to: RoundTo = "1/16 in"


class StickIn(Request, frozen=True, kw_only=True):
    """A length the yard sells, its price, and how many there are where that is limited.

    Attributes:
        price: An amount of money as decimal text, at most two places.
    """

    length: LengthText
    price: str
    available: int | None = None
    defects: list[DefectIn] = []


class StockForSaleIn(Request, frozen=True, kw_only=True):
    """One profile's sticks at the yard. `turnable` stock is flat and square-edged, so mitred ends may share a
    cut.

    Attributes:
        sticks: The lengths to be had.
        turnable: Whether it is flat, square-edged stock.
    """

    profile: str
    sticks: list[StickIn]
    turnable: bool = False


class PlinthIn(Request, frozen=True, kw_only=True):
    """Plinth blocks under a door's legs."""

    width: LengthText
    height: LengthText
    thickness: LengthText
    profile: str = "plinth"


class StoolIn(Request, frozen=True, kw_only=True):
    """A stool: the horn runs past the trim's outside edge, the nosing past the apron's face.

    `sash_clearance` is left open between its back edge and the sash; `stock_width` is the width before
    ripping. `ease` is the radius of eased ends; `scribe` is left on each horn's wall edge, to be scribed to
    the wall.
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


class StopIn(Request, frozen=True, kw_only=True):
    """A door's stop: its width across its face, its thickness off the jamb."""

    width: LengthText
    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "door stop"


class TrimIn(Request, frozen=True, kw_only=True):
    """The trim chosen for one opening or for many.

    `casing` is that of the legs, and of head and sill unless they have their own; null leaves the opening
    uncased, the wall returning to the jamb. `reveal` is the jamb left showing; `overhang` is how far a butted
    head runs past the legs' outside edges; `floor_clearance` is left under a door's legs. A `fillet` and a
    `cap` go with a butted head, a `corner_block` with a head of corner blocks, a `back_band` with a mitred
    one. `mull_casing` covers the joints between units.
    """

    casing: CasingIn | None
    reveal: LengthText
    apron: ApronIn | None = None
    back_band: BackBandIn | None = None
    cap: HeadStripIn | None = None
    corner_block: CornerBlockIn | None = None
    extension: ExtensionIn | None = None
    fillet: HeadStripIn | None = None
    floor_clearance: LengthText = "0 in"
    head_casing: CasingIn | None = None
    head_style: HeadStyle = "mitred"
    mull_casing: CasingIn | None = None
    overhang: LengthText = "0 in"
    plinth: PlinthIn | None = None
    sill_casing: CasingIn | None = None
    stool: StoolIn | None = None
    stop: StopIn | None = None


class HouseIn(Request, frozen=True, kw_only=True):
    """What is said of a house as a whole.

    Attributes:
        currency: ISO 4217 code; only repeated in the answer.
        rounding: How lengths of the answers are rounded; its `to` decides the unit they are shown in.
        site_note: Free text; may have several lines.
        stock: What the yard sells.
        trim_specs: Trim chosen for many openings, by name.
        unit: The unit of lengths written without one, here and in the openings.
    """

    name: str
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    rounding: RoundingIn = RoundingIn()
    site_note: str = ""
    stock: list[StockForSaleIn] = []
    trim_specs: dict[str, TrimIn] = {}
    unit: Unit | None = None


class MarkOut(Result, frozen=True, kw_only=True):
    """A layout mark: `at` from the part's left end as it lies on the saw."""

    name: str
    at: LengthOut


class OffPlaneIn(Request, frozen=True, kw_only=True):
    """How the wall lies to the jamb's edge at one corner: `proud` of it or `shy` of it; neither where it is
    flush.
    """

    proud: LengthText | None = None
    shy: LengthText | None = None


class SillIn(Request, frozen=True, kw_only=True):
    """A sill out of level: the end that lies low, and by how much over the jamb's width."""

    low: Hand
    by: LengthText


class ReadingsIn(Request, frozen=True, kw_only=True):
    """What the tape read, from the jamb's inside faces.

    A plumb-sided opening has `jamb_width` and `leg_height` (stool top, sill jamb or floor to the underside of
    the head jamb); where the two sides differ, `left_height` and `right_height` instead: a raked head. One
    out of square has a `head_width` too, and at least one diagonal, inside corner to inside corner, or one
    corner's angle; further ones check the tape. A curved head has its `rise` above the springing
    (`leg_height` is up to the springing, left out where the curve stands on the base) and `head_pieces`, its
    number of straight pieces, or `departure`, how far a piece's middle may lie from the true curve. Any other
    convex shape has `sides`, anticlockwise from the base as seen from the room, and the interior `angles`,
    the base's right-hand corner first (a triangle needs none). Joined units have their `lights`, left to
    right, and the `mull_widths` between them in place of `jamb_width`. A `door` gives its jamb's width and
    height by itself.

    A stool needs `jamb_depth`, wall face back to the sash stop, or `left_depth` and `right_depth`; where the
    wall is out of plane, the same depth at each horn's end too. `wall` tells at every corner, in the order of
    `angles`, how the wall lies to the jamb's edge.
    """

    angles: list[float] | None = None
    bottom_left_angle: float | None = None
    bottom_right_angle: float | None = None
    clearances: ClearancesIn = ClearancesIn()
    departure: LengthText | None = None
    diagonal_from_bottom_left: LengthText | None = None
    diagonal_from_bottom_right: LengthText | None = None
    door: DoorIn | None = None
    head_pieces: int | None = None
    head_width: LengthText | None = None
    jamb_depth: LengthText | None = None
    jamb_thickness: LengthText = "3/4 in"
    jamb_width: LengthText | None = None
    left_depth: LengthText | None = None
    left_height: LengthText | None = None
    left_horn_depth: LengthText | None = None
    leg_height: LengthText | None = None
    lights: list[LengthText] | None = None
    mull_widths: list[LengthText] | None = None
    right_depth: LengthText | None = None
    right_height: LengthText | None = None
    right_horn_depth: LengthText | None = None
    rise: LengthText | None = None
    sides: list[LengthText] | None = None
    sill: SillIn | None = None
    top_left_angle: float | None = None
    top_right_angle: float | None = None
    wall: list[OffPlaneIn] | None = None


class RevealsIn(Request, frozen=True, kw_only=True):
    """A side's own reveal, where it is not the trim's."""

    head: LengthText | None = None
    left: LengthText | None = None
    right: LengthText | None = None
    sill: LengthText | None = None


class WallLimitsIn(Request, frozen=True, kw_only=True):
    """How far the wall may lie off the jamb's edge: up to `caulk` it is caulked, up to `plane` planed or the
    casing back-bevelled; beyond, the jamb is extended. The defaults are common practice.
    """

    caulk: LengthText = "1/16 in"
    plane: LengthText = "3/16 in"


class WidthsIn(Request, frozen=True, kw_only=True):
    """Widths that pieces are ripped to at this opening."""

    apron: LengthText | None = None
    head: LengthText | None = None
    left: LengthText | None = None
    right: LengthText | None = None
    sill: LengthText | None = None


class OpeningIn(Request, frozen=True, kw_only=True):
    """One opening of a house. `trim` names one of the request's trim specs; `count` is how many are alike."""

    mark: str
    readings: ReadingsIn
    trim: str
    count: int = 1
    foot_style: Foot = "stool"
    horns: HornsIn = HornsIn()
    reveals: RevealsIn = RevealsIn()
    room: str = ""
    sill_answer: SillAnswer = "shim"
    square_gap: LengthText = "1/64 in"
    wall_answer: WallAnswer = "flat"
    wall_limits: WallLimitsIn = WallLimitsIn()
    widths: WidthsIn = WidthsIn()
    without_apron: bool = False


class StepOut(Result, frozen=True, kw_only=True):
    """How a figure was computed: the rule in words and the readings it used, exact."""

    figure: str
    rule: str
    inputs: dict[str, str]


class TaperOut(Result, frozen=True, kw_only=True):
    """Rip widths at a part's two ends as it lies on the saw."""

    left: LengthOut
    right: LengthOut


class PartOut(Result, frozen=True, kw_only=True):
    """One piece of trim.

    `short_point` runs along the inner edge, `long_point` along the outer edge; `overall` is what it takes of
    a stick. `rip_width` is null where the stock keeps its own width. `joint_error` is the widest a mitre of
    this part can open or bind because `overall` was rounded, were all of the residual to fall on one joint.
    """

    key: str
    kind: PartKind | str
    opening: str
    side: str
    profile: str
    quantity: int
    short_point: LengthOut
    long_point: LengthOut
    overall: LengthOut
    width: LengthOut
    thickness: LengthOut
    rip_width: LengthOut | None
    taper: TaperOut | None
    cutouts: list[CutoutOut]
    ends: tuple[EndOut, EndOut]
    marks: list[MarkOut]
    joint_error: str
    how: list[StepOut]
    notes: list[str]


class OpeningOut(Result, frozen=True, kw_only=True):
    """One opening worked out: its parts and what was assumed. `square_gap` is the joint gap left by taking its
    corners as square: nought where they are, or where their own angles were cut. `findings` are what is in
    the way, out of plane or out of level, and none of them has changed a size.
    """

    mark: str
    room: str
    count: int
    parts: list[PartOut]
    square_gap: str
    notes: list[str]
    findings: list[FindingOut]


class ScheduleOut(Result, frozen=True, kw_only=True):
    """A schedule as it stands, its openings aside.

    Attributes:
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        archived_at: When it was archived; null when it is not.
        house: What is said of the house as a whole, as it was sent.
        exact: Every length exactly, by its JSON pointer, as a fraction of an inch.
    """

    id: str
    revision: int
    opening_count: int
    created_at: str
    updated_at: str
    archived_at: str | None
    house: HouseIn
    exact: dict[str, str]
