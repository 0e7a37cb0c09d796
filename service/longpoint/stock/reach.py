"""What every way of searching does: raise the bound, dive at so many sticks, settle what a tally can give."""

from collections.abc import Iterable

from longpoint.lengths import Fraction

from .best import Best
from .bound import round_up
from .dive import Chosen, dive
from .effort import Effort
from .master import Box, Master
from .problem import ScaledCutting
from .remainder import solve_columns
from .settle import settle

__all__ = ["Reach"]

MOST_COLUMNS = 6000
NODES = 3000


class Reach:
    """The cutting, its linear program and the best so far.

    Attributes:
        problem: the cutting in units.
        wanted: how many of each item.
        master: its linear program.
        best: plan and bound.
        effort: to be counted.
    """

    def __init__(self, problem: ScaledCutting, master: Master, best: Best, effort: Effort) -> None:
        self.problem = problem
        self.wanted = [item.demand for item in problem.items]
        self.master = master
        self.best = best
        self.effort = effort
        self._stuck: int | None = None  # the least bound of what was given up

    @property
    def cut(self) -> int:
        """A bound past this leaves room for nothing cheaper than the best plan."""
        return (self.best.cost - self.best.step) * self.master.scale + 1

    def raise_to(self, bound: int) -> None:
        """Take a bound, in the master's unit, on everything still open."""
        least = bound if self._stuck is None else min(bound, self._stuck)
        self.best.raise_to(Fraction(least, self.master.scale))

    def give_up(self, bound: int) -> None:
        """Leave something open whose plans cost at least that; the bound on all can rise no further."""
        self._stuck = bound if self._stuck is None else min(self._stuck, bound)

    def take(self, chosen: Chosen | None, method: str) -> None:
        """Take what a dive or a program chose, if it is cheaper."""
        if chosen is not None:
            self.best.take(settle(self.problem, chosen), method)

    def dive_at(self, sticks: tuple[int, ...], bound: int, attempt: int) -> None:
        """Look for a plan with no more than those sticks, at what they are bound to cost."""
        cents = round_up(self.problem, Fraction(bound, self.master.scale))
        if cents < self.best.cost:
            box = Box((0,) * len(sticks), sticks)
            chosen = dive(self.problem, self.master, box, cents, cents, attempt, self.effort)
            self.take(chosen, "columns")

    def settle(self, sticks: tuple[int, ...], bound: int, attempts: Iterable[int]) -> bool:
        """More dives at those sticks, then every pattern that could matter there in one program.

        Returns:
            Whether it is settled: a plan at the bound was found, or there is none better than the best.
        """
        for attempt in attempts:
            self.dive_at(sticks, bound, attempt)
            if bound >= self.cut:
                return True
            if self.effort.stopped:
                return False
        box = Box((0,) * len(sticks), sticks)
        relaxed = self.master.relax(self.wanted, box, self.cut)
        most = self.best.cost - self.best.step
        spare = most * self.master.scale - relaxed.bound
        if spare < 0:
            return True
        columns = self.master.listed(self.wanted, sticks, relaxed.values, spare, MOST_COLUMNS)
        ended = False
        if columns is not None:
            goal = self.best.bound
            chosen, ended = solve_columns(
                self.problem, columns, self.wanted, sticks, most, goal, NODES, self.effort
            )
            self.take(chosen, "branching")
        if not ended:
            self.give_up(bound)
        return ended
