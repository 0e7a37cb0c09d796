"""The wire's view of a cut list: many openings, trim specs and stock in; parts, sticks and money out."""

from __future__ import annotations

from typing import Annotated

import msgspec
from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.api.wire.findings import FindingOut
from longpoint.api.wire.lengths import LengthOut, RoundingIn
from longpoint.api.wire.money import MoneyOut, MoneyText
from longpoint.api.wire.movement import ConditionsIn, OpenJointOut
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.parts import PartOut
from longpoint.api.wire.saw_order import SawOrderOut
from longpoint.api.wire.shop import Sections, ShopIn
from longpoint.api.wire.trim import TrimIn
from longpoint.api.wire.work import CautionOut, CostOut, HoursOut, MaterialsOut
from longpoint.lengths import Unit

Currency = Annotated[
    str, Meta(pattern=r"^[A-Z]{3}$", description="ISO 4217 code; only repeated in the answer.")
]


class DefectIn(Wire):
    """A stretch of a stick that no piece may touch, measured from its left end."""

    start: LengthText
    end: LengthText


Defects = Annotated[list[DefectIn], Meta(max_length=20)]


class StickIn(Wire):
    """A length the yard sells, its price, and how many there are where that is limited.

    Attributes:
        available: How many the yard has; as many as are needed when left out.
        defects: Stretches no piece may touch, on each of them.
    """

    length: LengthText
    price: MoneyText
    available: Annotated[int, Meta(ge=0, le=1_000_000)] | None = None
    defects: Defects = []


class RemnantIn(Wire):
    """A piece of stock on hand: used first where that is cheaper. Its price is what using it is taken to cost.

    Attributes:
        count: How many there are just so.
        defects: Stretches no piece may touch, on each of them.
    """

    length: LengthText
    price: MoneyText = "0"
    count: Annotated[int, Meta(ge=1, le=200)] = 1
    defects: Defects = []


class StockIn(Wire):
    """One profile's stock. `turnable` stock is flat and square-edged, so mitred ends may share a cut.

    `one_stick_each` asks that each opening's pieces come side by side from one stick, so that their grain and colour
    agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count as one:
    give each its own mark where each is to have its own stick.

    Attributes:
        profile: Its name, as the trim's pieces name theirs.
        sticks: The lengths the yard sells.
        remnants: What is on hand already.
    """

    profile: Name
    sticks: Annotated[list[StickIn], Meta(max_length=50)]
    remnants: Annotated[list[RemnantIn], Meta(max_length=200)] = []
    turnable: bool = False
    one_stick_each: bool = False


Openings = Annotated[list[OpeningIn], Meta(min_length=1, max_length=5000)]
TrimSpecs = Annotated[dict[Name, TrimIn], Meta(min_length=1, max_length=100)]


class GroupIn(Wire):
    """Openings trimmed together, left to right by their marks; or one of joined units, its `gaps` an empty list, whose
    stool is too long for a stick.

    `heads` are the heights of their head jambs' undersides over one level line, to be checked for being in line. With
    `gaps`, from each opening's right jamb face to the next one's left, they share one stool and apron; a stool longer
    than `stock_length` is scarfed over one of `solid`, places from the first opening's left jamb face, or over the
    middles of the gaps.

    Attributes:
        openings: Their marks, left to right.
    """

    mark: Name
    openings: Annotated[list[Name], Meta(min_length=1, max_length=20)]
    heads: Annotated[list[LengthText], Meta(max_length=20)] | None = None
    gaps: Annotated[list[LengthText], Meta(max_length=19)] | None = None
    stock_length: LengthText | None = None
    solid: Annotated[list[LengthText], Meta(max_length=100)] = []


Groups = Annotated[list[GroupIn], Meta(max_length=500)]
PlanningSeconds = Annotated[
    float,
    Meta(
        ge=0,
        le=30,
        description="How long to search for cheaper sticks, all profiles together, where first-fit is not proven "
        "cheapest; 0 takes first-fit.",
    ),
]


class CutListRequest(Wire):
    """A house or a part of one: openings, the trim specs they name, and the stock to cut from.

    `kerf` is what one cut eats, `end_trim` what is squared off each factory end, and an offcut of `keep_length` or
    more goes back on the rack. With no stock, parts are computed and no sticks. `include` names the sections of the
    answer that are only worked out when asked for; `shop` is how that shop works. At most 50,000 pieces are worked out
    together, those of openings alike counted each, from at most 40,000 remnants; their marks and profiles, each piece
    with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. A sheet as HTML, PDF or
    SVG shows at most 2,500 pieces.

    Attributes:
        groups: Openings trimmed together, or joined units whose stool is too long for a stick.
        movement: The wood, and the air its joints will live through: the answer then tells how far mitres open.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    openings: Openings
    trim_specs: TrimSpecs
    groups: Groups = []
    movement: ConditionsIn | None = None
    stock: Annotated[list[StockIn], Meta(max_length=100)] = []
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()
    kerf: LengthText = "1/8 in"
    end_trim: LengthText = "1/2 in"
    keep_length: LengthText = "24 in"
    planning_seconds: PlanningSeconds = 2.0
    currency: Currency = "USD"
    include: Sections = []
    shop: ShopIn | None = None


class OpeningOut(msgspec.Struct, frozen=True):
    """One opening worked out: its parts and what was assumed.

    `square_gap` is the joint gap left by taking its corners as square: nought where they are, or where their own
    angles were cut. `findings` are what is in the way, out of plane or out of level, and none of them has changed a
    size. `movement` is the widest mitre season by season, null where no conditions were given.

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


class PlacedOut(msgspec.Struct, frozen=True):
    """A piece's place on a stick: `start` from the stick's left end to the piece's left-most point.

    `turned` lies turned over; `reversed` lies end for end; `shares_cut` shares its left cut with the piece before.

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


class StickOut(msgspec.Struct, frozen=True):
    """One stick as it is cut. `offcut` is what remains; `kept` says whether it goes back on the rack.

    Attributes:
        number: Its number in the plan, counted from 1.
        remnant: Whether it is a remnant on hand and not one to buy.
        pieces: From its left end to its right.
    """

    number: int
    length: LengthOut
    remnant: bool
    price: MoneyOut
    pieces: list[PlacedOut]
    offcut: LengthOut
    kept: bool


class ProfilePlanOut(msgspec.Struct, frozen=True):
    """One profile's sticks. No plan costs less than `bound`; `proven` says that none is cheaper than this one.

    `split_openings` are those that were to come from one stick each and that no stick can hold.

    Attributes:
        gap: How far `cost` may be from the cheapest, as a share of it; 0 is proven.
        method: What found it: first_fit, columns or branching.
        seconds: How long the search took.
    """

    profile: str
    sticks: list[StickOut]
    cost: MoneyOut
    bound: MoneyOut
    gap: float
    proven: bool
    method: str
    seconds: float
    split_openings: list[str]


class BuyLineOut(msgspec.Struct, frozen=True):
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
    price: MoneyOut
    cost: MoneyOut


class OffcutOut(msgspec.Struct, frozen=True):
    """What goes back on the rack."""

    profile: str
    length: LengthOut
    quantity: int


class CutListOut(msgspec.Struct, frozen=True):
    """A cut list: every opening's parts, the sticks they come from, what to buy and what is left over.

    `cost` is the sticks'. The sections that `include` did not name are null.

    Attributes:
        plans: The sticks of each profile and what is cut from each.
        buy: What to buy, a line for each profile and length.
        proven: Whether no plan of any profile can be cheaper.
        offcuts: What goes back on the rack.
        notes: What was assumed or left out.
        cautions: What to know before starting.
        saw_order: The cuts in the order to make them.
        materials: What to buy beside the sticks.
        hours: Hands-on time, and drying waits.
        cost_sheet: The money by line, by opening and by room.
    """

    openings: list[OpeningOut]
    plans: list[ProfilePlanOut]
    buy: list[BuyLineOut]
    cost: MoneyOut
    currency: str
    proven: bool
    offcuts: list[OffcutOut]
    notes: list[str]
    cautions: list[CautionOut]
    saw_order: SawOrderOut | None = None
    materials: MaterialsOut | None = None
    hours: HoursOut | None = None
    cost_sheet: CostOut | None = None
