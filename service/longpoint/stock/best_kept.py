"""The best plan so far that keeps earlier sticks: what is tried reads and betters it."""

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from time import monotonic

from .columns import counted
from .effort import Effort
from .firstfit import Cut, cost, rank
from .kept_most import Stick, without
from .laid import Plan, Progress
from .model import Cutting
from .naming import named
from .problem import ScaledCutting
from .refill import rest
from .standing import StickHeld
from .tidy import tidy

__all__ = ["BestKept", "Replanned"]


@dataclass(frozen=True, slots=True)
class Replanned:
    """A plan and the earlier sticks in it.

    Attributes:
        plan: layouts of the kept sticks first, each of one stick, in the order given; then the new ones.
        kept: names of the first layouts.
        most: whether it is known that no plan that costs no more keeps more.
    """

    plan: Plan
    kept: tuple[str, ...]
    most: bool = False


class BestKept:
    """The best plan so far and the standing sticks in it.

    Args:
        cutting: what is to be cut.
        problem: the same in units.
        held: the standing sticks that it allows.
        seconds: of work, keeping and all.
        began: when, on the monotonic clock.
        progress: called with cost and bound.
        better: called with every better plan.

    Attributes:
        sticks: stock and items of each standing stick.
        effort: to be spent.
        kept: places of the sticks in the plan.
        cuts: of all else; None as long as there is no plan.
        cost: its cents, those of the kept sticks among them.
        bound: cents no plan of the cutting costs less than.
        most: whether it is known that no plan that costs no more keeps more.
    """

    def __init__(
        self,
        cutting: Cutting,
        problem: ScaledCutting,
        held: list[StickHeld],
        seconds: float,
        began: float,
        progress: Callable[[Progress], None] | None,
        better: Callable[[Replanned], None] | None,
    ) -> None:
        self._cutting, self._problem, self._held = cutting, problem, held
        self.sticks: list[Stick] = [(one.stock, one.counts) for one in held]
        self.effort = Effort(seconds)
        self._began, self._progress, self._better = began, progress, better
        self.kept: tuple[int, ...] = ()
        self.cuts: list[Cut] | None = None
        self.cost = 0
        self.bound = 0
        self._method = "first_fit"
        self.most = False

    def match(self, cuts: Sequence[Cut], method: str, kept: tuple[int, ...] = ()) -> None:
        """Take a plan that keeps those, its other sticks that are as standing ones exchanged for these."""
        there = Counter[Stick]()
        for pattern, times in cuts:
            there[pattern.stock, counted(pattern.forms)] += times
        more: list[int] = []
        for at in sorted(set(range(len(self.sticks))) - set(kept)):
            if there[self.sticks[at]]:
                there[self.sticks[at]] -= 1
                more.append(at)
        others: list[Cut] = []
        for pattern, times in cuts:
            stick = pattern.stock, counted(pattern.forms)
            left = min(times, there[stick])
            there[stick] -= left
            if left:
                others.append((pattern, left))
        self.take(tuple(sorted((*kept, *more))), others, method)

    def take(self, kept: tuple[int, ...], cuts: list[Cut], method: str) -> None:
        """Take a plan if it is cheaper, or costs the same and keeps more, or is then the better one."""
        spent = self.price(kept) + cost(self._problem, cuts)
        if self.cuts is not None:
            now = self.cost, -len(self.kept), rank(self._problem, self.cuts)
            if (spent, -len(kept), rank(self._problem, cuts)) >= now:
                return
        self.kept, self.cuts, self.cost, self._method = kept, cuts, spent, method
        self.report()
        if self._better is not None:
            self._better(self.answer())

    def report(self) -> None:
        if self._progress is not None and self.cuts is not None:
            bound = min(self.bound, self.cost)
            self._progress(Progress(self.cost, bound, monotonic() - self._began))

    def tidied(self) -> None:
        """Gather the waste of the sticks that are not kept."""
        if self.cuts is not None:
            self.cuts = tidy(self._problem, self.cuts)

    def answer(self) -> Replanned:
        assert self.cuts is not None
        bound = min(self.bound, self.cost)
        why = self.effort.stopped
        if why != "clock":
            why = "proven" if bound == self.cost else why or "effort"
        held = [self._held[at] for at in self.kept]
        plan = Plan(
            self._cutting.profile,
            (*(one.layout for one in held), *named(self._cutting, self._problem, held, self.cuts)),
            self.cost,
            bound,
            monotonic() - self._began,
            self._method,
            why,
            self._problem.split,
            self.effort.spent,
        )
        return Replanned(plan, tuple(one.name for one in held), self.most)

    def rest(self, kept: Sequence[int]) -> tuple[ScaledCutting | None, list[int]]:
        """The cutting without those sticks, and how many of each item it still has to give."""
        left = without(self._problem, [self.sticks[at] for at in kept])
        remaining = [item.demand for item in left.items]
        return rest(self._problem, remaining, [stock.most for stock in left.stocks]), remaining

    def price(self, kept: Sequence[int]) -> int:
        return sum(self._held[at].layout.price_cents for at in kept)

    def loss(self, at: int) -> float:
        """Cents of that stick that its pieces are not worth, at what stock costs by length."""
        stock, counts = self.sticks[at]
        items = self._problem.items
        taken = sum(float(items[item].weight + items[item].cut) * count for item, count in counts)
        rate = min(one.price / (one.end - one.start) for one in self._problem.stocks)
        return self._problem.stocks[stock].price - rate * taken
