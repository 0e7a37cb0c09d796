"""Readings of which no shape can be made: one side of a triangle as long as the other two together."""

from __future__ import annotations

from collections.abc import Sequence

from longpoint.geometry.fit.adjust import adjust
from longpoint.geometry.fit.readings import Reading, ReadingKind
from longpoint.geometry.fit.slips import Slip, usual_slips
from longpoint.lengths import Real
from longpoint.values import Value

_RISING, _FALLING = ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT, ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT
TRIANGLES = (
    (ReadingKind.WIDTH_BOTTOM, ReadingKind.HEIGHT_RIGHT, _RISING),
    (ReadingKind.WIDTH_TOP, ReadingKind.HEIGHT_LEFT, _RISING),
    (ReadingKind.WIDTH_BOTTOM, ReadingKind.HEIGHT_LEFT, _FALLING),
    (ReadingKind.WIDTH_TOP, ReadingKind.HEIGHT_RIGHT, _FALLING),
)


class Contradiction(Value, frozen=True):
    """A triangle that cannot be.

    Attributes:
        kinds: the three readings, the one too long first.
        by: how much longer it is than the other two together, inches; 0 where the triangle is flat.
    """

    kinds: tuple[ReadingKind, ReadingKind, ReadingKind]
    by: Real


class Mend(Value, frozen=True):
    """A usual slip in one reading that would explain every contradiction.

    Attributes:
        number: of the reading, in the order given.
        kind: of the reading.
        slip: what was done, and what the reading would be without it.
        closes: whether all the readings then agree; None where nothing checks them.
    """

    number: int
    kind: ReadingKind
    slip: Slip
    closes: bool | None


def contradictions(readings: Sequence[Reading]) -> tuple[Contradiction, ...]:
    """Every triangle of sides and a diagonal that cannot be."""
    lengths: dict[ReadingKind, Real] = {}
    for reading in readings:
        lengths.setdefault(reading.kind, reading.value)
    found = []
    for triangle in TRIANGLES:
        if not all(kind in lengths for kind in triangle):
            continue
        longest, *others = sorted(triangle, key=lambda kind: -lengths[kind])
        by = lengths[longest] - lengths[others[0]] - lengths[others[1]]
        if by >= 0:
            found.append(Contradiction((longest, others[0], others[1]), by))
    return tuple(found)


def mends(readings: Sequence[Reading], tape: float) -> tuple[Mend, ...]:
    """The usual slips that would mend readings of which no shape can be made, those that then agree first."""
    found: list[tuple[float, Mend]] = []
    for number, reading in enumerate(readings):
        if not any(reading.kind in triangle for triangle in TRIANGLES):
            continue
        for slip in usual_slips(reading):
            mended = list(readings)
            mended[number] = Reading(reading.kind, slip.would_read, reading.spread, reading.over)
            if contradictions(mended):
                continue
            shape = adjust(mended, tape)
            if shape is None:
                continue
            closes = None if shape.checks == 0 else not shape.alarm
            found.append((shape.sum_of_squares, Mend(number, reading.kind, slip, closes)))
    found.sort(key=lambda each: each[0])
    agree = tuple(mend for _, mend in found if mend.closes)
    return agree or tuple(mend for _, mend in found)
