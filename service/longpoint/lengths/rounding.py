"""Rounds a length once, to what a tape shows, and keeps what the rounding did."""

from collections.abc import Callable
from enum import StrEnum
from functools import cache, lru_cache, partial
from math import ceil, floor, isfinite
from typing import Final, NamedTuple

from longpoint.lengths.errors import LengthError
from longpoint.lengths.fraction import Fraction, Real, Together
from longpoint.lengths.parsing import parse
from longpoint.lengths.units import Unit
from longpoint.texts import say
from longpoint.values.value import Given

_SLACK_PARTS: Final = 10**9
"""A float counts as the mark, or the middle of two marks, that lies within this part of an inch.

A float reaches us through sines and roots and may miss by a few units in its last place the length that
exact work would give; without this, rounding up would turn 36.00000000000001 into 36 1/16. The slack is
far above a float's error on the longest length (about 2e-12 in) and far below any saw's."""


class RoundTo(StrEnum):
    """The fineness of the marks a length is rounded to."""

    EIGHTH = "1/8 in"
    SIXTEENTH = "1/16 in"
    THIRTY_SECOND = "1/32 in"
    SIXTY_FOURTH = "1/64 in"
    MILLIMETER = "1 mm"
    HALF_MILLIMETER = "0.5 mm"

    @property
    def step(self) -> Fraction:
        """From one mark to the next, in inches."""
        return _step(self)

    @property
    def unit(self) -> Unit:
        """The unit the marks are in."""
        return Unit.MM if self.endswith("mm") else Unit.IN


@cache
def _step(to: RoundTo) -> Fraction:
    return parse(to.value)


_LONGEST_BINARY: Final = 1e5


class Mode(StrEnum):
    """Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long)."""

    NEAREST = "nearest"
    UP = "up"
    DOWN = "down"


# An enumeration's member costs more to fetch than to compare.
_NEAREST, _UP, _DOWN = Mode.NEAREST, Mode.UP, Mode.DOWN


class Rounding(Given, frozen=True):
    """A rule by which lengths of the answer are rounded.

    Attributes:
        to: The fineness of the tape they will be marked with. It decides the unit of the answer, too.
        mode: Which mark is taken: the nearest (the longer of two equally near), the next up or the next down.
    """

    to: RoundTo = RoundTo.SIXTEENTH
    mode: Mode = Mode.NEAREST


class Rounded(NamedTuple):
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
    if isinstance(value, Together) and value.step == _step(rounding.to):
        return Rounded(value.mark, float(value.mark) - value)
    if isinstance(value, float):
        number, residual = counter(rounding)(value)
        return Rounded(mark(number, rounding), residual)
    return _rounded_exact(value, rounding.to, rounding.mode)


def round_to(value: Real, rounding: Rounding) -> Fraction:
    """Return the length rounded, in inches."""
    return rounded(value, rounding).value


def residual(value: Real, rounding: Rounding) -> Real:
    """Return what rounding added, in inches: positive when the piece is long."""
    return rounded(value, rounding).residual


@lru_cache(maxsize=8192)
def _rounded_exact(value: Fraction, to: RoundTo, mode: Mode) -> Rounded:
    step = _step(to)
    mark = pick(*(value / step).as_integer_ratio(), mode) * step
    return Rounded(mark, mark - value)


@lru_cache(maxsize=64)
def counter(rounding: Rounding) -> Callable[[float], tuple[int, float]]:
    """What counts the steps from zero to the mark a float of inches is rounded to, and says what that added, in
    inches; fetch it once for many lengths.

    It raises LengthError, not-finite, for a float that is no number.
    """
    steps = 1 / _step(rounding.to)
    slowly = partial(_count, rounding.to, rounding.mode)
    if steps.denominator != 1:
        return slowly
    # For a half, a quarter and so on of an inch, where multiplying by the scale loses nothing of a float.
    scale = float(steps)
    slack = scale / _SLACK_PARTS
    pick, past = {
        _UP: (ceil, -slack),
        _DOWN: (floor, slack),
        _NEAREST: (floor, slack + 0.5),
    }[rounding.mode]

    def quickly(value: float) -> tuple[int, float]:
        if not -_LONGEST_BINARY < value < _LONGEST_BINARY:
            return slowly(value)
        counted = value * scale
        number = pick(counted + past)
        return number, (number - counted) / scale

    return quickly


def _count(to: RoundTo, mode: Mode, value: float) -> tuple[int, float]:
    if not isfinite(value):
        raise LengthError("not-finite", say("problem", "lengths.computed-not-finite", value=str(value)))
    # In whole numbers: the step is rise/run, the length top/bottom, and above/below counts the steps in it.
    rise, run = _step(to).as_integer_ratio()
    top, bottom = value.as_integer_ratio()
    above, below = top * run, bottom * rise
    half_steps = pick(2 * above, below, _NEAREST)
    if abs(2 * above - half_steps * below) * rise * _SLACK_PARTS <= 2 * below * run:
        above, below = half_steps, 2
    number = pick(above, below, mode)
    return number, (number * rise * bottom - top * run) / (run * bottom)


def mark(number: int, rounding: Rounding) -> Fraction:
    """Return the length at a mark, counted from zero, in inches."""
    return number * _step(rounding.to)


def pick(above: int, below: int, mode: Mode) -> int:
    """Bring above/below to a whole number."""
    if mode is _UP:
        return -(-above // below)
    if mode is _DOWN:
        return above // below
    return (2 * above + below) // (2 * below)
