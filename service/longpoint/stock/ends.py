"""What no piece may take of a stick's right end: the end trim or what holds the stick, and an allowance."""

from __future__ import annotations

from typing import NamedTuple

from longpoint.lengths import Fraction

from .model import Cutting, Wanted

__all__ = ["KeptEnds", "end_cuts"]


def end_cuts(cutting: Cutting, piece: Wanted) -> tuple[Fraction, Fraction]:
    """Inches that the cuts at the piece's left and right end eat."""
    left = cutting.kerf if piece.left_eats is None else piece.left_eats
    right = cutting.kerf if piece.right_eats is None else piece.right_eats
    return left, right


class KeptEnds(NamedTuple):
    """What stays free at the right end of a cutting's sticks.

    Attributes:
        clamped: inches that hold the stick, with what the last cut eats; zero where nothing need hold it.
        allowance: the largest of its pieces, since any of them may be the last.
    """

    clamped: Fraction
    allowance: Fraction

    @classmethod
    def of(cls, cutting: Cutting) -> KeptEnds:
        """Those of a cutting."""
        zero = Fraction(0)
        allowance = max((piece.allowance for piece in cutting.pieces), default=zero)
        if not cutting.clamp_length:
            return cls(zero, allowance)
        eats = cutting.kerf
        if not cutting.square_first:
            eats = max((eats, *(max(end_cuts(cutting, piece)) for piece in cutting.pieces)))
        return cls(cutting.clamp_length + eats, allowance)

    def right(self, trim: Fraction) -> Fraction:
        """Inches at the right end of a stick whose ends are squared off by so much."""
        return max(trim, self.clamped) + self.allowance
