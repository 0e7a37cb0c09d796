"""The history of a schedule: every write appends one revision and the versions it made; nothing is changed.

The tables of what now stands are brought up to date in the same transaction, so they only ever repeat the latest
versions; `python -m longpoint check` compares the two.
"""

from collections.abc import Sequence

from sqlalchemy import Select, and_, func, insert, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import digest_of, moment
from longpoint.schedules.models import RevisionRecord, Schedule, Version
from longpoint.schedules.projection import house_name, project
from longpoint.schedules.rows import RevisionRow, VersionRow
from longpoint.schedules.values import Author, Change, ItemKind, Stamp

Pair = tuple[VersionRow | None, VersionRow | None]
"""A thing's version at an earlier and at a later revision; None where it was not there."""
_Newest = Select[str, str, int]
"""The number of a version of each thing, by its kind and id."""


def revision_digest(
    before: str, number: int, at: str, author: Author, action: str, versions: Sequence[str]
) -> str:
    """Covers the revision before, this one's facts and the digests of the versions it made."""
    return digest_of(before, number, at, author.key_id, author.who, author.why, action, *sorted(versions))


async def append(
    connection: AsyncConnection,
    schedule_id: str,
    before: Stamp,
    author: Author,
    action: str,
    changes: Sequence[Change],
    *,
    as_planned: bool = False,
    **columns: str | None,
) -> Stamp:
    """Append a revision and bring what now stands up to date.

    Args:
        connection: A writing transaction that holds the schedule (see `houses.hold`).
        schedule_id: Whose history it is.
        before: The latest revision so far.
        author: Who writes.
        action: What was done, in a word or two.
        changes: What it changed, each thing once.
        as_planned: Whether a plan of the sticks that was made before it stands.
        columns: Columns of the schedule's row that change, too.
    """
    number, at = before.number + 1, moment()
    digests = [change.digest for change in changes]
    digest = revision_digest(before.digest, number, at, author, action, digests)
    revision = {
        "schedule_id": schedule_id,
        "number": number,
        "at": at,
        "key_id": author.key_id,
        "who": author.who,
        "action": action,
        "why": author.why,
        "digest": digest,
    }
    await connection.execute(insert(RevisionRecord), [revision])
    if changes:
        await connection.execute(
            insert(Version),
            [
                {
                    "schedule_id": schedule_id,
                    "kind": change.kind.value,
                    "item_id": change.id,
                    "revision": number,
                    "position": change.position,
                    "document": change.document,
                    "exact": change.exact,
                    "digest": own,
                }
                for change, own in zip(changes, digests, strict=True)
            ],
        )
    tally = await project(connection, schedule_id, number, changes, digests)
    values: dict[str, object] = {"revision": number, "digest": digest, "updated_at": at, **columns}
    if not as_planned:
        values["basis"] = digest
    for change in changes:
        if change.kind is ItemKind.SCHEDULE and change.document is not None:
            values |= {
                "document": change.document,
                "head_revision": number,
                "name": house_name(change.document),
            }
    if tally.more_openings:
        values["opening_count"] = Schedule.opening_count + tally.more_openings
    if tally.last_position is not None:
        ahead = tally.last_position + 1
        values["next_position"] = func.greatest(Schedule.next_position, ahead)
        if connection.dialect.name == "sqlite":
            values["next_position"] = func.max(Schedule.next_position, ahead)
    await connection.execute(update(Schedule).where(Schedule.id == schedule_id).values(**values))
    return Stamp(number, digest)


def _newest(schedule_id: str, revision: int, kinds: Sequence[ItemKind]) -> _Newest:
    """For each thing, the number of its latest version up to a revision."""
    return (
        select(Version.kind, Version.item_id, func.max(Version.revision).label("newest"))
        .where(Version.schedule_id == schedule_id, Version.kind.in_(kinds), Version.revision <= revision)
        .group_by(Version.kind, Version.item_id)
    )


def _standing(schedule_id: str, newest: _Newest) -> Select[Version]:
    """The versions so numbered, without those that say their thing went."""
    found = newest.subquery()
    return select(Version).join(
        found,
        and_(
            Version.schedule_id == schedule_id,
            Version.kind == found.c.kind,
            Version.item_id == found.c.item_id,
            Version.revision == found.c.newest,
            Version.document.is_not(None),
        ),
    )


async def state_at(
    connection: AsyncConnection, schedule_id: str, revision: int, kinds: Sequence[ItemKind]
) -> list[VersionRow]:
    """The versions that stood at a revision, openings in their order."""
    query = _standing(schedule_id, _newest(schedule_id, revision, kinds))
    found = await connection.execute(query.order_by(Version.position, Version.item_id))
    return [VersionRow.of(row) for row in found]


async def changed_between(
    connection: AsyncConnection, schedule_id: str, earlier: int, later: int, kinds: Sequence[ItemKind]
) -> list[Pair]:
    """Each thing that differs between two revisions, as its version at the earlier and at the later one.

    Costs what was changed between the two, not what the schedule holds.
    """
    touched = (
        select(Version.kind, Version.item_id)
        .where(Version.schedule_id == schedule_id, Version.kind.in_(kinds))
        .where(Version.revision > earlier, Version.revision <= later)
        .distinct()
        .subquery()
    )
    found: dict[tuple[str, str], list[VersionRow | None]] = {}
    for place, revision in enumerate((earlier, later)):
        newest = _newest(schedule_id, revision, kinds).join(
            touched, and_(Version.kind == touched.c.kind, Version.item_id == touched.c.item_id)
        )
        for row in await connection.execute(_standing(schedule_id, newest)):
            found.setdefault((row.kind, row.item_id), [None, None])[place] = VersionRow.of(row)
    pairs = [(before, after) for before, after in found.values() if _digest(before) != _digest(after)]
    return sorted(pairs, key=_place)


def _place(pair: Pair) -> int:
    row = pair[1] or pair[0]
    return (row.position if row else None) or 0


def _digest(row: VersionRow | None) -> str | None:
    return None if row is None else row.digest


async def revision_of(connection: AsyncConnection, schedule_id: str, number: int) -> RevisionRow | None:
    """One revision; None when there is none of that number."""
    found = await connection.execute(
        select(RevisionRecord).where(
            RevisionRecord.schedule_id == schedule_id, RevisionRecord.number == number
        )
    )
    row = found.one_or_none()
    return None if row is None else RevisionRow.of(row)


async def versions_of(connection: AsyncConnection, schedule_id: str, number: int) -> list[VersionRow]:
    """The versions one revision made."""
    query = select(Version).where(Version.schedule_id == schedule_id, Version.revision == number)
    found = await connection.execute(query.order_by(Version.kind, Version.position, Version.item_id))
    return [VersionRow.of(row) for row in found]


async def list_revisions(
    connection: AsyncConnection, schedule_id: str, before: int | None, limit: int
) -> list[RevisionRow]:
    """Revisions, the newest first."""
    query = select(RevisionRecord).where(RevisionRecord.schedule_id == schedule_id)
    if before is not None:
        query = query.where(RevisionRecord.number < before)
    found = await connection.execute(query.order_by(RevisionRecord.number.desc()).limit(limit))
    return [RevisionRow.of(row) for row in found]


async def count_at(connection: AsyncConnection, schedule_id: str, revision: int, kind: ItemKind) -> int:
    """How many things of a kind stood at a revision."""
    standing = _standing(schedule_id, _newest(schedule_id, revision, [kind])).subquery()
    return (await connection.execute(select(func.count()).select_from(standing))).scalar_one()
