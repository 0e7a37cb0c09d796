"""Types of the document's part "openings". Generated; do not edit."""

from __future__ import annotations

from typing import Any

from longpoint_sdk.types._base import Result, request_from
from longpoint_sdk.types.common import (
    Foot,
    HornsIn,
    OpeningIn,
    RevealsIn,
    SillAnswer,
    WallAnswer,
    WallLimitsIn,
    WidthsIn,
)
from longpoint_sdk.types.readings import ReadingsIn


class OpeningStored(Result, frozen=True, kw_only=True):
    """An opening as it was sent, and the exact value of every length in it.

    Attributes:
        revision: The schedule's revision that last changed it.
        position: Its place in the schedule's order; places may be skipped.
        exact: Every length exactly, by its JSON pointer, as a fraction of an inch.
    """

    id: str
    revision: int
    position: int
    mark: str
    room: str
    trim: str
    count: int
    foot_style: Foot | str
    readings: ReadingsIn
    reveals: RevealsIn
    square_gap: str
    horns: HornsIn
    widths: WidthsIn
    without_apron: bool
    wall_answer: WallAnswer | str
    wall_limits: WallLimitsIn
    sill_answer: SillAnswer | str
    exact: dict[str, str]

    def changed(self, **fields: Any) -> OpeningIn:
        """The request that changes it: all as it was read, with other values for these fields.

        Raises:
            TypeError: for a field that OpeningIn does not have.
        """
        return request_from(OpeningIn, self, fields)
