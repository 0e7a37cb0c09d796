"""What the SDK costs over httpx alone: `python tests/bench/sdk.py` from the root, with the service's and SDK's paths.

Both sides send the same request to one real service on loopback and decode the answer: httpx with the standard
library's json into dicts, the SDK from structs into structs. They take turns in one run, so that whatever else the
machine does weighs on both alike; the median of each side's rounds is compared.
"""

from __future__ import annotations

import gc
import json
import socket
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import httpx
import msgspec

from longpoint_sdk import Client, Retry, types

ROOT = Path(__file__).parents[2]
HOUSE: dict[str, Any] = json.loads((ROOT / "deploy/demo/house.json").read_text())
STOOL: dict[str, Any] = {
    "jamb_width": "30 5/8 in",
    "jamb_depth": "3 1/8 in",
    "reveal": "3/16 in",
    "casing_width": "2 1/2 in",
    "horn": "3/4 in",
    "nosing": "7/8 in",
    "apron_thickness": "5/8 in",
}
ROUNDS = 40


def main() -> None:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    address = f"http://127.0.0.1:{port}"
    service = subprocess.Popen(
        [sys.executable, "-m", "longpoint", "serve", "--port", str(port)],
        env={
            "PYTHONPATH": str(ROOT / "service"),
            "LONGPOINT_ACCESS_LOG": "false",
            "LONGPOINT_DATABASE": "",
            "LONGPOINT_LOG_LEVEL": "warning",
        },
    )
    try:
        with httpx.Client(timeout=30.0) as http, Client(address) as client:
            client.with_options(retry=Retry(times=60, first=0.1, longest=0.5)).check_ready()
            stool = msgspec.convert(STOOL, types.StoolRequest)
            house = msgspec.convert(HOUSE, types.CutListRequest)

            def raw(path: str, body: dict[str, Any]) -> Callable[[], Any]:
                def send() -> Any:
                    answer = http.post(address + path, json=body)
                    answer.raise_for_status()
                    return answer.json()

                return send

            compare("a stool", 25, raw("/v1/stool", STOOL), lambda: client.compute_stool(stool))
            compare("the demo house", 1, raw("/v1/cut-list", HOUSE), lambda: client.compute_cut_list(house))
    finally:
        service.terminate()
        service.wait()


def compare(name: str, times: int, raw: Callable[[], Any], sdk: Callable[[], Any]) -> None:
    """Time both sides by turns, and print what the SDK adds."""
    sides = {"httpx": raw, "sdk": sdk}
    taken: dict[str, list[float]] = {side: [] for side in sides}
    for send in sides.values():
        send()
    gc.disable()
    for turn in range(ROUNDS):
        for side in sorted(sides, reverse=bool(turn % 2)):
            started = time.perf_counter()
            for _ in range(times):
                sides[side]()
            taken[side].append((time.perf_counter() - started) / times)
        gc.collect()
    gc.enable()
    alone, with_sdk = (statistics.median(taken[side]) * 1000 for side in ("httpx", "sdk"))
    added = (with_sdk / alone - 1) * 100
    print(f"{name}: httpx {alone:.3f} ms, SDK {with_sdk:.3f} ms, {added:+.1f} %")


if __name__ == "__main__":
    main()
