"""Plan anew and leave alone what need not change: of plans at one cost, the one with most sticks of an earlier one.

The cutting is searched first, as ``plan`` does it. Then all the earlier sticks that can still be cut are kept and the
rest is planned for what is left of that cost. Where there is no such plan some are opened, the most wasteful first, and
an integer program chooses which of those to keep; with all of them opened its answer is the most that can be kept.
"""

from collections.abc import Callable, Sequence
from time import monotonic

from .best import Best
from .best_kept import BestKept, Replanned
from .bound import material_bound, material_short
from .firstfit import Cut, first_fit
from .kept_most import kept_most
from .laid import Plan, Progress
from .model import Budget, Cutting
from .planner import STANDARD, scaled, unmet
from .problem import ScaledCutting
from .refill import restored
from .standing import Standing, StickHeld, still_cut
from .work_out import work_out

__all__ = ["Replanned", "Standing", "replan"]

KEEPING = 0.4  # of the budget, on top of it, for keeping sticks where there are any
KEEP_ALL, CHOOSE = 0.3, 0.5  # of what is left, for the plan that keeps all, and for each choice after it
OPENED = 8  # earlier sticks opened first; then twice as many, and so on


def replan(
    cutting: Cutting,
    standing: Sequence[Standing],
    budget: Budget = STANDARD,
    progress: Callable[[Progress], None] | None = None,
    better: Callable[[Replanned], None] | None = None,
) -> Replanned:
    """Plan a cutting so that as few sticks of an earlier plan change as the cheapest cost found allows.

    A standing stick that the cutting no longer allows just as it was laid out is left out; of two that want the same
    pieces or the same stock, the one given first stays. With no budget every other one is kept, whatever it costs, as
    long as first-fit finds a place for the rest. With one, the plan costs no more than ``plan`` finds with it; keeping
    takes up to four tenths more, and what the search left over.

    Where ``stopped`` is the clock, the plan may be proven cheapest all the same: another run may keep other sticks.

    Args:
        cutting: pieces and stock of one profile.
        standing: sticks of an earlier plan, those first that should rather stay.
        budget: how hard to search, keeping aside.
        progress: called with the cost and bound so far, whenever one of them changes.
        better: called with every plan that is cheaper, or costs the same and keeps more, before the work is done.

    Raises:
        StockError: the cutting makes no sense, or no plan gives every piece; with every fault.
    """
    began = monotonic()
    problem = scaled(cutting, budget)
    if not problem.items:
        return Replanned(Plan(cutting.profile, (), 0, 0, monotonic() - began, "first_fit"), (), True)
    held = still_cut(cutting, problem, standing)
    seconds = budget.seconds * (1 + KEEPING) if held else budget.seconds
    best = BestKept(cutting, problem, held, seconds, began, progress, better)
    return _Replanning(cutting, problem, held, not budget.seconds, best).run()


class _Replanning:
    """What is tried, one after the other, to better the best."""

    def __init__(
        self, cutting: Cutting, problem: ScaledCutting, held: Sequence[StickHeld], quick: bool, best: BestKept
    ) -> None:
        self._cutting, self._problem, self._held = cutting, problem, held
        self._quick, self._best = quick, best

    def run(self) -> Replanned:
        """Search the cutting, then keep what can be kept."""
        everything = tuple(range(len(self._held)))
        whole = self._search(everything)
        if not self._quick and self._best.cuts is not None:
            if len(self._best.kept) < len(everything):
                self._keep_all(everything)
            if len(self._best.kept) < len(everything):
                self._open_some(whole)
            self._best.tidied()
        self._best.most = self._best.most or len(self._best.kept) == len(everything)
        return self._best.answer()

    def _search(self, everything: tuple[int, ...]) -> list[Cut] | None:
        """The whole cutting, as ``plan`` does it: its plan, the sticks in it that stand already kept."""
        problem, effort = self._problem, self._best.effort.piece(1 / (1 + KEEPING) if self._held else 1.0)
        effort.reading(len(self._cutting.pieces))
        self._best.bound = material_bound(problem)
        known: list[Cut] | None = None

        def report(best: Best) -> None:
            nonlocal known
            self._best.bound = max(self._best.bound, best.bound)
            if best.cuts is not None and best.cuts is not known:
                known = best.cuts
                self._best.match(best.cuts, best.method)
            self._best.report()

        self._first_fit(everything)
        if self._quick and self._best.cuts is not None:
            return None
        cuts, left_over = first_fit(problem)
        best = Best(problem, cuts, self._best.bound, report)
        best.report()
        if not self._quick and not best.proven:
            work_out(problem, best, effort)
        if self._best.cuts is None:
            raise unmet(self._cutting, problem, left_over, sure=not self._quick and effort.stopped is None)
        return best.cuts

    def _first_fit(self, everything: tuple[int, ...]) -> None:
        """Keep all and first-fit the rest or, where that leaves pieces over, fewer and fewer."""
        number = len(everything)
        while number and self._best.cuts is None:
            kept = everything[:number]
            small, remaining = self._best.rest(kept)
            cuts = [] if small is None else first_fit(small)[0]
            if cuts is not None:
                self._best.take(kept, restored(remaining, cuts), "first_fit")
            number //= 2

    def _keep_all(self, everything: tuple[int, ...]) -> None:
        small, remaining = self._best.rest(everything)
        if small is not None:
            self._search_rest(everything, small, remaining, KEEP_ALL)

    def _open_some(self, whole: Sequence[Cut] | None) -> None:
        """Keep all but a few, and choose among those; more and more of them, as long as the effort lasts."""
        order = sorted(range(len(self._held)), key=lambda at: (-self._best.loss(at), at))
        failed, size = 0, OPENED
        while not self._best.effort.stopped:
            size = min(size, len(order))
            if self._choose(sorted(order[:size]), () if size < len(order) else whole or ()):
                while size - failed > 1 and not self._best.effort.stopped:
                    middle = (failed + size) // 2
                    if self._choose(sorted(order[:middle]), ()):
                        size = middle
                    else:
                        failed = middle
                return
            if size == len(order):
                return
            failed, size = size, 2 * size

    def _choose(self, opened: list[int], known: Sequence[Cut]) -> bool:
        """Keep all that are not opened, and the most of those that are.

        Returns:
            Whether a plan was found that keeps more than the one so far, and not known to be the best of these.
        """
        fixed = tuple(at for at in range(len(self._held)) if at not in set(opened))
        small, remaining = self._best.rest(fixed)
        if small is None:
            return False
        spent = self._best.price(fixed)
        places = {item: at for at, item in enumerate(item for item, left in enumerate(remaining) if left)}
        sticks = [
            (
                self._best.sticks[at][0],
                tuple((places[item], count) for item, count in self._best.sticks[at][1]),
            )
            for at in opened
        ]
        span = max(0, self._best.bound - spent), self._best.cost - spent
        if material_bound(small) > span[1]:
            return False
        before = len(self._best.kept)
        choice = kept_most(
            small, sticks, span, max(0, before + 1 - len(fixed)), known, self._best.effort.piece(CHOOSE)
        )
        if choice.kept is not None:
            kept = tuple(sorted((*fixed, *(opened[at] for at in choice.kept))))
            self._best.take(kept, restored(remaining, choice.cuts), "branching")
        elif not choice.sure and len(fixed) > before:
            self._search_rest(fixed, small, remaining, CHOOSE)
        self._best.most = choice.sure and not fixed
        return len(self._best.kept) > before and not choice.sure

    def _search_rest(
        self, kept: tuple[int, ...], small: ScaledCutting, remaining: Sequence[int], share: float
    ) -> None:
        """Keep those, and search for what remains a plan that costs no more in all than the one so far."""
        spent = self._best.price(kept)
        limit = self._best.cost - spent
        bound = max(self._best.bound - spent, material_bound(small))
        if material_short(small) > 0 or bound > limit:
            return
        best = Best(small, first_fit(small)[0], bound, limit=limit)
        if not best.proven:
            work_out(small, best, self._best.effort.piece(share))
        if best.cuts is not None:
            self._best.match(restored(remaining, best.cuts), best.method, kept)
