"""Readings of an opening out of square against each other: whether they agree, which may be off, what to take again."""

from __future__ import annotations

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.fit.check import check
from longpoint.geometry.fit.six_readings import six_check
from longpoint.geometry.fit.suspects import SuspectReading
from longpoint.geometry.frame.six import FIELDS, lengths_of
from longpoint.geometry.readings.outline import Quadrilateral
from longpoint.geometry.readings.readings import Readings
from longpoint.geometry.readings.taken import as_read
from longpoint.lengths import Fraction
from longpoint.texts import Sentence, say


def weighed(
    shape: Quadrilateral, readings: Readings, spread: Fraction
) -> tuple[tuple[Sentence, ...], tuple[Finding, ...]]:
    """What is to be said of the lengths: that nothing checks them and what would, or how well they agree; and what is
    found where they contradict each other, with each reading that alone would explain it."""
    rising, falling = shape.diagonal_from_bottom_left, shape.diagonal_from_bottom_right
    if rising is None or falling is None:
        lacking = "diagonal_from_bottom_left" if rising is None else "diagonal_from_bottom_right"
        return (say("note", "readings.unchecked", reading=lacking),), ()
    tape = float(spread)
    sides = shape.jamb_width, shape.head_width, shape.left_jamb_height, shape.right_jamb_height
    six = six_check(*sides, rising, falling, tape)
    off = abs(six.diagonals_off)
    if not (six.alarm if six.near_square else check(lengths_of(shape), tape).suspects):
        return (say("note", "readings.agree", off=off, allowed=six.allowed),), ()
    suspects = check(lengths_of(shape), tape).suspects
    names = tuple(dict.fromkeys(_field(readings, suspect) for suspect in suspects))
    detail = say("finding", "readings.disagree", off=off, allowed=six.allowed, suspects=names)
    offers = tuple(_again(readings, suspect, number) for number, suspect in enumerate(suspects))
    field = ("readings", names[0]) if names else ()
    return (), (Finding("readings-disagree", "", detail, off, offers, "", field),)


def _field(readings: Readings, suspect: SuspectReading) -> str:
    return str(as_read(readings, (FIELDS[suspect.kind],))[0])


def _again(readings: Readings, suspect: SuspectReading, number: int) -> Offer:
    reading, off = _field(readings, suspect), abs(suspect.off)
    if number < 2:
        detail = say("offer", "readings.take-again-first", reading=reading, off=off)
    else:
        detail = say("offer", "readings.take-again", reading=reading, off=off)
    if suspect.slip is not None:
        detail += say("hint", "readings.slip", slip=suspect.slip.name)
    return Offer("take_again", detail, (), None, (("off by", suspect.off),))
