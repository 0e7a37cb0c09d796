"""What is still to be cut of a kept house, and what became of what was cut before."""

from __future__ import annotations

from longpoint.geometry import PieceKey
from longpoint.lengths import Fraction
from longpoint.schedules.answers import StoredPiece
from longpoint.schedules.plan_answers import PlanLine
from longpoint.shop.answer import CutListAnswer
from longpoint.values import Value


class PieceNeeded(Value, frozen=True):
    """The place in the house where a piece belongs.

    Attributes:
        opening: The mark of the opening.
        piece: The key of the piece within its opening.
        instance: It says which of the pieces with this `key` it is, counted from 1, where the opening's `count` makes
            several.
        length: The length that is needed there.
    """

    opening: str
    piece: PieceKey
    instance: int
    length: Fraction


class WrongPiece(Value, frozen=True):
    """A piece that was cut and is not what its place needs any more.

    Attributes:
        piece: The piece as it was cut.
        needed: What its place needs now; null when the house has no such place any more.
        recut_into: What it can be cut again into; null when it does for nothing that is still needed.
    """

    piece: StoredPiece
    needed: PieceNeeded | None
    recut_into: PieceNeeded | None


class StillToCut(Value, frozen=True):
    """It says what is still to be cut of a house, and what became of what was cut before.

    Attributes:
        revision: The schedule's revision it is worked out from.
        plan: The plan that its sticks come from.
        searching: Whether a search for a cheaper plan is under way: ask again in a moment.
        needed: The number of pieces that the whole house needs.
        right: The number of them that are cut and as they should be.
        wrong: Pieces that are not as they should be any more.
        cut_again: Pieces to be cut from stock once more, their place's piece having been spoiled or become wrong.
        cut_list: What is still to be cut from stock: recut pieces and those that are right are left out.
    """

    revision: int
    plan: PlanLine
    searching: bool
    needed: int
    right: int
    wrong: tuple[WrongPiece, ...]
    cut_again: tuple[PieceNeeded, ...]
    cut_list: CutListAnswer
