"""`/v1/cut-list`: a house's openings in; parts, sticks, a buy list and what is left over out."""

from __future__ import annotations

from typing import Any

from litestar import Request, post
from litestar.params import JSONBody

from longpoint.api.cut_list_events import cut_list_events
from longpoint.api.cut_list_work import CutListWork
from longpoint.api.disconnect import unless_gone
from longpoint.api.examples import CUT_LIST
from longpoint.api.examples_shapes import GROUPED
from longpoint.api.negotiate import BOTH, EVENTS
from longpoint.api.operation import operation
from longpoint.api.planning_pool import PlanningPool
from longpoint.api.request import ApiRequest
from longpoint.api.wire_cut_list import CutListOut, CutListRequest


@post(
    "/v1/cut-list",
    **operation(
        "compute_cut_list",
        summary="A house",
        tag="A house",
        examples={**CUT_LIST, **GROUPED},
        offers=(*BOTH, EVENTS),
        problems=(503,),
    ),
)
async def compute_cut_list(data: JSONBody[CutListRequest], request: Request[Any, Any, Any]) -> CutListOut:
    """Every part of every opening, the sticks they come from, what to buy and what is left over.

    Asked to, also the cuts in the order to make them, the materials, the hours and the money. The sticks are laid out
    first-fit at once; where that is not proven cheapest, a search of `planning_seconds` follows. Ask for
    `text/event-stream` to hear how it comes along: an event `progress` for each better plan or bound of a profile, then
    `answer` with what JSON would have been, or `problem`.
    """
    pool: PlanningPool = request.app.state.planning
    found = CutListWork(data)
    if isinstance(request, ApiRequest) and request.wanted == EVENTS:
        answer: Any = cut_list_events(found, pool, data.planning_seconds, request)
        return answer  # type: ignore[no-any-return]
    if found.open:
        await unless_gone(request, found.better(pool, lambda _index, _step: None))
    return found.answer()
