"""How far a miter of a piece may stand open because its length was rounded."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from longpoint.lengths import Gap, Real, gap
from longpoint.values import Wired

if TYPE_CHECKING:
    from longpoint.geometry.piece import End


class JointError(Wired):
    """The widest that a miter of a piece can open or bind because its length was rounded, were all that rounding added
    or took to fall there.

    Attributes:
        length: the piece's length.
        ends: its ends; the one nearer to square opens wider.
    """

    __slots__ = ("ends", "length")

    def __init__(self, length: Real, ends: tuple[End, End]) -> None:
        self.length = length
        self.ends = ends

    def __eq__(self, other: object) -> bool:
        return isinstance(other, JointError) and (self.length, self.ends) == (other.length, other.ends)

    def __hash__(self) -> int:
        return hash((self.length, self.ends))

    def written(self, write: Any) -> str:
        left, right = self.ends
        added = abs(write.added(self.length))
        if added and (off_square := min(left.miter + left.bevel, right.miter + right.bevel)):
            added *= math.cos(math.radians(off_square))
        return gap(added, write.unit)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return Gap.schema()
