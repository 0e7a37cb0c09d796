"""What is answered of something kept: it, as it was sent, its id and where it stands in the history."""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import Meta

from longpoint.lengths import Fraction, Unit
from longpoint.schedules.kept import (
    KeptHouse,
    MadePiece,
    read_house,
    read_length,
    read_opening,
    read_piece,
)
from longpoint.schedules.lots import LengthOnHand
from longpoint.schedules.rows import (
    LengthRow,
    OpeningRow,
    PieceRow,
    RevisionRow,
    ScheduleLineRow,
    ScheduleRow,
)
from longpoint.schedules.states import LengthState
from longpoint.shop.house import HouseOpening
from longpoint.texts import Sentence
from longpoint.values import Value, fields_of

Exact = Annotated[
    dict[str, str],
    Meta(
        description="Every length exactly, by its JSON pointer, as a fraction of an inch.",
        examples=[{"/readings/jamb_width": "245/8"}],
    ),
]
Moment = Annotated[str, Meta(description="RFC 3339, in UTC.", examples=["2026-03-02T14:05:09.120000Z"])]
read_exact = msgspec.json.Decoder(dict[str, str]).decode


class ScheduleLine(Value, frozen=True):
    """A schedule in a list.

    Attributes:
        id: The id of the schedule.
        name: The name of the house.
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        created_at: The time at which it was made.
        updated_at: The time at which it was last changed.
        archived_at: When it was archived; null when it is not.
    """

    id: str
    name: str
    revision: int
    opening_count: int
    created_at: Moment
    updated_at: Moment
    archived_at: Moment | None

    @classmethod
    def of(cls, row: ScheduleLineRow) -> ScheduleLine:
        """As its row has it."""
        return cls(*(getattr(row, name) for name in cls.__struct_fields__))


class StoredSchedule(Value, frozen=True):
    """A schedule as it stands, its openings aside.

    Attributes:
        id: The id of the schedule.
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        created_at: The time at which it was made.
        updated_at: The time at which it was last changed.
        archived_at: When it was archived; null when it is not.
        house: All that is said of the house as a whole, as it was sent.
        exact: The exact value of every length in it.
    """

    id: str
    revision: int
    opening_count: int
    created_at: Moment
    updated_at: Moment
    archived_at: Moment | None
    house: KeptHouse
    exact: Exact

    @classmethod
    def of(cls, row: ScheduleRow, exact: str) -> StoredSchedule:
        """As its row has it."""
        return cls(
            row.id,
            row.revision,
            row.opening_count,
            row.created_at,
            row.updated_at,
            row.archived_at,
            read_house(row.document),
            read_exact(exact),
        )


class StoredOpening(HouseOpening, frozen=True, kw_only=True):
    """An opening as it was sent, and the exact value of every length in it.

    Attributes:
        id: The id of the opening.
        revision: The schedule's revision that last changed it.
        position: Its place in the schedule's order; places may be skipped.
        exact: The exact value of every length in it.
    """

    id: str
    revision: int
    position: int
    exact: Exact

    @classmethod
    def of(cls, row: OpeningRow, unit: Unit | None) -> StoredOpening:
        """As its row has it, under its house's unit."""
        said = msgspec.structs.asdict(read_opening(row.document, unit))
        return cls(
            **said, id=row.id, revision=row.revision, position=row.position, exact=read_exact(row.exact)
        )


class StoredLength(LengthOnHand, frozen=True, kw_only=True):
    """A lot of lengths on hand, as it was sent.

    Attributes:
        id: The id of the lot.
        revision: The schedule's revision that last changed it.
        available: How many are left to plan with: what was ordered or, where more came, delivered, less those used up.
        states: Those of these that are true of it now: ordered while some are to come, delivered when some came,
            on_hand while some of
            those that came are left, used_up when none is left to plan with.
        notes: What is odd of it: more came than were ordered.
        exact: The exact value of every length in it.
    """

    id: str
    revision: int
    available: int
    states: tuple[LengthState, ...]
    notes: tuple[Sentence, ...]
    exact: Exact

    @classmethod
    def of(cls, row: LengthRow, unit: Unit | None) -> StoredLength:
        """As its row has it, under its house's unit."""
        length = read_length(row.document, unit)
        return cls(
            **fields_of(LengthOnHand, length),
            id=row.id,
            revision=row.revision,
            available=length.available,
            states=length.states,
            notes=length.notes,
            exact=read_exact(row.exact),
        )


class StoredPiece(MadePiece, frozen=True, kw_only=True):
    """A piece that was cut.

    Attributes:
        id: The id of the piece.
        revision: The schedule's revision that last changed it.
        profile: The stock it was cut from.
        length: The length that was marked, measured from one farthest point of the piece to the other.
    """

    id: str
    revision: int
    profile: str
    length: Fraction

    @classmethod
    def of(cls, id: str, revision: int, document: str) -> StoredPiece:
        """As its document has it."""
        piece = read_piece(document)
        return cls(
            **fields_of(MadePiece, piece),
            id=id,
            revision=revision,
            profile=piece.shape.profile,
            length=piece.shape.length,
        )

    @classmethod
    def of_row(cls, row: PieceRow) -> StoredPiece:
        """As its row has it."""
        return cls.of(row.id, row.revision, row.document)


class Revision(Value, frozen=True):
    """One write to a schedule.

    Attributes:
        number: The number of the revision, counted from 1; the latest is the schedule as it stands.
        at: The time of the write.
        who: The name of the key that wrote.
        key_id: The id of the key it was made with; null where no keys are made.
        action: It says what was done.
        why: The reason that was given for it.
        digest: A fingerprint (SHA-256) of everything that was written to the schedule, up to this revision: read again,
            it is the same unless the history was altered.
    """

    number: int
    at: Moment
    who: str
    key_id: str | None
    action: str
    why: str
    digest: str

    @classmethod
    def of(cls, row: RevisionRow) -> Revision:
        """As its row has it."""
        return cls(*(getattr(row, name) for name in cls.__struct_fields__))


class ItemChanged(Value, frozen=True):
    """One thing that a revision wrote.

    Attributes:
        kind: The kind of thing that was changed.
        id: The id of the thing.
        mark: The opening's mark, where it is an opening that stays.
        gone: True where the thing was removed.
    """

    kind: Literal["schedule", "opening", "piece", "length"]
    id: str
    mark: str | None
    gone: bool


class RevisionDetail(Revision, frozen=True, kw_only=True):
    """One write to a schedule, with all it wrote.

    Attributes:
        wrote: The things that were written, each once.
    """

    wrote: tuple[ItemChanged, ...]
