"""Kill -9 of the server at random moments while plans are made and work is recorded; then everything is accounted for.

    python tests/soak/cutting.py --kills 200                      a new SQLite file
    python tests/soak/cutting.py --kills 200 --database postgresql a new PostgreSQL of its own

Each client has a house of its own: it plans, cuts stick after stick, spoils pieces and measures again, and sends again
with the same key whatever was not answered. At the end every stick that was acknowledged is cut just once, no name
ever stood for two layouts, and the database check is clean.
"""

import argparse
import asyncio
import contextlib
import random
import sys
import tempfile
import threading
import time
from collections import Counter
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


class Cutter(threading.Thread):
    """One client: knows which sticks were acknowledged as cut, and what each name stood for."""

    def __init__(self, url: str, number: int, over: threading.Event) -> None:
        super().__init__(daemon=True)
        self.number = number
        self.cut: dict[str, Any] = {}
        self.layouts: dict[str, Any] = {}
        self.plans: set[int] = set()
        self.where = ""
        self.asked_again = 0
        self.cut_off = 0  # writes that a kill left without an answer
        self.busy: Counter[str] = Counter()
        self.wrong: list[str] = []
        self._url, self._over, self._keys = url, over, 0
        self._chance = random.Random(number)

    def run(self) -> None:
        with httpx.Client(base_url=self._url, timeout=20) as client:
            while not self._over.is_set():
                self._new_house(client)
                for _ in range(6):
                    if not self._step(client):
                        break
                self._account(client)

    def _new_house(self, client: httpx.Client) -> None:
        widths = [str(self._chance.randint(20, 50)) for _ in range(4)]
        body = house(openings=[opening(f"W{at}", width) for at, width in enumerate(widths)])
        self.where = self._send(client, "post", "/v1/schedules", body).headers["location"]
        self.cut, self.layouts, self.plans = {}, {}, set()

    def _step(self, client: httpx.Client) -> bool:
        """Plan and cut two sticks, then spoil a piece or measure again; False when there is nothing left to cut."""
        plan = self._send(client, "post", f"{self.where}/plans", {"planning_seconds": 0.2}).json()
        self.plans.add(plan["number"])
        left = []
        for stick in plan["sticks"]:
            layout = [stick["profile"], stick["pieces"], stick["length"]]
            if self.layouts.setdefault(stick["name"], layout) != layout:
                self.wrong.append(f"{stick['name']} stood for two layouts")
            if (stick["state"] == "cut") != (stick["name"] in self.cut):
                self.wrong.append(f"{stick['name']} is {stick['state']}")
            if stick["state"] == "planned":
                left.append(stick)
        for stick in left[:2]:
            answer = self._send(client, "post", f"{self.where}/cut-sticks", {"sticks": [stick["name"]]})
            if answer.status_code == 201:
                self.cut[stick["name"]] = stick
            else:
                self.wrong.append(f"{stick['name']}: {answer.status_code} {answer.text}")
        if left and self._chance.random() < 0.5:
            self._change(client, left[0])
        return bool(left)

    def _change(self, client: httpx.Client, stick: dict[str, Any]) -> None:
        if self._chance.random() < 0.5:
            piece = {name: stick["pieces"][0][name] for name in ("opening", "piece", "instance")}
            body = {"pieces": [{**piece, "state": "spoiled"}]}
            self._send(client, "post", f"{self.where}/work", body)
        else:
            address = f"{self.where}/openings/W{self._chance.randrange(4)}"
            tag = {"if-match": self._send(client, "get", address).headers["etag"]}
            mark = address.rsplit("/", 1)[1]
            # A remeasure that was done before it was answered is refused the second time: it was done.
            self._send(client, "put", address, opening(mark, str(self._chance.randint(20, 50))), tag)

    def _account(self, client: httpx.Client) -> None:
        """What of the acknowledged sticks is not there just once."""
        there: list[dict[str, Any]] = []
        page = f"{self.where}/work?limit=500"
        there += self._send(client, "get", page).json()["items"]
        found = Counter((one["stick"], one["opening"], one["piece"], one["instance"]) for one in there)
        wanted = Counter(
            (name, piece["opening"], piece["piece"], piece["instance"])
            for name, stick in self.cut.items()
            for piece in stick["pieces"]
        )
        if found != wanted:
            self.wrong.append(f"{self.where}: lost {wanted - found}, doubled {found - wanted}")
        listed = self._send(client, "get", f"{self.where}/plans?limit=500").json()["items"]
        if len({one["number"] for one in listed}) != len(listed):
            self.wrong.append(f"{self.where}: two plans of one number")
        if not self.plans <= {one["number"] for one in listed}:
            self.wrong.append(f"{self.where}: a plan that was acknowledged is gone")

    def _send(
        self,
        client: httpx.Client,
        method: str,
        address: str,
        body: dict[str, Any] | None = None,
        headers: dict[str, str] | None = None,
    ) -> httpx.Response:
        """Ask until there is an answer, with the same key each time."""
        self._keys += 1
        own = {**(headers or {})}
        if method == "post" and not address.endswith("/plans"):
            own["idempotency-key"] = f"c{self.number}-{self._keys}"
        while True:
            try:
                answer = client.request(method, address, json=body, headers=own)
                if answer.status_code != 503:
                    return answer
                self.busy[answer.json()["detail"]] += 1
            except httpx.ConnectError:
                pass
            except httpx.TransportError:
                self.cut_off += method != "get"
            self.asked_again += 1
            time.sleep(0.05)


def soak(address: str, kills: int, cutters: int, port: int, seed: int) -> dict[str, Any]:
    """Run it against a migrated database; gives what was counted, and under "wrong" all that was wrong."""
    chance = random.Random(seed)
    server = Server(address, port)
    server.start()
    over = threading.Event()
    clients = [Cutter(server.url, number, over) for number in range(cutters)]
    cut = 0
    try:
        for client in clients:
            client.start()
        for _ in range(kills):
            time.sleep(chance.uniform(0.05, 1.8))
            server.kill()
            server.start()
        over.set()
        for client in clients:
            client.join(120)
        wrong = [line for client in clients for line in client.wrong]
        wrong += [f"cutter {client.number} never ended" for client in clients if client.is_alive()]
    finally:
        server.kill()
    found, houses, cut = asyncio.run(_check(address))
    return {
        "kills": kills,
        "houses": houses,
        "pieces": cut,
        "writes_cut_off": sum(client.cut_off for client in clients),
        "asked_again": sum(client.asked_again for client in clients),
        "busy": dict(sum((client.busy for client in clients), Counter())),
        "wrong": wrong + found,
    }


async def _check(address: str) -> tuple[list[str], int, int]:
    from sqlalchemy import func, select

    from longpoint.schedules.models import PieceRecord, Schedule

    store = Store(address)
    try:
        async with store.reading() as connection:
            houses = (await connection.execute(select(func.count()).select_from(Schedule))).scalar_one()
            pieces = (await connection.execute(select(func.count()).select_from(PieceRecord))).scalar_one()
        return await check_store(store), houses, pieces
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
    parser.add_argument("--cutters", type=int, default=3)
    parser.add_argument("--port", type=int, default=8766)
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
        counted = soak(address, chosen.kills, chosen.cutters, chosen.port, chosen.seed)
    print({**counted, "seconds": round(time.monotonic() - started)})
    return 1 if counted["wrong"] else 0


if __name__ == "__main__":
    sys.exit(main())
