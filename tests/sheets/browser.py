"""A headless Chromium, spoken to over a pair of pipes in its own debugging protocol."""

import base64
import fcntl
import json
import os
import select
import shutil
import subprocess
import tempfile
from collections import deque
from types import TracebackType
from typing import Any

import pytest

CHROMIUM = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)

needs_chromium = pytest.mark.skipif(
    CHROMIUM is None, reason="no Chromium on this machine: install Debian's chromium to run the page tests"
)

_FLAGS = (
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-extensions",
    "--remote-debugging-pipe",
)
_WATCHED = (
    "Network.requestWillBeSent",
    "Runtime.exceptionThrown",
    "Log.entryAdded",
    "Runtime.consoleAPICalled",
)


PATIENCE = 60
"""Seconds: a browser that was killed leaves helpers behind that hold the pipe open, so its end would never be read."""


class Browser:
    """One browser with one page, which notes every request it makes and every complaint it has."""

    def __enter__(self) -> "Browser":
        assert CHROMIUM is not None
        self._profile = tempfile.TemporaryDirectory()
        theirs_in, self._out = os.pipe()
        self._in, theirs_out = os.pipe()

        def hand_over() -> None:
            # The browser reads at 3 and writes at 4; both are first moved well away from there.
            read, write = (fcntl.fcntl(end, fcntl.F_DUPFD_CLOEXEC, 10) for end in (theirs_in, theirs_out))
            os.dup2(read, 3)
            os.dup2(write, 4)

        self._process = subprocess.Popen(
            [CHROMIUM, *_FLAGS, f"--user-data-dir={self._profile.name}", "about:blank"],
            preexec_fn=hand_over,
            close_fds=False,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        os.close(theirs_in)
        os.close(theirs_out)
        self._buffer = b""
        self._number = 0
        self._waiting: deque[dict[str, Any]] = deque()
        self.events: list[dict[str, Any]] = []
        target = self.ask("Target.createTarget", url="about:blank")["targetId"]
        self._session = self.ask("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        for domain in ("Page", "Network", "Runtime", "Log"):
            self.ask(f"{domain}.enable")
        return self

    _session: str | None = None

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._session = None
        os.write(self._out, b'{"id":0,"method":"Browser.close"}\0')
        self._process.wait(20)
        os.close(self._out)
        os.close(self._in)
        self._profile.cleanup()

    def ask(self, method: str, **params: Any) -> dict[str, Any]:
        """Ask for something and wait for the answer; what happens meanwhile is noted."""
        self._number += 1
        message = {"id": self._number, "method": method, "params": params}
        if self._session:
            message["sessionId"] = self._session
        os.write(self._out, json.dumps(message).encode() + b"\0")
        while True:
            answer = self._next()
            if answer.get("id") == self._number:
                assert "error" not in answer, answer
                result: dict[str, Any] = answer["result"]
                return result
            self.events.append(answer)

    def _next(self) -> dict[str, Any]:
        while b"\0" not in self._buffer:
            ready, _, _ = select.select([self._in], [], [], PATIENCE)
            assert ready, (
                f"the browser said nothing for {PATIENCE} s; its exit code is {self._process.poll()}"
            )
            chunk = os.read(self._in, 1 << 20)
            assert chunk, "the browser closed its pipe"
            self._buffer += chunk
        message, _, self._buffer = self._buffer.partition(b"\0")
        read: dict[str, Any] = json.loads(message)
        return read

    def show(self, html: str, width: int = 1200) -> None:
        """Load a page from its text, as a file on disk would be, and forget what came before."""
        self.events.clear()
        self.ask(
            "Emulation.setDeviceMetricsOverride",
            width=width,
            height=1000,
            deviceScaleFactor=1,
            mobile=width < 600,
        )
        address = "data:text/html;charset=utf-8;base64," + base64.b64encode(html.encode()).decode()
        self.ask("Page.navigate", url=address)
        while not any(event.get("method") == "Page.loadEventFired" for event in self.events):
            self.events.append(self._next())

    def run(self, script: str) -> Any:
        """The value of an expression in the page."""
        answer = self.ask("Runtime.evaluate", expression=script, returnByValue=True)
        assert "exceptionDetails" not in answer, answer
        return answer["result"].get("value")

    def printed(self) -> bytes:
        """The page as it prints, on the paper its own styles ask for."""
        return base64.b64decode(
            self.ask("Page.printToPDF", preferCSSPageSize=True, printBackground=True)["data"]
        )

    @property
    def complaints(self) -> list[str]:
        """Exceptions, console output and log entries since the page was shown."""
        return [
            json.dumps(event["params"])
            for event in self.events
            if event.get("method") in _WATCHED and event["method"] != "Network.requestWillBeSent"
        ]

    @property
    def requests(self) -> list[str]:
        """Addresses asked for since the page was shown, the page itself and what it carries inside left out."""
        return [
            event["params"]["request"]["url"]
            for event in self.events
            if event.get("method") == "Network.requestWillBeSent"
            and not event["params"]["request"]["url"].startswith("data:")
        ]
