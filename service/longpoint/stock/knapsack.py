"""Pricing: what a clear length could hold at best, by one dynamic program for all of them.

A stage takes so many of an item or leaves them: one, two, four and so on, up to what is asked and fits. A cell holds
the best value within so many steps and so never falls from stage to stage: where a cell came from is found by
bisection. Demand bounds how many are taken, so that every pattern found can be cut.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import product

import numpy as np
from numpy.typing import NDArray

from .lattice import lattice
from .problem import Counts, ScaledCutting
from .states import NONE, States

__all__ = ["Knapsack", "common_saving"]

BITS = 29  # of the best of a stick, so that sums stay numbers of the table and do not lift what never is
NEVER = -(1 << 30)
LOOKS = 100  # cells looked at for each pattern that may be listed, past which it is given up
MOST_BYTES = 64_000_000  # of the table
WIDEST = (200_000, 21_000)  # steps of the longest stick, and where there are several states
LEAST_STEPS = 400  # of the longest stick, below which lengths mean too little

Cells = NDArray[np.int32]
Whole = NDArray[np.int64]


def common_saving(problem: ScaledCutting) -> int | None:
    """What all shared cuts save: zero when there are none, None when they differ."""
    saved = {end for item in problem.items for form in item.forms for end in (form.left, form.right) if end}
    return 0 if not saved else saved.pop() if len(saved) == 1 else None


@dataclass(frozen=True, slots=True)
class Moves:
    """The ways from stage to stage, flat.

    Attributes:
        stage: which stage each belongs to, rising.
        item: index of the item taken.
        taken: how many.
        before: the state before.
        after: the state after.
        weight: steps it adds.
        starts: for each stage the place of its first move, and last of all their number.
    """

    stage: Whole
    item: Whole
    taken: Whole
    before: Whole
    after: Whole
    weight: Whole
    starts: list[int]


class Knapsack:
    """Prices clear lengths, those without defects, in which all shared cuts save the same.

    Args:
        problem: the cutting in units.
        lengths: units that pieces and the cuts between them may take.
        saving: of the cuts that may be shared; zero for none.

    Attributes:
        exact: whether every pattern listed truly fits, and no other is left out.
        sure: whether every pattern traced truly fits.
        cells: of the table, stages and all.
        fits: whether the table may be that large.
        work: numbers gone through in one pricing.
        rooms: steps of each length.
        looked: cells looked at to list patterns, a measure of that work.
    """

    def __init__(self, problem: ScaledCutting, lengths: Sequence[int], saving: int) -> None:
        stages = 1 + sum(1 if item.demand == 2 else item.demand.bit_length() for item in problem.items)
        states = 4 if saving else 1
        most = min(MOST_BYTES // (stages * states * 4), WIDEST[states > 1])
        steps = lattice(problem, lengths, saving, max(most, LEAST_STEPS))
        self._states = States(problem, steps, saving)
        self.exact = steps.exact
        self.sure = bool(steps.cuts)
        self.rooms, self._tight = steps.rooms, steps.tight
        self._width = max(self.rooms.values()) + 1
        self._options = [self._states.options(item) for item in problem.items]
        room = self._width - 1 + self._states.slack()
        self._fit = [
            min(item.demand, room // self._states.least(options))
            for item, options in zip(problem.items, self._options, strict=True)
        ]
        self._allowed: tuple[int, ...] = ()
        self._moves = self._moves_within(self._fit)
        stages = len(self._moves.starts) - 1
        self.cells = (stages + 1) * self._states.number * self._width
        self.fits = self.cells * 4 <= 2 * MOST_BYTES
        self.looked = 0
        self._shift = 0
        self.work = len(self._moves.stage) * self._width * (1 if self._states.number == 1 else 2)
        self._table: Cells = np.zeros((0, 0, 0), dtype=np.int32)
        self._worth: Whole = np.zeros(0, dtype=np.int64)

    def price(self, values: Sequence[int], allowed: Sequence[int]) -> dict[int, int]:
        """For each length the best value any pattern reaches, taking no more of an item than allowed, or a little more.

        Numbers that the table has no room for are taken up to coarser ones.
        """
        most = tuple(min(one, fit) for one, fit in zip(allowed, self._fit, strict=True))
        if most != self._allowed:
            self._allowed, self._moves = most, self._moves_within(most)
        moves = self._moves
        worth = np.array(values, dtype=np.int64)[moves.item] * moves.taken
        number, width = self._states.number, self._width
        ratio = float(np.max(worth / np.maximum(moves.weight, 1), initial=0.0))
        self._shift = max(0, int(ratio * (width + self._states.slack()) * 1.01).bit_length() - BITS)
        self._worth = -(-worth >> self._shift)
        stages = len(moves.starts) - 1
        if len(self._table) <= stages:
            self._table = np.empty((stages + 1, number, width), dtype=np.int32)
        self._table[0] = NEVER if number > 1 else 0
        self._table[0, NONE] = 0
        if number == 1 and len(moves.stage) == stages:
            self._fill_plain()
        else:
            self._fill()
        last = self._table[stages]
        return {length: int(last[:, room].max()) << self._shift for length, room in self.rooms.items()}

    def patterns(self, length: int, above: int, most: int, often: int) -> list[Counts]:
        """Patterns in that length worth more than ``above`` as last priced, the best first.

        Each is the best that ends with some item; no item is in more than ``often`` of them.
        """
        moves, room = self._moves, max(0, self._tight[length])
        rest = room - moves.weight
        fits = np.nonzero(rest >= 0)[0]
        reached = self._table[moves.stage[fits], moves.before[fits], rest[fits]].astype(np.int64)
        worth = reached + self._worth[fits]
        kept = np.nonzero(worth > above >> self._shift)[0]
        order = kept[np.argsort(-worth[kept], kind="stable")]
        used: dict[int, int] = {}
        found: list[Counts] = []
        for at in fits[order].tolist():
            if len(found) == most:
                break
            if used.get(int(moves.item[at]), 0) >= often:
                continue
            counts = self._trace(at, int(rest[at]))
            if any(used.get(item, 0) >= often for item, _ in counts):
                continue
            found.append(counts)
            for item, _ in counts:
                used[item] = used.get(item, 0) + 1
        return found

    def _trace(self, move: int, room: int) -> Counts:
        """How many of each item make the best pattern that ends with that move and leaves so much room."""
        moves = self._moves
        counts: dict[int, int] = {}
        while True:
            item = int(moves.item[move])
            counts[item] = counts.get(item, 0) + int(moves.taken[move])
            state, stage = int(moves.before[move]), int(moves.stage[move])
            column = self._table[: stage + 1, state, room]
            value = int(column[-1])
            first = int(np.searchsorted(column, value))
            if not first:
                return tuple(sorted(counts.items()))
            move = self._origin(first - 1, state, room, value)
            room -= int(moves.weight[move])

    def _origin(self, stage: int, state: int, room: int, value: int) -> int:
        moves = self._moves
        for move in range(moves.starts[stage], moves.starts[stage + 1]):
            rest = room - int(moves.weight[move])
            if moves.after[move] != state or rest < 0:
                continue
            if int(self._table[stage, moves.before[move], rest]) + int(self._worth[move]) == value:
                return move
        raise AssertionError("a cell without origin")

    def near(self, length: int, least: int, most: int) -> list[Counts] | None:
        """Every pattern in that length worth at least that as last priced, or None past ``most`` of them."""
        found: dict[Counts, None] = {}
        counts: dict[int, int] = {}
        moves, table = self._moves, self._table
        end = self.looked + LOOKS * most

        def grow(stages: int, room: int, state: int, need: int) -> None:
            column = table[: stages + 1, state, room]
            lowest = int(np.searchsorted(column, need))
            self.looked += stages - lowest + 1
            if len(found) > most or self.looked > end:
                return
            if state == NONE and need <= 0:
                found[tuple(sorted(counts.items()))] = None
            for stage in range(stages - 1, lowest - 2 if lowest else -1, -1):
                for move in range(moves.starts[stage], moves.starts[stage + 1]):
                    rest = room - int(moves.weight[move])
                    if moves.after[move] != state or rest < 0:
                        continue
                    earlier, still = int(moves.before[move]), need - int(self._worth[move])
                    if table[stage, earlier, rest] >= still:
                        item, taken = int(moves.item[move]), int(moves.taken[move])
                        counts[item] = counts.get(item, 0) + taken
                        grow(stage, rest, earlier, still)
                        counts[item] -= taken
                        if not counts[item]:
                            del counts[item]

        for state in range(self._states.number):
            grow(len(moves.starts) - 1, self.rooms[length], state, least >> self._shift)
        return None if len(found) > most or self.looked > end else list(found)

    def _fill_plain(self) -> None:
        """One state, one move a stage."""
        table, width = self._table[:, 0], self._width
        spare = np.empty(width, dtype=table.dtype)
        pairs = zip(self._moves.weight.tolist(), self._worth.tolist(), strict=True)
        for stage, (weight, worth) in enumerate(pairs):
            before, after = table[stage], table[stage + 1]
            if weight >= width:
                after[:] = before
                continue
            reached = spare[: width - weight]
            np.add(before[: width - weight], worth, out=reached)
            after[:weight] = before[:weight]
            np.maximum(before[weight:], reached, out=after[weight:])

    def _fill(self) -> None:
        moves, table, width = self._moves, self._table, self._width
        spare = np.empty(width, dtype=table.dtype)
        rows = zip(
            moves.stage.tolist(),
            moves.before.tolist(),
            moves.after.tolist(),
            moves.weight.tolist(),
            self._worth.tolist(),
            strict=True,
        )
        filled = -1
        for stage, earlier, then, weight, worth in rows:
            if stage != filled:
                table[stage + 1] = table[stage]
                filled = stage
            if weight < width:
                reached = spare[: width - weight]
                np.add(table[stage, earlier, : width - weight], worth, out=reached)
                cells = table[stage + 1, then, weight:]
                np.maximum(cells, reached, out=cells)

    def _moves_within(self, most: Sequence[int]) -> Moves:
        rows: list[tuple[int, int, int, int, int, int]] = []
        starts = [0]
        for item, number in enumerate(most):
            options = self._options[item]
            pieces = [(1,)] * number if len(options) > 1 else [(1, 2)] if number == 2 else _pieces(number)
            for piece in pieces:
                stage = len(starts) - 1
                for option, taken, state in product(options, piece, range(self._states.number)):
                    weight, then = self._states.move(state, option, taken)
                    rows.append((stage, item, taken, state, then, weight))
                starts.append(len(rows))
        flat = np.array(rows, dtype=np.int64).reshape(-1, 6).T
        return Moves(flat[0], flat[1], flat[2], flat[3], flat[4], flat[5], starts)


def _pieces(number: int) -> Iterator[tuple[int]]:
    """Numbers that sum to every number up to that: 1, 2, 4 and what is left."""
    piece = 1
    while number > 0:
        yield (min(piece, number),)
        number -= piece
        piece *= 2
