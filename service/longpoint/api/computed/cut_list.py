"""`/v1/cut-list`: a house's openings in; pieces, sticks, a buy list and what is left over out."""

from __future__ import annotations

from typing import Any

from litestar import Request, post
from litestar.di import NamedDependency
from litestar.params import JSONBody

from longpoint.api.answers.asked import ASKED, Asked
from longpoint.api.answers.kept import ready
from longpoint.api.answers.sheet import FILE_HEADERS, SHEET_OFFERS, file, sheet_reply, wanted_by
from longpoint.api.computed.cut_list_events import cut_list_events
from longpoint.api.computed.cut_list_work import CutListWork
from longpoint.api.computed.request import CutListRequest
from longpoint.api.computed.sheet_work import house_of
from longpoint.api.document.examples import CUT_LIST
from longpoint.api.document.examples_shapes import GROUPED
from longpoint.api.http.answer import Reply
from longpoint.api.http.negotiate import BOTH, EVENTS, SVG
from longpoint.api.http.operation import operation
from longpoint.api.http.request import ApiRequest
from longpoint.api.running.disconnect import unless_gone
from longpoint.api.running.threads import apart, apart_if_long, is_long, openings_of_work
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.lengths import length_writer
from longpoint.sheets import Sheet, SheetHouse, house_sticks, made
from longpoint.shop.answer import CutListAnswer


@post(
    "/v1/cut-list",
    **operation(
        "compute_cut_list",
        summary="Work out a house's cut list",
        tag="A house",
        examples={**CUT_LIST, **GROUPED},
        offers=(*SHEET_OFFERS, SVG, EVENTS),
        problems=(503,),
        headers=FILE_HEADERS,
    ),
    dependencies=ASKED,
)
async def compute_cut_list(
    data: JSONBody[CutListRequest], request: Request[Any, Any, Any], asked: NamedDependency[Asked]
) -> Reply[CutListAnswer]:
    """Every piece of every opening, the sticks they come from, what to buy and what is left over.

    Asked to, also the cuts in the order to make them, the materials, the hours and the money. The sticks are laid out
    first-fit at once; where that is not proven cheapest, a search of `planning_seconds` follows. Ask for
    `text/event-stream` to hear how it comes along: an event `progress` for each better plan or bound of a profile, then
    `answer` with what JSON would have been, or `problem`. As HTML or PDF it is a sheet to print, as CSV one of its
    tables, as SVG the sticks drawn to scale.
    """
    wanted = wanted_by(request)
    if wanted not in (*BOTH, EVENTS):
        house = await house_of(request, data, Sheet.CUT_LIST, asked)
        return await apart(lambda: _drawn(house, asked, wanted))
    pool: PlanningPool = request.app.state.planning
    size = openings_of_work(data)
    found = await apart_if_long(size, lambda: CutListWork(data))
    if isinstance(request, ApiRequest) and request.wanted == EVENTS:
        answer: Any = cut_list_events(found, pool, data, request)
        return answer  # type: ignore[no-any-return]
    if found.open:
        await unless_gone(request, found.better(pool, lambda _: None))
    write = length_writer(data.rounding)
    if not is_long(size):
        return Reply(found.answer(), write)
    return Reply(await apart(lambda: ready(found.answer(), wanted, write)), write)


def _drawn(house: SheetHouse, asked: Asked, wanted: str) -> Reply[CutListAnswer]:
    """The cut list as a sheet, or its sticks as a drawing."""
    if wanted == SVG:
        return file(house_sticks(house.cut_list, house.wording).encode(), SVG, asked.title, "sticks")
    return sheet_reply(made(house, Sheet.CUT_LIST), house.wording, wanted, asked.table)
