"""Text to exact length and back: units, parsing, rounding with its residual, and printing.

Every length inside is an exact number of inches. Nothing here does I/O.
"""

from longpoint.lengths.errors import LengthError
from longpoint.lengths.fraction import MARKED, Fraction, Irrational, Real, Together
from longpoint.lengths.length import MADE_REAL, Length, PositiveLength, real
from longpoint.lengths.parsing import MAX_TEXT, parse
from longpoint.lengths.printing import exact, feet_inches, tape
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
from longpoint.lengths.written import (
    EXACT,
    Gap,
    LengthWriter,
    MarkedLength,
    exact_lengths,
    gap,
    length_writer,
)

__all__ = [
    "EXACT",
    "MADE_REAL",
    "MARKED",
    "MAX_LENGTH",
    "MAX_TEXT",
    "Fraction",
    "Gap",
    "Irrational",
    "Length",
    "LengthError",
    "LengthWriter",
    "MarkedLength",
    "Mode",
    "PositiveLength",
    "Real",
    "RoundTo",
    "Rounded",
    "Rounding",
    "Together",
    "Unit",
    "counter",
    "exact",
    "exact_lengths",
    "feet_inches",
    "gap",
    "length_writer",
    "mark",
    "parse",
    "real",
    "residual",
    "round_to",
    "rounded",
    "tape",
]
