"""Who is asking: bearer keys, what they may do, and whose things they reach."""

import asyncio
import contextlib
import time
from functools import lru_cache
from ipaddress import ip_address

from longpoint.api.http.frame import RATE_FIELDS, RAW_HEADERS
from longpoint.api.http.limits import RateLimit
from longpoint.api.http.operation import operation_of
from longpoint.api.http.problems_stored import KeyNeeded, KeyRefused, ScopeMissing
from longpoint.api.http.request import AnyRequest
from longpoint.schedules.errors import DatabaseUnavailable
from longpoint.schedules.keys import (
    LOCAL_ACCOUNT,
    Holder,
    account_named,
    any_key,
    find_holder,
    note_use,
)
from longpoint.schedules.store import Store
from longpoint.schedules.values import Author
from longpoint.texts import say

CALLER = "caller"
"""Key in the scope's state of who is asking, an `Author`: whose things they reach, and who signs their revisions."""
TRUSTED_SECONDS = 5.0
"""How long a computation may rely on a key checked before. Whatever is stored is checked each time."""
_NOTED_EVERY = 60.0
_MOST_REMEMBERED = 1000


class Access:
    """Checks keys against a store; without one, or with no keys made, only this machine is served.

    Args:
        store: Where keys are kept; None when nothing is.
        rate: How many requests each may make; None for no limit.
    """

    def __init__(self, store: Store | None, rate: RateLimit | None = None) -> None:
        self._store = store
        self._rate = rate
        self._local = Author("", None, LOCAL_ACCOUNT)
        self._holders: dict[str, tuple[float, Holder]] = {}
        self._keyless_at = -TRUSTED_SECONDS
        self._noted: dict[str, float] = {}
        self._noting: set[asyncio.Task[None]] = set()

    async def admit(self, request: AnyRequest, scope: str, *, fresh: bool) -> Author:
        """Who is asking, when they may.

        Args:
            request: The request.
            scope: What they want to do: "read" or "write".
            fresh: Whether keys are looked up, however lately they were.

        Raises:
            KeyNeeded: no key came.
            KeyRefused: the key is unknown, revoked or expired.
            ScopeMissing: the key may not do this.
            RateExceeded: they did it too often.
        """
        state = request.scope["state"]
        if self._rate is None:
            return await self._admit(request, scope, fresh=fresh)
        address = request.client.host if request.client else ""
        try:
            if _shown(request)[1] not in self._holders:
                # Whoever tries keys that are none is stopped before the database is asked about each.
                self._rate.refuse_spent(address)
            caller = await self._admit(request, scope, fresh=fresh)
        except (KeyNeeded, KeyRefused):
            state[RATE_FIELDS] = self._rate.take(address)
            raise
        state[RATE_FIELDS] = self._rate.take(caller.key_id or address)
        return caller

    async def _admit(self, request: AnyRequest, scope: str, *, fresh: bool) -> Author:
        kind, key = _shown(request)
        if not (kind or key):
            if await self._keyless(fresh=fresh):
                # Even where a server was bound elsewhere by other means.
                if request.client is not None and not _is_here(request.client.host):
                    raise KeyNeeded(say("problem", "key.only-here"), headers=_challenge())
                return self._local
            raise KeyNeeded(say("problem", "key.missing"), headers=_challenge())
        holder = await self._holder(key, fresh=fresh) if kind.lower() == "bearer" else None
        if holder is None:
            raise KeyRefused(say("problem", "key.unknown"), headers=_challenge("invalid_token"))
        if holder.expired:
            ended = say("problem", "key.ended", at=holder.expires_at)
            raise KeyRefused(ended, headers=_challenge("invalid_token"))
        if scope not in holder.scopes:
            raise ScopeMissing(
                say("problem", "key.scope-missing", scope=scope),
                headers={"www-authenticate": f'Bearer error="insufficient_scope", scope="{scope}"'},
            )
        self._note(holder.key_id)
        return Author(holder.account_id, holder.key_id, holder.name)

    async def close(self) -> None:
        """Finish what is under way."""
        await asyncio.gather(*self._noting, return_exceptions=True)

    async def _keyless(self, *, fresh: bool) -> bool:
        if self._store is None or (not fresh and time.monotonic() - self._keyless_at < TRUSTED_SECONDS):
            return True
        async with self._store.looking() as connection:
            if await any_key(connection):
                return False
        if not self._local.account_id:
            async with self._store.writing() as connection:
                id = await account_named(connection, LOCAL_ACCOUNT)
            self._local = Author(id, None, LOCAL_ACCOUNT)
        self._keyless_at = time.monotonic()
        return True

    async def _holder(self, text: str, *, fresh: bool) -> Holder | None:
        if self._store is None:
            return None
        when, known = self._holders.get(text, (0.0, None))
        if known is not None and not fresh and time.monotonic() - when < TRUSTED_SECONDS:
            return known
        async with self._store.looking() as connection:
            found = await find_holder(connection, text)
        self._holders.pop(text, None)
        if found is not None:
            if len(self._holders) >= _MOST_REMEMBERED:
                self._holders.clear()
            self._holders[text] = (time.monotonic(), found)
        return found

    def _note(self, key_id: str) -> None:
        """Note that a key was used, now and then, without keeping the request waiting."""
        now = time.monotonic()
        if self._store is None or now - self._noted.get(key_id, -_NOTED_EVERY) < _NOTED_EVERY:
            return
        self._noted[key_id] = now
        task = asyncio.create_task(self._write_note(self._store, key_id))
        self._noting.add(task)
        task.add_done_callback(self._noting.discard)

    async def _write_note(self, store: Store, key_id: str) -> None:
        with contextlib.suppress(DatabaseUnavailable):
            async with store.writing() as connection:
                await note_use(connection, key_id)


async def check_access(request: AnyRequest) -> None:
    """Find out who is asking, or refuse; every operation goes through it before its body is read."""
    said = operation_of(request.route_handler)
    if said is None or said.access == "open":
        return
    access: Access = request.app.state.access
    request.scope["state"][CALLER] = await access.admit(request, said.access, fresh=said.stored)


def _shown(request: AnyRequest) -> tuple[str, str]:
    """The kind of key that a request shows, and the key; "" for each where it shows none."""
    header: bytes = request.scope["state"][RAW_HEADERS].get(b"authorization", b"")
    kind, _, key = header.decode("latin-1").partition(" ")
    return kind, key.strip()


def _challenge(error: str = "") -> dict[str, str]:
    return {"www-authenticate": f'Bearer error="{error}"' if error else "Bearer"}


@lru_cache(maxsize=1024)
def _is_here(host: str) -> bool:
    """Whether a caller's address is this machine's own; what is no address is a test's stand-in, or a socket file."""
    try:
        return ip_address(host).is_loopback
    except ValueError:
        return True
