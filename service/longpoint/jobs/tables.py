"""The table of jobs. It is no part of a backup: a plan is kept with its schedule, and what else there is can be made
again."""

from __future__ import annotations

from sqlalchemy import Column, Index, Integer, LargeBinary, MetaData, String, Table, Text, UniqueConstraint
from sqlalchemy.types import BigInteger, Float

from longpoint.schedules.models import DIGEST, ID, MOMENT

JOB = Table(
    "job",
    MetaData(),
    Column("id", ID, primary_key=True),
    Column("account", ID, nullable=False),
    Column("kind", String(60), nullable=False),
    Column("digest", DIGEST),  # none once the same work would be done anew
    Column("work", LargeBinary, nullable=False),
    Column("state", String(16), nullable=False),
    Column("step", Integer, nullable=False),
    Column("tries", Integer, nullable=False),
    Column("progress", Text, nullable=False),
    Column("queued", BigInteger),  # its number in the queue; none while it waits for the account's others
    Column("created_at", MOMENT, nullable=False),
    Column("started_at", MOMENT),
    Column("ended_at", MOMENT),
    Column("expires_at", MOMENT),
    Column("seconds", Float),  # that it took
    Column("status", Integer),
    Column("media_type", String(120)),
    Column("headers", Text),
    Column("body", LargeBinary),
    UniqueConstraint("account", "digest", name="uq_job_account_digest"),
    Index("ix_job_state_account", "state", "account", "id"),
    Index("ix_job_ended_at", "ended_at"),
)
"""Every job; `body` has gone where it ended with a status and has none."""
