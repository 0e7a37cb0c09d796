"""Lengths going out: rounded once, here, each with its residual."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from math import floor
from typing import Annotated, Any, ClassVar

import msgspec
from msgspec import Meta

from longpoint.lengths.fraction import Fraction, Irrational, Real, Together
from longpoint.lengths.length import Length
from longpoint.lengths.printing import exact, ratio, tape
from longpoint.lengths.rounding import Rounding, counter, mark, pick, rounded
from longpoint.lengths.units import INCHES_PER, Unit
from longpoint.texts import SPOKEN
from longpoint.values.fault import Place
from longpoint.values.kept import Kept
from longpoint.values.wired import Wired

_MOST_KEPT, _FEW_KEPT = 8192, 32
_BILLIONTHS = 10**9
_MM = Unit.MM
_Ratio = tuple[int, int]


class MarkedLength(msgspec.Struct, frozen=True, gc=False):
    """A length going out.

    Attributes:
        exact: The exact length in `unit`, as a fraction or whole number; null when it is irrational.
        real: When it is irrational, the length in `unit` before rounding, to nine decimals; else null.
        text: The length rounded as asked, as a tape reads.
        unit: The unit of all of these.
        residual: What rounding added: positive when the piece is long.
    """

    exact: Annotated[str, Meta(examples=["75/2"])] | None
    real: float | None
    text: Annotated[str, Meta(examples=["37 1/2 in"])]
    unit: Unit
    residual: Annotated[str, Meta(examples=["0 in", "-1/32 in"])]


class Gap(float, Wired):
    """An opening between two pieces, in inches: written as a decimal fine enough to compare with a sheet of paper."""

    def written(self, write: Any) -> str:
        return gap(float(self), write.unit)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"type": "string", "format": "gap", "examples": ["0.0312 in"]}


def gap(inches: float, unit: Unit) -> str:
    """A gap as it is written."""
    return f"{inches * 25.4:.3f} mm" if unit is _MM else f"{inches:.4f} in"


class LengthWriter:
    """Writes lengths, given in inches, with one rounding.

    Attributes:
        rounding: How.
        unit: The unit written in.
        by_kind: What writes each kind of number.
        written: For those who write things made of lengths: what they wrote of each, by the thing's identity. The thing
            stands beside it, so that its identity is not another's.
    """

    def __init__(self, rounding: Rounding) -> None:
        self.rounding = rounding
        self.unit = rounding.to.unit
        self._size = float(INCHES_PER[self.unit])
        self._after = f" {self.unit}"
        self._count = counter(rounding)
        self._picked = _picker(rounding)
        # Exact lengths and marks come again in opening after opening, irrational lengths within one.
        self._at_mark = Kept(_MOST_KEPT, self._write_mark)
        self._plain: Kept[_Ratio, str] = Kept(_MOST_KEPT, self._write_plain)
        self._exact = self._exact_writer()
        self._real = self._real_writer()
        self.by_kind: dict[type, Callable[[Any], Any]] = {
            type(Fraction(0)): self._exact,
            float: self._real,
            Irrational: self._real,
            Together: self._write_together,
        }
        self.written: dict[int, Any] = {}

    def __call__(self, value: Real) -> MarkedLength:
        """Write one length."""
        if isinstance(value, Together):
            return self._write_together(value)
        return self._real(value) if isinstance(value, float) else self._exact(value)

    def added(self, value: Real) -> float:
        """What rounding adds to a length, in inches."""
        if isinstance(value, Together):
            return float(rounded(value, self.rounding).residual)
        if isinstance(value, float):
            return self._count(value)[1]
        _, above, below = self._picked(value.as_integer_ratio())
        return above / below

    def plain(self, value: Real) -> str:
        """A length exactly, as text; an irrational one to four decimals."""
        if isinstance(value, float):
            return f"{value / self._size:.4f}{self._after}"
        return self._plain[value.as_integer_ratio()]

    def spoken(self, lengths: Sequence[Real]) -> Sequence[str]:
        """The lengths of one sentence: rounded, unless two that differ would read alike, or one as nothing."""
        marks = [self._mark_of(value) for value in lengths]
        # A fraction takes long to find in a set, so that is done only where it may matter.
        if (0 in marks or len(set(marks)) < len(marks)) and len({*marks, 0}) < len({*lengths, 0}):
            return [self._finely(value) for value in lengths]
        return [self._at_mark[number] for number in marks]

    def _mark_of(self, value: Real) -> int:
        if isinstance(value, Together):
            return int(rounded(value, self.rounding).value / self.rounding.to.step)
        if isinstance(value, float):
            return self._count(value)[0]
        return self._picked(value.as_integer_ratio())[0]

    def _finely(self, value: Real) -> str:
        """A length for a sentence in which the house's own rounding would hide something."""
        if self.unit is _MM:
            return f"{float(value) * 25.4:.2f}".rstrip("0").rstrip(".") + self._after
        return SPOKEN.plain(value)

    def _write_mark(self, number: int) -> str:
        return tape.__wrapped__(mark(number, self.rounding), self.unit)

    def _write_plain(self, length: _Ratio) -> str:
        return tape.__wrapped__(Fraction(*length), self.unit)

    def _write_together(self, value: Together) -> MarkedLength:
        """A length on the mark it was given together with others."""
        at = rounded(value, self.rounding)
        real = floor(float(value) / self._size * _BILLIONTHS + 0.5) / _BILLIONTHS
        residual = _trimmed(f"{float(at.residual) / self._size:.6f}")
        return MarkedLength(
            None, real, tape.__wrapped__(at.value, self.unit), self.unit, residual + self._after
        )

    def _exact_writer(self) -> Callable[[Fraction], MarkedLength]:
        """What writes an exact length; kept by the two numbers it is made of, which are looked for in a third of the
        time that a fraction is."""
        unit, after, picked, at_mark = self.unit, self._after, self._picked, self._at_mark
        top, bottom = INCHES_PER[unit].as_integer_ratio()

        def make(length: _Ratio) -> MarkedLength:
            number, above, below = picked(length)
            residual = ratio(above * bottom, below * top, unit) + after if above else "0" + after
            return MarkedLength(exact(Fraction(*length), unit), None, at_mark[number], unit, residual)

        kept = Kept(_MOST_KEPT, make)
        return lambda value: kept[value.as_integer_ratio()]

    def _real_writer(self) -> Callable[[float], MarkedLength]:
        """What writes an irrational length: asked for most of all, so it has all it needs about it."""
        count, size, unit, after, at_mark = self._count, self._size, self.unit, self._after, self._at_mark
        known: dict[float, MarkedLength] = {}

        def write(value: float) -> MarkedLength:
            out = known.get(value)
            if out is None:
                if len(known) >= _FEW_KEPT:
                    known.clear()
                number, added = count(value)
                residual = f"{added / size:.6f}"
                if residual[-1] == "0":
                    residual = _trimmed(residual)
                real = floor(value / size * _BILLIONTHS + 0.5) / _BILLIONTHS
                out = known[value] = MarkedLength(None, real, at_mark[number], unit, residual + after)
            return out

        return write


def _picker(rounding: Rounding) -> Callable[[_Ratio], tuple[int, int, int]]:
    """What counts the steps to the mark an exact length is rounded to, and says what that added, in inches: above and
    below its fraction's line. In whole numbers: making fractions on the way takes three times as long."""
    rise, run = rounding.to.step.as_integer_ratio()
    mode = rounding.mode

    def picked(length: _Ratio) -> tuple[int, int, int]:
        above, below = length
        number = pick(above * run, below * rise, mode)
        return number, number * rise * below - above * run, run * below

    return picked


def _trimmed(decimals: str) -> str:
    text = decimals.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


@lru_cache(maxsize=64)
def length_writer(rounding: Rounding) -> LengthWriter:
    """The writer for a rounding; fetch it once for a request."""
    return LengthWriter(rounding)


class ExactWriter:
    """Writes lengths to be kept: exact ones as fractions of an inch."""

    by_kind: ClassVar[dict[type, Callable[[Any], Any]]] = {type(Fraction(0)): str}

    def __call__(self, value: Fraction) -> str:
        """Write one length."""
        return str(value)

    def plain(self, value: Fraction) -> str:
        """The same."""
        return str(value)

    def spoken(self, _: Sequence[Real], /) -> Sequence[str]:
        """Nothing is said where lengths are kept: only what is answered has sentences."""
        raise TypeError("a sentence cannot be kept")


EXACT = ExactWriter()


def exact_lengths(value: Any) -> dict[str, str]:
    """Every length that was sent in a record, as a fraction of an inch, by its JSON pointer."""
    found: dict[str, str] = {}
    _gather(value, (), found)
    return found


def _gather(value: Any, path: tuple[str | int, ...], found: dict[str, str]) -> None:
    if isinstance(value, Length):
        found[str(Place(path))] = (
            f"{value.numerator}/{value.denominator}" if value.denominator > 1 else str(+value)
        )
    elif isinstance(value, msgspec.Struct):
        for name, sent in zip(value.__struct_fields__, value.__struct_encode_fields__, strict=True):
            _gather(getattr(value, name), (*path, sent), found)
    elif isinstance(value, dict):
        for key, inner in value.items():
            _gather(inner, (*path, str(key)), found)
    elif isinstance(value, tuple | list):
        for index, inner in enumerate(value):
            _gather(inner, (*path, index), found)
