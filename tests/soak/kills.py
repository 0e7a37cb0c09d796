"""Kill -9 of the server at random moments under writes from several clients; then everything is accounted for.

    python tests/soak/kills.py --kills 200                      a new SQLite file
    python tests/soak/kills.py --kills 200 --database postgresql a new PostgreSQL of its own

Each client adds openings with an Idempotency-Key and widens its own opening with If-Match, and sends again with the
same key whatever was not answered. At the end no acknowledged write may be lost, none half there, none doubled, and
the database check clean. It prints what it counted, and ends with status 1 when anything is wrong.
"""

import argparse
import asyncio
import contextlib
import random
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests")]

import httpx  # noqa: E402

import databases  # noqa: E402
from longpoint.schedules.check import check_store  # noqa: E402
from longpoint.schedules.migrate import migrate  # noqa: E402
from longpoint.schedules.store import Store  # noqa: E402
from soak.server import Server  # noqa: E402
from stored import house, opening  # noqa: E402


class Writer(threading.Thread):
    """One client: knows what was acknowledged to it, and asks again until it is."""

    def __init__(self, url: str, where: str, number: int, over: threading.Event) -> None:
        super().__init__(daemon=True)
        self.mark = f"own-{number}"
        self.width = 20
        self.added: dict[str, str] = {}
        self.asked_again = 0
        self.wrong: list[str] = []
        self._url, self._where, self._number, self._over = url, where, number, over

    def run(self) -> None:
        with httpx.Client(base_url=self._url, timeout=10) as client:
            count = 0
            while not self._over.is_set():
                count += 1
                mark = f"w{self._number}-{count}"
                answer = self._ask(client, mark)
                if answer.status_code != 201:
                    self.wrong.append(f"{mark}: {answer.status_code} {answer.text}")
                    return
                self.added[mark] = answer.json()["id"]
                self._widen(client)

    def _ask(self, client: httpx.Client, mark: str) -> httpx.Response:
        """Add an opening, asking again with the same key until there is an answer."""
        while True:
            with contextlib.suppress(httpx.TransportError):
                answer = client.post(
                    f"{self._where}/openings", json=opening(mark), headers={"idempotency-key": mark}
                )
                if answer.status_code != 503:
                    return answer
            self.asked_again += 1
            time.sleep(0.1)

    def _widen(self, client: httpx.Client) -> None:
        """Widen this client's own opening by an inch, exactly once, whatever happens on the way."""
        while True:
            with contextlib.suppress(httpx.TransportError):
                now = client.get(f"{self._where}/openings/{self.mark}")
                if now.status_code == 200:
                    width = int(now.json()["readings"]["jamb_width"])
                    if width == self.width + 1:  # it was done, and the answer was lost
                        self.width = width
                        return
                    if width != self.width:
                        self.wrong.append(f"{self.mark} is {width} wide and was left at {self.width}")
                        self.width = width
                    answer = client.put(
                        f"{self._where}/openings/{self.mark}",
                        json=opening(self.mark, str(self.width + 1)),
                        headers={"if-match": now.headers["etag"]},
                    )
                    if answer.status_code == 200:
                        self.width += 1
                        return
            time.sleep(0.1)


def soak(address: str, kills: int, writers: int, port: int, seed: int) -> dict[str, Any]:
    """Run it against a migrated database; gives what was counted, and under "wrong" all that was wrong.

    It kills on until a request went unanswered: such a kill is what the run is for.
    """
    chance = random.Random(seed)
    server = Server(address, port)
    server.start()
    try:
        body = house(openings=[opening(f"own-{number}", "20") for number in range(writers)])
        where = httpx.post(f"{server.url}/v1/schedules", json=body, timeout=10).headers["location"]
        over = threading.Event()
        clients = [Writer(server.url, where, number, over) for number in range(writers)]
        for client in clients:
            client.start()
        done = 0
        while done < kills or not any(client.asked_again for client in clients):
            if done > 10 * kills:
                raise RuntimeError("no kill came between a request and its answer")
            time.sleep(chance.uniform(0.02, 0.6))
            server.kill()
            server.start()
            done += 1
        over.set()
        for client in clients:
            client.join(60)
        wrong = [line for client in clients for line in client.wrong]
        wrong += [f"{client.mark} never ended" for client in clients if client.is_alive()]
        there = list(_openings(server.url, where))
        schedule = httpx.get(f"{server.url}{where}", timeout=10).json()
    finally:
        server.kill()
    wrong += _account(there, clients, schedule)
    wrong += asyncio.run(_check(address))
    return {
        "kills": done,
        "acknowledged": sum(len(client.added) + client.width - 20 for client in clients),
        "asked_again": sum(client.asked_again for client in clients),
        "revisions": schedule["revision"],
        "wrong": wrong,
    }


def _account(there: list[dict[str, Any]], clients: list[Writer], schedule: dict[str, Any]) -> Iterator[str]:
    """What of the acknowledged writes is not there just once."""
    ids = {one["mark"]: one["id"] for one in there}
    widths = {one["mark"]: one["readings"]["jamb_width"] for one in there}
    if len(ids) != len(there) or len(there) != schedule["opening_count"]:
        yield f"{len(there)} openings, {len(ids)} marks, {schedule['opening_count']} counted"
    for client in clients:
        for mark, id in client.added.items():
            if ids.get(mark) != id:
                yield f"{mark} was acknowledged as {id} and is {ids.get(mark)}"
        if widths.get(client.mark) != str(client.width):
            yield f"{client.mark} was acknowledged {client.width} wide and is {widths.get(client.mark)}"
    added = sum(len(client.added) + client.width - 20 for client in clients)
    if schedule["revision"] != 1 + added:
        yield f"{schedule['revision']} revisions for {added} acknowledged writes"


def _openings(url: str, where: str) -> Iterator[dict[str, Any]]:
    address: str | None = f"{where}/openings?limit=500"
    while address:
        answer = httpx.get(f"{url}{address}", timeout=10)
        yield from answer.json()["items"]
        address = answer.links.get("next", {}).get("url")


async def _check(address: str) -> list[str]:
    store = Store(address)
    try:
        return await check_store(store)
    finally:
        await store.close()


async def prepare(address: str) -> None:
    """Migrate a database."""
    store = Store(address, create=True)
    await migrate(store)
    await store.close()


def main() -> int:
    """Run it as the arguments say."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--writers", type=int, default=4)
    parser.add_argument("--port", type=int, default=8765)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--database", choices=["sqlite", "postgresql"], default="sqlite")
    chosen = parser.parse_args()
    with contextlib.ExitStack() as stack:
        if chosen.database == "sqlite":
            folder = stack.enter_context(tempfile.TemporaryDirectory())
            address = databases.fresh_sqlite(Path(folder))
        else:
            address = databases.fresh_postgres(stack.enter_context(databases.postgres_server()))
        asyncio.run(prepare(address))
        started = time.monotonic()
        counted = soak(address, chosen.kills, chosen.writers, chosen.port, chosen.seed)
    print({**counted, "seconds": round(time.monotonic() - started)})
    return 1 if counted["wrong"] else 0


if __name__ == "__main__":
    sys.exit(main())
