"""Whether an opening's readings agree, and if not, which of them is off.

Each reading is left out in turn and the rest adjusted again: the suspects are those without which the others agree
about as well as they ever do. Nothing is corrected and nothing excluded: it says what to take again.
"""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum

from longpoint.geometry.fit.adjust import Adjusted, adjust, without
from longpoint.geometry.fit.contradictions import Contradiction, Mend, contradictions, mends
from longpoint.geometry.fit.readings import MIDDLES, TAPE_SPREAD, Reading, ReadingKind, own_spread
from longpoint.geometry.fit.six_readings import ALARM
from longpoint.geometry.fit.suspects import SuspectReading, predicted, suspects
from longpoint.values import Value

FALSE_ALARMS = 0.01
"""Of all openings whose readings are true, the part that still alarms: a house of 40 has 0.4 of them by chance."""

_ASKED_FIRST = (
    ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT,
    ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT,
    ReadingKind.WIDTH_BOTTOM,
    ReadingKind.HEIGHT_LEFT,
    ReadingKind.WIDTH_TOP,
    ReadingKind.HEIGHT_RIGHT,
)
_ASKED_ON_AN_ALARM = (ReadingKind.SILL_LEVEL, ReadingKind.LEFT_PLUMB, ReadingKind.RIGHT_PLUMB)


class Verdict(StrEnum):
    """What the readings say of each other."""

    NOT_DETERMINED = "not_determined"
    NO_CHECK = "no_check"
    AGREE = "agree"
    ONE_SLIP = "one_slip"
    MORE_THAN_ONE = "more_than_one"
    IMPOSSIBLE = "impossible"


class Bow(Value, frozen=True):
    """A middle reading that differs from straight members.

    Attributes:
        kind: of the reading.
        by: inches; positive where the opening is wider (or higher) in the middle.
        spread: of that, inches, root mean square.
    """

    kind: ReadingKind
    by: float
    spread: float


class Checked(Value, frozen=True):
    """What is to be said of an opening's readings.

    Attributes:
        verdict: the last word.
        shape: the best of all readings; None where there is none.
        suspects: the likeliest first; none where more than one slipped.
        take_again: numbers of the readings to take again first, at most two.
        ask: readings not taken that would say more: of an opening without a check the one that gives it, of one with
            suspects those that part them.
        unchecked: numbers of the readings that no other checks.
        bows: what the middle readings say of members that are not straight.
        contradictions: triangles that cannot be.
        mends: the usual slips that would mend those.
    """

    verdict: Verdict
    shape: Adjusted | None
    suspects: tuple[SuspectReading, ...] = ()
    take_again: tuple[int, ...] = ()
    ask: tuple[ReadingKind, ...] = ()
    unchecked: tuple[int, ...] = ()
    bows: tuple[Bow, ...] = ()
    contradictions: tuple[Contradiction, ...] = ()
    mends: tuple[Mend, ...] = ()


def check(readings: Sequence[Reading], tape: float = TAPE_SPREAD) -> Checked:
    """Check an opening's readings against each other.

    Args:
        readings: of one four-sided opening, each length above zero.
        tape: the spread of a reading that names none, inches, root mean square.
    """
    if impossible := contradictions(readings):
        ways = mends(readings, tape)
        again = tuple(dict.fromkeys(mend.number for mend in ways))[:2]
        return Checked(Verdict.IMPOSSIBLE, None, take_again=again, contradictions=impossible, mends=ways)
    shape = adjust(readings, tape)
    if shape is None:
        return _without_a_shape(readings, tape)
    if shape.checks == 0:
        everything = tuple(range(len(readings)))
        return Checked(
            Verdict.NO_CHECK, shape, ask=_not_read(readings, _ASKED_FIRST)[:1], unchecked=everything
        )
    quality = shape.quality
    unchecked = tuple(number for number, part in enumerate(quality.redundancies) if not part)
    bows = _bows(readings, tape)
    if not shape.alarm:
        return Checked(Verdict.AGREE, shape, unchecked=unchecked, bows=bows)
    cofactors = shape.cofactors
    refits = {
        number: refit
        for number, redundancy in enumerate(quality.redundancies)
        if redundancy and (refit := without(shape, number, tape, cofactors, redundancy))
    }
    found = suspects(readings, refits, quality, tape)
    return _named(readings, shape, found, unchecked, bows)


def _without_a_shape(readings: Sequence[Reading], tape: float) -> Checked:
    """Readings that no shape fits though every triangle closes: too few, or one of them far off."""
    refits = {
        number: refit
        for number in range(len(readings))
        if (refit := adjust([*readings[:number], *readings[number + 1 :]], tape))
    }
    if not refits:
        return Checked(Verdict.NOT_DETERMINED, None, ask=_not_read(readings, _ASKED_FIRST)[:1])
    return _named(readings, None, suspects(readings, refits, None, tape), (), ())


def _named(
    readings: Sequence[Reading],
    shape: Adjusted | None,
    found: Sequence[SuspectReading],
    unchecked: tuple[int, ...],
    bows: tuple[Bow, ...],
) -> Checked:
    if not found:
        return Checked(Verdict.MORE_THAN_ONE, shape, unchecked=unchecked, bows=bows)
    return Checked(
        Verdict.ONE_SLIP,
        shape,
        suspects=tuple(found),
        take_again=tuple(suspect.number for suspect in found[:2]),
        ask=_not_read(readings, _ASKED_ON_AN_ALARM) if len(found) > 1 else (),
        unchecked=unchecked,
        bows=bows,
    )


def _not_read(readings: Sequence[Reading], kinds: Sequence[ReadingKind]) -> tuple[ReadingKind, ...]:
    taken = {reading.kind for reading in readings}
    return tuple(kind for kind in kinds if kind not in taken)


def _bows(readings: Sequence[Reading], tape: float) -> tuple[Bow, ...]:
    """What the middle readings are off from straight members, as the other readings have them."""
    middles = [reading for reading in readings if reading.kind in MIDDLES]
    straight = (
        adjust([reading for reading in readings if reading.kind not in MIDDLES], tape) if middles else None
    )
    if straight is None or straight.alarm:
        return ()
    found = []
    for reading in middles:
        should_be, spread = predicted(reading, straight, own_spread(reading, tape))
        by = float(reading.value) - should_be
        if abs(by) > ALARM * spread:
            found.append(Bow(reading.kind, by, spread))
    return tuple(found)
