"""Reads a length as people write it. What cannot be read one way only is refused, never guessed."""

import re
from collections.abc import Sequence
from typing import Any, Final

from longpoint.lengths.characters import plain
from longpoint.lengths.errors import LengthError, quoted
from longpoint.lengths.fraction import Fraction
from longpoint.lengths.refusals import refusal
from longpoint.lengths.tape_marks import check_decimal_feet, check_fraction
from longpoint.lengths.units import INCHES_PER, MAX_LENGTH, UNIT_WORDS, Unit
from longpoint.texts import say

MAX_TEXT: Final = 64
"""The longest text read, in characters."""

MAX_DIGITS: Final = 13
"""Digits in any one number: enough for every text that this room prints of a length it has read."""

MAX_DENOMINATOR: Final = 10**9
"""The finest decimal read: far finer than a tape, and it keeps exact sums short."""

_NUMBER = r"(?:(?:([0-9]+)(?: +|- ?))?([0-9]+)/([0-9]+)|([0-9]+(?:\.[0-9]+)?|\.[0-9]+))"
_ONE_UNIT = re.compile(rf"{_NUMBER} *(\"|'|[a-z]+\.?)?")
_FEET_AND_INCHES = re.compile(
    rf"([0-9]+) *(?:'|(?:ft|foot|feet)\.?) *(?:- *)?{_NUMBER} *(\"|(?:ins?|inch|inches)\.?)?",
)


def parse(text: str, unit: Unit | None = None) -> Fraction:
    """Read one length and return it in inches, exactly.

    Reads `30-5/8"`, `30 5/8 in`, `30⅝"`, `2' 6-5/8"`, `2ft 6.625in`, `5'`, `778 mm`, `77.8cm`,
    `1 m`, with straight or curly marks. A decimal comma is refused, since 1,250 reads two ways;
    so are feet like 2.10, which may be 2' 10". Inches of 12 or more after feet, a fraction of 1 or
    more and one that no tape shows (5/7) are refused, since they are more often a slip than meant.
    A negative length is refused.

    Args:
        text: at most 64 characters.
        unit: what a bare number is in; without it a bare number is refused. Inches after feet may
            be bare only where it is inches.

    Raises:
        LengthError: with the fault's code and what to write instead.
    """
    if len(text) > MAX_TEXT:
        raise LengthError(
            "too-long",
            say("problem", "lengths.too-long", characters=len(text), most=MAX_TEXT),
        )
    return _parse(text, unit)


def _parse(text: str, unit: Unit | None) -> Fraction:
    written = plain(text)
    if found := _ONE_UNIT.fullmatch(written):
        *number, word = found.groups()
        value = _number(text, number)
        read_in = _unit(text, word, unit)
        length = value * INCHES_PER[read_in]
        if read_in is Unit.FT:
            check_decimal_feet(text, number[-1])
    elif found := _FEET_AND_INCHES.fullmatch(written):
        feet, *number, word = found.groups()
        length = _feet_and_inches(text, feet, _number(text, number), word or unit)
        read_in = Unit.FT
    else:
        raise refusal(text, written)
    if length > MAX_LENGTH:
        raise LengthError(
            "too-large",
            say("problem", "lengths.too-large", text=quoted(text), most=int(MAX_LENGTH)),
        )
    check_fraction(text, number, length, read_in)
    if length.denominator > MAX_DENOMINATOR:
        raise LengthError("too-fine", say("problem", "lengths.too-fine", text=quoted(text)))
    return length


def _unit(text: str, word: str | None, default: Unit | None) -> Unit:
    if word is None:
        if default is None:
            raise LengthError("missing-unit", say("problem", "lengths.missing-unit", text=quoted(text)))
        return default
    read_in = UNIT_WORDS.get(word.rstrip("."))
    if read_in is None:
        raise LengthError(
            "unknown-unit",
            say("problem", "lengths.unknown-unit", word=quoted(word), text=quoted(text)),
        )
    return read_in


def _feet_and_inches(text: str, feet: str, inches: Fraction, word: str | None) -> Fraction:
    if word is None or UNIT_WORDS[word.rstrip(".")] is not Unit.IN:
        raise LengthError("missing-unit", say("problem", "lengths.inches-without-unit", text=quoted(text)))
    if inches >= 12:
        raise LengthError(
            "inches-past-a-foot", say("problem", "lengths.inches-past-a-foot", text=quoted(text))
        )
    return _whole(text, feet) * INCHES_PER[Unit.FT] + inches


def _number(text: str, parts: Sequence[str | Any]) -> Fraction:
    whole, numerator, denominator, decimal = parts
    if decimal is not None:
        return _decimal(text, decimal)
    return _fraction(text, whole, numerator, denominator)


def _decimal(text: str, decimal: str) -> Fraction:
    ones, _, places = decimal.partition(".")
    tenfold = 10 ** len(places)
    return Fraction(_whole(text, ones or "0") * tenfold + _whole(text, places or "0"), tenfold)


def _fraction(text: str, whole: str | None, numerator: str, denominator: str) -> Fraction:
    above, below = _whole(text, numerator), _whole(text, denominator)
    if below == 0:
        raise LengthError(
            "zero-denominator",
            say("problem", "lengths.zero-denominator", text=quoted(text)),
        )
    return Fraction(_whole(text, whole or "0") * below + above, below)


def _whole(text: str, digits: str) -> int:
    if len(digits) > MAX_DIGITS:
        raise LengthError(
            "too-many-digits",
            say("problem", "lengths.too-many-digits", text=quoted(text), most=MAX_DIGITS),
        )
    return int(digits)
