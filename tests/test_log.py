"""What is written about a database that is away: once in a while, with a count, not once a request."""

import logging
from typing import Any

import pytest

from longpoint import log


class Kept(logging.Handler):
    """Keeps the texts it is given."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.texts.append(record.getMessage())


def test_a_line_that_comes_again_and_again_is_written_once_in_ten_seconds(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    now = [1000.0]
    monkeypatch.setattr(log, "monotonic", lambda: now[0])
    logger, kept = logging.Logger("storage"), Kept()
    logger.addHandler(kept)
    logger.addFilter(log.Repeats())
    for _ in range(1000):
        logger.error("storage: %s", "refused")
        now[0] += 0.001
    logger.error("storage: %s", "the disk is full")
    now[0] += 10
    logger.error("storage: %s", "refused")
    logger.error("storage: %s", "refused")
    assert kept.texts == [
        "storage: refused",
        "storage: the disk is full",
        "storage: refused (999 more times since it was last written)",
    ]


def test_the_filter_stands_at_the_logger_that_tells_of_storage() -> None:
    configured: dict[str, Any] = log.configuration("info")
    (name,) = configured["loggers"]["longpoint.storage"]["filters"]
    assert configured["filters"][name]["()"] is log.Repeats
