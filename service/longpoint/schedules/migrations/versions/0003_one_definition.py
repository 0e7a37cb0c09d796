"""Pieces that were cut are kept in the shape the shop reckons with; what was never said of a shop is left out, and with
it the minutes of a cut and of a setup, since both follow from the clock at the saw.

Every document that changes changes its digest, and with it those of all later revisions, which vouch for it: the
chain is made anew. Answers kept for requests that are sent again are let go, since they are of the old form.
"""

import hashlib
import json
from collections.abc import Callable
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

_Document = dict[str, Any]
_ENDS = ("left", "right")
_OF_SHAPE = ("profile", "length", "width", "thickness", "ripped", *_ENDS, "taper", "cutouts")
_SAWN_OUT = ("start", "end", "depth", "end_depth")
_RATES_GONE = ("cut_minutes", "setup_minutes")
_TABLES = {"opening": "opening", "piece": "piece", "offcut": "offcut"}


def upgrade() -> None:
    _rewrite({"piece": _piece_up, "schedule": _house_up})


def downgrade() -> None:
    _rewrite({"piece": _piece_down, "schedule": _house_down})


def _piece_up(old: _Document) -> _Document:
    if "shape" in old or "profile" not in old:
        return old
    new = {name: value for name, value in old.items() if name not in (*_OF_SHAPE, "to", "mode")}
    shape: dict[str, Any] = {name: old.get(name) for name in _OF_SHAPE}
    for end in _ENDS:
        cut = dict(shape[end])
        cut.setdefault("notch_end", None)
        cut.setdefault("tilt", None)
        shape[end] = cut
    if shape["cutouts"] is not None:
        shape["cutouts"] = [dict(zip(_SAWN_OUT, one, strict=True)) for one in shape["cutouts"]]
    return {**new, "rounding": {"to": old["to"], "mode": old["mode"]}, "shape": shape}


def _piece_down(new: _Document) -> _Document:
    if "shape" not in new:
        return new
    old = {name: value for name, value in new.items() if name not in ("rounding", "shape")}
    shape = dict(new["shape"])
    if shape["cutouts"] is not None:
        shape["cutouts"] = [[one[name] for name in _SAWN_OUT] for one in shape["cutouts"]]
    return {**old, **new["rounding"], **shape}


def _house_up(old: _Document) -> _Document:
    new = dict(old)
    shop = new.get("shop")
    if shop is None:
        new.pop("shop", None)
        return new
    new["shop"] = {name: value for name, value in shop.items() if name != "wages" or value is not None}
    rates = shop.get("rates")
    if rates is not None:
        new["shop"]["rates"] = {name: value for name, value in rates.items() if name not in _RATES_GONE}
    return new


def _house_down(new: _Document) -> _Document:
    """As the first release reads it: it refuses fields it does not know."""
    old = dict(new)
    for one in old.get("stock", ()):
        one.pop("one_stick_each", None)
        one.pop("square_first", None)
    shop = old.get("shop") or {}
    shop.pop("order", None)
    (shop.get("saw") or {}).pop("detents", None)
    for name in [name for name in shop.get("rates") or {} if name.endswith("_seconds")]:
        shop["rates"].pop(name)
    return {name: value for name, value in old.items() if value or name not in ("groups", "movement")}


def _rewrite(forms: dict[str, Callable[[_Document], _Document]]) -> None:
    connection = op.get_bind()
    connection.execute(sa.text("DELETE FROM retry"))
    for (schedule_id,) in connection.execute(sa.text("SELECT id FROM schedule ORDER BY id")).all():
        _rewrite_schedule(connection, schedule_id, forms)


def _rewrite_schedule(
    connection: sa.Connection, schedule_id: str, forms: dict[str, Callable[[_Document], _Document]]
) -> None:
    own = {"schedule": schedule_id}
    revisions = connection.execute(
        sa.text(
            "SELECT number, at, key_id, who, why, action FROM revision WHERE schedule_id = :schedule ORDER BY number"
        ),
        own,
    ).all()
    versions = connection.execute(
        sa.text(
            "SELECT kind, item_id, revision, position, document, exact FROM version WHERE schedule_id = :schedule"
        ),
        own,
    ).all()
    digests: dict[int, list[str]] = {}
    for kind, item_id, number, position, document, exact in versions:
        form = forms.get(kind)
        if form is not None and document is not None:
            document = _encode(form(json.loads(document)))
        digest = _digest(kind, item_id, position, document, exact)
        digests.setdefault(number, []).append(digest)
        at = {**own, "kind": kind, "item": item_id, "revision": number}
        connection.execute(
            sa.text(
                "UPDATE version SET document = :document, digest = :digest WHERE schedule_id = :schedule "
                "AND kind = :kind AND item_id = :item AND revision = :revision"
            ),
            {**at, "document": document, "digest": digest},
        )
        written = {**at, "document": document, "digest": digest}
        if kind in _TABLES:
            connection.execute(
                sa.text(
                    f"UPDATE {_TABLES[kind]} SET document = :document, digest = :digest "
                    "WHERE schedule_id = :schedule AND id = :item AND revision = :revision"
                ),
                written,
            )
        else:
            connection.execute(
                sa.text(
                    "UPDATE schedule SET document = :document WHERE id = :schedule AND head_revision = :revision"
                ),
                written,
            )
    before = schedule_id
    for number, at, key_id, who, why, action in revisions:
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
