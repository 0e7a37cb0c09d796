"""The wire's view of materials asked for by themselves."""

from __future__ import annotations

import msgspec

from longpoint.api.wire.base import Wire
from longpoint.api.wire.cut_list import Groups, Openings, TrimSpecs
from longpoint.api.wire.lengths import RoundingIn
from longpoint.api.wire.shop import ShopIn
from longpoint.api.wire.work import CautionOut, MaterialsOut
from longpoint.lengths import Unit


class MaterialsRequest(Wire):
    """Openings, the trim specs they name, the groups that some of them form, and how the shop works.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    openings: Openings
    trim_specs: TrimSpecs
    groups: Groups = []
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None


class MaterialsAnswer(msgspec.Struct, frozen=True):
    """Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of."""

    materials: MaterialsOut
    cautions: list[CautionOut]
