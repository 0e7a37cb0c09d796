"""Types of the document's part "revisions". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import Request, Result


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


class RestoreIn(Request, frozen=True, kw_only=True):
    """Which revision to go back to.

    Attributes:
        revision: Its number.
    """

    revision: int


class RevisionDetail(Result, frozen=True, kw_only=True):
    """One write to a schedule, with all it wrote.

    Attributes:
        number: Counts from 1; the latest is the schedule as it stands.
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


class RevisionOut(Result, frozen=True, kw_only=True):
    """One write to a schedule.

    Attributes:
        number: Counts from 1; the latest is the schedule as it stands.
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
