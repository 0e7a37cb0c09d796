"""Text to exact length and back: units, parsing, rounding with its residual, and printing.

Every length inside is an exact number of inches. Nothing here does I/O.
"""

from longpoint.lengths.errors import LengthError
from longpoint.lengths.fraction import Fraction, Real
from longpoint.lengths.parsing import MAX_TEXT, parse
from longpoint.lengths.printing import exact, feet_inches, spoken, tape
from longpoint.lengths.rounding import (
    Mode,
    Rounded,
    Rounding,
    RoundTo,
    counter,
    mark,
    residual,
    round_to,
    rounded,
)
from longpoint.lengths.units import MAX_LENGTH, Unit

__all__ = [
    "MAX_LENGTH",
    "MAX_TEXT",
    "Fraction",
    "LengthError",
    "Mode",
    "Real",
    "RoundTo",
    "Rounded",
    "Rounding",
    "Unit",
    "counter",
    "exact",
    "feet_inches",
    "mark",
    "parse",
    "residual",
    "round_to",
    "rounded",
    "spoken",
    "tape",
]
