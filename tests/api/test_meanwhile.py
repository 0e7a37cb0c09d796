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


def held_up(waits: list[float], took: float) -> bool:
    """Whether small requests waited for the large one.

    One long stretch at a time may hold the interpreter, such as the encoding of the answer; never the most of it.
    """
    return len(waits) < 5 or sorted(waits)[len(waits) // 2] >= 0.25 or max(waits) >= took / 2


@pytest.mark.parametrize("accept", ["application/json", "text/event-stream", "text/html"])
async def test_small_requests_are_answered_while_a_large_house_is_worked_out(accept: str) -> None:
    tries: list[tuple[list[float], float]] = []
    with start(LONGPOINT_DATABASE="", LONGPOINT_ACCESS_LOG="false") as process:
        async with httpx.AsyncClient(base_url=address(process), timeout=60) as client:
            assert (await client.post("/v1/opening", json=SMALL)).status_code == 200
            # A machine that others use may stand still for a second; what the service does, it does every time.
            while not tries or (held_up(*tries[-1]) and len(tries) < 3):
                tries.append(await measured(client, accept))
    assert not held_up(*tries[-1]), tries
