"""pint's factors, carried as exact fractions."""

import subprocess
import sys
from fractions import Fraction

import pytest
from pint import UnitRegistry

from longpoint.lengths import Unit, parse


@pytest.mark.parametrize("unit", Unit)
def test_every_unit_is_the_exact_fraction_pint_gives(unit: Unit) -> None:
    registry: UnitRegistry[Fraction] = UnitRegistry(non_int_type=Fraction)
    part = registry.Quantity(Fraction(3, 8), "inch" if unit is Unit.IN else unit.value).to("inch").magnitude
    assert isinstance(part, Fraction)
    assert parse(f"3/8 {unit}") == part


def test_sums_of_mixed_units_stay_exact() -> None:
    assert sum(parse("0.1 mm") for _ in range(254)) == 1
    assert parse("1 m") + parse("1 in") - parse("1025.4 mm") == 0


@pytest.mark.parametrize(
    ("unit", "words"),
    [
        (Unit.IN, "in in. inch inches IN \" ″ ” ''"),
        (Unit.FT, "ft ft. foot feet FT ' ′ ’"),
        (Unit.MM, "mm millimeter millimeters millimetre millimetres MM"),
        (Unit.CM, "cm centimeter centimeters centimetre centimetres"),
        (Unit.M, "m meter meters metre metres"),
    ],
)
def test_every_word_and_mark_of_a_unit(unit: Unit, words: str) -> None:
    for word in words.split():
        assert parse(f"3{word}") == parse(f"3 {word}") == parse("3", unit)


def test_starting_does_not_wait_for_the_library_of_units() -> None:
    """It takes half a second to start, and a house in inches never asks it."""
    program = (
        "import sys; import longpoint.app; from longpoint.lengths import parse; parse('30 5/8 in'); "
        "print('pint' in sys.modules); print(parse('25.4 mm'), 'pint' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["False", "1", "True"]
