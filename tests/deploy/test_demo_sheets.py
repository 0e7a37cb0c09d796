"""The first command keeps the demo house once, and the addresses it prints are its sheets."""

import os
import re
import socket
import subprocess
import sys
from pathlib import Path
from urllib.parse import urlsplit

from stored import serving

ROOT = Path(__file__).parents[2]


def free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


def run_demo(database: str) -> str:
    ran = subprocess.run(
        [sys.executable, ROOT / "deploy/demo/trim_the_house.py", "--once", "--port", str(free_port())],
        env={**os.environ, "PYTHONPATH": str(ROOT / "service"), "LONGPOINT_DATABASE": database},
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert ran.returncode == 0, ran.stdout[-500:] + ran.stderr[-500:]
    return ran.stdout


async def test_run_twice_it_keeps_one_house_whose_sheets_open(tmp_path: Path) -> None:
    database = f"sqlite:///{tmp_path}/demo.sqlite3"
    printed = [run_demo(database) for _ in range(2)]
    assert re.search(r"^ +1 bottom casing  ", printed[0], re.MULTILINE)
    first, second = (re.findall(r"http://\S+/v1/schedules/\S+", said) for said in printed)
    paths = [urlsplit(one)._replace(scheme="", netloc="").geturl() for one in first]
    assert paths == [urlsplit(one)._replace(scheme="", netloc="").geturl() for one in second]
    assert len(paths) == 14
    async with serving(database) as service:
        (kept,) = (await service.get("/v1/schedules")).json()["items"]
        assert kept["opening_count"] == 18
        for path in paths:
            answer = await service.get(path)
            assert answer.status_code == 200, (path, answer.text)
            assert answer.content.startswith(b"%PDF-" if path.endswith("pdf") else b"<!doctype html>")
        lots = (await service.get(f"/v1/schedules/{kept['id']}/lengths")).json()["items"]
        assert [(one["length"], one["available"]) for one in lots] == [("61 in", 2)]
