"""The search: how many sticks of each stock, cheapest first; which patterns, by diving.

The linear program's bound is weak mostly because it buys parts of sticks. Going through the whole numbers of
sticks in the order of their cost lifts the bound to what whole sticks cost; at the first numbers that the linear
program is content with there is nearly always a plan, and a dive finds it. Where there is none the patterns that
could still matter are listed and an integer program settles it.
"""

from .best import Best
from .branching import branch
from .dive import dive, quick_dive
from .effort import Effort
from .firstfit import count
from .master import Box, Master, Relaxed
from .pricing import Column, Pricer
from .problem import Problem
from .reach import Reach
from .tallies import Tallies

__all__ = ["Search"]

MOST_SEEDS = 500
ROOT = 0.6  # of the effort that the first relaxation may take
DIVES = 4  # at a tally before others of the same cost are tried
TRIES = 25  # at fewer sticks for the same cost
BANDS = 6  # times that the span of costs is halved before the tallies are too many


class Search:
    """Betters a plan and its bound until they meet or the effort is spent."""

    def __init__(self, problem: Problem, pricer: Pricer, best: Best, effort: Effort) -> None:
        self._reach = Reach(problem, Master(problem, pricer, effort), best, effort)

    def relax(self) -> Box:
        """Raise the bound by the linear program alone, and give the box it was solved in."""
        return self._relax()[0]

    def run(self) -> None:
        """Work until the plan is proven or the effort is spent."""
        reach = self._reach
        root, relaxed = self._relax()
        if not reach.best.proven:
            reach.take(quick_dive(reach.problem, reach.master, root, reach.effort), "columns")
        if not (reach.best.proven or reach.effort.stopped or self._by_tallies(root, relaxed)):
            branch(reach, root)
        if reach.best.proven and reach.best.sticks:
            self._fewer(root, relaxed)

    def _fewer(self, root: Box, relaxed: Relaxed) -> None:
        """Look for a plan at the same cost with fewer sticks; there seldom is one, and little is spent on it."""
        reach, scale = self._reach, self._reach.master.scale
        cents = reach.best.cost
        tallies = Tallies(reach.problem, root.high[:-1])
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

    def _relax(self) -> tuple[Box, Relaxed]:
        reach = self._reach
        self._seed()
        root = self._root()
        reach.master.seed(reach.wanted, root, MOST_SEEDS)
        relaxed = reach.master.relax(reach.wanted, root, reach.cut, rough=True)
        reach.raise_to(relaxed.bound)
        return root, relaxed

    def _by_tallies(self, root: Box, relaxed: Relaxed) -> bool:
        """Go through the tallies in bands of cost; False when even a narrow band holds too many."""
        reach = self._reach
        tallies = Tallies(reach.problem, root.high[:-1])
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

    def _seed(self) -> None:
        self._reach.master.add(
            [
                Column(pattern.stock, tuple(sorted(count(pattern.forms).items())), pattern.forms)
                for pattern, _ in self._reach.best.cuts or ()
            ]
        )

    def _root(self) -> Box:
        pieces = sum(self._reach.wanted)
        high = []
        for stock in self._reach.problem.stocks:
            most = pieces if stock.most is None else min(pieces, stock.most)
            high.append(min(most, self._reach.best.cost // stock.price) if stock.price else most)
        return Box((0,) * (len(high) + 1), (*high, min(pieces, sum(high))))
