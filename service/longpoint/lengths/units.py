"""The units a tape carries. pint knows their sizes; nothing else in the service imports it."""

from collections.abc import Mapping
from enum import StrEnum
from fractions import Fraction as StandardFraction
from typing import Final

from longpoint.lengths.fraction import Fraction

MAX_LENGTH: Final = Fraction(12_000)
"""The longest length read, in inches: a thousand feet, far past any trim."""


class Unit(StrEnum):
    """A unit of length, named as it is written after a number."""

    IN = "in"
    FT = "ft"
    MM = "mm"
    CM = "cm"
    M = "m"


class _Sizes(dict[Unit, Fraction]):
    """Sizes of units in inches. pint, which takes half a second to start, is asked when the first metric one comes."""

    def __missing__(self, unit: Unit) -> Fraction:
        from pint import UnitRegistry

        registry: UnitRegistry[StandardFraction] = UnitRegistry(non_int_type=StandardFraction)
        for metric in (Unit.MM, Unit.CM, Unit.M):
            one = registry.Quantity(StandardFraction(1), metric.value)
            self[metric] = Fraction(one.to("inch").magnitude)
        return self[unit]


INCHES_PER: Final[Mapping[Unit, Fraction]] = _Sizes({Unit.IN: Fraction(1), Unit.FT: Fraction(12)})
"""Inches in one of each unit, exactly. Read once: pint is far too slow to ask for every length."""

UNIT_WORDS: Final = {
    '"': Unit.IN,
    "in": Unit.IN,
    "ins": Unit.IN,
    "inch": Unit.IN,
    "inches": Unit.IN,
    "'": Unit.FT,
    "ft": Unit.FT,
    "foot": Unit.FT,
    "feet": Unit.FT,
    "mm": Unit.MM,
    "millimeter": Unit.MM,
    "millimeters": Unit.MM,
    "millimetre": Unit.MM,
    "millimetres": Unit.MM,
    "cm": Unit.CM,
    "centimeter": Unit.CM,
    "centimeters": Unit.CM,
    "centimetre": Unit.CM,
    "centimetres": Unit.CM,
    "m": Unit.M,
    "meter": Unit.M,
    "meters": Unit.M,
    "metre": Unit.M,
    "metres": Unit.M,
}
"""Every way of writing a unit, in small letters; a word may have a point after it."""
