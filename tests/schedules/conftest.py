"""The service over a real database of each kind."""

from collections.abc import AsyncIterator

import httpx
import pytest

from stored import serving


@pytest.fixture
async def service(database: str) -> AsyncIterator[httpx.AsyncClient]:
    """The service over a fresh database, on each kind; no keys are made."""
    async with serving(database) as caller:
        yield caller


@pytest.fixture
async def sqlite_service(sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
    """The service over a fresh SQLite file."""
    async with serving(sqlite_database) as caller:
        yield caller
