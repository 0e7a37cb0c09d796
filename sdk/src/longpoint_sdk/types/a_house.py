"""Types of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.common import (
    DefectIn,
    LengthOut,
    OpeningIn,
    OpeningOut,
    RoundingIn,
    StickIn,
    TrimIn,
    Unit,
)


class BuyLineOut(Result, frozen=True, kw_only=True):
    """A line for the yard."""

    profile: str
    length: LengthOut
    quantity: int
    price: str
    cost: str


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


class CutListOut(Result, frozen=True, kw_only=True):
    """A cut list: every opening's parts, the sticks they come from, what to buy and what is left over."""

    openings: list[OpeningOut]
    plans: list[ProfilePlanOut]
    buy: list[BuyLineOut]
    cost: str
    currency: str
    proven: bool
    offcuts: list[OffcutOut]
    notes: list[str]
    cautions: list[str]


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
    `keep_length` or more goes back on the rack. With no stock, parts are computed and no sticks.

    Attributes:
        currency: ISO 4217 code; only repeated in the answer.
    """

    openings: list[OpeningIn]
    trim_specs: dict[str, TrimIn]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    rounding: RoundingIn = RoundingIn()
    stock: list[StockIn] = []
    unit: Unit | None = None
