"""What a house takes of a deployment: a processor's seconds of the replica, the worker and PostgreSQL, and the disk.

python tests/bench/sizing.py --houses 40

Each house is the demo's with widths of its own. It is kept, planned with two seconds, all its sheets are made as PDF
by a worker, one opening is measured again, and it is planned and printed once more: all in one run over a PostgreSQL
of its own, one house after the other. From what a house takes it works out how many of each machine so many houses a
minute want, none of them busier than at two thirds.
"""

import argparse
import asyncio
import json
import os
import sys
import time
from collections import Counter
from math import ceil
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests"), str(ROOT / "deploy/demo")]

import httpx  # noqa: E402
from sqlalchemy import text  # noqa: E402
from stored_house import schedule_of  # type: ignore[import-not-found]  # noqa: E402

import databases  # noqa: E402
from longpoint.schedules.migrate import migrate  # noqa: E402
from longpoint.schedules.store import Store  # noqa: E402
from serving import address as served_at  # noqa: E402
from serving import start, work  # noqa: E402

SHEETS = ("opening-sheet", "stick-sheet", "material-list", "cost-sheet", "measure-sheet", "labels")
LATER = {"prefer": "respond-async"}
BUSY = 2 / 3
RATES = (10, 100, 1000)
_TICK = os.sysconf("SC_CLK_TCK")


def processor_seconds(top: int) -> float:
    """What a process and all below it have used, those that ended among them."""
    stats = {}
    for folder in Path("/proc").iterdir():
        if folder.name.isdigit():
            try:
                fields = (folder / "stat").read_text().rpartition(")")[2].split()
            except OSError:
                continue
            stats[int(folder.name)] = int(fields[1]), sum(map(int, fields[11:15])) / _TICK
    below = {top}
    while more := {id for id, (parent, _) in stats.items() if parent in below} - below:
        below |= more
    return sum(used for id, (_, used) in stats.items() if id in below)


async def stored_bytes(address: str) -> tuple[int, int]:
    """Bytes of the database, and bytes ever written to its log."""
    store = Store(address)
    try:
        async with store.looking() as connection:
            await connection.execute(text("VACUUM"))
            size = await connection.execute(text("SELECT pg_database_size(current_database())"))
            log = await connection.execute(
                text("SELECT pg_wal_lsn_diff(pg_current_wal_lsn(), '0/0')::bigint")
            )
            return int(size.scalar_one()), int(log.scalar_one())
    finally:
        await store.close()


async def done(client: httpx.AsyncClient, method: str, where: str, **given: Any) -> httpx.Response:
    """Ask for long work as a job, and fetch its result."""
    headers = {**LATER, **given.pop("headers", {})}
    asked = await client.request(method, where, headers=headers, **given)
    asked.raise_for_status()
    if asked.status_code != 202:
        return asked
    job = asked.headers["location"]
    while (await client.get(job)).json()["state"] not in ("done", "failed", "cancelled"):
        await asyncio.sleep(0.1)
    result = await client.get(f"{job}/result")
    result.raise_for_status()
    return result


async def plan_and_print(client: httpx.AsyncClient, where: str) -> None:
    """A plan with its two seconds, and every sheet."""
    await done(client, "POST", f"{where}/plans", json={"planning_seconds": 2})
    for sheet in SHEETS:
        await done(client, "GET", f"{where}/sheets/{sheet}", headers={"accept": "application/pdf"})


async def one_house(client: httpx.AsyncClient, number: int) -> None:
    """A house from its first readings to the sheets of a remeasured opening."""
    body = schedule_of(json.loads((ROOT / "deploy/demo/house.json").read_text()))
    body["name"] = f"House {number}"
    first = body["openings"][0]
    first["readings"]["jamb_width"] = f"{24 + number % 30} {number % 15 + 1}/16 in"
    made = await client.post("/v1/schedules", json=body)
    made.raise_for_status()
    where = made.headers["location"]
    await plan_and_print(client, where)
    first["readings"]["jamb_width"] = f"{25 + number % 30} {number % 15 + 1}/16 in"
    again = await client.put(f"{where}/openings/{first['mark']}", json=first, headers={"if-match": "*"})
    again.raise_for_status()
    await plan_and_print(client, where)


async def run(postgres: Any, count: int) -> dict[str, float]:
    """What a house takes, the mean of so many."""
    address = databases.fresh_postgres(postgres)
    store = Store(address)
    await migrate(store)
    await store.close()
    own = {"LONGPOINT_DATABASE": address, "LONGPOINT_ACCESS_LOG": "false"}
    with start(**own, LONGPOINT_JOBS="workers") as process:
        url = served_at(process)
        worker = work(address)
        try:
            async with httpx.AsyncClient(base_url=url, timeout=120) as client:
                await one_house(client, 0)
                tops = {"replica": process.pid, "worker": worker.pid, "database": postgres.get_pid()}
                before = {name: processor_seconds(pid) for name, pid in tops.items()}
                size, log = await stored_bytes(address)
                began = time.perf_counter()
                for number in range(1, count + 1):
                    await one_house(client, number)
                took = (time.perf_counter() - began) / count
                after = {name: processor_seconds(pid) for name, pid in tops.items()}
                size_after, log_after = await stored_bytes(address)
        finally:
            worker.kill()
            worker.wait()
    used = Counter(after)
    used.subtract(Counter(before))
    return {
        **{f"{name}_seconds": round(used[name] / count, 3) for name in tops},
        "house_seconds": round(took, 2),
        "kept_kb": round((size_after - size) / count / 1000, 1),
        "written_kb": round((log_after - log) / count / 1000, 1),
    }


def table(house: dict[str, float]) -> list[str]:
    """How many of each so many houses a minute want."""
    lines = [
        "houses a minute | worker cores | replica cores | database cores | written a minute | kept a day"
    ]
    for rate in RATES:
        cores = [
            max(1, ceil(house[f"{name}_seconds"] * rate / 60 / BUSY))
            for name in ("worker", "replica", "database")
        ]
        written, kept = house["written_kb"] * rate / 1000, house["kept_kb"] * rate * 1440 / 1e6
        lines.append(f"{rate} | {' | '.join(map(str, cores))} | {written:.1f} MB | {kept:.1f} GB")
    return lines


def main() -> int:
    """Run it as the arguments say."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--houses", type=int, default=40)
    chosen = parser.parse_args()
    with databases.postgres_server() as postgres:
        house = asyncio.run(run(postgres, chosen.houses))
    print(house)
    print("\n".join(table(house)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
