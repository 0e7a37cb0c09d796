"""Types of the document's part "work". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Request, Result
from longpoint_sdk.types.basics import MarkedLength
from longpoint_sdk.types.common import CutListAnswer, LengthOnHand, PlanLine

if TYPE_CHECKING:
    Done = Literal["cut", "installed", "spoiled"]
    """A piece is cut, installed or spoiled."""
    PieceState = Literal["cut", "installed", "spare", "spoiled"]
    """What became of a piece that was cut; a spare is one whose place has another by now."""
else:
    Done = str
    PieceState = str


class CutSticks(Request, frozen=True, kw_only=True):
    """Sticks that were cut just as they were planned.

    Attributes:
        sticks: The names of the sticks, as sheets and plans have them.
        as_printed: Whether those that are laid out otherwise today were cut as they were printed before:
            their pieces are then recorded as they were, and the cut list says which of them do not fit any
            more.
        by: Who cut them: needed for sticks that are claimed, by the name that claimed them. A name on one
            line, not starting with a space.
    """

    sticks: list[str]
    as_printed: bool = False
    by: str | None = None


class PieceDone(Request, frozen=True, kw_only=True):
    """What was done with one piece: it was cut as the cut list now has it, or installed, or spoiled.

    Attributes:
        piece: Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets
            have it, `K1-4` or, of several alike, `L1-4.2`.
        state: It says what was done.
        instance: It says which of several alike this is, counted from 1.
        note: A note about the piece. Free text; may have several lines.
        opening: The opening's mark or id; may be left out where `piece` is the piece's number, which has it.
            A name on one line, not starting with a space.
        recut_from: The id of the piece it was cut again from, where it was.
    """

    piece: str
    state: Done
    instance: int = 1
    note: str = ""
    opening: str | None = None
    recut_from: str | None = None


class PieceNeeded(Result, frozen=True, kw_only=True):
    """The place in the house where a piece belongs.

    Attributes:
        opening: The mark of the opening.
        piece: The key of the piece within its opening.
        instance: It says which of the pieces with this `key` it is, counted from 1, where the opening's
            `count` makes several.
        length: The length that is needed there.
    """

    opening: str
    piece: str
    instance: int
    length: MarkedLength


class StoredPiece(Result, frozen=True, kw_only=True):
    """A piece that was cut.

    Attributes:
        piece: Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets
            have it, `K1-4` or, of several alike, `L1-4.2`.
        instance: It says which of several alike this is, counted from 1.
        note: A note about the piece. Free text; may have several lines.
        opening_id: What it was cut for: an opening, or a group for what its openings share.
        opening: The mark of that opening or group when it was cut.
        state: It says what became of the piece.
        stick: The name of the stick it was cut from as planned; null where it was cut otherwise.
        id: The id of the piece.
        revision: The schedule's revision that last changed it.
        profile: The stock it was cut from.
        length: The length that was marked, measured from one farthest point of the piece to the other.
    """

    piece: str
    instance: int
    note: str
    opening_id: str
    opening: str
    state: PieceState | str
    stick: str | None
    id: str
    revision: int
    profile: str
    length: MarkedLength


class WrongPiece(Result, frozen=True, kw_only=True):
    """A piece that was cut and is not what its place needs any more.

    Attributes:
        piece: The piece as it was cut.
        needed: What its place needs now; null when the house has no such place any more.
        recut_into: What it can be cut again into; null when it does for nothing that is still needed.
    """

    piece: StoredPiece
    needed: PieceNeeded | None
    recut_into: PieceNeeded | None


class StillToCut(Result, frozen=True, kw_only=True):
    """It says what is still to be cut of a house, and what became of what was cut before.

    Attributes:
        revision: The schedule's revision it is worked out from.
        plan: The plan that its sticks come from.
        searching: Whether a search for a cheaper plan is under way: ask again in a moment.
        needed: The number of pieces that the whole house needs.
        right: The number of them that are cut and as they should be.
        wrong: Pieces that are not as they should be any more.
        cut_again: Pieces to be cut from stock once more, their place's piece having been spoiled or become
            wrong.
        cut_list: What is still to be cut from stock: recut pieces and those that are right are left out.
    """

    revision: int
    plan: PlanLine
    searching: bool
    needed: int
    right: int
    wrong: list[WrongPiece]
    cut_again: list[PieceNeeded]
    cut_list: CutListAnswer


class Work(Request, frozen=True, kw_only=True):
    """Work that was done: pieces cut, installed or spoiled, new lengths on hand, and lengths used up.

    Attributes:
        lengths: The lots that are new: what is left over from a cut, or was found.
        pieces: They say what was done with each piece.
        used_lengths: The lot of each length that was used up; a lot as often as lengths of it were.
    """

    lengths: list[LengthOnHand] = []
    pieces: list[PieceDone] = []
    used_lengths: list[str] = []


class WorkMade(Result, frozen=True, kw_only=True):
    """Work that was recorded.

    Attributes:
        revision: The number of the schedule's revision that the work made: every change makes one, counted
            from 1.
        pieces: Every piece it touched, as it now is; those cut again from are gone.
        lengths: The lots that are new.
        notes: What else is to be known: claims that were over, sticks that were recorded before.
    """

    revision: int
    pieces: list[StoredPiece]
    lengths: list[str]
    notes: list[str]
