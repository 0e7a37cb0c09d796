"""Whether two readings are alike but for one digit: a 1 read for a 7, or two digits that changed places."""

from __future__ import annotations

from longpoint.lengths import Fraction, Length, Unit
from longpoint.lengths.units import INCHES_PER
from longpoint.lengths.written_in import unit_of

METRIC = (Unit.MM, Unit.CM, Unit.M)


def differ_by_one(one: Length, other: Length) -> bool:
    """Whether one digit of the whole inches differs, the fraction being the same, or two beside each other changed
    places. Of readings in metric units, a digit of the whole millimeters that is not the last: that one differs between
    windows of one size."""
    metric = unit_of(one) in METRIC, unit_of(other) in METRIC
    if all(metric):
        return _digits_differ(
            _whole(one, INCHES_PER[Unit.MM]), _whole(other, INCHES_PER[Unit.MM]), last=False
        )
    if any(metric) or (one - other).denominator != 1:
        return False
    return _digits_differ(str(int(one)), str(int(other)), last=True)


def _whole(length: Length, unit: Fraction) -> str:
    count = length / unit
    return str(int(count)) if count.denominator == 1 else ""


def _digits_differ(one: str, other: str, *, last: bool) -> bool:
    if not one or len(one) != len(other):
        return False
    at = [place for place, (mine, theirs) in enumerate(zip(one, other, strict=True)) if mine != theirs]
    if len(at) == 1:
        return last or at[0] < len(one) - 1
    return len(at) == 2 and at[1] == at[0] + 1 and (one[at[0]], one[at[1]]) == (other[at[1]], other[at[0]])
