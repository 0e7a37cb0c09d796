"""Branching on the number of sticks, for cuttings with too many tallies to hold: boxes, the cheapest first."""

from dataclasses import dataclass, field
from heapq import heappop, heappush
from math import ceil, floor

import numpy as np

from .master import Box, Relaxed
from .reach import Reach

__all__ = ["branch"]

WHOLE = 1e-6
DIVES = 4  # at a leaf when it is the cheapest open


@dataclass(order=True, slots=True)
class Node:
    """A box to look into.

    Attributes:
        bound: no plan in it costs less; in the master's unit.
        number: of birth, to break ties the same way each time.
        box: how many sticks of each stock.
        sticks: whole numbers of sticks at which the linear program is content, once known.
        tried: dives made there.
    """

    bound: int
    number: int
    box: Box = field(compare=False)
    sticks: tuple[int, ...] | None = field(default=None, compare=False)
    tried: int = field(default=0, compare=False)


def branch(reach: Reach, root: Box) -> None:
    """Work until the plan is proven or the effort is spent."""
    _Branching(reach).run(root)


class _Branching:
    def __init__(self, reach: Reach) -> None:
        self._reach = reach
        self._heap: list[Node] = []
        self._born = 0

    def run(self, root: Box) -> None:
        reach = self._reach
        self._push(0, root)
        while self._heap and not reach.best.proven and not reach.effort.stopped:
            node = heappop(self._heap)
            reach.raise_to(node.bound)
            if reach.best.proven or node.bound >= reach.cut:
                break
            if node.sticks is None:
                self._branch(node)
            elif node.box.low[:-1] == node.box.high[:-1]:
                reach.settle(node.sticks, node.bound, range(DIVES, 2 * DIVES))
            else:
                self._leaf(node)
        if not reach.effort.stopped:
            reach.raise_to(reach.cut)

    def _push(self, bound: int, box: Box, sticks: tuple[int, ...] | None = None) -> None:
        if sum(box.low[:-1]) > box.high[-1] or sum(box.high[:-1]) < box.low[-1]:
            return
        if all(low <= high for low, high in zip(box.low, box.high, strict=True)):
            self._born += 1
            heappush(self._heap, Node(bound, self._born, box, sticks))

    def _branch(self, node: Node) -> None:
        """Relax a box; halve it where the number of sticks is broken, or keep it as a leaf."""
        reach = self._reach
        relaxed = reach.master.relax(reach.wanted, node.box, reach.cut, rough=True)
        bound = max(node.bound, relaxed.bound)
        if reach.effort.stopped:
            self._push(bound, node.box)
            return
        if bound >= reach.cut:
            return
        sticks = self._sticks(relaxed)
        broken = [min(number - floor(number), ceil(number) - number) for number in sticks]
        if max(broken) > WHOLE:
            at = (
                len(broken) - 1
                if broken[-1] > WHOLE
                else max(range(len(broken)), key=lambda one: broken[one])
            )
            low, high = node.box.low, node.box.high
            self._push(bound, Box(low, _with(high, at, floor(sticks[at]))))
            self._push(bound, Box(_with(low, at, floor(sticks[at]) + 1), high))
            return
        whole = tuple(round(number) for number in sticks)
        if relaxed.missing <= WHOLE:
            reach.dive_at(whole, bound, 0)
        self._push(bound, node.box, whole)

    def _leaf(self, node: Node) -> None:
        """The cheapest box left, content with whole sticks: look for a plan, then split it around them."""
        reach = self._reach
        assert node.sticks is not None
        for attempt in range(1, DIVES):
            reach.dive_at(node.sticks, node.bound, attempt)
            if node.bound >= reach.cut or reach.effort.stopped:
                self._push(node.bound, node.box, node.sticks)
                return
        low, high = node.box.low, node.box.high
        widths = [above - below for below, above in zip(low[:-1], high[:-1], strict=True)]
        at = max(range(len(widths)), key=lambda one: widths[one])
        here = node.sticks[at]
        self._push(node.bound, Box(low, _with(high, at, here - 1)))
        self._push(node.bound, Box(_with(low, at, here + 1), high))
        self._push(node.bound, Box(_with(low, at, here), _with(high, at, here)), node.sticks)

    def _sticks(self, relaxed: Relaxed) -> list[float]:
        totals = [0.0] * (len(self._reach.problem.stocks) + 1)
        for at in np.nonzero(relaxed.sticks)[0].tolist():
            totals[self._reach.master.columns[at].stock] += float(relaxed.sticks[at])
            totals[-1] += float(relaxed.sticks[at])
        return totals


def _with(values: tuple[int, ...], at: int, value: int) -> tuple[int, ...]:
    return (*values[:at], value, *values[at + 1 :])
