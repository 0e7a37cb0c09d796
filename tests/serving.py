"""The service as a process of its own."""

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def start(**variables: str) -> Iterator[subprocess.Popen[str]]:
    """A server process, killed at the end whatever became of the test."""
    process = subprocess.Popen(
        [sys.executable, "-m", "longpoint", "serve", "--port", "0"],
        stderr=subprocess.PIPE,
        text=True,
        env={"PATH": os.environ["PATH"], "PYTHONPATH": os.pathsep.join(sys.path), **variables},
    )
    try:
        yield process
    finally:
        process.kill()
        process.communicate()


def work(database: str, **variables: str) -> subprocess.Popen[bytes]:
    """A worker's process, to be ended by whoever starts it."""
    paths = {"PATH": os.environ["PATH"], "PYTHONPATH": os.pathsep.join(sys.path)}
    return subprocess.Popen(
        [sys.executable, "-m", "longpoint", "work"],
        stderr=subprocess.DEVNULL,
        env={**paths, "LONGPOINT_DATABASE": database, **variables},
    )


def address(process: subprocess.Popen[str], lines: list[str] | None = None) -> str:
    """Where it answers, once it says so; what it logs before is added to `lines`."""
    assert process.stderr
    for line in process.stderr:
        if lines is not None:
            lines.append(line)
        if found := re.search(r"running on (http://127\.0\.0\.1:\d+)", line):
            return found[1]
    raise AssertionError("it ended before it answered")
