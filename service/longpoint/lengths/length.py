"""A length as it was read: its exact value and the text it was read from."""

from __future__ import annotations

from collections.abc import Callable
from operator import pos
from typing import TYPE_CHECKING, Any, ClassVar, Self

from longpoint.lengths.errors import LengthError
from longpoint.lengths.fraction import Fraction, Irrational, Real
from longpoint.lengths.parsing import MAX_TEXT, parse
from longpoint.lengths.printing import readable
from longpoint.lengths.units import Unit
from longpoint.texts import say
from longpoint.values.kept import Kept
from longpoint.values.wired import Wired, Writes

if TYPE_CHECKING:
    _Exact = Fraction
else:
    from quicktions import Fraction as _Exact

EXAMPLE = "30 5/8 in"
_SAYS = (
    "A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. "
    "Without a unit it is in the request's `unit`, when the request has one."
)


class Length(_Exact, Wired):
    """An exact length in inches that somebody sent, with their text.

    It reckons, compares and hashes by its value alone, and what is reckoned from it is a plain Fraction: nobody is
    shown another's text out of what is remembered.

    """

    __slots__ = ("_text",)
    _text: str

    STAND_IN: ClassVar[str] = "1 in"
    """What stands for one that could not be read while the rest is looked at."""

    # The compiled kind makes one without arguments to compare it with a float.
    def __new__(cls, value: Fraction | int = 0, text: str = "") -> Self:
        self = _Exact.__new__(cls, value)
        self._text = text
        return self

    @property
    def text(self) -> str:
        """As it was sent; a bare number is in the unit of what it was sent with."""
        return self._text or readable(+self)

    @classmethod
    def of(cls, text: str) -> Self:
        """A length written with its unit, as a default is."""
        return cls.read(text, None)

    @classmethod
    def from_float(cls, value: float) -> Any:
        """A plain Fraction: comparing with a float makes one of these, which nobody sent."""
        return Fraction.from_float(value)

    @classmethod
    def from_decimal(cls, value: Any) -> Any:
        """The same of a decimal."""
        return Fraction.from_decimal(value)

    @classmethod
    def read(cls, given: Any, unit: Unit | None) -> Self:
        if not isinstance(given, str):
            raise LengthError("wrong-type", say("problem", "lengths.not-text", example=EXAMPLE))
        if len(given) > MAX_TEXT:  # refused there, before it is remembered
            parse(given, unit)
        return _READ[cls, given, unit]  # type: ignore[return-value]

    def written(self, write: Writes) -> str:  # noqa: ARG002
        return self.text

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {
            "type": "string",
            "format": "length",
            "minLength": 1,
            "maxLength": MAX_TEXT,
            "pattern": r"^[^\u0000]*$",
            "description": _SAYS,
            "examples": [EXAMPLE, "2' 6-5/8\"", "778 mm", "30.625in"],
        }

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (Fraction(self.numerator, self.denominator), self._text)

    def __copy__(self) -> Self:
        return self

    def __deepcopy__(self, memo: Any) -> Self:
        return self


class PositiveLength(Length):
    """A length that cannot be zero."""

    __slots__ = ()


def _read(given: tuple[type[Length], str, Unit | None]) -> Length:
    cls, text, unit = given
    value = parse(text, unit)
    if not value and issubclass(cls, PositiveLength):
        raise LengthError("zero", say("problem", "lengths.zero"))
    return cls(value, text.strip("\r\n"))


_READ = Kept(8192, _read)

MADE_REAL: dict[type, Callable[[Any], Any]] = {float: Irrational, Length: pos, PositiveLength: pos}
"""What makes a length of a kind fit to be a field of an answer: an irrational one marked, one that was sent without its
text. The other kinds are so."""


def real(value: Real) -> Real:
    """A length fit to be a field of an answer."""
    made = MADE_REAL.get(type(value))
    return value if made is None else made(value)
