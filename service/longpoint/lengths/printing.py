"""Prints exact lengths."""

from functools import lru_cache
from math import gcd
from typing import Final

from longpoint.lengths.fraction import Fraction
from longpoint.lengths.units import INCHES_PER, Unit

_FINEST_TAPE_FRACTION: Final = 64
# An enumeration's member costs more to fetch than to compare.
_INCH: Final = Unit.IN
_FINEST_DECIMAL: Final = 10**9  # enough for a 64th of an inch in meters


@lru_cache(maxsize=8192)
def tape(value: Fraction, unit: Unit = Unit.IN) -> str:
    """Print a length in inches as a tape reads in unit: `37 1/2 in`, `952.5 mm`, `3' 1 1/2"`.

    Exact always: what is neither a tape's fraction nor a decimal of at most nine places prints as the
    fraction it is (`17 253/508 in`), which `parse` refuses. All else it reads back to the same value, up to its own
    limits of size and digits. A negative value (a residual) carries a leading minus, which `parse` refuses, too.
    """
    sign = "-" if value < 0 else ""
    size = abs(value) / INCHES_PER[unit]
    if unit is not Unit.FT:
        return f"{sign}{_number(size, fractions_first=unit is Unit.IN)} {unit}"
    feet, rest = divmod(size, 1)
    inches = _number(rest * INCHES_PER[unit], fractions_first=True)
    return f"{sign}{feet}' {inches}\"" if feet else f'{sign}{inches}"'


def readable(value: Fraction) -> str:
    """Print a length in inches so that `parse` reads it back: what is made of millimeters and fractions of an inch
    together is neither a tape's fraction nor a decimal in inches, and prints in millimeters."""
    denominator = value.denominator
    in_inches = _FINEST_TAPE_FRACTION % denominator == 0 or _FINEST_DECIMAL % denominator == 0
    return tape(value, _INCH if in_inches else Unit.MM)


def feet_inches(value: Fraction) -> str:
    """Print a length in inches as feet and inches: `3' 1 1/2"`, `5' 0"`, and `10 1/2"` under a foot."""
    return tape(value, Unit.FT)


def exact(value: Fraction, unit: Unit) -> str:
    """Print a length in inches as one exact fraction of unit, without the unit: `75/2`, `36`."""
    return str(value if unit is _INCH else value / INCHES_PER[unit])


def ratio(above: int, below: int, unit: Unit) -> str:
    """Print above/below of a unit as a tape reads, without the unit, for whoever has no fraction made of the two."""
    common = gcd(above, below)
    sign = "-" if above < 0 else ""
    return sign + _ratio(abs(above) // common, below // common, fractions_first=unit is Unit.IN)


def _number(size: Fraction, *, fractions_first: bool) -> str:
    return _ratio(*size.as_integer_ratio(), fractions_first=fractions_first)


def _ratio(numerator: int, denominator: int, *, fractions_first: bool) -> str:
    if denominator == 1:
        return str(numerator)
    whole, part = divmod(numerator, denominator)
    on_a_tape = fractions_first and _FINEST_TAPE_FRACTION % denominator == 0
    if not on_a_tape and _FINEST_DECIMAL % denominator == 0:
        return f"{whole}.{part * _FINEST_DECIMAL // denominator:09d}".rstrip("0")
    return f"{whole} {part}/{denominator}" if whole else f"{part}/{denominator}"
