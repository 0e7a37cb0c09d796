"""Four sides and diagonals as readings to be weighed against each other, and what of them cannot be."""

from __future__ import annotations

from longpoint.geometry.fit.contradictions import contradictions, mends
from longpoint.geometry.fit.readings import TAPE_SPREAD, Reading, ReadingKind
from longpoint.geometry.readings.outline import Quadrilateral
from longpoint.lengths import Fraction
from longpoint.texts import Sentence, say
from longpoint.values import Faults

CLOSE = 1e-6
"""Inches within which a triangle is flat enough to be looked at exactly."""

FIELDS = {
    ReadingKind.WIDTH_BOTTOM: "jamb_width",
    ReadingKind.WIDTH_TOP: "head_width",
    ReadingKind.HEIGHT_LEFT: "left_jamb_height",
    ReadingKind.HEIGHT_RIGHT: "right_jamb_height",
    ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT: "diagonal_from_bottom_left",
    ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT: "diagonal_from_bottom_right",
}
"""The field of each reading."""


def lengths_of(shape: Quadrilateral) -> tuple[Reading, ...]:
    """The sides, and the diagonals that were read."""
    values = ((kind, getattr(shape, field)) for kind, field in FIELDS.items())
    return tuple(Reading(kind, value) for kind, value in values if value is not None)


def refuse_contradictions(shape: Quadrilateral, faults: Faults) -> bool:
    """Refuse lengths of which no triangle can be made, with the usual slips that would mend it; say whether any is."""
    if not _may_contradict(shape):
        return False
    readings = lengths_of(shape)
    for found in contradictions(readings):
        longest, one, other = (FIELDS[kind] for kind in found.kinds)
        detail = say(
            "problem", "readings.contradict", longest=longest, one=one, other=other, by=found.by
        ) + _mended(readings)
        reading = next((name for name in (longest, one, other) if name.startswith("diagonal")), longest)
        faults.add(("readings", reading), "impossible-triangle", detail)
        return True
    return False


def _may_contradict(shape: Quadrilateral) -> bool:
    """Whether to look closer: most openings are far from it, and floats tell that soon."""
    bottom, top = float(shape.jamb_width), float(shape.head_width)
    left, right = float(shape.left_jamb_height), float(shape.right_jamb_height)
    if min(bottom, top, left, right) <= 0:
        return False  # refused for that
    rising, falling = shape.diagonal_from_bottom_left, shape.diagonal_from_bottom_right
    return (rising is not None and not (_clear(bottom, right, rising) and _clear(top, left, rising))) or (
        falling is not None and not (_clear(bottom, left, falling) and _clear(top, right, falling))
    )


def _clear(one: float, other: float, far: Fraction) -> bool:
    return abs(one - other) + CLOSE < float(far) < one + other - CLOSE


def _mended(readings: tuple[Reading, ...]) -> Sentence | None:
    for mend in mends(readings, TAPE_SPREAD)[:1]:
        reading, slip = FIELDS[mend.kind], mend.slip
        return say("hint", "readings.mend", reading=reading, would=slip.would_read, slip=slip.name)
    return None
