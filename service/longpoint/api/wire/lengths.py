"""Lengths on the wire: read with a fault at their place, written once rounded."""

from functools import lru_cache
from typing import Annotated

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
    exact,
    parse,
    rounded,
    tape,
)

_MOST_KEPT = 8192
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


class LengthOut(WireOut, gc=False):
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
    """Writes lengths with one rounding. Remembers what it wrote: the lengths of trim repeat."""

    def __init__(self, rounding: Rounding) -> None:
        self.rounding = rounding
        self.unit = rounding.to.unit
        self.size = float(_INCHES_PER[self.unit])
        self._after = f" {self.unit}"
        self.nothing = tape(Fraction(0), self.unit)
        self._real: dict[float, LengthOut] = {}
        self._exact: dict[tuple[int, int], LengthOut] = {}

    def __call__(self, value: Real) -> LengthOut:
        """Write a length given in inches."""
        if isinstance(value, float):
            real = self._real.get(value)
            if real is None:
                if len(self._real) >= _MOST_KEPT:
                    self._real.clear()
                real = self._real[value] = self._write_real(value)
            return real
        ratio = value.as_integer_ratio()
        known = self._exact.get(ratio)
        if known is None:
            if len(self._exact) >= _MOST_KEPT:
                self._exact.clear()
            known = self._exact[ratio] = self._write_exact(value)
        return known

    def _write_exact(self, value: Fraction) -> LengthOut:
        marked = rounded(value, self.rounding)
        return LengthOut(
            exact=exact(value, self.unit),
            real=None,
            text=tape(marked.value, self.unit),
            unit=self.unit,
            residual=tape(marked.value - value, self.unit),
        )

    def _write_real(self, value: float) -> LengthOut:
        marked = rounded(value, self.rounding)
        size = self.size
        return LengthOut(
            exact=None,
            real=round(value / size, 9),
            text=tape(marked.value, self.unit),
            unit=self.unit,
            residual=_decimal(float(marked.residual) / size) + self._after,
        )


@lru_cache(maxsize=64)
def length_writer(rounding: Rounding) -> LengthWriter:
    """The writer for a rounding; fetch it once for a request."""
    return LengthWriter(rounding)


def length_out(value: Real, rounding: Rounding) -> LengthOut:
    """Write one length given in inches."""
    return length_writer(rounding)(value)


def _decimal(value: float) -> str:
    text = f"{value:.6f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
