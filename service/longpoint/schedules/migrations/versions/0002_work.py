"""Pieces that were cut, and the offcuts on the rack."""

import json

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

ID = sa.String(32)
DIGEST = sa.String(64)


def upgrade() -> None:
    op.create_table(
        "piece",
        sa.Column("id", ID, nullable=False),
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("opening_id", ID, nullable=False),
        sa.Column("part", sa.String(60), nullable=False),
        sa.Column("instance", sa.Integer, nullable=False),
        sa.Column("state", sa.String(16), nullable=False),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("digest", DIGEST, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_piece"),
        sa.ForeignKeyConstraint(
            ["schedule_id"], ["schedule.id"], name="fk_piece_schedule_id", ondelete="CASCADE"
        ),
    )
    op.create_index("ix_piece_schedule_id_opening_id", "piece", ["schedule_id", "opening_id"])
    op.create_table(
        "offcut",
        sa.Column("id", ID, nullable=False),
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("profile", sa.String(120), nullable=False),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("digest", DIGEST, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("exact", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_offcut"),
        sa.ForeignKeyConstraint(
            ["schedule_id"], ["schedule.id"], name="fk_offcut_schedule_id", ondelete="CASCADE"
        ),
    )
    op.create_index("ix_offcut_schedule_id_id", "offcut", ["schedule_id", "id"])
    _rebuild()


def downgrade() -> None:
    """Drops what only repeats the history: the versions stay, and going up again rebuilds the tables from them."""
    op.drop_table("offcut")
    op.drop_table("piece")


def _rebuild() -> None:
    """Fill the tables from the latest versions, of a database that has been at this revision before."""
    latest = op.get_bind().execute(
        sa.text(
            "SELECT v.* FROM version v JOIN (SELECT schedule_id, kind, item_id, max(revision) AS newest FROM version"
            " WHERE kind IN ('piece', 'offcut') GROUP BY schedule_id, kind, item_id) n"
            " ON v.schedule_id = n.schedule_id AND v.kind = n.kind AND v.item_id = n.item_id"
            " AND v.revision = n.newest WHERE v.document IS NOT NULL"
        )
    )
    for row in latest.mappings().all():
        document = json.loads(row["document"])
        values = {
            "id": row["item_id"],
            "schedule_id": row["schedule_id"],
            "revision": row["revision"],
            "digest": row["digest"],
            "document": row["document"],
        }
        if row["kind"] == "piece":
            own = {name: document[name] for name in ("opening_id", "part", "instance", "state")}
            op.execute(sa.insert(_table("piece", *values, *own)).values(**values, **own))
        else:
            own = {"profile": document["profile"], "exact": row["exact"]}
            op.execute(sa.insert(_table("offcut", *values, *own)).values(**values, **own))


def _table(name: str, *columns: str) -> sa.TableClause:
    return sa.table(name, *(sa.column(column) for column in columns))
