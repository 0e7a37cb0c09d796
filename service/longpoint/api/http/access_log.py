"""One JSON line for each request, written in batches so that no request waits for the log."""

import asyncio
import logging
from datetime import UTC, datetime
from time import time

from longpoint.log import json_line

_EVERY_SECONDS = 0.25
_MOST_WAITING = 500


class AccessLog:
    """Collects a line for each request and hands them to a logger in batches.

    A line holds the request's id, method, path, status and duration: never a body, a query or a key.
    """

    def __init__(self, logger: logging.Logger) -> None:
        self._logger = logger
        self._waiting: list[tuple[float, bytes, str, str, int, float]] = []
        self._timer: asyncio.TimerHandle | None = None

    def note(self, request_id: bytes, method: str, path: str, status: int, seconds: float) -> None:
        """Note one answered request."""
        self._waiting.append((time(), request_id, method, path, status, seconds))
        if len(self._waiting) >= _MOST_WAITING:
            self.flush()
        elif self._timer is None:
            self._timer = asyncio.get_running_loop().call_later(_EVERY_SECONDS, self.flush)

    def flush(self) -> None:
        """Write what is waiting."""
        if self._timer:
            self._timer.cancel()
            self._timer = None
        waiting, self._waiting = self._waiting, []
        if waiting:
            self._logger.info("\n".join(_line(*entry) for entry in waiting))


def _line(when: float, request_id: bytes, method: str, path: str, status: int, seconds: float) -> str:
    return json_line(
        {
            "time": datetime.fromtimestamp(when, UTC).isoformat(timespec="milliseconds"),
            "level": "info",
            "event": "request",
            "request_id": request_id.decode(),
            "method": method,
            "path": path[:200],
            "status": status,
            "ms": round(seconds * 1000, 3),
        }
    )
