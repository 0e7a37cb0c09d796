"""An opening's readings by name, whatever its shape."""

from __future__ import annotations

import msgspec

from longpoint.geometry import Opening
from longpoint.lengths import Fraction
from longpoint.sheets.document import Cell, PrintedLength
from longpoint.sheets.wording import Wording, angle, words


def readings_of(opening: Opening, wording: Wording) -> tuple[tuple[str, Cell], ...]:
    """What was measured: the shape's own readings, then the jamb's depth and thickness."""
    readings = opening.readings
    found = [
        (words(field.name), cell)
        for field in msgspec.structs.fields(opening.outline.shape)
        if (cell := _cell(field.name, getattr(opening.outline.shape, field.name), wording)) is not None
    ]
    found += [(name, PrintedLength(depth)) for name, depth in depths(opening) if depth is not None]
    found.append(("jamb thickness", PrintedLength(readings.jamb_thickness)))
    return tuple(found)


def depths(opening: Opening) -> tuple[tuple[str, Fraction | None], ...]:
    """The jamb's depth at each side, under one name where the two are the same."""
    left, right = opening.outline.left_depth, opening.outline.right_depth
    if left == right:
        return (("jamb depth", left),)
    return (("left depth", left), ("right depth", right))


def _cell(name: str, value: object, wording: Wording) -> Cell | None:
    if value is None or value == ():
        return None
    if name.endswith("angles") and isinstance(value, tuple):
        return ", ".join(angle(one) for one in value)
    if isinstance(value, tuple):
        return ", ".join(wording.figure(one) for one in value)
    if name.endswith("angle") and isinstance(value, (Fraction, float)):
        return angle(value)
    return PrintedLength(value) if isinstance(value, (Fraction, float)) else str(value)
