"""The house behind a sheet, worked out as the cut list's own answer is."""

from __future__ import annotations

from typing import Any

import msgspec
from litestar import Request

from longpoint.api.answers.asked import Asked
from longpoint.api.answers.sheet import check_printed, wanted_by
from longpoint.api.computed.cut_list_work import CutListWork
from longpoint.api.computed.request import CutListRequest
from longpoint.api.running.disconnect import unless_gone
from longpoint.api.running.threads import apart
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.sheets import RECIPES, Sheet, SheetHouse


async def house_of(
    request: Request[Any, Any, Any], data: CutListRequest, sheet: Sheet, asked: Asked
) -> SheetHouse:
    """The house worked out as far as a sheet needs it, its sticks searched for as long as the request says.

    Raises:
        InvalidRequest: with every fault of the house; when it has more pieces than the sheet shows.
        PlanningBusy: when too many requests wait already.
    """
    needed = msgspec.structs.replace(data, include=tuple(sorted(RECIPES[sheet].needs)))
    found = await apart(lambda: CutListWork(needed))
    check_printed(found.cut_list, sheet, wanted_by(request))
    if found.open:
        pool: PlanningPool = request.app.state.planning
        await unless_gone(request, found.better(pool, lambda _: None))
    cut_list, shop = await apart(found.done)
    return SheetHouse(cut_list, shop, asked.title, asked.paper, asked.feet)
