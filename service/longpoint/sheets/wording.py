"""How the sheets write lengths and angles: as a tape and a saw's scale read them."""

from __future__ import annotations

from longpoint.lengths import Real, Rounding, Unit, feet_inches, length_writer, round_to, tape
from longpoint.texts import Sentence
from longpoint.values import Value


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
        return tape_text(value, self).rsplit(" ", 1)[0]

    def figure(self, value: Real) -> str:
        """In a drawing, where nothing else names the unit: `46 7/16"`, `1180 mm`."""
        if self.unit is Unit.IN:
            if self.feet:
                return feet_inches(round_to(value, self.rounding))
            return f'{self.length(value)}"'
        return tape_text(value, self)

    def stick(self, value: Real) -> str:
        """A stick's length as the yard says it: `16'`, `12' 6"`, `4800 mm`."""
        if self.unit is Unit.MM:
            return tape_text(value, self)
        return feet_inches(round_to(value, self.rounding)).removesuffix(' 0"')

    def sentence(self, said: Sentence) -> str:
        """A caution or a note, its lengths as all others."""
        return said.written(length_writer(self.rounding))

    @property
    def unit(self) -> Unit:
        """The unit the figures are in."""
        return self.rounding.to.unit


def tape_text(value: Real, wording: Wording) -> str:
    """A length with its unit, rounded: `46 7/16 in`."""
    return tape(round_to(value, wording.rounding), wording.unit)


def angle(degrees: Real) -> str:
    """An angle to a tenth of a degree, which is finer than a saw's scale: `45°`, `44.9°`."""
    text = f"{float(degrees):.1f}".removesuffix(".0")
    return f"{text}°"


def money(cents: int) -> str:
    """An amount with its thousands marked and its cents: `1,204.50`."""
    sign = "-" if cents < 0 else ""
    whole, piece = divmod(abs(cents), 100)
    return f"{sign}{whole:,}.{piece:02d}"


def number(value: Real) -> str:
    """An amount to two places at most: `3`, `12.5`, `0.25`."""
    return f"{float(value):.2f}".rstrip("0").rstrip(".")


def time(minutes: Real) -> str:
    """Minutes as hours and minutes: `3 h 25 min`."""
    hours, rest = divmod(round(minutes), 60)
    if not hours:
        return f"{rest} min"
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def words(name: str) -> str:
    """A name of the service's own, such as `final_coat`, in plain words."""
    return name.replace("_", " ")


def unit_words(unit: str) -> str:
    """A unit as it is printed: `ft²`, `fl oz`."""
    return unit.replace("ft2", "ft²")


def unbroken(text: str) -> str:
    """A figure within a sentence, kept on one line."""
    return text.replace(" ", "\N{NO-BREAK SPACE}")
