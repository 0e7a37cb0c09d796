"""The search: how many sticks of each stock, by branching; which patterns, by diving.

The linear program's bound is weak mostly because it buys parts of sticks. Branching on the number of sticks
of each stock, all together first, lifts the bound to what whole sticks cost; at that many sticks there is
nearly always a plan, and a dive finds it. Where there is none the patterns that could still matter are listed
and an integer program settles it.
"""

from dataclasses import dataclass, field
from fractions import Fraction
from heapq import heappop, heappush
from math import ceil, floor

import numpy as np

from .best import Best
from .bound import round_up
from .dive import Chosen, dive, quick_dive
from .effort import Effort
from .master import Box, Master, Relaxed
from .pricing import Column, Pricer
from .problem import Problem
from .remainder import solve_columns
from .settle import settle

__all__ = ["Search"]

WHOLE = 1e-6
DIVES = 4  # at a leaf when it is the cheapest open
MOST_COLUMNS = 6000
MOST_SEEDS = 500
NODES = 3000
ROOT = 0.6  # of the effort that the first relaxation may take


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


class Search:
    """Betters a plan and its bound until they meet or the effort is spent."""

    def __init__(self, problem: Problem, pricer: Pricer, best: Best, effort: Effort) -> None:
        self._problem = problem
        self._wanted = [item.demand for item in problem.items]
        self._best = best
        self._effort = effort
        self._master = Master(problem, pricer, effort)
        self._heap: list[Node] = []
        self._born = 0
        self._stuck: int | None = None  # the least bound of a box that was given up

    def relax(self) -> Box:
        """Raise the bound by the linear program alone, and give the box it was solved in."""
        self._seed()
        root = self._root()
        self._master.seed(self._wanted, root, MOST_SEEDS)
        most = max(1, int(ROOT * self._effort.left / self._master.seconds))
        self._raise(self._master.relax(self._wanted, root, self._cut, rough=True, pricings=most).bound)
        return root

    def run(self) -> None:
        """Work until the plan is proven or the effort is spent."""
        root = self.relax()
        if not self._best.proven:
            self._take(quick_dive(self._problem, self._master, root, self._effort), "columns")
        self._push(0, root)
        while self._heap and not self._best.proven and not self._effort.stopped:
            node = heappop(self._heap)
            self._raise(node.bound)
            if self._best.proven or node.bound >= self._cut:
                break
            if node.sticks is None:
                self._branch(node)
            elif node.box.low[:-1] == node.box.high[:-1]:
                self._settle(node)
            else:
                self._leaf(node)
        if not self._effort.stopped:
            self._raise(self._cut)

    @property
    def _cut(self) -> int:
        """A bound past this leaves room for nothing cheaper than the best plan."""
        return (self._best.cost - self._best.step) * self._master.scale + 1

    def _seed(self) -> None:
        for pattern, _ in self._best.cuts or ():
            counts = [0] * len(self._wanted)
            for form in pattern.forms:
                counts[form.item] += 1
            self._master.add(Column(pattern.stock, tuple(counts), pattern.forms))

    def _root(self) -> Box:
        pieces = sum(self._wanted)
        high = []
        for stock in self._problem.stocks:
            most = pieces if stock.most is None else min(pieces, stock.most)
            high.append(min(most, self._best.cost // stock.price) if stock.price else most)
        return Box((0,) * (len(high) + 1), (*high, min(pieces, sum(high))))

    def _push(self, bound: int, box: Box, sticks: tuple[int, ...] | None = None) -> None:
        if sum(box.low[:-1]) > box.high[-1] or sum(box.high[:-1]) < box.low[-1]:
            return
        if all(low <= high for low, high in zip(box.low, box.high, strict=True)):
            self._born += 1
            heappush(self._heap, Node(bound, self._born, box, sticks))

    def _raise(self, bound: int) -> None:
        """Take a bound on everything still open."""
        least = bound if self._stuck is None else min(bound, self._stuck)
        self._best.raise_to(Fraction(least, self._master.scale))

    def _branch(self, node: Node) -> None:
        """Relax a box; halve it where the number of sticks is broken, or keep it as a leaf."""
        relaxed = self._master.relax(self._wanted, node.box, self._cut, rough=True)
        bound = max(node.bound, relaxed.bound)
        if self._effort.stopped:
            self._push(bound, node.box)
            return
        if bound >= self._cut:
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
            self._dive_at(whole, bound, 0)
        self._push(bound, node.box, whole)

    def _leaf(self, node: Node) -> None:
        """The cheapest box left, content with whole sticks: look for a plan, then split it around them."""
        assert node.sticks is not None
        for attempt in range(1, DIVES):
            self._dive_at(node.sticks, node.bound, attempt)
            if node.bound >= self._cut or self._effort.stopped:
                self._push(node.bound, node.box, node.sticks)
                return
        low, high = node.box.low, node.box.high
        widths = [above - below for below, above in zip(low[:-1], high[:-1], strict=True)]
        at = max(range(len(widths)), key=lambda one: widths[one])
        here = node.sticks[at]
        self._push(node.bound, Box(low, _with(high, at, here - 1)))
        self._push(node.bound, Box(_with(low, at, here + 1), high))
        self._push(node.bound, Box(_with(low, at, here), _with(high, at, here)), node.sticks)

    def _settle(self, node: Node) -> None:
        """One number of each stick: more dives, then every pattern that could matter in one program."""
        assert node.sticks is not None
        for attempt in range(DIVES, 2 * DIVES):
            self._dive_at(node.sticks, node.bound, attempt)
            if node.bound >= self._cut or self._effort.stopped:
                self._push(node.bound, node.box, node.sticks)
                return
        relaxed = self._master.relax(self._wanted, node.box, self._cut)
        spare = (self._best.cost - self._best.step) * self._master.scale - relaxed.bound
        if spare < 0:
            return
        high = node.box.high
        columns = self._master.pricer.listed(self._wanted, high, relaxed.values, spare, MOST_COLUMNS)
        ended = False
        if columns is not None:
            chosen, ended = solve_columns(
                self._problem,
                columns,
                self._wanted,
                high,
                self._best.cost - self._best.step,
                self._best.bound,
                NODES,
                self._effort,
            )
            self._take(chosen, "branching")
        if not ended:
            self._stuck = node.bound if self._stuck is None else min(self._stuck, node.bound)

    def _dive_at(self, sticks: tuple[int, ...], bound: int, attempt: int) -> None:
        """Look for a plan with no more than those sticks, at what they are bound to cost."""
        cents = round_up(self._problem, Fraction(bound, self._master.scale))
        if cents < self._best.cost:
            box = Box((0,) * len(sticks), sticks)
            chosen = dive(self._problem, self._master, box, cents, cents, attempt, self._effort)
            self._take(chosen, "columns")

    def _take(self, chosen: Chosen | None, method: str) -> None:
        if chosen is not None:
            self._best.take(settle(self._problem, chosen), method)

    def _sticks(self, relaxed: Relaxed) -> list[float]:
        totals = [0.0] * (len(self._problem.stocks) + 1)
        for at in np.nonzero(relaxed.sticks)[0].tolist():
            totals[self._master.columns[at].stock] += float(relaxed.sticks[at])
            totals[-1] += float(relaxed.sticks[at])
        return totals


def _with(values: tuple[int, ...], at: int, value: int) -> tuple[int, ...]:
    return (*values[:at], value, *values[at + 1 :])
