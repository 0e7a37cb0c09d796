"""`/v1/stool`, `/v1/apron` and `/v1/casing`: one kind of piece from a few readings."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.document.examples import APRON, CASING, STOOL
from longpoint.api.http.answer import Reply
from longpoint.api.http.operation import operation
from longpoint.geometry import Built, Piece
from longpoint.geometry.alone import ApronAlone, CasingAlone, StoolAlone
from longpoint.lengths import Rounding, Unit, length_writer
from longpoint.texts import Sentence
from longpoint.values import Value


class StoolRequest(StoolAlone, frozen=True, kw_only=True):
    """A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
        rounding: It says how lengths of the answer are rounded.
    """

    unit: Unit | None = None
    rounding: Rounding = Rounding()


class ApronRequest(ApronAlone, frozen=True, kw_only=True):
    """An apron's readings and choices: it ends flush with the casing's outside edges.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
        rounding: It says how lengths of the answer are rounded.
    """

    unit: Unit | None = None
    rounding: Rounding = Rounding()


class CasingRequest(CasingAlone, frozen=True, kw_only=True):
    """Casing's readings and choices, for plumb sides. Give `jamb_height`, or `left_jamb_height` and
    `right_jamb_height`.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
        rounding: It says how lengths of the answer are rounded.
    """

    unit: Unit | None = None
    rounding: Rounding = Rounding()


class PiecesAnswer(Value, frozen=True):
    """The pieces asked for, and what was assumed.

    Attributes:
        pieces: The pieces, each with its length, its ends and how they were computed.
        notes: They say what was assumed.
    """

    pieces: tuple[Piece, ...]
    notes: tuple[Sentence, ...]


@post(
    "/v1/stool", **operation("compute_stool", summary="Work out a stool", tag="One opening", examples=STOOL)
)
async def compute_stool(data: JSONBody[StoolRequest]) -> Reply[PiecesAnswer]:
    """Its length with both horns, its ripped width and its notches, from the jamb and the casing."""
    return _reply(data.built(), data.rounding)


@post(
    "/v1/apron", **operation("compute_apron", summary="Work out an apron", tag="One opening", examples=APRON)
)
async def compute_apron(data: JSONBody[ApronRequest]) -> Reply[PiecesAnswer]:
    """Its length, flush with the casing's outside edges, and its returns where its ends are returned."""
    return _reply(data.built(), data.rounding)


@post(
    "/v1/casing", **operation("compute_casing", summary="Work out casing", tag="One opening", examples=CASING)
)
async def compute_casing(data: JSONBody[CasingRequest]) -> Reply[PiecesAnswer]:
    """Legs and head, and in a picture frame the sill piece, each with its miters and its short and long points."""
    return _reply(data.built(), data.rounding)


def _reply(built: Built, rounding: Rounding) -> Reply[PiecesAnswer]:
    return Reply(PiecesAnswer(built.pieces, built.notes), length_writer(rounding))
