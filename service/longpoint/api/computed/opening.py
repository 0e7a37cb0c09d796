"""`/v1/opening`: all the pieces of one opening."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Any

from litestar import Request, post
from litestar.params import JSONBody, QueryParameter

from longpoint.api.answers.asked import FeetAsked
from longpoint.api.answers.kept import with_kept
from longpoint.api.answers.sheet import FILE_HEADERS, file, wanted_by
from longpoint.api.document.examples import OPENING
from longpoint.api.document.examples_shapes import REAL_OPENINGS
from longpoint.api.http.answer import Reply
from longpoint.api.http.negotiate import BOTH, JSON, SVG
from longpoint.api.http.operation import operation
from longpoint.api.http.problems import InvalidRequest
from longpoint.geometry import Built, Conditions, Opening, build_opening
from longpoint.lengths import Rounding, Unit, length_writer
from longpoint.sheets import Wording, elevation, piece_drawing, section
from longpoint.shop.answer import OpeningAnswer, opening_answer
from longpoint.shop.build import BuiltOpening
from longpoint.shop.house import report_mark
from longpoint.texts import say
from longpoint.values import Fault, Faults, Path, nearest


class OpeningRequest(Opening, frozen=True, kw_only=True):
    """One opening with its trim; answered with all of its pieces.

    Attributes:
        movement: The wood, and the air its joints will live through: the answer then says how far its miters open.
        unit: The unit of lengths that are written without one; without it each must carry its own.
        rounding: It says how lengths of the answer are rounded.
    """

    movement: Conditions | None = None
    unit: Unit | None = None
    rounding: Rounding = Rounding()

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be."""
        report_mark(self.mark, faults, at)
        super().report(faults, at)
        if self.movement is not None:
            self.movement.report(faults, (*at, "movement"))


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
        description="The piece to draw, for `drawing=piece`: its `key` in the JSON answer, or its number, as `K1-4`.",
        max_length=130,
        pattern=r"^[^\x00]*$",
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
) -> Reply[OpeningAnswer]:
    """Every piece of one opening: stool, apron, returns and casing, each with its cuts and how it was computed.

    As SVG it is drawn to scale: the elevation, the section, or one piece as it lies on the saw.
    """
    result = build_opening(data, rounding=data.rounding)
    wanted = wanted_by(request)
    if wanted in BOTH:
        write, answer = (
            length_writer(data.rounding),
            opening_answer(BuiltOpening("", 1, result), data.movement),
        )
        return Reply(with_kept(answer, write) if wanted == JSON else answer, write)
    svg = drawn(result, drawing, piece, Wording(data.rounding, feet))
    return file(svg.encode(), SVG, data.mark, piece if drawing is Drawing.PIECE else drawing)


def drawn(result: Built, drawing: Drawing, key: str, wording: Wording) -> str:
    """The drawing asked for.

    Raises:
        InvalidRequest: when the opening has no such piece.
    """
    if drawing is Drawing.ELEVATION:
        return elevation(result, wording)
    if drawing is Drawing.SECTION:
        return section(result, wording)
    mark = result.opening.mark
    piece = next(
        (piece for number, piece in result.numbered if key in (str(piece.key), f"{mark}-{number}")), None
    )
    if piece is None:
        has = tuple(f"{mark}-{number} {piece.key}" for number, piece in result.numbered)
        hint = nearest(key, [str(piece.key) for _, piece in result.numbered])
        detail = say("problem", "opening.has-pieces", pieces=has) + hint
        fault = Fault(code="unknown-piece", detail=detail, parameter="piece")
        raise InvalidRequest(say("problem", "opening.no-such-piece"), [fault])
    return piece_drawing(result.opening.mark, piece, wording)
