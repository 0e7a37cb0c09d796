"""The tables. Times are RFC 3339 text in UTC, which sorts; documents are JSON text, kept as they were encoded."""

from __future__ import annotations

from sqlalchemy import (
    BigInteger,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    MetaData,
    String,
    Text,
    UniqueConstraint,
)
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

ID = String(32)
MOMENT = String(27)
DIGEST = String(64)


class Base(DeclarativeBase):
    metadata = MetaData(
        naming_convention={
            "ix": "ix_%(column_0_label)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "ck": "ck_%(table_name)s_%(constraint_name)s",
            "fk": "fk_%(table_name)s_%(column_0_N_name)s",
            "pk": "pk_%(table_name)s",
        }
    )


class Account(Base):
    """Whose schedules these are. Everything stored belongs to one account."""

    __tablename__ = "account"

    id: Mapped[str] = mapped_column(ID, primary_key=True)
    name: Mapped[str] = mapped_column(String(120), unique=True)
    created_at: Mapped[str] = mapped_column(MOMENT)


class AccessKey(Base):
    """A bearer key, of which only the hash is kept."""

    __tablename__ = "access_key"

    id: Mapped[str] = mapped_column(ID, primary_key=True)
    account_id: Mapped[str] = mapped_column(ForeignKey("account.id"), index=True)
    name: Mapped[str] = mapped_column(String(120))
    secret_hash: Mapped[str] = mapped_column(DIGEST)
    scopes: Mapped[str] = mapped_column(String(40))
    created_at: Mapped[str] = mapped_column(MOMENT)
    expires_at: Mapped[str | None] = mapped_column(MOMENT)
    revoked_at: Mapped[str | None] = mapped_column(MOMENT)
    last_used_at: Mapped[str | None] = mapped_column(MOMENT)


class Schedule(Base):
    """A house's schedule as it now stands; `document` holds what was said of the house as a whole.

    `digest` is that of the latest revision. `head_revision` is the revision that last changed `document`. `basis` is
    the digest of the revision that last changed what a plan of the sticks is made from: work that was done as planned
    leaves it. `last_plan` is the highest number given to a plan, `last_names` by letter the highest given to a stick.
    """

    __tablename__ = "schedule"
    __table_args__ = (Index("ix_schedule_account_id_id", "account_id", "id"),)

    id: Mapped[str] = mapped_column(ID, primary_key=True)
    account_id: Mapped[str] = mapped_column(ForeignKey("account.id"))
    name: Mapped[str] = mapped_column(String(120))
    created_at: Mapped[str] = mapped_column(MOMENT)
    updated_at: Mapped[str] = mapped_column(MOMENT)
    archived_at: Mapped[str | None] = mapped_column(MOMENT)
    revision: Mapped[int] = mapped_column(Integer)
    digest: Mapped[str] = mapped_column(DIGEST)
    head_revision: Mapped[int] = mapped_column(Integer)
    document: Mapped[str] = mapped_column(Text)
    opening_count: Mapped[int] = mapped_column(Integer)
    next_position: Mapped[int] = mapped_column(BigInteger)
    basis: Mapped[str] = mapped_column(DIGEST)
    last_plan: Mapped[int] = mapped_column(Integer)
    last_names: Mapped[str] = mapped_column(Text)


class RevisionRecord(Base):
    """One write to a schedule: never changed once made.

    `digest` covers the revision before, this one's facts and every version it made, so each revision vouches for
    all that came before it.
    """

    __tablename__ = "revision"

    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"), primary_key=True)
    number: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    at: Mapped[str] = mapped_column(MOMENT)
    key_id: Mapped[str | None] = mapped_column(ID)
    who: Mapped[str] = mapped_column(String(120))
    action: Mapped[str] = mapped_column(String(40))
    why: Mapped[str] = mapped_column(String(500))
    digest: Mapped[str] = mapped_column(DIGEST)


class Version(Base):
    """What one thing of a schedule became in one revision: never changed once made; no document means it went.

    `exact` holds the lengths of `document` as exact fractions of an inch, by JSON pointer.
    """

    __tablename__ = "version"
    __table_args__ = (
        ForeignKeyConstraint(
            ["schedule_id", "revision"], ["revision.schedule_id", "revision.number"], ondelete="CASCADE"
        ),
        Index("ix_version_schedule_id_revision", "schedule_id", "revision"),
    )

    schedule_id: Mapped[str] = mapped_column(ID, primary_key=True)
    kind: Mapped[str] = mapped_column(String(16), primary_key=True)
    item_id: Mapped[str] = mapped_column(ID, primary_key=True)
    revision: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    position: Mapped[int | None] = mapped_column(BigInteger)
    document: Mapped[str | None] = mapped_column(Text)
    exact: Mapped[str | None] = mapped_column(Text)
    digest: Mapped[str] = mapped_column(DIGEST)


class OpeningRecord(Base):
    """An opening as it now stands; the columns beside `document` only repeat what lists are filtered by."""

    __tablename__ = "opening"
    __table_args__ = (
        UniqueConstraint("schedule_id", "mark"),
        UniqueConstraint("schedule_id", "position"),
    )

    id: Mapped[str] = mapped_column(ID, primary_key=True)
    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"))
    position: Mapped[int] = mapped_column(BigInteger)
    mark: Mapped[str] = mapped_column(String(120))
    room: Mapped[str] = mapped_column(String(120))
    trim: Mapped[str] = mapped_column(String(120))
    bottom: Mapped[str] = mapped_column(String(40))
    revision: Mapped[int] = mapped_column(Integer)
    digest: Mapped[str] = mapped_column(DIGEST)
    document: Mapped[str] = mapped_column(Text)
    exact: Mapped[str] = mapped_column(Text)


class PieceRecord(Base):
    """A piece that was cut, by opening, piece and which of several alike it is.

    A piece recut into another, or struck off, is no longer here; its versions are.
    """

    __tablename__ = "piece"
    __table_args__ = (Index("ix_piece_schedule_id_opening_id", "schedule_id", "opening_id"),)

    id: Mapped[str] = mapped_column(ID, primary_key=True)
    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"))
    opening_id: Mapped[str] = mapped_column(ID)
    piece: Mapped[str] = mapped_column(String(60))
    instance: Mapped[int] = mapped_column(Integer)
    state: Mapped[str] = mapped_column(String(16))
    revision: Mapped[int] = mapped_column(Integer)
    digest: Mapped[str] = mapped_column(DIGEST)
    document: Mapped[str] = mapped_column(Text)


class LengthRecord(Base):
    """A lot of lengths on hand; the columns beside `document` only repeat what lists are filtered by."""

    __tablename__ = "length"
    __table_args__ = (
        UniqueConstraint("schedule_id", "lot"),
        Index("ix_length_schedule_id_id", "schedule_id", "id"),
    )

    id: Mapped[str] = mapped_column(ID, primary_key=True)
    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"))
    lot: Mapped[str] = mapped_column(String(120))
    profile: Mapped[str] = mapped_column(String(120))
    ordered: Mapped[int] = mapped_column(Integer)
    delivered: Mapped[int] = mapped_column(Integer)
    used_up: Mapped[int] = mapped_column(Integer)
    revision: Mapped[int] = mapped_column(Integer)
    digest: Mapped[str] = mapped_column(DIGEST)
    document: Mapped[str] = mapped_column(Text)
    exact: Mapped[str] = mapped_column(Text)


class PlanRecord(Base):
    """A plan of a schedule's sticks: what it was made from, what it costs, and the names of its sticks in `document`.

    It only follows from what is recorded, so it is no part of the history. `used_at` is when something was first
    printed or cut from it; `budget` is in thousandths of a second.
    """

    __tablename__ = "plan"

    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"), primary_key=True)
    number: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    basis: Mapped[str] = mapped_column(DIGEST)
    planner: Mapped[int] = mapped_column(Integer)
    created_at: Mapped[str] = mapped_column(MOMENT)
    used_at: Mapped[str | None] = mapped_column(MOMENT)
    budget: Mapped[int] = mapped_column(Integer)
    document: Mapped[str] = mapped_column(Text)


class StickRecord(Base):
    """One layout of one stick, under a name that is never used again. `plan` is the first plan that has it, made from
    the schedule as it was at `revision`.

    `document` says, too, where the stick comes from by the latest plan that has it: to be bought, or of which lot.
    `lost_by` is who had claimed it before, and `lost_at` when that claim was over.
    """

    __tablename__ = "stick"

    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"), primary_key=True)
    name: Mapped[str] = mapped_column(String(12), primary_key=True)
    plan: Mapped[int] = mapped_column(Integer)
    revision: Mapped[int] = mapped_column(Integer)
    document: Mapped[str] = mapped_column(Text)
    claimed_by: Mapped[str | None] = mapped_column(String(120))
    claimed_until: Mapped[str | None] = mapped_column(MOMENT)
    lost_by: Mapped[str | None] = mapped_column(String(120))
    lost_at: Mapped[str | None] = mapped_column(MOMENT)


class PieceNumbers(Base):
    """The numbers by which sheets name the pieces of an opening: one stays with its piece and is never used again."""

    __tablename__ = "piece_numbers"

    schedule_id: Mapped[str] = mapped_column(ForeignKey("schedule.id", ondelete="CASCADE"), primary_key=True)
    opening_id: Mapped[str] = mapped_column(ID, primary_key=True)
    numbers: Mapped[str] = mapped_column(Text)


class Retry(Base):
    """The first answer to a request that came with an Idempotency-Key, made in the transaction of its effect."""

    __tablename__ = "retry"

    account_id: Mapped[str] = mapped_column(ForeignKey("account.id"), primary_key=True)
    key: Mapped[str] = mapped_column(String(255), primary_key=True)
    request_digest: Mapped[str] = mapped_column(DIGEST)
    status: Mapped[int] = mapped_column(Integer)
    headers: Mapped[str] = mapped_column(Text)
    body: Mapped[str] = mapped_column(Text)
    expires_at: Mapped[str] = mapped_column(MOMENT, index=True)
