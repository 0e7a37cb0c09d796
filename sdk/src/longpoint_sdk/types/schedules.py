"""Types of the document's part "schedules". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.common import OffcutIn, OpeningIn, RoundingIn, ShopIn, StockForSaleIn, TrimIn, Unit


class ScheduleIn(Request, frozen=True, kw_only=True):
    """A house's schedule, with its openings and its rack where they are known already; an export looks the same.

    Attributes:
        currency: ISO 4217 code; only repeated in the answer.
        openings: In the order they are to be listed.
        rack: Offcuts on hand.
        rounding: How lengths of the answers are rounded; its `to` decides the unit they are shown in.
        shop: How the shop works: its rates, wages, packages and saw.
        stock: What the yard sells.
        trim_specs: Trim chosen for many openings, by name.
        unit: The unit of lengths written without one, here and in the openings.
    """

    name: str
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    openings: list[OpeningIn] = []
    rack: list[OffcutIn] = []
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    site_note: str = ""
    stock: list[StockForSaleIn] = []
    trim_specs: dict[str, TrimIn] = {}
    unit: Unit | None = None


class ScheduleLine(Result, frozen=True, kw_only=True):
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
    created_at: str
    updated_at: str
    archived_at: str | None
