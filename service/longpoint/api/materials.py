"""`/v1/materials`: what openings take beside their sticks."""

from __future__ import annotations

import msgspec
from litestar import post
from litestar.params import JSONBody

from longpoint.api.cut_list import work_out
from longpoint.api.examples import MATERIALS
from longpoint.api.operation import operation
from longpoint.api.wire import Wire
from longpoint.api.wire_cut_list import CutListRequest, Openings, TrimSpecs
from longpoint.api.wire_lengths import RoundingIn
from longpoint.api.wire_shop import ShopIn
from longpoint.api.wire_work import CautionOut, MaterialsOut
from longpoint.api.work_sections import caution_out, materials_out
from longpoint.lengths import Unit
from longpoint.shop import Section


class MaterialsRequest(Wire):
    """Openings, the trim specs they name, and how the shop works."""

    openings: Openings
    trim_specs: TrimSpecs
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()
    shop: ShopIn | None = None


class MaterialsAnswer(msgspec.Struct, frozen=True):
    """Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of."""

    materials: MaterialsOut
    cautions: list[CautionOut]


@post(
    "/v1/materials",
    **operation("compute_materials", summary="Materials", tag="A house", examples=MATERIALS),
)
async def compute_materials(data: JSONBody[MaterialsRequest]) -> MaterialsAnswer:
    """Nails, glue, caulk, filler, paint and the rest, each with what it was computed from, in packages as sold."""
    _, done = work_out(
        CutListRequest(
            openings=data.openings,
            trim_specs=data.trim_specs,
            unit=data.unit,
            rounding=data.rounding,
            include=[Section.MATERIALS],
            shop=data.shop,
        )
    )
    assert done.materials is not None
    return MaterialsAnswer(materials_out(done.materials), [caution_out(each) for each in done.cautions])
