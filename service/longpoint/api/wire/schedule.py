"""The wire's view of a stored house: its schedule, its openings, its revisions."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Text, Wire, WireOut
from longpoint.api.wire.cut_list import Currency, Defects, Groups, StickIn
from longpoint.api.wire.lengths import RoundingIn
from longpoint.api.wire.money import MoneyOut, MoneyText
from longpoint.api.wire.movement import ConditionsIn
from longpoint.api.wire.opening import HornsIn, OpeningIn, RevealsIn, WallLimitsIn, WidthsIn
from longpoint.api.wire.readings import ReadingsIn
from longpoint.api.wire.shop import ShopIn
from longpoint.api.wire.trim import TrimIn
from longpoint.geometry import Foot, SillAnswer, WallAnswer
from longpoint.lengths import Unit

MOST_OPENINGS = 5000
MOST_OFFCUTS = 200

Exact = Annotated[
    dict[str, str],
    Meta(
        description="Every length exactly, by its JSON pointer, as a fraction of an inch.",
        examples=[{"/readings/jamb_width": "245/8"}],
    ),
]
Moment = Annotated[str, Meta(description="RFC 3339, in UTC.", examples=["2026-03-02T14:05:09.120000Z"])]


class StockForSaleIn(Wire):
    """One profile's sticks at the yard. `turnable` stock is flat and square-edged, so mitred ends may share a cut.

    Attributes:
        profile: The profile's name, as the trim specs have it.
        sticks: The lengths to be had.
        turnable: Whether it is flat, square-edged stock.
    """

    profile: Name
    sticks: Annotated[list[StickIn], Meta(max_length=50)]
    turnable: bool = False


class OffcutIn(Wire):
    """A length of stock on the rack.

    Attributes:
        profile: The profile's name, as the trim specs have it.
        length: From end to end.
        price: What using it is taken to cost.
        defects: Stretches no piece may touch.
        note: Where it came from, or stands.
    """

    unit_is_stored: ClassVar[bool] = True

    profile: Name
    length: LengthText
    price: MoneyText = "0"
    defects: Defects = []
    note: Text = ""


class HouseIn(Wire):
    """What is said of a house as a whole.

    Attributes:
        name: What the house is called.
        site_note: Anything about the site.
        unit: The unit of lengths written without one, here and in the openings.
        rounding: How lengths of the answers are rounded; its `to` decides the unit they are shown in.
        trim_specs: Trim chosen for many openings, by name.
        stock: What the yard sells.
        kerf: What one cut eats.
        end_trim: What is squared off each factory end.
        keep_length: An offcut this long or longer goes on the rack.
        shop: How the shop works: its rates, wages, packages and saw.
        groups: Openings trimmed together, each named by its mark; one that is named can neither go nor be renamed.
        movement: The wood, and the air its joints will live through: cut lists then tell how far mitres open.
    """

    name: Name
    site_note: Text = ""
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()
    trim_specs: Annotated[dict[Name, TrimIn], Meta(max_length=100)] = {}
    stock: Annotated[list[StockForSaleIn], Meta(max_length=100)] = []
    kerf: LengthText = "1/8 in"
    end_trim: LengthText = "1/2 in"
    keep_length: LengthText = "24 in"
    currency: Currency = "USD"
    shop: ShopIn | None = None
    groups: Groups = []
    movement: ConditionsIn | None = None


class ScheduleIn(HouseIn):
    """A house's schedule, with its openings and its rack where they are known already; an export looks the same.

    Attributes:
        openings: In the order they are to be listed.
        rack: Offcuts on hand.
    """

    openings: Annotated[list[OpeningIn], Meta(max_length=MOST_OPENINGS)] = []
    rack: Annotated[list[OffcutIn], Meta(max_length=2000)] = []


class ScheduleLine(WireOut):
    """A schedule in a list.

    Attributes:
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        archived_at: When it was archived; null when it is not.
    """

    id: str
    name: str
    revision: int
    opening_count: int
    created_at: Moment
    updated_at: Moment
    archived_at: Moment | None


class ScheduleOut(WireOut):
    """A schedule as it stands, its openings aside.

    Attributes:
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        archived_at: When it was archived; null when it is not.
        house: What is said of the house as a whole, as it was sent.
    """

    id: str
    revision: int
    opening_count: int
    created_at: Moment
    updated_at: Moment
    archived_at: Moment | None
    house: HouseIn
    exact: Exact


class OpeningStored(WireOut):
    """An opening as it was sent, and the exact value of every length in it.

    Attributes:
        revision: The schedule's revision that last changed it.
        position: Its place in the schedule's order; places may be skipped.
    """

    id: str
    revision: int
    position: int
    mark: str
    room: str
    trim: str
    count: int
    foot_style: Foot
    readings: ReadingsIn
    reveals: RevealsIn
    square_gap: str
    horns: HornsIn
    widths: WidthsIn
    without_apron: bool
    wall_answer: WallAnswer
    wall_limits: WallLimitsIn
    sill_answer: SillAnswer
    exact: Exact


class OffcutStored(WireOut):
    """A length of stock on the rack, as it was sent.

    Attributes:
        revision: The schedule's revision that put it there.
    """

    id: str
    revision: int
    profile: str
    length: str
    price: MoneyOut
    defects: Defects
    note: str
    exact: Exact


class RevisionOut(WireOut):
    """One write to a schedule.

    Attributes:
        number: Counts from 1; the latest is the schedule as it stands.
        who: The name of the key that wrote.
        key_id: The id of that key; null where no keys are made.
        action: What was done.
        why: The reason that was given.
        digest: Covers everything that was ever written to the schedule, up to this revision.
    """

    number: int
    at: Moment
    who: str
    key_id: str | None
    action: str
    why: str
    digest: str


class ItemChanged(WireOut):
    """One thing that a revision wrote.

    Attributes:
        kind: What kind of thing it is.
        id: Its id.
        mark: The opening's mark, where it is an opening that stays.
        gone: Whether it went.
    """

    kind: Literal["schedule", "opening", "piece", "offcut"]
    id: str
    mark: str | None
    gone: bool


class RevisionDetail(RevisionOut):
    """One write to a schedule, with all it wrote.

    Attributes:
        wrote: Each thing once.
    """

    wrote: list[ItemChanged]


class Made(WireOut):
    """A change that was made.

    Attributes:
        revision: The schedule's revision it made.
    """

    revision: int


class RestoreIn(Wire):
    """Which revision to go back to.

    Attributes:
        revision: Its number.
    """

    revision: Annotated[int, Meta(ge=1, le=2_000_000_000)]
