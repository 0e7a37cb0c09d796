"""What jobs cost: empty ones a second, what one takes more than its work, and how callers fare beside long ones.

python tests/bench/jobs.py                  over a PostgreSQL of its own, with two workers
python tests/bench/jobs.py --only served    the service beside four long plans and two sets of sheets
"""

import argparse
import asyncio
import subprocess
import sys
import time
from pathlib import Path
from statistics import median
from typing import Any

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests")]

import httpx  # noqa: E402

import databases  # noqa: E402
from longpoint.jobs.job import Bounds, Doer, NewJob, Outcome, Report  # noqa: E402
from longpoint.jobs.queued import JobsQueued  # noqa: E402
from longpoint.schedules.basics import digest_of  # noqa: E402
from longpoint.schedules.migrate import migrate  # noqa: E402
from longpoint.schedules.store import Store  # noqa: E402
from serving import address as served_at  # noqa: E402
from serving import start  # noqa: E402
from serving import work as serve_jobs  # noqa: E402
from stored import house, opening  # noqa: E402

MANY = 100_000
ACCOUNTS = 2000
"""Two jobs of each stand in the queue at once; the rest of an account wait in line for those."""


async def empty(new: NewJob, report: Report) -> Outcome:  # noqa: ARG001
    """Does nothing."""
    return Outcome(200, "text/plain", {}, b"done")


async def work(address: str, at_once: int) -> None:
    """A worker of empty jobs, until it is ended."""
    jobs = JobsQueued(Store(address), Bounds(at_once=at_once, in_all=MANY), Doer(empty, lost))
    await jobs.start()
    await asyncio.Event().wait()


def lost(new: NewJob) -> Outcome:
    """No empty job fails."""
    raise AssertionError(new)


async def through_the_queue(address: str, count: int) -> dict[str, float]:
    """Empty jobs of many accounts, all in the queue before they are done; and one at a time."""
    store = Store(address, connections=8)
    jobs = JobsQueued(store, Bounds(per_account=MANY, in_all=MANY), None)
    await jobs.start()
    for at in range(count):
        await jobs.ask(NewJob(f"account {at % ACCOUNTS}", "empty", digest_of("many", at), b""))
    workers = [_worker(address, 100) for _ in range(2)]
    try:
        began, first = 0.0, 0
        while True:
            done = await _done(store)
            if done and not began:
                began, first = time.perf_counter(), done
            if done == count:
                break
            await asyncio.sleep(0.02)
        each = (count - first) / (time.perf_counter() - began)
        took = []
        for at in range(100):
            asked = time.perf_counter()
            job = await jobs.ask(NewJob("alone", "empty", digest_of("alone", at), b""))
            ended = await jobs.ended(job, 10)
            assert ended is not None
            assert ended.ended
            took.append(time.perf_counter() - asked)
            await asyncio.sleep(0.02)
    finally:
        for one in workers:
            one.kill()
            one.wait()
        await jobs.close()
        await store.close()
    return {"jobs_a_second": round(each), "one_ms": round(median(took) * 1000, 1)}


def _worker(address: str, at_once: int) -> subprocess.Popen[bytes]:
    return subprocess.Popen([sys.executable, __file__, "--work", address, "--at-once", str(at_once)])


async def _done(store: Store) -> int:
    from sqlalchemy import text

    async with store.looking() as connection:
        found = await connection.execute(text("SELECT count(*) FROM job WHERE state = 'done'"))
        return int(found.scalar_one())


async def served(database: str) -> dict[str, Any]:
    """The service with one replica that serves and two workers."""
    own = {"LONGPOINT_DATABASE": database, "LONGPOINT_ACCESS_LOG": "false"}
    with start(**own, LONGPOINT_JOBS="workers") as process:
        url = served_at(process)
        workers = [serve_jobs(database) for _ in range(2)]
        try:
            async with httpx.AsyncClient(base_url=url, timeout=120) as client:
                return await _beside_long_work(client)
        finally:
            for one in workers:
                one.kill()
                one.wait()


async def _beside_long_work(client: httpx.AsyncClient) -> dict[str, Any]:
    later = {"prefer": "respond-async"}
    await _schedule(client, 3)
    idle = await _small(client, 400)
    for at in range(4):
        where = await _schedule(client, 60 + at)
        plan = {"planning_seconds": 20}
        (await client.post(f"{where}/plans", json=plan, headers=later)).raise_for_status()
    for at in range(2):
        where = await _schedule(client, 80 + at)
        pdf = {**later, "accept": "application/pdf"}
        (await client.get(f"{where}/sheets/opening-sheet", headers=pdf)).raise_for_status()
    await asyncio.sleep(2)
    first_events, first_plans = [], []
    for at in range(10):
        where = await _schedule(client, 5 + at)
        asked = time.perf_counter()
        (await client.get(f"{where}/cut-list")).raise_for_status()
        first_plans.append(time.perf_counter() - asked)
        job = await client.post(f"{where}/plans", json={"planning_seconds": 1}, headers=later)
        asked = time.perf_counter()
        async with client.stream("GET", f"{job.headers['location']}/events") as events:
            async for _ in events.aiter_lines():
                break
        first_events.append(time.perf_counter() - asked)
    busy = await _small(client, 400)
    return {
        "first_event_ms": round(max(first_events) * 1000),
        "first_plan_ms": round(max(first_plans) * 1000),
        "small_p99_idle_ms": round(idle * 1000, 1),
        "small_p99_busy_ms": round(busy * 1000, 1),
    }


async def _schedule(client: httpx.AsyncClient, windows: int) -> str:
    openings = [opening(f"W{at}", f"{20 + at % 40} {at % 7 + 1}/8") for at in range(windows)]
    answer = await client.post("/v1/schedules", json=house(openings=openings))
    answer.raise_for_status()
    return str(answer.headers["location"])


async def _small(client: httpx.AsyncClient, count: int) -> float:
    """The 99th percentile of small requests, one after the other."""
    body = {"jamb_width": "30 5/8 in", "reveal": "3/16 in", "casing_width": "2 1/2 in", "thickness": "5/8 in"}
    took = []
    for _ in range(count):
        asked = time.perf_counter()
        (await client.post("/v1/apron", json=body)).raise_for_status()
        took.append(time.perf_counter() - asked)
        await asyncio.sleep(0.005)
    return sorted(took)[int(count * 0.99)]


async def _migrated(address: str) -> None:
    store = Store(address)
    await migrate(store)
    await store.close()


def main() -> int:
    """Run it as the arguments say."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--count", type=int, default=4000)
    parser.add_argument("--only", choices=["queue", "served"])
    parser.add_argument("--work", help=argparse.SUPPRESS)
    parser.add_argument("--at-once", type=int, default=20, help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    if chosen.work:
        asyncio.run(work(chosen.work, chosen.at_once))
        return 0
    with databases.postgres_server() as server:
        if chosen.only != "served":
            address = databases.fresh_postgres(server)
            asyncio.run(_migrated(address))
            print(asyncio.run(through_the_queue(address, chosen.count)))
        if chosen.only != "queue":
            address = databases.fresh_postgres(server)
            asyncio.run(_migrated(address))
            print(asyncio.run(served(address)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
