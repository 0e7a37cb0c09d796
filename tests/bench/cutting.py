"""Measure the cutting-stock optimizer beside a constraint solver, an arc-flow model and first-fit.

    python tests/bench/cutting.py                     the houses and the published classes, this optimizer and first-fit
    python tests/bench/cutting.py --rivals            the other solvers too; slow
    python tests/bench/cutting.py --only house --each 3 --budget 10

Every plan goes through the tests' checker. Recipes: houses are invented; the uniform and triplet classes follow
Falkenauer (Journal of Heuristics 2, 1996), the others CUTGEN1 (Gau and Waescher, EJOR 84, 1995), both from memory.
Instances are drawn anew from a seed, so they are of those classes and not the published files.
"""

import argparse
import gc
import os
import resource
import sys
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import chain
from pathlib import Path
from random import Random
from statistics import median
from time import perf_counter, process_time

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "service")]

from bench.cutting_rivals import arc_flow, constraint_solver  # noqa: E402
from longpoint.stock import Budget, Cutting, StickKind, Wanted, plan  # noqa: E402
from stock.checker import complaints  # noqa: E402
from stock.cuttings import FIVE, crooked, house, rack, readings, spread  # noqa: E402

HOUSES = {12: 6, 30: 10, 60: 15, 300: 25, 1000: 40}
NONE = Fraction(0)


@dataclass(frozen=True)
class Outcome:
    """What a method made of a cutting: cents, what it proved that none is below, and seconds on the clock and of
    work."""

    cost: int | None
    bound: int
    clock: float
    work: float
    first: float = 0.0
    stopped: str = ""


Method = Callable[[Cutting, float], Outcome]


def optimizer(cutting: Cutting, budget: float) -> Outcome:
    """This optimizer; ``first`` is when it had a plan within 1 % of the bound it ended with."""
    steps: list[tuple[float, int]] = []
    clock, work = perf_counter(), process_time()
    found = plan(cutting, Budget(budget), lambda step: steps.append((step.seconds, step.cost_cents)))
    clock, work = perf_counter() - clock, process_time() - work
    wrong = complaints(cutting, found)
    assert not wrong, wrong
    first = next((at for at, cost in steps if cost <= 1.01 * found.bound_cents), clock)
    return Outcome(found.cost_cents, found.bound_cents, clock, work, first, found.stopped)


def first_fit(cutting: Cutting, _budget: float) -> Outcome:
    """First-fit decreasing alone."""
    return optimizer(cutting, 0.0)


def uniform(pieces: int, seed: int) -> Cutting:
    """Sizes 20 to 100, sticks of 150."""
    random = Random(f"uniform {pieces} {seed}")
    return packed([random.randint(20, 100) for _ in range(pieces)], 150)


def triplets(pieces: int, seed: int) -> Cutting:
    """Sizes 250 to 500 made three by three to fill sticks of 1000, so the optimum is a third of the pieces."""
    random = Random(f"triplets {pieces} {seed}")
    sizes: list[int] = []
    for _ in range(pieces // 3):
        first = random.randint(380, 490)
        second = random.randint(250, (1000 - first) // 2)
        sizes += [first, second, 1000 - first - second]
    return packed(sizes, 1000)


def cutgen(lengths: int, low: float, high: float, demand: int, seed: int) -> Cutting:
    """So many lengths between shares of a stick of 1000, cut so often on average."""
    random = Random(f"cutgen {lengths} {low} {high} {demand} {seed}")
    pieces = [random.random() for _ in range(lengths)]
    sizes = [int(low * 1000 + ((high - low) * 1000 + 1) * random.random()) for _ in range(lengths)]
    wanted = Counter[int]()
    for size, piece in zip(sizes, pieces, strict=True):
        wanted[size] += max(1, round(piece / sum(pieces) * lengths * demand))
    return packed(list(wanted.elements()), 1000)


def packed(sizes: list[int], stick: int) -> Cutting:
    """Plain packing: one stick, no kerf, no trim; the cost is the number of sticks."""
    pieces = tuple(Wanted(str(size), Fraction(size), count) for size, count in Counter(sizes).items())
    return Cutting("packing", pieces, (StickKind("stick", Fraction(stick), 100),), kerf=NONE, end_trim=NONE)


def classes(each: int) -> Iterator[tuple[str, list[Cutting]]]:
    """Every class with its cuttings."""
    for windows, lengths in HOUSES.items():
        cuttings = [house(windows, lengths, seed) for seed in range(each)]
        yield f"house {windows}", cuttings
        if windows <= 60:
            yield f"house {windows} turned", [replace(cutting, turnable=True) for cutting in cuttings]
    for pieces in (60, 120):
        yield f"triplets {pieces}", [triplets(pieces, seed) for seed in range(each)]
    for pieces in (60, 120, 250):
        yield f"uniform {pieces}", [uniform(pieces, seed) for seed in range(each)]
    for lengths in (10, 20, 40):
        for low, high in ((0.01, 0.2), (0.01, 0.8), (0.2, 0.8)):
            for demand in (10, 100):
                cuttings = [cutgen(lengths, low, high, demand, seed) for seed in range(each)]
                yield f"cutgen {lengths} {low}-{high} {demand}", cuttings


def trade_classes(each: int) -> Iterator[tuple[str, list[Cutting]]]:
    """Houses measured window by window, with what each cut eats; many lengths; racks of lengths that all differ."""
    seeds = range(each)
    for windows in (100, 200, 300):
        yield f"readings {windows}", [readings(windows, seed) for seed in seeds]
    yield "readings 300 near prices", [readings(300, seed, FIVE) for seed in seeds]
    for lengths in (1000, 2000):
        yield f"spread {lengths}", [spread(lengths, seed) for seed in seeds]
    for windows, on_hand in ((30, 40), (60, 100), (150, 200)):
        yield f"rack {windows} {on_hand}", [readings(windows, seed, on_hand=on_hand) for seed in seeds]
        yield f"rack {windows} {on_hand} knots", [rack(windows, on_hand, seed) for seed in seeds]
    for windows in (100, 300):
        yield f"turned {windows}", [readings(windows, seed, turnable=True) for seed in seeds]
    for turnable in (False, True):
        name = "together turned" if turnable else "together"
        yield name, [replace(readings(100, seed, turnable=turnable), together=True) for seed in seeds]
    yield "crooked 60", [crooked(60, seed, turnable=False) for seed in seeds]
    yield "crooked 60 turned", [crooked(60, seed) for seed in seeds]


def line(name: str, method: str, outcomes: list[Outcome]) -> str:
    """One row of the table."""
    solved = [one for one in outcomes if one.cost is not None]
    proven = sum(one.cost == one.bound for one in solved)
    gaps = [(one.cost - one.bound) / one.cost * 100 for one in solved if one.cost]
    stopped = Counter(one.stopped for one in solved)
    return (
        f"{name:26}{method:12}{proven:4}/{len(outcomes):<4}{len(solved):4}{max(gaps, default=0.0):11.4f}"
        f"{median(one.clock for one in outcomes):9.3f}{max(one.clock for one in outcomes):9.3f}"
        f"{median(one.work for one in outcomes):9.3f}{max(one.work for one in outcomes):9.3f}"
        f"{max(one.first for one in outcomes):9.3f}  {dict(stopped)}"
    )


def main() -> None:
    """Run what was asked for and print a table."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--each", type=int, default=10, help="cuttings of each class")
    parser.add_argument("--budget", type=float, default=10.0, help="seconds for each cutting and method")
    parser.add_argument("--only", default="", help="classes whose name starts so")
    parser.add_argument("--rivals", action="store_true", help="run CP-SAT and arc-flow on HiGHS too")
    asked = parser.parse_args()
    methods: dict[str, Method] = {"longpoint": optimizer, "first-fit": first_fit}
    if asked.rivals:
        methods["CP-SAT"] = lambda cutting, budget: Outcome(*constraint_solver(cutting, budget))
        methods["arc-flow"] = lambda cutting, budget: Outcome(*arc_flow(cutting, budget))
    optimizer(house(2, 2, 0), 1.0)  # what is loaded once is not measured
    print(f"load {os.getloadavg()[0]:.1f} on {os.cpu_count()} processors, budget {asked.budget} s")
    print(f"{'':26}{'':12}{'proven':9}{'plan':4}{'worst':>11}{'clock s':>18}{'processor s':>18}{'1 % in':>9}")
    print(
        f"{'class':26}{'method':12}{'':13}{'gap %':>11}{'median':>9}{'worst':>9}{'median':>9}{'worst':>9}{'worst':>9}"
    )
    for name, cuttings in chain(classes(asked.each), trade_classes(asked.each)):
        if name.startswith(asked.only):
            for method, run in methods.items():
                if method in ("CP-SAT", "arc-flow") and "turned" in name:
                    continue  # their models know nothing of shared cuts
                gc.collect()
                print(line(name, method, [run(cutting, asked.budget) for cutting in cuttings]), flush=True)
    print(
        f"memory {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024} MB at most, load {os.getloadavg()[0]:.1f}"
    )


if __name__ == "__main__":
    main()
