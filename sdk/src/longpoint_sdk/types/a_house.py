"""Types of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

import msgspec

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.common import (
    DefectIn,
    Hand,
    LengthOut,
    OpeningIn,
    OpeningOut,
    RoundingIn,
    StickIn,
    TrimIn,
    Unit,
)

if TYPE_CHECKING:
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
    Section = Literal["cost", "hours", "materials", "saw_order"]
    """A part of the shop's answer."""
    Task = Literal[
        "caulk", "cut", "fill", "final_coat", "fit", "measure", "nail", "paint", "rip", "rout", "set_up"
    ]
    """What hands-on time goes to."""
    Tool = Literal["hand_saw", "mitre_saw", "table_saw"]
else:
    MaterialCode = str
    OperationKind = str
    Section = str
    Task = str
    Tool = str


class AmountsOut(Result, frozen=True, kw_only=True):
    """Amounts by category. `stock` is what is in pieces, `waste` kerfs, trims and short offcuts, `kept_offcut`
    what goes back on the rack.
    """

    stock: str
    waste: str
    kept_offcut: str
    consumable: str
    labour: str
    total: str


class BoughtOut(Result, frozen=True, kw_only=True):
    """Packages of one size; `price` is of each, null where none was given."""

    package: str
    size: float
    count: int
    price: str | None
    cost: str | None


class BuyLineOut(Result, frozen=True, kw_only=True):
    """A line for the yard."""

    profile: str
    length: LengthOut
    quantity: int
    price: str
    cost: str


class CautionOut(Result, frozen=True, kw_only=True):
    """What to know before starting: it informs and defers, and approves nothing. `applies_to` names openings;
    empty for the whole job. `source` is what it leans on.
    """

    code: str
    text: str
    source: str
    applies_to: list[str]


class CostLineOut(Result, frozen=True, kw_only=True):
    """A line of the whole-house view. `by_opening` has each opening's amount in the order of `openings`; they
    add up to `amount`.
    """

    category: str
    name: str
    amount: str
    by_opening: list[str]


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
    """A material or a task that no price was given for: it costs nothing here."""

    category: str
    name: str


class CostOut(Result, frozen=True, kw_only=True):
    """The same money by line, by opening and by room: each view adds up to the same cent."""

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
    """Hands-on minutes of one task: `quantity` of `unit`, by the rule, at the rates named."""

    task: Task | str
    quantity: float
    unit: str
    minutes: float
    rule: str
    rates: list[str]
    by_opening: list[ShareOut]


class RateOut(Result, frozen=True, kw_only=True):
    """A rate that was reckoned with, and where it comes from."""

    name: str
    value: float
    unit: str
    source: str
    says: str


class WaitOut(Result, frozen=True, kw_only=True):
    """A drying wait, the whole job's together."""

    after: str
    hours: float
    rate: str


class HoursOut(Result, frozen=True, kw_only=True):
    """Hands-on hours by task, and drying waits, which are nobody's work, apart from them."""

    hands_on_hours: float
    tasks: list[LabourOut]
    wait_hours: float
    waits: list[WaitOut]
    rates: list[RateOut]


class FigureOut(Result, frozen=True, kw_only=True):
    """A number that something was computed from."""

    name: str
    value: float
    unit: str


class MaterialOut(Result, frozen=True, kw_only=True):
    """What is used of a material, waste included, and the packages that cover it.

    `rule` says how it was computed, `from` from which figures, `rates` at which rates.
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


class PlacedOut(Result, frozen=True, kw_only=True):
    """A piece's place on a stick: `start` from the stick's left end to the piece's left-most point.

    `turned` lies turned over; `reversed` lies end for end; `shares_cut` shares its left cut with the piece
    before.
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
    """One stick as it is cut. `offcut` is what remains; `kept` says whether it goes back on the rack."""

    number: int
    length: LengthOut
    remnant: bool
    price: str
    pieces: list[PlacedOut]
    offcut: LengthOut
    kept: bool


class ProfilePlanOut(Result, frozen=True, kw_only=True):
    """One profile's sticks. No plan costs less than `bound`; `proven` says that none is cheaper than this one."""

    profile: str
    sticks: list[StickOut]
    cost: str
    bound: str
    gap: float
    proven: bool
    method: str
    seconds: float


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
    """

    setup_count: int
    setup_count_by_opening: int
    setups: list[SetupOut]
    operations: list[OperationOut]


class CutListOut(Result, frozen=True, kw_only=True):
    """A cut list: every opening's parts, the sticks they come from, what to buy and what is left over.

    `cost` is the sticks'. The sections that `include` did not name are null.
    """

    openings: list[OpeningOut]
    plans: list[ProfilePlanOut]
    buy: list[BuyLineOut]
    cost: str
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
    """Openings trimmed together, left to right by their marks.

    `heads` are the heights of their head jambs' undersides over one level line, to be checked for being in
    line. With `gaps`, from each opening's right jamb face to the next one's left, they share one stool and
    apron; a stool longer than `stock_length` is scarfed over one of `solid`, places from the first opening's
    left jamb face, or over the middles of the gaps.
    """

    mark: str
    openings: list[str]
    gaps: list[LengthText] | None = None
    heads: list[LengthText] | None = None
    solid: list[LengthText] = []
    stock_length: LengthText | None = None


class PackageIn(Request, frozen=True, kw_only=True):
    """Something sold: its size in the material's unit (nails by the piece; glue, caulk, filler, primer and paint
    in fluid ounces; tape in feet; abrasive in sheets). Without a price it is bought and costs nothing in the
    answer.
    """

    material: MaterialCode
    name: str
    size: float
    price: str | None = None


class RatesIn(Request, frozen=True, kw_only=True):
    """The shop's own rates; the answer names the source of each rate it used."""

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
    inner_nail: str | None = None
    jamb_penetration: LengthText | None = None
    measure_minutes: float | None = None
    nail_end_distance: LengthText | None = None
    nail_minutes: float | None = None
    nail_spacing: LengthText | None = None
    nail_waste: float | None = None
    outer_nail: str | None = None
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
    """

    angle_step: float = 0.1
    sharpest_mitre: float = 50.0
    smallest_held: LengthText = "6 in"
    smallest_ripped: LengthText = "12 in"


class WagesIn(Request, frozen=True, kw_only=True):
    """What an hour of hands-on work costs: `hour`, and `tasks` that cost otherwise. Without either, labour has
    its hours and no money.
    """

    hour: str | None = None
    tasks: dict[str, str] = {}


class ShopIn(Request, frozen=True, kw_only=True):
    """How the shop works. A material named in `packages` is bought in these alone, up to four of each.
    `build_year` is the house's: paint of before 1978, or of unknown age, may hold lead.
    """

    build_year: int | None = None
    packages: list[PackageIn] = []
    rates: RatesIn = RatesIn()
    saw: SawIn = SawIn()
    wages: WagesIn | None = None


class RemnantIn(Request, frozen=True, kw_only=True):
    """A piece of stock on hand: used first where that is cheaper. Its price is what using it is taken to cost.

    Attributes:
        price: An amount of money as decimal text, at most two places.
    """

    length: LengthText
    count: int = 1
    defects: list[DefectIn] = []
    price: str = "0"


class StockIn(Request, frozen=True, kw_only=True):
    """One profile's stock. `turnable` stock is flat and square-edged, so mitred ends may share a cut."""

    profile: str
    sticks: list[StickIn]
    remnants: list[RemnantIn] = []
    turnable: bool = False


class CutListRequest(Request, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim specs they name, and the stock to cut from.

    `kerf` is what one cut eats, `end_trim` what is squared off each factory end, and an offcut of
    `keep_length` or more goes back on the rack. With no stock, parts are computed and no sticks. `include`
    names the sections of the answer that are only worked out when asked for; `shop` is how that shop works.

    Attributes:
        currency: ISO 4217 code; only repeated in the answer.
    """

    openings: list[OpeningIn]
    trim_specs: dict[str, TrimIn]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[GroupIn] = []
    include: list[Section] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    stock: list[StockIn] = []
    unit: Unit | None = None


class MaterialsAnswer(Result, frozen=True, kw_only=True):
    """Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of."""

    materials: MaterialsOut
    cautions: list[CautionOut]


class MaterialsRequest(Request, frozen=True, kw_only=True):
    """Openings, the trim specs they name, the groups that some of them form, and how the shop works."""

    openings: list[OpeningIn]
    trim_specs: dict[str, TrimIn]
    groups: list[GroupIn] = []
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    unit: Unit | None = None
