"""Work counted, so that the same cutting gives the same plan on any machine, with the clock as a last guard.

What is counted: numbers gone through in pricing, steps of the simplex method, patterns made, nodes of small integer
programs. The rates say how many seconds of the processor each took where they were measured; on another machine
the same work is counted as the same, and takes as long as it takes.
"""

from time import process_time

__all__ = ["Effort"]

PER_SECOND = 0.87  # counted seconds spent for each second allowed; the rest is room for a slower machine
CELL = 1.7e-10
PRICING = 2e-4
STEP, STEP_ROW, STEP_COLUMN = 7e-6, 5.5e-8, 4e-9
SOLVE, SOLVE_ROW = 2e-4, 1e-7
COLUMN, ENTRY = 6e-6, 5e-7
TRACE, TRACE_ITEM = 1.4e-5, 2.5e-8
LINE = 5e-5
LOOK = 1.5e-6
TALLY = 1e-8
LISTED = 2e-4


class Effort:
    """Work done and allowed, in seconds of the machine the rates were measured on.

    The clock is the processor's time of this process.
    """

    def __init__(self, seconds: float, within: "Effort | None" = None) -> None:
        self._within = within
        self._deadline: float = process_time() + seconds if within is None else within._deadline
        self._allowed = seconds * PER_SECOND
        self._spent = 0.0
        self._late = False

    def spend(self, seconds: float) -> None:
        """Count work whose measured cost is about so long."""
        self._spent += seconds
        if self._within is not None:
            self._within.spend(seconds)

    def pricing(self, numbers: int) -> None:
        """Count a pricing that went through so many numbers."""
        self.spend(PRICING + CELL * numbers)

    def simplex(self, steps: int, rows: int, columns: int) -> None:
        """Count a run of the simplex method."""
        step = STEP + STEP_ROW * rows + STEP_COLUMN * columns
        self.spend(SOLVE + SOLVE_ROW * (rows + columns) + steps * step)

    def columns(self, number: int, entries: int) -> None:
        """Count columns added."""
        self.spend(COLUMN * number + ENTRY * entries)

    def looking(self, cells: int) -> None:
        """Count a list of patterns made by looking at so many cells."""
        self.spend(LOOK * cells)

    def listing(self, patterns: int) -> None:
        """Count patterns listed with the place of every piece."""
        self.spend(LISTED * patterns)

    def tallies(self, numbers: int) -> None:
        """Count tallies made of so many numbers."""
        self.spend(TALLY * numbers)

    def tracing(self, number: int, items: int) -> None:
        """Count patterns traced back through so many items."""
        self.spend((TRACE + TRACE_ITEM * items) * number)

    def reading(self, lines: int) -> None:
        """Count a cutting of so many lines taken in and planned first-fit."""
        self.spend(LINE * lines)

    def piece(self, share: float) -> "Effort":
        """Work of its own, at most that share of what is left of this and counted in both."""
        return Effort(self.left * share / PER_SECOND, self)

    @property
    def spent(self) -> float:
        """Seconds of the budget that the counted work came to."""
        return self._spent / PER_SECOND

    @property
    def left(self) -> float:
        """Counted seconds that may still be spent."""
        left = max(0.0, self._allowed - self._spent)
        return left if self._within is None else min(left, self._within.left)

    @property
    def clock_left(self) -> float:
        """Seconds left on the clock."""
        return max(0.0, self._deadline - process_time())

    @property
    def stopped(self) -> str | None:
        """What ran out, ``"clock"`` where that ended anything at all, or ``"effort"``; or None."""
        if not self._allowed:
            return "effort"
        if process_time() >= self._deadline:
            self.late()
        if self._late:
            return "clock"
        return "effort" if self.left <= 0 else None

    def late(self) -> None:
        """Note that the clock has ended something, so that the same cutting may get another plan."""
        self._late = True
        if self._within is not None:
            self._within.late()
