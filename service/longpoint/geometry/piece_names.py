"""What pieces are called: their kinds, their keys within an opening, their titles in words."""

from __future__ import annotations

from enum import StrEnum
from typing import Any, Self

from longpoint.values import Unreadable, Wired
from longpoint.values.kept import Kept

LONGEST_KEY = 60


class PartKind(StrEnum):
    """What a part is. Legs stand at the sides; a return takes an end back to the wall."""

    STOOL = "stool"
    APRON = "apron"
    APRON_RETURN = "apron_return"
    CASING_LEG = "casing_leg"
    CASING_HEAD = "casing_head"
    CASING_SILL = "casing_sill"
    PLINTH_BLOCK = "plinth_block"
    STOOL_RETURN = "stool_return"
    BACK_BAND = "back_band"
    CORNER_BLOCK = "corner_block"
    FILLET = "fillet"
    FILLET_RETURN = "fillet_return"
    CAP = "cap"
    CAP_RETURN = "cap_return"
    MULL_CASING = "mull_casing"
    JAMB_EXTENSION = "jamb_extension"
    LEVELLING_STRIP = "levelling_strip"
    JAMB_LEG = "jamb_leg"
    HEAD_JAMB = "head_jamb"
    DOOR_STOP = "door_stop"


class PieceKey(Wired):
    """Names a piece within its opening: `casing_leg/left`, `stool`.

    Attributes:
        kind: what it is.
        side: where it goes; "" for a piece that has none.
        text: both, as it is written.
    """

    __slots__ = ("kind", "side", "text")

    def __init__(self, kind: PartKind | str, side: str = "") -> None:
        self.kind = kind
        self.side = side
        self.text = f"{kind}/{side}" if side else str(kind)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, PieceKey) and self.text == other.text

    def __hash__(self) -> int:
        return hash(self.text)

    def __lt__(self, other: PieceKey) -> bool:
        return str(self) < str(other)

    def __str__(self) -> str:
        return self.text

    __repr__ = __str__

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        if not isinstance(given, str) or not 0 < len(given) <= LONGEST_KEY:
            raise Unreadable(
                "wrong-form", 'A piece is named as the answers name it, for example "casing_leg/left".'
            )
        kind, _, side = given.partition("/")
        return cls(kind, side)

    def written(self, write: Any) -> str:  # noqa: ARG002
        return self.text

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {
            "type": "string",
            "format": "piece-key",
            "minLength": 1,
            "maxLength": LONGEST_KEY,
            "pattern": r"^[^\x00]*$",
            "examples": ["casing_leg/left"],
        }


def named(kind: PartKind, side: str) -> tuple[PieceKey, str]:
    """A piece's key, and its name in words: "left casing leg", "casing head 2", "casing side 3", "stool"."""
    return _NAMED[kind, side]


def _named(piece: tuple[PartKind, str]) -> tuple[PieceKey, str]:
    return PieceKey(*piece), _title(*piece)


_NAMED = Kept(1024, _named)


def _title(kind: PartKind, side: str) -> str:
    words = kind.replace("_", " ")
    if kind is PartKind.CASING_HEAD and side.startswith("head "):
        return f"casing {side}"
    if side in ("", words.rpartition(" ")[2]):
        return words
    return f"{words} {side}" if side[0].isdigit() else f"{side} {words}"
