"""What a write and a page cost at 50, 500 and 5,000 openings, and after 2,000 revisions; SQLite in a file.

    python tests/bench/schedules.py [--database postgresql]

In process, over the whole service but without sockets; the collector of garbage waits as long as in the service.
Medians and 95th percentiles in milliseconds.
"""

import argparse
import asyncio
import contextlib
import gc
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests")]

import httpx  # noqa: E402

import databases  # type: ignore[import-not-found, import-untyped, unused-ignore]  # noqa: E402
from longpoint.schedules.migrate import migrate  # noqa: E402
from longpoint.schedules.store import Store  # noqa: E402
from stored import house, opening, serving  # type: ignore[import-not-found, import-untyped, unused-ignore]  # noqa: E402

TIMES = 60


async def measure(service: httpx.AsyncClient, openings: int, rewrites: int) -> list[str]:
    """One row of the table."""
    body = house(openings=[opening(f"W{number}") for number in range(openings)])
    started = time.perf_counter()
    answer = await service.post("/v1/schedules", json=body)
    assert answer.status_code == 201, answer.text
    made = time.perf_counter() - started
    where = answer.headers["location"]
    for number in range(rewrites):
        await _put(service, where, number)
    put = [await _put(service, where, number) for number in range(TIMES)]
    post = [await _post(service, where, number) for number in range(TIMES)]
    page = [await _get(service, f"{where}/openings?limit=50") for _ in range(TIMES)]
    last = await _last_page(service, where)
    deep = [await _get(service, last) for _ in range(TIMES)]
    first = await _get(service, f"{where}/cut-list")
    again = [await _get(service, f"{where}/cut-list") for _ in range(TIMES)]
    return [
        f"{openings:,}",
        f"{1 + rewrites + 2 * TIMES:,}",
        *(_shown(times) for times in (put, post, page, deep)),
        f"{made * 1000:.0f}",
        f"{first * 1000:.0f}",
        _shown(again),
    ]


async def _put(service: httpx.AsyncClient, where: str, number: int) -> float:
    mark = f"W{number % 50}"
    tag = (await service.get(f"{where}/openings/{mark}")).headers["etag"]
    started = time.perf_counter()
    answer = await service.put(
        f"{where}/openings/{mark}", json=opening(mark, f"3{number % 7}"), headers={"if-match": tag}
    )
    assert answer.status_code == 200, answer.text
    return time.perf_counter() - started


async def _post(service: httpx.AsyncClient, where: str, number: int) -> float:
    started = time.perf_counter()
    answer = await service.post(
        f"{where}/openings",
        json=opening(f"new {number}"),
        headers={"idempotency-key": f"{where[-8:]}{number}"},
    )
    # A full schedule refuses one more: the cost of an addition is then that of the refusal.
    assert answer.status_code in (201, 422), answer.text
    return time.perf_counter() - started


async def _get(service: httpx.AsyncClient, address: str) -> float:
    started = time.perf_counter()
    answer = await service.get(address, timeout=120)
    assert answer.status_code == 200, answer.text
    return time.perf_counter() - started


async def _last_page(service: httpx.AsyncClient, where: str) -> str:
    address = f"{where}/openings?limit=500"
    while True:
        answer = await service.get(address)
        following = answer.links.get("next", {}).get("url")
        if following is None:
            return address
        address = following


def _shown(times: list[float]) -> str:
    times = sorted(times)
    return f"{times[len(times) // 2] * 1000:.1f} / {times[int(len(times) * 0.95)] * 1000:.1f}"


async def run(address: str) -> None:
    """Print the table."""
    store = Store(address, create=True)
    await migrate(store)
    await store.close()
    head = [
        "openings",
        "revisions",
        "remeasure",
        "add",
        "first page of 50",
        "last page",
        "create",
        "cut list",
        "again",
    ]
    print("| " + " | ".join(head) + " |")
    print("| " + " | ".join("---:" for _ in head) + " |")
    async with serving(address) as service:
        await measure(service, 50, 0)  # warm up
        gc.collect()
        gc.freeze()
        gc.set_threshold(20_000, 20, 20)
        for openings, rewrites in ((50, 0), (500, 0), (4900, 0), (50, 2000)):
            print("| " + " | ".join(await measure(service, openings, rewrites)) + " |", flush=True)


def main() -> None:
    """Run it as the arguments say."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--database", choices=["sqlite", "postgresql"], default="sqlite")
    chosen = parser.parse_args()
    with contextlib.ExitStack() as stack:
        if chosen.database == "sqlite":
            address = databases.fresh_sqlite(Path(stack.enter_context(tempfile.TemporaryDirectory())))
        else:
            address = databases.fresh_postgres(stack.enter_context(databases.postgres_server()))
        asyncio.run(run(address))


if __name__ == "__main__":
    main()
