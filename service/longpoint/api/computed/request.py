"""What is asked of a house beside the house itself."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.sheets import LabelGrid
from longpoint.shop import Section
from longpoint.shop.house import House
from longpoint.shop.planning import PlanningSeconds

Sections = Annotated[tuple[Section, ...], Meta(max_length=len(Section))]


class CutListRequest(House, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim they name, and the stock to cut from.

    With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of openings
    alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece with its own, come to
    at most 4,000,000 bytes, and the seasons of all openings to 20,000. A sheet as HTML, PDF or SVG shows at most 2,500
    pieces.

    Attributes:
        planning_seconds: The time to search for cheaper sticks, in seconds, all profiles together, where the first
            plan is not proven cheapest. 0 takes the first plan.
        include: Sections of the answer that are only worked out when asked for.
    """

    planning_seconds: PlanningSeconds = 2.0
    include: Sections = ()


class LabelsRequest(CutListRequest, frozen=True, kw_only=True):
    """A house, and the labels its pieces are to have.

    Attributes:
        grid: Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on A4.
        skip: Places on the first sheet that are used up.
    """

    grid: LabelGrid | None = None
    skip: Annotated[int, Meta(ge=0, le=500)] = 0
