"""How the sheets write lengths and angles: as a tape and a saw's scale read them."""

from __future__ import annotations

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real, Rounding, Unit, feet_inches, round_to, tape


class Wording(Value, frozen=True):
    """How lengths are written.

    Attributes:
        rounding: the tape's marks; a length is rounded to them once, here.
        feet: long lengths in feet and inches, where the marks are inches.
    """

    rounding: Rounding = Rounding()
    feet: bool = False

    def length(self, value: Real) -> str:
        """In a table, under a heading that names the unit: `46 7/16`, `1180`."""
        return self._tape(value).rsplit(" ", 1)[0]

    def figure(self, value: Real) -> str:
        """In a drawing, where nothing else names the unit: `46 7/16"`, `1180 mm`."""
        if self.unit is Unit.IN:
            if self.feet:
                return feet_inches(round_to(value, self.rounding))
            return f'{self.length(value)}"'
        return self._tape(value)

    def stick(self, value: Fraction) -> str:
        """A stick's length as the yard says it: `16'`, `12' 6"`, `4.8 m`."""
        if self.unit is Unit.MM:
            return tape(value, Unit.MM)
        text = feet_inches(value)
        return text.removesuffix(' 0"')

    @property
    def unit(self) -> Unit:
        """The unit the figures are in."""
        return self.rounding.to.unit

    def _tape(self, value: Real) -> str:
        return tape(round_to(value, self.rounding), self.unit)


def angle(degrees: Real) -> str:
    """An angle to a tenth of a degree, which is finer than a saw's scale: `45°`, `44.9°`."""
    text = f"{float(degrees):.1f}".removesuffix(".0")
    return f"{text}°"


def money(cents: int) -> str:
    """An amount with its thousands marked and its cents: `1,204.50`."""
    sign = "-" if cents < 0 else ""
    whole, part = divmod(abs(cents), 100)
    return f"{sign}{whole:,}.{part:02d}"
