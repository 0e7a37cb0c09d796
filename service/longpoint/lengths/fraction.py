"""The exact number every length is kept in.

It is the standard library's `Fraction` to a type checker and in behaviour; at run time it is quicktions'
compiled twin, since an opening takes some hundred additions and the service answers thousands a second.
The two mix and compare freely. Tell an exact length from an irrational one by `isinstance(x, float)`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fractions import Fraction
else:
    from quicktions import Fraction

Real = Fraction | float
"""A length in inches: a Fraction where it is exact, a float where it is irrational."""

__all__ = ["Fraction", "Real"]
