"""Lengths kept small and exact for counting and money."""

from __future__ import annotations

from math import lcm

from longpoint.lengths import Fraction, Real

FINE = 1_000_000
"""An irrational length is kept to a millionth of an inch."""
MARKS = 127 * lcm(*range(1, 13), 128, FINE)
"""Inches, their fractions and decimals, and millimeters to four places are whole numbers of this part of an inch.

A fraction that is not is kept to a millionth, too: sums over a house of a thousand odd denominators would have
thousands of digits.
"""


def exactly(value: Real) -> Fraction:
    """A length as an exact number."""
    if isinstance(value, float) or MARKS % value.denominator:
        return Fraction(round(value * FINE), FINE)
    return value
