"""What an opening's readings find of one slip, over openings drawn at random; and what the check costs.

The tape's spread is 1/32 in rms and a bubble's 1/64, read over the whole side. A slip is in any of the readings; 12 in
and swapped digits in any length.

Run from the repository's top: PYTHONPATH=service:tests python tests/bench/adjusting.py [openings a row]
"""

from __future__ import annotations

import random
import sys
from collections.abc import Callable
from time import perf_counter

from geometry.fit.openings import (  # type: ignore[import-not-found]
    ANY,
    BUBBLE,
    MIDDLE,
    NINE,
    SIX,
    SPREAD,
    TEN,
    WINDOWS,
    exact,
    opening,
    read,
    slipped,
    swapped,
)
from longpoint.geometry.fit.check import Checked, Verdict, check
from longpoint.geometry.fit.readings import Reading
from longpoint.geometry.fit.six_readings import six_check

SETS = {"6": SIX, "6 + sill, 2 plumbs": NINE, "6 + 4 bubbles": TEN, "6 + 2 middles": MIDDLE}
Slip = Callable[[random.Random, list[Reading]], tuple[int, list[Reading]] | None]


def of_size(size: float, lengths_only: bool = False) -> Slip:
    def slip(draw: random.Random, readings: list[Reading]) -> tuple[int, list[Reading]]:
        number = draw.randrange(6 if lengths_only else len(readings))
        return number, slipped(readings, number, size * draw.choice((1, -1)))

    return slip


def digits(draw: random.Random, readings: list[Reading]) -> tuple[int, list[Reading]] | None:
    number = draw.randrange(6)
    by = swapped(readings[number])
    return None if by is None else (number, slipped(readings, number, by))


def exchanged(one: int, other: int) -> Slip:
    def slip(_: random.Random, readings: list[Reading]) -> tuple[int, list[Reading]]:
        changed = list(readings)
        changed[one] = Reading(readings[one].kind, readings[other].value)
        changed[other] = Reading(readings[other].kind, readings[one].value)
        return one, changed

    return slip


SLIPS: dict[str, Slip] = {
    "1/8 in": of_size(1 / 8),
    "1/4 in": of_size(1 / 4),
    "1/2 in": of_size(1 / 2),
    "1 in": of_size(1),
    "12 in": of_size(12, lengths_only=True),
    "swapped digits": digits,
    "sides exchanged": exchanged(2, 3),
    "diagonals exchanged": exchanged(4, 5),
}


def found(checked: Checked) -> bool:
    return checked.verdict in (Verdict.ONE_SLIP, Verdict.MORE_THAN_ONE, Verdict.IMPOSSIBLE)


def percent(piece: int, whole: int) -> str:
    return f"{100 * piece / whole:6.1f}" if whole else "     –"


def slips(count: int, sizes: tuple[float, float, float, float]) -> None:
    least, widest, low, high = sizes
    print(f"\nopenings {least} to {widest} wide, {low} to {high} high")
    print(
        f"{'readings':<20}{'slip':<20}{'found':>7}{'named':>7}{'mean':>6}{'<= 3':>7}{'held':>7}{'first':>7}{'many':>7}"
    )
    for title, kinds in SETS.items():
        for name, slip in SLIPS.items():
            draw = random.Random(f"{name}{title}{sizes}")
            alarms = named = suspects = few = held = first = many = tried = 0
            while tried < count:
                made = slip(draw, read(draw, opening(draw, sizes=sizes), kinds))
                if made is None:
                    continue
                tried += 1
                number, readings = made
                checked = check(readings)
                alarms += found(checked)
                many += checked.verdict is Verdict.MORE_THAN_ONE
                numbers = [suspect.number for suspect in checked.suspects] or [
                    mend.number for mend in checked.mends
                ]
                if not numbers:
                    continue
                named += 1
                suspects += len(set(numbers))
                few += len(set(numbers)) <= 3
                held += number in numbers
                first += number == numbers[0]
            mean = f"{suspects / named:6.2f}" if named else "     –"
            print(
                f"{title:<20}{name:<20} {percent(alarms, tried)} {percent(named, tried)}{mean} {percent(few, named)}"
                f" {percent(held, named)} {percent(first, named)} {percent(many, alarms)}"
            )


def false_alarms(count: int) -> None:
    """True readings; bowed members; a tape half as bad again, or bubbles twice as bad, as they are said to be."""
    print(f"\n{'readings':<20}{'bow':>8}{'tape x':>8}{'bubble x':>10}{'alarms':>8}{'a bow said':>12}")
    for title, kinds in SETS.items():
        for bow, tape, bubble in (
            (0, 1, 1),
            (1 / 32, 1, 1),
            (1 / 16, 1, 1),
            (1 / 8, 1, 1),
            (0, 1.5, 1),
            (0, 1, 2),
        ):
            if (bow and kinds is not MIDDLE) or (bubble > 1 and kinds not in (NINE, TEN)):
                continue
            draw = random.Random(f"{title}{bow}{tape}{bubble}")
            alarms = bows = 0
            for _ in range(count):
                checked = check(read(draw, opening(draw), kinds, bow, SPREAD * tape, BUBBLE * bubble))
                alarms += found(checked)
                bows += bool(checked.bows)
            print(
                f"{title:<20}{bow:>8.4f}{tape:>8.1f}{bubble:>10.1f}"
                f"{percent(alarms, count):>8}{percent(bows, count):>12}"
            )


def two_slips(count: int) -> None:
    print(f"\n{'readings':<20}{'two slips of':<20}{'found':>7}{'said to be more than one':>27}")
    for title, kinds in SETS.items():
        for size in (0.5, 1.0):
            draw = random.Random(f"two{title}{size}")
            alarms = many = 0
            for _ in range(count):
                readings = read(draw, opening(draw), kinds)
                for number in draw.sample(range(len(readings)), 2):
                    readings = slipped(readings, number, size * draw.choice((1, -1)))
                checked = check(readings)
                alarms += found(checked)
                many += checked.verdict is Verdict.MORE_THAN_ONE
            print(f"{title:<20}{size!s:<20} {percent(alarms, count)}{percent(many, alarms):>27}")


def same_verdict(count: int) -> None:
    print()
    for off in (0.5, 1.0, 2.0, 4.0):
        draw = random.Random(f"same{off}")
        same = 0
        for _ in range(count):
            shape = opening(draw, off)
            readings = read(draw, shape, SIX)
            readings = slipped(readings, draw.randrange(6), draw.choice((0, 0.125, 0.25, 0.5)))
            line = six_check(*(reading.value for reading in readings)).alarm
            same += line == found(check(readings))
        print(
            f"upper corners off by up to {off / 2} in: the line and the adjustment agree in {same} of {count}"
        )


def cost(count: int) -> None:
    draw = random.Random("cost")
    print(f"\n{'milliseconds':<20}{'agree':>8}{'1 in off':>10}{'12 in off':>11}{'worst':>8}")
    for title, kinds in (*SETS.items(), ("all twelve", (*TEN, *MIDDLE[-2:]))):
        rows = []
        for by in (0.0, 1.0, 12.0):
            spent = []
            for _ in range(count):
                readings = slipped(read(draw, opening(draw), kinds), draw.randrange(6), by)
                began = perf_counter()
                check(readings)
                spent.append((perf_counter() - began) * 1e3)
            rows.append(sorted(spent))
        medians = [row[len(row) // 2] for row in rows]
        print(f"{title:<20}{medians[0]:>8.3f}{medians[1]:>10.3f}{medians[2]:>11.3f}{rows[2][-1]:>8.2f}")
    values = [exact(opening(draw))[kind] for kind in SIX]
    began = perf_counter()
    for _ in range(10_000):
        six_check(*values)
    print(f"six-reading check: {(perf_counter() - began) * 100:.2f} microseconds")


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    for sizes in (WINDOWS, ANY):
        slips(count, sizes)
    false_alarms(count)
    two_slips(count)
    same_verdict(count)
    cost(min(count, 300))


if __name__ == "__main__":
    main()
