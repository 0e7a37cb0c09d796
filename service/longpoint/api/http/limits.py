"""How many requests one caller may make in a time, given in the RateLimit fields of the IETF draft.

Counted in this process alone, so that no request waits for a count kept elsewhere: with two replicas a caller has
twice the requests. A proxy in front can count for all of them.
"""

from math import ceil
from time import monotonic

from longpoint.api.http.problems import RateExceeded
from longpoint.texts import say

_MOST_REMEMBERED = 10_000

Fields = list[tuple[bytes, bytes]]


class RateLimit:
    """Counts the requests of each caller in windows of some seconds, which begin with the caller's first.

    Args:
        requests: How many each may make in a window.
        seconds: The window.
    """

    def __init__(self, requests: int, seconds: int) -> None:
        self.requests = requests
        self.seconds = seconds
        self._policy = (b"ratelimit-policy", b'"caller";q=%d;w=%d' % (requests, seconds))
        self._windows: dict[str, tuple[float, int]] = {}

    def take(self, caller: str) -> Fields:
        """Count a request and give the fields that say what is left.

        Raises:
            RateExceeded: when the caller has none left; carries the fields, too.
        """
        ends, made, rest = self.refuse_spent(caller)
        self._windows[caller] = ends, made + 1
        return [self._policy, (b"ratelimit", b'"caller";r=%d;t=%d' % (self.requests - made - 1, rest))]

    def refuse_spent(self, caller: str) -> tuple[float, int, int]:
        """Refuse a caller that has no request left, without counting one.

        Returns:
            When the caller's window ends, how many requests were made in it, and the seconds that are left of it.

        Raises:
            RateExceeded: when it has none.
        """
        now = monotonic()
        ends, made = self._windows.get(caller, (0.0, 0))
        if now >= ends:
            ends, made = now + self.seconds, 0
            if len(self._windows) >= _MOST_REMEMBERED:
                self._forget(now)
        rest = max(1, ceil(ends - now))
        if made >= self.requests:
            raise RateExceeded(
                say("problem", "rate.exceeded", requests=self.requests, seconds=self.seconds, rest=rest),
                headers={
                    "retry-after": str(rest),
                    "ratelimit-policy": self._policy[1].decode(),
                    "ratelimit": f'"caller";r=0;t={rest}',
                },
            )
        return ends, made, rest

    def _forget(self, now: float) -> None:
        """Drop the windows that are over; all of them when none is."""
        self._windows = {key: window for key, window in self._windows.items() if window[0] > now}
        if len(self._windows) >= _MOST_REMEMBERED:
            self._windows.clear()
