"""Numbers that are no lengths: angles, and amounts of stuff or time."""

from __future__ import annotations

from math import floor
from typing import Any, Self

from longpoint.texts import say
from longpoint.values.wired import Unreadable, Wired, Writes

_MILLIONTHS = 10**6
_PLACES = 4


class Angle(float, Wired):
    """Degrees. Written to a millionth of one."""

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        if isinstance(given, bool) or not isinstance(given, int | float):
            raise Unreadable("wrong-type", say("problem", "numbers.not-degrees"))
        return cls(given)

    def written(self, write: Writes) -> float:  # noqa: ARG002
        # Quicker than `round`, which goes through text.
        return floor(self * _MILLIONTHS + 0.5) / _MILLIONTHS

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"type": "number", "format": "degrees"}


class Amount(float, Wired):
    """How much there is of something that is no length and no money. Written to four places: a ten-thousandth of a
    fluid ounce or a minute is nothing."""

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        if isinstance(given, bool) or not isinstance(given, int | float):
            raise Unreadable("wrong-type", say("problem", "numbers.not-a-number"))
        return cls(given)

    def written(self, write: Writes) -> float:  # noqa: ARG002
        return round(float(self), _PLACES)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"type": "number"}
