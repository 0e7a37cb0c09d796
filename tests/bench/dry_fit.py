"""Ten thousand random openings of every shape and style, each put together from its answer alone.

    PYTHONPATH=service:tests python tests/bench/dry_fit.py [--openings 10000] [--seed 1]

Prints, kind by kind: how many were built, how many were refused and why, the misfits, and how the time went. Every
opening is asked of the real application; its pieces are cut again by the dry fit, exactly and as marked; what is
refused is drawn from its readings to see that it cannot be built. It exits with a failure when anything did not close,
or was refused that could have been.
"""

import argparse
import json
import sys
import time
from collections import Counter
from typing import Any

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis.strategies import SearchStrategy

from asking import Service
from dryfit import dry_fit
from dryfit.openings import curved, framed, leaning, skewed, standing
from dryfit.refusals import unfounded
from dryfit.rows import rows
from dryfit.shared import fit_shared
from dryfit.styles import dressed, extended, hung, joined, leant
from dryfit.tape import as_cut, rounding_error, unrounded

EXACT_SLACK = 1e-8
"""Inches that sums of reals may come to."""
KINDS: dict[str, SearchStrategy[dict[str, Any]]] = {
    "plumb sides, raked heads": standing,
    "any convex picture frame": framed,
    "leaning legs": leaning,
    "out of square": skewed,
    "curved heads": curved,
    "blocks, dressed heads, bands, returns": dressed(),
    "mulled units": joined(),
    "extended jambs": extended(),
    "leaning casing": leant(),
    "door jambs": hung(),
    "rows over one stool": rows(),
}


class Tally:
    """What became of one kind's openings."""

    def __init__(self) -> None:
        self.built = 0
        self.refused: Counter[str] = Counter()
        self.example: dict[str, str] = {}
        self.misfits: list[str] = []
        self.kinds: Counter[str] = Counter()
        self.asking = self.fitting = 0.0

    def take(self, service: Service, request: dict[str, Any]) -> None:
        """Ask for one opening and put it together."""
        start = time.perf_counter()
        together = "openings" in request
        response = service.post("/v1/cut-list" if together else "/v1/opening", request)
        answered = time.perf_counter()
        self.asking += answered - start
        if response.status_code != 200:
            codes = ", ".join(sorted({error["code"] for error in response.json()["errors"]}))
            self.refused[codes] += 1
            self.example.setdefault(codes, json.dumps(request))
            if wrong := unfounded(request, set(codes.split(", "))):
                self.misfits.append(f"refused for {wrong}, and could be built\n    {json.dumps(request)}")
            return
        answer = response.json()
        if together:
            found = fit_row(request, answer)
        else:
            found = dry_fit(request, answer) + dry_fit(request, answer, as_marked=True)
        self.kinds.update(
            f"{piece['kind']}, {', '.join(sorted({end['cut'] for end in piece['ends']}))}"
            for one in (answer["openings"] if together else [answer])
            for piece in one["pieces"]
        )
        self.fitting += time.perf_counter() - answered
        self.built += 1
        self.misfits += [f"{misfit}\n    {json.dumps(request)}" for misfit in found[:1]]


def fit_row(request: dict[str, Any], answer: dict[str, Any]) -> list[str]:
    """What does not fit of a row of openings and of what they share, exactly and as marked."""
    away = sum(abs(rounding_error(piece["overall"])) for piece in answer["openings"][-1]["pieces"])
    found: list[str] = fit_shared(request, answer, unrounded, EXACT_SLACK)
    found += fit_shared(request, answer, as_cut, away + EXACT_SLACK)
    for sent, made in zip(request["openings"], answer["openings"], strict=False):
        # Each window of its own: its casing alone, which stands on the stool that it shares.
        trim = {name: request["trim_specs"]["house"][name] for name in ("casing", "reveal")}
        alone = sent | {"trim": trim, "bottom": "floor", "rounding": request["rounding"]}
        found += dry_fit(alone, made) + dry_fit(alone, made, as_marked=True)
    return found


def run(service: Service, kind: SearchStrategy[dict[str, Any]], count: int, start: int) -> Tally:
    """So many openings of one kind, the same for the same start."""
    tally = Tally()

    @seed(start)
    @settings(
        max_examples=count,
        phases=[Phase.generate],
        database=None,
        deadline=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(kind)
    def each(request: dict[str, Any]) -> None:
        tally.take(service, request)

    each()
    return tally


def main() -> int:
    """Run and print; how many kinds did not close."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--openings", type=int, default=10_000)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    failed = total = 0
    kinds: Counter[str] = Counter()
    with Service() as service:
        for name, kind in KINDS.items():
            tally = run(service, kind, -(-asked.openings // len(KINDS)), asked.seed)
            total += tally.built
            kinds += tally.kinds
            print(f"{name}: {tally.built} built, {len(tally.misfits)} misfits, ", end="")
            print(
                f"{sum(tally.refused.values())} refused; asking {tally.asking:.1f} s, fitting {tally.fitting:.1f} s"
            )
            for codes, times in tally.refused.most_common():
                print(f"  refused {times} for {codes}, as {tally.example[codes]}")
            for misfit in tally.misfits[:5]:
                print(f"  MISFIT {misfit}")
            failed += bool(tally.misfits)
    print("pieces by kind and by how their ends are cut:")
    for cut, count in sorted(kinds.items()):
        print(f"  {count} {cut}")
    print(f"{total} built; {failed} kinds with misfits")
    return failed


if __name__ == "__main__":
    sys.exit(main())
