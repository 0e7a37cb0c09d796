"""What becomes of pieces and of lengths on hand."""

from __future__ import annotations

from enum import StrEnum


class PieceState(StrEnum):
    """What became of a piece that was cut; a spare is one whose place has another by now."""

    CUT = "cut"
    INSTALLED = "installed"
    SPOILED = "spoiled"
    SPARE = "spare"


class LengthState(StrEnum):
    """What can be said of a lot of lengths: some are still to come, some came, some are there, or none is left."""

    ORDERED = "ordered"
    DELIVERED = "delivered"
    ON_HAND = "on_hand"
    USED_UP = "used_up"


class Done(StrEnum):
    """A piece is cut, installed or spoiled."""

    CUT = "cut"
    INSTALLED = "installed"
    SPOILED = "spoiled"
