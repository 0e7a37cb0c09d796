"""The linear program as the solver keeps it.

Rows: each item cut at least as often as asked; sticks of each stock within bounds; all sticks within bounds. Columns:
each item left out, which is dear; then the patterns.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import highspy
import numpy as np
from numpy.typing import NDArray

from .columns import PatternColumn
from .problem import ScaledCutting

__all__ = ["DEAR", "Box", "Program", "Solved"]

DEAR = 1000  # a piece left out costs this many of the dearest stick
DUAL, PRIMAL = 1, 4  # the simplex method: after bounds have changed, and after columns were added
NO_INDEX = np.array([], dtype=np.int32)
NO_VALUE = np.array([], dtype=np.float64)


@dataclass(frozen=True, slots=True)
class Box:
    """How many sticks may be used: of each stock, and last of all together.

    Attributes:
        low: at least.
        high: at most; never None, since no plan needs more sticks than pieces.
    """

    low: tuple[int, ...]
    high: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Solved:
    """What the solver found.

    Attributes:
        cost: cents.
        rows: what one more in each row is worth, cents.
        columns: how much of each column is taken.
        steps: of the simplex method.
    """

    cost: float
    rows: NDArray[np.float64]
    columns: NDArray[np.float64]
    steps: int


class Program:
    """The linear program of one problem."""

    def __init__(self, problem: ScaledCutting) -> None:
        self._problem = problem
        self._items = len(problem.items)
        self._stocks = len(problem.stocks)
        self._size = 0
        self._solver = highspy.Highs()  # type: ignore[no-untyped-call]
        self._solver.silent()
        for option, value in (("threads", 1), ("random_seed", 1), ("presolve", "off")):
            self._solver.setOptionValue(option, value)
        for wanted in problem.items:
            self._solver.addRow(wanted.demand, highspy.kHighsInf, 0, NO_INDEX, NO_VALUE)
        for _ in range(self._stocks + 1):
            self._solver.addRow(0, highspy.kHighsInf, 0, NO_INDEX, NO_VALUE)
        dear = float(DEAR * (1 + max(stock.price for stock in problem.stocks)))
        for item in range(self._items):
            self._solver.addCol(dear, 0, highspy.kHighsInf, 1, np.array([item], dtype=np.int32), np.ones(1))
        self._kept = self._solver.getBasis()

    def add(self, columns: Sequence[PatternColumn]) -> int:
        """Add patterns, and say how many numbers that took."""
        starts: list[int] = []
        rows: list[int] = []
        values: list[float] = []
        for column in columns:
            starts.append(len(rows))
            rows += [item for item, _ in column.counts]
            values += [float(count) for _, count in column.counts]
            rows += [self._items + column.stock, self._items + self._stocks]
            values += [1.0, 1.0]
        self._solver.addCols(
            len(columns),
            np.array([float(self._problem.stocks[column.stock].price) for column in columns]),
            np.zeros(len(columns)),
            np.full(len(columns), highspy.kHighsInf),
            len(rows),
            np.array(starts, dtype=np.int32),
            np.array(rows, dtype=np.int32),
            np.array(values),
        )
        self._size += len(columns)
        return len(rows)

    def set(self, wanted: Sequence[int], box: Box, usable: NDArray[np.bool_]) -> None:
        """Ask for those pieces within the box, from those of the patterns."""
        rows = self._items + self._stocks + 1
        low = np.array([*wanted, *box.low], dtype=np.float64)
        high = np.full(rows, highspy.kHighsInf)
        high[self._items :] = box.high
        every = np.arange(rows, dtype=np.int32)
        self._solver.changeRowsBounds(rows, every, low, high)  # type: ignore[attr-defined] # its stubs lack it
        which = np.arange(self._items, self._items + self._size, dtype=np.int32)
        upper = np.where(usable, highspy.kHighsInf, 0.0)
        self._solver.changeColsBounds(self._size, which, np.zeros(self._size), upper)
        self._solver.setOptionValue("simplex_strategy", DUAL)

    def run(self) -> Solved:
        """Solve for the columns there are."""
        self._solver.run()
        info = self._solver.getInfo()
        self._solver.setOptionValue("simplex_strategy", PRIMAL)
        solution = self._solver.getSolution()
        cost, steps = float(info.objective_function_value), int(info.simplex_iteration_count)
        return Solved(cost, np.array(solution.row_dual), np.array(solution.col_value), steps)

    def crash(self) -> None:
        """Start where every piece is left out: patterns come in for those that they hold, dearest first."""
        status = highspy.HighsBasisStatus
        basis = highspy.HighsBasis()
        basis.col_status = [status.kBasic] * self._items + [status.kLower] * self._size
        basis.row_status = [status.kLower] * self._items + [status.kBasic] * (self._stocks + 1)
        self._solver.setBasis(basis)
        self._solver.setOptionValue("simplex_strategy", PRIMAL)

    def keep(self) -> None:
        """Remember where it stands, to go on from there."""
        self._kept = self._solver.getBasis()

    def back(self) -> None:
        """Go back to where it stood, with the columns added since unused."""
        basis = self._kept
        missing = self._items + self._size - len(basis.col_status)
        basis.col_status = list(basis.col_status) + [highspy.HighsBasisStatus.kLower] * missing
        self._solver.setBasis(basis)
