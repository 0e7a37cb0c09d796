"""What becomes of a piece."""

from __future__ import annotations

from enum import StrEnum


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
