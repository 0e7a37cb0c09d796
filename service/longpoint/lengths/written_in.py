"""The unit that a length was written in."""

from __future__ import annotations

import re

from longpoint.lengths.characters import plain
from longpoint.lengths.fraction import Fraction
from longpoint.lengths.length import Length
from longpoint.lengths.parsing import parse
from longpoint.lengths.units import INCHES_PER, UNIT_WORDS, Unit

_UNITS = re.compile(r"\"|'|[a-z]+")
_METRIC = (Unit.MM, Unit.CM, Unit.M)


def unit_of(length: Length) -> Unit | None:
    """The unit that a length was written in; of a bare number, the one it was read in. None where it was written in
    feet and inches, or where no unit makes its number so long, as of one that nobody wrote."""
    words = _UNITS.findall(plain(length.text))
    if words:
        return UNIT_WORDS.get(words[0]) if len(words) == 1 else None
    bare = parse(length.text, Unit.IN)
    return next((unit for unit in Unit if bare * INCHES_PER[unit] == length), None)


def in_another_unit(length: Length, unit: Unit) -> Fraction | None:
    """How long it were, had its number been meant in `unit`; None where nobody would write it so."""
    own = unit_of(length)
    if own is None or own is unit or (unit in _METRIC and "/" in plain(length.text)):
        return None
    return length / INCHES_PER[own] * INCHES_PER[unit]
