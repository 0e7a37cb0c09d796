"""Types of the document's part "common". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Literal

import msgspec

from longpoint_sdk._measured import Measured
from longpoint_sdk.types._base import LengthText, MoneyText, Request, Result

if TYPE_CHECKING:
    ApronEnds = Literal["angled", "mitred_return", "square"]
    """An apron's end: returned to the wall, cut square, or cut back at an angle below the stool."""
    BoxCorners = Literal["butted", "mitred"]
    """How the boards of a jamb extension meet: head over the legs, or mitred."""
    CutKind = Literal["bevel", "compound", "mitre", "square"]
    """An end's cut: square; a mitre, the table turned; a bevel, the blade tilted; compound, both."""
    Foot = Literal["floor", "picture_frame", "plinth", "stool"]
    """What the trim stands on."""
    Grain = Literal["flat_sawn", "quarter_sawn"]
    """How the board was sawn: its face shows flat (tangential) or quartered (radial) grain."""
    Hand = Literal["left", "right"]
    """A side, as seen from the room or, at the saw, by whoever stands at it."""
    HeadStyle = Literal["butted", "corner_blocks", "mitred"]
    """How casing meets at the head: mitred, head over the legs, or both against a block."""
    MaterialCode = Literal[
        "abrasive",
        "caulk",
        "filler",
        "glue",
        "nails_10d",
        "nails_2d",
        "nails_3d",
        "nails_4d",
        "nails_5d",
        "nails_6d",
        "nails_7d",
        "nails_8d",
        "nails_9d",
        "paint",
        "primer",
        "shims",
        "tape",
    ]
    """What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, primer and paint
    in fluid ounces; shims; tape in feet; abrasive in sheets.
    """
    Mode = Literal["down", "nearest", "up"]
    """Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long).
    """
    OperationKind = Literal[
        "angled_end",
        "crosscut",
        "cut_out",
        "notch",
        "part_off",
        "rip",
        "rip_stick",
        "shared_cut",
        "square_ends",
    ]
    """What is done.

    square_ends: both factory ends of a stick are squared off. cut_out: a defect is sawn out of a stick.
    rip_stick: a whole stick is ripped to width. part_off: a piece too short to hold is cut from the stick
    while that is long. crosscut: a piece is cut square to its overall length against the stop block.
    shared_cut: one angled cut makes the end of two pieces that lie turned over on the stick. angled_end: a
    mitre, bevel or compound cut at the end of a piece, to the corner. rip: one piece is ripped to width.
    notch: a stool's notch is sawn out.
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
    """What a part is. Legs stand at the sides; a return takes an end back to the wall."""
    RoundTo = Literal["0.5 mm", "1 mm", "1/16 in", "1/32 in", "1/64 in", "1/8 in"]
    """The fineness of the marks a length is rounded to."""
    Scale = Literal["celsius", "fahrenheit"]
    """The thermometer's scale: what temperatures are in."""
    Section = Literal["cost", "hours", "materials", "saw_order"]
    """A part of the shop's answer."""
    SillAnswer = Literal["shim", "tapered_strip"]
    """What is done under a stool on a sill out of level: shims, or one tapered strip."""
    Species = Literal[
        "basswood",
        "beech",
        "black_cherry",
        "black_walnut",
        "douglas_fir",
        "eastern_white_pine",
        "mdf",
        "ponderosa_pine",
        "red_alder",
        "red_maple",
        "red_oak",
        "sugar_maple",
        "white_ash",
        "white_oak",
        "yellow_birch",
        "yellow_poplar",
    ]
    """The wood, by its common name."""
    StoolEnds = Literal["eased", "mitred_return", "square"]
    """A horn's end: cut square, square with its edges eased, or its nosing returned to the wall."""
    StripEnds = Literal["mitred_return", "square"]
    """The ends of a fillet or a cap over a butted head."""
    Task = Literal[
        "caulk", "cut", "fill", "final_coat", "fit", "measure", "nail", "paint", "rip", "rout", "set_up"
    ]
    """What hands-on time goes to."""
    Tool = Literal["hand_saw", "mitre_saw", "table_saw"]
    """What a cut is made with."""
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
    Grain = str
    Hand = str
    HeadStyle = str
    MaterialCode = str
    Mode = str
    OperationKind = str
    PartKind = str
    RoundTo = str
    Scale = str
    Section = str
    SillAnswer = str
    Species = str
    StoolEnds = str
    StripEnds = str
    Task = str
    Tool = str
    Unit = str
    WallAnswer = str


class AirIn(Request, frozen=True, kw_only=True):
    """Conditions that the wood has come to rest in: the air's `temperature` and `relative_humidity` in percent,
    or the `moisture_content` that a meter showed.
    """

    moisture_content: float | None = None
    name: str = "air"
    relative_humidity: float | None = None
    temperature: float | None = None


class AmountsOut(Result, frozen=True, kw_only=True):
    """Amounts by category. `stock` is what is in pieces, `waste` kerfs, trims and short offcuts, `kept_offcut`
    what goes back on the rack.

    Attributes:
        consumable: Materials beside the sticks.
        labour: Hands-on hours at the wages given.
        total: All of them.
    """

    stock: Decimal
    waste: Decimal
    kept_offcut: Decimal
    consumable: Decimal
    labour: Decimal
    total: Decimal


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


class BoughtOut(Result, frozen=True, kw_only=True):
    """Packages of one size; `price` is of each, null where none was given.

    Attributes:
        package: Its name.
        count: How many to buy.
        cost: Of them all.
    """

    package: str
    size: float
    count: int
    price: Decimal | None
    cost: Decimal | None


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


class BuyLineOut(Result, frozen=True, kw_only=True):
    """A line for the yard.

    Attributes:
        length: Of each stick.
        quantity: How many of them.
        price: Of one.
        cost: Of them all.
    """

    profile: str
    length: LengthOut
    quantity: int
    price: Decimal
    cost: Decimal


class CasingIn(Request, frozen=True, kw_only=True):
    """Casing stock: its profile's name, its width across the face and its thickness at the thick edge."""

    width: LengthText
    thickness: LengthText
    profile: str = "casing"


class CautionOut(Result, frozen=True, kw_only=True):
    """What to know before starting: it informs and defers, and approves nothing. `applies_to` names openings;
    empty for the whole job. `source` is what it leans on.

    Attributes:
        code: A stable name for it.
        text: The caution, in words.
    """

    code: str
    text: str
    source: str
    applies_to: list[str]


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


class ConditionsIn(Request, frozen=True, kw_only=True):
    """The wood, the conditions its joints are made in, and those they will live through. `scale` is the
    thermometer's.

    Attributes:
        seasons: Each set of conditions they will live through.
    """

    species: Species
    installed: AirIn
    seasons: list[AirIn]
    grain: Grain = "flat_sawn"
    scale: Scale = "fahrenheit"


class CornerBlockIn(Request, frozen=True, kw_only=True):
    """A square block at each corner, at least as wide as the casing it ends."""

    width: LengthText
    thickness: LengthText
    profile: str = "corner block"


class CostLineOut(Result, frozen=True, kw_only=True):
    """A line of the whole-house view. `by_opening` has each opening's amount in the order of `openings`; they
    add up to `amount`.
    """

    category: str
    name: str
    amount: Decimal
    by_opening: list[Decimal]


class OpeningCostOut(Result, frozen=True, kw_only=True):
    """What an opening costs, all of its count together."""

    opening: str
    room: str
    amounts: AmountsOut


class RoomCostOut(Result, frozen=True, kw_only=True):
    """What a room costs: the sum of its openings."""

    room: str
    openings: int
    amounts: AmountsOut


class UnpricedOut(Result, frozen=True, kw_only=True):
    """A material or a task that no price was given for: it costs nothing here.

    Attributes:
        category: consumable for a material, labour for a task.
        name: The material's code, or the task.
    """

    category: str
    name: str


class CostOut(Result, frozen=True, kw_only=True):
    """The same money by line, by opening and by room: each view adds up to the same cent.

    Attributes:
        lines: By what it is spent on.
        openings: By opening.
        rooms: By room.
        unpriced: What had no price and so is not in the sum.
    """

    currency: str
    total: AmountsOut
    lines: list[CostLineOut]
    openings: list[OpeningCostOut]
    rooms: list[RoomCostOut]
    unpriced: list[UnpricedOut]


class ShareOut(Result, frozen=True, kw_only=True):
    """One opening's part of a quantity, all of its count together."""

    opening: str
    quantity: float


class LabourOut(Result, frozen=True, kw_only=True):
    """Hands-on minutes of one task: `quantity` of `unit`, by the rule, at the rates named.

    Attributes:
        by_opening: Minutes of each opening.
    """

    task: Task | str
    quantity: float
    unit: str
    minutes: float
    rule: str
    rates: list[str]
    by_opening: list[ShareOut]


class RateOut(Result, frozen=True, kw_only=True):
    """A rate that was reckoned with, and where it comes from.

    Attributes:
        name: Its field in the shop's `rates`.
        value: How much, in `unit`.
        unit: in, mil, percent, each, ft2, min, h or penny.
        source: Where it comes from: a published source, common practice, or the caller.
        says: What it is, in words.
    """

    name: str
    value: float
    unit: str
    source: str
    says: str


class WaitOut(Result, frozen=True, kw_only=True):
    """A drying wait, the whole job's together.

    Attributes:
        after: What has to dry.
        rate: The rate it is taken from.
    """

    after: str
    hours: float
    rate: str


class HoursOut(Result, frozen=True, kw_only=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them.

    Attributes:
        tasks: Minutes by task.
        wait_hours: All waits together.
        rates: Every rate that was used.
    """

    hands_on_hours: float
    tasks: list[LabourOut]
    wait_hours: float
    waits: list[WaitOut]
    rates: list[RateOut]


class FigureOut(Result, frozen=True, kw_only=True):
    """A number that something was computed from.

    Attributes:
        name: What it is.
        value: How much, in `unit`.
    """

    name: str
    value: float
    unit: str


class MaterialOut(Result, frozen=True, kw_only=True):
    """What is used of a material, waste included, and the packages that cover it.

    `rule` says how it was computed, `from` from which figures, `rates` at which rates.

    Attributes:
        code: A stable name, as in `packages`.
        name: Its name in words.
        quantity: How much is used, in `unit`.
        bought: The packages to buy.
        by_opening: How much of it is for each opening.
        notes: What was assumed.
    """

    code: str
    name: str
    quantity: float
    unit: str
    bought: list[BoughtOut]
    rule: str
    from_: list[FigureOut] = msgspec.field(name="from")
    rates: list[str]
    by_opening: list[ShareOut]
    notes: list[str]


class MaterialsOut(Result, frozen=True, kw_only=True):
    """What to buy beside the sticks, and every rate that was used."""

    lines: list[MaterialOut]
    rates: list[RateOut]


class OffcutOut(Result, frozen=True, kw_only=True):
    """What goes back on the rack."""

    profile: str
    length: LengthOut
    quantity: int


class OfferOut(Result, frozen=True, kw_only=True):
    """One of the trade's answers.

    Attributes:
        answer: its name.
        detail: what it means.
        field: the field that takes it up, a JSON pointer into the opening or, for what a group's openings
            have together, into the cut list's body; null where no one field does, as for caulk: `detail` then
            says what does. It was tried: with that value the answer comes without the finding, a group's once
            every opening of it that is offered one has its own.
        value: what to write there.
        figures: the lengths, and the angles in degrees, that go with it.
    """

    answer: str
    detail: str
    field: str | None
    value: str | bool | None
    figures: dict[str, str]


class FindingOut(Result, frozen=True, kw_only=True):
    """Something found. It has changed no size: an answer that is taken up is sent back in its field.

    Attributes:
        code: A stable name for the kind of finding.
        side: Where: left, right, head, sill, base, above or below; empty for a group's.
        detail: What was found, in words.
        amount: How much it is.
        offers: What can be done about it, the least work first.
    """

    code: str
    side: str
    detail: str
    amount: LengthOut
    offers: list[OfferOut]


class OpenJointOut(Result, frozen=True, kw_only=True):
    """The joint of an opening that stands open the widest in one set of conditions: the `part` on one side of
    it, empty where none is mitred; `gap` at its open end, the short or the long point.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: What the wood comes to in them, in percent.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: float
    part: str
    gap: str
    opens_at: str
    within_table: bool


class CutoutOut(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back edge where it passes a mull or a stretch of wall: `at` from its left
    end, `depth` at its left, `end_depth` at its right where that is another.
    """

    at: LengthOut
    length: LengthOut
    depth: LengthOut
    end_depth: LengthOut | None


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

    Attributes:
        notch: What is sawn out of a stool's back corner at this end; null for none.
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


class MarkOut(Result, frozen=True, kw_only=True):
    """A layout mark: `at` from the part's left end as it lies on the saw.

    Attributes:
        name: What it marks.
    """

    name: str
    at: LengthOut


class StepOut(Result, frozen=True, kw_only=True):
    """How a figure was computed: the rule in words and the readings it used, exact.

    Attributes:
        figure: What it is of, as `length`.
        rule: The rule in words.
        inputs: Each reading or choice by its name, exact.
    """

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

    Attributes:
        key: Its name in its opening, as `casing_leg/left`: what `part` and `piece` are elsewhere.
        opening: Its opening's mark.
        side: Where it goes at the opening: left, right, head and so on.
        profile: The stock it is cut from.
        quantity: How many there are, alike openings' taken together.
        taper: Rip widths at its two ends, where they differ; else null.
        ends: Its left and its right end as it lies on the saw.
        marks: What to mark along it before it is cut or fitted.
        how: How each of its figures was computed.
        notes: What was assumed of it.
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
    """One opening worked out: its parts and what was assumed.

    `square_gap` is the joint gap left by taking its corners as square: nought where they are, or where their
    own angles were cut. `findings` are what is in the way, out of plane or out of level, and none of them has
    changed a size. `movement` is the widest mitre season by season, null where no conditions were given.

    Attributes:
        count: How many are alike; each part's `quantity` is of them all together.
        parts: Every piece of its trim.
        notes: What was assumed.
    """

    mark: str
    room: str
    count: int
    parts: list[PartOut]
    square_gap: str
    notes: list[str]
    findings: list[FindingOut]
    movement: list[OpenJointOut] | None


class PlacedOut(Result, frozen=True, kw_only=True):
    """A piece's place on a stick: `start` from the stick's left end to the piece's left-most point.

    `turned` lies turned over; `reversed` lies end for end; `shares_cut` shares its left cut with the piece
    before.

    Attributes:
        opening: The mark of the piece's opening.
        part: The part's `key` there.
        instance: Which of several alike, counted from 1.
    """

    opening: str
    part: str
    instance: int
    start: LengthOut
    length: LengthOut
    turned: bool
    reversed: bool
    shares_cut: bool


class StickOut(Result, frozen=True, kw_only=True):
    """One stick as it is cut. `offcut` is what remains; `kept` says whether it goes back on the rack.

    Attributes:
        number: Its number in the plan, counted from 1.
        remnant: Whether it is a remnant on hand and not one to buy.
        pieces: From its left end to its right.
    """

    number: int
    length: LengthOut
    remnant: bool
    price: Decimal
    pieces: list[PlacedOut]
    offcut: LengthOut
    kept: bool


class ProfilePlanOut(Result, frozen=True, kw_only=True):
    """One profile's sticks. No plan costs less than `bound`; `proven` says that none is cheaper than this one.

    `split_openings` are those that were to come from one stick each and that no stick can hold.

    Attributes:
        gap: How far `cost` may be from the cheapest, as a share of it; 0 is proven.
        method: What found it: first_fit, columns or branching.
        seconds: How long the search took.
    """

    profile: str
    sticks: list[StickOut]
    cost: Decimal
    bound: Decimal
    gap: float
    proven: bool
    method: str
    seconds: float
    split_openings: list[str]


class PieceOut(Result, frozen=True, kw_only=True):
    """A piece: its opening's mark, its part's key, and which of the count it is."""

    opening: str
    part: str
    instance: int


class OperationOut(Result, frozen=True, kw_only=True):
    """One step at the saw, made at the setup of that number.

    `stick` is the stick's number in its profile's plan, null for a part without stock. `end` is the end of
    the piece as installed, `on_saw` the end as it lies, face up, outer edge against the fence. `mark` is
    where to cut: from the stick's left end (cut_out, to `mark_to`), from its free end (part_off, and what
    square_ends takes off), or along the fence from the left end of the row (shared_cut). `held` is the length
    of the workpiece in hand. `mirror_of` is the part that this one is the mirror image of; `cautions` are
    codes of the answer's cautions.

    Attributes:
        pieces: What it makes or cuts.
        title: The step in words.
    """

    number: int
    setup: int
    kind: OperationKind | str
    profile: str
    stick: int | None
    pieces: list[PieceOut]
    title: str
    end: str
    on_saw: Hand | str | None
    mark: LengthOut | None
    mark_to: LengthOut | None
    held: LengthOut | None
    mirror_of: str
    cautions: list[str]


class SettingOut(Result, frozen=True, kw_only=True):
    """How a tool is set.

    `mitre_degrees` is the table's turn towards `swing`, `bevel_degrees` the blade's tilt towards `tilt`, both
    to the step of the saw's scale. `stop` is blade to stop block, null for a cut to a mark or to the piece's
    corner; `fence` is rip fence to blade, and a tapered rip has its widths at the left and right end as the
    piece lies; the notch is gauged `notch_depth` from the back edge and `notch_length` from the end,
    `notch_end_depth` at the horn's end where that is another.
    """

    tool: Tool | str
    swing: Hand | str | None
    mitre_degrees: float
    tilt: Hand | str | None
    bevel_degrees: float
    stop: LengthOut | None
    fence: LengthOut | None
    taper: list[LengthOut] | None
    notch_depth: LengthOut | None
    notch_length: LengthOut | None
    notch_end_depth: LengthOut | None


class SetupOut(Result, frozen=True, kw_only=True):
    """A tool set once, and how many operations are made so."""

    number: int
    setting: SettingOut
    operations: int


class SawOrderOut(Result, frozen=True, kw_only=True):
    """The cuts in the order that sets the saws least.

    `setup_count` is how often a tool is set, `setup_count_by_opening` how often it would be, cutting one
    opening after the other.

    Attributes:
        setups: Each tool setting, in order.
        operations: Each step, in order.
    """

    setup_count: int
    setup_count_by_opening: int
    setups: list[SetupOut]
    operations: list[OperationOut]


class CutListOut(Result, frozen=True, kw_only=True):
    """A cut list: every opening's parts, the sticks they come from, what to buy and what is left over.

    `cost` is the sticks'. The sections that `include` did not name are null.

    Attributes:
        plans: The sticks of each profile and what is cut from each.
        buy: What to buy, a line for each profile and length.
        proven: Whether no plan of any profile can be cheaper.
        offcuts: What goes back on the rack.
        notes: What was assumed or left out.
        cautions: What to know before starting.
        cost_sheet: The money by line, by opening and by room.
        hours: Hands-on time, and drying waits.
        materials: What to buy beside the sticks.
        saw_order: The cuts in the order to make them.
    """

    openings: list[OpeningOut]
    plans: list[ProfilePlanOut]
    buy: list[BuyLineOut]
    cost: Decimal
    currency: str
    proven: bool
    offcuts: list[OffcutOut]
    notes: list[str]
    cautions: list[CautionOut]
    cost_sheet: CostOut | None = None
    hours: HoursOut | None = None
    materials: MaterialsOut | None = None
    saw_order: SawOrderOut | None = None


class GroupIn(Request, frozen=True, kw_only=True):
    """Openings trimmed together, left to right by their marks; or one of joined units, its `gaps` an empty list,
    whose stool is too long for a stick.

    `heads` are the heights of their head jambs' undersides over one level line, to be checked for being in
    line. With `gaps`, from each opening's right jamb face to the next one's left, they share one stool and
    apron; a stool longer than `stock_length` is scarfed over one of `solid`, places from the first opening's
    left jamb face, or over the middles of the gaps.

    Attributes:
        openings: Their marks, left to right.
    """

    mark: str
    openings: list[str]
    gaps: list[LengthText] | None = None
    heads: list[LengthText] | None = None
    solid: list[LengthText] = []
    stock_length: LengthText | None = None


class HornsIn(Request, frozen=True, kw_only=True):
    """A stool's own horns at this opening, past the trim's outside edge."""

    left: LengthText | None = None
    right: LengthText | None = None


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

    Attributes:
        bottom_left_angle: Degrees, inside the opening.
        bottom_right_angle: Degrees, inside the opening.
        top_left_angle: Degrees, inside the opening.
        top_right_angle: Degrees, inside the opening.
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
    """One opening of a house. `trim` names one of the request's trim specs; `count` is how many are alike.

    Attributes:
        mark: What it is called in the house; part of each piece's name.
        foot_style: What the trim stands on.
        horns: Its own, where they are not the trim's.
        reveals: Its own, where they are not the trim's.
        room: Where it is; money is told by room, too.
        sill_answer: What is done under a stool on a sill out of level.
        square_gap: The joint gap below which an opening that is out of square is treated as square.
        wall_answer: Takes up what was found of a wall out of plane; until one is chosen no size changes for
            it.
        wall_limits: How far the wall may lie off the jamb's edge before the casing is planed or the jamb
            extended.
        widths: Its own, where pieces are ripped.
        without_apron: Leaves the trim's apron out.
    """

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


class RoundingIn(Request, frozen=True, kw_only=True):
    """How lengths of the answer are rounded.

    Attributes:
        mode: Which mark is taken: the nearest (the longer of two equally near), the next up or the next down.
        to: The fineness of the tape they will be marked with. It decides the unit of the answer, too.
    """

    mode: Mode = "nearest"
    to: RoundTo = "1/16 in"


class PackageIn(Request, frozen=True, kw_only=True):
    """Something sold: its size in the material's unit (nails by the piece; glue, caulk, filler, primer and paint
    in fluid ounces; tape in feet; abrasive in sheets). Without a price it is bought and costs nothing in the
    answer.

    Attributes:
        price: An amount of money as decimal text, at most two places.
    """

    material: MaterialCode
    name: str
    size: float
    price: MoneyText | None = None


class RatesIn(Request, frozen=True, kw_only=True):
    """The shop's own rates; the answer names the source of each rate it used.

    Attributes:
        block_nails: Nails in a plinth or corner block; 4 when left out (common practice, no source).
        caulk_depth: How deep the bead goes into that gap; 1/8 in when left out (common practice, no source).
        caulk_fillet: Leg of the triangular bead in the corner of casing and wall; 3/16 in when left out
            (common practice, no source).
        caulk_gap: Width of the gap behind it that the bead fills; 1/16 in when left out (common practice, no
            source).
        caulk_minutes: To caulk 1 ft; 0.3 min when left out (common practice, no source).
        caulk_wait: Until caulk can be painted; 1 h when left out (common practice, no source; the label
            rules).
        caulk_waste: Left in tube and nozzle; 10% when left out (common practice, no source).
        corner_nails: Nails across a mitred corner; 2 when left out (common practice, no source).
        cut_minutes: To make a cut; 1 min when left out (common practice, no source).
        drywall: Thickness of the wall's face over the studs; 1/2 in when left out (common practice, no
            source).
        fill_minutes: To fill and sand a hole; 0.15 min when left out (common practice, no source).
        filler_wait: Until filler can be sanded; 1 h when left out (common practice, no source; the label
            rules).
        filler_waste: Left proud, sanded off and dried up; 100% when left out (common practice, no source).
        final_coat_minutes: To put the last coat on 1 ft2, at the wall; 1.5 min when left out (common
            practice, no source).
        fit_minutes: To fit a piece at the wall; 5 min when left out (common practice, no source).
        glue_film: Wet film on mitred joints and returns; 6 mil when left out (common practice, no source).
        glue_waste: Squeezed out and wiped off; 50% when left out (common practice, no source).
        hole_depth: Depth of the hole over a set nail; 1/8 in when left out (common practice, no source).
        hole_width: Across the hole over a set nail; 1/8 in when left out (common practice, no source).
        inner_nail: Size for what goes into the jamb; 0 takes the shortest that reaches; 0 penny when left out
            (common practice, no source).
        jamb_penetration: Least that a nail goes into the jamb's edge; 3/4 in when left out (common practice,
            no source; gives casing of 5/8 to 3/4 in the 4d nails of NAVEDTRA 14044).
        measure_minutes: To measure an opening; 10 min when left out (common practice, no source).
        nail_end_distance: From a piece's end to its first nail; 3 in when left out (common practice, no
            source).
        nail_minutes: To drive and set a nail; 0.2 min when left out (common practice, no source).
        nail_spacing: From nail to nail along casing and apron; 16 in when left out (NAVEDTRA 14044: casing
            nailed in pairs about 16 in apart).
        nail_waste: Bent and dropped; 10% when left out (common practice, no source).
        outer_nail: Size for what goes into studs; 0 takes the shortest that reaches; 0 penny when left out
            (common practice, no source).
        paint_coats: Coats of paint on faces and edges; 2 when left out (common practice, no source).
        paint_film: Dry film of one coat of paint; 1.4 mil when left out (common practice, no source; the
            label rules).
        paint_minutes: To put one coat on 1 ft2, bundled on the bench; 1 min when left out (common practice,
            no source).
        paint_solids: Solids of the paint by volume; 35% when left out (common practice, no source; the label
            rules).
        paint_wait: Between coats of paint, and after the last; 4 h when left out (common practice, no source;
            the label rules).
        paint_waste: Left in brush, roller and can; 15% when left out (common practice, no source).
        painted_backs: Coats of primer on the backs; 0 when left out (common practice, no source).
        primer_coats: Coats of primer on faces and edges; 1 when left out (common practice, no source).
        primer_film: Dry film of one coat of primer; 1.5 mil when left out (common practice, no source; the
            label rules).
        primer_solids: Solids of the primer by volume; 35% when left out (common practice, no source; the
            label rules).
        primer_wait: Until primer can be sanded; 2 h when left out (common practice, no source; the label
            rules).
        profile_girth: A moulded face's developed width, of its flat width; 110% when left out (common
            practice, no source).
        rip_minutes: To rip 1 ft; 0.5 min when left out (common practice, no source).
        rout_minutes: To rout 1 ft of a stool's nosing; 1 min when left out (common practice, no source).
        sandings: Before the first coat and between coats; 2 when left out (common practice, no source).
        setup_minutes: To set a saw; 2 min when left out (common practice, no source).
        sheet_area: Sanded with one sheet; 40 ft2 when left out (common practice, no source).
        shim_space: Between a door's jamb and the stud, packed with shims; 1/2 in when left out (common
            practice, no source).
        shims_per_opening: Tapered shims under stool and jamb; 4 when left out (common practice, no source).
        stool_nail_spacing: From nail to nail along the stool; 12 in when left out (common practice, no
            source).
        stud_penetration: Least that a nail goes into stud or sill; 3/4 in when left out (common practice, no
            source; gives casing of 5/8 to 3/4 in the 6d nails of NAVEDTRA 14044).
        tape_waste: Overlap and corners; 10% when left out (common practice, no source).
    """

    block_nails: int | None = None
    caulk_depth: LengthText | None = None
    caulk_fillet: LengthText | None = None
    caulk_gap: LengthText | None = None
    caulk_minutes: float | None = None
    caulk_wait: float | None = None
    caulk_waste: float | None = None
    corner_nails: int | None = None
    cut_minutes: float | None = None
    drywall: LengthText | None = None
    fill_minutes: float | None = None
    filler_wait: float | None = None
    filler_waste: float | None = None
    final_coat_minutes: float | None = None
    fit_minutes: float | None = None
    glue_film: float | None = None
    glue_waste: float | None = None
    hole_depth: LengthText | None = None
    hole_width: LengthText | None = None
    inner_nail: int | None = None
    jamb_penetration: LengthText | None = None
    measure_minutes: float | None = None
    nail_end_distance: LengthText | None = None
    nail_minutes: float | None = None
    nail_spacing: LengthText | None = None
    nail_waste: float | None = None
    outer_nail: int | None = None
    paint_coats: int | None = None
    paint_film: float | None = None
    paint_minutes: float | None = None
    paint_solids: float | None = None
    paint_wait: float | None = None
    paint_waste: float | None = None
    painted_backs: int | None = None
    primer_coats: int | None = None
    primer_film: float | None = None
    primer_solids: float | None = None
    primer_wait: float | None = None
    profile_girth: float | None = None
    rip_minutes: float | None = None
    rout_minutes: float | None = None
    sandings: int | None = None
    setup_minutes: float | None = None
    sheet_area: float | None = None
    shim_space: LengthText | None = None
    shims_per_opening: int | None = None
    stool_nail_spacing: LengthText | None = None
    stud_penetration: LengthText | None = None
    tape_waste: float | None = None


class SawIn(Request, frozen=True, kw_only=True):
    """The shop's limits at the saw: the shortest workpiece held by hand, the shortest pushed through the table
    saw, the sharpest mitre the table turns to, and how finely its scale can be set, in degrees.

    Attributes:
        angle_step: In degrees.
        sharpest_mitre: In degrees off a square cut.
        smallest_held: The shortest workpiece held by hand.
        smallest_ripped: The shortest pushed through the table saw.
    """

    angle_step: float = 0.1
    sharpest_mitre: float = 50.0
    smallest_held: LengthText = "6 in"
    smallest_ripped: LengthText = "12 in"


class WagesIn(Request, frozen=True, kw_only=True):
    """What an hour of hands-on work costs: `hour`, and `tasks` that cost otherwise. Without either, labour has
    its hours and no money.

    Attributes:
        hour: An amount of money as decimal text, at most two places.
    """

    hour: MoneyText | None = None
    tasks: dict[str, MoneyText] = {}


class ShopIn(Request, frozen=True, kw_only=True):
    """How the shop works. A material named in `packages` is bought in these alone, up to four of each.
    `build_year` is the house's: paint of before 1978, or of unknown age, may hold lead.

    Attributes:
        wages: What an hour of work costs.
    """

    build_year: int | None = None
    packages: list[PackageIn] = []
    rates: RatesIn = RatesIn()
    saw: SawIn = SawIn()
    wages: WagesIn | None = None


class DefectIn(Request, frozen=True, kw_only=True):
    """A stretch of a stick that no piece may touch, measured from its left end."""

    start: LengthText
    end: LengthText


class RemnantIn(Request, frozen=True, kw_only=True):
    """A piece of stock on hand: used first where that is cheaper. Its price is what using it is taken to cost.

    Attributes:
        count: How many there are just so.
        defects: Stretches no piece may touch, on each of them.
        price: An amount of money as decimal text, at most two places.
    """

    length: LengthText
    count: int = 1
    defects: list[DefectIn] = []
    price: MoneyText = "0"


class StickIn(Request, frozen=True, kw_only=True):
    """A length the yard sells, its price, and how many there are where that is limited.

    Attributes:
        price: An amount of money as decimal text, at most two places.
        available: How many the yard has; as many as are needed when left out.
        defects: Stretches no piece may touch, on each of them.
    """

    length: LengthText
    price: MoneyText
    available: int | None = None
    defects: list[DefectIn] = []


class StockIn(Request, frozen=True, kw_only=True):
    """One profile's stock. `turnable` stock is flat and square-edged, so mitred ends may share a cut.

    `one_stick_each` asks that each opening's pieces come side by side from one stick, so that their grain and
    colour agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one
    mark count as one: give each its own mark where each is to have its own stick.

    Attributes:
        profile: Its name, as the trim's pieces name theirs.
        sticks: The lengths the yard sells.
        remnants: What is on hand already.
    """

    profile: str
    sticks: list[StickIn]
    one_stick_each: bool = False
    remnants: list[RemnantIn] = []
    turnable: bool = False


class ExtensionIn(Request, frozen=True, kw_only=True):
    """Boards on the jamb's edge that bring it out to the wall; `reveal` is the jamb left showing inside them."""

    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "jamb extension"
    reveal: LengthText = "0 in"


class HeadStripIn(Request, frozen=True, kw_only=True):
    """A fillet under a butted head, or a cap over it: its height as seen, its depth off the wall, and how far it
    runs past the legs' outside edges.
    """

    profile: str
    height: LengthText
    depth: LengthText
    ends: StripEnds = "square"
    overhang: LengthText = "0 in"


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

    Attributes:
        apron: Null for none.
        extension: Boards that bring the jamb out to the wall.
        head_casing: The head's own, where it is not that of the legs.
        plinth: Blocks under a door's legs.
        sill_casing: A picture frame's sill's own, where it is not that of the legs.
        stool: Null for none.
        stop: A door's stop, for a door to be hung.
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


class CutListRequest(Request, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim specs they name, and the stock to cut from.

    `kerf` is what one cut eats, `end_trim` what is squared off each factory end, and an offcut of
    `keep_length` or more goes back on the rack. With no stock, parts are computed and no sticks. `include`
    names the sections of the answer that are only worked out when asked for; `shop` is how that shop works.

    Attributes:
        currency: ISO 4217 code; only repeated in the answer.
        groups: Openings trimmed together, or joined units whose stool is too long for a stick.
        movement: The wood, and the air its joints will live through: the answer then tells how far mitres
            open.
        planning_seconds: How long to search for cheaper sticks, all profiles together, where first-fit is not
            proven cheapest; 0 takes first-fit.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    openings: list[OpeningIn]
    trim_specs: dict[str, TrimIn]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[GroupIn] = []
    include: list[Section] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: ConditionsIn | None = None
    planning_seconds: float = 2.0
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    stock: list[StockIn] = []
    unit: Unit | None = None


class StockForSaleIn(Request, frozen=True, kw_only=True):
    """One profile's sticks at the yard. `turnable` stock is flat and square-edged, so mitred ends may share a
    cut.

    Attributes:
        profile: The profile's name, as the trim specs have it.
        sticks: The lengths to be had.
        turnable: Whether it is flat, square-edged stock.
    """

    profile: str
    sticks: list[StickIn]
    turnable: bool = False


class HouseIn(Request, frozen=True, kw_only=True):
    """What is said of a house as a whole.

    Attributes:
        name: What the house is called.
        currency: ISO 4217 code; only repeated in the answer.
        end_trim: What is squared off each factory end.
        groups: Openings trimmed together, each named by its mark; one that is named can neither go nor be
            renamed.
        keep_length: An offcut this long or longer goes on the rack.
        kerf: What one cut eats.
        movement: The wood, and the air its joints will live through: cut lists then tell how far mitres open.
        rounding: How lengths of the answers are rounded; its `to` decides the unit they are shown in.
        shop: How the shop works: its rates, wages, packages and saw.
        site_note: Anything about the site. Free text; may have several lines.
        stock: What the yard sells.
        trim_specs: Trim chosen for many openings, by name.
        unit: The unit of lengths written without one, here and in the openings.
    """

    name: str
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[GroupIn] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: ConditionsIn | None = None
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    site_note: str = ""
    stock: list[StockForSaleIn] = []
    trim_specs: dict[str, TrimIn] = {}
    unit: Unit | None = None


class Made(Result, frozen=True, kw_only=True):
    """A change that was made.

    Attributes:
        revision: The schedule's revision it made.
    """

    revision: int


class OffcutIn(Request, frozen=True, kw_only=True):
    """A length of stock on the rack.

    Attributes:
        profile: The profile's name, as the trim specs have it.
        length: From end to end.
        defects: Stretches no piece may touch.
        note: Where it came from, or stands. Free text; may have several lines.
        price: What using it is taken to cost. An amount of money as decimal text, at most two places.
    """

    profile: str
    length: LengthText
    defects: list[DefectIn] = []
    note: str = ""
    price: MoneyText = "0"


class ScheduleIn(Request, frozen=True, kw_only=True):
    """A house's schedule, with its openings and its rack where they are known already; an export looks the same.

    Attributes:
        name: What the house is called.
        currency: ISO 4217 code; only repeated in the answer.
        end_trim: What is squared off each factory end.
        groups: Openings trimmed together, each named by its mark; one that is named can neither go nor be
            renamed.
        keep_length: An offcut this long or longer goes on the rack.
        kerf: What one cut eats.
        movement: The wood, and the air its joints will live through: cut lists then tell how far mitres open.
        openings: In the order they are to be listed.
        rack: Offcuts on hand.
        rounding: How lengths of the answers are rounded; its `to` decides the unit they are shown in.
        shop: How the shop works: its rates, wages, packages and saw.
        site_note: Anything about the site. Free text; may have several lines.
        stock: What the yard sells.
        trim_specs: Trim chosen for many openings, by name.
        unit: The unit of lengths written without one, here and in the openings.
    """

    name: str
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[GroupIn] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: ConditionsIn | None = None
    openings: list[OpeningIn] = []
    rack: list[OffcutIn] = []
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    site_note: str = ""
    stock: list[StockForSaleIn] = []
    trim_specs: dict[str, TrimIn] = {}
    unit: Unit | None = None


class ScheduleOut(Result, frozen=True, kw_only=True):
    """A schedule as it stands, its openings aside.

    Attributes:
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        created_at: RFC 3339, in UTC.
        updated_at: RFC 3339, in UTC.
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


class TableOut(Result, frozen=True, kw_only=True):
    """One table of a sheet.

    Attributes:
        key: Its name, which `table` asks for in a CSV answer.
        caption: Its title.
        columns: Headings from left to right.
        rows: The cells, as they are printed.
    """

    key: str
    caption: str
    columns: list[str]
    rows: list[list[str]]


class SheetOut(Result, frozen=True, kw_only=True):
    """A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone.

    Attributes:
        name: What the sheet is.
        title: At its head.
        job: Whose house it is.
        tables: Every table, in order.
        notes: Cautions and notes, in order.
        labels: Each label's texts, on a sheet of labels.
    """

    name: str
    title: str
    job: str
    tables: list[TableOut]
    notes: list[str]
    labels: list[list[str]]
