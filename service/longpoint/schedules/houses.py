"""House schedules as wholes: make, find, list, lock for a write, archive, delete."""

from sqlalchemy import bindparam, delete, func, insert, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import moment
from longpoint.schedules.history import append
from longpoint.schedules.models import Schedule, Version
from longpoint.schedules.projection import house_name
from longpoint.schedules.rows import ScheduleLineRow, ScheduleRow
from longpoint.schedules.values import Author, Change, ItemKind, Stamp


async def create(
    connection: AsyncConnection, author: Author, action: str, head: Change, changes: list[Change]
) -> tuple[str, Stamp]:
    """Make a schedule of a head, with openings and lengths on hand, if any; gives its id and first revision."""
    id, at, document = head.id, moment(), head.document or ""
    row = {
        "id": id,
        "account_id": author.account_id,
        "name": house_name(document),
        "created_at": at,
        "updated_at": at,
        "archived_at": None,
        "revision": 0,
        "digest": "",
        "head_revision": 0,
        "document": document,
        "opening_count": 0,
        "next_position": 1,
        "basis": "",
        "last_plan": 0,
        "last_names": "{}",
    }
    await connection.execute(insert(Schedule), [row])
    return id, await append(connection, id, Stamp(0, id), author, action, [head, *changes])


# Nearly every request asks by these: statements made once cost a fifth of those made anew.
_OWN = select(Schedule).where(
    Schedule.id == bindparam("schedule"), Schedule.account_id == bindparam("account")
)
_HELD = _OWN.with_for_update()
_EXACT = select(Version.exact).where(
    Version.schedule_id == bindparam("schedule"),
    Version.kind == ItemKind.SCHEDULE,
    Version.item_id == bindparam("schedule"),
    Version.revision == bindparam("revision"),
)


async def find(
    connection: AsyncConnection, account_id: str, id: str, *, hold: bool = False
) -> ScheduleRow | None:
    """A schedule of an account; None when the account has none of that id.

    Args:
        connection: A transaction, a writing one when it is to be held.
        account_id: Whose it must be.
        id: Which.
        hold: Whether to keep every other writer of this schedule waiting until the transaction ends.
    """
    found = await connection.execute(_HELD if hold else _OWN, {"schedule": id, "account": account_id})
    row = found.one_or_none()
    return None if row is None else ScheduleRow.of(row)


async def list_schedules(
    connection: AsyncConnection,
    account_id: str,
    *,
    after: str | None,
    limit: int,
    name: str | None,
    archived: bool | None,
) -> list[ScheduleLineRow]:
    """Schedules of an account, the latest made first."""
    query = select(
        Schedule.id,
        Schedule.name,
        Schedule.created_at,
        Schedule.updated_at,
        Schedule.archived_at,
        Schedule.revision,
        Schedule.digest,
        Schedule.opening_count,
    ).where(Schedule.account_id == account_id)
    if after is not None:
        query = query.where(Schedule.id < after)
    if name is not None:
        query = query.where(func.lower(Schedule.name).contains(name.lower(), autoescape=True))
    if archived is not None:
        query = query.where(Schedule.archived_at.is_not(None) if archived else Schedule.archived_at.is_(None))
    found = await connection.execute(query.order_by(Schedule.id.desc()).limit(limit))
    return [ScheduleLineRow.of(row) for row in found]


async def exact_of_head(connection: AsyncConnection, id: str, head_revision: int) -> str:
    """The exact lengths of a schedule's own document."""
    found = await connection.execute(_EXACT, {"schedule": id, "revision": head_revision})
    exact: str | None = found.scalar_one()
    return exact or "{}"


async def remove(connection: AsyncConnection, id: str) -> None:
    """Delete a schedule with everything under it, its history included."""
    await connection.execute(delete(Schedule).where(Schedule.id == id))


async def touch(connection: AsyncConnection, id: str, **columns: str | None) -> None:
    """Set columns of a schedule's row that are no part of its history."""
    await connection.execute(update(Schedule).where(Schedule.id == id).values(**columns))


async def write(
    connection: AsyncConnection,
    row: ScheduleRow,
    author: Author,
    action: str,
    changes: list[Change],
    *,
    as_planned: bool = False,
    **columns: str | None,
) -> Stamp:
    """Append a revision to a schedule that is held; `row` is what `find` gave.

    Args:
        as_planned: Whether what was planned stands just as it was planned.
    """
    before = Stamp(row.revision, row.digest)
    return await append(connection, row.id, before, author, action, changes, as_planned=as_planned, **columns)
