"""Straight pieces end to end: an arch from springing to springing, or a polygon that comes back to its start.

A chain is kept on one line, which its caller picks: the jamb's inside faces, or the short points or long points of
the casing. Each length runs along that line from one corner to the next.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from longpoint.lengths import Real
from longpoint.values import Value

ALIKE = 1e-9
"""Lengths in inches and directions in degrees that differ by less are one: floats reach us through sines."""


class Chain(Value, frozen=True):
    """Pieces in the order they are put up.

    Attributes:
        lengths: of each piece, from corner to corner, inches.
        directions: of each piece in the order of the chain, degrees counterclockwise, running on without jumps of 360;
            of an arch from the line of its springings, so that its crown runs at zero.
        closed: whether the last piece ends where the first begins.
    """

    lengths: tuple[Real, ...]
    directions: tuple[float, ...]
    closed: bool = False


def equal_chords(length: Real, turn: float, pieces: int) -> Chain:
    """An arch of equal pieces from left springing to right, each turned so many degrees from the one before."""
    middle = (pieces - 1) / 2
    return Chain((length,) * pieces, tuple((middle - number) * turn for number in range(pieces)))


def polygon(sides: Sequence[Real], corners: Sequence[float]) -> Chain:
    """A polygon, counterclockwise: each side from corner to corner, and the inside angle at its end, degrees."""
    directions = [0.0]
    for inside in corners[:-1]:
        directions.append(directions[-1] + 180 - float(inside))
    return Chain(tuple(sides), tuple(directions), closed=True)


class Mirror(Value, frozen=True):
    """What makes one half of a chain the picture of the other.

    Attributes:
        start: the piece that the chain is begun at.
        crown: the direction, degrees, that a piece square to the axis has, in the chain's own directions.
        paired: how many pieces from the start on are paired first with last; a closed chain may have one more, which
            lies across the axis and ends it.
    """

    start: int
    crown: float
    paired: int


def mirror(chain: Chain) -> Mirror | None:
    """The first axis found that maps a chain onto itself; None where it has none."""
    pieces = len(chain.lengths)
    if not chain.closed:
        return _axis(chain, 0, pieces)
    for paired in (
        pieces,
        pieces - 1,
    ):  # an axis through a corner first: then no piece has to close what is left
        for start in range(pieces):
            if found := _axis(chain, start, paired):
                return found
    return None


def begun_at(chain: Chain, start: int) -> Chain:
    """The same closed chain, begun at another piece."""
    if not start:
        return chain
    whole = 360.0 if chain.directions[-1] > chain.directions[0] else -360.0
    directions = (*chain.directions[start:], *(one + whole for one in chain.directions[:start]))
    return Chain((*chain.lengths[start:], *chain.lengths[:start]), directions, chain.closed)


def _axis(chain: Chain, start: int, paired: int) -> Mirror | None:
    turned = begun_at(chain, start)
    crown = (turned.directions[0] + turned.directions[paired - 1]) / 2
    for first in range((paired + 1) // 2):
        last = paired - 1 - first
        if abs(float(turned.lengths[first]) - float(turned.lengths[last])) > ALIKE:
            return None
        if abs(turned.directions[first] + turned.directions[last] - 2 * crown) > ALIKE:
            return None
    across = turned.directions[-1] - crown
    if paired < len(chain.lengths) and abs(math.remainder(across, 180)) > ALIKE:
        return None
    return Mirror(start, crown, paired)
