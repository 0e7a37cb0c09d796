"""Two accounts at one service over one database, and what they send."""

import asyncio
from collections import Counter
from collections.abc import AsyncIterator, Awaitable, Iterable
from contextlib import asynccontextmanager
from typing import Any, NamedTuple

import httpx

from longpoint.schedules import keys
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from stored import made, opening

LEG = {"opening": "K1", "piece": "side_casing/left", "state": "cut"}
FOUND = {"profile": "casing", "length": "60 in"}


class World(NamedTuple):
    """A database, and a key of each of two accounts."""

    address: str
    ann: str
    bob: str
    ann_id: str


async def furnish(address: str) -> World:
    store = Store(address, create=True)
    await migrate(store)
    async with store.writing() as connection:
        ann, bob = [await keys.account_named(connection, name) for name in ("ann", "bob")]
        shown = [
            await keys.make_key(connection, id, "key", frozenset(keys.SCOPES), None) for id in (ann, bob)
        ]
    await store.close()
    return World(address, *shown, ann)


class Pair(NamedTuple):
    """Two accounts at one service."""

    ann: httpx.AsyncClient
    bob: httpx.AsyncClient


@asynccontextmanager
async def calling(service: httpx.AsyncClient, key: str) -> AsyncIterator[httpx.AsyncClient]:
    """A caller of a service, with a key."""
    # Not closed: that would close the transport that is shared.
    yield httpx.AsyncClient(
        transport=service._transport, base_url="http://longpoint", headers={"authorization": f"Bearer {key}"}
    )


@asynccontextmanager
async def storing(address: str) -> AsyncIterator[Store]:
    store = Store(address)
    try:
        yield store
    finally:
        await store.close()


async def at_once(requests: Iterable[Awaitable[httpx.Response]]) -> tuple[Counter[int], list[httpx.Response]]:
    """What each is answered, and how often each status is."""
    answers = await asyncio.gather(*requests)
    return Counter(answer.status_code for answer in answers), answers


_DIGITS = "0123456789abcdefghjkmnpqrstvwxyz"
_ELSEWHERE = str.maketrans(_DIGITS, _DIGITS[7:] + _DIGITS[:7])


def unlike(id: str) -> str:
    """An id of the same form that nothing has; those of ids that differ differ, too, though one moment made them."""
    return id[:-8] + id[-8:].translate(_ELSEWHERE)


def items_of(answer: httpx.Response) -> set[Any]:
    """What is on a page."""
    return {one.get("id", one.get("number")) for one in answer.json().get("items", [])}


async def furnished(owner: httpx.AsyncClient, **changed: Any) -> tuple[str, dict[str, str]]:
    """A house with an opening, a piece cut, a length on hand; where it is, and their ids."""
    where = (await made(owner, **{"openings": [opening("K1")], "lengths": [FOUND], **changed})).headers[
        "location"
    ]
    done = await owner.post(f"{where}/work", json={"pieces": [LEG]})
    assert done.status_code == 201, done.text
    one = (await owner.get(f"{where}/openings")).json()["items"][0]
    length = (await owner.get(f"{where}/lengths")).json()["items"][0]
    return where, {"opening": one["id"], "piece": done.json()["pieces"][0]["id"], "length": length["id"]}
