"""Prints exact lengths so that they read back to the same value."""

from functools import lru_cache
from typing import Final

from longpoint.lengths.fraction import Fraction
from longpoint.lengths.units import INCHES_PER, Unit

_FINEST_TAPE_FRACTION: Final = 64
_SHORT_DECIMAL: Final = 10_000


def tape(value: Fraction, unit: Unit = Unit.IN) -> str:
    """Print a length in inches as a tape reads in unit: `37 1/2 in`, `952.5 mm`, `3' 1 1/2"`.

    Exact always: what is neither a tape's fraction nor a short decimal prints as the fraction it is
    (`17 253/508 in`). `parse` reads it back to the same value, up to its own limits of size and digits. A
    negative value (a residual) carries a leading minus, which `parse` refuses.
    """
    numerator, denominator = value.as_integer_ratio()
    return _tape(numerator, denominator, unit)


def feet_inches(value: Fraction) -> str:
    """Print a length in inches as feet and inches: `3' 1 1/2"`, `5' 0"`, and `10 1/2"` under a foot."""
    return tape(value, Unit.FT)


def exact(value: Fraction, unit: Unit) -> str:
    """Print a length in inches as one exact fraction of unit, without the unit: `75/2`, `36`."""
    numerator, denominator = value.as_integer_ratio()
    return _exact(numerator, denominator, unit)


@lru_cache(maxsize=8192)
def _tape(numerator: int, denominator: int, unit: Unit) -> str:
    sign = "-" if numerator < 0 else ""
    size = Fraction(abs(numerator), denominator) / INCHES_PER[unit]
    if unit is not Unit.FT:
        return f"{sign}{_number(size, fractions_first=unit is Unit.IN)} {unit}"
    feet, rest = divmod(size, 1)
    inches = _number(rest * INCHES_PER[unit], fractions_first=True)
    return f"{sign}{feet}' {inches}\"" if feet else f'{sign}{inches}"'


@lru_cache(maxsize=8192)
def _exact(numerator: int, denominator: int, unit: Unit) -> str:
    return str(Fraction(numerator, denominator) / INCHES_PER[unit])


def _number(size: Fraction, *, fractions_first: bool) -> str:
    if size.denominator == 1:
        return str(size.numerator)
    on_a_tape = fractions_first and _FINEST_TAPE_FRACTION % size.denominator == 0
    if not on_a_tape and _SHORT_DECIMAL % size.denominator == 0:
        whole, rest = divmod(size, 1)
        return f"{whole}.{int(rest * _SHORT_DECIMAL):04d}".rstrip("0")
    whole, rest = divmod(size, 1)
    return f"{whole} {rest}" if whole else str(rest)
