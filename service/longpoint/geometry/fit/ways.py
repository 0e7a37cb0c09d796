"""The ways of rounding a chain, in the order they are tried: mirrored or not, directions shifted a little or not."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from longpoint.geometry.fit.chain import Chain, Mirror, begun_at
from longpoint.geometry.fit.rounded_chain import SAME_MARK, ChainPiece
from longpoint.lengths import Fraction
from longpoint.values import Value

SHIFTS: Sequence[float | None] = (0.0, 0.02, -0.02, 0.04, -0.04)
"""Degrees that directions are shifted by before they are rounded."""

EITHER: Sequence[float | None] = (None,)
"""In place of a shift: each direction takes either of its two nearest settings."""

_LEANS = (0, 1, -1)


class Way(Value, frozen=True):
    """One way of rounding.

    Attributes:
        chain: begun at `start`.
        start: the piece it begins at, in the order it was given.
        crown: degrees of the direction that settings are counted from.
        settings: of each piece, the directions it may take, in steps of the saw from the crown.
        pieces: the same, for the search.
        paired: how many pieces from the start on are mirrored, first with last.
    """

    chain: Chain
    start: int
    crown: float
    settings: tuple[tuple[int, ...], ...]
    pieces: tuple[ChainPiece, ...]
    paired: int


def whole(chain: Chain) -> Mirror:
    """A chain taken without a mirror: directions from the line of the springings, or from a polygon's first piece."""
    return Mirror(0, chain.directions[0] if chain.closed else 0.0, 0)


def ways(
    chain: Chain, axis: Mirror, step: Fraction, saw_step: Fraction, shifts: Sequence[float | None] = SHIFTS
) -> Iterator[Way]:
    """Every way about one axis. A length on a mark first stays there, then may grow one step, then shrink one."""
    turned = begun_at(chain, axis.start)
    on_a_mark = any(abs(math.remainder(float(length / step), 1)) < SAME_MARK for length in chain.lengths)
    for shift in shifts:
        settings = tuple(
            _settings(
                (degrees - axis.crown) / float(saw_step), shift, float(saw_step), _side(number, axis, chain)
            )
            for number, degrees in enumerate(turned.directions)
        )
        for lean in _LEANS if on_a_mark else _LEANS[:1]:
            pieces = tuple(
                _piece(float(length / step), degrees - axis.crown, each, float(saw_step), lean)
                for length, degrees, each in zip(turned.lengths, turned.directions, settings, strict=True)
            )
            yield Way(turned, axis.start, axis.crown, settings, pieces, axis.paired)


def _settings(counted: float, shift: float | None, saw_step: float, side: int) -> tuple[int, ...]:
    if shift is None:
        return tuple({math.floor(counted + SAME_MARK), math.ceil(counted - SAME_MARK)})
    return (_away_from_nought(counted + side * shift / saw_step),)


def _side(number: int, axis: Mirror, chain: Chain) -> int:
    """Which way a shift turns a piece: one way before the axis, the other after it. What lies across it stays, and
    so does the first piece of a polygon without a mirror."""
    if not axis.paired:
        return int(number > 0 or not chain.closed)
    last = axis.paired - 1 - number
    return 0 if number >= axis.paired else (last > number) - (last < number)


def _away_from_nought(counted: float) -> int:
    """The nearest whole number, halves away from zero."""
    return int(math.copysign(math.floor(abs(counted) + 0.5 + SAME_MARK), counted))


def _piece(size: float, degrees: float, settings: tuple[int, ...], saw_step: float, lean: int) -> ChainPiece:
    """A piece of `size` steps. Its two marks differ by one, or not at all where it lies on one and does not lean."""
    low, high = math.floor(size + SAME_MARK), math.ceil(size - SAME_MARK)
    if low == high:
        low, high = max(min(low, low + lean), 0), max(high, high + lean)
    true = math.radians(degrees)
    units = tuple((math.cos(at), math.sin(at)) for at in (math.radians(each * saw_step) for each in settings))
    return ChainPiece(size * math.cos(true), size * math.sin(true), low, high, units)
