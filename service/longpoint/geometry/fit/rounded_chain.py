"""The search for marks and saw settings that keep every corner of a chain near its place.

Everything here counts in steps of the length: an error of 1 is one step of the tape.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import NamedTuple

MOST_AT_THE_END = 1.0
MOST_AT_A_CORNER = 1.5
SAME_MARK = 1e-9


class ChainPiece(NamedTuple):
    """A piece in steps.

    Attributes:
        across, up: its true run.
        low, high: its two marks.
        units: what one step runs across and up in each direction it may take.
    """

    across: float
    up: float
    low: int
    high: int
    units: tuple[tuple[float, float], ...]


class RoundedChain(NamedTuple):
    """A chain on its marks.

    Attributes:
        marks: of each piece.
        chosen: which of its directions each takes.
        cost: the worst of end and corners, as parts of what is allowed: 1 passes.
        gap: at the end, in steps.
    """

    marks: tuple[int, ...]
    chosen: tuple[int, ...]
    cost: float
    gap: float


def errors(
    pieces: Sequence[ChainPiece], marks: Sequence[int], chosen: Sequence[int]
) -> list[tuple[float, float]]:
    """How far each corner after the start lies from its place, across and up, in steps."""
    across = up = 0.0
    found = []
    for piece, mark, which in zip(pieces, marks, chosen, strict=True):
        unit = piece.units[which]
        across += mark * unit[0] - piece.across
        up += mark * unit[1] - piece.up
        found.append((across, up))
    return found


def found_of(pieces: Sequence[ChainPiece], marks: Sequence[int], chosen: Sequence[int]) -> RoundedChain:
    gaps = [math.hypot(*error) for error in errors(pieces, marks, chosen)]
    cost = max(gaps[-1] / MOST_AT_THE_END, max(gaps) / MOST_AT_A_CORNER)
    return RoundedChain(tuple(marks), tuple(chosen), cost, gaps[-1])


def carried(pieces: Sequence[ChainPiece], paired: int) -> list[int]:
    """Marks taken along the chain, of each piece's two the one that leaves the error shortest.

    Args:
        paired: how many pieces from the start on take their marks in pairs, first with last; 0 for none.
    """
    marks = [piece.low for piece in pieces]
    across = up = 0.0
    for number, piece in enumerate(pieces):
        last = paired - 1 - number
        if number < paired and last <= number:
            if last < number:
                marks[number] = marks[last]
            else:
                _close(pieces, marks, number, paired)
        elif number >= paired > 0:
            _close(pieces, marks, number, len(pieces))
        else:
            marks[number] = _shortest(piece, across, up)
        unit = piece.units[0]
        across += marks[number] * unit[0] - piece.across
        up += marks[number] * unit[1] - piece.up
    return marks


def _shortest(piece: ChainPiece, across: float, up: float) -> int:
    unit = piece.units[0]
    across, up = across - piece.across, up - piece.up
    low = math.hypot(across + piece.low * unit[0], up + piece.low * unit[1])
    high = math.hypot(across + piece.high * unit[0], up + piece.high * unit[1])
    return piece.low if low <= high else piece.high


def _close(pieces: Sequence[ChainPiece], marks: list[int], number: int, count: int) -> None:
    """Give a piece that lies across the axis the mark that brings the end of the first `count` pieces nearest."""
    for other in range(number + 1, count):
        marks[other] = marks[count - 1 - other]
    best = math.inf
    for mark in (pieces[number].low, pieces[number].high):
        tried = [*marks[:number], mark, *marks[number + 1 : count]]
        gap = math.hypot(*errors(pieces[:count], tried, [0] * count)[-1])
        if gap < best:
            best, marks[number] = gap, mark


def exchanged(pieces: Sequence[ChainPiece], marks: Sequence[int], paired: int) -> RoundedChain:
    """Exchange the low and high marks of one or two pieces (or mirrored pairs) that lower the cost most,
    until it passes or none does."""
    chosen = (0,) * len(pieces)
    best = found_of(pieces, marks, chosen)
    moves = list(_moves(pieces, paired))
    while best.cost > 1:
        before = best
        across, up = errors(pieces, before.marks, chosen)[-1]
        shifts = [_shift_of_the_end(pieces, before.marks, move) for move in moves]
        for one, (first, (right, above)) in enumerate(zip(moves, shifts, strict=True)):
            for other in range(one, len(moves)):
                more_right, more_above = shifts[other] if other > one else (0.0, 0.0)
                end = math.hypot(across + right + more_right, up + above + more_above)
                if end >= best.cost * MOST_AT_THE_END:
                    continue  # the corners between can only cost more
                move = (*first, *moves[other]) if other > one else first
                tried = found_of(pieces, _flipped(pieces, before.marks, move), chosen)
                if tried.cost < best.cost:
                    best = tried
        if best.cost > before.cost - SAME_MARK:
            return best
    return best


def _shift_of_the_end(
    pieces: Sequence[ChainPiece], marks: Sequence[int], move: tuple[int, ...]
) -> tuple[float, float]:
    across = up = 0.0
    for number in move:
        piece = pieces[number]
        longer = piece.low + piece.high - 2 * marks[number]
        across += longer * piece.units[0][0]
        up += longer * piece.units[0][1]
    return across, up


def _moves(pieces: Sequence[ChainPiece], paired: int) -> Iterator[tuple[int, ...]]:
    for number, piece in enumerate(pieces):
        last = paired - 1 - number
        if piece.low != piece.high and not (number < paired and last < number):
            yield (number, last) if number < last else (number,)


def _flipped(pieces: Sequence[ChainPiece], marks: Sequence[int], move: tuple[int, ...]) -> tuple[int, ...]:
    flipped = list(marks)
    for number in move:
        flipped[number] = pieces[number].low + pieces[number].high - marks[number]
    return tuple(flipped)


class _Option(NamedTuple):
    """One way to cut a piece. Attributes: its mark, which of its directions, and by how much that shifts its end."""

    mark: int
    which: int
    across: float
    up: float


class _Begun(NamedTuple):
    """The first pieces of a chain. Attributes: how each was cut, where the last ends, the worst corner so far."""

    taken: tuple[_Option, ...]
    across: float
    up: float
    worst: float


_NOTHING = _Begun((), 0.0, 0.0, 0.0)
_KEPT = 64
"""How many beginnings of a long chain are followed side by side."""


def every_way(pieces: Sequence[ChainPiece]) -> tuple[RoundedChain, float]:
    """The best of all marks and directions of a short chain, and the least gap that any leaves at its end."""
    begun = [_NOTHING]
    for piece in pieces:
        begun = _longer(begun, piece)
    best = min(begun, key=_cost)
    return _found(pieces, best), min(math.hypot(one.across, one.up) for one in begun)


def best_ways(pieces: Sequence[ChainPiece]) -> RoundedChain:
    """A chain of any length, followed from its beginning along those ways of cutting that leave the smallest errors."""
    begun = [_NOTHING]
    for piece in pieces:
        begun = sorted(_longer(begun, piece), key=_worst_then_last)[:_KEPT]
    return _found(pieces, min(begun, key=_cost))


def _longer(begun: Sequence[_Begun], piece: ChainPiece) -> list[_Begun]:
    options = [
        _Option(mark, which, mark * unit[0] - piece.across, mark * unit[1] - piece.up)
        for mark in dict.fromkeys((piece.low, piece.high))
        for which, unit in enumerate(piece.units)
    ]
    longer = []
    for taken, across, up, worst in begun:
        for option in options:
            x, y = across + option.across, up + option.up
            longer.append(_Begun((*taken, option), x, y, max(worst, math.hypot(x, y))))
    return longer


def _cost(begun: _Begun) -> float:
    return max(math.hypot(begun.across, begun.up) / MOST_AT_THE_END, begun.worst / MOST_AT_A_CORNER)


def _worst_then_last(begun: _Begun) -> tuple[bool, float]:
    return begun.worst > MOST_AT_A_CORNER, math.hypot(begun.across, begun.up)


def _found(pieces: Sequence[ChainPiece], begun: _Begun) -> RoundedChain:
    return found_of(pieces, [each.mark for each in begun.taken], [each.which for each in begun.taken])
