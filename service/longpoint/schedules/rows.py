"""Rows as storage gives them: the columns of each table, typed."""

from __future__ import annotations

from typing import NamedTuple, Self


class _Row:
    """A row made from what the database gave."""

    __slots__ = ()

    @classmethod
    def of(cls, row: object) -> Self:
        """From a row of the database that has at least these columns."""
        return cls(**{name: getattr(row, name) for name in cls._fields})  # type: ignore[attr-defined]


class _ScheduleLine(NamedTuple):
    id: str
    name: str
    created_at: str
    updated_at: str
    archived_at: str | None
    revision: int
    digest: str
    opening_count: int


class ScheduleLineRow(_ScheduleLine, _Row):
    """A schedule in a list."""

    __slots__ = ()


class KeyRow(NamedTuple):
    """A key without its secret, with the name of its account."""

    id: str
    account: str
    name: str
    scopes: str
    created_at: str
    expires_at: str | None
    revoked_at: str | None
    last_used_at: str | None


class _Schedule(NamedTuple):
    id: str
    account_id: str
    name: str
    created_at: str
    updated_at: str
    archived_at: str | None
    revision: int
    digest: str
    head_revision: int
    document: str
    opening_count: int
    next_position: int


class ScheduleRow(_Schedule, _Row):
    """A schedule as it now stands."""

    __slots__ = ()


class _Opening(NamedTuple):
    id: str
    schedule_id: str
    position: int
    mark: str
    room: str
    trim: str
    foot_style: str
    revision: int
    digest: str
    document: str
    exact: str


class OpeningRow(_Opening, _Row):
    """An opening as it now stands."""

    __slots__ = ()


class _Piece(NamedTuple):
    id: str
    schedule_id: str
    opening_id: str
    part: str
    instance: int
    state: str
    revision: int
    digest: str
    document: str


class PieceRow(_Piece, _Row):
    """A piece that was cut."""

    __slots__ = ()


class _Offcut(NamedTuple):
    id: str
    schedule_id: str
    profile: str
    revision: int
    digest: str
    document: str
    exact: str


class OffcutRow(_Offcut, _Row):
    """A length on the rack."""

    __slots__ = ()


class _Revision(NamedTuple):
    schedule_id: str
    number: int
    at: str
    key_id: str | None
    who: str
    action: str
    why: str
    digest: str


class RevisionRow(_Revision, _Row):
    """One write."""

    __slots__ = ()


class _Version(NamedTuple):
    schedule_id: str
    kind: str
    item_id: str
    revision: int
    position: int | None
    document: str | None
    exact: str | None
    digest: str


class VersionRow(_Version, _Row):
    """What one thing became in one revision; no document means that it went."""

    __slots__ = ()

    @property
    def stands(self) -> str:
        """The document of a version that stands."""
        assert self.document is not None
        return self.document
