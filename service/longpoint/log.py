"""Logging: one JSON object a line, on standard error."""

import json
import logging
from datetime import UTC, datetime
from time import monotonic
from typing import Any

import msgspec

_REPEAT_SECONDS = 10.0
_MOST_TEXTS = 100
_encode = msgspec.json.Encoder().encode


def json_line(entry: dict[str, Any]) -> str:
    """An entry of the log as one line of JSON, which does nothing to a terminal that shows it.

    Plain JSON may hold what starts a new line or a terminal's command beyond ASCII, or turns the text after it around.
    """
    try:
        line = _encode(entry).decode()
    except UnicodeEncodeError:  # half a character
        line = ""
    return line if line and line.isprintable() else json.dumps(entry).replace("\x7f", "\\u007f")


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
        return json_line(line)


class Repeats(logging.Filter):
    """Lets the same line through once in ten seconds: a database that is away would fill the log, a line a request."""

    def __init__(self) -> None:
        super().__init__()
        self._said: dict[str, tuple[float, int]] = {}

    def filter(self, record: logging.LogRecord) -> bool:
        """Whether a line is written; it then says how many like it were left out before."""
        text = record.getMessage()
        when, left_out = self._said.get(text, (-_REPEAT_SECONDS, 0))
        now = monotonic()
        if now - when < _REPEAT_SECONDS:
            self._said[text] = (when, left_out + 1)
            return False
        if len(self._said) >= _MOST_TEXTS:
            self._said.clear()
        self._said[text] = (now, 0)
        if left_out:
            record.msg, record.args = "%s (%d more times since it was last written)", (text, left_out)
        return True


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
        "filters": {"repeats": {"()": Repeats}},
        "handlers": {
            "stderr": {**stderr, "formatter": "json"},
            "lines": {**stderr, "formatter": "ready"},
        },
        "root": {"level": level.upper(), "handlers": ["stderr"]},
        "loggers": {
            "longpoint.storage": {"filters": ["repeats"]},
            "longpoint.access": {"handlers": ["lines"], "propagate": False},
            # Below these, drivers write out the values of statements: what was in a body, and hashes of keys.
            **{name: {"level": "WARNING"} for name in ("aiosqlite", "asyncpg", "sqlalchemy")},
        },
    }
