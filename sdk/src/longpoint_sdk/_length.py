"""A length that adds, subtracts and multiplies exactly, and prints as a tape reads."""

from __future__ import annotations

from fractions import Fraction
from functools import total_ordering
from typing import Literal, Protocol, overload

from longpoint_sdk._errors import LengthError
from longpoint_sdk._length_text import INCHES_PER, Unit, read, write

RoundMode = Literal["nearest", "up", "down"]
"""Which mark is taken: the nearest (the longer of two equally near), the next up or the next down."""


class HasLength(Protocol):
    """What the service answers a length as."""

    @property
    def length(self) -> Length:
        """The length before it was rounded."""


@total_ordering
class Length:
    """An exact length with the unit it prints in; never changes once made.

    Text is read as the service reads it: `30 5/8 in`, `30-5/8"`, `2' 6-5/8"`, `778 mm`, `30.625in`. A number needs
    a unit; a float is refused, since 0.1 is not a tenth. Sums and differences of lengths, and products and
    quotients with whole numbers and fractions, are exact; a length divided by a length is a `Fraction`. A result
    prints in the unit of the length on the left.

    Example:
        stool = Length("30 5/8 in") + 2 * (Length("3/16 in") + Length("2 1/2 in"))
        print(stool, stool.to("mm"), stool.round("1/8 in", "up"))  # 36 in 914.4 mm 36 in
        print(Length("8 ft") // stool, Length("8 ft") % stool)  # 2 2'
    """

    __slots__ = ("_inches", "_is_exact", "_unit")

    def __init__(self, value: str | Length | HasLength | Fraction | int, unit: Unit | None = None) -> None:
        """Read a length.

        Args:
            value: Text, another length, or a number.
            unit: What a number, or text without a unit, is in. For a length, the unit to print it in.

        Raises:
            LengthError: for text that is no length, or a number without a unit.
            TypeError: for a float, or anything else that is no length.
        """
        self._is_exact = True
        if isinstance(value, str):
            self._inches, self._unit = read(value, unit)
        elif isinstance(value, (int, Fraction)) and not isinstance(value, bool):
            if unit is None:
                raise LengthError(f"{value} has no unit. Say which: Length({value}, 'in').")
            self._inches, self._unit = Fraction(value) * INCHES_PER[unit], unit
        elif (length := _as_length(value)) is not None:
            self._inches, self._unit, self._is_exact = length._inches, unit or length._unit, length._is_exact
        else:
            raise TypeError(f"A length is text, a Fraction or a whole number, not {type(value).__name__}.")

    @classmethod
    def from_inches(cls, inches: Fraction | int, unit: Unit = "in", *, is_exact: bool = True) -> Length:
        """A length from a number of inches, printed in `unit`."""
        made = cls.__new__(cls)
        made._inches, made._unit, made._is_exact = Fraction(inches), unit, is_exact
        return made

    @property
    def inches(self) -> Fraction:
        """The length in inches."""
        return self._inches

    @property
    def unit(self) -> Unit:
        """The unit it prints in; `ft` prints feet and inches."""
        return self._unit

    @property
    def is_exact(self) -> bool:
        """False for an irrational length, which the service cuts to nine decimals, and whatever is made of one."""
        return self._is_exact

    def in_unit(self, unit: Unit) -> Fraction:
        """How many of a unit it is."""
        return self._inches / INCHES_PER[unit]

    def to(self, unit: Unit) -> Length:
        """The same length, printed in another unit."""
        return Length(self, unit)

    def round(self, to: str | Length = "1/16 in", mode: RoundMode = "nearest") -> Length:
        """The length brought to a mark of a tape, as the service rounds.

        Args:
            to: From one mark to the next.
            mode: Which mark is taken; of two equally near, the longer, since a long piece can be shaved.

        Raises:
            LengthError: for a step that is not above zero.
        """
        step = Length(to)
        if step._inches <= 0:
            raise LengthError(f"A tape's marks lie some length apart, not {step}.")
        steps = self._inches / step._inches
        if mode == "nearest":
            count = (2 * steps.numerator + steps.denominator) // (2 * steps.denominator)
        else:
            count = -(-steps // 1) if mode == "up" else steps // 1
        return Length.from_inches(count * step._inches, step._unit)

    def __add__(self, other: Length | HasLength | Literal[0]) -> Length:
        if other == 0 and isinstance(other, int):  # what sum() starts from
            return self
        right = _as_length(other)
        return NotImplemented if right is None else self._beside(self._inches + right._inches, right)

    __radd__ = __add__

    def __sub__(self, other: Length | HasLength) -> Length:
        right = _as_length(other)
        return NotImplemented if right is None else self._beside(self._inches - right._inches, right)

    def _beside(self, inches: Fraction, other: Length) -> Length:
        return Length.from_inches(inches, self._unit, is_exact=self._is_exact and other._is_exact)

    def __mul__(self, factor: int | Fraction) -> Length:
        if not isinstance(factor, (int, Fraction)):
            return NotImplemented
        return Length.from_inches(self._inches * factor, self._unit, is_exact=self._is_exact)

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: int | Fraction) -> Length: ...
    @overload
    def __truediv__(self, other: Length | HasLength) -> Fraction: ...
    def __truediv__(self, other: int | Fraction | Length | HasLength) -> Length | Fraction:
        if isinstance(other, (int, Fraction)):
            return Length.from_inches(self._inches / other, self._unit, is_exact=self._is_exact)
        right = _as_length(other)
        return NotImplemented if right is None else self._inches / right._inches

    def __floordiv__(self, other: Length | HasLength) -> int:
        """How often the other fits."""
        right = _as_length(other)
        return NotImplemented if right is None else self._inches // right._inches

    def __mod__(self, other: Length | HasLength) -> Length:
        """What is left once the other has been taken as often as it fits."""
        right = _as_length(other)
        return NotImplemented if right is None else self._beside(self._inches % right._inches, right)

    def __neg__(self) -> Length:
        return self * -1

    def __abs__(self) -> Length:
        return -self if self._inches < 0 else self

    def __bool__(self) -> bool:
        return bool(self._inches)

    def __float__(self) -> float:
        """How many of the unit it prints in, as near as a float comes."""
        return float(self.in_unit(self._unit))

    def __eq__(self, other: object) -> bool:
        right = _as_length(other)
        return NotImplemented if right is None else self._inches == right._inches

    def __lt__(self, other: Length | HasLength) -> bool:
        right = _as_length(other)
        return NotImplemented if right is None else self._inches < right._inches

    def __hash__(self) -> int:
        return hash(self._inches)

    def __str__(self) -> str:
        return write(self._inches, self._unit)

    def __format__(self, spec: str) -> str:
        return format(str(self), spec)

    def __repr__(self) -> str:
        return f"Length({str(self)!r})"


def _as_length(value: object) -> Length | None:
    if isinstance(value, Length):
        return value
    length = getattr(value, "length", None)
    return length if isinstance(length, Length) else None
