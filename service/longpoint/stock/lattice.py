"""Smaller whole numbers with the same meaning, so that the pricing program's table stays short.

Pieces often lie on a coarse lattice that the kerf and the sticks are not on: millimetres cut with an eighth of
an inch. A row of n pieces fits when their lengths come to no more than the room less n kerfs, rounded down to
the lattice; any kerf and rooms that round to the same for every n that matters will do.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import reduce
from math import gcd

from .problem import Problem

__all__ = ["Lattice", "lattice"]

MOST_SCALE = 64
MOST_PIECES = 200  # on a stick; past it the search for smaller numbers takes longer than they save


@dataclass(frozen=True, slots=True)
class Lattice:
    """Lengths for the table: ``length // divisor * factor`` for pieces and runs.

    Attributes:
        divisor: of all lengths of pieces and runs.
        factor: steps of the table in one lattice unit.
        kerf: steps one cut takes.
        rooms: steps each stock has, a kerf more than the pieces and the kerfs between them may take.
    """

    divisor: int
    factor: int
    kerf: int
    rooms: dict[int, int]

    def steps(self, length: int) -> int:
        """A length of a piece or a run in steps."""
        return length // self.divisor * self.factor


def lattice(problem: Problem, stocks: Sequence[int]) -> Lattice:
    """The coarsest steps that keep every pattern of those clear stocks exactly as possible as it is."""
    rooms = {j: problem.stocks[j].end - problem.stocks[j].start + problem.kerf for j in stocks}
    forms = [form for item in problem.items for form in item.forms]
    ends = [length for form in forms for length in (form.length, form.left, form.right)]
    # A form may hold kerfs of its own; their lengths are in it already, and the divisor takes them in.
    divisor = reduce(gcd, ends, 0) or 1
    least = min(form.length - max(form.left, form.right) for form in forms)
    pieces = max(rooms.values()) // max(1, least + problem.kerf) + 1
    for factor in range(1, min(MOST_SCALE, divisor) if pieces <= MOST_PIECES else 1):
        for kerf in {problem.kerf * factor // divisor, -(-problem.kerf * factor // divisor)}:
            found = {
                j: _room(room, problem.kerf, divisor, factor, kerf, pieces, least)
                for j, room in rooms.items()
            }
            if all(room is not None for room in found.values()):
                return Lattice(
                    divisor, factor, kerf, {j: room for j, room in found.items() if room is not None}
                )
    return Lattice(1, 1, problem.kerf, rooms)


def _room(room: int, kerf: int, divisor: int, factor: int, steps: int, pieces: int, least: int) -> int | None:
    """Steps of room that leave any number of pieces as much lattice length as they have, if there are any."""
    low, high = 0, room * factor
    for number in range(1, pieces + 1):
        left = (room - number * kerf) // divisor
        if left * divisor >= number * least and left > 0:
            low = max(low, left * factor + number * steps)
            high = min(high, left * factor + number * steps + factor - 1)
        else:  # too many to fit: they must not seem to
            high = min(high, -(-number * least // divisor) * factor + number * steps - 1)
    return low if low <= high else None
