"""Requests a second of one operation, beside a bare Litestar and msgspec echo of the same body.

Both are served by one worker on loopback and driven in turn, in many short rounds, by the same light generator
over kept-alive connections; the bodies differ from one request to the next. A ratio is the middle one of the ratios
within each round, since the speed of a machine that others use drifts from one round to the next. Run from the
repository's top:

    PYTHONPATH=service python tests/bench/echo.py --path /v1/lengths --body tests/bench/lengths.json
"""

import argparse
import asyncio
import json
import os
import re
import socket
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from functools import cache
from pathlib import Path
from random import Random
from types import UnionType
from typing import Annotated, Any, NamedTuple, Union, get_args, get_origin, get_type_hints

import msgspec
import uvicorn
import uvloop
from litestar import Litestar, post
from litestar.handlers import HTTPRouteHandler
from litestar.params import JSONBody
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

from longpoint.api.http.operation import operation
from longpoint.api.routes import OPERATIONS
from longpoint.app import create_app_from_environment
from longpoint.lengths import Length
from longpoint.server import Protocol
from longpoint.values import Cents

KINDS = ("bare echo", "framed echo", "service")
ECHO = "/echo"
BODIES = 5000
_A_READING = re.compile(r"(\d{2,}) ?(?:\d+/\d+)? in")


@cache
def _twin(record: type[msgspec.Struct]) -> Any:
    """A record with the same fields, its lengths and money plain text: what a bare msgspec reads and writes."""
    hints = get_type_hints(record, include_extras=True)
    fields: list[Any] = []
    for field in msgspec.structs.fields(record):
        type_ = plain(hints[field.name])
        if field.required:
            fields.append((field.name, type_))
        elif isinstance(field.default, msgspec.Struct):
            inner = (
                type_ if isinstance(type_, type) else next(t for t in get_args(type_) if isinstance(t, type))
            )
            fields.append((field.name, type_, inner()))
        else:
            default = field.default
            text = default.text if isinstance(default, Length) else default
            fields.append((field.name, type_, [] if isinstance(text, list | tuple) else text))
    return msgspec.defstruct(record.__name__, fields, frozen=True, kw_only=True, forbid_unknown_fields=True)


def plain(type_: Any) -> Any:
    """A type of the service as a bare msgspec has it."""
    if get_origin(type_) is Annotated:
        inner, *metas = get_args(type_)
        return Annotated[(plain(inner), *metas)]
    if get_origin(type_) is tuple:
        return list[plain(get_args(type_)[0])]  # type: ignore[misc]
    if get_origin(type_) in (Union, UnionType):
        return Union[tuple(map(plain, get_args(type_)))]  # noqa: UP007
    if isinstance(type_, type) and issubclass(type_, Length | Cents):
        return Annotated[str, msgspec.Meta(min_length=1, max_length=64)]
    if isinstance(type_, type) and issubclass(type_, msgspec.Struct):
        return _twin(type_)
    return type_


def echo_of(path: str) -> HTTPRouteHandler:
    """A handler that decodes a body as the operation at a path does, and sends it back."""
    handler = next(each for each in OPERATIONS if path in each.paths)
    body = plain(get_type_hints(handler.fn)["data"])

    async def echo(data: Any) -> Any:
        return data

    echo.__annotations__ = {
        "data": JSONBody[body],  # type: ignore[valid-type, misc, unused-ignore]
        "return": body,
    }
    return post(ECHO, **operation("echo_body", summary="Echo", tag="Bench"))(echo)


def serve(kind: str, path: str, port: int) -> None:
    """Serve one kind of application until killed."""
    if kind == "bare echo":
        app = Litestar([echo_of(path)], openapi_config=None, logging_config=None)
    else:
        app = create_app_from_environment()
        app.register(echo_of(path))
    # Each as it is served for real: the service by its own protocol, as `python -m longpoint serve` does.
    protocol = HttpToolsProtocol if kind == "bare echo" else Protocol
    uvicorn.run(app, port=port, loop="uvloop", http=protocol, ws="none", access_log=False, log_level="error")


def varied(body: Any, turn: int, *, fresh: bool) -> Any:
    """The body with each reading of ten inches or more moved to a 64th drawn by lot, or to one never seen."""
    lot = Random(turn)

    def change(value: Any) -> Any:
        if isinstance(value, dict):
            return {key: change(inner) for key, inner in value.items()}
        if isinstance(value, list):
            return [change(inner) for inner in value]
        if isinstance(value, str) and (found := _A_READING.fullmatch(value)):
            if fresh:
                return f"{found[1]}.{lot.randrange(1_000_000):06d} in"
            return f"{found[1]} {lot.randrange(64)}/64 in"
        return value

    return change(body)


def request_bytes(path: str, body: Any) -> bytes:
    """One HTTP request, ready to send."""
    encoded = json.dumps(body, separators=(",", ":")).encode()
    head = f"POST {path} HTTP/1.1\r\nhost: 127.0.0.1\r\naccept: */*\r\ncontent-type: application/json\r\n"
    return f"{head}content-length: {len(encoded)}\r\n\r\n".encode() + encoded


class Driver(asyncio.Protocol):
    """One kept-alive connection that sends the next request as soon as the last is answered."""

    def __init__(self, next_request: Callable[[], bytes]) -> None:
        self.next_request = next_request
        self.answered = 0
        self.refused: bytes = b""
        self.pending = b""

    def connection_made(self, transport: Any) -> None:
        self.transport = transport
        transport.write(self.next_request())

    def data_received(self, data: bytes) -> None:
        data = self.pending + data
        head, found, rest = data.partition(b"\r\n\r\n")
        at = head.find(b"content-length: ")
        if not found or len(rest) < int(head[at + 16 :].split(b"\r\n", 1)[0]):
            self.pending = data
            return
        self.pending = b""
        if head[9:12] != b"200":
            self.refused = data[:1500]
        self.answered += 1
        self.transport.write(self.next_request())


class Round(NamedTuple):
    """What one round measured: requests a second, and the server's own CPU microseconds for each."""

    rate: float
    cpu: float


def cpu_seconds(pid: int) -> float:
    """CPU time a process has used so far; steadier than the clock on a machine that others use too."""
    fields = Path(f"/proc/{pid}/stat").read_text().rpartition(") ")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


async def drive(pid: int, port: int, requests: list[bytes], connections: int, seconds: float) -> Round:
    """Drive one server for some seconds."""
    turn = iter(range(10**9))
    loop = asyncio.get_running_loop()
    drivers = [Driver(lambda: requests[next(turn) % len(requests)]) for _ in range(connections)]
    for driver in drivers:
        await loop.create_connection(lambda driver=driver: driver, "127.0.0.1", port)  # type: ignore[misc]
    await asyncio.sleep(0.2)
    before, start, cpu = sum(driver.answered for driver in drivers), time.perf_counter(), cpu_seconds(pid)
    await asyncio.sleep(seconds)
    answered = sum(driver.answered for driver in drivers) - before
    measured = Round(answered / (time.perf_counter() - start), (cpu_seconds(pid) - cpu) / answered * 1e6)
    for driver in drivers:
        driver.transport.close()
    if refused := next((driver.refused for driver in drivers if driver.refused), b""):
        raise SystemExit(f"an answer was not 200:\n{refused.decode(errors='replace')}")
    return measured


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


def start(kind: str, path: str) -> tuple[subprocess.Popen[bytes], int]:
    """Start a server process and wait until it listens."""
    port = free_port()
    process = subprocess.Popen(
        [sys.executable, __file__, "--path", path, "--serve", kind, "--port", str(port)],
        stderr=subprocess.DEVNULL,
        env={"LONGPOINT_DATABASE": "", **os.environ},
    )
    for _ in range(200):
        with socket.socket() as probe:
            if probe.connect_ex(("127.0.0.1", port)) == 0:
                return process, port
        time.sleep(0.05)
    raise SystemExit(f"the {kind} did not start")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--path", default="/v1/lengths")
    parser.add_argument("--body", default="tests/bench/lengths.json")
    parser.add_argument("--fresh", action="store_true", help="never send the same reading twice")
    parser.add_argument("--seconds", type=float, default=1, help="of each round")
    parser.add_argument("--rounds", type=int, default=15)
    parser.add_argument("--connections", type=int, default=16)
    parser.add_argument("--serve", choices=KINDS, help=argparse.SUPPRESS)
    parser.add_argument("--port", type=int, help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    if chosen.serve:
        serve(chosen.serve, chosen.path, chosen.port)
        return
    with open(chosen.body, encoding="utf-8") as file:
        body = json.load(file)
    bodies = [varied(body, turn, fresh=chosen.fresh) for turn in range(BODIES)]
    rounds: dict[str, list[Round]] = {kind: [] for kind in KINDS}
    servers = {kind: start(kind, chosen.path) for kind in KINDS}
    requests = {
        kind: [request_bytes(chosen.path if kind == "service" else ECHO, each) for each in bodies]
        for kind in KINDS
    }
    try:
        for turn in range(chosen.rounds):
            # There and back, so that none always comes after the same other.
            order = list(servers.items())
            for kind, (process, port) in order if turn % 2 == 0 else reversed(order):
                drove = drive(process.pid, port, requests[kind], chosen.connections, chosen.seconds)
                rounds[kind].append(uvloop.run(drove))
    finally:
        for process, _ in servers.values():
            process.terminate()
            process.wait()
    print(
        f"{chosen.path}, {len(set(map(repr, bodies)))} different bodies of about "
        f"{len(json.dumps(body, separators=(',', ':')))} bytes"
    )
    for kind in KINDS:
        rate, cpu = map(statistics.median, zip(*rounds[kind], strict=True))
        pairs = list(zip(rounds[kind], rounds["bare echo"], strict=True))
        faster = statistics.median(own.rate / bare.rate for own, bare in pairs)
        cheaper = statistics.median(bare.cpu / own.cpu for own, bare in pairs)
        print(
            f"{kind:<12} {rate:>9,.0f} requests/s, ratio {faster:.2f}"
            f"   server CPU {cpu:>7.1f} us each, ratio {cheaper:.2f}"
        )


if __name__ == "__main__":
    main()
