"""The exact number every length is kept in.

It is the standard library's `Fraction` to a type checker and in behaviour; at run time it is quicktions'
compiled twin, since an opening takes some hundred additions and the service answers thousands a second.
The two mix and compare freely. Never make one from text with it (see `from_text`).
Tell an exact length from an irrational one by `isinstance(x, float)`.
"""

from __future__ import annotations

from fractions import Fraction as _StandardFraction
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fractions import Fraction
else:
    from quicktions import Fraction

Real = Fraction | float
"""A length in inches: a Fraction where it is exact, a float where it is irrational."""


def from_text(text: str) -> Fraction:
    """An exact number from text such as "245/8", "7" or "0.25".

    quicktions 1.24 reads a text of one character by writing into the interpreter's own one-byte `bytes`: from then
    on every lone NUL byte of the process is that character. So the standard library reads text.

    Raises:
        ValueError: when it is no number.
    """
    return Fraction(_StandardFraction(text))


__all__ = ["Fraction", "Real", "from_text"]
