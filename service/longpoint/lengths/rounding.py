"""Rounds a length once, to what a tape shows, and keeps what the rounding did."""

from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from math import isfinite
from typing import Final

from longpoint.lengths.errors import LengthError
from longpoint.lengths.fraction import Fraction, Real
from longpoint.lengths.parsing import parse
from longpoint.lengths.units import Unit

FLOAT_SLACK: Final = Fraction(1, 10**9)
"""Inches within which a float counts as the mark, or the middle of two marks, that it lies by.

A float reaches us through sines and roots and may miss by a few units in its last place the length that
exact work would give; without this, rounding up would turn 36.00000000000001 into 36 1/16. The slack is
far above a float's error on the longest length (about 2e-12 in) and far below any saw's."""


class RoundTo(StrEnum):
    """The fineness of the marks a length is rounded to."""

    EIGHTH = "1/8 in"
    SIXTEENTH = "1/16 in"
    THIRTY_SECOND = "1/32 in"
    SIXTY_FOURTH = "1/64 in"
    MILLIMETRE = "1 mm"
    HALF_MILLIMETRE = "0.5 mm"

    @property
    def step(self) -> Fraction:
        """From one mark to the next, in inches."""
        return _STEPS[self]

    @property
    def unit(self) -> Unit:
        """The unit the marks are in."""
        return Unit.MM if self.endswith("mm") else Unit.IN


_STEPS: Final = {to: parse(to.value) for to in RoundTo}


class Mode(StrEnum):
    """Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long)."""

    NEAREST = "nearest"
    UP = "up"
    DOWN = "down"


@dataclass(frozen=True, slots=True)
class Rounding:
    """How to round.

    Attributes:
        to: the fineness.
        mode: which mark is taken. A tie goes to the longer piece, since a long piece can be shaved.
    """

    to: RoundTo = RoundTo.SIXTEENTH
    mode: Mode = Mode.NEAREST


@dataclass(frozen=True, slots=True)
class Rounded:
    """A length on a mark.

    Attributes:
        value: inches, a whole number of steps.
        residual: value less the length before rounding, in inches: positive when the piece is long.
    """

    value: Fraction
    residual: Real


def rounded(value: Real, rounding: Rounding) -> Rounded:
    """Round a length in inches and say by how much it moved.

    The residual is exact for an exact length, and the nearest float for a float.

    Raises:
        LengthError: not-finite, for a float that is no number.
    """
    if isinstance(value, float):
        return _rounded_float(value, rounding.to, rounding.mode)
    return _rounded_exact(value, rounding.to, rounding.mode)


def round_to(value: Real, rounding: Rounding) -> Fraction:
    """Return the length rounded, in inches."""
    return rounded(value, rounding).value


def residual(value: Real, rounding: Rounding) -> Real:
    """Return what rounding added, in inches: positive when the piece is long."""
    return rounded(value, rounding).residual


@lru_cache(maxsize=8192)
def _rounded_exact(value: Fraction, to: RoundTo, mode: Mode) -> Rounded:
    step = _STEPS[to]
    mark = _pick(*(value / step).as_integer_ratio(), mode) * step
    return Rounded(mark, mark - value)


@lru_cache(maxsize=8192)
def _rounded_float(value: float, to: RoundTo, mode: Mode) -> Rounded:
    if not isfinite(value):
        raise LengthError(
            "not-finite", f"A computed length came out as {value}. Check the readings it was computed from."
        )
    step = _STEPS[to]
    exactly = Fraction(value)
    steps = exactly / step
    half_steps = Fraction(_pick(*(2 * steps).as_integer_ratio(), Mode.NEAREST), 2)
    if abs(steps - half_steps) * step <= FLOAT_SLACK:
        steps = half_steps
    mark = _pick(*steps.as_integer_ratio(), mode) * step
    return Rounded(mark, float(mark - exactly))


def _pick(above: int, below: int, mode: Mode) -> int:
    """Bring above/below to a whole number."""
    if mode is Mode.UP:
        return -(-above // below)
    if mode is Mode.DOWN:
        return above // below
    return (2 * above + below) // (2 * below)
