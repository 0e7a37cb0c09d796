"""Types of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.common import (
    CautionOut,
    ConditionsIn,
    DefectIn,
    MaterialsOut,
    OpeningIn,
    RoundingIn,
    Section,
    ShopIn,
    StickIn,
    TrimIn,
    Unit,
)


class GroupIn(Request, frozen=True, kw_only=True):
    """Openings trimmed together, left to right by their marks; or one of joined units, its `gaps` an empty list,
    whose stool is too long for a stick.

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
        planning_seconds: How long to search for cheaper sticks, all profiles together, where first-fit is not
            proven cheapest; 0 takes first-fit.
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
