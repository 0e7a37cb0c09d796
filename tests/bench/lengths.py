"""Microseconds per call of the lengths room, on texts and values never seen (cold) and seen (warm).

Run from the repository's top: PYTHONPATH=service python tests/bench/lengths.py
"""

import gc
import random
from collections.abc import Callable, Sequence
from time import perf_counter

from longpoint.lengths import (
    Fraction,
    Mode,
    Rounding,
    RoundTo,
    Unit,
    exact,
    feet_inches,
    parse,
    rounded,
    tape,
)

COUNT = 2_000  # under every cache's size, so that a second pass finds all of it


def microseconds(call: Callable[..., object], many: Sequence[tuple[object, ...]]) -> float:
    start = perf_counter()
    for arguments in many:
        call(*arguments)
    return (perf_counter() - start) / len(many) * 1e6


def report(name: str, call: Callable[..., object], many: Sequence[tuple[object, ...]]) -> None:
    cold = microseconds(call, many)
    warm = min(microseconds(call, many) for _ in range(5))
    print(f"{name:<34}{cold:>9.2f}{warm:>9.2f}")


def main() -> None:
    gc.collect()
    gc.freeze()  # or the collector walks all that pint left, in the middle of a measurement
    draw = random.Random(1)
    sixteenths = draw.sample(range(16, 160_000), COUNT)
    values = [Fraction(n, 64) for n in sixteenths]
    rounding = Rounding(RoundTo.SIXTEENTH, Mode.NEAREST)
    print(f"{'microseconds a call':<34}{'cold':>9}{'warm':>9}")
    report("parse 30 5/8 in", parse, [(f"{n // 16} {n % 16}/16 in",) for n in sixteenths])
    report("parse 2' 6-5/8\"", parse, [(f"{n // 192}' {n // 16 % 12}-{n % 16}/16\"",) for n in sixteenths])
    report("parse 778.1 mm", parse, [(f"{n / 10} mm",) for n in sixteenths])
    report("parse 30⅝ in", parse, [(f"{n}½ in",) for n in draw.sample(range(11_000), COUNT)])
    report("parse 30 5/8, unit apart", parse, [(f"{n // 16} {n % 16}/16", Unit.IN) for n in sixteenths])
    report("rounded, exact", rounded, [(value, rounding) for value in values])
    report("rounded, float", rounded, [(float(value) * 1.0001, rounding) for value in values])
    report("tape, inches", tape, [(value,) for value in values])
    report("tape, mm", tape, [(value, Unit.MM) for value in values])
    report("feet_inches", feet_inches, [(value,) for value in values])
    report("exact", exact, [(value, Unit.IN) for value in values])


if __name__ == "__main__":
    main()
