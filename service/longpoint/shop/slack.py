"""What a shop buys over and above what the pieces and their cuts take."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.geometry import CutKind, Piece, PieceKind
from longpoint.lengths import Fraction, Length
from longpoint.texts import say
from longpoint.values import Faults, Given, Path

MOST_SPARE = 1000
RETURNS = frozenset(
    (PieceKind.APRON_RETURN, PieceKind.STOOL_RETURN, PieceKind.FILLET_RETURN, PieceKind.CAP_RETURN)
)
"""What is cut off the end of its owner's stick, whose allowance is its own too."""


class Slack(Given, frozen=True):
    """The slack in one profile: length that stays free beside each piece, so that it can be cut once more, and spare
    sticks. Returns take none: they come off the end of their apron's or stool's stick and share in what is free there.

    Attributes:
        per_miter: The length that stays free on the stick for each mitered end of a piece, measured along the stick.
        per_piece: The length that stays free on the stick for each piece, measured along the stick.
        spare_sticks: How many sticks to buy besides those that are cut.
        spare_percent: Spare sticks are to be at least this much of the length of the pieces, in percent; where
            `spare_sticks` is more, it is that.
    """

    per_miter: Length = Length.of("0 in")
    per_piece: Length = Length.of("0 in")
    spare_sticks: Annotated[int, Meta(ge=0, le=MOST_SPARE)] = 0
    spare_percent: Annotated[float, Meta(ge=0, le=100)] = 0.0

    @property
    def asks_for_spare(self) -> bool:
        """Whether any spare stick is asked for."""
        return bool(self.spare_sticks or self.spare_percent)

    def allowance(self, piece: Piece) -> Fraction:
        """What stays free beside a piece, inches."""
        if piece.kind in RETURNS:
            return Fraction(0)
        miters = sum(end.cut is not CutKind.SQUARE for end in piece.ends)
        return self.per_piece + self.per_miter * miters

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note an allowance below zero."""
        for name, length in (("per_miter", self.per_miter), ("per_piece", self.per_piece)):
            if length < 0:
                faults.add((*at, name), "negative", say("problem", "slack.negative"))


NO_SLACK = Slack()
