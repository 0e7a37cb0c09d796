"""Names of sticks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from msgspec import Meta

from longpoint.texts import say
from longpoint.values.names import EXPECT

StickName = Annotated[
    str,
    Meta(
        pattern=r"^[A-Z][1-9][0-9]{0,8}$(?![\s\S])",
        examples=["C7"],
        extra={EXPECT: say("hint", "stick.name")},
    ),
]


class StickNames:
    """Gives sticks their names: a letter for the profile and a number; none is given twice.

    Attributes:
        last: by letter, the highest number that was given.
    """

    def __init__(self, last: Mapping[str, int] | None = None) -> None:
        self.last = dict(last or {})

    def next(self, profile: str) -> str:
        """A name for a stick of a profile."""
        letter = next((one for one in profile.upper() if "A" <= one <= "Z"), "S")
        self.last[letter] = self.last.get(letter, 0) + 1
        return f"{letter}{self.last[letter]}"
