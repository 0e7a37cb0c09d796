"""Idempotency keys: the first answer is kept in the very transaction of its effect, so there is never one
without the other. Another request with the same key waits for that transaction, then gets the same answer."""

from dataclasses import dataclass

from sqlalchemy import delete, select, update
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import moment
from longpoint.schedules.models import Retry

KEPT_SECONDS = 24 * 3600
"""How long an answer is kept."""
_SWEPT_AT_ONCE = 50


@dataclass(frozen=True, slots=True)
class Kept:
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


async def claim(connection: AsyncConnection, account_id: str, key: str, request_digest: str) -> Kept | None:
    """Claim a key for the transaction under way; gives the first answer when it was used before.

    Waits while another transaction that claimed it is under way.
    """
    await _sweep(connection, account_id, key)
    row = {
        "account_id": account_id,
        "key": key,
        "request_digest": request_digest,
        "status": 0,
        "headers": "",
        "body": "",
        "expires_at": moment(KEPT_SECONDS),
    }
    dialect = sqlite if connection.dialect.name == "sqlite" else postgresql
    made = await connection.execute(dialect.insert(Retry).values(row).on_conflict_do_nothing())
    if made.rowcount == 1:
        return None
    found = await connection.execute(
        select(Retry.request_digest, Retry.status, Retry.headers, Retry.body).where(
            Retry.account_id == account_id, Retry.key == key
        )
    )
    return Kept(*found.one())


async def keep(connection: AsyncConnection, account_id: str, key: str, kept: Kept) -> None:
    """Keep the answer to a claimed key."""
    await connection.execute(
        update(Retry)
        .where(Retry.account_id == account_id, Retry.key == key)
        .values(status=kept.status, headers=kept.headers, body=kept.body)
    )


async def _sweep(connection: AsyncConnection, account_id: str, key: str) -> None:
    """Forget this key once its time is over, and a few others with it."""
    now = moment()
    await connection.execute(
        delete(Retry).where(Retry.account_id == account_id, Retry.key == key, Retry.expires_at <= now)
    )
    old = select(Retry.account_id, Retry.key).where(Retry.expires_at <= now).limit(_SWEPT_AT_ONCE)
    for other in list(await connection.execute(old)):
        await connection.execute(
            delete(Retry).where(Retry.account_id == other.account_id, Retry.key == other.key)
        )
