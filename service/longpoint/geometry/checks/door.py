"""A door whose pieces do not fit each other, and framing that leaves its shims too little room or too much."""

from __future__ import annotations

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.readings.readings import Door
from longpoint.lengths import Fraction
from longpoint.texts import Sentence, say
from longpoint.values import Faults

# Common practice, no source: shims take at least a quarter inch at each side, and no more than five eighths.
LEAST_SHIM, MOST_SHIM = Fraction(1, 4), Fraction(5, 8)


def check_door(door: Door, faults: Faults) -> None:
    """A door whose pieces do not fit each other."""
    if not 2 <= door.hinges <= 5:
        faults.add(("readings", "door", "hinges"), "out-of-range", say("problem", "door.hinges-out-of-range"))
    taken = door.top_hinge + door.bottom_hinge + door.hinges * door.hinge_length
    if taken > door.height:
        faults.add(
            ("readings", "door", "hinge_length"),
            "hinges-too-long",
            say("problem", "door.hinges-too-long", taken=taken, height=door.height),
        )
    if door.housing >= door.jamb_thickness:
        faults.add(
            ("readings", "door", "housing"),
            "housing-too-deep",
            say("problem", "door.housing-too-deep", thickness=door.jamb_thickness),
        )
    if door.thickness >= door.jamb_depth:
        faults.add(
            ("readings", "door", "thickness"),
            "door-too-thick",
            say("problem", "door.too-thick"),
        )


def door_findings(door: Door) -> tuple[Finding, ...]:
    """Whether the framing leaves the room that shims take."""
    found: list[Finding] = []
    if door.rough_width is not None:
        outside = door.jamb_width + 2 * door.jamb_thickness
        found += _across((door.rough_width - outside) / 2)
    if door.rough_height is not None:
        room = door.rough_height - door.clear_height - door.jamb_thickness
        if room < 0:
            found.append(_too_small("above", -room, say("finding", "framing.height-too-small", short=-room)))
    return tuple(found)


def _across(room: Fraction) -> list[Finding]:
    """What is found of the room that the rough opening's width leaves at each side."""
    if room < 0:
        short = -room * 2
        return [_too_small("left", short, say("finding", "framing.width-too-small", short=short))]
    if room < LEAST_SHIM:
        detail = say("finding", "framing.width-tight", room=room, usual=LEAST_SHIM)
        thin = Offer("thin_jamb", say("offer", "framing.thin-jamb"))
        return [Finding("rough-opening-tight", "left", detail, room, (thin,))]
    if room > MOST_SHIM:
        detail = say("finding", "framing.width-loose", room=room, most=MOST_SHIM)
        pack = Offer("pack_framing", say("offer", "framing.pack"))
        return [Finding("rough-opening-loose", "left", detail, room, (pack,))]
    return []


def _too_small(side: str, short: Fraction, detail: Sentence) -> Finding:
    enlarge = Offer("enlarge_framing", say("offer", "framing.enlarge"))
    return Finding("rough-opening-too-small", side, detail, short, (enlarge,))
