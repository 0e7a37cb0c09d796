"""Types of the document's part "revisions". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Request, Result
from longpoint_sdk.types.basics import MarkedLength

if TYPE_CHECKING:
    Became = Literal["changed", "gone", "group_changed", "new", "trim_changed"]
    """What became of an opening."""
    PieceBecame = Literal["altered", "gone", "longer", "new", "shorter", "unchanged"]
    """What became of a piece; altered is the same length with other ends, width or stock."""
else:
    Became = str
    PieceBecame = str


class FieldChange(Result, frozen=True, kw_only=True):
    """One thing that was said differently.

    Attributes:
        pointer: Where, as a JSON pointer into the opening or the house.
        before: What it was, as JSON; null when it was not there.
        after: What it is, as JSON; null when it is not there.
    """

    pointer: str
    before: str | None
    after: str | None


class PieceChange(Result, frozen=True, kw_only=True):
    """What became of one piece of an opening.

    Attributes:
        piece: The piece's key.
        became: Longer and shorter go by what it takes of a stick, exactly.
        before: What it took of a stick.
        after: What it takes.
        longer_by: The difference; negative when it became shorter.
        quantity_before: How many there were.
        quantity_after: How many there are.
    """

    piece: str
    became: PieceBecame | str
    before: MarkedLength | None
    after: MarkedLength | None
    longer_by: MarkedLength | None
    quantity_before: int
    quantity_after: int


class GroupChange(Result, frozen=True, kw_only=True):
    """What became of the pieces that a group's openings share.

    Attributes:
        mark: The group's.
        became: What became of it.
        pieces: Each of its pieces.
    """

    mark: str
    became: Became | str
    pieces: list[PieceChange]


class OpeningChange(Result, frozen=True, kw_only=True):
    """What became of one opening.

    Attributes:
        id: Its id.
        mark: Its mark, the later one.
        mark_before: The mark it had before; null when it is new.
        became: With trim_changed only the trim spec it names was changed; with group_changed it began or
            ceased to share a stool.
        readings: What was said of it differently.
        pieces: Each of its pieces.
    """

    id: str
    mark: str
    mark_before: str | None
    became: Became | str
    readings: list[FieldChange]
    pieces: list[PieceChange]


class Changes(Result, frozen=True, kw_only=True):
    """What changed between two revisions.

    Attributes:
        from_revision: The earlier one.
        to_revision: The later one.
        house: What was said of the house as a whole differently.
        openings: Each opening that changed, by its place in the schedule.
        groups: Each group of which a shared piece changed, by its mark.
        unchanged_openings: How many openings stand in both and did not change.
    """

    from_revision: int
    to_revision: int
    house: list[FieldChange]
    openings: list[OpeningChange]
    groups: list[GroupChange]
    unchanged_openings: int


class GoBack(Request, frozen=True, kw_only=True):
    """Which revision to go back to.

    Attributes:
        revision: Its number.
    """

    revision: int


class ItemChanged(Result, frozen=True, kw_only=True):
    """One thing that a revision wrote.

    Attributes:
        kind: What kind of thing it is.
        id: Its id.
        mark: The opening's mark, where it is an opening that stays.
        gone: Whether it went.
    """

    kind: str
    id: str
    mark: str | None
    gone: bool


class Revision(Result, frozen=True, kw_only=True):
    """One write to a schedule.

    Attributes:
        number: Counts from 1; the latest is the schedule as it stands.
        at: When. RFC 3339, in UTC.
        who: The name of the key that wrote.
        key_id: The id of that key; null where no keys are made.
        action: What was done.
        why: The reason that was given.
        digest: Covers everything that was ever written to the schedule, up to this revision.
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
        number: Counts from 1; the latest is the schedule as it stands.
        at: When. RFC 3339, in UTC.
        who: The name of the key that wrote.
        key_id: The id of that key; null where no keys are made.
        action: What was done.
        why: The reason that was given.
        digest: Covers everything that was ever written to the schedule, up to this revision.
        wrote: Each thing once.
    """

    number: int
    at: str
    who: str
    key_id: str | None
    action: str
    why: str
    digest: str
    wrote: list[ItemChanged]
