"""Whole steps for the pricing program's table, few enough that it stays short, with the meaning of true lengths.

Pieces often lie on a coarse lattice that the cuts and the sticks are not on: millimeters cut with an eighth of an
inch, sixteenths with miters that eat 0.176777. A row fits when its pieces come to no more than the room less its
cuts, rounded down to the lattice; any steps for cuts and rooms that round to the same for every number of cuts
that matters will do. Where there are none, the steps leave a little too much room: what fits truly fits in steps, and
who takes a row that fits in steps must see whether it fits truly.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import reduce
from itertools import accumulate, product
from math import gcd

import numpy as np
from numpy.typing import NDArray

from longpoint.lengths import Fraction

from .problem import ScaledCutting

__all__ = ["Lattice", "lattice"]

MOST_SCALE = 64
CLOSE = 2  # lattice units by which steps may leave too much room
MOST_PIECES = (400, 60)  # on a stick, by the kinds of cuts; past it the search takes longer than it saves
ENOUGH = 16_000  # steps of the longest stick where they are not exact

Whole = NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Lattice:
    """Lengths for the table.

    Attributes:
        divisor: of all lengths of pieces.
        factor: steps of the table in one lattice unit.
        cuts: steps of each kind of cut, a shared one less than zero; none where there are too many kinds.
        rooms: for each length of stock, the steps it has for pieces with a cut each.
        exact: whether what fits in steps always fits truly.
    """

    divisor: int
    factor: int
    cuts: dict[int, int]
    rooms: dict[int, int]
    tight: dict[int, int]
    exact: bool

    def steps(self, length: int, cut: int) -> int:
        """A piece and the cut after it in steps."""
        if self.cuts:
            return length // self.divisor * self.factor + self.cuts[cut]
        return (length + cut) * self.factor // self.divisor

    def saved(self, kerf: int, saving: int) -> int:
        """What a shared cut saves against a kerf, in steps."""
        if self.cuts:
            return self.cuts[kerf] - self.cuts[kerf - saving]
        return -(-saving * self.factor // self.divisor)


def lattice(problem: ScaledCutting, lengths: Sequence[int], saving: int, most: int) -> Lattice:
    """The coarsest steps that keep every pattern in those clear lengths exactly as possible as it is.

    Args:
        problem: the cutting in units.
        lengths: units that pieces and the cuts between them may take.
        saving: what a shared cut saves; zero for none.
        most: steps that the longest stick may come to.
    """
    rooms = {length: length for length in lengths}
    forms = [form for item in problem.items for form in item.forms]
    divisor = reduce(gcd, (form.length for form in forms), 0) or 1
    least = min(form.length for form in forms)
    cuts = sorted({form.eats for form in forms if not (saving and (form.left or form.right))})
    if saving:
        plain = cuts in ([], [problem.kerf])
        cuts = [problem.kerf, problem.kerf - saving]
    else:
        plain = len(cuts) <= len(MOST_PIECES)
    longest = max(rooms.values())
    pieces = longest // max(1, least + min(cuts)) + 1
    nearest: tuple[Fraction, Lattice] | None = None
    if plain and pieces <= MOST_PIECES[len(cuts) - 1]:
        taken = _Taken(cuts, bool(saving), _shortest(problem, pieces))
        for factor in range(1, max(2, min(MOST_SCALE, divisor))):
            if longest // divisor * factor > most:
                break
            for steps in product(
                *(sorted({cut * factor // divisor, -(-cut * factor // divisor)}) for cut in cuts)
            ):
                fits = {j: taken.room(room, divisor, factor, steps) for j, room in rooms.items()}
                over = Fraction(max(more for _, more in fits.values()), factor)
                if nearest is None or over < nearest[0]:
                    kept = {j: room for j, (room, _) in fits.items()}
                    tight = {j: room - more for j, (room, more) in fits.items()}
                    named = dict(zip(cuts, steps, strict=True))
                    nearest = over, Lattice(divisor, factor, named, kept, tight, not over)
                if not over:
                    break
            if nearest is not None and nearest[1].exact:
                break
    if nearest is not None and nearest[0] <= CLOSE:
        return nearest[1]
    spare = problem.kerf if saving and plain else problem.spare
    return _short(rooms, spare, divisor, min(most, ENOUGH))


def _short(rooms: dict[int, int], spare: int, divisor: int, most: int) -> Lattice:
    """Steps that are not exact: as many to a lattice unit as there may be, or units to a step."""
    longest = max(rooms.values()) + spare
    factor = most * divisor // longest
    if not factor:
        divisor, factor = -(-longest // most), 1
    factor = min(factor, divisor)
    steps = {j: (room + spare) * factor // divisor for j, room in rooms.items()}
    return Lattice(divisor, factor, {}, steps, steps, False)


def _shortest(problem: ScaledCutting, pieces: int) -> list[int]:
    """Units that so many pieces take at least, from none to that number."""
    lengths: list[int] = []
    for length, demand in sorted(
        (min(form.length for form in item.forms), item.demand) for item in problem.items
    ):
        lengths += [length] * min(demand, pieces - len(lengths))
    return [0, *accumulate(lengths)]


class _Taken:
    """Every number of cuts of each kind that a stick may hold.

    Args:
        cuts: the kinds: one, two of pieces, or a kerf and a shared one.
        shared: whether the last is a shared one.
        least: units that so many pieces take at least, from none to as many as a stick may hold.
    """

    def __init__(self, cuts: Sequence[int], shared: bool, least: Sequence[int]) -> None:
        self._cuts = cuts
        pieces = len(least) - 1
        grid = np.indices((pieces + 1,) * len(cuts)).reshape(len(cuts), -1)
        total = grid.sum(axis=0)
        keep = (total > 0) & (total <= pieces)
        if shared:
            keep &= grid[0] > 0
        self._numbers: Whole = grid[:, keep].astype(np.int64)
        self._total: Whole = total[keep].astype(np.int64)
        self._least: Whole = np.array(least, dtype=np.int64)[self._total]
        # The last cut on a stick may lie past its end: the dearest of them, where that is not a shared one.
        self._last = (
            np.zeros_like(self._total)
            if shared or len(cuts) == 1
            else (self._numbers[-1] > 0).astype(np.int64)
        )

    def room(self, room: int, divisor: int, factor: int, steps: Sequence[int]) -> tuple[int, int]:
        """Steps of room that leave every number of pieces the lattice length they have, and by how many too many."""
        left = (room + self._cuts[0] - self._sum(self._cuts)) // divisor
        taken = self._sum(steps)
        fit = (left * divisor >= self._least) & (left > 0)
        low = np.where(fit, left * factor + taken, 0)
        high = np.where(
            fit,
            left * factor + taken + factor - 1,
            -(-self._least // divisor) * factor + taken - 1,  # too many to fit: they must not seem to
        )
        first = int(low.max(initial=0))
        return first, max(0, first - int(high.min(initial=first)))

    def _sum(self, cuts: Sequence[int]) -> Whole:
        total = np.zeros_like(self._total)
        for cut, number in zip(cuts, self._numbers, strict=True):
            total += cut * number
        total -= self._last * (cuts[-1] - cuts[0])
        return total
