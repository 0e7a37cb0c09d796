"""Idempotency-Key (IETF draft): a POST sent again gives its first answer, and does its work once."""

import re
from collections.abc import Awaitable, Callable
from typing import TypeVar

import msgspec
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.answer import PLAIN, Reply, encode
from longpoint.api.http.frame import RAW_HEADERS
from longpoint.api.http.negotiate import JSON
from longpoint.api.http.problems import BadRequest
from longpoint.api.http.problems_stored import KeyReused
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.storage import caller_of, store_of
from longpoint.schedules import retries
from longpoint.schedules.basics import digest_of
from longpoint.texts import say
from longpoint.values import Fault, Given, encoder

T = TypeVar("T")
RETRY_KEY = r'^("((?:[\x20-\x21\x23-\x5b\x5d-\x7e]|\\["\\]){1,255})"|([!#-~]{1,255}))$(?![\s\S])'
"""What an Idempotency-Key is: a text in quotes, as structured fields have it, or without."""
MOST_KEY = 512
"""How long it may be, in characters."""
_KEY = re.compile(RETRY_KEY)
_ESCAPED = re.compile(r"\\(.)")
_encode = msgspec.json.Encoder().encode
_encode_sorted = encoder(PLAIN, sort=True).encode
"""For what was asked: an object is the same in whatever order its members come."""


async def once(
    request: AnyRequest, data: Given | None, work: Callable[[AsyncConnection], Awaitable[Reply[T]]]
) -> Reply[T]:
    """Do some work in a writing transaction and answer; with an Idempotency-Key, at most once.

    The answer is kept in the same transaction, so that a caller whose connection broke after the commit hears the
    same answer when it asks again. A second request with the key, while the first is under way, waits for it.

    Args:
        request: Which may have an Idempotency-Key.
        data: Its decoded body.
        work: Does it, and gives the answer.

    Raises:
        KeyReused: when the key came with another request before.
    """
    key, store = _key_of(request), store_of(request)
    if key is None:
        async with store.writing() as connection:
            return await work(connection)
    account = caller_of(request).account_id
    asked = digest_of(
        request.scope["method"], request.scope["path"], request.scope["query_string"], _encode_sorted(data)
    )
    async with store.writing() as connection:
        kept = await retries.claim(connection, account, key, asked)
        if kept is None:
            reply = await work(connection)
            headers = {name: value for name, value in reply.headers.items() if value is not None}
            await retries.keep(
                connection,
                account,
                key,
                retries.KeptAnswer(
                    asked,
                    reply.status_code or 200,
                    _encode(headers).decode(),
                    encode(reply.content, JSON, reply.write).decode(),
                ),
            )
            return reply
    if kept.request_digest != asked:
        raise KeyReused(
            say("problem", "retry.key-reused"),
            [
                Fault(
                    code="key-reused", detail=say("problem", "retry.make-a-new-key"), header="Idempotency-Key"
                )
            ],
        )
    return Reply(
        msgspec.json.decode(kept.body),
        status_code=kept.status,
        headers={**msgspec.json.decode(kept.headers, type=dict[str, str]), "idempotency-replayed": "true"},
    )


def _key_of(request: AnyRequest) -> str | None:
    headers: dict[bytes, bytes] = request.scope["state"][RAW_HEADERS]
    value = headers.get(b"idempotency-key")
    if value is None:
        return None
    text = value.decode("latin-1").strip()
    found = _KEY.match(text)
    if found is None or len(text) > MOST_KEY:
        raise BadRequest(
            say("problem", "retry.key-unreadable"),
            [
                Fault(
                    code="wrong-header",
                    detail=say("problem", "retry.wrong-form"),
                    header="Idempotency-Key",
                )
            ],
        )
    return _ESCAPED.sub(r"\1", found[2]) if found[2] else found[3]
