"""Lengths that came as real numbers, kept small and exact for counting and money."""

from __future__ import annotations

from longpoint.lengths import Fraction, Real

FINE = 1_000_000
"""An irrational length is kept to a millionth of an inch."""


def exactly(value: Real) -> Fraction:
    """A length as an exact number."""
    return Fraction(round(value * FINE), FINE) if isinstance(value, float) else value
