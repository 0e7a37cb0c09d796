"""The slips a tape is read with: what a reading would have been, had one of them not been made. Common practice."""

from __future__ import annotations

from longpoint.geometry.fit.readings import BUBBLES, Reading
from longpoint.lengths import Fraction, Real
from longpoint.values import Value

LEAST_SLIP = 3 / 8
"""Inches: what is less is no slip of a kind, and may be the tape, the frame or the hand."""

_INCHES = ((Fraction(1, 2), "1/2 in"), (Fraction(1), "1 in"), (Fraction(12), "12 in"))


class Slip(Value, frozen=True):
    """Attributes: what is called, as "1/2 in" or "swapped digits"; what the reading would be without it, inches."""

    name: str
    would_read: Real


def usual_slips(reading: Reading) -> tuple[Slip, ...]:
    """Every usual slip that may have made this reading."""
    value = reading.value
    found = [Slip(name, value + sign * size) for size, name in _INCHES for sign in (1, -1)]
    if reading.kind in BUBBLES:
        return (*found, Slip("read the other way", -value))
    digits = str(int(value))
    part = value - int(value)
    for at in range(len(digits) - 1):
        swapped = digits[:at] + digits[at + 1] + digits[at] + digits[at + 2 :]
        if swapped != digits and swapped[0] != "0":
            found.append(Slip("swapped digits", int(swapped) + part))
    if len(digits) > 2:
        shorter = dict.fromkeys(digits[:at] + digits[at + 1 :] for at in range(len(digits)))
        found += [Slip("a digit too many", int(left) + part) for left in shorter if left[0] != "0"]
    found += [Slip("ten times too long", value / 10), Slip("ten times too short", value * 10)]
    return tuple(slip for slip in found if slip.would_read > 0)


def nearest_slip(reading: Reading, should_be: float) -> tuple[Slip, float] | None:
    """The usual slip whose undoing comes nearest to what the other readings say, and how near, inches; None where the
    two lie within three eighths."""
    if abs(float(reading.value) - should_be) < LEAST_SLIP:
        return None
    found = min(usual_slips(reading), key=lambda slip: abs(float(slip.would_read) - should_be))
    return found, abs(float(found.would_read) - should_be)
