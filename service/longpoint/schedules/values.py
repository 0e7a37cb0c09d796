"""The plain values that storage takes and gives."""

from dataclasses import dataclass
from enum import StrEnum

import msgspec

from longpoint.schedules.basics import digest_of


class ItemKind(StrEnum):
    """What a version is a version of."""

    SCHEDULE = "schedule"
    OPENING = "opening"
    PIECE = "piece"
    LENGTH = "length"


@dataclass(frozen=True, slots=True)
class Author:
    """Who writes, and why.

    Attributes:
        account_id: whose schedules they may touch.
        key_id: of the key that was shown; None where no keys are made.
        who: the key's name.
        why: in their own words; may be empty.
    """

    account_id: str
    key_id: str | None
    who: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class Change:
    """What one thing becomes.

    Attributes:
        kind: of thing.
        id: of the thing.
        document: JSON text of what it becomes; None when it goes.
        exact: JSON text of the lengths in it, by pointer, as fractions of an inch.
        position: where an opening stands in the schedule's order.
    """

    kind: ItemKind
    id: str
    document: str | None
    exact: str | None = None
    position: int | None = None

    @property
    def digest(self) -> str:
        """What this version is known by: the same content of the same thing gives the same digest."""
        return digest_of(self.kind.value, self.id, self.position, self.document, self.exact)


@dataclass(frozen=True, slots=True)
class Stamp:
    """A revision by its number and digest."""

    number: int
    digest: str


class OpeningIndex(msgspec.Struct):
    """What is read back out of an opening's document, to list openings by."""

    mark: str
    trim: str
    room: str = ""
    bottom: str = "stool"


class PieceIndex(msgspec.Struct):
    """What is read back out of a piece's document."""

    opening_id: str
    piece: str
    instance: int
    state: str


class LengthIndex(msgspec.Struct):
    """What is read back out of the document of a lot of lengths on hand."""

    lot: str
    profile: str
    ordered: int
    delivered: int
    used_up: int


class HouseIndex(msgspec.Struct):
    """What is read back out of a schedule's document."""

    name: str
