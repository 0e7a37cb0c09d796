"""Ids, moments and digests."""

import hashlib
import secrets
import threading
import time
from datetime import UTC, datetime

_ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz"


_RANDOM = 80
"""Bits of an id below its millisecond."""


class _Ids:
    """Numbers of ids, each above the one before, as ULID has it: what one request adds is kept in its order."""

    def __init__(self) -> None:
        self._last = 0
        self._lock = threading.Lock()

    def next(self) -> int:
        fresh = time.time_ns() // 1_000_000 << _RANDOM | secrets.randbits(_RANDOM)
        with self._lock:
            self._last = fresh if fresh > self._last else self._last + 1 + secrets.randbits(_RANDOM // 2)
            return self._last


_ids = _Ids()


def new_id() -> str:
    """A new opaque id of 26 letters and digits; ids that a process makes later sort later."""
    number = _ids.next()
    return "".join(_ALPHABET[number >> shift & 31] for shift in range(125, -1, -5))


def moment(seconds_from_now: float = 0) -> str:
    """A moment as RFC 3339 text in UTC with microseconds: all of one length, so they sort as text."""
    when = datetime.fromtimestamp(time.time() + seconds_from_now, UTC)
    return when.isoformat(timespec="microseconds").replace("+00:00", "Z")


def digest_of(*fields: object) -> str:
    """SHA-256 of some fields, each with its length in front so that none can run into the next."""
    whole = hashlib.sha256()
    for field in fields:
        data = b"\0none" if field is None else str(field).encode()
        whole.update(b"%d:" % len(data))
        whole.update(data)
    return whole.hexdigest()
