"""Rounds a length once, to what a tape shows, and keeps what the rounding did."""

from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from math import ceil, floor, isfinite
from typing import Final, NamedTuple

from longpoint.lengths.errors import LengthError
from longpoint.lengths.fraction import Fraction, Real
from longpoint.lengths.parsing import parse
from longpoint.lengths.units import Unit

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
_LONGEST_BINARY: Final = 1e9
_BINARY_SCALES: Final = {to: float(1 / step) for to, step in _STEPS.items() if (1 / step).denominator == 1}
_STEP_RATIOS: Final = {to: step.as_integer_ratio() for to, step in _STEPS.items()}


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


def _rounded_float(value: float, to: RoundTo, mode: Mode) -> Rounded:
    if not isfinite(value):
        raise LengthError(
            "not-finite", f"A computed length came out as {value}. Check the readings it was computed from."
        )
    scale = _BINARY_SCALES.get(to)
    if scale is not None and abs(value) < _LONGEST_BINARY:
        return _rounded_binary(value, scale, to, mode)
    # In whole numbers: the step is rise/run, the length top/bottom, and above/below counts the steps in it.
    rise, run = _STEP_RATIOS[to]
    top, bottom = value.as_integer_ratio()
    above, below = top * run, bottom * rise
    half_steps = _pick(2 * above, below, Mode.NEAREST)
    if abs(2 * above - half_steps * below) * rise * _SLACK_PARTS <= 2 * below * run:
        above, below = half_steps, 2
    mark = _pick(above, below, mode)
    return Rounded(_mark(mark, to), (mark * rise * bottom - top * run) / (run * bottom))


def _rounded_binary(value: float, scale: float, to: RoundTo, mode: Mode) -> Rounded:
    """Round to a half, a quarter and so on of an inch, where multiplying by the scale loses nothing of a float."""
    exactly = steps = value * scale
    half_steps = floor(2 * steps + 0.5)
    if abs(2 * steps - half_steps) * _SLACK_PARTS <= 2 * scale:
        steps = half_steps / 2
    number = ceil(steps) if mode is Mode.UP else floor(steps) if mode is Mode.DOWN else floor(steps + 0.5)
    return Rounded(_mark(number, to), (number - exactly) / scale)


@lru_cache(maxsize=8192)
def _mark(number: int, to: RoundTo) -> Fraction:
    """The length at a mark, counted from nought."""
    return number * _STEPS[to]


def _pick(above: int, below: int, mode: Mode) -> int:
    """Bring above/below to a whole number."""
    if mode is Mode.UP:
        return -(-above // below)
    if mode is Mode.DOWN:
        return above // below
    return (2 * above + below) // (2 * below)
