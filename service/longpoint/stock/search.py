"""The search: a good plan soon; then how many sticks of each stock, cheapest first; which patterns, by diving.

The linear program's bound is weak mostly because it buys parts of sticks. Going through the whole numbers of
sticks in the order of their cost lifts the bound to what whole sticks cost; at the first numbers that the linear
program is content with there is nearly always a plan, and a dive finds it. Where there is none the patterns that
could still matter are listed and an integer program settles it.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from .best import Best
from .branching import branch
from .columns import PatternColumn, counted
from .dive import dive, plunge
from .effort import Effort
from .master import Box, Master, Relaxed
from .pricing import Pricer
from .problem import ScaledCutting
from .reach import Reach
from .tallies import Tallies

__all__ = ["Known", "Search"]

LITTLE = 1e-6
MOST_SEEDS = 500
FEW_ITEMS = 60  # that patterns are listed for at the start
ROUGHLY, NEARLY = (
    1e-3,
    2e-5,
)  # shares of the cost that the bound may be short, before the first plunge and the next
FIRST, ROOT, SKETCH = (
    0.6,
    0.4,
    0.7,
)  # of the effort that the first relaxation may take, the second, and a sketch's
LOOSE, TIGHT = (
    0.01,
    0.0,
)  # of the last sticks' cost, how far a plunge may be from the cheapest choice of those
SHAPES = 3  # further plunges where the plan is far from the bound, and where there are too many tallies
FAR = 1e-3  # of the cost
DIVES = 4  # at a tally before others of the same cost are tried
TRIES = 25  # at fewer sticks for the same cost
BANDS = 6  # times that the span of costs is cut down before the tallies are too many


@dataclass(frozen=True, slots=True)
class Known:
    """What a coarser cutting teaches of a finer one.

    Attributes:
        values: what each item is worth in cents, about.
        columns: patterns that may be of use.
    """

    values: Sequence[float]
    columns: Sequence[PatternColumn]


class Search:
    """Betters a plan and its bound until they meet or the effort is spent.

    Args:
        problem: the cutting in units.
        pricer: of its stocks.
        best: plan and bound.
        effort: to be spent.
        known: what a coarser cutting has taught.
    """

    def __init__(
        self,
        problem: ScaledCutting,
        pricer: Pricer,
        best: Best,
        effort: Effort,
        known: Known | None = None,
    ) -> None:
        self._reach = Reach(problem, Master(problem, pricer, effort), best, effort)
        self._root = self._first_box()
        self._known = known

    def relax(self) -> None:
        """Raise the bound by the linear program alone."""
        self._start()
        self._relax(NEARLY)

    def sketch(self, near: float, whole: bool = True) -> Known:
        """Find a plan soon, for which a bound that short is enough, and say what was learned.

        Args:
            near: share of the cost.
            whole: take care over the last sticks, too.
        """
        self._start()
        relaxed = self._relax(near, self._reach.effort.piece(SKETCH))
        used = [self._reach.master.columns[at] for at in np.nonzero(relaxed.sticks > LITTLE)[0].tolist()]
        self._plunge(0, LOOSE if whole else None)
        return Known([value / self._reach.master.scale for value in relaxed.values], used)

    def run(self) -> None:
        """Work until the plan is proven or the effort is spent."""
        reach = self._reach
        self._start()
        relaxed = self._relax(ROUGHLY, reach.effort.piece(FIRST))
        self._plunge(0)
        if not (reach.best.proven or reach.effort.stopped):
            relaxed = self._relax(NEARLY, reach.effort.piece(ROOT))
            self._plunge(1)
            for attempt in range(2, 2 + SHAPES):
                if reach.best.cost - reach.best.bound > FAR * reach.best.cost:
                    self._plunge(attempt)
        if not (reach.best.proven or reach.effort.stopped or self._by_tallies(relaxed)):
            for attempt in range(2 + SHAPES, 2 + 2 * SHAPES):
                self._plunge(attempt)
            branch(reach, self._root)
        if reach.best.proven and reach.best.sticks:
            self._fewer(relaxed)

    def _start(self) -> None:
        reach = self._reach
        reach.master.add(
            [
                PatternColumn(pattern.stock, counted(pattern.forms), pattern.forms)
                for pattern, _ in reach.best.cuts or ()
            ]
        )
        if self._known is not None:
            reach.master.add(self._known.columns)
            reach.raise_to(reach.master.begin(reach.wanted, self._root, self._known.values))
        if len(reach.wanted) <= FEW_ITEMS:
            reach.master.seed(reach.wanted, self._root, MOST_SEEDS)

    def _relax(self, near: float, effort: Effort | None = None) -> Relaxed:
        reach = self._reach
        relaxed = reach.master.relax(
            reach.wanted, self._root, reach.cut, rough=True, near=near, effort=effort
        )
        reach.raise_to(relaxed.bound)
        reach.master.keep()
        return relaxed

    def _plunge(self, attempt: int, gap: float | None = TIGHT) -> None:
        reach = self._reach
        if not (reach.best.proven or reach.effort.stopped):
            ceiling = reach.best.cost - reach.best.step
            found = plunge(reach.problem, reach.master, self._root, ceiling, attempt, reach.effort, gap)
            reach.take(found, "columns")
            reach.master.back()

    def _fewer(self, relaxed: Relaxed) -> None:
        """Look for a plan at the same cost with fewer sticks; there seldom is one, and little is spent on it."""
        reach, scale = self._reach, self._reach.master.scale
        cents = reach.best.cost
        if any(not stock.price and stock.most is not None for stock in reach.problem.stocks):
            return  # such sticks are not counted by tallies
        tallies = Tallies(reach.problem, self._root.high[:-1], reach.effort)
        values = reach.master.worth_of_all(reach.wanted, relaxed)
        if not tallies.spend(cents, cents + 1, values, relaxed.worth, scale):
            return
        for _ in range(TRIES):
            found = tallies.cheapest
            if found is None or sum(found[1]) >= reach.best.sticks or reach.effort.stopped:
                return
            sticks = (*found[1], sum(found[1]))
            box = Box((0,) * len(sticks), sticks)
            at = reach.master.relax(reach.wanted, box, cents * scale + 1, content=True)
            if at.bound > cents * scale:
                tallies.cut(reach.master.worth_of_all(reach.wanted, at), at.worth)
            else:
                tallies.drop()
                chosen = dive(reach.problem, reach.master, box, cents, cents, 0, reach.effort)
                reach.take(chosen, "columns")

    def _by_tallies(self, relaxed: Relaxed) -> bool:
        """Go through the tallies in bands of cost; False when even a narrow band holds too many."""
        reach = self._reach
        tallies = Tallies(reach.problem, self._root.high[:-1], reach.effort)
        values, worth = reach.master.worth_of_all(reach.wanted, relaxed), relaxed.worth
        while not reach.best.proven and not reach.effort.stopped:
            least, most = reach.best.bound, reach.best.cost
            for _ in range(BANDS):
                if tallies.spend(least, most, values, worth, reach.master.scale):
                    break
                most = least + max(reach.best.step, (most - least) // 4)
            else:
                return False
            self._go_through(tallies, most)
        return True

    def _go_through(self, tallies: Tallies, most: int) -> None:
        """Try the tallies held, all of which cost less than ``most``."""
        reach, scale = self._reach, self._reach.master.scale
        hard: list[tuple[int, tuple[int, ...]]] = []
        while not reach.effort.stopped:
            found = tallies.cheapest
            while hard and (found is None or hard[0][0] < found[0]):
                cents, sticks = hard.pop(0)
                reach.settle(sticks, cents * scale, range(DIVES, 2 * DIVES))
                if reach.effort.stopped:
                    return
            reach.raise_to((most if found is None else found[0]) * scale)
            if found is None or reach.best.proven:
                return
            cents, counts = found
            sticks = (*counts, sum(counts))
            box = Box((0,) * len(sticks), sticks)
            at = reach.master.relax(reach.wanted, box, cents * scale + 1, content=True)
            if at.bound > cents * scale:
                tallies.cut(reach.master.worth_of_all(reach.wanted, at), at.worth)
            elif not reach.effort.stopped:
                tallies.drop()
                for attempt in range(DIVES):
                    reach.dive_at(sticks, cents * scale, attempt)
                if reach.best.cost > cents:
                    hard.append((cents, sticks))

    def _first_box(self) -> Box:
        reach = self._reach
        pieces = sum(reach.wanted)
        high = []
        for stock in reach.problem.stocks:
            most = pieces if stock.most is None else min(pieces, stock.most)
            high.append(min(most, reach.best.cost // stock.price) if stock.price else most)
        return Box((0,) * (len(high) + 1), (*high, min(pieces, sum(high))))
