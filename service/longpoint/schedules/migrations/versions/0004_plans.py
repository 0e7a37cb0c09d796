"""Plans of the sticks that are kept, the names of their sticks, and the numbers of pieces; lengths on hand by lot.

What was an offcut becomes a lot of one length, under a name of its own. What 0.1.0 named otherwise than the trade gets
the trade's word. Versions change, so their digests and those of all later revisions are made anew. Answers kept for
requests that are sent again are let go, since they are of the old form.

Long work waits in a table of jobs; in PostgreSQL beside the tables of the queue, as PgQueuer describes them.
"""

import hashlib
import json
from collections.abc import Callable
from typing import Any

import sqlalchemy as sa
from alembic import op
from pgqueuer.adapters.persistence.qb import QueryBuilderEnvironment

from longpoint.schedules.rewording import COLUMNS, reword
from longpoint.schedules.words import Renaming

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

ID = sa.String(32)
DIGEST = sa.String(64)
MOMENT = sa.String(27)
_COUNTS = ("ordered", "delivered", "used_up")
_OF_LOT = ("lot", *_COUNTS, "paid", "stick")
_Document = dict[str, Any]
_MOMENTS = ("created_at", "started_at", "ended_at", "expires_at")
OWN = ("basis", "last_plan", "last_names")


def upgrade() -> None:
    # Column by column: to make the table anew would take what refers to it along.
    op.add_column("schedule", sa.Column("basis", DIGEST, nullable=False, server_default=""))
    op.add_column("schedule", sa.Column("last_plan", sa.Integer, nullable=False, server_default="0"))
    op.add_column("schedule", sa.Column("last_names", sa.Text, nullable=False, server_default="{}"))
    _make_lots()
    for table, (old, new) in COLUMNS.items():
        op.execute(f"ALTER TABLE {table} RENAME COLUMN {old} TO {new}")
    _reword(Renaming())
    op.execute("UPDATE schedule SET basis = digest")
    op.create_table(
        "plan",
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("number", sa.Integer, nullable=False, autoincrement=False),
        sa.Column("basis", DIGEST, nullable=False),
        sa.Column("planner", sa.Integer, nullable=False),
        sa.Column("created_at", MOMENT, nullable=False),
        sa.Column("used_at", MOMENT),
        sa.Column("budget", sa.Integer, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("schedule_id", "number", name="pk_plan"),
        _of_schedule("plan"),
    )
    op.create_table(
        "stick",
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("name", sa.String(12), nullable=False),
        sa.Column("plan", sa.Integer, nullable=False),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("claimed_by", sa.String(120)),
        sa.Column("claimed_until", MOMENT),
        sa.Column("lost_by", sa.String(120)),
        sa.Column("lost_at", MOMENT),
        sa.PrimaryKeyConstraint("schedule_id", "name", name="pk_stick"),
        _of_schedule("stick"),
    )
    op.create_table(
        "piece_numbers",
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("opening_id", ID, nullable=False),
        sa.Column("numbers", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("schedule_id", "opening_id", name="pk_piece_numbers"),
        _of_schedule("piece_numbers"),
    )
    _make_jobs()


def downgrade() -> None:
    op.drop_table("job")
    _run_in_postgres(QueryBuilderEnvironment().build_uninstall_query())
    for name in ("piece_numbers", "stick", "plan"):
        op.drop_table(name)
    for name in OWN:
        op.drop_column("schedule", name)
    _reword(Renaming(back=True))
    for table, (old, new) in COLUMNS.items():
        op.execute(f"ALTER TABLE {table} RENAME COLUMN {new} TO {old}")
    _make_offcuts()


def _make_jobs() -> None:
    op.create_table(
        "job",
        sa.Column("id", ID, nullable=False),
        sa.Column("account", ID, nullable=False),
        sa.Column("kind", sa.String(60), nullable=False),
        sa.Column("digest", DIGEST),
        sa.Column("work", sa.LargeBinary, nullable=False),
        sa.Column("state", sa.String(16), nullable=False),
        sa.Column("step", sa.Integer, nullable=False),
        sa.Column("tries", sa.Integer, nullable=False),
        sa.Column("progress", sa.Text, nullable=False),
        sa.Column("queued", sa.BigInteger),
        *(sa.Column(name, MOMENT, nullable=name != "created_at") for name in _MOMENTS),
        sa.Column("seconds", sa.Float),
        sa.Column("status", sa.Integer),
        sa.Column("media_type", sa.String(120)),
        sa.Column("headers", sa.Text),
        sa.Column("body", sa.LargeBinary),
        sa.PrimaryKeyConstraint("id", name="pk_job"),
        sa.UniqueConstraint("account", "digest", name="uq_job_account_digest"),
    )
    op.create_index("ix_job_state_account", "job", ["state", "account", "id"])
    op.create_index("ix_job_ended_at", "job", ["ended_at"])
    _run_in_postgres(QueryBuilderEnvironment().build_install_query(create_schema=False))


def _run_in_postgres(script: str) -> None:
    """Run the queue's own statements: it is in PostgreSQL alone."""
    bind = op.get_bind()
    if bind.dialect.name == "postgresql":
        adapted: Any = bind.connection.dbapi_connection
        adapted.run_async(lambda connection: connection.execute(script))


def _make_lots() -> None:
    op.create_table(
        "length",
        *_columns(),
        *(sa.Column(name, sa.Integer, nullable=False) for name in _COUNTS),
        sa.Column("lot", sa.String(120), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_length"),
        sa.UniqueConstraint("schedule_id", "lot", name="uq_length_schedule_id_lot"),
        _of_schedule("length"),
    )
    op.create_index("ix_length_schedule_id_id", "length", ["schedule_id", "id"])
    _rewrite("offcut", "length", _lot)
    _fill("length", (*_COUNTS, "lot"))
    op.drop_table("offcut")


def _make_offcuts() -> None:
    op.create_table(
        "offcut", *_columns(), sa.PrimaryKeyConstraint("id", name="pk_offcut"), _of_schedule("offcut")
    )
    op.create_index("ix_offcut_schedule_id_id", "offcut", ["schedule_id", "id"])
    _rewrite("length", "offcut", _offcut)
    _fill("offcut", ())
    op.drop_table("length")


def _columns() -> tuple[sa.Column[Any], ...]:
    return (
        sa.Column("id", ID, nullable=False),
        sa.Column("schedule_id", ID, nullable=False),
        sa.Column("profile", sa.String(120), nullable=False),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("digest", DIGEST, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("exact", sa.Text, nullable=False),
    )


def _lot(old: _Document, number: int) -> _Document:
    counts = {"ordered": 0, "delivered": 1, "used_up": 0}
    return {
        "lot": "length" if number == 1 else f"length {number}",
        **old,
        **counts,
        "paid": "0.00",
        "stick": None,
    }


def _offcut(new: _Document, number: int) -> _Document | None:  # noqa: ARG001
    """A lot as one length on hand, however many it has; None where none of it is left."""
    if new["used_up"] >= max(new["ordered"], new["delivered"]):
        return None
    return {name: value for name, value in new.items() if name not in _OF_LOT}


def _reword(names: Renaming) -> None:
    connection = op.get_bind()
    connection.execute(sa.text("DELETE FROM retry"))
    for schedule_id in reword(connection, names):
        _chain(connection, schedule_id)


def _rewrite(old: str, new: str, form: Callable[[_Document, int], _Document | None]) -> None:
    """Give each version of a kind another form and name, and its schedule's history the digests that come of it."""
    connection = op.get_bind()
    connection.execute(sa.text("DELETE FROM retry"))
    query = sa.text("SELECT DISTINCT schedule_id FROM version WHERE kind = :kind ORDER BY schedule_id")
    for (schedule_id,) in connection.execute(query, {"kind": old}).all():
        versions = sa.text(
            "SELECT item_id, revision, position, document, exact FROM version "
            "WHERE schedule_id = :schedule AND kind = :kind ORDER BY item_id, revision"
        )
        numbers: dict[str, int] = {}
        own = {"schedule": schedule_id, "kind": old}
        for item_id, revision, position, document, exact in connection.execute(versions, own).all():
            number = numbers.setdefault(item_id, len(numbers) + 1)
            became = None if document is None else form(json.loads(document), number)
            written = None if became is None else _encode(became)
            exact = None if became is None else exact
            connection.execute(
                sa.text(
                    "UPDATE version SET kind = :new, document = :document, exact = :exact, digest = :digest "
                    "WHERE schedule_id = :schedule AND kind = :kind AND item_id = :item AND revision = :revision"
                ),
                {
                    **own,
                    "new": new,
                    "item": item_id,
                    "revision": revision,
                    "document": written,
                    "exact": exact,
                    "digest": _digest(new, item_id, position, written, exact),
                },
            )
        _chain(connection, schedule_id)


def _chain(connection: sa.Connection, schedule_id: str) -> None:
    """The digests of a schedule's revisions, each from the one before and from the versions it made."""
    own = {"schedule": schedule_id}
    digests: dict[int, list[str]] = {}
    versions = sa.text("SELECT revision, digest FROM version WHERE schedule_id = :schedule")
    for number, digest in connection.execute(versions, own).all():
        digests.setdefault(number, []).append(digest)
    revisions = sa.text(
        "SELECT number, at, key_id, who, why, action FROM revision WHERE schedule_id = :schedule ORDER BY number"
    )
    before = schedule_id
    for number, at, key_id, who, why, action in connection.execute(revisions, own).all():
        before = _digest(before, number, at, key_id, who, why, action, *sorted(digests.get(number, [])))
        connection.execute(
            sa.text(
                "UPDATE revision SET digest = :digest WHERE schedule_id = :schedule AND number = :number"
            ),
            {**own, "digest": before, "number": number},
        )
    connection.execute(
        sa.text("UPDATE schedule SET digest = :digest WHERE id = :schedule"), {**own, "digest": before}
    )


def _fill(kind: str, said: tuple[str, ...]) -> None:
    """Fill the table of a kind from the latest versions."""
    latest = op.get_bind().execute(
        sa.text(
            "SELECT v.* FROM version v JOIN (SELECT schedule_id, item_id, max(revision) AS newest FROM version"
            " WHERE kind = :kind GROUP BY schedule_id, item_id) n ON v.schedule_id = n.schedule_id"
            " AND v.kind = :kind AND v.item_id = n.item_id AND v.revision = n.newest WHERE v.document IS NOT NULL"
        ),
        {"kind": kind},
    )
    names = ("schedule_id", "revision", "digest", "document", "exact")
    for row in latest.mappings().all():
        document = json.loads(row["document"])
        values = {"id": row["item_id"], **{name: row[name] for name in names}}
        values |= {name: document[name] for name in ("profile", *said)}
        table = sa.table(kind, *(sa.column(name) for name in values))
        op.execute(sa.insert(table).values(**values))


def _encode(document: _Document) -> str:
    return json.dumps(document, ensure_ascii=False, separators=(",", ":"))


def _digest(*fields: object) -> str:
    """As the history makes it: SHA-256 of some fields, each with its length in front."""
    whole = hashlib.sha256()
    for field in fields:
        data = b"\0none" if field is None else str(field).encode()
        whole.update(b"%d:" % len(data))
        whole.update(data)
    return whole.hexdigest()


def _of_schedule(table: str) -> sa.ForeignKeyConstraint:
    return sa.ForeignKeyConstraint(
        ["schedule_id"], ["schedule.id"], name=f"fk_{table}_schedule_id", ondelete="CASCADE"
    )
