"""`/v1/corners`: an opening's corners as they really stand."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.document.examples_shapes import CORNERS
from longpoint.api.http.answer import Reply
from longpoint.api.http.operation import operation
from longpoint.geometry import Corners
from longpoint.geometry.alone import CornersAlone
from longpoint.lengths import Rounding, Unit, length_writer


class CornersRequest(CornersAlone, frozen=True, kw_only=True):
    """Readings of an opening that may be out of square, and the casing that is to go round it.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
        rounding: It says how lengths of the answer are rounded.
    """

    unit: Unit | None = None
    rounding: Rounding = Rounding()


@post(
    "/v1/corners",
    **operation(
        "compute_corners", summary="Work out corners out of square", tag="One opening", examples=CORNERS
    ),
)
async def compute_corners(data: JSONBody[CornersRequest]) -> Reply[Corners]:
    """Each corner's angle and the casing cut to it, as read: never squared up, and answered even where the
    readings disagree, with what the tape most likely got wrong."""
    return Reply(data.corners(), length_writer(data.rounding))
