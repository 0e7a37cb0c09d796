"""Text to exact length and back, as the service reads and writes it."""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction
from typing import Literal, get_args

from longpoint_sdk._errors import LengthError

Unit = Literal["in", "ft", "mm", "cm", "m"]
"""A unit a tape carries; `ft` prints feet and inches."""

INCHES_PER: dict[Unit, Fraction] = {
    "in": Fraction(1),
    "ft": Fraction(12),
    "mm": Fraction(5, 127),
    "cm": Fraction(50, 127),
    "m": Fraction(5000, 127),
}
"""Inches in one of each unit: an inch is 25.4 mm, exactly."""

_WORDS: dict[str, Unit] = {unit: unit for unit in get_args(Unit)} | {
    '"': "in",
    "ins": "in",
    "inch": "in",
    "inches": "in",
    "'": "ft",
    "foot": "ft",
    "feet": "ft",
    "millimeter": "mm",
    "millimeters": "mm",
    "millimetre": "mm",
    "millimetres": "mm",
    "centimeter": "cm",
    "centimeters": "cm",
    "centimetre": "cm",
    "centimetres": "cm",
    "meter": "m",
    "meters": "m",
    "metre": "m",
    "metres": "m",
}

_MARKS = str.maketrans(
    dict.fromkeys("′’‘ʹ", "'")
    | dict.fromkeys("″”“ʺ", '"')
    | dict.fromkeys("⁄∕", "/")
    | dict.fromkeys("‐‑‒–−", "-")
    | dict.fromkeys("\t\u00a0\u2002\u2003\u2007\u2009\u202f", " ")
)
_BUILT_FRACTION = re.compile("[¼½¾⅐-⅞]|[⁰¹²³⁴-⁹]+[⁄/][₀-₉]+")

_NUMBER = r"(?:(?:([0-9]+)(?: +|- ?))?([0-9]+)/([0-9]+)|([0-9]+(?:\.[0-9]+)?|\.[0-9]+))"
_ONE_UNIT = re.compile(rf"{_NUMBER} *(\"|'|[a-z]+\.?)?")
_FEET_AND_INCHES = re.compile(
    rf"([0-9]+) *(?:'|(?:ft|foot|feet)\.?) *(?:- *)?{_NUMBER} *(\"|(?:ins?|inch|inches)\.?)?"
)

_FINEST_TAPE_FRACTION = 64
_FINEST_FRACTION_READ = 128
_FINEST_DECIMAL = 10**9
_INCHES_AFTER_A_POINT = re.compile(r"[0-9]+\.(?:0[1-9]|1[01])")


def read(text: str, unit: Unit | None) -> tuple[Fraction, Unit]:
    """The inches of a length as people write it, and the unit it is in.

    Besides what the service reads, a leading minus is taken: a residual may be negative.

    Raises:
        LengthError: for text that is no length, or has no unit and none was given.
    """
    written = _plain(text)
    sign = -1 if written.startswith("-") else 1
    written = written.removeprefix("-")
    if found := _ONE_UNIT.fullmatch(written):
        *number, word = found.groups()
        read_in = _WORDS.get(word.rstrip(".")) if word else unit
        if read_in is None:
            raise LengthError(_unreadable(text, f"has the unknown unit {word}" if word else "has no unit"))
        if read_in == "ft" and _INCHES_AFTER_A_POINT.fullmatch(number[-1] or ""):
            raise LengthError(_unreadable(text, "may be feet and inches, or decimal feet"))
        return sign * _value(text, *number) * INCHES_PER[read_in], read_in
    if found := _FEET_AND_INCHES.fullmatch(written):
        feet, *number, word = found.groups()
        inches = _value(text, *number)
        if not word and unit != "in":
            raise LengthError(_unreadable(text, "ends without a unit"))
        if inches >= 12:
            raise LengthError(_unreadable(text, "has 12 inches or more after its feet"))
        return sign * (int(feet) * 12 + inches), "ft"
    raise LengthError(_unreadable(text, "is no length"))


def _plain(text: str) -> str:
    if not text.isascii():
        text = _BUILT_FRACTION.sub(lambda built: f" {unicodedata.normalize('NFKC', built[0])} ", text)
        text = text.translate(_MARKS)
    return text.lower().replace("\t", " ").replace("''", '"').strip(" \r\n")


def _value(
    text: str, whole: str | None, above: str | None, below: str | None, decimal: str | None
) -> Fraction:
    if decimal is not None:
        return Fraction(f"0{decimal}" if decimal.startswith(".") else decimal)
    assert above is not None
    assert below is not None
    if int(below) == 0:
        raise LengthError(_unreadable(text, "divides by zero"))
    if int(above) >= int(below):
        raise LengthError(_unreadable(text, "has a fraction of 1 or more"))
    if _FINEST_FRACTION_READ % int(below):
        raise LengthError(_unreadable(text, "has a fraction that no tape shows"))
    return int(whole or 0) + Fraction(int(above), int(below))


def _unreadable(text: str, wrong: str) -> str:
    shown = text if len(text) <= 40 else text[:37] + "..."
    return f"{shown!r} {wrong}. Write it like '30 5/8 in', '2 ft 6-5/8 in' or '778 mm'."


def write(inches: Fraction, unit: Unit) -> str:
    """A length as a tape reads: `37 1/2 in`, `952.5 mm`, `3' 1 1/2"`. Always exact.

    What is made of inches and millimeters together and is no tape's fraction prints in millimeters, so that it reads
    back to itself.
    """
    if unit in ("in", "ft") and not _marked(inches) and _marked(inches / INCHES_PER["mm"]):
        unit = "mm"
    sign = "-" if inches < 0 else ""
    size = abs(inches) / INCHES_PER[unit]
    if unit != "ft":
        return f"{sign}{_number(size, fractions_first=unit == 'in')} {unit}"
    feet, rest = divmod(size, 1)
    text = _number(rest * 12, fractions_first=True)
    return f"{sign}{feet}' {text}\"" if feet else f'{sign}{text}"'


def _marked(size: Fraction) -> bool:
    return _FINEST_TAPE_FRACTION % size.denominator == 0 or _FINEST_DECIMAL % size.denominator == 0


def _number(size: Fraction, *, fractions_first: bool) -> str:
    whole, part = divmod(size.numerator, size.denominator)
    if not part:
        return str(whole)
    on_a_tape = fractions_first and _FINEST_TAPE_FRACTION % size.denominator == 0
    if not on_a_tape and _FINEST_DECIMAL % size.denominator == 0:
        return f"{whole}.{part * _FINEST_DECIMAL // size.denominator:09d}".rstrip("0")
    return f"{whole} {part}/{size.denominator}" if whole else f"{part}/{size.denominator}"
