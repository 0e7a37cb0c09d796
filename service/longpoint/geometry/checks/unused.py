"""Readings and choices that an opening as it stands has no use for: refused with what would use them, never dropped."""

from __future__ import annotations

from longpoint.geometry.readings.inputs import NO_HORNS, NO_REVEALS, NO_WIDTHS, Bottom, Opening
from longpoint.geometry.readings.outline import PlumbSides
from longpoint.texts import say
from longpoint.values import Faults


def check_unused(opening: Opening, faults: Faults) -> None:
    """What is given of a stool or a bottom casing where there is none, and of a level that was held to
    what the shape does not ask for."""
    if opening.bottom is not Bottom.STOOL:
        _check_without_stool(opening, faults)
    if opening.bottom is Bottom.CASING:
        return
    for group, chosen, nothing in (
        ("reveals", opening.reveals, NO_REVEALS),
        ("widths", opening.widths, NO_WIDTHS),
    ):
        if chosen is not nothing and chosen.sill is not None:
            detail = say("problem", "unused.no-bottom-casing", bottom=opening.bottom.value)
            faults.add((group, "sill"), "no-bottom-casing", detail)


def _check_without_stool(opening: Opening, faults: Faults) -> None:
    if opening.horns is not NO_HORNS:
        for side in ("left", "right"):
            if getattr(opening.horns, side) is not None:
                detail = say("problem", "unused.no-stool", bottom=opening.bottom.value)
                faults.add(("horns", side), "no-stool", detail)
    if opening.widths is not NO_WIDTHS and opening.widths.apron is not None:
        detail = say("problem", "unused.no-apron", bottom=opening.bottom.value)
        faults.add(("widths", "apron"), "no-apron", detail)
    if opening.readings.sill is not None and not isinstance(opening.outline.shape, PlumbSides):
        faults.add(("readings", "sill"), "level-not-used", say("problem", "unused.level"))
