"""Logging: one JSON object a line, on standard error."""

import logging
from datetime import UTC, datetime
from typing import Any

import msgspec

_encode = msgspec.json.Encoder().encode


class JsonFormatter(logging.Formatter):
    """Writes a record as one line of JSON."""

    def format(self, record: logging.LogRecord) -> str:
        line = {
            "time": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "level": record.levelname.lower(),
            "event": record.name,
            "message": record.getMessage(),
        }
        if record.exc_info:
            line["trace"] = self.formatException(record.exc_info)
        return _encode(line).decode("utf-8", "replace")


def configuration(level: str) -> dict[str, Any]:
    """Settings for logging.config.dictConfig.

    Args:
        level: Least severe level that is written.
    """
    stderr = {"class": "logging.StreamHandler", "stream": "ext://sys.stderr"}
    return {
        "version": 1,
        "disable_existing_loggers": False,
        "formatters": {
            "json": {"()": JsonFormatter},
            "ready": {"format": "%(message)s"},  # access lines come as JSON already
        },
        "handlers": {
            "stderr": {**stderr, "formatter": "json"},
            "lines": {**stderr, "formatter": "ready"},
        },
        "root": {"level": level.upper(), "handlers": ["stderr"]},
        "loggers": {
            "longpoint.access": {"handlers": ["lines"], "propagate": False},
            # Below these, drivers write out the values of statements: what was in a body, and hashes of keys.
            **{name: {"level": "WARNING"} for name in ("aiosqlite", "asyncpg", "sqlalchemy")},
        },
    }
