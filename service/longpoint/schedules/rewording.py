"""The stored documents of a database of 0.1.0 under the names of today, and back: what migration 0004 does of it."""

from __future__ import annotations

import json
from collections.abc import Iterator

import sqlalchemy as sa

from longpoint.schedules.basics import digest_of
from longpoint.schedules.words import Document, Renaming, heads_of

COLUMNS = {"opening": ("foot_style", "bottom"), "piece": ("part", "piece")}
"""Of each table the column that has another name, and its new one."""
_REPEATED = {"opening": ("bottom",), "piece": ("piece", "state")}
"""What the tables repeat of their documents, by the new names."""


def reword(connection: sa.Connection, names: Renaming) -> Iterator[str]:
    """Give the fields and values of every version other names, and what is there now what its latest version says.

    Gives the id of each schedule when its versions are done: the digests of its revisions are still to be made.
    """
    for (schedule_id,) in connection.execute(sa.text("SELECT id FROM schedule ORDER BY id")).all():
        own = {"schedule": schedule_id}
        found = connection.execute(
            sa.text(
                "SELECT kind, item_id, revision, position, document, exact FROM version "
                "WHERE schedule_id = :schedule AND document IS NOT NULL ORDER BY revision, kind"
            ),
            own,
        ).all()
        heads: dict[str, int] = {}
        for kind, item_id, number, position, document, exact in found:
            said = json.loads(document)
            lengths = json.loads(exact) if exact else {}
            if kind == "opening":  # before the pieces of the same revision
                heads[item_id] = heads_of(said, lengths)
            new = names.document(said)
            if kind == "piece":
                field = "part" if "part" in new else "piece"
                new[field] = names.key(new[field], lambda: heads.get(said["opening_id"], 1))  # noqa: B023
            written = _json(new)
            pointers = (
                None if exact is None else _json({names.pointer(at): one for at, one in lengths.items()})
            )
            values = {
                "document": written,
                "exact": pointers,
                "digest": digest_of(kind, item_id, position, written, pointers),
            }
            at = {**own, "kind": kind, "item": item_id, "revision": number}
            connection.execute(
                sa.text(
                    "UPDATE version SET document = :document, exact = :exact, digest = :digest "
                    "WHERE schedule_id = :schedule AND kind = :kind AND item_id = :item AND revision = :revision"
                ),
                {**at, **values},
            )
            _set_current(connection, kind, at, values, new)
        yield schedule_id


def _set_current(connection: sa.Connection, kind: str, at: Document, values: Document, new: Document) -> None:
    """What the table of a kind has of this version, where it is the one that stands."""
    if kind == "schedule":
        query = "UPDATE schedule SET document = :document WHERE id = :schedule AND head_revision = :revision"
        connection.execute(sa.text(query), {**at, **values})
        return
    if kind != "piece":
        names: tuple[str, ...] = ("document", "exact", "digest")
    else:
        names = ("document", "digest")
    # Going down, the columns still have their new names when this is done.
    old = {called: before for before, called in COLUMNS.values()}
    repeated = {
        name: new.get(name, new.get(old.get(name, name)))
        for name in _REPEATED.get(kind, ())
        if name in new or old.get(name) in new
    }
    sets = ", ".join(f"{name} = :{name}" for name in (*names, *repeated))
    connection.execute(
        sa.text(
            f"UPDATE {kind} SET {sets} WHERE schedule_id = :schedule AND id = :item AND revision = :revision"
        ),
        {**at, **values, **repeated},
    )


def _json(document: Document) -> str:
    return json.dumps(document, ensure_ascii=False, separators=(",", ":"))
