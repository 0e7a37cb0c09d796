"""Types of the document's part "openings". Generated; do not edit."""

from __future__ import annotations

from typing import Any

from longpoint_sdk.types._base import LengthText, Result, request_from
from longpoint_sdk.types.common import (
    Foot,
    Horns,
    HouseOpening,
    Limits,
    Reveals,
    SillAnswer,
    WallAnswer,
    Widths,
)
from longpoint_sdk.types.readings import Readings


class StoredOpening(Result, frozen=True, kw_only=True):
    """An opening as it was sent, and the exact value of every length in it.

    Attributes:
        mark: What it is called in the house; part of each piece's name. A name on one line, not starting with
            a space.
        readings: What the tape read.
        trim: The name of one of the house's trim specs. A name on one line, not starting with a space.
        id: Its id.
        revision: The schedule's revision that last changed it.
        position: Its place in the schedule's order; places may be skipped.
        exact: Its lengths exactly. Every length exactly, by its JSON pointer, as a fraction of an inch.
        count: How many are alike.
        foot_style: What the trim stands on.
        horns: Its own, where they are not the trim's.
        reveals: Its own, where they are not the trim's.
        room: Where it is; money is told by room, too.
        sill_answer: What is done under a stool on a sill out of level.
        square_gap: The joint gap below which an opening that is out of square is treated as square.
        wall_answer: Takes up what was found of a wall out of plane; until one is chosen no size changes for
            it.
        wall_limits: How far the wall may lie off the jamb's edge before the casing is planed or the jamb
            extended.
        widths: Its own, where pieces are ripped.
        without_apron: Leaves the trim's apron out.
    """

    mark: str
    readings: Readings
    trim: str
    id: str
    revision: int
    position: int
    exact: dict[str, str]
    count: int = 1
    foot_style: Foot | str = "stool"
    horns: Horns = Horns()
    reveals: Reveals = Reveals()
    room: str = ""
    sill_answer: SillAnswer | str = "shim"
    square_gap: LengthText = "1/64 in"
    wall_answer: WallAnswer | str = "flat"
    wall_limits: Limits = Limits()
    widths: Widths = Widths()
    without_apron: bool = False

    def changed(self, **fields: Any) -> HouseOpening:
        """The request that changes it: all as it was read, with other values for these fields.

        Raises:
            TypeError: for a field that HouseOpening does not have.
        """
        return request_from(HouseOpening, self, fields)
