"""Rounds a chain so that it closes: lengths to the tape's marks, directions to the saw's step.

Pieces rounded each by itself all round the same way, and an arch of forty misses its springing by half an inch. Here
the error of every corner is carried along the chain, across and up; of a piece's two nearest marks the one is taken
that leaves it shortest. A piece's direction is rounded, not its turn: a turn is a difference of directions, so the
sum is right and no direction is off by more than half a step where that is enough. It closes on paper: `saw_check`
has what a saw off its zero does to it, and which joint to try first.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import TypeVar

from longpoint.geometry.fit.chain import Chain, mirror
from longpoint.geometry.fit.rounded_chain import (
    MOST_AT_A_CORNER,
    MOST_AT_THE_END,
    SAME_MARK,
    RoundedChain,
    best_ways,
    carried,
    errors,
    every_way,
    exchanged,
)
from longpoint.geometry.fit.ways import EITHER, SHIFTS, Way, ways, whole
from longpoint.lengths import Fraction
from longpoint.values import Value

T = TypeVar("T")

SAW_STEP = Fraction(1, 10)
"""Degrees from one setting of the saw's scale to the next."""

MOST_SEARCHED = 6
"""A chain of so many pieces is searched in every way where the quick ways do not close it."""


class Closed(Value, frozen=True):
    """A chain on the marks, in the order it was given.

    Attributes:
        lengths: of each piece, from corner to corner along the chain's line, inches: each a whole number of steps and
            within one step of exact.
        turns: degrees from each piece to the next, positive where the chain is convex; of a closed chain also from the
            last to the first.
        settings: the saw's two settings at each of those corners, on the end of the piece before and the start of the
            piece after; their sum is the turn, and they differ by at most one step of the saw.
        directions_off: degrees by which each piece runs off its exact direction: half a step of the saw at most
            where plain rounding closes, never more than a step.
        corner_gaps: how far the end of each piece lies from its exact place, inches, the start being held.
        gap: the last of them: how far the whole stands open, inches.
        least_gap: the least gap of all ways to take one of the two nearest marks and settings, inches; None where the
            chain was too long to try them all, or closes.
        start: the piece whose beginning is held.
        mirrored: whether pieces that mirror each other came out alike.
        step: from one mark to the next, inches.
        saw_step: from one setting to the next, degrees.
    """

    lengths: tuple[Fraction, ...]
    turns: tuple[Fraction, ...]
    settings: tuple[tuple[Fraction, Fraction], ...]
    directions_off: tuple[float, ...]
    corner_gaps: tuple[float, ...]
    gap: float
    least_gap: float | None
    start: int
    mirrored: bool
    step: Fraction
    saw_step: Fraction

    @property
    def closes(self) -> bool:
        """Whether the end is within one step, and every corner within one and a half."""
        step = float(self.step) * (1 + SAME_MARK)
        return self.gap <= MOST_AT_THE_END * step and max(self.corner_gaps) <= MOST_AT_A_CORNER * step


def close(chain: Chain, step: Fraction, saw_step: Fraction = SAW_STEP) -> Closed:
    """Round a chain's lengths to a step in inches and its directions to a step in degrees, so that it closes.

    Mirrored pieces are kept alike where that closes, else with directions shifted by a fiftieth or a twenty-fifth of a
    degree, else without the mirror; at last each direction may take either of its two nearest settings, and a short
    chain is tried in every way.

    Args:
        chain: as measured, or as adjusted: one that is closed must come back to its start.
        step: inches.
        saw_step: degrees; of a closed chain a whole part of 360.
    """
    search = _Search(chain, step, saw_step)
    if search.closes():
        return search.closed(None)
    least = search.in_every_way()
    return search.closed(None if search.found.cost <= 1 else least)


class _Search:
    """The best way so far of rounding one chain."""

    found: RoundedChain
    way: Way

    def __init__(self, chain: Chain, step: Fraction, saw_step: Fraction) -> None:
        self.chain, self.step, self.saw_step = chain, step, saw_step
        self.cost = math.inf

    def closes(self) -> bool:
        """Carry and exchange, about the mirror and then without; say whether that closes."""
        axis = mirror(self.chain)
        # Without a mirror there are four times as many exchanges: a long chain has better ways than shifts.
        shifts = SHIFTS if len(self.chain.lengths) <= MOST_SEARCHED else SHIFTS[:1]
        for about, tried in ((axis, SHIFTS), (whole(self.chain), shifts)):
            if about is None:
                continue
            for way in ways(self.chain, about, self.step, self.saw_step, tried):
                self._keep(exchanged(way.pieces, carried(way.pieces, way.paired), way.paired), way)
                if self.cost <= 1:
                    return True
        return False

    def in_every_way(self) -> float | None:
        """Let directions take either setting; return the least gap there is where every way was tried."""
        least: float | None = None
        for way in ways(self.chain, whole(self.chain), self.step, self.saw_step, EITHER):
            if len(self.chain.lengths) > MOST_SEARCHED:
                self._keep(best_ways(way.pieces), way)
                continue
            found, gap = every_way(way.pieces)
            self._keep(found, way)
            least = gap if least is None else min(least, gap)
        return None if least is None else least * float(self.step)

    def _keep(self, found: RoundedChain, way: Way) -> None:
        if found.cost < self.cost:
            self.found, self.way, self.cost = found, way, found.cost

    def closed(self, least: float | None) -> Closed:
        found, way, count = self.found, self.way, len(self.chain.lengths)
        at = [each[which] for each, which in zip(way.settings, found.chosen, strict=True)]
        true = way.chain.directions
        gaps = [
            math.hypot(*error) * float(self.step) for error in errors(way.pieces, found.marks, found.chosen)
        ]
        bends = 1 if true[-1] > true[0] else -1
        turns = [bends * (after - before) for before, after in pairwise(at)]
        if way.chain.closed:
            turns.append(round(360 / self.saw_step) - sum(turns))
        settings = [_split(turn, _before_the_axis(number, way)) for number, turn in enumerate(turns)]
        saw, back = self.saw_step, (count - way.start) % count
        return Closed(
            lengths=_given([mark * self.step for mark in found.marks], back),
            turns=_given([turn * saw for turn in turns], back),
            settings=_given([(one * saw, other * saw) for one, other in settings], back),
            directions_off=_given(
                [one * float(saw) - (exact - way.crown) for one, exact in zip(at, true, strict=True)], back
            ),
            corner_gaps=_given(gaps, back),
            gap=gaps[-1],
            least_gap=least,
            start=way.start,
            mirrored=way.paired > 0,
            step=self.step,
            saw_step=saw,
        )


def _before_the_axis(corner: int, way: Way) -> bool:
    """Whether a corner comes before the axis, so that its mirrored one is cut as its picture."""
    pieces = way.paired or len(way.pieces)
    return 2 * (corner + 1) <= pieces if corner < pieces - 1 else corner == len(way.pieces) - 2


def _split(turn: int, before_the_axis: bool) -> tuple[int, int]:
    """A turn in saw steps as two settings; an odd step goes to the piece farther from the axis."""
    half, odd = divmod(turn, 2)
    return (half + odd, half) if before_the_axis else (half, half + odd)


def _given(row: Sequence[T], back: int) -> tuple[T, ...]:
    """A row of a chain begun elsewhere, in the order the chain was given."""
    return (*row[back:], *row[:back])
