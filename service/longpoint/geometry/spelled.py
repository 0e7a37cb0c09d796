"""Named figures and offered values, as an answer spells them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from longpoint.lengths import Fraction, Real
from longpoint.values import Wired

Pairs = tuple[tuple[str, Real], ...]


class Figures(Wired):
    """Lengths by name, exact: what a figure was computed from.

    Attributes:
        pairs: each name with its value.
    """

    __slots__ = ("pairs",)

    def __init__(self, pairs: Pairs = ()) -> None:
        self.pairs = pairs

    def __iter__(self) -> Iterator[tuple[str, Real]]:
        return iter(self.pairs)

    def __eq__(self, other: object) -> bool:
        return tuple(self) == (tuple(other) if isinstance(other, Figures | tuple) else other)

    def __hash__(self) -> int:
        return hash(self.pairs)

    def __repr__(self) -> str:
        return repr(self.pairs)

    def written(self, write: Any) -> dict[str, str]:
        plain = write.plain
        return {name: plain(value) for name, value in self.pairs}

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"type": "object", "additionalProperties": {"type": "string"}}


class Measures(Figures):
    """Lengths, rounded, and angles in degrees, by name: what goes with an offer."""

    __slots__ = ()

    def written(self, write: Any) -> dict[str, str]:
        return {
            name: f"{float(value):.2f}" if name.endswith("degrees") else write(value).text
            for name, value in self.pairs
        }


class Offered(Wired):
    """What to write in the field of an opening that takes an offer up.

    Attributes:
        value: a length in inches, a word, True or a count.
    """

    __slots__ = ("value",)

    def __init__(self, value: Real | str | bool | int) -> None:
        self.value = value

    def __eq__(self, other: object) -> bool:
        return self.value == (other.value if isinstance(other, Offered) else other)

    def __hash__(self) -> int:
        return hash(self.value)

    def __repr__(self) -> str:
        return repr(self.value)

    def written(self, write: Any) -> str | bool | int:
        return self.value if isinstance(self.value, str | bool | int) else write.plain(Fraction(self.value))

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"anyOf": [{"type": "string"}, {"type": "boolean"}, {"type": "integer"}]}
