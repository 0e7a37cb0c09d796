"""While one caller's house is long at work, others are answered."""

import asyncio
from time import perf_counter
from typing import Any

import httpx
import pytest

from serving import address, start
from stored import TRIM, house, opening

SECTIONS = ["saw_order", "materials", "hours", "cost"]
HOUSE: dict[str, Any] = {
    "unit": "in",
    "trim_specs": {"painted": TRIM},
    "stock": house()["stock"],
    "openings": [
        opening(f"W{number}", width=f"{20 + number % 40} {number % 15 + 1}/16", height=f"{30 + number % 37}")
        for number in range(300)
    ],
    "include": SECTIONS,
    "planning_seconds": 0,
}
SMALL = {"unit": "in", "trim": TRIM, **{key: opening("S1")[key] for key in ("mark", "readings")}}


async def measured(client: httpx.AsyncClient, accept: str) -> tuple[list[float], float]:
    """How long small requests wait beside one large house, and how long that house takes, in seconds."""
    began = perf_counter()
    large = asyncio.create_task(client.post("/v1/cut-list", json=HOUSE, headers={"accept": accept}))
    await asyncio.sleep(0.05)
    waits = []
    while not large.done():
        asked = perf_counter()
        alive, small = await asyncio.gather(
            client.get("/health/live"), client.post("/v1/opening", json=SMALL)
        )
        waits.append(perf_counter() - asked)
        assert (alive.status_code, small.status_code) == (200, 200)
        await asyncio.sleep(0.01)
    assert (await large).status_code == 200
    return waits, perf_counter() - began


@pytest.mark.parametrize("accept", ["application/json", "text/event-stream", "text/html"])
async def test_small_requests_are_answered_while_a_large_house_is_worked_out(accept: str) -> None:
    with start(LONGPOINT_DATABASE="", LONGPOINT_ACCESS_LOG="false") as process:
        async with httpx.AsyncClient(base_url=address(process), timeout=60) as client:
            assert (await client.post("/v1/opening", json=SMALL)).status_code == 200
            # A machine that others use may stand still for a second; what the service does, it does every time.
            tries = [await measured(client, accept) for _ in range(3)]
    # One long stretch at a time may hold the interpreter, such as the encoding of the answer; never the most of it.
    assert any(
        len(waits) >= 5 and sorted(waits)[len(waits) // 2] < 0.25 and max(waits) < took / 2
        for waits, took in tries
    ), tries
