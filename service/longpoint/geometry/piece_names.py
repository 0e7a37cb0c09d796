"""What pieces are called: their kinds, their keys within an opening, their titles in words."""

from __future__ import annotations

from enum import StrEnum
from typing import Any, Self

from longpoint.texts import say
from longpoint.values import Unreadable, Wired
from longpoint.values.kept import Kept

LONGEST_KEY = 60


class PieceKind(StrEnum):
    """The kind that a piece is of. Legs stand at the sides; a return takes an end back to the wall; a door stop is the
    strip that the closed door rests against."""

    STOOL = "stool"
    APRON = "apron"
    APRON_RETURN = "apron_return"
    SIDE_CASING = "side_casing"
    HEAD_CASING = "head_casing"
    BOTTOM_CASING = "bottom_casing"
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
    TAPERED_SHIM = "tapered_shim"
    JAMB_LEG = "jamb_leg"
    HEAD_JAMB = "head_jamb"
    DOOR_STOP = "door_stop"


class PieceKey(str, Wired):
    """Names a piece within its opening: `side_casing/left`, `stool`.

    It is the text that it is written as, which is soon found among others: no other value is looked for as often.

    Attributes:
        kind: what it is.
        side: where it goes; "" for a piece that has none.
    """

    __slots__ = ("kind", "side")
    kind: PieceKind | str
    side: str

    def __new__(cls, kind: PieceKind | str, side: str = "") -> Self:
        self = str.__new__(cls, f"{kind}/{side}" if side else kind)
        self.kind, self.side = kind, side
        return self

    def __getnewargs__(self) -> tuple[PieceKind | str, str]:  # type: ignore[override]
        return self.kind, self.side

    def __str__(self) -> str:
        return str.__str__(self)

    __repr__ = __str__

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        if not isinstance(given, str) or not 0 < len(given) <= LONGEST_KEY:
            raise Unreadable("wrong-form", say("problem", "piece.wrong-key"))
        kind, _, side = given.partition("/")
        return cls(kind, side)

    def written(self, write: Any) -> str:  # noqa: ARG002
        return str(self)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {
            "type": "string",
            "format": "piece-key",
            "minLength": 1,
            "maxLength": LONGEST_KEY,
            "pattern": r"^[^\x00]*$",
            "examples": ["side_casing/left"],
        }


def named(kind: PieceKind, side: str) -> tuple[PieceKey, str]:
    """A piece's key, and its name in words: "left side casing", "head casing 2", "casing side 3", "stool"."""
    return _NAMED[kind, side]


def _named(piece: tuple[PieceKind, str]) -> tuple[PieceKey, str]:
    kind, side = piece
    if kind in _ONE_PLACE:  # its kind says where it goes; along a curved head its number does
        side = side.rpartition(" ")[2] if " " in side else ""
    return PieceKey(kind, side), _title(kind, side)


_NAMED = Kept(1024, _named)
_ONE_PLACE = frozenset({PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING})


def _title(kind: PieceKind, side: str) -> str:
    words = kind.replace("_", " ")
    if side in ("", words.rpartition(" ")[2]):
        return words
    return f"{words} {side}" if side[0].isdigit() else f"{side} {words}"
