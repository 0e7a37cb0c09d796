"""Runs the geometry room on what a request described, and turns its refusals into problems.

The geometry room names fields as the domain has them; a caller hears of the fields that were sent: `leg_height`
where one reading stood for both sides, a trim spec where an opening named one.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NoReturn

from longpoint.api.http.faults import Faults
from longpoint.api.read.reader import Path, Reader
from longpoint.geometry import Built, GeometryError, Opening, Pieces, build_opening

_STOOD_FOR = {
    "left_height": "leg_height",
    "right_height": "leg_height",
    "left_depth": "jamb_depth",
    "right_depth": "jamb_depth",
    "spring_height": "leg_height",
    "jamb_width": "sides",
    "plinth": "plinth_height",
}


def built(
    read: Reader, opening: Opening, as_sent: Callable[[Path], Path], wanted: Pieces = Pieces.ALL
) -> Built:
    """The opening worked out.

    Raises:
        InvalidRequest: when a length could not be read or the opening cannot be built.
    """
    read.faults.raise_any()
    try:
        return build_opening(opening, wanted)
    except GeometryError as error:
        raise_geometry(error, as_sent)


def raise_geometry(error: GeometryError, as_sent: Callable[[Path], Path]) -> NoReturn:
    """Tell a request's faults of geometry, each at the field as it was sent."""
    faults = Faults()
    # One reading may stand for both sides, one trim spec for many openings: its fault is told once.
    told = {(as_sent(fault.path), fault.code, fault.detail): None for fault in error.faults}
    for path, code, detail in told:
        faults.add(path, code, detail)
    faults.raise_any()
    raise AssertionError("a geometry error carries at least one fault") from error


def field_sent(wire: Any, name: str | int) -> str | int:
    """The field that carried a reading: itself, or the one that stood for it."""
    if isinstance(name, int) or getattr(wire, name, None) is not None:
        return name
    stood_for = _STOOD_FOR.get(name, name)
    return stood_for if hasattr(wire, stood_for) else name
