"""`/v1/opening`: all the parts of one opening."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Any

from litestar import Request, post
from litestar.params import JSONBody, QueryParameter

from longpoint.api.document.examples import OPENING
from longpoint.api.document.examples_shapes import REAL_OPENINGS
from longpoint.api.http.answer import Reply
from longpoint.api.http.faults import InvalidRequest
from longpoint.api.http.negotiate import BOTH, JSON, SVG
from longpoint.api.http.operation import operation
from longpoint.api.http.problems import Fault
from longpoint.api.read.build import built, field_sent
from longpoint.api.read.opening import read_opening
from longpoint.api.read.reader import Path, Reader
from longpoint.api.read.trim import read_trim
from longpoint.api.wire.cut_list import OpeningOut
from longpoint.api.wire.lengths import length_writer
from longpoint.api.wire.opening import OpeningFields, OpeningRequest
from longpoint.api.wire.parts import part_json, part_out
from longpoint.api.wire.sheets import FeetAsked
from longpoint.api.write.cut_list import opening_out
from longpoint.api.write.sheet import FILE_HEADERS, file, wanted_by
from longpoint.geometry import Built
from longpoint.sheets import Wording, elevation, piece_drawing, section
from longpoint.shop.house import BuiltOpening


class Drawing(StrEnum):
    """A drawing of an opening, or of one of its pieces as it lies on the saw."""

    ELEVATION = "elevation"
    SECTION = "section"
    PIECE = "piece"


DrawingAsked = Annotated[
    Drawing, QueryParameter(description="Which drawing an SVG answer is; the elevation when left out.")
]
PieceAsked = Annotated[
    str,
    QueryParameter(
        description="The part to draw, for `drawing=piece`: its `key` in the JSON answer.",
        max_length=80,
        pattern=r"^[a-z0-9_/ ]*$(?![\s\S])",
    ),
]


@post(
    "/v1/opening",
    **operation(
        "compute_opening",
        summary="Work out one opening",
        tag="One opening",
        examples={**OPENING, **REAL_OPENINGS},
        offers=(*BOTH, SVG),
        headers=FILE_HEADERS,
    ),
)
async def compute_opening(
    request: Request[Any, Any, Any],
    data: JSONBody[OpeningRequest],
    drawing: DrawingAsked = Drawing.ELEVATION,
    piece: PieceAsked = "",
    feet: FeetAsked = False,
) -> Reply[OpeningOut]:
    """Every part of one opening: stool, apron, returns and casing, each with its cuts and how it was computed.

    As SVG it is drawn to scale: the elevation, the section, or one piece as it lies on the saw.
    """
    read = Reader(data.unit)
    trim = read_trim(read, data.trim, ("trim",))
    opening = read_opening(read, data, trim, ())
    result = built(read, opening, lambda path: opening_field(data, path))
    wanted = wanted_by(request)
    if wanted in BOTH:
        write, spell = length_writer(data.rounding.value()), part_json if wanted == JSON else part_out
        return Reply(opening_out(BuiltOpening("", 1, result), write, data.movement, spell))
    svg = drawn(result, drawing, piece, Wording(data.rounding.value(), feet))
    return file(svg.encode(), SVG, data.mark, piece if drawing is Drawing.PIECE else drawing)


def drawn(result: Built, drawing: Drawing, piece: str, wording: Wording) -> str:
    """The drawing asked for.

    Raises:
        InvalidRequest: when the opening has no such part.
    """
    if drawing is Drawing.ELEVATION:
        return elevation(result, wording)
    if drawing is Drawing.SECTION:
        return section(result, wording)
    part = next((part for part in result.parts if part.key == piece), None)
    if part is None:
        keys = ", ".join(part.key for part in result.parts)
        fault = Fault(code="unknown-piece", detail=f"This opening has {keys}.", parameter="piece")
        raise InvalidRequest("The opening has no such piece.", [fault])
    return piece_drawing(result.opening.mark, part, wording)


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
