"""Lists that come in pages, read as one."""

from __future__ import annotations

from collections.abc import AsyncIterator, Iterator
from typing import TYPE_CHECKING, Generic, TypeVar

from msgspec.structs import replace

from longpoint_sdk._call import Call
from longpoint_sdk.types._base import Page

if TYPE_CHECKING:
    from longpoint_sdk._async_client import BaseAsyncClient
    from longpoint_sdk._client import BaseClient

T = TypeVar("T")


class Pages(Generic[T]):
    """A list that comes in pages: iterate over it, or over its `pages()`. Each page is fetched when it is reached.

    So a problem is raised while iterating, not when the list is asked for; iterating anew reads it anew.

    Example:
        for opening in client.list_openings(schedule_id):
            print(opening.mark)
        everything = list(client.list_openings(schedule_id, room="Kitchen"))
    """

    def __init__(self, client: BaseClient, first: Call[Page[T]]) -> None:
        self._client = client
        self._first = first

    def __repr__(self) -> str:
        return f"<{type(self).__name__} of {self._first.operation}>"

    def __iter__(self) -> Iterator[T]:
        for page in self.pages():
            yield from page.items

    def pages(self) -> Iterator[Page[T]]:
        """The list page by page: `page.items` has what is on each."""
        call: Call[Page[T]] | None = self._first
        while call is not None:
            page = self._client.send(call)
            yield page
            call = _next(call, page)


class AsyncPages(Generic[T]):
    """The async twin of `Pages`: `async for` over it, or over its `pages()`; it is not awaited itself.

    Example:
        async for opening in client.list_openings(schedule_id):
            print(opening.mark)
        everything = [one async for one in client.list_openings(schedule_id, room="Kitchen")]
    """

    def __init__(self, client: BaseAsyncClient, first: Call[Page[T]]) -> None:
        self._client = client
        self._first = first

    def __repr__(self) -> str:
        return f"<{type(self).__name__} of {self._first.operation}>"

    async def __aiter__(self) -> AsyncIterator[T]:
        async for page in self.pages():
            for item in page.items:
                yield item

    async def pages(self) -> AsyncIterator[Page[T]]:
        """The list page by page: `page.items` has what is on each."""
        call: Call[Page[T]] | None = self._first
        while call is not None:
            page = await self._client.send(call)
            yield page
            call = _next(call, page)


def _next(call: Call[Page[T]], page: Page[T]) -> Call[Page[T]] | None:
    return replace(call, query={**call.query, "cursor": page.next}) if page.next else None
