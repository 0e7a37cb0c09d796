"""Rates: every figure the shop reckons with, its unit and where it comes from."""

from __future__ import annotations

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction


class Rate(Value, frozen=True):
    """A setting.

    Attributes:
        name: snake_case, stable.
        value: in `unit`.
        unit: "in", "mil", "percent", "each", "ft2", "min", "h" and so on.
        source: where the default comes from, "common practice, no source", or "set by the caller".
    """

    name: str
    value: Fraction
    unit: str
    source: str
