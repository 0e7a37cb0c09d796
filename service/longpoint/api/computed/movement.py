"""`/v1/movement`: how a miter opens as the wood dries or takes up moisture."""

from __future__ import annotations

from typing import Annotated

from litestar import post
from litestar.params import JSONBody
from msgspec import Meta

from longpoint.api.document.examples_shapes import MOVEMENT
from longpoint.api.http.answer import Reply
from longpoint.api.http.operation import operation
from longpoint.geometry import Conditions, Movement, movement
from longpoint.lengths import PositiveLength, Rounding, RoundTo, Unit, length_writer


class MovementRequest(Conditions, frozen=True, kw_only=True):
    """A mitered piece, the conditions its joint was made in, and those it will live through.

    Attributes:
        width: The width of the piece, measured from edge to edge across its face.
        miter_degrees: The miter of the piece, measured off a square cut.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    width: PositiveLength
    miter_degrees: Annotated[float, Meta(gt=0, lt=85)] = 45.0
    unit: Unit | None = None


@post(
    "/v1/movement",
    **operation("compute_movement", summary="Work out how wood moves", tag="One opening", examples=MOVEMENT),
)
async def compute_movement(data: JSONBody[MovementRequest]) -> Reply[Movement]:
    """Moisture content from the air, change across the grain, and how far a miter opens, season by season."""
    to = RoundTo.MILLIMETER if data.unit is Unit.MM else RoundTo.SIXTEENTH
    return Reply(movement(data.width, data.miter_degrees, data), length_writer(Rounding(to)))
