"""Long work in threads, a few at a time."""

from __future__ import annotations

from collections.abc import Callable
from math import ceil
from typing import TypeVar

from anyio import CapacityLimiter, to_thread

from longpoint.api.http.problems import Problem
from longpoint.shop.house import House
from longpoint.texts import say

_AT_ONCE = 2
"""Sheets set at once: each takes a core while it is set, and the others wait their turn."""
_SOON_DONE = 12
"""Openings that take about as many milliseconds, with every section of the shop's work."""

ROWS = 300
"""Plain openings that are as much work as the rows in which an opening's mitered pieces may lie on a stick."""

T = TypeVar("T")
_limiters: list[CapacityLimiter] = []


class PlanningBusy(Problem, status=503, title="Every planner is busy"):
    """The service plans only so many cuttings at once and lets only so many wait. Try again after the seconds in the
    Retry-After header, or ask for `planning_seconds` of 0, which is answered first-fit without waiting."""


def planning_busy(seconds: float) -> PlanningBusy:
    """The problem of whoever would have to wait so long."""
    return PlanningBusy(say("problem", "planning.busy"), headers={"retry-after": str(ceil(seconds))})


async def apart(work: Callable[[], T]) -> T:
    """Do long work in a thread, so that the service goes on answering."""
    if not _limiters:
        _limiters.append(CapacityLimiter(_AT_ONCE))
    return await to_thread.run_sync(work, limiter=_limiters[0])


def is_long(openings: int) -> bool:
    """Whether work on so many openings is done in a thread; a little is done sooner than a thread would be at it."""
    return openings > _SOON_DONE


async def apart_if_long(openings: int, work: Callable[[], T]) -> T:
    """Work as long as that on so many openings, in a thread where that is long."""
    return await apart(work) if is_long(openings) else work()


def openings_of_work(house: House) -> int:
    """About as many plain openings as a house is work: one of many pieces counts for more, and so does what a plan has
    to choose from."""
    size = 0
    for one in house.openings:
        read = one.readings
        pieces = read.head_pieces or (60 if read.departure else 0)
        size += one.count * (1 + (pieces + len(read.sides or ()) + len(read.joined_widths or ())) // 6)
    for stock in house.stock:
        if stock.one_stick_each and stock.turnable:
            size += ROWS
        size += sum(len(stick.defects) for stick in stock.sticks)
        size += sum(len(on_hand.defects) for on_hand in stock.lengths_on_hand)
        size += len(stock.sticks) // 4 + sum(on_hand.count for on_hand in stock.lengths_on_hand) // 4
    return size
