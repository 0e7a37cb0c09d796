"""What callers send about something kept, beside the thing itself."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from msgspec import Meta

from longpoint.schedules.kept import MOST_OPENINGS, RackLength, RecordedPiece
from longpoint.schedules.states import Done
from longpoint.shop.house import HouseOpening
from longpoint.values import Given, Name

Id = Annotated[str, Meta(min_length=1, max_length=32, pattern=r"^[0-9a-z]*$")]
Existing = Literal["refuse", "update", "replace"]
"""What to do about marks the schedule has already: refuse them all, update them, or replace the whole."""


class PieceDone(RecordedPiece, Given, frozen=True, kw_only=True):
    """What was done with one piece: it was cut as the cut list now has it, or fitted, or spoiled.

    Attributes:
        opening: The opening's mark or id.
        state: What was done.
        recut_from: The id of the piece it was cut again from, where it was.
    """

    opening: Name
    state: Done
    recut_from: Id | None = None


class Work(Given, frozen=True, kw_only=True):
    """Work that was done: pieces cut, fitted or spoiled, and what came onto the rack and off it.

    Attributes:
        pieces: What was done with each piece.
        offcuts: Lengths put on the rack.
        used_offcuts: Ids of the lengths taken off it.
    """

    unit_is_stored: ClassVar[bool] = True

    pieces: Annotated[tuple[PieceDone, ...], Meta(max_length=2000)] = ()
    offcuts: Annotated[tuple[RackLength, ...], Meta(max_length=200)] = ()
    used_offcuts: Annotated[tuple[Id, ...], Meta(max_length=200)] = ()


class CutSticks(Given, frozen=True, kw_only=True):
    """Sticks of the schedule's cut list that were cut just as it has them.

    Attributes:
        profile: Whose sticks.
        sticks: Their numbers in the cut list.
    """

    profile: Name
    sticks: Annotated[
        tuple[Annotated[int, Meta(ge=1, le=1_000_000)], ...], Meta(min_length=1, max_length=2000)
    ]


class GoBack(Given, frozen=True):
    """Which revision to go back to.

    Attributes:
        revision: Its number.
    """

    revision: Annotated[int, Meta(ge=1, le=2_000_000_000)]


class Openings(Given, frozen=True):
    """Openings to bring in.

    Attributes:
        openings: In the order they are to be listed.
    """

    unit_is_stored: ClassVar[bool] = True

    openings: Annotated[tuple[HouseOpening, ...], Meta(min_length=1, max_length=MOST_OPENINGS)]
