"""Types of the document's part "common". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import LengthText, MoneyText, Request, Result
from longpoint_sdk.types.basics import LengthOut, Unit
from longpoint_sdk.types.costs import CostOut
from longpoint_sdk.types.hours import HoursOut
from longpoint_sdk.types.materials import MaterialsOut
from longpoint_sdk.types.movement import ConditionsIn
from longpoint_sdk.types.parts import PartOut
from longpoint_sdk.types.plans import ProfilePlanOut
from longpoint_sdk.types.readings import ReadingsIn
from longpoint_sdk.types.saw_order import SawOrderOut
from longpoint_sdk.types.shop import ShopIn
from longpoint_sdk.types.stock import DefectIn, StickIn, StockIn
from longpoint_sdk.types.trim import TrimIn

if TYPE_CHECKING:
    Foot = Literal["floor", "picture_frame", "plinth", "stool"]
    """What the trim stands on."""
    Mode = Literal["down", "nearest", "up"]
    """Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long).
    """
    RoundTo = Literal["0.5 mm", "1 mm", "1/16 in", "1/32 in", "1/64 in", "1/8 in"]
    """The fineness of the marks a length is rounded to."""
    Section = Literal["cost", "hours", "materials", "saw_order"]
    """A part of the shop's answer."""
    SillAnswer = Literal["shim", "tapered_strip"]
    """What is done under a stool on a sill out of level: shims, or one tapered strip."""
    WallAnswer = Literal["extend", "flat", "lean"]
    """What is done where the wall does not lie flush: nothing that changes a size, casing that leans on it, or a
    jamb extension.
    """
else:
    Foot = str
    Mode = str
    RoundTo = str
    Section = str
    SillAnswer = str
    WallAnswer = str


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


class CutListRequest(Request, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim specs they name, and the stock to cut from.

    `kerf` is what one cut eats, `end_trim` what is squared off each factory end, and an offcut of
    `keep_length` or more goes back on the rack. With no stock, parts are computed and no sticks. `include`
    names the sections of the answer that are only worked out when asked for; `shop` is how that shop works.
    At most 50,000 pieces are worked out together, those of openings alike counted each, from at most 40,000
    remnants; their marks and profiles, each piece with its own, come to at most 4,000,000 bytes, and the
    seasons of all openings to 20,000. A sheet as HTML, PDF or SVG shows at most 2,500 pieces.

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
