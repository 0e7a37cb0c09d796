"""Saw the sticks of random houses as solids until so many are sawn, and say what a saw would spoil.

    PYTHONPATH=service:tests python tests/bench/solid_sticks.py --sticks 10000

Houses are invented: casing of any corner angle between 80 and 100 degrees or square, legs and heads on sixteenths,
square pieces among them, molded or turnable, cut square first or not, from sticks with and without a defect and from
lengths on hand.
"""

import argparse
import sys
from collections import Counter
from dataclasses import replace
from fractions import Fraction
from math import radians, tan
from pathlib import Path
from random import Random
from time import process_time

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "service")]

from longpoint.stock import Budget, Cutting, StickOnHand, Stretch, Wanted, eaten, plan  # noqa: E402
from stock.checker import complaints  # noqa: E402
from stock.cuttings import KERF, MARK, WIDE, YARD  # noqa: E402
from stock.solid import misfits  # noqa: E402


def out_of_square(seed: int) -> Cutting:
    """A house of up to 40 openings, each with angles of its own or all square."""
    random = Random(f"solid {seed}")
    square = random.random() < 0.5
    pieces: list[Wanted] = []
    for number in range(random.randint(4, 40)):
        corners = [90.0 if square else 90 + random.choice([0, random.uniform(-10, 10)]) for _ in range(2)]
        miters = [90 - corner / 2 for corner in corners]
        runs = [Fraction(round(WIDE * tan(radians(miter)) * MARK), MARK) for miter in miters]
        eats = [eaten(KERF, miter) for miter in miters]
        left, right, head = (Fraction(random.randint(24 * 16, 84 * 16), 16) for _ in range(3))
        pieces += [
            Wanted(f"{number} left", left, right=runs[0], right_eats=eats[0]),
            Wanted(f"{number} right", right, left=runs[1], left_eats=eats[1]),
            Wanted(f"{number} head", head, 1, None, runs[0], runs[1], eats[0], eats[1]),
            Wanted(f"{number} apron", head - Fraction(random.randint(0, 32), 16)),
        ]
    sticks = YARD
    if random.random() < 0.3:
        start = Fraction(random.randint(10, 80))
        sticks = (
            replace(YARD[0], defects=(Stretch(start, start + Fraction(random.randint(0, 32), 16)),)),
            *YARD[1:],
        )
    lengths_on_hand = tuple(
        StickOnHand(f"r{n}", Fraction(random.randint(200, 2000), 16)) for n in range(random.randint(0, 8))
    )
    return Cutting(
        "casing",
        tuple(pieces),
        sticks,
        lengths_on_hand,
        kerf=KERF,
        keep_length=Fraction(24),
        turnable=random.random() < 0.5,
        square_first=random.random() < 0.3,
    )


def main() -> None:
    """Saw, and print what came of it."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--sticks", type=int, default=10_000)
    parser.add_argument("--budget", type=float, default=0.2, help="seconds for each house")
    asked = parser.parse_args()
    began, seed, sticks = process_time(), 0, 0
    kinds, spoiled = Counter[str](), Counter[str]()
    while sticks < asked.sticks:
        cutting = out_of_square(seed)
        found = plan(cutting, Budget(asked.budget))
        sticks += sum(found.sticks.values())
        kinds["turnable" if cutting.turnable else "molded"] += sum(found.sticks.values())
        kinds["shared cuts"] += sum(
            placed.shares_cut for layout in found.layouts for placed in layout.placed for _ in layout.keys
        )
        kinds["square first"] += sum(found.sticks.values()) if cutting.square_first else 0
        spoiled.update(misfits(cutting, found, WIDE))
        spoiled.update(complaints(cutting, found))
        seed += 1
    print(f"{sticks} sticks of {seed} houses, {dict(kinds)}: {sum(spoiled.values())} misfits")
    print(f"{process_time() - began:.1f} s of the processor")
    for what, number in spoiled.most_common():
        print(f"{number:6} {what}")


if __name__ == "__main__":
    main()
