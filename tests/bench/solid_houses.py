"""Saw the sticks of random houses as solids, from their pieces, until so many are sawn, and say what would be spoiled.

    PYTHONPATH=service:tests python tests/bench/solid_houses.py --sticks 10000

Houses are invented, worked out and planned as a request is: out of square, raked, leaning, polygons, with stools,
returns and notches, molded or turnable, cut square first or not, knots and lengths on hand.
"""

import argparse
import sys
from collections import Counter
from pathlib import Path
from random import Random
from time import process_time

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "service")]

from shop.builders import solid_house  # noqa: E402
from shop.solid import misfits  # noqa: E402


def main() -> None:
    """Saw, and print what came of it."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--sticks", type=int, default=10_000)
    asked = parser.parse_args()
    began, seed, sticks = process_time(), 0, 0
    spoiled = Counter[str]()
    while sticks < asked.sticks:
        house = solid_house(Random(seed))
        sticks += sum(layout.times for plan in house.plans for layout in plan.layouts)
        spoiled.update(misfits(house))
        seed += 1
    print(f"{sticks} sticks of {seed} houses: {sum(spoiled.values())} misfits")
    print(f"{process_time() - began:.1f} s of the processor")
    for what, number in spoiled.most_common():
        print(f"{number:6} {what}")


if __name__ == "__main__":
    main()
