"""Pricing: what a stick could hold at best, by one dynamic program for all clear sticks of every length.

Stage i decides how many of item i; a cell holds the best value within so many units. Demand bounds how many
are taken, so every pattern found can be cut. When mitred ends may share cuts there is a row of cells for each
way the mitred ends may stand so far: with M of them on the stick, M // 2 joints are shared where some piece
has just one, and M / 2 - 1 where each has two.
"""

from collections.abc import Sequence
from itertools import product

import numpy as np
from numpy.typing import NDArray

from .lattice import lattice
from .problem import Counts, Item, Problem

__all__ = ["Knapsack", "common_run"]

NONE, DOUBLES, ODD, EVEN = range(4)  # no mitred end; only pieces with two; an odd or an even number with one
NEVER = -(1 << 62)

Cells = NDArray[np.int64]


def common_run(problem: Problem) -> int | None:
    """The one run all mitred ends have: nought when there are none, None when runs differ."""
    runs = {run for item in problem.items for form in item.forms for run in (form.left, form.right) if run}
    return 0 if not runs else runs.pop() if len(runs) == 1 else None


class Choice:
    """So many of an item on one stick, by how many mitred ends each shows."""

    __slots__ = ("doubles", "length", "singles", "taken")

    def __init__(self, taken: int, length: int, singles: int, doubles: int) -> None:
        self.taken = taken
        self.length = length
        self.singles = singles
        self.doubles = doubles


class Knapsack:
    """Prices clear sticks, those without defects, on which all shared mitres have one run.

    Args:
        problem: the job in units.
        stocks: indexes of the clear stocks.
        run: of the mitres that may share a cut; nought for none.

    Attributes:
        cells: table cells written in one pricing, a measure of its size.
        cost: seconds one pricing takes, about.
    """

    def __init__(self, problem: Problem, stocks: Sequence[int], run: int) -> None:
        self._lattice = lattice(problem, stocks)
        self._kerf = self._lattice.kerf
        self._run = self._lattice.steps(run)
        self.rooms = self._lattice.rooms
        self._most = max(self.rooms.values())
        self._states = 4 if run else 1
        self._choices = [self._choices_of(item) for item in problem.items]
        tried = sum(len(choices) for choices in self._choices)
        self.cells = (tried + len(self._choices)) * self._states * (self._most + 1)
        self.cost = tried * self._states * (2e-6 + 1.1e-9 * self._most)
        self._table: list[Cells] = []
        self._values: Sequence[int] = ()
        self._allowed: Sequence[int] = ()

    def price(self, values: Sequence[int], allowed: Sequence[int]) -> dict[int, int]:
        """The best value any pattern reaches on each stock, taking no more of an item than allowed."""
        start = np.full((self._states, self._most + 1), NEVER, dtype=np.int64)
        start[NONE] = 0
        self._table = [start]
        self._values, self._allowed = values, allowed
        for value, most, choices in zip(values, allowed, self._choices, strict=True):
            before = self._table[-1]
            self._table.append(self._stage(before, value, most, choices) if value > 0 and most else before)
        last = self._table[-1]
        return {stock: int(last[:, room].max()) for stock, room in self.rooms.items()}

    def patterns(self, stock: int, above: int, most: int) -> list[Counts]:
        """Patterns on that stock worth more than ``above`` as last priced, the best first, no item in two."""
        room = self.rooms[stock]
        last = self._table[-1][:, room]
        if int(last.max()) <= above:
            return []
        found = [self._trace(len(self._choices), room, int(last.argmax()))]
        if self._states > 1:
            return found
        used = {item for item, count in enumerate(found[0]) if count}
        for item in self._ending(room, above):
            if len(found) == most:
                break
            if item in used:
                continue
            counts = self._trace(item, room - self._choices[item][0].length, NONE)
            if any(counts[one] for one in used):
                continue
            found.append((*counts[:item], 1, *counts[item + 1 :]))
            used.update(one for one, count in enumerate(found[-1]) if count)
        return found

    def _ending(self, room: int, above: int) -> list[int]:
        """Items such that the best pattern that ends with one of them is worth more than that, best first."""
        worths = [
            (int(self._table[item][NONE, room - choices[0].length]) + value, item)
            for item, (value, choices) in enumerate(zip(self._values, self._choices, strict=True))
            if value > 0 and self._allowed[item] and choices and choices[0].length <= room
        ]
        return [item for worth, item in sorted(worths, key=lambda pair: (-pair[0], pair[1])) if worth > above]

    def _trace(self, size: int, room: int, state: int) -> Counts:
        """How many of each of the first ``size`` items make that cell."""
        counts = [0] * len(self._choices)
        for item in range(size - 1, -1, -1):
            before, after = self._table[item], self._table[item + 1]
            if before is after:
                continue
            wanted = int(after[state, room])
            if int(before[state, room]) == wanted:
                continue
            counts[item], room, state = self._undo(item, before, wanted, room, state)
        return tuple(counts)

    def near(self, stock: int, least: int, most: int) -> list[Counts] | None:
        """Every pattern on that stock worth at least that as last priced, or None past ``most`` of them."""
        found: dict[Counts, None] = {}
        counts = [0] * len(self._choices)

        def grow(size: int, room: int, state: int, need: int) -> None:
            for item in range(size - 1, -1, -1):
                if self._table[item + 1][state, room] < need or len(found) > most:
                    return
                before = self._table[item]
                if before is self._table[item + 1]:
                    continue
                for choice in self._choices[item]:
                    if choice.taken > self._allowed[item]:
                        break
                    rest = need - choice.taken * self._values[item]
                    for earlier in range(self._states):
                        weight, then = self._step(earlier, choice)
                        if then == state and weight <= room and before[earlier, room - weight] >= rest:
                            counts[item] = choice.taken
                            grow(item, room - weight, earlier, rest)
                counts[item] = 0
            if state == NONE and need <= 0:
                found[tuple(counts)] = None

        for state in range(self._states):
            grow(len(counts), self.rooms[stock], state, least)
        return None if len(found) > most else list(found)

    def _stage(self, before: Cells, value: int, most: int, choices: Sequence[Choice]) -> Cells:
        after = before.copy()
        if self._states == 1:
            self._plain(before[0], after[0], value, most, choices)
            return after
        for choice in choices:
            if choice.taken > most:
                break
            gain = choice.taken * value
            for state in range(self._states):
                weight, then = self._step(state, choice)
                if weight <= self._most:
                    cells = after[then, weight:]
                    np.maximum(cells, before[state, : self._most + 1 - weight] + gain, out=cells)
        return after

    def _plain(self, before: Cells, after: Cells, value: int, most: int, choices: Sequence[Choice]) -> None:
        for choice in choices[:most]:
            cells = after[choice.length :]
            np.maximum(cells, before[: self._most + 1 - choice.length] + choice.taken * value, out=cells)

    def _undo(self, item: int, before: Cells, wanted: int, room: int, state: int) -> tuple[int, int, int]:
        for choice in self._choices[item]:
            if choice.taken > self._allowed[item]:
                break
            for earlier in range(self._states):
                weight, then = self._step(earlier, choice)
                if then != state or weight > room:
                    continue
                if int(before[earlier, room - weight]) + choice.taken * self._values[item] == wanted:
                    return choice.taken, room - weight, earlier
        raise AssertionError("a cell without origin")

    def _step(self, state: int, choice: Choice) -> tuple[int, int]:
        """Units a choice adds in that state, and the state after."""
        if not (choice.singles or choice.doubles):
            return choice.length, state
        odd = state == ODD
        some = state in (ODD, EVEN) or choice.singles > 0
        then = (ODD if (odd + choice.singles) % 2 else EVEN) if some else DOUBLES
        joints = choice.doubles + (odd + choice.singles) // 2 - (then == DOUBLES) + (state == DOUBLES)
        return choice.length - joints * self._run, then

    def _choices_of(self, item: Item) -> list[Choice]:
        lengths: dict[int, int] = {}
        for form in item.forms:
            ends = (form.left > 0) + (form.right > 0) if self._run else 0
            steps = self._lattice.steps(form.length)
            lengths[ends] = min(lengths.get(ends, steps), steps)
        least = min(lengths.values()) + self._kerf - (self._run if 2 in lengths else 0)
        most = min(item.demand, (self._most + 2 * self._run) // max(1, least))
        if len(lengths) == 1:
            ends, length = next(iter(lengths.items()))
            return [self._choice({ends: taken}, {ends: length}) for taken in range(1, most + 1)]
        mixed = [
            self._choice(dict(zip(lengths, numbers, strict=True)), lengths)
            for numbers in product(range(most + 1), repeat=len(lengths))
            if 0 < sum(numbers) <= most
        ]
        return sorted(mixed, key=lambda choice: choice.taken)

    def _choice(self, numbers: dict[int, int], lengths: dict[int, int]) -> Choice:
        taken = sum(numbers.values())
        length = sum(number * (lengths[ends] + self._kerf) for ends, number in numbers.items())
        return Choice(taken, length, numbers.get(1, 0), numbers.get(2, 0))
