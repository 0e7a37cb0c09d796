"""A cut, as it is put in order and sawn."""

from __future__ import annotations

from typing import Any

from longpoint.geometry import End
from longpoint.lengths import Fraction
from longpoint.shop.operations import MarkFrom, OperationKind, PieceName, Setting
from longpoint.shop.sticks import PieceToMake, WorkStick
from longpoint.stock import Placed
from longpoint.values import Value

ZERO = Fraction(0)

Work = tuple[object, ...]
"""Names what is in hand: a stick or a part of one, or a piece."""


class SawStep(Value, frozen=True):
    """A cut.

    Attributes:
        work: what is in hand.
        pieces: what it makes or works on.
        takes: what it takes off the free end of the stick, with what the cut eats.
        length: of the piece that it pieces from the stick, or of the piece in hand; zero for neither.
        end: the end of the piece that it makes, and how the piece lies.
        careful: it makes a piece too short to hold.
        stops_after: how far from the front edge the cut goes, where it does not go right through.
    """

    kind: OperationKind
    setting: Setting
    work: Work
    profile: str
    stick: str
    pieces: tuple[PieceToMake, ...]
    takes: Fraction = ZERO
    length: Fraction = ZERO
    end: End | None = None
    placed: Placed | None = None
    mark: Fraction | None = None
    mark_from: MarkFrom | None = None
    mark_edge: str = ""
    careful: bool = False
    stops_after: Fraction | None = None

    @property
    def on_piece(self) -> bool:
        """Whether a piece is in hand that was cut off from its stick before."""
        return isinstance(self.work[0], PieceName)


def cut_step(
    kind: OperationKind,
    setting: Setting,
    work: Work,
    stick: WorkStick,
    pieces: tuple[PieceToMake, ...],
    **more: Any,
) -> SawStep:
    return SawStep(kind, setting, work, stick.profile, stick.name, pieces, **more)
