"""How often arches and polygons close when rounded, how far they stand open, and what it takes.

Run from the repository's top: PYTHONPATH=service:tests python tests/bench/closing.py [shapes a step]
"""

from __future__ import annotations

import statistics
import sys
from time import perf_counter
from typing import NamedTuple

from geometry.fit.shapes import shapes  # type: ignore[import-not-found]
from longpoint.geometry.fit.closing import close
from longpoint.lengths import Fraction

STEPS = (Fraction(1, 8), Fraction(1, 16), Fraction(1, 32), Fraction(1, 64))
WIDTHS = (6, 9, 8, 8, 7, 8, 8, 9, 8, 8, 8)


class Row(NamedTuple):
    """One shape: whether it closes, its gap and worst corner in steps, whether mirrored pieces are alike, its time."""

    closes: bool
    gap: float
    corner: float
    mirrored: bool
    milliseconds: float


def line(*cells: object) -> None:
    print("".join(f"{cell!s:>{width}}" for cell, width in zip(cells, WIDTHS, strict=True)))


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    line("step", "kind", "pieces", "shapes", "close", "median", "worst", "corner", "mirror", "ms", "worst")
    for step in STEPS:
        rows: dict[tuple[str, str], list[Row]] = {}
        for kind, chain in shapes(count):
            began = perf_counter()
            found = close(chain, step)
            spent = (perf_counter() - began) * 1e3
            gap, corner = found.gap / float(step), max(found.corner_gaps) / float(step)
            few = "3 to 6" if len(chain.lengths) <= 6 else "7 on"
            rows.setdefault((kind, few), []).append(Row(found.closes, gap, corner, found.mirrored, spent))
        for (kind, few), row in sorted(rows.items()):
            closed, mirrored = sum(one.closes for one in row), sum(one.mirrored for one in row)
            gaps, times = [one.gap for one in row], [one.milliseconds for one in row]
            worst = (
                f"{statistics.median(gaps):.2f}",
                f"{max(gaps):.2f}",
                f"{max(one.corner for one in row):.2f}",
            )
            spent_on = (f"{statistics.median(times):.2f}", f"{max(times):.1f}")
            line(step, kind, few, len(row), closed, *worst, mirrored, *spent_on)


if __name__ == "__main__":
    main()
