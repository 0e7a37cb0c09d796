"""How much there is of something, exactly, as it is answered."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from longpoint.lengths import Fraction
from longpoint.values import Amount, Wired
from longpoint.values.wired import Writes

if TYPE_CHECKING:
    _Exact = Fraction
else:
    from quicktions import Fraction as _Exact


class Quantity(_Exact, Wired):
    """How much there is of something that is no length of a piece and no money, in a unit named beside it.

    It is exact, so that shares add up to the whole and money follows them to the cent; what is reckoned from it is a
    plain Fraction. It goes out as an `Amount` does.
    """

    __slots__ = ()

    def written(self, write: Writes) -> float:
        return Amount(self).written(write)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return Amount.schema()
