"""Kill -9 of workers, the replica and PostgreSQL at random moments while plans and sheets are made as jobs.

    python tests/soak/jobs.py --kills 200 --replicas 50 --databases 10

Over a PostgreSQL of its own. Every job that was accepted ends once, and done; its steps never go back; no process and
no row of the queue is left.
"""

import argparse
import asyncio
import contextlib
import random
import sys
import time
from collections import Counter
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests")]

import httpx  # noqa: E402

import databases  # noqa: E402
from longpoint.schedules.migrate import migrate  # noqa: E402
from longpoint.schedules.store import Store  # noqa: E402
from serving import work  # noqa: E402
from soak.server import Server  # noqa: E402
from stored import house, opening  # noqa: E402

LATER = {"prefer": "respond-async"}


class Workers:
    """Worker processes, of which any can be killed and is put back."""

    def __init__(self, address: str, count: int) -> None:
        self._address = address
        self.running = [work(address) for _ in range(count)]

    def kill(self, at: int) -> None:
        """Kill one and start another."""
        self.running[at].kill()
        self.running[at].wait()
        self.running[at] = work(self._address)

    def close(self) -> None:
        """End all."""
        for one in self.running:
            one.kill()
            one.wait()


class Caller:
    """Asks for plans and sheets, and follows each job to its end."""

    def __init__(self, url: str, seed: int) -> None:
        self._url, self._chance = url, random.Random(seed)
        self.accepted: list[str] = []
        self.ended: Counter[str] = Counter()
        self.tries: Counter[int] = Counter()
        self.wrong: list[str] = []

    async def run(self, over: asyncio.Event) -> None:
        async with httpx.AsyncClient(base_url=self._url, timeout=20) as client:
            while not over.is_set():
                await self._house(client)

    async def _house(self, client: httpx.AsyncClient) -> None:
        widths = [f"{self._chance.randint(20, 60)} {self._chance.randint(1, 7)}/8" for _ in range(20)]
        body = house(openings=[opening(f"W{at}", width) for at, width in enumerate(widths)])
        where = (await self._send(client, "POST", "/v1/schedules", body)).headers["location"]
        plan = await self._send(client, "POST", f"{where}/plans", {"planning_seconds": 0.5})
        sheet = await self._send(client, "GET", f"{where}/sheets/opening-sheet", None)
        for answer in (plan, sheet):
            if answer.status_code == 202:
                self.accepted.append(answer.headers["location"])
                await self._follow(client, answer.headers["location"])

    async def _follow(self, client: httpx.AsyncClient, job: str) -> None:
        started, cost = time.monotonic(), {}
        while True:
            found = (await self._send(client, "GET", job, None)).json()
            for one in found["progress"]:
                now = float(one["cost"])
                if now > cost.setdefault(one["profile"], now):
                    self.wrong.append(f"{job}: {one['profile']} went back")
                cost[one["profile"]] = now
            if found["state"] in ("done", "failed", "cancelled"):
                break
            if time.monotonic() - started > 180:
                self.wrong.append(f"{job} never ended: {found['state']}")
                return
            await asyncio.sleep(0.2)
        self.ended[found["state"]] += 1
        self.tries[found["tries"]] += 1
        result = await self._send(client, "GET", f"{job}/result", None)
        if result.status_code >= 400 and found["tries"] <= 3:
            self.wrong.append(f"{job}: {result.status_code} {result.text[:200]}")

    async def _send(self, client: httpx.AsyncClient, method: str, address: str, body: Any) -> httpx.Response:
        while True:
            with contextlib.suppress(httpx.TransportError):
                accept = {"accept": "application/pdf"} if address.endswith("opening-sheet") else {}
                answer = await client.request(method, address, json=body, headers={**LATER, **accept})
                if answer.status_code != 503:
                    return answer
            await asyncio.sleep(0.1)


async def soak(postgres: Any, address: str, killed: dict[str, int], port: int, seed: int) -> dict[str, Any]:
    """Run it against a migrated database; gives what was counted.

    Args:
        postgres: The server of the database.
        address: The database.
        killed: How often each is killed: a worker, the replica, the database.
        port: Where the replica listens.
        seed: Of all chances.
    """
    chance = random.Random(seed)
    server = Server(address, port)
    server.start()
    workers = Workers(address, 2)
    callers = [Caller(server.url, seed + at) for at in range(3)]
    over = asyncio.Event()
    calling = [asyncio.create_task(one.run(over)) for one in callers]
    try:
        left = [what for what, times in killed.items() for _ in range(times)]
        chance.shuffle(left)
        for what in left:
            await asyncio.sleep(chance.uniform(0.5, 3))
            if what == "worker":
                await asyncio.to_thread(workers.kill, chance.randrange(2))
            elif what == "database":
                await asyncio.to_thread(databases.kill_postgres, postgres)
            else:
                await asyncio.to_thread(server.kill)
                await asyncio.to_thread(server.start)
        over.set()
        await asyncio.wait_for(asyncio.gather(*calling), 400)
        queue = await _in_the_queue(address)
    finally:
        workers.close()
        server.kill()
    await asyncio.sleep(2)
    orphans = _orphans()
    return {
        "killed": killed,
        "accepted": sum(len(one.accepted) for one in callers),
        "ended": dict(sum((one.ended for one in callers), Counter())),
        "tries": dict(sum((one.tries for one in callers), Counter())),
        "left_in_queue": queue,
        "orphans": orphans,
        "wrong": [line for one in callers for line in one.wrong],
    }


async def _in_the_queue(address: str) -> int:
    from sqlalchemy import text

    await asyncio.sleep(1)
    store = Store(address)
    try:
        async with store.looking() as connection:
            return int((await connection.execute(text("SELECT count(*) FROM pgqueuer"))).scalar_one())
    finally:
        await store.close()


def _orphans() -> int:
    """Processes that plan or set sheets and whose parent is gone: given to the first process."""
    found = 0
    for folder in Path("/proc").iterdir():
        with contextlib.suppress(OSError, ValueError, IndexError):
            command = (folder / "cmdline").read_bytes()
            parent = int((folder / "stat").read_text().rpartition(")")[2].split()[1])
            if parent == 1 and str(ROOT).encode() in (folder / "environ").read_bytes():
                found += b"planning_worker" in command or b"typesetting.py" in command
    return found


async def prepare(address: str) -> None:
    """Migrate a database."""
    store = Store(address)
    await migrate(store)
    await store.close()


def main() -> int:
    """Run it as the arguments say."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--replicas", type=int, default=50)
    parser.add_argument("--databases", type=int, default=10)
    parser.add_argument("--port", type=int, default=8768)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args()
    with databases.postgres_server() as postgres:
        address = databases.fresh_postgres(postgres)
        asyncio.run(prepare(address))
        started = time.monotonic()
        killed = {"worker": chosen.kills, "replica": chosen.replicas, "database": chosen.databases}
        counted = asyncio.run(soak(postgres, address, killed, chosen.port, chosen.seed))
    print({**counted, "seconds": round(time.monotonic() - started)})
    return 1 if counted["wrong"] or counted["orphans"] or counted["left_in_queue"] else 0


if __name__ == "__main__":
    sys.exit(main())
