"""`/v1/opening`: all the parts of one opening."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.build import built, field_sent
from longpoint.api.cut_list_out import opening_out
from longpoint.api.examples import OPENING
from longpoint.api.examples_shapes import REAL_OPENINGS
from longpoint.api.operation import operation
from longpoint.api.read import Path, Reader
from longpoint.api.read_opening import read_opening
from longpoint.api.read_trim import read_trim
from longpoint.api.wire_cut_list import OpeningOut
from longpoint.api.wire_lengths import length_writer
from longpoint.api.wire_opening import OpeningFields, OpeningRequest
from longpoint.shop.house import BuiltOpening


@post(
    "/v1/opening",
    **operation(
        "compute_opening", summary="One opening", tag="One opening", examples={**OPENING, **REAL_OPENINGS}
    ),
)
async def compute_opening(data: JSONBody[OpeningRequest]) -> OpeningOut:
    """Every part of one opening: stool, apron, returns and casing, each with its cuts and how it was computed."""
    read = Reader(data.unit)
    trim = read_trim(read, data.trim, ("trim",))
    opening = read_opening(read, data, trim, ())
    result = built(read, opening, lambda path: opening_field(data, path))
    return opening_out(BuiltOpening("", 1, result), length_writer(data.rounding.value()), data.movement)


_SENT: dict[str | int, str] = {"limits": "wall_limits", "foot": "foot_style"}


def opening_field(wire: OpeningFields, path: Path) -> Path:
    """A field of an opening as it was sent."""
    if path[0] in _SENT:
        return (_SENT[path[0]], *path[1:])
    if path[:2] == ("readings", "mulls"):
        return ("readings", "lights" if len(path) == 2 else "mull_widths", *path[2:])
    if path[0] == "readings":
        return ("readings", field_sent(wire.readings, path[1]), *path[2:])
    return path
