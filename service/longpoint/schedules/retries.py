"""Idempotency keys: the first answer is kept in the very transaction of its effect, so there is never one
without the other. Another request with the same key waits for that transaction, then gets the same answer."""

from dataclasses import dataclass

from sqlalchemy import bindparam, delete, select, update
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import moment
from longpoint.schedules.models import Retry

KEPT_SECONDS = 24 * 3600
"""How long an answer is kept."""
_SWEPT_AT_ONCE = 50


@dataclass(frozen=True, slots=True)
class KeptAnswer:
    """The first answer to a request.

    Attributes:
        request_digest: of what was asked.
        status: of the answer.
        headers: its own header fields, as a JSON object.
        body: its content, as JSON.
    """

    request_digest: str
    status: int
    headers: str
    body: str


async def claim(
    connection: AsyncConnection, account_id: str, key: str, request_digest: str
) -> KeptAnswer | None:
    """Claim a key for the transaction under way; gives the first answer when it was used before.

    Waits while another transaction that claimed it is under way.
    """
    row = {
        "account_id": account_id,
        "key": key,
        "request_digest": request_digest,
        "status": 0,
        "headers": "",
        "body": "",
        "expires_at": moment(KEPT_SECONDS),
    }
    of_key = {"account": account_id, "of_key": key}
    # What another transaction kept may be swept by a third before it is read: the key is free again then.
    while True:
        if await _first(connection, row) or (
            (await connection.execute(_FORGET, {**of_key, "now": moment()})).rowcount == 1
            and await _first(connection, row)
        ):
            await _sweep(connection)
            return None
        kept = (await connection.execute(_KEPT, of_key)).one_or_none()
        if kept is not None:
            return KeptAnswer(*kept)


_OF_KEY = (Retry.account_id == bindparam("account"), Retry.key == bindparam("of_key"))
_KEPT = select(Retry.request_digest, Retry.status, Retry.headers, Retry.body).where(*_OF_KEY)
_FORGET = delete(Retry).where(*_OF_KEY, Retry.expires_at <= bindparam("now"))
# Those that another transaction is forgetting are left to it: waiting for its end would keep a caller waiting for a
# stranger. SQLite has one writer at a time, and no such clause.
_OLD = (
    select(Retry.account_id, Retry.key)
    .where(Retry.expires_at <= bindparam("now"))
    .limit(_SWEPT_AT_ONCE)
    .with_for_update(skip_locked=True)
)
_CLAIMS = {
    "sqlite": sqlite.insert(Retry).on_conflict_do_nothing(),
    "postgresql": postgresql.insert(Retry).on_conflict_do_nothing(),
}


async def _first(connection: AsyncConnection, row: dict[str, object]) -> bool:
    """Put a row in; False where there is one of that key, once whoever made it is done."""
    return (await connection.execute(_CLAIMS[connection.dialect.name], row)).rowcount == 1


async def keep(connection: AsyncConnection, account_id: str, key: str, kept: KeptAnswer) -> None:
    """Keep the answer to a claimed key."""
    await connection.execute(
        update(Retry)
        .where(Retry.account_id == account_id, Retry.key == key)
        .values(status=kept.status, headers=kept.headers, body=kept.body)
    )


async def _sweep(connection: AsyncConnection) -> None:
    """Forget a few whose time is over."""
    for old in list(await connection.execute(_OLD, {"now": moment()})):
        await connection.execute(
            delete(Retry).where(Retry.account_id == old.account_id, Retry.key == old.key)
        )
