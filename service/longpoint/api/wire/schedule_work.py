"""The wire's view of work done on a stored house: pieces cut, and what is left to cut."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, ClassVar

from msgspec import Meta

from longpoint.api.wire.base import Name, Text, Wire, WireOut
from longpoint.api.wire.cut_list import CutListOut
from longpoint.api.wire.lengths import LengthOut
from longpoint.api.wire.schedule import OffcutIn

PartKey = Annotated[
    str,
    Meta(
        min_length=1,
        max_length=60,
        pattern=r"^[^\x00]*$",
        description="The part's `key` in the cut list, as `casing_leg/left`.",
        examples=["casing_leg/left"],
    ),
]
Id = Annotated[str, Meta(min_length=1, max_length=32, pattern=r"^[0-9a-z]*$")]


class PieceState(StrEnum):
    """What became of a piece that was cut; a spare is one whose place has another by now."""

    CUT = "cut"
    FITTED = "fitted"
    SPOILED = "spoiled"
    SPARE = "spare"


class Done(StrEnum):
    """What was done with a piece."""

    CUT = "cut"
    FITTED = "fitted"
    SPOILED = "spoiled"


class PieceIn(Wire):
    """What was done with one piece: it was cut as the cut list now has it, or fitted, or spoiled.

    Attributes:
        opening: The opening's mark or id.
        part: Which part of it.
        instance: Which of several alike, counted from 1.
        state: What was done.
        recut_from: The id of the piece it was cut again from, where it was.
        note: Anything worth knowing.
    """

    opening: Name
    part: PartKey
    state: Done
    instance: Annotated[int, Meta(ge=1, le=500)] = 1
    recut_from: Id | None = None
    note: Text = ""


class WorkIn(Wire):
    """Work that was done: pieces cut, fitted or spoiled, and what came onto the rack and off it.

    Attributes:
        pieces: What was done with each piece.
        offcuts: Lengths put on the rack.
        used_offcuts: Ids of the lengths taken off it.
    """

    unit_is_stored: ClassVar[bool] = True

    pieces: Annotated[list[PieceIn], Meta(max_length=2000)] = []
    offcuts: Annotated[list[OffcutIn], Meta(max_length=200)] = []
    used_offcuts: Annotated[list[Id], Meta(max_length=200)] = []


class SticksIn(Wire):
    """Sticks of the schedule's cut list that were cut just as it has them.

    Attributes:
        profile: Whose sticks.
        sticks: Their numbers in the cut list.
    """

    profile: Name
    sticks: Annotated[list[Annotated[int, Meta(ge=1, le=1_000_000)]], Meta(min_length=1, max_length=2000)]


class PieceStored(WireOut):
    """A piece that was cut.

    Attributes:
        revision: The schedule's revision that last changed it.
        opening_id: The opening it was cut for.
        opening: That opening's mark when it was cut.
        part: Which part of it.
        instance: Which of several alike.
        state: What became of it.
        profile: The stock it was cut from.
        length: Its farthest extent, as it was marked.
    """

    id: str
    revision: int
    opening_id: str
    opening: str
    part: str
    instance: int
    state: PieceState
    profile: str
    length: LengthOut
    note: str


class WorkMade(WireOut):
    """Work that was recorded.

    Attributes:
        revision: The schedule's revision it made.
        pieces: Every piece it touched, as it now is; those cut again from are gone.
        offcuts: Ids of the lengths it put on the rack.
    """

    revision: int
    pieces: list[PieceStored]
    offcuts: list[str]


class Place(WireOut):
    """Where a piece belongs.

    Attributes:
        opening: The opening's mark.
        part: Which part of it.
        instance: Which of several alike.
        length: What is needed there.
    """

    opening: str
    part: str
    instance: int
    length: LengthOut


class WrongPiece(WireOut):
    """A piece that was cut and is not what its place needs any more.

    Attributes:
        piece: As it was cut.
        needed: What its place needs now; null when the house has no such place any more.
        recut_into: What it can be cut again into; null when it does for nothing that is still needed.
    """

    piece: PieceStored
    needed: Place | None
    recut_into: Place | None


class ScheduleCutListOut(WireOut):
    """What is still to be cut of a house, and what became of what was cut before.

    Attributes:
        revision: The schedule's revision it is worked out from.
        needed: How many pieces the whole house needs.
        right: How many of them are cut and as they should be.
        wrong: Pieces that are not as they should be any more.
        cut_again: Pieces to be cut from stock once more, their place's piece having been spoiled or become wrong.
        cut_list: What is still to be cut from stock: recut pieces and those that are right are left out.
    """

    revision: int
    needed: int
    right: int
    wrong: list[WrongPiece]
    cut_again: list[Place]
    cut_list: CutListOut
