"""An invented house, and the ways a test talks to the service about it."""

import copy
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Any

import httpx

from longpoint.app import create_app
from longpoint.settings import Settings

TRIM: dict[str, Any] = {
    "casing": {"profile": "casing", "width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"profile": "stool stock", "thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
    "apron": {"profile": "apron", "width": "2 1/2 in", "thickness": "5/8 in"},
}
STOCK = [
    {
        "profile": "casing",
        "sticks": [{"length": "8 ft", "price": "9.60"}, {"length": "14 ft", "price": "16.10"}],
    },
    {"profile": "stool stock", "sticks": [{"length": "8 ft", "price": "21.00"}]},
    {"profile": "apron", "sticks": [{"length": "8 ft", "price": "8.40"}]},
]


def house(**changed: Any) -> dict[str, Any]:
    """A house's schedule as it is sent."""
    body = {"name": "Heron Cottage", "unit": "in", "trim_specs": {"painted": TRIM}, "stock": STOCK}
    return copy.deepcopy({**body, **changed})


def opening(mark: str, width: str = "30 5/8", height: str = "46 1/4", **changed: Any) -> dict[str, Any]:
    """An opening as it is sent."""
    readings = {"jamb_width": width, "jamb_height": height, "jamb_depth": "3 1/8"}
    return copy.deepcopy({"mark": mark, "trim": "painted", "readings": readings, **changed})


@asynccontextmanager
async def serving(
    address: str, settings: dict[str, Any] | None = None, **headers: str
) -> AsyncIterator[httpx.AsyncClient]:
    """The whole service over a database, in process; with settings of its own it works on jobs, too."""
    app = create_app(Settings(access_log=False, database=address, **(settings or {})))
    transport = httpx.ASGITransport(app=app)
    try:
        if settings is not None:
            await app.state.jobs.start()
        async with httpx.AsyncClient(
            transport=transport, base_url="http://longpoint", headers=headers
        ) as caller:
            yield caller
    finally:
        # By hand: a fixture's two halves may run in two tasks, which the application's lifespan does not bear.
        await app.state.jobs.close()
        await app.state.searches.close()
        await app.state.planning.close()
        await app.state.access.close()
        await app.state.store.close()


async def made(service: httpx.AsyncClient, **changed: Any) -> httpx.Response:
    """A new schedule."""
    answer = await service.post("/v1/schedules", json=house(**changed))
    assert answer.status_code == 201, answer.text
    return answer
