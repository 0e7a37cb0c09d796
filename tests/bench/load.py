"""Load and faults: what two replicas behind the proxy bear, and that nothing acknowledged is lost when pieces fail.

    python tests/bench/load.py

Starts PostgreSQL, two replicas and nginx with TLS as they are deployed, on loopback. A mix of 80 % computations, 15 %
reads and 5 % writes comes at rising rates until latency bends, then at twice that; each figure is the middle of three
rounds. Then a replica is killed, PostgreSQL is stopped for ten seconds, and oversized and slow requests flood in, while
honest callers go on, who send again what was turned away. At the end every acknowledged write must be there, once, and
the database check clean. Takes about five minutes; ends with status 1 when something was lost.

The replicas share the machine's first core, and callers, proxy and database the others: what bends is the service then,
not the callers, who elsewhere have machines of their own.
"""

import argparse
import asyncio
import json
import os
import ssl
import sys
import time
from collections.abc import Awaitable, Callable
from pathlib import Path

import uvloop

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests"), str(ROOT / "tests/bench")]

from driving import Caller, Mix, Round, Target, drive, middle  # type: ignore[import-not-found, import-untyped, unused-ignore]  # noqa: E402

import databases  # type: ignore[import-not-found, import-untyped, unused-ignore]  # noqa: E402
import deployment  # type: ignore[import-not-found, import-untyped, unused-ignore]  # noqa: E402
from stored import house  # type: ignore[import-not-found, import-untyped, unused-ignore]  # noqa: E402

Fault = Callable[[], Awaitable[None]]
SCHEDULES = 20


async def measured(mix: Mix, rate: float, seconds: float) -> Round:
    """The middle of three rounds."""
    return middle([await drive(mix, rate, seconds) for _ in range(3)])


async def bend(mix: Mix, seconds: float) -> tuple[Round, float, float]:
    """The unloaded round, the highest rate borne, and the one at which it bends.

    A rate is borne where neither p99 nor p50 is twice the unloaded one, and next to nothing is left undone.
    """
    await drive(mix, 100, 2 * seconds)  # warms up
    unloaded = await measured(mix, 20, 2 * seconds)
    print(f"unloaded   {unloaded}")

    def bent(found: Round) -> bool:
        return bool(
            found.p99 > 2 * unloaded.p99
            or found.p50 > 2 * unloaded.p50
            or found.throughput < 0.95 * found.rate
        )

    borne, rate = 20.0, 100.0
    while rate < 20_000:
        found = await drive(mix, rate, seconds)
        if bent(found):
            found = middle([found, await drive(mix, rate, seconds), await drive(mix, rate, seconds)])
        print(f"rising     {found}")
        if bent(found):
            break
        borne, rate = rate, rate * 1.25
    return unloaded, borne, rate


async def with_fault(name: str, mix: Mix, rate: float, seconds: float, fault: Fault) -> Round:
    """Honest callers, while something fails."""
    driving = asyncio.create_task(drive(mix, rate, seconds, patient=True))
    await asyncio.sleep(1)
    await fault()
    found = await driving
    print(f"{name:<10} {found}")
    return found


async def flood(port: int, trust: ssl.SSLContext, seconds: float) -> None:
    """Bodies of 9 MB from some callers, and heads and bodies that come a byte at a time from others."""
    ends = time.monotonic() + seconds
    counts = {"oversized": 0, "slow": 0}

    async def oversized() -> None:
        body = b" " * 9_000_000
        head = f"POST /v1/lengths HTTP/1.1\r\nhost: localhost\r\ncontent-length: {len(body)}\r\n\r\n"
        while time.monotonic() < ends:
            await attempt(head.encode() + body, 0, "oversized")

    async def slow(head: bytes) -> None:
        while time.monotonic() < ends:
            await attempt(head + b"x" * 1000, 1, "slow")

    async def attempt(data: bytes, step: int, kind: str) -> None:
        try:
            reader, writer = await asyncio.open_connection(
                "127.0.0.1", port, ssl=trust, server_hostname="localhost"
            )
            counts[kind] += 1
            for at in range(0, len(data), step or len(data)):
                if time.monotonic() > ends:
                    break
                writer.write(data[at : at + (step or len(data))])
                await writer.drain()
                if step:
                    await asyncio.sleep(0.1)
            if not step:
                await asyncio.wait_for(reader.read(100), 10)
            writer.close()
        except (OSError, EOFError, TimeoutError, ssl.SSLError):
            await asyncio.sleep(0.1)

    slow_head = b"POST /v1/lengths HTTP/1.1\r\nx: "
    slow_body = b"POST /v1/lengths HTTP/1.1\r\nhost: localhost\r\ncontent-length: 100000\r\n\r\n"
    await asyncio.gather(
        *(oversized() for _ in range(2)),
        *(slow(slow_head) for _ in range(20)),
        *(slow(slow_body) for _ in range(20)),
    )
    print(f"           {counts['oversized']} oversized and {counts['slow']} slow requests came in between")


async def new_schedule(caller: Caller) -> str:
    """The id of a house made for the mix; asked for again while the replicas, just started, turn it away."""
    while (answer := await caller.ask("POST", "/v1/schedules", json.dumps(house()).encode())).status == 503:
        await asyncio.sleep(answer.retry_after)
    return str(json.loads(answer.body)["id"])


async def run(running: deployment.Deployment, seconds: float) -> list[str]:
    """The whole of it; gives what was wrong."""
    key = deployment.longpoint("keys", "create", "--name", "load", "--database", running.database)
    port = int(running.address.rpartition(":")[2])
    caller = Caller(Target(port, running.trust, key))
    made = [await new_schedule(caller) for _ in range(SCHEDULES)]
    mix = Mix(caller, [f"/v1/schedules/{id}" for id in made])
    wrong = []
    unloaded, borne, bends = await bend(mix, seconds)
    print(f"bends      at {bends:,.0f}/s; {borne:,.0f}/s is borne")
    await caller.connect()
    twice = await measured(mix, 2 * bends, seconds)
    print(f"twice      {twice}")
    print(
        f"           p99 of what was accepted is {twice.p99 / unloaded.p99:.1f} times the unloaded p99; "
        f"{100 * twice.turned_away:.0f} % was turned away"
    )
    if set(twice.statuses) - {200, 201, 429, 503}:
        wrong.append(f"under twice the load something else was answered than 429 or 503: {twice.statuses}")
    half = borne / 3

    async def kill() -> None:
        running.replicas[0].kill()
        await asyncio.sleep(5)
        await asyncio.to_thread(running.replicas[0].start)

    async def stop_database() -> None:
        await asyncio.to_thread(running.server.stop)
        await asyncio.sleep(10)
        await asyncio.to_thread(running.server.ensure_postgres_running)

    faults: dict[str, tuple[float, Fault]] = {
        "killed": (12.0, kill),
        "no database": (16.0, stop_database),
        "flooded": (10.0, lambda: flood(port, running.trust, 8)),
    }
    for name, (lasts, fault) in faults.items():
        found = await with_fault(name, mix, half, lasts, fault)
        if found.turned_away:
            wrong.append(f"{name}: an honest caller that asked again was not answered: {found.statuses}")
    wrong += await account(caller, mix)
    caller.close()
    return wrong


async def account(caller: Caller, mix: Mix) -> list[str]:
    """Whether what was acknowledged is there, once."""
    wrong = []
    kept = 0
    for where, acknowledged in mix.acknowledged.items():
        marks: list[str] = []
        path = f"{where}/openings?limit=500"
        while path:
            page = json.loads((await caller.ask("GET", path)).body)
            marks += [one["mark"] for one in page["items"]]
            path = f"{where}/openings?limit=500&cursor={page['next']}" if page["next"] else ""
        kept += len(marks)
        if lost := acknowledged - set(marks):
            wrong.append(f"{where}: {len(lost)} acknowledged writes are lost")
        if len(marks) != len(set(marks)):
            wrong.append(f"{where}: a write was done twice")
        if strays := set(marks) - acknowledged - mix.unknown[where]:
            wrong.append(f"{where}: {len(strays)} writes are there that were refused")
    print(f"accounted  {sum(map(len, mix.acknowledged.values()))} writes acknowledged, {kept} kept")
    return wrong


def main() -> int:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--seconds", type=float, default=4, help="of each round")
    parser.add_argument("--max-wait", default="0.003", help="LONGPOINT_MAX_WAIT_SECONDS of the replicas")
    parser.add_argument("--connections", default="1", help="LONGPOINT_DATABASE_CONNECTIONS of the replicas")
    chosen = parser.parse_args()
    if deployment.MISSING:
        print(f"not on this machine: {deployment.MISSING}", file=sys.stderr)
        return 2
    settings = {
        "LONGPOINT_MAX_WAIT_SECONDS": chosen.max_wait,
        "LONGPOINT_DATABASE_CONNECTIONS": chosen.connections,
        "LONGPOINT_LOG_LEVEL": "error",
    }
    first, *others = sorted(os.sched_getaffinity(0))
    os.sched_setaffinity(0, others or [first])
    with (
        databases.postgres_server() as server,
        deployment.deployed(server, [first], **settings) as running,
    ):
        wrong = uvloop.run(run(running, chosen.seconds))
        said = deployment.longpoint("check", "--database", running.database)
    print(f"check      {said}")
    if "nothing wrong" not in said:
        wrong.append(said)
    print("\n".join(wrong) or "nothing acknowledged was lost")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
