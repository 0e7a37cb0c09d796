"""What callers send about something kept, beside the thing itself."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from msgspec import Meta

from longpoint.schedules.kept import MOST_OPENINGS, RecordedPiece
from longpoint.schedules.lots import LengthOnHand
from longpoint.schedules.states import Done
from longpoint.shop.house import HouseOpening
from longpoint.shop.planning import PlanningSeconds
from longpoint.shop.stick_names import StickName
from longpoint.values import Given, Name, Room

Id = Annotated[str, Meta(min_length=1, max_length=32, pattern=r"^[0-9a-z]*$")]
Existing = Literal["refuse", "update", "replace"]
"""What to do about marks the schedule has already: refuse them all, update them, or replace the whole."""


class PieceDone(RecordedPiece, Given, frozen=True, kw_only=True):
    """What was done with one piece: it was cut as the cut list now has it, or installed, or spoiled.

    Attributes:
        opening: The opening's mark or id; may be left out where `piece` is the piece's number, which has it.
        state: It says what was done.
        recut_from: The id of the piece it was cut again from, where it was.
    """

    opening: Name | None = None
    state: Done
    recut_from: Id | None = None


class Work(Given, frozen=True, kw_only=True):
    """Work that was done: pieces cut, installed or spoiled, new lengths on hand, and lengths used up.

    Attributes:
        pieces: They say what was done with each piece.
        lengths: The lots that are new: what is left over from a cut, or was found.
        used_lengths: The lot of each length that was used up; a lot as often as lengths of it were.
    """

    unit_is_stored: ClassVar[bool] = True

    pieces: Annotated[tuple[PieceDone, ...], Meta(max_length=2000)] = ()
    lengths: Annotated[tuple[LengthOnHand, ...], Meta(max_length=200)] = ()
    used_lengths: Annotated[tuple[Name, ...], Meta(max_length=200)] = ()


class CutSticks(Given, frozen=True, kw_only=True):
    """Sticks that were cut just as they were planned.

    Attributes:
        sticks: The names of the sticks, as sheets and plans have them.
        by: Who cut them: needed for sticks that are claimed, by the name that claimed them.
        as_printed: Whether those that are laid out otherwise today were cut as they were printed before: their pieces
            are then recorded as they were, and the cut list says which of them do not fit any more.
    """

    sticks: Annotated[tuple[StickName, ...], Meta(min_length=1, max_length=2000)]
    by: Name | None = None
    as_printed: bool = False


class PlanAsked(Given, frozen=True, kw_only=True):
    """A request that says how hard to look for the cheapest sticks.

    Attributes:
        planning_seconds: The time to search for cheaper sticks, in seconds, all profiles together, where the first
            plan is not proven cheapest. 0 takes the first plan.
    """

    planning_seconds: PlanningSeconds = 2.0


class Chosen(Given, frozen=True, kw_only=True):
    """Some of a schedule's openings.

    Attributes:
        openings: The openings, by their marks.
        rooms: The rooms of which every opening is meant.
        all: True means every opening there is.
    """

    openings: Annotated[tuple[Name, ...], Meta(max_length=MOST_OPENINGS)] = ()
    rooms: Annotated[tuple[Room, ...], Meta(max_length=500)] = ()
    all: bool = False


class GoBack(Given, frozen=True):
    """A request to go back to an earlier revision.

    Attributes:
        revision: The number of the revision to go back to.
    """

    revision: Annotated[int, Meta(ge=1, le=2_000_000_000)]


class Openings(Given, frozen=True):
    """Openings to bring in.

    Attributes:
        openings: The openings, in the order in which they are to be listed.
    """

    unit_is_stored: ClassVar[bool] = True

    openings: Annotated[tuple[HouseOpening, ...], Meta(min_length=1, max_length=MOST_OPENINGS)]
