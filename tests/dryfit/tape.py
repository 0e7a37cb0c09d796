"""Reads lengths from JSON, by its own rules: inches as a Fraction, or a float where the answer gives a real."""

import re
from fractions import Fraction
from typing import Any

INCHES = {
    "in": Fraction(1),
    '"': Fraction(1),
    "ft": Fraction(12),
    "'": Fraction(12),
    "mm": Fraction(5, 127),
    "cm": Fraction(50, 127),
    "m": Fraction(5000, 127),
}
_NUMBER = r"(?:(\d+)[ -](?=\d+/))?(\d+/\d+|\d*\.?\d+)"
_FEET = re.compile(rf"(\d+) ?(?:'|ft) ?-?{_NUMBER} ?(?:\"|in)")
_PLAIN = re.compile(rf"(-?){_NUMBER} ?(\"|'|[a-z]+)?")


def inches(text: str, unit: str | None = None) -> Fraction:
    """A length as it was written in a request or as an answer's text."""
    if found := _FEET.fullmatch(text):
        feet, whole, rest = found.groups()
        return 12 * int(feet) + int(whole or 0) + Fraction(rest)
    found = _PLAIN.fullmatch(text)
    assert found, f"the dry fit cannot read {text!r}"
    sign, whole, rest, word = found.groups()
    size = (int(whole or 0) + Fraction(rest)) * INCHES[word or unit or ""]
    return -size if sign else size


def unrounded(length: dict[str, Any]) -> Fraction | float:
    """An answer's length before it was rounded."""
    size = INCHES[length["unit"]]
    if length["exact"] is not None:
        return Fraction(length["exact"]) * size
    return float(length["real"]) * float(size)


def as_cut(length: dict[str, Any]) -> Fraction:
    """An answer's length as the tape will mark it."""
    return inches(length["text"])


def rounding_error(length: dict[str, Any]) -> float:
    """By how much an answer's text misses its length, positive when the piece is long."""
    return float(as_cut(length) - unrounded(length))
