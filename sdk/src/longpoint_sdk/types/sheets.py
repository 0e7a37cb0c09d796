"""Types of the document's part "sheets". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import GroupIn, OpeningIn, RoundingIn, Section
from longpoint_sdk.types.movement import ConditionsIn
from longpoint_sdk.types.shop import ShopIn
from longpoint_sdk.types.stock import StockIn
from longpoint_sdk.types.trim import TrimIn


class LabelGridIn(Request, frozen=True, kw_only=True):
    """Where labels lie on their sheet.

    Attributes:
        across: Labels side by side.
        down: Labels under one another.
        width: Of one label.
        height: Of one label.
        left: From the sheet's left edge to the first label.
        top: From the sheet's top edge to the first label.
        gap_across: Between labels side by side.
        gap_down: Between labels under one another.
    """

    across: int
    down: int
    width: LengthText
    height: LengthText
    left: LengthText
    top: LengthText
    gap_across: LengthText = "0 in"
    gap_down: LengthText = "0 in"


class LabelsRequest(Request, frozen=True, kw_only=True):
    """A house, and the labels its pieces are to have.

    Attributes:
        currency: ISO 4217 code; only repeated in the answer.
        grid: Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on
            A4.
        groups: Openings trimmed together, or joined units whose stool is too long for a stick.
        movement: The wood, and the air its joints will live through: the answer then tells how far mitres
            open.
        planning_seconds: How long to search for cheaper sticks, all profiles together, where first-fit is not
            proven cheapest; 0 takes first-fit.
        skip: Places on the first sheet that are used up.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    openings: list[OpeningIn]
    trim_specs: dict[str, TrimIn]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    grid: LabelGridIn | None = None
    groups: list[GroupIn] = []
    include: list[Section] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: ConditionsIn | None = None
    planning_seconds: float = 2.0
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    skip: int = 0
    stock: list[StockIn] = []
    unit: Unit | None = None
