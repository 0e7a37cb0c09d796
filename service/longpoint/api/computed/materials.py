"""`/v1/materials`: what openings take beside their sticks."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.computed.cut_list_work import CutListWork, openings_of_work
from longpoint.api.document.examples import MATERIALS
from longpoint.api.http.operation import operation
from longpoint.api.wire.cut_list import CutListRequest
from longpoint.api.wire.materials import MaterialsAnswer, MaterialsRequest
from longpoint.api.write.sheet import apart_if_long
from longpoint.api.write.work_sections import caution_out, materials_out
from longpoint.shop import Section


@post(
    "/v1/materials",
    **operation(
        "compute_materials", summary="Work out a house's materials", tag="A house", examples=MATERIALS
    ),
)
async def compute_materials(data: JSONBody[MaterialsRequest]) -> MaterialsAnswer:
    """Nails, glue, caulk, filler, paint and the rest, each with what it was computed from, in packages as sold."""
    asked = CutListRequest(
        openings=data.openings,
        trim_specs=data.trim_specs,
        groups=data.groups,
        unit=data.unit,
        rounding=data.rounding,
        include=[Section.MATERIALS],
        shop=data.shop,
    )
    return await apart_if_long(openings_of_work(asked), lambda: _answer(asked))


def _answer(asked: CutListRequest) -> MaterialsAnswer:
    _, done = CutListWork(asked).done()
    assert done.materials is not None
    return MaterialsAnswer(materials_out(done.materials), [caution_out(each) for each in done.cautions])
