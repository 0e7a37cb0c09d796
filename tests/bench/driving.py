"""Callers for the load command: requests at set times over kept connections, each answer timed from when it was due."""

import asyncio
import json
import random
import ssl
import statistics
import time
import uuid
from collections import Counter
from pathlib import Path
from typing import NamedTuple

MOST_CONNECTIONS = 150
"""Beyond these a request waits for one, and its wait is counted; the proxy lets one address have 200."""
_HERE = Path(__file__).parent
_OPENING = json.loads((_HERE / "opening.json").read_text())
_LENGTHS = json.loads((_HERE / "lengths.json").read_text())


class Target(NamedTuple):
    """Where requests go: the proxy's port, what its certificate is trusted by, and a key."""

    port: int
    trust: ssl.SSLContext
    key: str


class Answer(NamedTuple):
    """A status (0 when the connection broke), what Retry-After said, and the body."""

    status: int
    retry_after: float
    body: bytes


class Caller:
    """Sends requests over as many connections as it needs."""

    def __init__(self, target: Target) -> None:
        self._target = target
        self._idle: list[tuple[asyncio.StreamReader, asyncio.StreamWriter]] = []
        self._room = asyncio.Semaphore(MOST_CONNECTIONS)

    async def connect(self) -> None:
        """Open every connection, so that no round pays for greetings."""
        for _ in range(MOST_CONNECTIONS - len(self._idle)):
            self._idle.append(await self._connect())

    async def ask(self, method: str, path: str, body: bytes = b"", headers: str = "") -> Answer:
        """Send a request and read its answer."""
        head = (
            f"{method} {path} HTTP/1.1\r\nhost: localhost\r\nauthorization: Bearer {self._target.key}\r\n"
            f"content-type: application/json\r\ncontent-length: {len(body)}\r\n{headers}\r\n"
        )
        async with self._room:
            try:
                async with asyncio.timeout(30):
                    reader, writer = await self._free()
                    writer.write(head.encode() + body)
                    answer, keep = await _read(reader)
            except (OSError, EOFError, TimeoutError, asyncio.IncompleteReadError, ssl.SSLError):
                return Answer(0, 1.0, b"")
            if keep:
                self._idle.append((reader, writer))
            else:
                writer.close()
            return answer

    async def _free(self) -> tuple[asyncio.StreamReader, asyncio.StreamWriter]:
        """An idle connection that the proxy has not closed meanwhile, or a new one."""
        while self._idle:
            reader, writer = self._idle.pop()
            if not reader.at_eof():
                return reader, writer
            writer.close()
        return await self._connect()

    async def _connect(self) -> tuple[asyncio.StreamReader, asyncio.StreamWriter]:
        return await asyncio.open_connection(
            "127.0.0.1", self._target.port, ssl=self._target.trust, server_hostname="localhost"
        )

    def close(self) -> None:
        """Close what is idle."""
        for _, writer in self._idle:
            writer.close()
        self._idle.clear()


async def _read(reader: asyncio.StreamReader) -> tuple[Answer, bool]:
    head = (await reader.readuntil(b"\r\n\r\n")).lower()
    fields = dict(line.split(b": ", 1) for line in head.split(b"\r\n")[1:-2])
    if fields.get(b"transfer-encoding") == b"chunked":
        body = b""
        while size := int(await reader.readline(), 16):
            body += await reader.readexactly(size)
            await reader.readline()
        await reader.readline()
    else:
        body = await reader.readexactly(int(fields.get(b"content-length", b"0")))
    answer = Answer(int(head[9:12]), float(fields.get(b"retry-after", b"0")), body)
    return answer, fields.get(b"connection") != b"close"


class Mix:
    """80 % computations, 15 % reads and 5 % writes, and what was acknowledged of the writes.

    Args:
        caller: Sends them.
        schedules: Where openings are read and added.
    """

    def __init__(self, caller: Caller, schedules: list[str]) -> None:
        self._caller = caller
        self._schedules = schedules
        self._draw = random.Random(1)
        self._count = 0
        self.acknowledged: dict[str, set[str]] = {where: set() for where in schedules}
        self.unknown: dict[str, set[str]] = {where: set() for where in schedules}

    async def one(self, *, patient: bool = False) -> int:
        """Send one request of the mix and give its status.

        Args:
            patient: Whether to send again what was turned away or broken off, as a client does: a write under the same
                Idempotency-Key.
        """
        kind, where = self._draw.random(), self._draw.choice(self._schedules)
        self._count += 1
        headers = ""
        if kind < 0.6:
            readings = {**_OPENING["readings"], "jamb_width": f"{20 + self._count % 300 / 8} in"}
            method, path, sent = "POST", "/v1/opening", {**_OPENING, "readings": readings}
        elif kind < 0.8:
            method, path, sent = "POST", "/v1/lengths", _LENGTHS
        elif kind < 0.95:
            method, path, sent = "GET", f"{where}{self._draw.choice(['', '/openings?limit=20'])}", None
        else:
            mark = f"w{self._count}"
            method, path = "POST", f"{where}/openings"
            sent = {"mark": mark, "trim": "painted", "readings": _OPENING["readings"]}
            headers = f'idempotency-key: "{uuid.uuid4()}"\r\n'
            self.unknown[where].add(mark)
        body = b"" if sent is None else json.dumps(sent).encode()
        for attempt in range(40 if patient else 1):
            answer = await self._caller.ask(method, path, body, headers)
            if answer.status not in (0, 429, 503):
                break
            if patient:
                await asyncio.sleep(answer.retry_after * (0.5 + self._draw.random()) if attempt else 0.05)
        if headers and answer.status != 0:
            self.unknown[where].discard(mark)
            if answer.status == 201:
                self.acknowledged[where].add(mark)
        return answer.status


class Round(NamedTuple):
    """What one round measured.

    Attributes:
        rate: Requests a second that were asked for.
        throughput: Requests a second that were done.
        p50: Of the milliseconds of those, from when each was due.
        p99: As above.
        statuses: How many there were of each.
    """

    rate: float
    throughput: float
    p50: float
    p99: float
    statuses: Counter[int]

    def __str__(self) -> str:
        said = ", ".join(f"{status or 'broken'}: {count}" for status, count in sorted(self.statuses.items()))
        return (
            f"{self.rate:>7,.0f}/s asked {self.throughput:>8,.0f}/s done   p50 {self.p50:>7.1f} ms"
            f"   p99 {self.p99:>7.1f} ms   {said}"
        )

    @property
    def turned_away(self) -> float:
        """The share that was not done."""
        done = sum(count for status, count in self.statuses.items() if 200 <= status < 300)
        return 1 - done / max(1, self.statuses.total())


def middle(rounds: list[Round]) -> Round:
    """The middle of several rounds at one rate, each figure by itself: one hiccup of the machine is in none of them."""
    throughput, p50, p99 = (
        statistics.median(getattr(each, name) for each in rounds) for name in ("throughput", "p50", "p99")
    )
    statuses: Counter[int] = sum((each.statuses for each in rounds), Counter())
    return Round(rounds[0].rate, throughput, p50, p99, statuses)


async def drive(mix: Mix, rate: float, seconds: float, *, patient: bool = False) -> Round:
    """Send the mix at a rate, each request when it is due, whether those before were answered or not."""
    statuses: Counter[int] = Counter()
    times: list[float] = []

    async def one(due: float) -> None:
        status = await mix.one(patient=patient)
        statuses[status] += 1
        if 200 <= status < 300:
            times.append(time.perf_counter() - due)

    start = time.perf_counter()
    sent: list[asyncio.Task[None]] = []
    while (due := start + len(sent) / rate) < start + seconds:
        if (wait := due - time.perf_counter()) > 0:
            await asyncio.sleep(wait)
        sent.append(asyncio.create_task(one(due)))
    await asyncio.gather(*sent)
    took = time.perf_counter() - start
    times.sort()
    p50, p99 = ((times[int(len(times) * piece)] * 1000 if times else float("nan")) for piece in (0.5, 0.99))
    return Round(rate, len(times) / took, p50, p99, statuses)
