"""Types of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import Request, Result
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import CautionOut, GroupIn, OpeningIn, RoundingIn
from longpoint_sdk.types.materials import MaterialsOut
from longpoint_sdk.types.shop import ShopIn
from longpoint_sdk.types.trim import TrimIn


class MaterialsAnswer(Result, frozen=True, kw_only=True):
    """Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of."""

    materials: MaterialsOut
    cautions: list[CautionOut]


class MaterialsRequest(Request, frozen=True, kw_only=True):
    """Openings, the trim specs they name, the groups that some of them form, and how the shop works.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    openings: list[OpeningIn]
    trim_specs: dict[str, TrimIn]
    groups: list[GroupIn] = []
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None
    unit: Unit | None = None
