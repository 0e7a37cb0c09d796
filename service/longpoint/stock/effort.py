"""Work counted, so that the same job gives the same plan, with the clock as a last guard."""

from time import monotonic

__all__ = ["Effort"]

PER_SECOND = 0.55  # counted seconds spent for each second allowed; the rest is room for a slower machine


class Effort:
    """Work done and allowed, in seconds of the machine the costs were measured on."""

    def __init__(self, seconds: float) -> None:
        self._began = monotonic()
        self._deadline = self._began + seconds
        self._allowed = seconds * PER_SECOND
        self._spent = 0.0

    def spend(self, seconds: float) -> None:
        """Count work whose measured cost is about so long."""
        self._spent += seconds

    def part(self, share: float) -> "Effort":
        """Work of its own, at most that share of what is left of this."""
        return Effort(self.left * share / PER_SECOND)

    @property
    def seconds(self) -> float:
        """Seconds gone on the clock."""
        return monotonic() - self._began

    @property
    def spent(self) -> float:
        """Seconds of the budget that the counted work came to."""
        return self._spent / PER_SECOND

    @property
    def left(self) -> float:
        """Counted seconds that may still be spent."""
        return max(0.0, min(self._allowed - self._spent, self._deadline - monotonic()))

    @property
    def clock_left(self) -> float:
        """Seconds left on the clock."""
        return max(0.0, self._deadline - monotonic())

    def late(self, share: float) -> bool:
        """Whether that share of the time is gone on the clock."""
        return monotonic() >= self._began + share * (self._deadline - self._began)

    @property
    def stopped(self) -> str | None:
        """What ran out, ``"work"`` or ``"clock"``, or None."""
        if self._spent >= self._allowed:
            return "work"
        return "clock" if monotonic() >= self._deadline else None
