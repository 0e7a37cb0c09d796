"""`/v1/materials`: what openings take beside their sticks."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.document.examples import MATERIALS
from longpoint.api.http.operation import operation
from longpoint.api.running.threads import apart_if_long, openings_of_work
from longpoint.shop import Caution, Materials, Section, work
from longpoint.shop.build import CutList, build_openings
from longpoint.shop.house import House
from longpoint.values import Value


class MaterialsAnswer(Value, frozen=True):
    """Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of.

    Attributes:
        materials: These are the materials to buy.
        cautions: They say what to know before work starts.
    """

    materials: Materials
    cautions: tuple[Caution, ...]


@post(
    "/v1/materials",
    **operation(
        "compute_materials", summary="Work out a house's materials", tag="A house", examples=MATERIALS
    ),
)
async def compute_materials(data: JSONBody[House]) -> MaterialsAnswer:
    """Nails, glue, caulk, filler, paint and the rest, each with what it was computed from, in packages as sold."""
    return await apart_if_long(openings_of_work(data), lambda: _answer(data))


def _answer(house: House) -> MaterialsAnswer:
    done = work(CutList(house, build_openings(house), ()), {Section.MATERIALS}, house.shop)
    assert done.materials is not None
    return MaterialsAnswer(done.materials, done.cautions)
