"""Readings that no window, door or wall has, looked at by themselves."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.geometry.checks.doubted import Kind, Read, doubt, is_confirmed, readings_of, stands_on_floor
from longpoint.geometry.checks.findings import Finding
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.readings import Readings
from longpoint.lengths import Fraction, Length, Unit
from longpoint.lengths.written_in import in_another_unit
from longpoint.texts import Sentence, say

# Common practice, no source, inches: what openings that are trimmed lie between, and where most of them do. What is
# narrower or lower than the least is found with all that is too small.
BETWEEN: dict[Kind, tuple[Fraction, Fraction]] = {
    "width": (Fraction(4), Fraction(192)),
    "height": (Fraction(4), Fraction(120)),
    "depth": (Fraction(1, 2), Fraction(14)),
}
MOSTLY: dict[Kind, tuple[Fraction, Fraction]] = {
    "width": (Fraction(12), Fraction(96)),
    "height": (Fraction(12), Fraction(108)),
    "depth": (Fraction(1), Fraction(8)),
}
# Common practice, no source: no door is lower than five feet, and what stands on a floor is six feet and more.
LOWEST_DOOR = Fraction(60)
DOOR = Fraction(72)


def unusual_findings(opening: Opening) -> tuple[Finding, ...]:
    """Readings that are doubted whatever the rest of the house is like; one finding of a reading."""
    return () if _plain(opening.readings) else tuple(_found(opening))


def _plain(readings: Readings) -> bool:
    """Whether it is a window as most are, which takes a tenth of the time to see: width, height and depth well inside
    what is usual, and no more readings of them."""
    width, depth = readings.jamb_width, readings.jamb_depth
    left = right = readings.jamb_height
    if left is None:
        left, right = readings.left_jamb_height, readings.right_jamb_height
    return (
        width is not None
        and left is not None
        and right is not None
        and depth is not None
        and readings.head_width is None
        and 5 <= float(width) <= 71
        and 5 <= float(left) <= 119
        and 5 <= float(right) <= 119
        and 1 <= float(depth) <= 13
    )


def _found(opening: Opening) -> Iterator[Finding]:
    reads = readings_of(opening)
    swapped = _swapped(opening, reads)
    for read in reads:
        if is_confirmed(opening, read):
            continue
        if swapped is not None and read is swapped[0]:
            detail = say("finding", "readings.swapped-door", width=+read.value, height=+swapped[1].value)
            yield doubt("readings-swapped", read, detail)
        elif swapped is None or read not in swapped:
            yield from _unusual(read)


def _swapped(opening: Opening, reads: tuple[Read, ...]) -> tuple[Read, Read] | None:
    """The width and a height of what stands on a floor, where they are so only the other way round."""
    if not stands_on_floor(opening):
        return None
    width = next((read for read in reads if read.kind == "width"), None)
    height = next((read for read in reads if read.kind == "height"), None)
    if width is None or height is None or not height.value < DOOR <= width.value:
        return None
    return width, height


def _unusual(read: Read) -> Iterator[Finding]:
    least, most = BETWEEN[read.kind]
    door = read.name == "door_height"
    if door:
        least = LOWEST_DOOR
    if least <= read.value <= most:
        return
    meant = _meant(read)
    if meant is None and read.value < least and read.kind != "depth" and not door:
        return
    text, value = read.value.text, +read.value
    if door:
        detail = say("finding", "readings.unusual-door", read=text, value=value, least=least, most=most)
    elif read.kind == "depth":
        detail = say("finding", "readings.unusual-depth", read=text, value=value, least=least, most=most)
    elif read.kind == "width":
        detail = say("finding", "readings.unusual-width", read=text, value=value, most=most)
    else:
        detail = say("finding", "readings.unusual-height", read=text, value=value, most=most)
    yield doubt("reading-unusual", read, detail + meant)


def _meant(read: Read) -> Sentence | None:
    """What slips would explain it: another unit that fits, a digit too many or a point out of place."""
    least, most = MOSTLY[read.kind]
    shifted = any(least <= meant <= most for meant in without_slip(read.value))
    by_digit = say("hint", "readings.ten-times") if shifted else None
    for unit in Unit:
        would = in_another_unit(read.value, unit)
        if would is not None and least <= would <= most:
            return say("hint", "readings.unit", unit=unit.value, would=would) + by_digit
    return by_digit


def without_slip(value: Length) -> tuple[Fraction, ...]:
    """What a reading would be without a digit too many in its whole inches, or with its point one place on."""
    whole = str(int(value))
    part = value - int(value)
    shorter = {whole[:at] + whole[at + 1 :] for at in range(len(whole)) if len(whole) > 1}
    found = [int(digits) + part for digits in shorter if not digits.startswith("0")]
    return (*sorted(found), value / 10, value * 10)
