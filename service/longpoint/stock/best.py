"""The best plan so far and the bound on all plans: what every part of the search reads and betters."""

from collections.abc import Callable, Sequence

from longpoint.lengths import Fraction

from .bound import round_up
from .firstfit import Cut, cost, rank
from .problem import ScaledCutting

__all__ = ["Best"]


class Best:
    """The best plan and bound so far.

    Args:
        problem: the cutting in units.
        cuts: a plan to start from, if there is one.
        bound: cents no plan costs less than.
        report: called whenever the plan or the bound changes.
        limit: cents past which a plan is of no use; None when any is.

    Attributes:
        cuts: the best plan, or None as long as there is none of use.
        cost: its cents; more than any plan's of use as long as there is none, and then, proven, there is none.
        bound: cents no plan costs less than.
        method: what found the plan.
        stopped: why the search could not be made as it should.
        step: what all costs are multiples of.
    """

    def __init__(
        self,
        problem: ScaledCutting,
        cuts: list[Cut] | None,
        bound: int,
        report: Callable[["Best"], None] | None = None,
        limit: int | None = None,
    ) -> None:
        self._problem = problem
        self._report = report
        self.step = max(1, round_up(problem, Fraction(1)))
        self._most = self._more_than_any()
        if limit is not None:
            self._most = min(self._most, limit // self.step * self.step + self.step)
        self.cuts = cuts if cuts is not None and cost(problem, cuts) < self._most else None
        self.cost = self._most if self.cuts is None else cost(problem, self.cuts)
        self.bound = min(bound, self.cost)
        self.method = "first_fit"
        self.stopped: str | None = None

    @property
    def proven(self) -> bool:
        """Whether nothing is left to find."""
        return self.bound >= self.cost

    def take(self, cuts: Sequence[Cut], method: str) -> None:
        """Take a plan if it is cheaper, or costs the same with fewer sticks or fewer layouts."""
        better = self.cuts is None or rank(self._problem, cuts) < rank(self._problem, self.cuts)
        if better and cost(self._problem, cuts) < self._most:
            self.cuts, self.cost, self.method = list(cuts), cost(self._problem, cuts), method
            self.report()

    @property
    def sticks(self) -> int:
        """How many the best plan takes."""
        return sum(times for _, times in self.cuts or ())

    def raise_to(self, bound: Fraction | int) -> None:
        """Take a bound, rounded up to a sum of prices, if it is higher."""
        cents = min(round_up(self._problem, Fraction(bound)), self.cost)
        if cents > self.bound:
            self.bound = cents
            self.report()

    def report(self) -> None:
        """Tell whoever listens."""
        if self._report is not None:
            self._report(self)

    def _more_than_any(self) -> int:
        pieces = sum(item.demand for item in self._problem.items)
        return self.step + pieces * max(stock.price for stock in self._problem.stocks)
