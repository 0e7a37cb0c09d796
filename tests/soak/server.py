"""The service in a process of its own, to be killed: as `longpoint serve` runs it, forked from a process that has
imported it already, so that it is back in a moment."""

import contextlib
import multiprocessing
import os
import sys
import time
from multiprocessing.process import BaseProcess

import httpx
import uvicorn

from longpoint.app import create_app
from longpoint.settings import Settings

# The process that forks does not get this one's import path in every Python: it reads this.
os.environ["PYTHONPATH"] = os.pathsep.join(sys.path)
_forks = multiprocessing.get_context("forkserver")
_forks.set_forkserver_preload(["longpoint.app", "uvicorn", "uvloop", "httptools"])


def serve(address: str, port: int) -> None:
    """Serve until killed."""
    settings = Settings(database=address, access_log=False)
    uvicorn.run(
        create_app(settings),
        port=port,
        loop="uvloop",
        http="httptools",
        log_level="critical",
        access_log=False,
    )


class Server:
    """One server, killed and started again on the same port."""

    def __init__(self, address: str, port: int) -> None:
        self.url = f"http://127.0.0.1:{port}"
        self._given = (address, port)
        self._process: BaseProcess | None = None

    def start(self) -> None:
        """Start it and wait until it answers."""
        self._process = _forks.Process(target=serve, args=self._given, daemon=True)
        self._process.start()
        while True:
            with contextlib.suppress(httpx.TransportError):
                if httpx.get(f"{self.url}/health/ready", timeout=5).status_code == 200:
                    return
            time.sleep(0.01)

    def kill(self) -> None:
        """End it with SIGKILL, whatever it is at."""
        if self._process is not None:
            self._process.kill()
            self._process.join()
