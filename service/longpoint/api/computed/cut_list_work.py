"""A house worked out in steps: its openings and a first plan at once, better plans as long as there is time."""

from __future__ import annotations

from longpoint.api.computed.request import CutListRequest
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.jobs.searches import ReportStep, search
from longpoint.shop import ShopWork, work
from longpoint.shop.answer import CutListAnswer, cut_list_answer
from longpoint.shop.build import CutList
from longpoint.shop.planning import Planning


class CutListWork(Planning):
    """A request being worked out.

    Raises:
        Refusal: with every fault of the geometry, else of the stock.
    """

    def __init__(self, data: CutListRequest) -> None:
        super().__init__(data, searched=data.planning_seconds > 0)
        self._data = data

    async def better(self, pool: PlanningPool, report: ReportStep) -> None:
        """Search for better plans in the time the request gives.

        Raises:
            Refusal: when no plan gives every piece.
            PlanningBusy: when too many requests wait already.
        """
        await search(self, pool, self._data.planning_seconds, report)

    def done(self) -> tuple[CutList, ShopWork]:
        """The house worked out, and the sections of the shop's work that were asked for."""
        cut_list = self.cut_list
        return cut_list, work(cut_list, frozenset(self._data.include), self._data.shop)

    def answer(self) -> CutListAnswer:
        """The whole answer."""
        return cut_list_answer(*self.done())
