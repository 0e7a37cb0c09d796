"""Accounts, keys, schedules with their revisions and openings, and kept answers."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

ID = sa.String(32)
MOMENT = sa.String(27)
DIGEST = sa.String(64)


def upgrade() -> None:
    op.create_table(
        "account",
        sa.Column("id", ID, nullable=False),
        sa.Column("name", sa.String(120), nullable=False),
        sa.Column("created_at", MOMENT, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_account"),
        sa.UniqueConstraint("name", name="uq_account_name"),
    )
    op.create_table(
        "access_key",
        sa.Column("id", ID, nullable=False),
        sa.Column("account_id", ID, nullable=False),
        sa.Column("name", sa.String(120), nullable=False),
        sa.Column("secret_hash", DIGEST, nullable=False),
        sa.Column("scopes", sa.String(40), nullable=False),
        sa.Column("created_at", MOMENT, nullable=False),
        sa.Column("expires_at", MOMENT),
        sa.Column("revoked_at", MOMENT),
        sa.Column("last_used_at", MOMENT),
        sa.PrimaryKeyConstraint("id", name="pk_access_key"),
        sa.ForeignKeyConstraint(["account_id"], ["account.id"], name="fk_access_key_account_id"),
    )
    op.create_index("ix_access_key_account_id", "access_key", ["account_id"])
    op.create_table(
        "schedule",
        sa.Column("id", ID, nullable=False),
        sa.Column("account_id", ID, nullable=False),
        sa.Column("name", sa.String(120), nullable=False),
        sa.Column("created_at", MOMENT, nullable=False),
        sa.Column("updated_at", MOMENT, nullable=False),
        sa.Column("archived_at", MOMENT),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("digest", DIGEST, nullable=False),
        sa.Column("head_revision", sa.Integer, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("opening_count", sa.Integer, nullable=False),
        sa.Column("next_position", sa.BigInteger, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_schedule"),
        sa.ForeignKeyConstraint(["account_id"], ["account.id"], name="fk_schedule_account_id"),
    )
    op.create_index("ix_schedule_account_id_id", "schedule", ["account_id", "id"])
    op.create_table(
        "revision",
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("key_id", ID),
        sa.Column("who", sa.String(120), nullable=False),
        sa.Column("action", sa.String(40), nullable=False),
        sa.Column("why", sa.String(500), nullable=False),
        sa.Column("digest", DIGEST, nullable=False),
        sa.PrimaryKeyConstraint("schedule_id", "number", name="pk_revision"),
        sa.ForeignKeyConstraint(
            ["schedule_id"], ["schedule.id"], name="fk_revision_schedule_id", ondelete="CASCADE"
        ),
    )
    op.create_table(
        "version",
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("kind", sa.String(16), nullable=False),
        sa.Column("item_id", ID, nullable=False),
        sa.Column("revision", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("position", sa.BigInteger),
        sa.Column("document", sa.Text),
        sa.Column("exact", sa.Text),
        sa.Column("digest", DIGEST, nullable=False),
        sa.PrimaryKeyConstraint("schedule_id", "kind", "item_id", "revision", name="pk_version"),
        sa.ForeignKeyConstraint(
            ["schedule_id", "revision"],
            ["revision.schedule_id", "revision.number"],
            name="fk_version_schedule_id_revision",
            ondelete="CASCADE",
        ),
    )
    op.create_index("ix_version_schedule_id_revision", "version", ["schedule_id", "revision"])
    op.create_table(
        "opening",
        sa.Column("id", ID, nullable=False),
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("position", sa.BigInteger, nullable=False),
        sa.Column("mark", sa.String(120), nullable=False),
        sa.Column("room", sa.String(120), nullable=False),
        sa.Column("trim", sa.String(120), nullable=False),
        sa.Column("foot_style", sa.String(40), nullable=False),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("digest", DIGEST, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("exact", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_opening"),
        sa.UniqueConstraint("schedule_id", "mark", name="uq_opening_schedule_id_mark"),
        sa.UniqueConstraint("schedule_id", "position", name="uq_opening_schedule_id_position"),
        sa.ForeignKeyConstraint(
            ["schedule_id"], ["schedule.id"], name="fk_opening_schedule_id", ondelete="CASCADE"
        ),
    )
    op.create_table(
        "retry",
        sa.Column("account_id", ID, nullable=False),
        sa.Column("key", sa.String(255), nullable=False),
        sa.Column("request_digest", DIGEST, nullable=False),
        sa.Column("status", sa.Integer, nullable=False),
        sa.Column("headers", sa.Text, nullable=False),
        sa.Column("body", sa.Text, nullable=False),
        sa.Column("expires_at", MOMENT, nullable=False),
        sa.PrimaryKeyConstraint("account_id", "key", name="pk_retry"),
        sa.ForeignKeyConstraint(["account_id"], ["account.id"], name="fk_retry_account_id"),
    )
    op.create_index("ix_retry_expires_at", "retry", ["expires_at"])


def downgrade() -> None:
    for table in ("retry", "opening", "version", "revision", "schedule", "access_key", "account"):
        op.drop_table(table)
