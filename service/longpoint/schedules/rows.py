"""Rows as storage gives them: the columns of each table, typed."""

from __future__ import annotations

from typing import NamedTuple, Self


class _Row:
    """A row made from what the database gave."""

    __slots__ = ()

    @classmethod
    def of(cls, row: object) -> Self:
        """From a row of the database that has at least these columns."""
        names = cls._fields  # type: ignore[attr-defined]
        if row._fields == names:  # type: ignore[attr-defined]
            made: Self = cls._make(row)  # type: ignore[attr-defined]
            return made
        return cls(**{name: getattr(row, name) for name in names})


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
    basis: str
    last_plan: int
    last_names: str


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
    bottom: str
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
    piece: str
    instance: int
    state: str
    revision: int
    digest: str
    document: str


class PieceRow(_Piece, _Row):
    """A piece that was cut."""

    __slots__ = ()


class _Length(NamedTuple):
    id: str
    schedule_id: str
    lot: str
    profile: str
    ordered: int
    delivered: int
    used_up: int
    revision: int
    digest: str
    document: str
    exact: str


class LengthRow(_Length, _Row):
    """A lot of lengths on hand."""

    __slots__ = ()

    @property
    def available(self) -> int:
        """How many are left to plan with."""
        return max(self.ordered, self.delivered) - self.used_up


class _Plan(NamedTuple):
    schedule_id: str
    number: int
    basis: str
    planner: int
    created_at: str
    used_at: str | None
    budget: int
    document: str


class PlanRow(_Plan, _Row):
    """A plan of the sticks."""

    __slots__ = ()


class _Stick(NamedTuple):
    schedule_id: str
    name: str
    plan: int
    revision: int
    document: str
    claimed_by: str | None
    claimed_until: str | None
    lost_by: str | None
    lost_at: str | None


class StickRow(_Stick, _Row):
    """One layout of one stick."""

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
