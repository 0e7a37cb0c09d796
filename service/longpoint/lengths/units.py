"""The units a tape carries. pint knows their sizes; nothing else in the service imports it."""

from enum import StrEnum
from fractions import Fraction as StandardFraction
from typing import Final

from pint import UnitRegistry

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


def _inches_per_unit() -> dict[Unit, Fraction]:
    registry: UnitRegistry[StandardFraction] = UnitRegistry(non_int_type=StandardFraction)
    one = StandardFraction(1)
    # Inches by name: "in" is a word of pint's own.
    names = {unit: "inch" if unit is Unit.IN else unit.value for unit in Unit}
    return {unit: Fraction(registry.Quantity(one, name).to("inch").magnitude) for unit, name in names.items()}


INCHES_PER: Final = _inches_per_unit()
"""Inches in one of each unit, exactly. Read once: pint is far too slow to ask for every length."""

UNIT_WORDS: Final = {
    '"': Unit.IN,
    "in": Unit.IN,
    "in.": Unit.IN,
    "inch": Unit.IN,
    "inches": Unit.IN,
    "'": Unit.FT,
    "ft": Unit.FT,
    "ft.": Unit.FT,
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
"""Every way of writing a unit, in small letters."""
