"""Shared by all tests."""

from collections.abc import AsyncIterator

import httpx
import pytest
from hypothesis import settings

from longpoint.app import create_app
from longpoint.settings import Settings

# The suite shares two cores between workers: a deadline per example would fail on a busy machine, not on a fault.
settings.register_profile("longpoint", deadline=None, max_examples=60)
settings.load_profile("longpoint")


@pytest.fixture
async def client() -> AsyncIterator[httpx.AsyncClient]:
    """The whole service, in process, as a caller over HTTP sees it."""
    app = create_app(Settings(access_log=False))
    async with httpx.AsyncClient(
        transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
    ) as caller:
        yield caller
