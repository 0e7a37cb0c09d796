"""What stands on a floor or has a bottom casing, its two sides read apart: whether head or floor is out of level."""

from __future__ import annotations

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.frame.kernel import Frame
from longpoint.geometry.frame.shapes import base_rise
from longpoint.geometry.readings.inputs import ON_FLOOR, Bottom, Opening
from longpoint.geometry.readings.outline import PlumbSides
from longpoint.lengths import Fraction
from longpoint.texts import Sentence, say


def floor_findings(opening: Opening, frame: Frame) -> tuple[Finding, ...]:
    """Sides of two heights over a floor that nobody held a level to: a raked head is taken, and that is said."""
    shape = opening.outline.shape
    if (
        opening.bottom not in ON_FLOOR
        or opening.readings.sill is not None
        or not isinstance(shape, PlumbSides)
        or frame.square
    ):
        return ()
    more = shape.left_jamb_height - shape.right_jamb_height
    longer, by = ("left", more) if more > 0 else ("right", -more)
    # What a level held to the floor would read, were the head the level one.
    level = Offer(
        "read_floor", say("offer", "floor.level-head", low=longer, by=by), (), None, (("floor low by", by),)
    )
    raked = Offer("floor_is_level", say("offer", "floor.raked-head"))
    head = float(frame.corners[2].degrees)
    detail = say("finding", "floor.head-or-floor", longer=longer, by=by, left=90 - head / 2, right=head / 2)
    field = ("readings", f"{longer}_jamb_height")
    return (Finding("head-or-floor", "head", detail, by, (level, raked), "", field),)


def level_notes(opening: Opening, shape: PlumbSides, frame: Frame) -> tuple[Sentence, ...]:
    """What a level that was held to the floor, or to the sill jamb, says of feet and head."""
    rise = base_rise(opening)
    if opening.readings.sill is None or opening.bottom is Bottom.STOOL:
        return (say("note", "frame.out-of-level"),)
    said: list[Sentence] = []
    if rise and opening.bottom in ON_FLOOR:
        off = abs(90 - float(frame.corners[0].degrees))
        said.append(say("note", "floor.feet", degrees=off, by=abs(rise)))
    head: Fraction = rise + shape.right_jamb_height - shape.left_jamb_height
    said.append(
        say("note", "floor.head-off", by=abs(head), low="left" if head > 0 else "right")
        if head
        else say("note", "floor.head-level")
    )
    return tuple(said)
