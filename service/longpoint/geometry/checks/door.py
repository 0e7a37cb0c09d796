"""A door whose pieces do not fit each other, and framing that leaves its shims too little room or too much."""

from __future__ import annotations

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.readings.readings import Door
from longpoint.lengths import Fraction, spoken
from longpoint.values import Faults

# Common practice, no source: shims want at least a quarter inch at each side, and no more than five eighths.
LEAST_SHIM, MOST_SHIM = Fraction(1, 4), Fraction(5, 8)


def check_door(door: Door, faults: Faults) -> None:
    """A door whose pieces do not fit each other."""
    if not 2 <= door.hinges <= 5:
        faults.add(("readings", "door", "hinges"), "out-of-range", "A door hangs on 2 to 5 hinges.")
    taken = door.top_hinge + door.bottom_hinge + door.hinges * door.hinge_length
    if taken > door.height:
        faults.add(
            ("readings", "door", "hinge_length"),
            "hinges-too-long",
            f"The hinges, with what lies above and below, take {spoken(taken)} of a door {spoken(door.height)} high.",
        )
    if door.housing >= door.jamb_thickness:
        faults.add(
            ("readings", "door", "housing"),
            "housing-too-deep",
            f"A housing must leave some of the leg's {spoken(door.jamb_thickness)}.",
        )
    if door.thickness >= door.jamb_depth:
        faults.add(
            ("readings", "door", "thickness"),
            "door-too-thick",
            "The door is as thick as its jamb is deep. Measure again.",
        )


def door_findings(door: Door) -> tuple[Finding, ...]:
    """Whether the framing leaves the room that shims want."""
    found: list[Finding] = []
    if door.rough_width is not None:
        outside = door.jamb_width + 2 * door.jamb_thickness
        found += _room("rough opening's width", "left", (door.rough_width - outside) / 2, 2)
    if door.rough_height is not None:
        room = door.rough_height - door.clear_height - door.jamb_thickness
        if room < 0:
            found += _room("rough opening's height", "above", room, 1)
    return tuple(found)


def _room(what: str, side: str, room: Fraction, sides: int) -> list[Finding]:
    if room < 0:
        detail = f"The {what} is {spoken(-room * sides)} too small for this jamb."
        cut = Offer("enlarge_framing", "Enlarge the framing, or take a smaller door.", (), None)
        return [Finding("rough-opening-too-small", side, detail, -room * sides, (cut,))]
    if room < LEAST_SHIM:
        detail = f"The {what} leaves {spoken(room)} for shims at each side; {spoken(LEAST_SHIM)} is usual."
        thin = Offer("thin_jamb", "Take thinner jamb stock, or plane the framing.", (), None)
        return [Finding("rough-opening-tight", side, detail, room, (thin,))]
    if room > MOST_SHIM:
        detail = f"The {what} leaves {spoken(room)} for shims at each side; past {spoken(MOST_SHIM)} it wants packing."
        pack = Offer("pack_framing", "Nail packing to the framing before setting the jamb.", (), None)
        return [Finding("rough-opening-loose", side, detail, room, (pack,))]
    return []
