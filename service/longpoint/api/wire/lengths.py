"""Lengths on the wire: read with a fault at their place, written once rounded."""

from collections.abc import Callable
from functools import lru_cache
from math import floor
from typing import Annotated, Any

from msgspec import Meta

from longpoint.api.http.faults import Faults, Path
from longpoint.api.wire.base import Wire, WireOut
from longpoint.lengths import (
    Fraction,
    LengthError,
    Mode,
    Real,
    Rounding,
    RoundTo,
    Unit,
    counter,
    exact,
    mark,
    parse,
    rounded,
    tape,
)

_MOST_KEPT, _FEW_KEPT = 8192, 32
_INCHES_PER = {unit: parse("1", unit) for unit in Unit}


class RoundingIn(Wire):
    """How lengths of the answer are rounded.

    Attributes:
        to: The fineness of the tape they will be marked with. It decides the unit of the answer, too.
        mode: Which mark is taken: the nearest (the longer of two equally near), the next up or the next down.
    """

    to: RoundTo = RoundTo.SIXTEENTH
    mode: Mode = Mode.NEAREST

    def value(self) -> Rounding:
        """The same, as the lengths room knows it."""
        return Rounding(self.to, self.mode)


class LengthOut(WireOut, gc=False, kw_only=False):
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


def read_length(text: str, unit: Unit | None, path: Path, faults: Faults) -> Fraction | None:
    """Read a length, in inches. One that cannot be read is noted as a fault at its place and gives None."""
    try:
        return parse(text, unit)
    except LengthError as refusal:
        faults.add(path, refusal.code, refusal.detail)
        return None


class LengthWriter:
    """Writes lengths, given in inches, with one rounding.

    Attributes:
        rounding: How.
        unit: The unit written in.
        size: It, in inches.
        nothing: A residual of nought, in words.
        written: For those who write things made of lengths: what they wrote of each, by the thing's identity. The thing
            stands beside it, so that its identity is not another's.
    """

    def __init__(self, rounding: Rounding) -> None:
        self.rounding = rounding
        self.unit = rounding.to.unit
        self.size = float(_INCHES_PER[self.unit])
        self._after = f" {self.unit}"
        self._count = counter(rounding)
        self.nothing = tape(Fraction(0), self.unit)
        # Exact lengths and marks come again in opening after opening, irrational lengths within one.
        self._exact: Callable[[Fraction], LengthOut] = lru_cache(_MOST_KEPT)(self._write_exact)
        self._at_mark: Callable[[int], str] = lru_cache(_MOST_KEPT)(self._write_mark)
        self._real: dict[float, LengthOut] = {}
        self.written: dict[int, Any] = {}

    def __call__(self, value: Real) -> LengthOut:
        """Write one length."""
        if not isinstance(value, float):
            return self._exact(value)
        known = self._real.get(value)
        if known is not None:
            return known
        if len(self._real) >= _FEW_KEPT:
            self._real.clear()
        number, added = self._count(value)
        residual = f"{added / self.size:.6f}"
        out = LengthOut(
            None,
            decimal(value / self.size, 10**9),
            self._at_mark(number),
            self.unit,
            (_trimmed(residual) if residual[-1] == "0" else residual) + self._after,
        )
        self._real[value] = out
        return out

    def _write_exact(self, value: Fraction) -> LengthOut:
        marked = rounded(value, self.rounding)
        residual = tape(marked.value - value, self.unit)
        return LengthOut(exact(value, self.unit), None, tape(marked.value, self.unit), self.unit, residual)

    def _write_mark(self, number: int) -> str:
        return tape(mark(number, self.rounding), self.unit)


def _trimmed(decimals: str) -> str:
    text = decimals.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


@lru_cache(maxsize=64)
def length_writer(rounding: Rounding) -> LengthWriter:
    """The writer for a rounding; fetch it once for a request."""
    return LengthWriter(rounding)


def length_out(value: Real, rounding: Rounding) -> LengthOut:
    """Write one length given in inches."""
    return length_writer(rounding)(value)


def decimal(value: float, parts: int) -> float:
    """The value rounded to whole parts of one, such as millionths; quicker than `round`, which goes through text."""
    return floor(value * parts + 0.5) / parts
