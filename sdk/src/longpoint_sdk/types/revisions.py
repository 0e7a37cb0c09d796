"""Types of the document's part "revisions". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Request, Result
from longpoint_sdk.types.basics import MarkedLength

if TYPE_CHECKING:
    Became = Literal["changed", "gone", "group_changed", "new", "trim_changed"]
    """It says whether an opening is new, gone or changed: itself, its trim or its group."""
    PieceBecame = Literal["altered", "gone", "longer", "new", "shorter", "unchanged"]
    """What became of a piece; altered is the same length with other ends, width or stock."""
else:
    Became = str
    PieceBecame = str


class FieldChange(Result, frozen=True, kw_only=True):
    """One thing that was said differently.

    Attributes:
        pointer: The place of the field, as a JSON pointer into the opening or the house.
        before: What it was, as JSON; null when it was not there.
        after: What it is, as JSON; null when it is not there.
    """

    pointer: str
    before: str | None
    after: str | None


class PieceChange(Result, frozen=True, kw_only=True):
    """It says what became of one piece of an opening.

    Attributes:
        piece: The key of the piece.
        became: Longer and shorter go by what it takes of a stick, exactly.
        before: The length that the piece took of a stick; null where there was none.
        after: The piece as the later revision has it; null where it is gone.
        longer_by: The length after less the length before; negative when the piece became shorter.
        quantity_before: The number of such pieces before.
        quantity_after: The number of such pieces afterwards.
    """

    piece: str
    became: PieceBecame | str
    before: MarkedLength | None
    after: MarkedLength | None
    longer_by: MarkedLength | None
    quantity_before: int
    quantity_after: int


class GroupChange(Result, frozen=True, kw_only=True):
    """It says what became of the pieces that a group's openings share.

    Attributes:
        mark: The mark of the group.
        became: It says what became of the group.
        pieces: The changes of its pieces, one for each.
    """

    mark: str
    became: Became | str
    pieces: list[PieceChange]


class OpeningChange(Result, frozen=True, kw_only=True):
    """It says what became of one opening.

    Attributes:
        id: The id of the opening.
        mark: The mark of the opening; the later one where it changed.
        mark_before: The mark it had before; null when it is new.
        became: With trim_changed only the trim spec it names was changed; with group_changed it began or
            ceased to share a stool.
        readings: The readings that changed, each before and after.
        pieces: The changes of its pieces, one for each.
    """

    id: str
    mark: str
    mark_before: str | None
    became: Became | str
    readings: list[FieldChange]
    pieces: list[PieceChange]


class Changes(Result, frozen=True, kw_only=True):
    """A comparison of two revisions: it says what changed between them.

    Attributes:
        from_revision: The number of the earlier revision.
        to_revision: The number of the later revision.
        house: The changes to what is said of the house as a whole.
        openings: Each opening that changed, by its place in the schedule.
        groups: Each group of which a shared piece changed, by its mark.
        unchanged_openings: The number of openings that stand in both and did not change.
    """

    from_revision: int
    to_revision: int
    house: list[FieldChange]
    openings: list[OpeningChange]
    groups: list[GroupChange]
    unchanged_openings: int


class GoBack(Request, frozen=True, kw_only=True):
    """A request to go back to an earlier revision.

    Attributes:
        revision: The number of the revision to go back to.
    """

    revision: int


class ItemChanged(Result, frozen=True, kw_only=True):
    """One thing that a revision wrote.

    Attributes:
        kind: The kind of thing that was changed.
        id: The id of the thing.
        mark: The opening's mark, where it is an opening that stays.
        gone: True where the thing was removed.
    """

    kind: str
    id: str
    mark: str | None
    gone: bool


class Revision(Result, frozen=True, kw_only=True):
    """One write to a schedule.

    Attributes:
        number: The number of the revision, counted from 1; the latest is the schedule as it stands.
        at: The time of the write. RFC 3339, in UTC.
        who: The name of the key that wrote.
        key_id: The id of the key it was made with; null where no keys are made.
        action: It says what was done.
        why: The reason that was given for it.
        digest: A fingerprint (SHA-256) of everything that was written to the schedule, up to this revision:
            read again, it is the same unless the history was altered.
    """

    number: int
    at: str
    who: str
    key_id: str | None
    action: str
    why: str
    digest: str


class RevisionDetail(Result, frozen=True, kw_only=True):
    """One write to a schedule, with all it wrote.

    Attributes:
        number: The number of the revision, counted from 1; the latest is the schedule as it stands.
        at: The time of the write. RFC 3339, in UTC.
        who: The name of the key that wrote.
        key_id: The id of the key it was made with; null where no keys are made.
        action: It says what was done.
        why: The reason that was given for it.
        digest: A fingerprint (SHA-256) of everything that was written to the schedule, up to this revision:
            read again, it is the same unless the history was altered.
        wrote: The things that were written, each once.
    """

    number: int
    at: str
    who: str
    key_id: str | None
    action: str
    why: str
    digest: str
    wrote: list[ItemChanged]
