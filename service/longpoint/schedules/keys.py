"""Accounts and their bearer keys. A key is 256 random bits, shown once; only its SHA-256 is kept.

A plain hash is enough: nothing that random can be guessed from its hash, however fast hashing is.
"""

import hashlib
import hmac
import secrets
from dataclasses import dataclass

from sqlalchemy import bindparam, insert, or_, select, update
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import moment, new_id
from longpoint.schedules.models import AccessKey, Account
from longpoint.schedules.rows import KeyRow

LOCAL_ACCOUNT = "local"
"""The account that everything belongs to until keys are made; keys can be made for it, too."""
SCOPES = ("read", "write")
_PREFIX = "lp"
_NOTE_USE_EVERY = 60.0


@dataclass(frozen=True, slots=True)
class Holder:
    """Whom a key speaks for.

    Attributes:
        key_id: of the key.
        account_id: the account it is bound to.
        name: the key's name.
        scopes: what it may do.
        expires_at: when it ends; None for never.
    """

    key_id: str
    account_id: str
    name: str
    scopes: frozenset[str]
    expires_at: str | None

    @property
    def expired(self) -> bool:
        """Whether its time is over."""
        return self.expires_at is not None and self.expires_at <= moment()


async def account_named(connection: AsyncConnection, name: str) -> str:
    """The id of an account, made when there is none of that name."""
    query = select(Account.id).where(Account.name == name)
    found = (await connection.execute(query)).scalar_one_or_none()
    if found is not None:
        return found
    row = {"id": new_id(), "name": name, "created_at": moment()}
    dialect = sqlite if connection.dialect.name == "sqlite" else postgresql
    # Another replica may make it at the same time: then its row is the one.
    await connection.execute(dialect.insert(Account).values(row).on_conflict_do_nothing())
    return (await connection.execute(query)).scalar_one()


async def make_key(
    connection: AsyncConnection, account_id: str, name: str, scopes: frozenset[str], days: float | None
) -> str:
    """Make a key and give its text, which cannot be had again.

    Args:
        connection: A writing transaction.
        account_id: Whom it speaks for.
        name: What revisions it writes are signed with.
        scopes: Of `SCOPES`.
        days: After how many it ends; None for never.
    """
    id, secret = new_id(), secrets.token_urlsafe(32)
    await connection.execute(
        insert(AccessKey).values(
            id=id,
            account_id=account_id,
            name=name,
            secret_hash=_hash(secret),
            scopes=" ".join(scope for scope in SCOPES if scope in scopes),
            created_at=moment(),
            expires_at=None if days is None else moment(days * 86400),
        )
    )
    return f"{_PREFIX}_{id}_{secret}"


# Every request asks by it: a statement made once costs a fifth of one made anew.
_BY_ID = select(AccessKey).where(AccessKey.id == bindparam("key"))


async def find_holder(connection: AsyncConnection, text: str) -> Holder | None:
    """Whom a key speaks for; None when it is no key of ours, or was revoked. An expired one is found."""
    prefix, _, rest = text.partition("_")
    id, _, secret = rest.partition("_")
    if prefix != _PREFIX or not id or not secret:
        return None
    row = (await connection.execute(_BY_ID, {"key": id})).one_or_none()
    if row is None or row.revoked_at is not None or not hmac.compare_digest(row.secret_hash, _hash(secret)):
        return None
    return Holder(row.id, row.account_id, row.name, frozenset(row.scopes.split()), row.expires_at)


async def note_use(connection: AsyncConnection, key_id: str) -> None:
    """Note that a key was used, at most once a minute."""
    await connection.execute(
        update(AccessKey)
        .where(AccessKey.id == key_id)
        .where(or_(AccessKey.last_used_at.is_(None), AccessKey.last_used_at < moment(-_NOTE_USE_EVERY)))
        .values(last_used_at=moment())
    )


async def revoke_key(connection: AsyncConnection, key_id: str) -> bool:
    """Revoke a key for good; False when there is none of that id."""
    found = await connection.execute(
        update(AccessKey).where(AccessKey.id == key_id).values(revoked_at=moment())
    )
    return found.rowcount == 1


async def list_keys(connection: AsyncConnection) -> list[KeyRow]:
    """Every key without its secret, with the name of its account."""
    query = (
        select(
            AccessKey.id,
            Account.name.label("account"),
            AccessKey.name,
            AccessKey.scopes,
            AccessKey.created_at,
            AccessKey.expires_at,
            AccessKey.revoked_at,
            AccessKey.last_used_at,
        )
        .join(Account, Account.id == AccessKey.account_id)
        .order_by(AccessKey.id)
    )
    return [KeyRow(*row) for row in await connection.execute(query)]


async def any_key(connection: AsyncConnection) -> bool:
    """Whether a key was ever made: from then on every request needs one, even once all are revoked."""
    return (await connection.execute(select(AccessKey.id).limit(1))).first() is not None


def _hash(secret: str) -> str:
    return hashlib.sha256(secret.encode()).hexdigest()
