"""Reads a request's lengths, gathering every fault with the pointer to its field."""

from __future__ import annotations

from longpoint.api.http.faults import Faults
from longpoint.lengths import Fraction, LengthError, Unit, parse

Path = tuple[str | int, ...]

ZERO = Fraction(0)
# What a length that could not be read stands as until all faults are told; never answered to anybody.
PLACEHOLDER = Fraction(1)


class Reader:
    """One request's lengths under its unit.

    Attributes:
        unit: of lengths that carry none.
        faults: what was wrong so far.
    """

    __slots__ = ("faults", "unit")

    def __init__(self, unit: Unit | None) -> None:
        self.unit = unit
        self.faults = Faults()

    def fault(self, at: Path, code: str, detail: str) -> None:
        self.faults.add(at, code, detail)

    def length(self, text: str, at: Path, name: str | int) -> Fraction:
        """A length, nought allowed."""
        try:
            return parse(text, self.unit)
        except LengthError as error:
            self.fault((*at, name), error.code, error.detail)
            return PLACEHOLDER

    def positive(self, text: str, at: Path, name: str | int) -> Fraction:
        """A length that cannot be nought."""
        value = self.length(text, at, name)
        if value == ZERO:
            self.fault((*at, name), "zero", "This cannot be nought: measure it again.")
            return PLACEHOLDER
        return value

    def optional(self, text: str | None, at: Path, name: str) -> Fraction | None:
        return None if text is None else self.length(text, at, name)

    def optional_positive(self, text: str | None, at: Path, name: str) -> Fraction | None:
        return None if text is None else self.positive(text, at, name)

    def required(self, text: str | None, at: Path, name: str, measure: str) -> Fraction:
        """A length that may be absent from the document but not from this shape of request."""
        if text is None:
            self.fault((*at, name), "missing", f"{name} is missing. {measure}")
            return PLACEHOLDER
        return self.positive(text, at, name)
