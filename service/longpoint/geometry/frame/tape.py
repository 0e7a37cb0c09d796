"""A check of the tape: what readings beyond the fifth say of one another."""

from __future__ import annotations

import math
from typing import Any

from longpoint.geometry.frame.kernel import Corner
from longpoint.geometry.frame.quadrilateral import (
    CORNER_ANGLES,
    CORNER_NAMES,
    corners_by,
    cosine_between,
    determining_field,
)
from longpoint.geometry.readings.outline import Quadrilateral
from longpoint.lengths import Fraction, Gap, Real
from longpoint.texts import Sentence, say
from longpoint.values import Value, Wired

# Six readings to 1/16 in, each up to 1/32 in off, can disagree by this much with nobody at fault.
TAPE_TOLERANCE = Fraction(1, 8)
# An angle finder is read to half a degree.
ANGLE_TOLERANCE = 0.6
# Common practice, no source: openings are nearly square, and a slip of a whole inch is the tape's commonest.
WHOLE_INCH_DOUBT = 0.25


class ReadingAmount(Wired):
    """A reading's own amount: an angle where the reading is one, else a length.

    Attributes:
        value: inches, or degrees.
        reading: the reading's field.
    """

    __slots__ = ("reading", "value")

    def __init__(self, value: Real, reading: str) -> None:
        self.value = value
        self.reading = reading

    def __float__(self) -> float:
        return float(self.value)

    def written(self, write: Any) -> str:
        if self.reading.endswith("_angle"):
            return f"{float(self.value):.3f} degrees"
        return Gap(self.value).written(write)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"type": "string"}


class Check(Value, frozen=True):
    """A reading that the shape did not need, against what the others make of it.

    Attributes:
        reading: The field of `readings` that was checked.
        measured: The value as the tape read it.
        computed: The value that the other readings give.
        difference: The measured value less the computed one.
        agrees: Whether the difference is no more than a tape's, or an angle finder's, own error.
    """

    reading: str
    measured: ReadingAmount
    computed: ReadingAmount
    difference: ReadingAmount
    agrees: bool


def check_of(reading: str, measured: Real, computed: float) -> Check:
    """A reading against what it should be."""
    difference = float(measured) - computed
    limit = ANGLE_TOLERANCE if reading.endswith("_angle") else float(TAPE_TOLERANCE)
    return Check(
        reading,
        ReadingAmount(measured, reading),
        ReadingAmount(computed, reading),
        ReadingAmount(difference, reading),
        abs(difference) <= limit,
    )


class Suspect(Value, frozen=True):
    """A reading that alone could explain the disagreement.

    Attributes:
        reading: The field of `readings` that is suspected.
        measured: The value as the tape read it.
        would_be: The value that it should read if every other reading is right.
        change: The difference: what it should read, less what was measured.
        why: It says what speaks for this reading being wrong.
    """

    reading: str
    measured: Gap
    would_be: Gap
    change: Gap
    why: Sentence


class TapeCheck(Value, frozen=True):
    """Attributes:
    checks: each further reading against the shape.
    suspects: where both diagonals were read and disagree, the likeliest wrong reading first.
    """

    checks: tuple[Check, ...]
    suspects: tuple[Suspect, ...]

    @property
    def agrees(self) -> bool:
        return all(check.agrees for check in self.checks)


def check_tape(shape: Quadrilateral, corners: tuple[Corner, ...]) -> TapeCheck | None:
    """What the readings beyond the fifth say of a solved shape; None where there is none."""
    used = determining_field(shape)
    assert used is not None
    checks: list[Check] = []
    for name, low, one, other in (
        ("diagonal_from_bottom_left", corners[0], shape.jamb_width, shape.right_jamb_height),
        ("diagonal_from_bottom_right", corners[3], shape.jamb_width, shape.left_jamb_height),
    ):
        measured = getattr(shape, name)
        if name != used and measured is not None:
            computed = math.sqrt(one * one + other * other - 2 * one * other * low.cos)
            checks.append(check_of(name, measured, computed))
    for field, each in zip(CORNER_ANGLES, corners, strict=True):
        measured = getattr(shape, field)
        if field != used and measured is not None:
            degrees = float(each.degrees)
            checks.append(check_of(field, measured, degrees))
    if not checks:
        return None
    return TapeCheck(tuple(checks), _suspects(shape, checks))


def _suspects(shape: Quadrilateral, checks: list[Check]) -> tuple[Suspect, ...]:
    if all(check.agrees for check in checks):
        return ()
    found: list[tuple[tuple[float, float], Suspect]] = []
    for field in _LENGTHS:
        fitted = _without(shape, field)
        if fitted is None:
            continue
        would_be, corners = fitted
        measured: Fraction = getattr(shape, field)
        change = would_be - float(measured)
        off_square = max(abs(float(each.degrees) - 90) for each in corners)
        slip = abs(change - round(change)) + WHOLE_INCH_DOUBT if round(change) else abs(change)
        rank = (_angle_misfit(shape, corners), off_square + slip)
        why = _longer(change, off_square) if change > 0 else _shorter(-change, off_square)
        found.append((rank, Suspect(field, Gap(measured), Gap(would_be), Gap(change), why)))
    return tuple(suspect for _, suspect in sorted(found, key=lambda pair: pair[0]))


def _longer(by: float, off_square: float) -> Sentence:
    return say("finding", "tape.would-be-longer", by=by, off_square=off_square)


def _shorter(by: float, off_square: float) -> Sentence:
    return say("finding", "tape.would-be-shorter", by=by, off_square=off_square)


_LENGTHS = (
    "diagonal_from_bottom_left",
    "diagonal_from_bottom_right",
    "jamb_width",
    "head_width",
    "left_jamb_height",
    "right_jamb_height",
)
# For each side: the side opposite, and the two that join it, each with the diagonal that closes its triangle.
_ACROSS = {
    "jamb_width": (
        "head_width",
        ("left_jamb_height", "diagonal_from_bottom_left"),
        ("right_jamb_height", "diagonal_from_bottom_right"),
    ),
    "head_width": (
        "jamb_width",
        ("left_jamb_height", "diagonal_from_bottom_right"),
        ("right_jamb_height", "diagonal_from_bottom_left"),
    ),
    "left_jamb_height": (
        "right_jamb_height",
        ("jamb_width", "diagonal_from_bottom_left"),
        ("head_width", "diagonal_from_bottom_right"),
    ),
    "right_jamb_height": (
        "left_jamb_height",
        ("jamb_width", "diagonal_from_bottom_right"),
        ("head_width", "diagonal_from_bottom_left"),
    ),
}


def _without(shape: Quadrilateral, field: str) -> tuple[float, tuple[Corner, ...]] | None:
    """What a reading should be by the other lengths, and the corners they make; None where nothing closes."""
    rising, falling = shape.diagonal_from_bottom_left, shape.diagonal_from_bottom_right
    if rising is None or falling is None:
        return None
    if field in _ACROSS:
        would_be = _opposite_side(shape, field)
        if would_be is None:
            return None
        mended = _with(shape, field, Fraction(would_be))
        corners = corners_by(mended, "diagonal_from_bottom_left")
        return None if corners is None else (would_be, corners)
    other = "diagonal_from_bottom_right" if field.endswith("left") else "diagonal_from_bottom_left"
    corners = corners_by(shape, other)
    if corners is None:
        return None
    from_left = field.endswith("left")
    low, side = (corners[0], shape.right_jamb_height) if from_left else (corners[3], shape.left_jamb_height)
    width = shape.jamb_width
    return math.sqrt(width * width + side * side - 2 * width * side * low.cos), corners


def _opposite_side(shape: Quadrilateral, field: str) -> float | None:
    base_name, *joining = _ACROSS[field]
    base: Fraction = getattr(shape, base_name)
    ends: list[tuple[float, float]] = []
    for side_name, diagonal_name in joining:
        side: Fraction = getattr(shape, side_name)
        diagonal: Fraction = getattr(shape, diagonal_name)
        cosine = float(cosine_between(base, side, diagonal * diagonal))
        if not -1 < cosine < 1:
            return None
        ends.append((float(side) * cosine, float(side) * math.sqrt(1 - cosine * cosine)))
    (x, y), (far_x, far_y) = ends
    return math.hypot(float(base) - far_x - x, far_y - y)


def _angle_misfit(shape: Quadrilateral, corners: tuple[Corner, ...]) -> float:
    """By how many times the tolerance the angles that were read miss, in whole steps."""
    misses = [
        abs(float(measured) - float(each.degrees))
        for name, each in zip(CORNER_NAMES, corners, strict=True)
        if (measured := getattr(shape, f"{name}_angle")) is not None
    ]
    return float(int(max(misses, default=0.0) / ANGLE_TOLERANCE))


def _with(shape: Quadrilateral, field: str, value: Fraction) -> Quadrilateral:
    values = {name: getattr(shape, name) for name in shape.__struct_fields__}
    return Quadrilateral(**{**values, field: value})
