"""When a request is sent again, and after how long."""

from __future__ import annotations

import random
from datetime import datetime, timezone

import msgspec

_ALWAYS_WORTH_IT = frozenset({408, 429})


class Retry(msgspec.Struct, frozen=True, kw_only=True):
    """How a request that failed is sent again; only ever one that is safe to send again.

    It failed for a passing reason: no answer came, or one of 408, 429, 5xx, or 409 with Retry-After.

    Attributes:
        times: How often it is sent again at most; 0 never.
        first: Seconds before the first time, doubled each time after, less up to a quarter at random.
        longest: The most of those seconds.
        patience: The longest Retry-After that is waited for; past it the problem is raised at once.
    """

    times: int = 2
    first: float = 0.5
    longest: float = 8.0
    patience: float = 120.0

    def pause(self, attempts: int, retry_after: float | None) -> float | None:
        """Seconds to wait before sending again; None to give up.

        Args:
            attempts: How often it was sent so far.
            retry_after: What the service asked for.
        """
        if attempts > self.times or (retry_after is not None and retry_after > self.patience):
            return None
        backoff = min(self.first * 2.0 ** (attempts - 1), self.longest)
        spread = backoff * 0.25 * random.random()
        # Callers sent away together come back apart, and none before its time.
        return retry_after + spread if retry_after is not None else backoff - spread


def worth_repeating(status: int, retry_after: float | None) -> bool:
    """Whether the same request may fare better later.

    Args:
        status: What it was answered.
        retry_after: When it is to be tried again: a conflict that passes by itself says so, such as the first sending
            of this request being still under way.
    """
    return status in _ALWAYS_WORTH_IT or status >= 500 or (status == 409 and retry_after is not None)


def retry_after_seconds(value: str | None, date: str | None = None) -> float | None:
    """Retry-After in seconds, whether it was sent as seconds or as a date (RFC 9110, section 10.2.3).

    Args:
        value: The header field.
        date: The answer's own Date, so that the two clocks need not agree; this machine's clock without it.
    """
    if not value:
        return None
    if value.strip().isdigit():
        return float(value)
    try:
        when = _moment(value)
        now = _moment(date) if date else datetime.now(timezone.utc)
    except ValueError:
        return None
    return max(0.0, (when - now).total_seconds())


def _moment(text: str) -> datetime:
    from email.utils import parsedate_to_datetime  # slow to import, and dates are rare here

    moment = parsedate_to_datetime(text)
    return moment if moment.tzinfo else moment.replace(tzinfo=timezone.utc)
