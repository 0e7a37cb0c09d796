"""Types of the document's part "schedules". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import Result


class ScheduleLine(Result, frozen=True, kw_only=True):
    """A schedule in a list.

    Attributes:
        id: The id of the schedule.
        name: The name of the house.
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        created_at: The time at which it was made. RFC 3339, in UTC.
        updated_at: The time at which it was last changed. RFC 3339, in UTC.
        archived_at: When it was archived; null when it is not. RFC 3339, in UTC.
    """

    id: str
    name: str
    revision: int
    opening_count: int
    created_at: str
    updated_at: str
    archived_at: str | None
