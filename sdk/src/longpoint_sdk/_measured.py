"""What makes a length in an answer behave as the length it is."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal, cast, overload

from longpoint_sdk._length import HasLength, Length, RoundMode
from longpoint_sdk._length_text import Unit


class Measured:
    """A length as the service answers it. It reckons with the exact length and prints the rounded one.

    Arithmetic gives a `Length`. Equal is what is equally long, however it was rounded.
    """

    __slots__ = ()

    # Fields of the struct this is mixed into.
    exact: str | None
    real: float | None
    text: str
    unit: Unit | str

    @property
    def length(self) -> Length:
        """The length before rounding; of an irrational one, its nine decimals (`is_exact` is then False)."""
        unit = cast("Unit", self.unit)
        if self.exact is not None:
            return Length(Fraction(self.exact), unit)
        cut = Length(Fraction(repr(self.real)), unit)
        return Length.from_inches(cut.inches, unit, is_exact=False)

    @property
    def rounded(self) -> Length:
        """The length as the tape will be marked."""
        return Length(self.text)

    @property
    def inches(self) -> Fraction:
        """The length before rounding, in inches."""
        return self.length.inches

    def to(self, unit: Unit) -> Length:
        """The length before rounding, printed in another unit."""
        return self.length.to(unit)

    def round(self, to: str | Length = "1/16 in", mode: RoundMode = "nearest") -> Length:
        """The length rounded anew, from before it was rounded."""
        return self.length.round(to, mode)

    def __add__(self, other: Length | HasLength) -> Length:
        return self.length + other

    def __radd__(self, other: Length | Literal[0]) -> Length:
        return self.length + other

    def __sub__(self, other: Length | HasLength) -> Length:
        return self.length - other

    def __mul__(self, factor: int | Fraction) -> Length:
        return self.length * factor

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: int | Fraction) -> Length: ...
    @overload
    def __truediv__(self, other: Length | HasLength) -> Fraction: ...
    def __truediv__(self, other: int | Fraction | Length | HasLength) -> Length | Fraction:
        return self.length / other

    def __floordiv__(self, other: Length | HasLength) -> int:
        return self.length // other

    def __mod__(self, other: Length | HasLength) -> Length:
        return self.length % other

    def __neg__(self) -> Length:
        return -self.length

    def __abs__(self) -> Length:
        return abs(self.length)

    def __float__(self) -> float:
        return float(self.length)

    def __eq__(self, other: object) -> bool:
        return self.length == other

    def __lt__(self, other: Length | HasLength) -> bool:
        return self.length < other

    def __le__(self, other: Length | HasLength) -> bool:
        return self.length <= other

    def __gt__(self, other: Length | HasLength) -> bool:
        return self.length > other

    def __ge__(self, other: Length | HasLength) -> bool:
        return self.length >= other

    def __hash__(self) -> int:
        return hash(self.length)

    def __str__(self) -> str:
        return self.text

    def __format__(self, spec: str) -> str:
        return format(self.text, spec)
