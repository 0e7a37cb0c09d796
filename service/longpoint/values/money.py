"""Money: whole cents inside, decimal text on the wire."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Any, ClassVar, Self

from longpoint.texts import say
from longpoint.values.wired import Unreadable, Wired, Writes

_FORM = re.compile(r"[0-9]{1,9}(\.[0-9]{1,2})?")
_EXAMPLE = "14.80"
_TOO_MUCH = 10**9


class Cents(int, Wired):
    """An amount of money in whole cents."""

    def written(self, write: Writes) -> str:  # noqa: ARG002
        return str(self)

    def __str__(self) -> str:
        sign, cents = ("-", -int(self)) if self < 0 else ("", int(self))
        return f"{sign}{cents // 100}.{cents % 100:02d}"

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {
            "type": "string",
            "format": "money",
            "description": "An amount of money as decimal text with two places.",
            "examples": [_EXAMPLE],
        }


class Price(Cents):
    """An amount of money that callers send."""

    STAND_IN: ClassVar[str] = "0"
    """What stands for one that could not be read while the rest is looked at."""

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        if not isinstance(given, str):
            plain = isinstance(given, int | float) and not isinstance(given, bool) and 0 <= given < _TOO_MUCH
            example = f"{given:.2f}" if plain and round(given, 2) == given else _EXAMPLE
            raise Unreadable("wrong-type", say("problem", "money.not-text", example=example))
        if not _FORM.fullmatch(given):
            raise Unreadable(
                "wrong-form", say("problem", "money.wrong-form", given=given[:40], example=_EXAMPLE)
            )
        return cls(Decimal(given) * 100)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {
            **super().schema(),
            "pattern": r"^[0-9]{1,9}(\.[0-9]{1,2})?$",
            "description": "An amount of money as decimal text, at most two places.",
        }
