"""What no tape shows, refused with the mark that is nearest to it."""

import re
from collections.abc import Sequence
from typing import Any, Final

from longpoint.lengths.errors import LengthError, quoted
from longpoint.lengths.fraction import Fraction
from longpoint.lengths.printing import tape
from longpoint.lengths.units import INCHES_PER, Unit
from longpoint.texts import say

FINEST_FRACTION: Final = 128
"""The finest fraction read: halves of the finest a tape shows."""

# The marks that every tape has. Common practice, no source.
_INCH_MARK: Final = Fraction(1, 16)
_INCHES_AFTER_A_POINT: Final = re.compile(r"([0-9]+)\.(0[1-9]|1[01])")


def check_fraction(text: str, parts: Sequence[str | Any], length: Fraction, unit: Unit) -> None:
    """Refuse a fraction of 1 or more, and one that is not made of halves.

    Args:
        text: as it was written.
        parts: its whole number, its fraction's upper and lower number, and its decimal, each None where it has none.
        length: inches.
        unit: what it is in.
    """
    _, above, below, decimal = parts
    if decimal is not None:
        return
    if int(above) >= int(below):
        nearest = nearest_mark(length, int(below), unit)
        detail = say("problem", "lengths.improper-fraction", text=quoted(text), nearest=nearest)
        raise LengthError("improper-fraction", detail)
    if FINEST_FRACTION % int(below):
        nearest = nearest_mark(length, int(below), unit)
        detail = say("problem", "lengths.not-on-a-tape", text=quoted(text), below=below, nearest=nearest)
        raise LengthError("not-on-a-tape", detail)


def nearest_mark(length: Fraction, below: int, unit: Unit) -> str:
    """The tape's mark nearest to a length whose fraction has a lower number: itself where that is made of halves."""
    if FINEST_FRACTION % below:
        step = _INCH_MARK if unit in (Unit.IN, Unit.FT) else INCHES_PER[Unit.MM]
        length = int(length / step + Fraction(1, 2)) * step
    return tape(length, unit)


def check_decimal_feet(text: str, decimal: str | None) -> None:
    """Refuse decimal feet whose decimals are written as inches are: 2.10, 2.06."""
    if decimal is None or not (found := _INCHES_AFTER_A_POINT.fullmatch(decimal)):
        return
    feet, inches = found.groups()
    detail = say(
        "problem",
        "lengths.feet-or-inches",
        text=quoted(text),
        inches=f"{int(feet)}' {int(inches)}\"",
        decimal=f"{decimal}0 ft",
    )
    raise LengthError("feet-or-inches", detail)
