"""How arches and polygons close as the service answers them, laid out again by `dryfit.chain`.

Run from the repository's top: PYTHONPATH=service:tests python tests/bench/closed_openings.py [shapes a step]
"""

from __future__ import annotations

import statistics
import sys

from asking import Service
from dryfit.chain import lay, misfits, openings

STEPS = ("1/8 in", "1/16 in", "1/32 in", "1/64 in")


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    with Service() as service:
        for to in STEPS:
            ends, worst, off, wrong, stands_open = [], 0.0, 0.0, 0, []
            for _, request in openings(count, 1, to):
                answer = service.post("/v1/opening", request)
                if answer.status_code != 200 or not answer.json()["closings"]:
                    continue
                laid = lay(request, answer.json())
                first = laid.keys.index(answer.json()["closings"][0]["first"])
                ends.append(laid.gaps[first - 1])
                worst, off = max(worst, *laid.gaps), max(off, *laid.off)
                wrong += bool(misfits(request, answer.json()))
                if not answer.json()["closings"][0]["closes"]:
                    stands_open.append(len(laid.keys))
            middle = statistics.median(ends)
            print(
                f"{to}: {len(ends)} shapes, end {middle:.2f} steps in the middle and {max(ends):.2f} at most,"
            )
            print(
                f"  corner {worst:.2f}, piece {off:.2f} at most; {wrong} not as stated; open: {stands_open}"
            )


if __name__ == "__main__":
    main()
