"""Which lines of some files each test reaches, and how long it takes."""

import sys
import threading
import time
from collections.abc import Generator
from types import FrameType
from typing import Any

import pytest


class Reach:
    """A pytest plugin that notes, for every test, the lines that it ran."""

    def __init__(self, files: set[str]) -> None:
        self.files = files
        self.took: dict[str, float] = {}
        self.lines: dict[str, set[tuple[str, int]]] = {}
        self.failed: set[str] = set()

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Note a test that failed: it tells of nothing."""
        if report.failed:
            self.failed.add(report.nodeid)

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Generator[None, Any, Any]:
        """Run one test with every line of the files noted."""
        reached = self.lines[item.nodeid] = set()

        def line(frame: FrameType, event: str, value: Any) -> Any:  # noqa: ARG001
            reached.add((frame.f_code.co_filename, frame.f_lineno))
            return line

        def call(frame: FrameType, event: str, value: Any) -> Any:
            return line(frame, event, value) if frame.f_code.co_filename in self.files else None

        began = time.monotonic()
        threading.settrace(call)
        sys.settrace(call)
        try:
            return (yield)
        finally:
            sys.settrace(None)
            threading.settrace(None)
            self.took[item.nodeid] = time.monotonic() - began
