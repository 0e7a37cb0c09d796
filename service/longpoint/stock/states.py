"""How a stick's cuts stand so far, as far as the next piece's length on it depends on that.

Three ways. Plain: a piece and its cut take what they take. Two kinds of cuts: the last cut may lie past the stick's
end, and that is the dear one where there is any. Shared miters: with M mitered ends on a stick M // 2 joints are
shared where some piece has just one, and M / 2 - 1 where each has two; unshared cuts are square ones.
"""

from dataclasses import dataclass

from .lattice import Lattice
from .problem import Item, ScaledCutting

__all__ = ["Option", "States"]

NONE, DOUBLES, ODD, EVEN = range(4)  # no mitered end; only pieces with two; an odd or an even number with one


@dataclass(frozen=True, slots=True)
class Option:
    """A way to take one of an item.

    Attributes:
        weight: steps with its cut.
        ends: how many mitered ends it shows or, where two kinds of cuts are told apart, whether its is the dear one.
    """

    weight: int
    ends: int


class States:
    """The states and the moves between them.

    Attributes:
        number: of states.
    """

    def __init__(self, problem: ScaledCutting, lattice: Lattice, saving: int) -> None:
        self._problem = problem
        self._lattice = lattice
        self._shared = bool(saving)
        self._saved = lattice.saved(problem.kerf, saving) if saving else 0
        cuts = sorted(lattice.cuts.values()) if not saving else []
        self._excess = cuts[-1] - cuts[0] if cuts else 0
        self.number = 4 if saving else 2 if len(cuts) > 1 else 1

    def options(self, item: Item) -> tuple[Option, ...]:
        """The ways to take one of the item, none that another is never worse than."""
        best: dict[int, int] = {}
        for form in item.forms:
            if self._shared:
                ends = (form.left > 0) + (form.right > 0)
                cut = self._problem.kerf if ends else form.eats
            else:
                ends, cut = int(self.number > 1 and form.eats > self._cheap()), form.eats
            weight = self._lattice.steps(form.length, cut)
            best[ends] = min(best.get(ends, weight), weight)
        if not self._shared and len(best) > 1 and best[0] <= best[1] - self._excess:
            del best[1]
        return tuple(Option(weight, ends) for ends, weight in sorted(best.items()))

    def _cheap(self) -> int:
        return min(self._lattice.cuts)

    def least(self, options: tuple[Option, ...]) -> int:
        """Steps that one of these adds at least."""
        return max(1, min(one.weight - self._saved * (one.ends == 2) for one in options))

    def slack(self) -> int:
        """Steps past its room that the pieces of a stick may come to before what they save."""
        return 2 * self._saved + self._excess

    def move(self, state: int, option: Option, taken: int) -> tuple[int, int]:
        """Steps that so many add in that state, and the state after."""
        weight = taken * option.weight
        if self.number == 1 or not option.ends:
            return weight, state
        if not self._shared:
            return (weight if state else weight - self._excess), 1
        singles, doubles = (taken, 0) if option.ends == 1 else (0, taken)
        odd = state == ODD
        some = state in (ODD, EVEN) or singles > 0
        then = (ODD if (odd + singles) % 2 else EVEN) if some else DOUBLES
        joints = doubles + (odd + singles) // 2 - (then == DOUBLES) + (state == DOUBLES)
        return weight - joints * self._saved, then
