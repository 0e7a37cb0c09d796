"""Work that stops when the one who asked for it goes away."""

from __future__ import annotations

import asyncio
from collections.abc import Coroutine
from typing import Any

from litestar import Request

from longpoint.api.http.problems import BadRequest
from longpoint.texts import say


async def unless_gone(request: Request[Any, Any, Any], work: Coroutine[Any, Any, None]) -> None:
    """Do the work, or cancel it as soon as the client has closed the connection.

    Raises:
        BadRequest: when the client is gone; nobody reads it, but the log says what happened.
    """
    doing = asyncio.ensure_future(work)
    leaving = asyncio.ensure_future(_gone(request))
    try:
        await asyncio.wait({doing, leaving}, return_when=asyncio.FIRST_COMPLETED)
        if not doing.done():
            raise BadRequest(say("problem", "request.gone"))
        doing.result()
    finally:
        doing.cancel()
        leaving.cancel()
        await asyncio.gather(doing, leaving, return_exceptions=True)


async def _gone(request: Request[Any, Any, Any]) -> None:
    await request.body()
    while (await request.receive())["type"] != "http.disconnect":
        pass
